//! Every line of the safety rules on hot water, at its edge, and the way of the coach. Source: the
//! project's own safety rules.

use super::{answer, jobs, kinds, must_warn, says};
use serde_json::{Value, json};
use winterseam::wire::Answer;
use winterseam::words::Language;

const NOBODY_FRAIL: [&str; 3] = ["child_under_5", "age_65_or_more", "cannot_feel_or_move"];

fn with(people: &Value, heater: &Value) -> Answer {
    let mut all = json!({"lung_or_immune": false});
    for flag in NOBODY_FRAIL {
        all[flag] = json!(false);
    }
    for (key, value) in people.as_object().expect("a map") {
        all[key] = value.clone();
    }
    let request = json!({
        "today": "2026-12-01", "people": all, "water_heater": heater,
        "first_look": {"co_alarm": "working", "smoke_alarm": "working"},
    });
    answer(&request.to_string())
}

fn tap(people: &Value, tap_f: f64) -> Answer {
    with(people, &json!({"kind": "electric", "tap_f": tap_f}))
}

fn stopped<'a>(
    answer: &'a Answer,
    kind: &str,
    codes: &[&str],
) -> Option<&'a winterseam::wire::Stop> {
    answer.stops.iter().find(|stop| stop.kind == kind && codes.contains(&stop.code.as_str()))
}

fn hot_tap(answer: &Answer) -> bool {
    stopped(answer, "today", &["W-SCALD", "W-SCALD-CHILD"]).is_some()
}

#[test]
fn from_150_anyone_is_stopped_today() {
    assert!(!hot_tap(&tap(&json!({}), 149.9)));
    for tap_f in [150.0, 155.0, 159.9] {
        assert!(hot_tap(&tap(&json!({}), tap_f)), "{tap_f}");
    }
}

#[test]
fn from_130_a_home_is_stopped_where_someone_burns_faster() {
    for flag in NOBODY_FRAIL {
        assert!(!hot_tap(&tap(&json!({flag: true}), 129.9)), "{flag}");
        assert!(hot_tap(&tap(&json!({flag: true}), 130.0)), "{flag}");
    }
    // Who was not asked about may be a child.
    assert!(hot_tap(&tap(&json!({"child_under_5": null}), 130.0)));
    assert!(!hot_tap(&tap(&json!({}), 130.0)));
}

#[test]
fn until_it_is_mended_cold_first_mix_measure_and_no_child_alone() {
    let answer = tap(&json!({"child_under_5": true}), 135.0);
    let stop = stopped(&answer, "today", &["W-SCALD-CHILD"]).expect("a stop");
    let said: Vec<&str> = stop.meanwhile.iter().map(|phrase| phrase.key.as_str()).collect();
    assert_eq!(
        said,
        ["meanwhile.cold_first", "meanwhile.infant_bath", "meanwhile.child_never_alone"]
    );
    let english = says(&answer, Language::English);
    for words in ["cold water first", "thermometer", "100 °F at most", "Never leave a child alone"]
    {
        assert!(english.contains(words), "{words}");
    }
    assert_eq!(stop.mends.first().map(|step| step.id.as_str()), Some("turn_down"));
    must_warn(&answer, &["W-BURN-FIRST-AID"]);
}

#[test]
fn from_160_the_tank_goes_off_and_nothing_is_to_be_read_again() {
    for tap_f in [160.0, 170.0, 185.0, 186.0, 200.0, 212.0, 230.0] {
        let answer = tap(&json!({}), tap_f);
        let stop = stopped(&answer, "off", &["W-TANK-DANGER"]).expect("a stop");
        assert!(!stop.card.is_empty() && stop.meanwhile[0].key == "meanwhile.breaker_check");
        assert!(answer.savings_hidden && !hot_tap(&answer), "{tap_f}");
        assert!(!jobs(&answer).contains(&"turn_down"), "nobody touches it");
        assert!(answer.tap.as_ref().is_some_and(|tap| tap.coach.is_empty()), "{tap_f}");
        let asked: Vec<&str> = answer.look_next.iter().map(|p| p.key.as_str()).collect();
        assert!(!asked.contains(&"look.tap") && !asked.contains(&"look.tap_asked_back"));
    }
}

