//! Whole answers: every phrase has its words, every figure is one, no saving slips past a stop.

use super::random::{Luck, request};
use serde_json::Value;
use std::sync::OnceLock;
use winterseam::climate::Atlas;
use winterseam::wire::{Tree, assess, phrase};
use winterseam::words::{Language, faults};

/// Requests and their answers, half with a year behind them; worked out once for all tests.
fn answers() -> &'static [(Value, Value)] {
    static ANSWERS: OnceLock<Vec<(Value, Value)>> = OnceLock::new();
    ANSWERS.get_or_init(|| (0..240).map(answered).collect())
}

fn answered(seed: u64) -> (Value, Value) {
    let request = request(&mut Luck::new(seed), seed.is_multiple_of(2));
    let answer = super::answered(&request);
    (request, answer)
}

/// Every map within a value, itself included.
fn maps(value: &Value, see: &mut impl FnMut(&serde_json::Map<String, Value>)) {
    match value {
        Value::Object(map) => {
            see(map);
            map.values().for_each(|inner| maps(inner, see));
        }
        Value::Array(list) => list.iter().for_each(|inner| maps(inner, see)),
        _ => {}
    }
}

#[test]
fn every_phrase_has_its_words_in_both_languages() {
    let mut seen = 0;
    for (request, answer) in answers() {
        maps(answer, &mut |map| {
            if map.len() == 2 && map.contains_key("key") && map.contains_key("args") {
                seen += 1;
                let text = Value::Object(map.clone()).to_string();
                let phrase =
                    Tree::from_json(&text).and_then(|tree| phrase(&tree)).expect("a phrase");
                for language in Language::ALL {
                    assert!(faults(&phrase, language).is_empty(), "{text}: {request}");
                }
            }
        });
    }
    assert!(seen > 5_000, "{seen}");
}

#[test]
fn every_figure_is_a_number_within_its_range_and_names_what_it_rests_on() {
    for (request, answer) in answers() {
        maps(answer, &mut |map| {
            let Some(confidence) = map.get("confidence") else { return };
            let number =
                |key: &str| map[key].as_f64().unwrap_or_else(|| panic!("{key}: {request}"));
            assert!(number("low") <= number("value") && number("value") <= number("high"));
            assert!(number("si_low") <= number("si_high"));
            assert!(
                ["billed", "measured", "seen", "guessed"].contains(&confidence.as_str().unwrap())
            );
            assert!(!map["sources"].as_array().unwrap().is_empty(), "{map:?}");
        });
    }
}

#[test]
fn no_saving_is_shown_while_something_is_off_and_no_job_while_someone_has_to_leave() {
    let (mut off, mut out) = (0, 0);
    for (request, answer) in answers() {
        let has = |kind: &str| {
            answer["stops"].as_array().unwrap().iter().any(|stop| stop["kind"] == kind)
        };
        if has("out") {
            out += 1;
            for list in ["firsts", "later", "uses", "look_next", "findings", "shopping"] {
                assert!(answer[list].as_array().unwrap().is_empty(), "{list}: {request}");
            }
        }
        if has("off") || has("out") {
            off += 1;
            assert_eq!(answer["savings_hidden"], true);
            maps(answer, &mut |map| {
                for key in ["saving", "saving_energy", "payback"] {
                    assert!(map.get(key).is_none_or(Value::is_null), "{key}: {request}");
                }
            });
        }
        assert!(answer["look_next"].as_array().unwrap().len() <= 3);
    }
    assert!(off > 20 && out > 3, "{off} {out}");
}

#[test]
fn savings_never_exceed_what_is_used() {
    let mut counted = 0;
    for (request, answer) in answers() {
        let sum = |list: &Value, key: &str| -> f64 {
            list.as_array().unwrap().iter().filter_map(|x| x[key]["si_value"].as_f64()).sum()
        };
        let saved =
            sum(&answer["firsts"], "saving_energy") + sum(&answer["later"], "saving_energy");
        let used = sum(&answer["uses"], "energy");
        assert!(saved <= used * (1.0 + 1e-9), "{saved} of {used}: {request}");
        counted += usize::from(saved > 0.0);
    }
    assert!(counted >= 10, "{counted}");
}

/// A request as a host hands it over that has values and no text.
fn tree(value: &Value) -> Tree {
    match value {
        Value::Null => Tree::Null,
        Value::Bool(flag) => Tree::Bool(*flag),
        Value::Number(number) => Tree::Number(number.as_f64().expect("a double")),
        Value::String(text) => Tree::Text(text.clone()),
        Value::Array(list) => Tree::List(list.iter().map(tree).collect()),
        Value::Object(map) => {
            Tree::Map(map.iter().map(|(key, value)| (key.clone(), tree(value))).collect())
        }
    }
}

#[test]
fn text_and_values_give_the_same_answer_byte_for_byte() {
    for (request, answer) in answers().iter().take(20) {
        let by_value = assess(&tree(request), Some(Atlas::embedded())).expect("a request");
        let by_value = serde_json::to_value(by_value).expect("plain data").to_string();
        assert_eq!(by_value, answer.to_string(), "{request}");
    }
}

#[test]
fn the_same_request_gives_the_same_answer() {
    for (seed, (request, answer)) in (0..).zip(answers()).take(20) {
        assert_eq!(answered(seed).1.to_string(), answer.to_string(), "{request}");
    }
}
