//! The word files against each other and against the tables made from them.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use winterseam::words::{Language, arguments, messages};

fn file(language: Language) -> BTreeMap<String, String> {
    let name = format!("../core/words/{}.json", language.tag());
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(name);
    let text = std::fs::read_to_string(&path).expect("the word file");
    serde_json::from_str(&text).expect("a flat map of texts")
}

fn keys(language: Language) -> BTreeSet<&'static str> {
    messages(language).iter().map(|(key, _)| *key).collect()
}

#[test]
fn the_tables_hold_what_the_files_hold() {
    for language in Language::ALL {
        let table = messages(language).iter().map(|(k, m)| ((*k).to_owned(), (*m).to_owned()));
        assert_eq!(table.collect::<BTreeMap<_, _>>(), file(language), "run `cargo xtask data`");
        assert!(messages(language).is_sorted_by(|a, b| a.0 < b.0), "searched by halves");
    }
}

#[test]
fn every_language_has_the_same_keys_with_the_same_arguments() {
    let [english, spanish] = Language::ALL;
    assert_eq!(keys(english), keys(spanish));
    for key in keys(english) {
        let of = |language| arguments(key, language).unwrap_or_else(|why| panic!("{why}"));
        assert_eq!(of(english), of(spanish), "{key}");
    }
}

#[test]
fn every_sentence_is_translated() {
    // Words that are the same in both: units, names of countries' offices, patterns of figures.
    let same_in_both = ["unit.", "range.with_confidence", "error.not_json"];
    let [english, spanish] = Language::ALL.map(file);
    for (key, text) in &english {
        let may_be_same = same_in_both.iter().any(|start| key.starts_with(start));
        assert!(may_be_same || spanish[key] != *text, "{key} is not translated: {text}");
    }
}

#[test]
fn every_reason_to_refuse_a_field_has_its_sentence() {
    use winterseam::error::Reason;
    let reasons = [
        Reason::NotJson { line: 1, column: 1 },
        Reason::Missing,
        Reason::NotANumber,
        Reason::NoSuchPlace { got: String::new() },
        Reason::Contradicts { other: "" },
        Reason::Unknown { got: String::new(), near: None },
        Reason::WrongType { want: "", got: String::new() },
        Reason::NotOneOf { got: String::new(), allowed: &[] },
        Reason::Malformed { want: "", got: String::new() },
    ];
    for code in
        reasons.iter().map(Reason::code).chain(["too_large", "out_of_range", "twice", "no_climate"])
    {
        let key = format!("error.{code}");
        assert!(arguments(&key, Language::English).is_ok(), "{key}");
    }
}