#[test]
fn steam_rumbling_and_a_bad_relief_valve_put_the_tank_off_at_any_reading() {
    for sign in [
        json!({"steam_or_rumbling": true}),
        json!({"relief": "running"}),
        json!({"relief": "missing"}),
        json!({"relief": "plugged", "tap_f": 118}),
    ] {
        let answer = with(&json!({}), &sign);
        assert!(stopped(&answer, "off", &["W-TANK-DANGER"]).is_some(), "{sign}");
    }
    let sound = with(&json!({}), &json!({"relief": "sound", "steam_or_rumbling": false}));
    assert!(stopped(&sound, "off", &["W-TANK-DANGER"]).is_none());
}

#[test]
fn under_75_the_reading_is_asked_back_and_cool_water_is_a_finding() {
    let asked = |tap_f: f64| {
        let answer = tap(&json!({}), tap_f);
        let keys = |list: &[winterseam::wire::Phrase]| {
            list.iter().map(|phrase| phrase.key.clone()).collect::<Vec<_>>()
        };
        let found = answer.findings.iter().any(|f| f.text.key.starts_with("finding.tap_cool"));
        (keys(&answer.look_next).contains(&"look.tap_asked_back".to_owned()), found)
    };
    assert_eq!(asked(48.9), (true, true), "a reading in °C, most likely");
    assert_eq!(asked(74.9), (true, true));
    assert_eq!(asked(75.0), (false, true));
    assert_eq!(asked(109.9), (false, true));
    assert_eq!(asked(110.0), (false, false));
    assert_eq!(asked(122.0), (false, false));
}

#[test]
fn outside_of_32_to_230_a_reading_is_refused_by_name() {
    use winterseam::climate::Atlas;
    use winterseam::wire::{Tree, assess};
    for (tap_f, fits) in [(31.9, false), (32.0, true), (230.0, true), (230.1, false)] {
        let request = json!({"today": "2026-12-01", "water_heater": {"tap_f": tap_f}});
        let tree = Tree::from_json(&request.to_string()).expect("JSON");
        match assess(&tree, Some(Atlas::embedded())) {
            Ok(_) => assert!(fits, "{tap_f}"),
            Err(problems) => {
                assert!(!fits && problems[0].path == "water_heater.tap_f", "{tap_f}");
            }
        }
    }
}

#[test]
fn weak_lungs_mean_the_care_team_and_a_valve_and_never_the_dial() {
    for (tap_f, finds_it_cool) in [(105.0, true), (116.0, true), (118.0, false), (140.0, false)] {
        let answer = tap(&json!({"lung_or_immune": true}), tap_f);
        let cool = answer.findings.iter().any(|f| f.text.key == "finding.tap_cool_care");
        assert_eq!(cool, finds_it_cool, "{tap_f}");
        assert!(!jobs(&answer).contains(&"turn_down"));
        must_warn(&answer, &["W-LEGIONELLA"]);
    }
    let hot = tap(&json!({"lung_or_immune": true}), 140.0);
    assert!(jobs(&hot).contains(&"mixing_valve"));
    assert_eq!(coach(&hot), ["coach.care"]);
}

fn coach(answer: &Answer) -> Vec<&str> {
    let tap = answer.tap.as_ref().expect("a reading");
    tap.coach.iter().map(|phrase| phrase.key.as_str()).collect()
}

#[test]
fn behind_a_mixing_valve_the_valve_is_set_and_the_dial_is_left_alone() {
    let heater =
        json!({"kind": "draft_hood", "openings": "open", "tap_f": 138, "mixing_valve": true});
    let answer = with(&json!({}), &heater);
    assert_eq!(coach(&answer), ["coach.valve"]);
    assert!(jobs(&answer).contains(&"set_valve") && !jobs(&answer).contains(&"turn_down"));
}

