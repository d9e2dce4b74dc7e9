//! What registers, thermometer and bag say of a furnace never contradicts itself.

use super::typed;
use serde_json::{Value, json};
use winterseam::ducts::{Diagnosis, diagnosis};

fn with_rise(rise_f: f64, (min, max): (f64, f64)) -> Value {
    json!({
        "today": "2026-02-22",
        "heating": {"label_rise_min_f": min, "label_rise_max_f": max},
        "ducts": {"return_f": 70, "supply_f": 70.0 + rise_f},
    })
}

fn found(request: &Value) -> Diagnosis {
    diagnosis(&typed(request)).expect("measured")
}

fn short(request: &Value) -> f64 {
    found(request).short_of_air.expect("a rise").value
}

#[test]
fn more_rise_is_never_less_likely_to_be_short_of_air_whatever_the_label() {
    for label in [(45.0, 75.0), (50.0, 60.0), (20.0, 90.0)] {
        let rises = (0..28).map(|step| 5.0 * f64::from(step));
        let likely: Vec<f64> = rises.map(|rise| short(&with_rise(rise, label))).collect();
        assert!(likely.is_sorted(), "{likely:?}");
        assert!(likely[0] < 0.1 && likely[27] > 0.9, "{likely:?}");
    }
}

#[test]
fn nothing_is_said_of_what_nobody_measured() {
    let mut request = with_rise(60.0, (45.0, 75.0));
    assert_eq!(found(&request).lost_on_the_way, None);
    request["ducts"] = json!({"supply_f": 128, "far_f": 110});
    assert_eq!(found(&request).short_of_air, None);
    request["ducts"] = json!({"registers_count": 9, "registers_closed_count": 0});
    assert_eq!(diagnosis(&typed(&request)), None);
}

/// A duct that lies on the ground loses air, however warm the last register is.
#[test]
fn a_crossover_that_came_off_makes_a_loss_likelier() {
    let lost = |crossover: &str| {
        let mut request = with_rise(60.0, (45.0, 75.0));
        request["ducts"]["far_f"] = json!(124);
        request["ducts"]["crossover"] = json!(crossover);
        found(&request).lost_on_the_way.expect("both registers").value
    };
    assert!(lost("fallen") > lost("loose") && lost("loose") > lost("sound"));
}

#[test]
fn bag_and_thermometer_tell_one_fault_from_the_other_and_both_from_neither() {
    let says = |rise_f: f64, far_f: f64, (near_s, far_s): (f64, f64)| {
        let mut request = with_rise(rise_f, (45.0, 75.0));
        request["ducts"]["far_f"] = json!(far_f);
        request["ducts"]["near_bag_s"] = json!(near_s);
        request["ducts"]["far_bag_s"] = json!(far_s);
        let found = found(&request);
        assert_eq!(found.next, None, "all was measured");
        [found.short_of_air, found.lost_on_the_way].map(|p| p.expect("measured").value > 0.5)
    };
    assert_eq!(says(60.0, 125.0, (2.0, 2.2)), [false, false]);
    assert_eq!(says(90.0, 156.0, (5.0, 5.5)), [true, false]);
    assert_eq!(says(60.0, 100.0, (2.0, 6.0)), [false, true]);
    assert_eq!(says(95.0, 130.0, (5.0, 12.0)), [true, true]);
}
