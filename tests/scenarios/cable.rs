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

/// A thermostat that failed its test is no thermostat: it is told, mended this week, and its year may
/// be anything from little to all of it. Source: the project's own safety rules.
#[test]
fn a_thermostat_that_failed_its_test_is_not_believed() {
    let with = |proved: &str| {
        answer(&format!(
            r#"{{"today": "2026-11-25", "home": {{"zip": "59801"}}, "electricity_usd_per_kwh": 0.13,
            "heat_cable": {{"present": true, "control": "thermostat", "length_ft": 30,
            "power_w_per_ft": 6, "thermostat_proved": {proved}}}}}"#
        ))
    };
    let (failed, proved) = (with("false"), with("true"));
    let tells = |answer: &winterseam::wire::Answer, key: &str| {
        answer.findings.iter().any(|finding| finding.text.key == key)
    };
    assert!(tells(&failed, "finding.thermostat_failed"));
    assert!(!tells(&proved, "finding.thermostat_failed"));
    let has = |answer: &winterseam::wire::Answer| {
        answer.firsts.iter().any(|step| step.id == "cable_thermostat")
    };
    assert!(has(&failed) && !has(&proved));
    let high = |answer: &winterseam::wire::Answer| {
        answer.uses.iter().find(|line| line.key == "heat_cable").expect("a cable").energy.high
    };
    assert!(high(&failed) > 1.5 * high(&proved));
    // 180 W all year are 1,577 kWh, and a tenth for the tag.
    assert!((high(&failed) - 1_577.0 * 1.1).abs() < 10.0, "{}", high(&failed));
}

/// A tag of 1 W/ft on a bare pipe is too little for the coldest night; it is told with what is needed,
/// and a tag that promises more is never told to be enough.
#[test]
fn a_cable_too_weak_for_the_coldest_night_is_told() {
    let with = |watts: f64| {
        answer(&format!(
            r#"{{"today": "2026-11-25", "home": {{"zip": "56649"}}, "heat_cable": {{"present": true,
            "control": "thermostat", "power_w_per_ft": {watts}, "pipe_outside_in": 0.875,
            "insulation_in": 0}}}}"#
        ))
    };
    let weak = |answer: &winterseam::wire::Answer| {
        answer.findings.iter().any(|finding| finding.text.key == "finding.cable_weak")
    };
    assert!(weak(&with(1.0)) && !weak(&with(30.0)));
    for language in Language::ALL {
        let said = says(&with(30.0), language).to_lowercase();
        assert!(!said.contains("enough heat") && !said.contains("not needed"), "{said}");
    }
}

/// A cable that may be unplugged in August comes out now and has two dates: in before frost, out in
/// spring. Its year: 420 W for 8,760 h are 3,679 kWh, $478 at $0.13; a plug-in meter read 415 W.
#[test]
fn the_cable_of_all_year_gets_its_money_and_two_reminders() {
    let answer = plan("tamarack-5");
    let names: Vec<&str> = answer.reminders.iter().map(|r| r.title.key.as_str()).collect();
    for name in ["reminder.cable_in.title", "reminder.cable_out.title"] {
        assert!(names.contains(&name), "{name} of {names:?}");
    }
    let cable = answer.uses.iter().find(|line| line.key == "heat_cable").expect("a cable");
    assert!((cable.energy.value - 3_679.0).abs() < 1.0, "{}", cable.energy.value);
    let cost = cable.cost.as_ref().expect("a price");
    assert!(cost.low < 475.0 && 475.0 < cost.high, "{cost:?}");
    let said = says(&answer, Language::English);
    assert!(said.contains("next 10 nights stay above 36 °F. Else wait a week"), "{said}");
}

/// Off and the pipe plan are one: where the answer says the one it says the other, in each language.
#[test]
fn a_charred_cable_is_never_off_without_the_plan_for_its_pipe() {
    let answer = plan("birch-fork-14");
    let stop = answer.stops.iter().find(|stop| stop.code == "W-HEATCABLE-FIRE").expect("a stop");
    let keys: Vec<&str> = stop.meanwhile.iter().map(|phrase| phrase.key.as_str()).collect();
    let at = |key: &str| keys.iter().position(|k| *k == key).unwrap_or_else(|| panic!("{keys:?}"));
    assert!(at("meanwhile.cable_off") < at("meanwhile.drain_before_dark"));
    for language in Language::ALL {
        let said = says(&answer, language);
        let (off, drain) = match language {
            Language::English => ("OFF now", "drain"),
            Language::Spanish => ("APÁGUELO ya", "vac"),
        };
        assert!(said.contains(off) && said.contains(drain), "{language:?}: {said}");
    }
}
