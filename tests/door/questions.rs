//! Questions to one model: every one of them answers with what it promises, or refuses by name.

use super::chance::Chance;
use serde_json::Value;
use std::collections::BTreeMap;
use winterseam::climate::Atlas;
use winterseam::error::FieldError;
use winterseam::wire::{Field, Gives, QUESTIONS, Question, Shape, Tree, ask, ask_for};

fn asked(text: &str) -> Result<Value, Vec<FieldError>> {
    ask(&Tree::from_json(text)?, Atlas::embedded())
}

fn wrong(text: &str) -> Vec<String> {
    let problems = asked(text).expect_err("should be refused");
    problems.iter().map(|error| format!("{} {}", error.path, error.reason.code())).collect()
}

/// A value at an end of what a field may hold, or between.
fn value(field: &Field, chance: &mut Chance) -> Tree {
    match field.shape {
        Shape::Number(range) | Shape::Whole(range) => {
            let share = *chance.pick(&[0.0, 0.001, 0.03, 0.3, 0.7, 1.0]);
            let between = range.min + share * (range.max - range.min);
            let whole = matches!(field.shape, Shape::Whole(_));
            Tree::Number(if whole { between.round() } else { between })
        }
        Shape::Word(words) => Tree::Text((*chance.pick(words)).to_owned()),
        Shape::Flag => Tree::Bool(chance.below(2) == 0),
        Shape::Zip => Tree::Text((*chance.pick(&["59801", "33101", "99701", "00000"])).to_owned()),
        Shape::Text { .. } => {
            Tree::Text((*chance.pick(&["727730", "722020", "701625", "x"])).to_owned())
        }
        Shape::Map(_) | Shape::List { .. } | Shape::Date => panic!("no question has these"),
    }
}

/// A question whose fields all fit; what may be left out is left out half the time.
fn fitting(question: &Question, chance: &mut Chance) -> Tree {
    let Shape::Map(fields) = question.fields else { panic!("a question is a map") };
    let mut given = BTreeMap::new();
    for field in fields {
        if field.required || chance.below(2) == 0 {
            given.insert(field.key.to_owned(), value(field, chance));
        }
    }
    Tree::Map(given)
}

/// Whether a part of an answer is what was promised.
fn keeps(part: &Gives, answer: &Value) -> bool {
    match *part {
        Gives::Number(key) => answer[key].is_number(),
        Gives::NumberOrNull(key) => answer[key].is_number() || answer[key].is_null(),
        Gives::Text(key) => answer[key].is_string(),
        Gives::Word(key, words) => answer[key].as_str().is_some_and(|word| words.contains(&word)),
    }
}

#[test]
fn every_question_keeps_its_promise_in_all_of_its_ranges() {
    let mut chance = Chance::new(4);
    for question in QUESTIONS.iter().filter(|question| !question.gives.is_empty()) {
        let (mut answered, mut refused) = (0, 0);
        for _ in 0..300 {
            let fields = fitting(question, &mut chance);
            match ask_for(question.name, &fields, Some(Atlas::embedded())) {
                Ok(answer) => {
                    answered += 1;
                    assert_eq!(answer.as_object().unwrap().len(), question.gives.len());
                    let kept = question.gives.iter().all(|part| keeps(part, &answer));
                    assert!(kept, "{}: {answer} for {fields:?}", question.name);
                }
                Err(problems) => {
                    refused += 1;
                    assert!(!problems.is_empty());
                }
            }
        }
        assert!(answered > 10, "{}: {answered} answered, {refused} refused", question.name);
    }
}

