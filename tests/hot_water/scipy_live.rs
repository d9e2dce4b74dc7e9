//! `SciPy` asked live: the same equation on a fine grid, walked through time.

use super::onset_s;
use crate::harness::Tally;
use serde_json::Value;
use std::process::Command;
use winterseam::hot_water::Person;
use winterseam::units::celsius;

/// A quarter of our step in time changes no time by this; halving the grid of the peer changes its
/// times by less.
const RELATIVE: f64 = 1e-3;

#[test]
fn times_are_those_of_scipy_on_a_fine_grid() {
    let python = std::env::var("WINTERSEAM_PYTHON").expect("set by cargo verify");
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/peers/skin.py");
    let answer = Command::new(python).arg(script).output().expect("Python starts");
    assert!(answer.status.success(), "{}", String::from_utf8_lossy(&answer.stderr));
    let text = String::from_utf8(answer.stdout).expect("text");
    let mut tally = Tally::default();
    for line in text.lines() {
        let case: Value = serde_json::from_str(line).expect("JSON");
        let person = match case["person"].as_str() {
            Some("adult") => Person::Adult,
            Some("child") => Person::Child,
            Some("older_adult") => Person::OlderAdult,
            other => panic!("nobody is {other:?}"),
        };
        let water = case["water_c"].as_f64().expect("a number");
        let theirs = case["seconds"].as_f64().expect("within six hours");
        let ours = onset_s(person.exposure(), celsius(water));
        let agrees = (ours / theirs - 1.0).abs() <= RELATIVE;
        tally.note(&format!("{person:?} {water} °C"), "seconds", (ours, theirs), agrees, None);
    }
    tally.report("hot_water/scipy-live");
}
