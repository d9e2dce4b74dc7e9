//! Answers questions to single models: JSON Lines in, JSON Lines out.
//!
//! ```text
//! echo '{"ask":"burn_time","water_c":60,"person":"adult"}' |
//!     cargo run --release --quiet -p winterseam --example probe
//! ```

use serde_json::{Value, json};
use std::io::{self, BufRead as _, Write as _};
use winterseam::climate::Atlas;
use winterseam::wire::{Tree, ask, problem};
use winterseam::words::{Language, render};

fn main() -> io::Result<()> {
    let mut out = io::stdout().lock();
    for line in io::stdin().lock().split(b'\n') {
        // What is no UTF-8 is no JSON either: the replaced letters are refused with their place.
        let line = String::from_utf8_lossy(&line?).into_owned();
        if !line.trim().is_empty() {
            writeln!(out, "{}", answer(&line))?;
            out.flush()?;
        }
    }
    Ok(())
}

fn answer(line: &str) -> Value {
    match Tree::from_json(line).and_then(|question| ask(&question, Atlas::embedded())) {
        Ok(answer) => json!({"ok": answer}),
        Err(errors) => {
            let say = |error| problem(error, |phrase| render(phrase, Language::English));
            json!({"errors": errors.iter().map(say).collect::<Vec<_>>()})
        }
    }
}
