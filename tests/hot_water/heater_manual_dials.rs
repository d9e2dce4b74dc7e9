use super::yes;
use crate::harness::{Row, Table};
use winterseam::home::Turn;
use winterseam::hot_water::coach::{Advice, advice};
use winterseam::units::fahrenheit;

const MARKS: [&str; 6] = ["very_hot", "c", "b", "a", "hot", "low"];

/// The tap with the dial so many marks below its hottest.
fn tap_f(row: &Row, down: f64) -> f64 {
    let at = down.floor().clamp(0.0, 4.0);
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "0 to 4")]
    let [from, to] = [MARKS[at as usize], MARKS[at as usize + 1]].map(|mark| row.number(mark));
    from + (to - from) * (down - at)
}

/// Every reading on the way down.
fn walk(row: &Row) -> Vec<f64> {
    let mut turns = vec![Turn { marks_down: 0.0, tap: fahrenheit(tap_f(row, 0.0)) }];
    let mut readings = vec![tap_f(row, 0.0)];
    while let Some(Advice::Down(marks)) = advice(&turns, fahrenheit(120.0)) {
        let marks_down = turns.last().expect("the first").marks_down + marks;
        readings.push(tap_f(row, marks_down));
        turns.push(Turn { marks_down, tap: fahrenheit(tap_f(row, marks_down)) });
    }
    readings
}

#[test]
fn the_coach_walks_the_dials_of_manuals_down_and_never_below() {
    Table::read("hot_water/heater-manual-dials").compare(|row| {
        let readings = walk(row);
        let least = readings.iter().copied().fold(f64::MAX, f64::min);
        vec![
            ("never_below", yes(least >= 120.0 - 1e-9)),
            ("ends_near_f", *readings.last().expect("the first")),
            ("two_marks_f", tap_f(row, 2.0) - tap_f(row, 4.0)),
        ]
    });
}
