//! Air, fans and burners in one home. Source: the project's own safety rules; common practice.

use super::{answer, jobs, warns};
use serde_json::{Value, json};
use winterseam::wire::{Answer, Step};

/// A tight home with a leaky door, and what burns in it.
fn home_with(heater: &Value, look: &Value) -> Answer {
    let mut first_look = json!({"co_alarm": "working", "smoke_alarm": "working"});
    for (key, value) in look.as_object().expect("a map") {
        first_look[key] = value.clone();
    }
    let request = json!({
        "today": "2026-11-25",
        "home": {
            "zip": "97201", "sections": "single", "width_ft": 16, "length_ft": 60,
            "year_built": 1974, "bedrooms_count": 3, "cooling": "none",
            "shelter": "neighbours_close",
        },
        "leak_test": {"flow_50_cfm": 700}, "first_look": first_look,
        "heating": {"fuel": "electricity", "sealed_label_seen": true},
        "water_heater": heater, "electricity_usd_per_kwh": 0.16,
        "bath_fan": {"ends": "outdoors", "bag_emptied_s": 8},
        "gaps": [
            {"place": "door_bottom", "label": "front door", "length_in": 36, "width_in": 0.25},
            {"place": "casing", "length_in": 180, "width_class": "dime"},
            {"place": "elsewhere", "label": "round the roof jack", "length_in": 20,
                "width_in": 0.25, "leads_to": "roof_cavity"},
        ],
    });
    answer(&request.to_string())
}

fn step<'a>(answer: &'a Answer, id: &str) -> &'a Step {
    let mut all = answer.firsts.iter().chain(&answer.later);
    all.find(|step| step.id == id).unwrap_or_else(|| panic!("{id} among {:?}", jobs(answer)))
}

#[test]
fn a_fan_beside_a_burner_waits_for_a_technician() {
    let electric = json!({"kind": "electric", "shares_closet": false});
    let quiet = home_with(&electric, &json!({}));
    assert_eq!(step(&quiet, "ventilate").who, "resident");
    assert!(!warns(&quiet).contains(&"W-FAN-DRAFT"));
    let stove = home_with(&electric, &json!({"other_burner": true}));
    let fan = step(&stove, "ventilate");
    assert_eq!(fan.who, "qualified");
    assert!(fan.cautions.iter().any(|caution| caution.code == "W-FAN-DRAFT"));
    assert!(!warns(&stove).contains(&"W-VENT-AFTER-TIGHT"), "nobody is sent to the fan alone");
}

#[test]
fn a_home_whose_air_a_burner_breathes_is_not_tightened_before_a_technician_came() {
    for place in ["room", "closet_inner_door"] {
        let mut heater = json!({"kind": "draft_hood", "place": place});
        let first = home_with(&heater, &json!({}));
        assert!(!jobs(&first).contains(&"door_sweep"), "{place}");
        let told = |note: &winterseam::wire::Phrase| note.key.ends_with("technician_first");
        assert!(first.notes.iter().any(told), "{place}");
        heater["checked_by_technician"] = json!(true);
        assert!(jobs(&home_with(&heater, &json!({}))).contains(&"door_sweep"), "{place}");
    }
}

#[test]
fn a_hole_that_may_be_a_flues_stays_and_has_no_price() {
    let plan = home_with(&json!({"kind": "sealed_combustion"}), &json!({}));
    assert!(!jobs(&plan).contains(&"elsewhere"));
    assert!(plan.uses.iter().all(|line| line.key != "gap.2"));
    assert!(plan.findings.iter().any(|finding| finding.text.key == "finding.gap_stays"));
}

#[test]
fn a_step_names_its_gaps_and_old_paint() {
    let plan = home_with(&json!({"kind": "electric", "shares_closet": false}), &json!({}));
    assert_eq!(step(&plan, "door_sweep").why.key, "why.gaps");
    let trim = step(&plan, "casing");
    assert!(trim.cautions.iter().any(|caution| caution.code == "W-LEAD-PAINT"));
}

/// Source: U.S. climate normals: Phoenix is far above 75 °F in April and October, below in January.
#[test]
fn a_cooler_stays_open_while_it_may_be_needed() {
    let covers = |zip: &str, day: &str| {
        let request = json!({
            "today": day, "home": {"zip": zip, "cooling": "evaporative"},
            "first_look": {"co_alarm": "working", "smoke_alarm": "working"},
            "heating": {"fuel": "electricity"}, "electricity_usd_per_kwh": 0.14,
            "water_heater": {"kind": "electric", "shares_closet": false},
            "gaps": [{"place": "cooler_grille", "length_in": 20, "width_in": 12}],
        });
        jobs(&answer(&request.to_string())).contains(&"cooler_cover")
    };
    assert!(!covers("85283", "2026-04-18") && !covers("85283", "2026-10-02"));
    assert!(covers("85283", "2026-01-10") && covers("59801", "2026-10-20"));
}
