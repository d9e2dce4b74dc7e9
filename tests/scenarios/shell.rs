//! Windows, skirting and belly. Source: the project's own safety rules; common practice.

use super::{answer, jobs, must_warn, plan, says, warns};
use serde_json::{Value, json};
use winterseam::wire::{Answer, Step};
use winterseam::words::Language;

/// A home of single panes without a danger, some of them no way out.
fn glazed(today: &str, zip: &Value, more: &Value) -> Answer {
    let mut request = json!({
        "today": today, "home": {"zip": zip, "sections": "single", "year_built": 1985,
            "cooling": "none"},
        "people": {"oxygen": false}, "heating": {"fuel": "electricity"},
        "first_look": {"co_alarm": "working", "smoke_alarm": "working", "other_burner": false},
        "water_heater": {"kind": "electric"}, "electricity_usd_per_kwh": 0.15,
        "windows": [
            {"label": "kitchen", "count": 3, "glazing": "single", "escape": false},
            {"label": "bedroom", "count": 2, "glazing": "single", "escape": true},
            {"label": "hall", "count": 1, "glazing": "single"},
        ],
    });
    for (key, value) in more.as_object().expect("fields") {
        request[key] = value.clone();
    }
    answer(&request.to_string())
}

fn step<'a>(answer: &'a Answer, id: &str) -> Option<&'a Step> {
    answer.firsts.iter().chain(&answer.later).find(|step| step.id == id)
}

fn codes(step: &Step) -> Vec<&str> {
    step.cautions.iter().map(|caution| caution.code.as_str()).collect()
}

/// At Missoula days stay below 50 °F on their mean until about the first of May (U.S. Climate Normals
/// 1991–2020: April 45 °F, May 54 °F).
#[test]
fn film_is_offered_while_enough_of_the_winter_lies_ahead() {
    let offered =
        |today: &str, zip: Value| step(&glazed(today, &zip, &json!({})), "window_film").is_some();
    for (today, worth_it) in [
        ("2026-04-15", false),
        ("2026-06-15", false),
        ("2026-10-01", true),
        ("2026-12-15", true),
        ("2027-02-01", true),
        ("2027-03-25", false),
    ] {
        assert_eq!(offered(today, json!("59801")), worth_it, "{today}");
    }
    assert!(!offered("2026-12-15", json!("96813")), "where no day is cold");
    assert!(!offered("2026-06-15", Value::Null) && offered("2026-11-15", Value::Null));
}

/// All of the kitchen's, none of the bedroom's, and none where nobody asked whether it is a way out.
#[test]
fn film_is_bought_for_and_told_of_the_windows_that_are_no_way_out() {
    let answer = glazed("2026-11-15", &json!("59801"), &json!({"people": {"oxygen": true}}));
    let film = step(&answer, "window_film").expect("single panes");
    assert!((film.materials[0].quantity - 1.0).abs() < 1e-9, "one kit for three windows");
    assert!((film.life.value - 1.0).abs() < 1e-9, "one season");
    let english = says(&answer, Language::English);
    assert!(english.contains("Only here: kitchen."), "{english}");
    assert!(english.contains("Oxygen users leave the room while it is shrunk."));
    assert!(says(&answer, Language::Spanish).contains("Quien usa oxígeno sale del cuarto"));
    for code in ["W-EGRESS-WINDOW", "W-OXYGEN"] {
        assert!(codes(film).contains(&code), "{code}");
    }
    assert!(step(&answer, "storm_window").is_none(), "one or the other");
    let june = glazed("2026-06-15", &json!("59801"), &json!({}));
    let storm = step(&june, "storm_window").expect("single panes without a film");
    assert!((storm.materials[0].quantity - 3.0).abs() < 1e-9, "the kitchen's three");
}

/// A film over a sash with a gap leaves less air for a flame.
#[test]
fn a_film_that_closes_a_gap_warns_like_a_seal() {
    let gaps = json!([{"place": "window_sash", "label": "kitchen", "length_in": 140,
        "width_in": 0.0625, "leads_to": "outdoors"}]);
    let warned = |gaps: Value| {
        let answer = glazed("2026-11-15", &json!("59801"), &json!({"gaps": gaps}));
        let film = step(&answer, "window_film").expect("single panes");
        codes(film).contains(&"W-VENT-AFTER-TIGHT")
    };
    assert!(warned(gaps) && !warned(json!([])));
}

#[test]
fn missing_skirting_is_told_by_its_length_and_bales_are_warned_of() {
    let answer = plan("tamarack-5");
    let english = says(&answer, Language::English);
    assert!(english.contains("50 of 168 feet of skirting are missing"), "{english}");
    must_warn(&answer, &["W-HAY-BALES"]);
    let skirting = step(&answer, "skirting").expect("some is missing");
    assert_eq!(skirting.who, "able_adult");
    assert!((skirting.materials[0].quantity - 13.0).abs() < 1e-9, "50 ft of 4 ft panels");
    assert!(!codes(skirting).contains(&"W-RENTER-WRITTEN-NOTICE"));
}

/// Bales against skirting that is whole are a danger all the same.
#[test]
fn bales_are_warned_of_wherever_they_stand() {
    let bales = |bales: Value| {
        let home = json!({"zip": "59801", "skirting_open": false, "hay_bales": bales});
        let answer = answer(&json!({"today": "2026-11-15", "home": home}).to_string());
        warns(&answer).contains(&"W-HAY-BALES")
    };
    assert!(bales(json!(true)) && !bales(json!(false)) && !bales(Value::Null));
}

/// Someone who rents asks first; under the home power is off, and no animal is shut in.
#[test]
fn belly_work_is_for_a_crew_with_power_off_and_no_animal_inside() {
    for (belly, id) in [("torn", "belly_patch"), ("missing", "belly_insulation")] {
        let home = json!({"home": {"zip": "59801", "sections": "single", "year_built": 1985,
            "belly": belly, "skirting_open": true, "tenure": "rents_home"}});
        let answer = glazed("2026-11-15", &Value::Null, &home);
        assert!(jobs(&answer).contains(&"skirting"), "{:?}", jobs(&answer));
        let work = step(&answer, id).expect(belly);
        assert_eq!(work.who, "qualified");
        let codes = codes(work);
        for code in ["W-ELECTRIC-OFF-UNDER", "W-CRAWL-COLD-RODENT", "W-RENTER-WRITTEN-NOTICE"] {
            assert!(codes.contains(&code), "{id}: {code} of {codes:?}");
        }
        for (language, animal) in
            [(Language::English, "no animal is inside"), (Language::Spanish, "no haya animales")]
        {
            // Once for the skirting, once for the belly.
            assert_eq!(says(&answer, language).matches(animal).count(), 2, "{id}");
        }
    }
}
