//! Seeded spendings against a living library.

use super::of;
use crate::harness::Tally;
use serde_json::Value;
use std::process::Command;
use uom::si::f64::Ratio;

/// Both work in the same 53 bits; powers to the fortieth cost a few of them.
const RELATIVE: f64 = 1e-10;

fn answers() -> Vec<Value> {
    let python = std::env::var("WINTERSEAM_PYTHON").expect("set by cargo verify");
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/peers/money.py");
    let output = Command::new(python).arg(script).output().expect("Python runs");
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let text = String::from_utf8(output.stdout).expect("text");
    text.lines().map(|line| serde_json::from_str(line).expect("JSON")).collect()
}

/// What ours says, by the name of the peer's column.
fn ours(case: &Value) -> Vec<(&'static str, Option<f64>)> {
    let number = |key: &str| case[key].as_f64().expect("a number");
    let (cost, saving, rate) = (number("cost"), number("saving"), number("rate"));
    let worth = of(cost, saving, number("years"), rate);
    let ratio = |r: Option<Ratio>| r.map(|r| r.value);
    vec![
        ("present_value", Some(worth.present_value.0)),
        ("present_value_of_part", Some(of(cost, saving, number("part"), rate).present_value.0)),
        ("savings_to_investment", ratio(worth.savings_to_investment)),
        ("discounted_payback", worth.discounted_payback.map(|y| y.0)),
        ("adjusted_irr", ratio(worth.adjusted_irr)),
    ]
}

fn agree(ours: Option<f64>, theirs: Option<f64>) -> bool {
    match (ours, theirs) {
        (None, None) => true,
        // A yield near zero is one less than a power: its digits are those of the power.
        (Some(a), Some(b)) => (a - b).abs() <= RELATIVE * b.abs().max(1.0),
        _ => false,
    }
}

#[test]
fn seeded_spendings_are_worth_what_the_library_says() {
    let mut tally = Tally::default();
    let answers = answers();
    assert!(answers.len() >= 200);
    for (number, case) in answers.iter().enumerate() {
        for (column, ours) in ours(case) {
            let theirs = case[column].as_f64();
            let shown = |v: Option<f64>| v.unwrap_or(f64::NAN);
            let pair = (shown(ours), shown(theirs));
            tally.note(&number.to_string(), column, pair, agree(ours, theirs), None);
        }
    }
    tally.report("worth/numpy-financial");
}
