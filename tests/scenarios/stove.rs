//! A wood stove and what stands round it. Source: the project's own safety rules; common practice.

use super::{answer, kinds, must_warn, plan, warns};
use winterseam::wire::Answer;

/// A stove beside a panel wall is met before the first fire, and hides nothing of the cable's money:
/// 3,679 kWh at $0.13 are $478.
#[test]
fn a_stove_too_close_stands_before_the_cable_and_leaves_its_money_shown() {
    let answer = plan("tamarack-5");
    assert_eq!(kinds(&answer), [("today", "W-SOLID-FUEL-CLEARANCE")]);
    let meanwhile: Vec<&str> = answer.stops[0].meanwhile.iter().map(|p| p.key.as_str()).collect();
    assert_eq!(meanwhile, ["meanwhile.no_fire", "meanwhile.smoke_alarm_tonight"]);
    let cable = answer.uses.iter().find(|line| line.key == "heat_cable").expect("the cable");
    let dollars = cable.cost.as_ref().expect("a price is known").value;
    assert!((dollars - 478.3).abs() < 0.1, "{dollars}");
}

/// Nobody looked at the stove: it is asked for and warned of, and no stop is made of it.
#[test]
fn a_wood_stove_that_nobody_looked_at_is_asked_for() {
    let home = |clear: &str| {
        answer(&format!(
            r#"{{"today": "2026-08-14", "heating": {{"fuel": "wood", "stove_clear": {clear}}}}}"#
        ))
    };
    let asks = |a: &Answer| a.look_next.iter().any(|look| look.key == "look.stove");
    let (unseen, clear) = (home("null"), home("true"));
    assert!(asks(&unseen) && !asks(&clear));
    must_warn(&unseen, &["W-SOLID-FUEL-CLEARANCE"]);
    assert!(!warns(&clear).contains(&"W-SOLID-FUEL-CLEARANCE"));
    assert!(kinds(&unseen).iter().all(|(_, code)| *code != "W-SOLID-FUEL-CLEARANCE"));
}
