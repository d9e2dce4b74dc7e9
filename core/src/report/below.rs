//! What was seen below the home, in words.

use super::Phrase;
use super::findings::{Finding, plain};
use crate::home::{Belly, Home};
use uom::si::f64::Length;
use uom::si::length::foot;

pub(super) fn findings(home: &Home) -> Vec<Finding> {
    let building = &home.building;
    let belly = match building.belly {
        Some(Belly::Torn) => Some("finding.belly_torn"),
        Some(Belly::Missing) => Some("finding.belly_missing"),
        Some(Belly::Sound) | None => None,
    };
    let bales = (building.hay_bales == Some(true)).then_some("finding.hay_bales");
    let seen = [belly, bales].into_iter().flatten().map(Phrase::new);
    skirting(home).into_iter().chain(seen).map(|text| plain("below", text)).collect()
}

/// How much skirting is missing, where somebody measured it.
fn skirting(home: &Home) -> Option<Phrase> {
    let building = &home.building;
    match building.skirting_gap {
        Some(gap) if gap > Length::default() => {
            let feet = |length: Length| length.get::<foot>().round();
            let (width, length) = building.size();
            let key = "finding.skirting_missing";
            Some(Phrase::new(key).with("feet", feet(gap)).with("all", feet((width + length) * 2.0)))
        }
        None if building.skirting_open == Some(true) => Some(Phrase::new("finding.skirting_open")),
        _ => None,
    }
}