#[test]
fn each_kind_of_heater_is_turned_down_its_own_way() {
    let said = |kind: &str| {
        let heater = json!({"kind": kind, "openings": "open", "tap_f": 140});
        coach(&with(&json!({}), &heater)).join(" ")
    };
    assert!(said("draft_hood").starts_with("coach.pencil coach.down coach.wait"));
    assert!(said("electric").starts_with("coach.both_thermostats coach.cover_back coach.down"));
    for numbered in ["heat_pump", "tankless_gas", "tankless_electric"] {
        assert_eq!(said(numbered), "coach.number");
    }
    let unseen = coach(&with(&json!({}), &json!({"tap_f": 140}))).join(" ");
    assert_eq!(unseen, "coach.kind_first coach.down");
    let electric = with(&json!({}), &json!({"kind": "electric", "tap_f": 140}));
    let step = electric.firsts.iter().chain(&electric.later).find(|step| step.id == "turn_down");
    assert_eq!(step.expect("a job").who, "qualified", "240 volts behind the plates");
}

#[test]
fn a_renter_asks_first() {
    let request = json!({
        "today": "2026-12-01", "home": {"tenure": "rents_home"},
        "water_heater": {"kind": "draft_hood", "openings": "open", "tap_f": 126},
    });
    assert_eq!(coach(&answer(&request.to_string()))[0], "coach.renter");
}

#[test]
fn readings_at_successive_marks_lead_down_and_a_turn_too_far_is_taken_back() {
    let said = |turns: Value| {
        let heater =
            json!({"kind": "draft_hood", "openings": "open", "tap_f": 140, "turns": turns});
        let answer = with(&json!({}), &heater);
        (coach(&answer).join(" "), answer)
    };
    let (next, after_one) = said(json!([{"marks_down": 1, "tap_f": 130}]));
    assert_eq!(next, "coach.down coach.wait_hours");
    let reading = after_one.tap.as_ref().expect("a reading").reading_f;
    assert!((reading - 130.0).abs() < 1e-9, "the latest reading counts");
    assert!(!hot_tap(&said(json!([{"marks_down": 1, "tap_f": 128}])).1));
    let turns = json!([{"marks_down": 1, "tap_f": 130}, {"marks_down": 1.75, "tap_f": 122}]);
    assert_eq!(said(turns).0, "coach.stay");
    let too_far = json!([{"marks_down": 1, "tap_f": 108}]);
    assert!(said(too_far).0.starts_with("coach.back"));
}

#[test]
fn no_jacket_is_advised_round_a_burner() {
    for (kind, advised) in [("draft_hood", false), ("sealed_combustion", false), ("electric", true)]
    {
        let request = json!({
            "today": "2026-12-01", "home": {"zip": "59801"}, "electricity_usd_per_kwh": 0.15,
            "first_look": {"co_alarm": "working", "smoke_alarm": "working"},
            "water_heater": {"kind": kind, "openings": "open", "tap_f": 121, "jacket": false,
                "place": "closet_outer_door"},
        });
        let answer = answer(&request.to_string());
        assert_eq!(jobs(&answer).contains(&"tank_jacket"), advised, "{kind}");
    }
}

#[test]
fn how_to_read_a_tap_rightly_stands_with_every_reading() {
    let noted = |answer: &Answer, key: &str| answer.notes.iter().any(|note| note.key == key);
    let robust = tap(&json!({}), 124.0);
    assert!(noted(&robust, "note.tap_reading") && !noted(&robust, "note.tub_too"));
    assert!(noted(&tap(&json!({"age_65_or_more": true}), 118.0), "note.tub_too"));
    let english = says(&robust, Language::English);
    assert!(english.contains("A mark on the dial is no temperature"));
}

#[test]
fn the_picture_and_its_table_hold_every_reading_and_the_people_who_live_there() {
    let answer = tap(&json!({"child_under_5": true, "cannot_feel_or_move": true}), 128.0);
    let picture = answer.tap.as_ref().expect("a reading");
    assert_eq!(picture.people.len(), 3);
    let here: Vec<_> = picture.rows.iter().filter(|row| row.is_reading).collect();
    assert!(here.len() == 1 && (here[0].water_f - 128.0).abs() < 1e-9);
    for who in 0..3 {
        let heights: Vec<f64> = picture.rows.iter().map(|row| row.times[who].height).collect();
        assert!(
            heights.is_sorted_by(|a, b| a >= b) && heights.iter().all(|h| (0.0..=1.0).contains(h))
        );
    }
    assert!(kinds(&answer).iter().all(|(kind, _)| *kind != "off"));
}
