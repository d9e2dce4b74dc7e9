//! A closet with a burner: which side of it may be closed, and what must stay open.

use super::{jobs, must_warn, plan, says};
use winterseam::wire::{Tree, assess};
use winterseam::words::Language;

/// Source: fuel gas codes, 1 in² for each 4,000 Btu/h in each of two openings outdoors; the
/// handbook's air need through 20 cm², 13.2 Pa.
#[test]
fn beside_a_burner_only_the_room_side_of_a_closet_is_closed_and_by_a_qualified_person() {
    let answer = plan("larkmoor-lane-3");
    let step = answer.firsts.iter().chain(&answer.later).find(|s| s.id == "closet_inner_panel");
    assert_eq!(step.expect("looked at and seen open").who, "qualified");
    assert!(!jobs(&answer).contains(&"closet_outer_door"));
    must_warn(&answer, &["W-CLOSET-FREEZE", "W-DO-NOT-SEAL-COMBUSTION-AIR"]);
    let air: Vec<_> = answer.findings.iter().filter(|f| f.item == "burner_air").collect();
    let figure = |index: usize| air[index].figure.as_ref().expect("a figure");
    assert!((figure(0).value - 10.0).abs() < 1e-9 && figure(0).unit == "in2");
    assert!((figure(1).value - 13.2).abs() < 0.05 && figure(1).unit == "pa");
    assert!(
        says(&answer, Language::English)
            .contains("about 10 sq in clear or more, as its label says")
    );
    assert!(answer.notes.iter().any(|note| note.key == "note.burner_gap"));
}

/// What is said of the air that a water heater needs: the key, and the ends of the figure.
fn told(heater: &str) -> (String, Option<(f64, f64, String)>) {
    let request = format!(r#"{{"today": "2026-11-25", "water_heater": {heater}}}"#);
    let answer = assess(&Tree::from_json(&request).expect("JSON"), None).expect("right");
    must_warn(&answer, &["W-DO-NOT-SEAL-COMBUSTION-AIR"]);
    let air = answer.findings.into_iter().find(|f| f.item == "burner_air").expect("told");
    (air.text.key, air.figure.map(|f| (f.low, f.high, f.confidence)))
}

/// Source: fuel gas codes: 1 in² for each 4,000 Btu/h outdoors; to the rooms 1 in² for each 1,000
/// Btu/h and no less than 100 in². Without a label 30,000 to 50,000 Btu/h (from memory).
#[test]
fn what_a_closet_must_leave_open_follows_its_labels() {
    let outdoors = |fields: &str| told(&format!(r#"{{"place": "closet_outer_door"{fields}}}"#));
    let indoors = |fields: &str| told(&format!(r#"{{"place": "closet_inner_door"{fields}}}"#));
    let is = |(key, figure): (String, Option<(f64, f64, String)>),
              wanted,
              low: f64,
              high: f64,
              known| {
        let figure = figure.expect("a figure");
        assert_eq!((key.as_str(), figure.2.as_str()), (wanted, known));
        assert!((figure.0 - low).abs() < 1e-9 && (figure.1 - high).abs() < 1e-9, "{figure:?}");
    };
    let (out, inside) = ("finding.burner_air", "finding.burner_air_indoors");
    is(outdoors(r#", "shares_closet": false"#), out, 7.5, 12.5, "guessed");
    is(outdoors(r#", "shares_closet": true, "input_btu_h": 100000"#), out, 25.0, 25.0, "seen");
    is(
        indoors(r#", "kind": "draft_hood", "shares_closet": false"#),
        inside,
        100.0,
        100.0,
        "guessed",
    );
    is(
        indoors(r#", "kind": "sealed_combustion", "input_btu_h": 120000"#),
        inside,
        120.0,
        120.0,
        "seen",
    );
}

#[test]
fn beside_an_electric_tank_another_burner_needs_its_own_label() {
    for shares in ["true", "null"] {
        let heater = format!(
            r#"{{"place": "closet_outer_door", "kind": "electric", "shares_closet": {shares}}}"#
        );
        let (key, figure) = told(&heater);
        assert_eq!((key.as_str(), figure), ("finding.burner_air_unsized", None));
    }
}
