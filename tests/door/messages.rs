//! What is said: every refusal carries the value, the range and the unit, in both languages.

use super::{walk_in, with};
use serde_json::json;
use winterseam::error::FieldError;
use winterseam::wire::{Problem, Tree, measure, problem};
use winterseam::words::{Language, faults, render};

fn said(error: &FieldError, language: Language) -> Problem {
    problem(error, |phrase| {
        assert_eq!(faults(phrase, language), [], "{error}");
        render(phrase, language)
    })
}

fn first(place: &str, object: &str) -> Problem {
    said(&walk_in(&with(place, object)).unwrap_err()[0], Language::English)
}

#[test]
fn a_value_out_of_its_range_comes_back_with_the_range_and_its_unit() {
    let wide = first("gaps", r#"[{"place": "casing", "length_in": 36, "width_in": 99}]"#);
    assert_eq!((wide.path.as_str(), wide.code), ("gaps[0].width_in", "out_of_range"));
    assert_eq!(wide.message, "gap width must be between 0.01 and 12 in, not 99");
    for (name, value) in [
        ("got", json!(99.0)),
        ("min", json!(0.01)),
        ("max", json!(12.0)),
        ("unit", json!("in")),
        ("what", json!("gap_width")),
    ] {
        assert_eq!(wide.args[name], value, "{name}");
    }
}

#[test]
fn every_refusal_is_a_sentence_in_every_language() {
    let requests = [
        r#"{"today": "2026-11-25", "today": "2026-11-25"}"#.to_owned(),
        "{".to_owned(),
        "[".repeat(99),
        "[]".to_owned(),
        "{}".to_owned(),
        r#"{"today": "soon", "hmoe": {}}"#.to_owned(),
        with(
            "home",
            r#"{"zip": "1", "width_ft": 1, "length_ft": "x", "sections": "x", "year_built": 2050}"#,
        ),
        with("heating", r#"{"fuel": "wood", "price_per": "gal", "soot": 1}"#),
        with("people", r#"{"oxygen": 1, "child_under_5": "x"}"#),
        with(
            "water_heater",
            r#"{"tap_f": 600, "kind": 1, "place": "x", "soot": 0, "relief": "x"}"#,
        ),
        with("furnace_filter", r#"{"in_use_days": -1, "look": "x"}"#),
        with("bath_fan", r#"{"bag_emptied_s": 0, "ends": "x"}"#),
        with(
            "gaps",
            r#"[{}, 5, {"place": "x", "length_in": 0, "width_in": 0, "depth_in": 0, "bends_count": 0.5}]"#,
        ),
        with(
            "heat_cable",
            r#"{"present": false, "on_day": 0, "length_ft": 0, "power_w_per_ft": 99,
            "control": "x", "pipe_outside_in": 0, "insulation_in": -1, "damaged": 1, "wet": 1}"#,
        ),
    ];
    for request in requests {
        for error in walk_in(&request).expect_err("should be refused") {
            for language in Language::ALL {
                let message = said(&error, language).message;
                assert!(
                    !message.is_empty() && !message.contains('{') || message.contains("{…}"),
                    "{message}"
                );
            }
        }
    }
}

#[test]
fn every_field_that_a_person_fills_has_words() {
    let empty = Tree::from_json(&with("gaps", "[{}]")).unwrap();
    let schema = super::schema::request();
    let groups = schema["properties"].as_object().unwrap();
    assert!(empty.is_seen() && groups.len() > 10);
    for (group, fields) in groups {
        let inner = &fields["properties"];
        let entry = &fields["items"]["properties"];
        for (shape, prefix) in [(inner, format!("{group}.")), (entry, format!("{group}[0]."))] {
            for key in shape.as_object().into_iter().flat_map(|fields| fields.keys()) {
                let error =
                    FieldError::at(format!("{prefix}{key}"), winterseam::error::Reason::Missing);
                for language in Language::ALL {
                    assert!(said(&error, language).args.contains_key("what"), "{error}");
                }
            }
        }
    }
}

#[test]
fn a_reading_that_is_none_is_refused_in_words() {
    let error = measure("about so wide", "in").unwrap_err();
    let message = said(&error, Language::English).message;
    assert!(message.contains("3/8") && message.contains("about so wide"), "{message}");
}

#[test]
fn the_ends_of_every_range_can_be_said_in_the_digits_of_a_message() {
    use winterseam::bounds::{question, walk};
    for bounds in walk::ALL.iter().chain(question::ALL) {
        for end in [bounds.min, bounds.max] {
            let said = (end * 1e6).round() / 1e6;
            assert!(
                (said - end).abs() <= 1e-12 * end.abs(),
                "{}: {end} is said as {said}",
                bounds.what
            );
        }
    }
}
