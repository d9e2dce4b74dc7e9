//! A home that a plan seals keeps its fresh air. Source: ASHRAE Handbook: Fundamentals 2021, ch. 17
//! (need), and the infiltration credit of ASHRAE 62.2-2013; common practice.

use super::{answer, jobs};
use serde_json::{Value, json};
use winterseam::wire::Answer;

/// A newer, tight home of three bedrooms in a mild and sheltered place, with one gap below its
/// door.
fn tight_home(gaps: &Value, fan: &Value) -> Answer {
    let request = json!({
        "today": "2026-11-25",
        "home": {
            "zip": "97201", "sections": "single", "width_ft": 16, "length_ft": 60,
            "year_built": 2012, "bedrooms_count": 3, "shelter": "neighbours_close",
            "cooling": "none",
        },
        "leak_test": {"flow_50_cfm": 700, "exponent": 0.65},
        "first_look": {"co_alarm": "working", "smoke_alarm": "working", "heat_holds": true},
        "heating": {"fuel": "electricity", "sealed_label_seen": true},
        "water_heater": {"kind": "electric", "tap_f": 120},
        "electricity_usd_per_kwh": 0.16,
        "gaps": gaps, "bath_fan": fan,
    });
    answer(&request.to_string())
}

fn door() -> Value {
    json!([{"place": "door_bottom", "length_in": 36, "width_in": 0.25, "leads_to": "outdoors"}])
}

#[test]
fn a_plan_that_seals_a_tight_home_brings_its_fresh_air_along() {
    let plan = tight_home(&door(), &json!({"ends": "outdoors", "bag_emptied_s": 8}));
    let jobs = jobs(&plan);
    let at = |id: &str| jobs.iter().position(|job| *job == id);
    let sweep = at("door_sweep").expect("the gap is closed");
    assert!(at("ventilate").expect("the air is kept") > sweep, "{jobs:?}");
    let steps = plan.firsts.iter().chain(&plan.later);
    let fan = steps.into_iter().find(|step| step.id == "ventilate").unwrap();
    assert_eq!(fan.who, "resident", "a fan that was felt to work is only switched on");
}

#[test]
fn a_fan_that_nobody_tried_is_for_a_qualified_person() {
    let plan = tight_home(&door(), &json!({}));
    let step = plan.firsts.iter().chain(&plan.later).find(|step| step.id == "ventilate").unwrap();
    assert_eq!(step.who, "qualified");
    assert!(step.cautions.iter().any(|caution| caution.code == "W-VENT-AFTER-TIGHT"));
}

#[test]
fn what_is_not_sealed_or_already_has_its_fan_gets_no_second_one() {
    let unsealed = tight_home(&json!([]), &json!({}));
    assert!(!jobs(&unsealed).contains(&"ventilate"));
    let running = tight_home(&door(), &json!({"runs_steadily": true}));
    assert!(jobs(&running).contains(&"door_sweep"));
    assert!(!jobs(&running).contains(&"ventilate"));
}

#[test]
fn a_leaky_home_is_sealed_without_a_fan() {
    let mut leaky = json!({
        "today": "2026-11-25",
        "home": {
            "zip": "59801", "sections": "single", "width_ft": 14, "length_ft": 66,
            "year_built": 1972, "bedrooms_count": 2, "shelter": "lone_home", "cooling": "none",
        },
        "first_look": {"co_alarm": "working", "smoke_alarm": "working"},
        "heating": {"fuel": "electricity", "sealed_label_seen": true},
        "water_heater": {"kind": "electric"}, "electricity_usd_per_kwh": 0.16,
    });
    leaky["gaps"] = door();
    let plan = answer(&leaky.to_string());
    assert!(jobs(&plan).contains(&"door_sweep") && !jobs(&plan).contains(&"ventilate"));
}
