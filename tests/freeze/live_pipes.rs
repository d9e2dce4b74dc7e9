//! Random pipes asked through the door, against general-purpose libraries on real air.

use crate::harness::Tally;
use serde_json::Value;
use std::process::Command;
use winterseam::wire::{Tree, ask_for};

/// The 1976 law of the conductivity of air lies up to 1.3 % below real air.
const STILL: f64 = 0.03;
/// In wind viscosity and conductivity both enter, and the film is nearly all that resists.
const WINDY: f64 = 0.06;
/// The same closed form by other hands: rounding only.
const SAME_FORMULA: f64 = 1e-9;
/// What the stated share of the film makes of the surface: that share of the whole difference.
const SURFACE_SHARE: f64 = 0.01;

const PIPES: usize = 300;

fn lines() -> Vec<Value> {
    let python = std::env::var("WINTERSEAM_PYTHON").expect("set by cargo verify");
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/peers/pipes.py");
    let output = Command::new(python).arg(script).output().expect("Python runs");
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let text = String::from_utf8(output.stdout).expect("text");
    text.lines().map(|line| serde_json::from_str(line).expect("JSON")).collect()
}

/// What the probe says to a line.
fn answer(line: &Value) -> Value {
    let name = line["ask"].as_str().expect("a name");
    let fields = Tree::from_json(&line["fields"].to_string()).expect("fields");
    ask_for(name, &fields, None).unwrap_or_else(|why| panic!("{line}: {why:?}"))
}

fn number(value: &Value, key: &str) -> f64 {
    value[key].as_f64().unwrap_or_else(|| panic!("{key} of {value}"))
}

#[test]
fn random_pipes_lose_and_freeze_as_the_libraries_say() {
    let mut tally = Tally::default();
    let lines = lines();
    assert_eq!(lines.len(), PIPES);
    for (at, pair) in lines.iter().enumerate() {
        compare_loss(&format!("pipe {at}"), &pair[0], &mut tally);
        compare_times(&format!("pipe {at}"), &pair[1], &mut tally);
    }
    tally.report("freeze/live-pipes");
}

fn compare_loss(id: &str, line: &Value, tally: &mut Tally) {
    let (fields, ours, theirs) = (&line["fields"], answer(line), &line["ours_should_be"]);
    let share = if number(fields, "wind_m_s") > 0.0 { WINDY } else { STILL };
    let pair = (number(&ours, "loss_w_m"), number(theirs, "loss_w_m"));
    tally.note(id, "loss_w_m", pair, (pair.0 - pair.1).abs() <= share * pair.1.abs(), None);
    let apart = (number(fields, "pipe_c") - number(fields, "air_c")).abs();
    let pair = (number(&ours, "surface_c"), number(theirs, "surface_c"));
    tally.note(id, "surface_c", pair, (pair.0 - pair.1).abs() <= SURFACE_SHARE * apart, None);
}

fn compare_times(id: &str, line: &Value, tally: &mut Tally) {
    let (ours, theirs) = (answer(line), &line["ours_should_be"]);
    for key in ["to_zero_h", "to_solid_h"] {
        let pair = (number(&ours, key), number(theirs, key));
        tally.note(id, key, pair, (pair.0 - pair.1).abs() <= SAME_FORMULA * pair.1, None);
    }
}
