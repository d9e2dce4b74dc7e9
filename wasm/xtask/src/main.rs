//! `cargo xtask <job>`: everything that `cargo` alone does not do. See DEVELOPERS.md.

mod atlas;
mod conform;
mod data;
mod licences;
mod page;
mod parity;
mod python;
mod step;
mod target;
mod tidy;
mod tools;
mod types;
mod verify;
mod wasm;
mod words;

use anyhow::{Result, bail};
use std::process::ExitCode;

const JOBS: &str = "\
page [--no-demo]      build www/dist/index.html and run the demo home in the terminal
verify [--install]    all that CI checks; --install brings system packages too
conform [NAMES]       outside checks by folder, all without a name
tidy                  house rules that no linter knows
data [--check]        tables, words and climate made from core/data and core/words
types [--check]       JSON Schema and TypeScript types of requests and answers
parity                the same values natively and in wasm
licences              licences of all dependencies
forbid WORD           add a word that no tracked file may contain, as a salted hash";

fn main() -> ExitCode {
    let mut words = std::env::args().skip(1);
    let job = words.next().unwrap_or_default();
    match run(&job, &words.collect::<Vec<_>>()) {
        Ok(code) => code,
        Err(why) => {
            eprintln!("error: {why:#}");
            ExitCode::FAILURE
        }
    }
}

fn run(job: &str, words: &[String]) -> Result<ExitCode> {
    match (job, words) {
        ("page", flags) => page::build(!flag(flags, "--no-demo")?),
        ("verify", flags) => return verify::run(flag(flags, "--install")?),
        ("conform", names) => conform::run(names),
        ("tidy", []) => tidy::check(),
        ("data", flags) => data::run(flag(flags, "--check")?),
        ("types", flags) => types::run(flag(flags, "--check")?),
        ("parity", []) => parity::run(),
        ("licences", []) => licences::check(),
        ("forbid", [word]) => tidy::forbid(word),
        ("" | "help" | "--help", []) => {
            println!("{JOBS}");
            Ok(())
        }
        _ => bail!(
            "no job `{}`; `cargo xtask help` lists them",
            [&[job.to_owned()], words].concat().join(" ")
        ),
    }?;
    Ok(ExitCode::SUCCESS)
}

/// Whether the one flag that a job knows was given; any other word is refused.
fn flag(words: &[String], name: &str) -> Result<bool> {
    match words {
        [] => Ok(false),
        [word] if word == name => Ok(true),
        _ => bail!("`{}` is not understood here; the only flag is {name}", words.join(" ")),
    }
}
