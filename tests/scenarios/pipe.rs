//! What frost does to a pipe whose cable is off: a time to a plug, and never a time to solid ice.
//! Source: the project's own safety rules.

use super::{answer, plan, says};
use serde_json::{Value, json};
use winterseam::wire::{Answer, Finding};
use winterseam::words::Language;

fn with(zip: &str, cable: &Value) -> Answer {
    let mut home = json!({"today": "2026-11-25", "home": {"zip": zip}, "heat_cable": cable});
    home["heat_cable"]["present"] = json!(true);
    answer(&home.to_string())
}

fn plug(answer: &Answer) -> Option<&Finding> {
    answer.findings.iter().find(|finding| finding.text.key == "finding.pipe_plug")
}

fn hours(answer: &Answer) -> f64 {
    plug(answer).and_then(|told| told.figure.as_ref()).expect("a time").si_value / 3600.0
}

/// A charred cable goes off, so what comes next is told though savings are hidden.
#[test]
fn a_charred_cable_that_goes_off_leaves_a_time_to_a_plug() {
    let answer = plan("birch-fork-14");
    assert!(answer.savings_hidden && plug(&answer).is_some());
    for (language, told) in
        [(Language::English, "at least about"), (Language::Spanish, "por lo menos")]
    {
        let said = says(&answer, language);
        assert!(said.contains(told), "{language:?}");
        assert!(!said.contains(" 0 hours") && !said.contains(" 0 minutes"), "{language:?}");
    }
}

/// A colder place, a smaller pipe and thinner insulation each leave less time.
#[test]
fn cold_thin_and_bare_pipes_block_sooner() {
    let seen = json!({"pipe_outside_in": 0.875, "insulation_in": 0.5});
    let at = |zip, cable: &Value| hours(&with(zip, cable));
    let usual = at("59801", &seen);
    assert!(at("99701", &seen) < usual && usual < at("97201", &seen));
    assert!(at("59801", &json!({"pipe_outside_in": 0.625, "insulation_in": 0.5})) < usual);
    assert!(at("59801", &json!({"pipe_outside_in": 0.875, "insulation_in": 0})) < usual);
    assert!(usual < at("59801", &json!({"pipe_outside_in": 0.875, "insulation_in": 1.5})));
}

/// Where an ordinary year does not freeze, a rare night may: nothing is said of it.
#[test]
fn no_frost_and_no_cable_say_nothing() {
    assert!(plug(&with("96813", &json!({}))).is_none());
    let none =
        r#"{"today": "2026-11-25", "home": {"zip": "59801"}, "heat_cable": {"present": false}}"#;
    assert!(plug(&answer(none)).is_none());
    let nowhere = r#"{"today": "2026-11-25", "heat_cable": {"present": true}}"#;
    assert!(plug(&answer(nowhere)).is_none());
}

fn hot(cable: &Value) -> Option<[f64; 3]> {
    let told = with("59801", cable).findings.into_iter().find(|f| f.text.key == "finding.pipe_hot");
    told.and_then(|told| told.figure).map(|figure| [figure.low, figure.value, figure.high])
}

/// Source: 6 W/ft through ½ in of foam of 0.036 W/(m·K) over ⅞ in: 67 K by arithmetic, above a
/// surface that is warmer than the air of 75 °F (24 °C); plastic pipe bears 122 °F (from memory).
#[test]
fn an_unswitched_cable_under_foam_is_told_to_be_too_hot_for_plastic() {
    let under_foam = json!({"control": "always_on", "power_w_per_ft": 6, "pipe_outside_in": 0.875,
        "insulation_in": 0.5});
    let resistance = (1.875_f64 / 0.875).ln() / (2.0 * std::f64::consts::PI * 0.036);
    let least = (75.0 - 32.0) / 1.8 + 6.0 / 0.3048 * resistance;
    let [low, told, high] = hot(&under_foam).expect("too hot");
    assert!((told - 32.0) / 1.8 > least && (told - 32.0) / 1.8 < least + 30.0, "{told}");
    assert!(low <= told && told <= high && low > 122.0);
    let with = |field: &str, value: Value| {
        let mut other = under_foam.clone();
        other[field] = value;
        hot(&other)
    };
    assert!(with("control", json!("thermostat")).is_none());
    assert!(with("control", Value::Null).is_none(), "not seen is not on");
    assert!(with("insulation_in", json!(0)).is_none(), "a bare pipe gives its heat away");
    assert!(with("power_w_per_ft", json!(1)).is_none(), "a weak cable");
}

/// Source: forced convection past a cylinder takes more heat than still air; common practice.
#[test]
fn wind_through_missing_skirting_leaves_less_time() {
    let at = |open: Value| {
        let home = json!({"today": "2026-11-25",
            "home": {"zip": "59801", "skirting_open": open},
            "heat_cable": {"present": true, "pipe_outside_in": 0.875, "insulation_in": 0}});
        answer(&home.to_string())
    };
    let (open, closed, unseen) = (at(json!(true)), at(json!(false)), at(Value::Null));
    assert!(hours(&open) < 0.7 * hours(&closed));
    assert!((hours(&closed) - hours(&unseen)).abs() < 1e-12);
    let told = |a: &Answer| a.findings.iter().any(|f| f.text.key == "finding.skirting_open");
    assert!(told(&open) && !told(&closed) && !told(&unseen));
    let plan = plan("tamarack-5");
    assert!(plan.findings.iter().any(|f| f.text.key == "finding.skirting_missing"));
    for bad in [json!(30), json!("half"), json!([true])] {
        let request = json!({"today": "2026-11-25", "home": {"skirting_open": bad}}).to_string();
        let tree = winterseam::wire::Tree::from_json(&request).expect("JSON");
        let errors = winterseam::wire::assess(&tree, None).expect_err("no flag");
        assert!(errors[0].path.ends_with("home.skirting_open"), "{}", errors[0].path);
    }
}
