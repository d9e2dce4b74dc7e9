//! Nobody is ever told to close a register, and no repair closes one.

use super::random::{Luck, request};
use super::{answered, typed};
use winterseam::repairs;
use winterseam::words::{Language, messages};

/// A register is only ever told to be closed already, or to be opened.
const CLOSES: [&str; 4] =
    ["close the register", "close register", "close unused", "cierren las salidas"];

#[test]
fn no_repair_closes_a_register_in_ten_thousand_homes() {
    let mut opened = 0;
    for seed in 0..10_000 {
        let home = typed(&request(&mut Luck::new(seed), false));
        for repair in repairs::ALL {
            if let Some(after) = (repair.apply)(&home) {
                assert!(after.ducts.closed <= home.ducts.closed, "{} in home {seed}", repair.id);
                let blocked = (home.ducts.return_blocked, after.ducts.return_blocked);
                assert!(blocked.0 == blocked.1 || blocked.1 == Some(false), "{}", repair.id);
                opened += usize::from(after.ducts.closed < home.ducts.closed);
            }
        }
    }
    assert!(opened > 5_000, "{opened}");
}

#[test]
fn no_sentence_tells_to_close_a_register() {
    for language in Language::ALL {
        for (key, text) in messages(language) {
            let text = text.to_lowercase();
            assert!(CLOSES.iter().all(|words| !text.contains(words)), "{key}: {text}");
        }
    }
}

/// Whatever else is advised, open registers stay among the steps of a home that closed some.
#[test]
fn a_home_with_closed_registers_is_told_to_open_them() {
    let mut told = 0;
    for seed in 0..600 {
        let request = request(&mut Luck::new(seed), false);
        let closed = request["ducts"]["registers_closed_count"].as_u64().unwrap_or(0) > 0;
        let answer = answered(&request);
        let text = answer.to_string();
        let hidden = answer["stops"].as_array().expect("a list").iter().any(|s| s["kind"] == "out");
        if closed && !hidden {
            assert!(text.contains("open_registers"), "home {seed}");
            told += 1;
        }
    }
    assert!(told > 200, "{told}");
}
