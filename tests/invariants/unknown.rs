//! What nobody saw is unknown: it never makes a figure surer, narrower or a thing good.

use super::answered;
use super::random::{Luck, request};
use serde_json::{Value, json};

/// From sure to guessed.
const CONFIDENCE: [&str; 4] = ["billed", "measured", "seen", "guessed"];

fn rank(confidence: &Value) -> usize {
    CONFIDENCE.iter().position(|word| confidence == word).expect("a word of confidence")
}

fn without(request: &Value, path: &str) -> Value {
    let mut less = request.clone();
    let (group, field) = path.split_once('.').expect("a field of a group");
    if let Some(known) = less[group].get_mut(field) {
        known.take();
    }
    less
}

/// What each use and each burn time is known by, by the name of it.
fn known(answer: &Value) -> Vec<(String, usize)> {
    let uses = answer["uses"].as_array().expect("a list").iter();
    let uses = uses.map(|one| (one["key"].to_string(), rank(&one["energy"]["confidence"])));
    let findings = answer["findings"].as_array().expect("a list").iter();
    let burns = findings.filter(|f| f["item"] == "tap" && !f["figure"].is_null());
    let burns =
        burns.map(|f| (f["text"]["args"]["who"].to_string(), rank(&f["figure"]["confidence"])));
    uses.chain(burns).collect()
}

#[test]
fn a_field_less_never_makes_a_figure_surer() {
    let fields = [
        "home.setpoint_f",
        "home.shelter",
        "heating.fuel",
        "heat_cable.length_ft",
        "heat_cable.power_w_per_ft",
        "heat_cable.control",
        "water_heater.thermometer_checked",
    ];
    let mut compared = 0;
    for seed in 0..8 {
        let mut request = request(&mut Luck::new(seed), true);
        request["heating"]["price_usd"] = Value::Null;
        request["heating"]["price_per"] = Value::Null;
        let before = known(&answered(&request));
        for field in fields {
            for (name, rank) in known(&answered(&without(&request, field))) {
                let Some(was) = before.iter().find(|was| was.0 == name) else { continue };
                assert!(rank >= was.1, "{field}: {name} of {request}");
                compared += 1;
            }
        }
    }
    assert!(compared > 50, "{compared}");
}

#[test]
fn nothing_is_good_that_nobody_saw() {
    let seen_at = [
        ("good.co_alarm", vec!["first_look.co_alarm"]),
        ("good.smoke_alarm", vec!["first_look.smoke_alarm"]),
        // A reading at a later place of the dial is one of the tap, too.
        ("good.tap", vec!["water_heater.tap_f", "water_heater.turns"]),
        ("good.openings", vec!["water_heater.openings"]),
        ("good.filter", vec!["furnace_filter.look"]),
    ];
    let mut goods = 0;
    for seed in 0..200 {
        let request = request(&mut Luck::new(seed), false);
        let answer = answered(&request);
        for (key, paths) in &seen_at {
            let said = |answer: &Value| {
                answer["findings"].as_array().unwrap().iter().any(|f| f["text"]["key"] == *key)
            };
            if said(&answer) {
                goods += 1;
                let unseen = paths.iter().fold(request.clone(), |less, path| without(&less, path));
                assert!(!said(&answered(&unseen)), "{key}: {request}");
            }
        }
    }
    assert!(goods > 100, "{goods}");
}

fn cable(fields: &Value) -> Value {
    let mut request = json!({
        "today": "2026-07-01", "home": {"zip": "59801"},
        "heat_cable": {"present": true, "length_ft": 24, "power_w_per_ft": 7, "control": "always_on"},
    });
    for (key, value) in fields.as_object().expect("fields") {
        request["heat_cable"][key] = value.clone();
    }
    let answer = answered(&request);
    answer["uses"][0]["energy"].clone()
}

/// The high end over the low one.
fn spread(energy: &Value) -> f64 {
    energy["high"].as_f64().expect("a number") / energy["low"].as_f64().expect("a number")
}

#[test]
fn a_cable_is_known_better_the_more_of_its_tag_was_read() {
    let tag = cable(&json!({}));
    let one = [json!({"length_ft": null}), json!({"power_w_per_ft": null})].map(|f| cable(&f));
    let none = cable(&json!({"length_ft": null, "power_w_per_ft": null}));
    assert_eq!(tag["confidence"], "seen");
    for energy in &one {
        assert!(spread(&tag) < spread(energy) && spread(energy) < spread(&none));
        assert_eq!(energy["confidence"], "guessed");
    }
}

/// Nobody knows what switches it: full power all year, or a few cold weeks.
#[test]
fn a_cable_whose_switch_nobody_saw_is_guessed() {
    let (seen, unseen) = (cable(&json!({})), cable(&json!({"control": null})));
    assert!(spread(&unseen) > spread(&seen));
    assert_eq!(unseen["confidence"], "guessed");
}
