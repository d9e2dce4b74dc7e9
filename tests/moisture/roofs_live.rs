//! Leaks into roofs on many homes, written out with `PsychroLib` by other hands.

use super::{ceiling_leak, grams_an_hour, moist_air};
use crate::harness::{Tally, numbers, peer};
use uom::si::thermodynamic_temperature::degree_celsius;
use winterseam::moisture::carried;
use winterseam::units::celsius;

/// Both use the handbook's moist air; of dry air outdoors ours has the gas constant to five digits.
const GAS_CONSTANT: f64 = 5e-5;
/// Rounding of a sum of temperatures near 300 K.
const KELVINS: f64 = 1e-9;
/// The fewest points that make the check worth its name.
const POINTS: usize = 500;

#[test]
fn leaks_carry_what_the_peer_says() {
    let mut tally = Tally::default();
    let rows = peer("ceiling_leak.py");
    assert!(rows.len() >= POINTS, "only {} points", rows.len());
    for row in &rows {
        compare(numbers(row), row, &mut tally);
    }
    tally.report("moisture/ceiling-leak-live");
}

fn compare(row: [f64; 10], id: &str, tally: &mut Tally) {
    let [area, height, indoor, humidity, outdoor, inside, outside, vapour, condensable, surface] =
        row;
    let leak = ceiling_leak(area, height, inside, outside);
    let out = carried(&leak, &moist_air(indoor, humidity, 101_325.0), celsius(outdoor)).unwrap();
    // A difference of two ratios is as exact as the larger of them.
    let near = GAS_CONSTANT * vapour;
    let mut note = |column: &str, ours: f64, theirs: f64, by: f64| {
        tally.note(id, column, (ours, theirs), (ours - theirs).abs() <= by, None);
    };
    note("vapour", grams_an_hour(out.vapour), vapour, near);
    note("condensable", grams_an_hour(out.condensable), condensable, near);
    note("surface", out.surface.get::<degree_celsius>(), surface, KELVINS);
}
