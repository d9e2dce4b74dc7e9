//! The law of a crack, solved live by a bracketing root finder of `SciPy`.

use crate::harness::{Tally, numbers, peer};
use uom::si::f64::{Length, Pressure};
use uom::si::{length::meter, pressure::pascal, ratio::ratio, volume_rate::cubic_meter_per_second};
use winterseam::physics::gap::{Slit, flow, local_exponent};
use winterseam::properties::air::Air;
use winterseam::units::celsius;

/// The root finder stops at 1e-14 of the flow; rounding of the law itself adds some ulps.
const SOLVED: f64 = 1e-12;
/// The peer's exponent is that between a thousandth more and less pressure: what is left is of the
/// second order in that thousandth.
const EXPONENT: f64 = 1e-6;
/// The fewest points that make the check worth its name.
const POINTS: usize = 500;

#[test]
fn gaps_flow_as_the_root_finder_says() {
    let mut tally = Tally::default();
    let rows = peer("crack.py");
    assert!(rows.len() >= POINTS, "only {} points", rows.len());
    for row in &rows {
        compare(row, &mut tally);
    }
    tally.report("air/scipy-brentq-live");
}

fn compare(row: &str, tally: &mut Tally) {
    let [length, width, depth, bends, t, p, across, theirs, more, less] = numbers(row);
    let m = Length::new::<meter>;
    let bends = (0..=9).find(|&count| f64::from(count) >= bends).unwrap();
    let slit = Slit::new(m(length), m(width), m(depth), bends).unwrap();
    let air = Air::dry(celsius(t), Pressure::new::<pascal>(p)).unwrap();
    let across = Pressure::new::<pascal>(across);
    let ours = flow(&slit, across, &air).get::<cubic_meter_per_second>();
    let near = (ours / theirs - 1.0).abs() <= SOLVED;
    tally.note(row, "flow", (ours, theirs), near, None);
    let ours = local_exponent(&slit, across, &air).get::<ratio>();
    let theirs = (more / less).ln() / (1.001_f64 / 0.999).ln();
    tally.note(row, "exponent", (ours, theirs), (ours - theirs).abs() <= EXPONENT, None);
}
