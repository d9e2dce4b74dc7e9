//! What a resident is told of damp air.

use serde_json::{Value, json};
use winterseam::climate::Atlas;
use winterseam::wire::{Tree, assess};

fn answer(zip: &str, place: &str, wet_windows: &str) -> Value {
    let request = json!({
        "today": "2026-11-25",
        "home": { "zip": zip, "wet_windows": wet_windows, "ground_below": "covered" },
        "first_look": { "co_alarm": "working", "smoke_alarm": "working" },
        "heating": { "fuel": "electricity" },
        "water_heater": { "kind": "electric" },
        "gaps": [{ "place": place, "length_in": 40, "width_in": 0.25 }],
    });
    let request = Tree::from_json(&request.to_string()).unwrap();
    serde_json::to_value(assess(&request, Some(Atlas::embedded())).unwrap()).unwrap()
}

fn finding(answer: &Value, item: &str) -> Option<Value> {
    let all = answer["findings"].as_array().unwrap();
    all.iter().find(|finding| finding["item"] == item).cloned()
}

/// The reason of the step that closes it.
fn reason<'a>(answer: &'a Value, id: &str) -> &'a Value {
    let steps = ["firsts", "later"].map(|list| answer[list].as_array().unwrap());
    let mut steps = steps.into_iter().flatten();
    &steps.find(|step| step["id"] == id).unwrap()["why"]["key"]
}

#[test]
fn a_gap_in_the_ceiling_wets_a_cold_roof_and_no_other_gap_does() {
    let cold = answer("58201", "bath_fan_housing", "sometimes");
    let roof = finding(&cold, "roof").unwrap();
    let figure = &roof["figure"];
    let [low, best, high] = ["low", "value", "high"].map(|end| figure[end].as_f64().unwrap());
    assert!(0.0 < low && low < best && best < high, "{figure}");
    assert_eq!(figure["confidence"], "guessed");
    assert!(!figure["sources"].as_array().unwrap().is_empty());
    assert_eq!(reason(&cold, "fan_housing"), "why.roof");

    let door = answer("58201", "door_bottom", "sometimes");
    assert_eq!(finding(&door, "roof"), None);
    assert_eq!(reason(&door, "door_sweep"), "step.door_sweep.why");
}

#[test]
fn wet_windows_tell_of_a_wetter_roof_and_dry_ones_of_a_drier() {
    let most = |windows| {
        let answer = answer("58201", "ceiling_joint", windows);
        finding(&answer, "roof").unwrap()["figure"]["high"].as_f64().unwrap()
    };
    assert!(most("never") < most("sometimes") && most("sometimes") < most("often"));
}

#[test]
fn wet_windows_are_told_and_dry_ones_are_not() {
    for told in ["often", "sometimes"] {
        let damp = finding(&answer("58201", "door_bottom", told), "windows").unwrap();
        let [low, high] = ["low", "high"].map(|end| damp["figure"][end].as_f64().unwrap());
        assert!(0.0 < low && low < high && high < 100.0);
    }
    assert_eq!(finding(&answer("58201", "door_bottom", "never"), "windows"), None);
}
