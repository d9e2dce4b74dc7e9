//! The heat cable over the year: when it comes out, when it goes in, and how it is tried.

use super::{answer, plan, says};
use winterseam::climate::Atlas;
use winterseam::words::Language;

/// Source: the project's own safety rules: 14 days before the date of one first freeze in ten. The median first freeze of this ZIP is read off the climate table; one year
/// in ten it comes 13 to 16 days sooner.
#[test]
fn a_cable_comes_out_and_is_looked_at_in_spring_and_goes_in_again_before_frost() {
    let answer = plan("tamarack-5");
    let named = |name: &str| {
        let title = format!("reminder.{name}.title");
        answer.reminders.iter().find(|r| r.title.key == title)
    };
    let plug_in = named("cable_in").expect("autumn");
    let first =
        Atlas::embedded().place("58201").expect("known").station.freeze.expect("frost").first;
    let day = plug_in.date.parse::<jiff::civil::Date>().expect("a date").day_of_year();
    let ahead = i32::from(first) - i32::from(day);
    assert!((14 + 13..=14 + 16 + 10).contains(&ahead), "{ahead} days");
    assert_eq!(named("hoses").expect("taps outside").date, plug_in.date);
    let said = says(&answer, Language::English);
    assert!(said.contains("test, see the light"));
}

/// Source: the project's own safety rules: thermostats are tried with an ice pack and a watt meter;
/// before dark a gas heater goes to pilot, or to a qualified person.
#[test]
fn a_thermostat_is_tried_before_it_is_believed_and_a_tank_is_off_before_it_is_drained() {
    let request = |proved: &str| {
        format!(
            r#"{{"today": "2026-11-25", "home": {{"zip": "59801"}},
            "people": {{"child_under_5": false, "age_65_or_more": false, "cannot_feel_or_move": false}},
            "first_look": {{"co_alarm": "working", "smoke_alarm": "working"}},
            "water_heater": {{"kind": "electric", "tap_f": 120}},
            "heat_cable": {{"present": true, "control": "thermostat", "thermostat_proved": {proved}}}}}"#
        )
    };
    let asks = |proved| {
        let answer = answer(&request(proved));
        answer.look_next.iter().any(|look| look.key == "look.cable_thermostat")
    };
    assert!(asks("null") && !asks("true") && !asks("false"));
    let said = says(&plan("birch-fork-14"), Language::English);
    assert!(said.contains("water heater off first") && said.contains("dial to pilot"));
}