#[test]
fn a_question_without_a_name_or_of_no_known_name_is_refused() {
    assert_eq!(wrong("[]"), [" wrong_type"]);
    assert_eq!(wrong("{}"), ["ask missing"]);
    assert_eq!(wrong(r#"{"ask": 5}"#), ["ask wrong_type"]);
    assert_eq!(wrong(r#"{"ask": "weather"}"#), ["ask not_one_of"]);
}

#[test]
fn a_cable_of_no_watts_or_no_sane_length_is_refused_by_name() {
    let cable = r#"{"ask": "cable_year", "station": "727730", "w_m": 20, "length_m": 6,
        "control": "always_on", "outer_diameter_m": 0.022, "insulation_m": 0,
        "insulation_w_m_k": 0.036}"#;
    assert!(asked(cable).is_ok());
    for (right, bad, path) in [
        ("_m\": 20", "_m\": 0", "w_m"),
        ("_m\": 20", "_m\": -7", "w_m"),
        ("length_m\": 6", "length_m\": 3048", "length_m"),
        ("length_m\": 6", "length_m\": -6", "length_m"),
    ] {
        assert_eq!(wrong(&cable.replace(right, bad)), [format!("{path} out_of_range")], "{bad}");
    }
}

#[test]
fn ducts_that_leak_more_than_ducts_do_are_refused_by_name() {
    let ducts = r#"{"ask": "duct_delivery", "fan_m3_s": 0.4, "capacity_w": 14000,
        "air_density_kg_m3": 1.2, "supply_ua_w_k": 22, "supply_leak_fraction": 0.12,
        "return_ua_w_k": 0, "return_leak_fraction": 0, "indoor_c": 21, "supply_zone_c": 2,
        "return_zone_c": 2}"#;
    assert!(asked(ducts).is_ok());
    for (right, bad, path) in [
        ("0.12", "0.61", "supply_leak_fraction"),
        ("0.12", "-0.01", "supply_leak_fraction"),
        ("0.4,", "0,", "fan_m3_s"),
        ("14000", "0", "capacity_w"),
        ("14000", "-9000", "capacity_w"),
        ("1.2,", "12,", "air_density_kg_m3"),
    ] {
        assert_eq!(wrong(&ducts.replace(right, bad)), [format!("{path} out_of_range")], "{bad}");
    }
}

#[test]
fn fields_of_a_question_that_do_not_go_together_are_refused() {
    assert_eq!(wrong(r#"{"ask": "climate"}"#), ["zip missing"]);
    let enhanced = r#"{"ask": "infiltration", "model": "enhanced", "leakage_area_m2": 0.05,
        "indoor_c": 20, "outdoor_c": -5, "wind_m_s": 3, "shelter_class": 4, "storeys": 1}"#;
    assert_eq!(wrong(enhanced), ["flue missing", "foundation missing"]);
    let basic = enhanced.replace("enhanced", "basic").replace('}', r#", "flue": true}"#);
    assert_eq!(wrong(&basic), ["flue contradicts"]);
    let both = r#"{"ask": "climate", "zip": "59801", "station": "727730"}"#;
    assert_eq!(wrong(both), ["station contradicts"]);
    assert_eq!(wrong(r#"{"ask": "climate", "zip": "00000"}"#), ["zip no_such_place"]);
    assert_eq!(wrong(r#"{"ask": "climate", "station": "Moon"}"#), ["station no_such_place"]);
    let steam = r#"{"ask": "moist_air", "dry_bulb_c": 150, "relative_humidity": 1,
        "pressure_pa": 101325}"#;
    assert_eq!(wrong(steam), ["relative_humidity contradicts"]);
}

#[test]
fn a_ceiling_leak_is_refused_by_name_and_without_a_difference_carries_nothing() {
    let leak = r#"{"ask": "ceiling_leak", "leakage_area_m2": 0.002, "height_m": 1.25,
        "indoor_c": 20, "indoor_rh": 0.5, "outdoor_c": 20, "r_inside_m2_k_w": 2,
        "r_outside_m2_k_w": 0.05, "altitude_m": 1500}"#;
    let still = asked(leak).unwrap();
    assert_eq!(still["vapour_g_h"], 0.0);
    assert_eq!(still["condensable_g_h"], 0.0);
    for (right, bad, path) in [
        ("\"indoor_rh\": 0.5", "\"indoor_rh\": 1.01", "indoor_rh"),
        ("\"indoor_rh\": 0.5", "\"indoor_rh\": -0.01", "indoor_rh"),
        ("1500", "4001", "altitude_m"),
        ("1500", "-101", "altitude_m"),
    ] {
        assert_eq!(wrong(&leak.replace(right, bad)), [format!("{path} out_of_range")]);
    }
    let bare = leak.replace("_k_w\": 2", "_k_w\": 0").replace("0.05", "0");
    assert_eq!(wrong(&bare), ["r_outside_m2_k_w contradicts"]);
}

#[test]
fn a_place_needs_the_climate_and_the_rest_does_not() {
    let zip = Tree::from_json(r#"{"zip": "59801"}"#).unwrap();
    let refused = ask_for("climate", &zip, None).unwrap_err();
    assert_eq!(refused[0].reason.code(), "no_climate");
    let bag = Tree::from_json(r#"{"seconds": 9, "direction": "emptying"}"#).unwrap();
    assert!(ask_for("bag_flow", &bag, None).is_ok());
}
