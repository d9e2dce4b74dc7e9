//! Numbers and plurals against Babel, which carries the tables of the Unicode CLDR.

use crate::harness::Tally;
use std::process::Command;
use winterseam::report::Phrase;
use winterseam::words::{Language, render};

/// One number and how Babel writes it.
#[derive(Debug)]
struct Answer {
    number: f64,
    /// At most three digits after the point.
    three: String,
    /// None.
    whole: String,
    /// Plural category of the whole number, English and Spanish.
    plural: [String; 2],
}

fn answers() -> Vec<Answer> {
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/peers/words.py");
    let python = std::env::var("WINTERSEAM_PYTHON").expect("set by cargo verify");
    let output = Command::new(python).arg(script).output().expect("Python");
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let text = String::from_utf8(output.stdout).expect("UTF-8");
    text.lines().map(answer).collect()
}

fn answer(line: &str) -> Answer {
    let value: serde_json::Value = serde_json::from_str(line).expect("a line of JSON");
    let text = |name: &str| value[name].as_str().expect(name).to_owned();
    Answer {
        number: value["number"].as_f64().expect("number"),
        three: text("three"),
        whole: text("whole"),
        plural: [text("en"), text("es")],
    }
}

#[test]
fn numbers_and_plurals_agree_with_babel() {
    let mut tally = Tally::default();
    for answer in answers() {
        let id = answer.number.to_string();
        let mut note = |column, ours: &str, theirs: &str| {
            assert_eq!(ours, theirs, "{id} {column}");
            tally.note(&id, column, (answer.number, answer.number), true, None);
        };
        let usd = Phrase::new("about.usd").with("value", answer.number);
        let minutes = Phrase::new("time.about_minutes").with("n", answer.number);
        for (language, plural) in Language::ALL.into_iter().zip(&answer.plural) {
            let (before, one, other, after) = match language {
                Language::English => ("in about ", "minute", "minutes", ""),
                Language::Spanish => ("en ", "minuto", "minutos", ", aproximadamente"),
            };
            let usd_before = if language == Language::English { "about $" } else { "unos $" };
            note("three", &render(&usd, language), &format!("{usd_before}{}", answer.three));
            let noun = if plural == "one" { one } else { other };
            let theirs = format!("{before}{} {noun}{after}", answer.whole);
            note("plural", &render(&minutes, language), &theirs);
        }
    }
    tally.report("words/babel");
}
