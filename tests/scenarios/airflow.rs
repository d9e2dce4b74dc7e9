//! A furnace that is short of air. Source: the project's own safety rules; common practice.

use super::{answer, jobs, kinds, must_warn, plan, says};
use winterseam::wire::Answer;
use winterseam::words::Language;

fn findings(answer: &Answer) -> Vec<&str> {
    answer.findings.iter().map(|finding| finding.text.key.as_str()).collect()
}

/// A rise of 94 °F where the label allows 85: first air, then everything else.
#[test]
fn a_furnace_above_its_label_gets_air_before_anything_is_sealed() {
    let answer = plan("otter-ridge-3");
    assert_eq!(kinds(&answer), [("today", "W-OVERHEAT-LIMIT")]);
    let mends: Vec<&str> = answer.stops[0].mends.iter().map(|step| step.id.as_str()).collect();
    assert_eq!(mends, ["new_filter", "open_registers", "clear_return", "clean_blower"]);
    must_warn(&answer, &["W-POWER-OFF-FURNACE", "W-CO"]);
    let found = findings(&answer);
    for key in ["finding.rise_above", "finding.registers_closed", "finding.duct_gap_closet"] {
        assert!(found.contains(&key), "{key} of {found:?}");
    }
    let short = answer.findings.iter().find(|f| f.text.key == "finding.short_of_air");
    let said = format!("{:?}", short.expect("a diagnosis").text);
    assert!(said.contains("very_likely"), "{said}");
    assert!(!jobs(&answer).iter().any(|step| super::closes_gaps(step)), "{:?}", jobs(&answer));
    assert!(says(&answer, Language::English).contains("4 of 12 registers are closed"));
}

/// A gap at the coil blows back into the return: comfort, and no saving of heat.
#[test]
fn a_gap_at_the_coil_promises_no_saving() {
    let answer = plan("otter-ridge-3");
    let tape = answer.firsts.iter().chain(&answer.later).find(|step| step.id == "tape_cabinet");
    assert!(tape.expect("a step").saving.is_none());
}

fn tended(rise_f: f64, more: &str) -> Answer {
    answer(&format!(
        r#"{{"today": "2026-02-22", "home": {{"zip": "54701"}},
        "first_look": {{"co_alarm": "working", "smoke_alarm": "working"}},
        "heating": {{"fuel": "propane", "label_rise_min_f": 45, "label_rise_max_f": 75}},
        "furnace_filter": {{"look": "bright"}},
        "ducts": {{"registers_count": 9, "registers_closed_count": 0, "return_blocked": false,
        "return_f": 68, "supply_f": {} {more}}}}}"#,
        68.0 + rise_f
    ))
}

/// Filter, registers and return are in order, and it still runs too hot: off, and a technician.
#[test]
fn what_filter_and_registers_do_not_cure_stays_off() {
    assert_eq!(kinds(&tended(80.0, "")), [("off", "W-OVERHEAT-LIMIT")]);
    assert!(kinds(&tended(70.0, "")).is_empty());
    let card = &tended(80.0, "").stops[0].card;
    assert!(!card.is_empty(), "the next 24 hours");
}

/// A furnace that trips is short of air until a rise within its label says otherwise.
#[test]
fn a_furnace_that_goes_on_and_off_is_measured_before_anything_is_sealed() {
    let trips = |rise: &str| {
        answer(&format!(
            r#"{{"today": "2026-02-22", "home": {{"zip": "54701"}},
            "first_look": {{"smoke_alarm": "working", "other_burner": false}},
            "heating": {{"fuel": "electricity", "label_rise_min_f": 45, "label_rise_max_f": 75}}, "water_heater": {{"kind": "electric"}},
            "ducts": {{"short_cycles": true{rise}}},
            "gaps": [{{"place": "door_bottom", "length_in": 36, "width_in": 0.2}}]}}"#
        ))
    };
    let unmeasured = trips("");
    assert_eq!(kinds(&unmeasured), [("today", "W-OVERHEAT-LIMIT")]);
    assert!(!jobs(&unmeasured).iter().any(|step| super::closes_gaps(step)));
    let meanwhile: Vec<&str> =
        unmeasured.stops[0].meanwhile.iter().map(|thing| thing.key.as_str()).collect();
    assert_eq!(meanwhile, ["meanwhile.measure_rise_again", "meanwhile.smoke_alarm_tonight"]);
    let within = trips(r#", "return_f": 70, "supply_f": 130"#);
    assert!(kinds(&within).is_empty(), "{:?}", kinds(&within));
    assert!(jobs(&within).iter().any(|step| super::closes_gaps(step)), "{:?}", jobs(&within));
}

/// A gap that sucks in air beside a burner draws its fumes.
#[test]
fn a_gap_that_sucks_beside_a_burner_switches_it_off() {
    let gap = r#", "gaps": [{"place": "return_side", "length_in": 10, "width_in": 0.25,
        "air": "sucked_in"}]"#;
    assert_eq!(kinds(&tended(60.0, gap)), [("off", "W-GAS-PRO")]);
    let electric = answer(
        r#"{"today": "2026-02-22", "first_look": {"other_burner": false, "co_alarm": "working",
        "smoke_alarm": "working"}, "heating": {"fuel": "electricity"},
        "water_heater": {"kind": "electric"}, "ducts": {"gaps": [{"place": "return_side",
        "length_in": 10, "width_in": 0.25, "air": "sucked_in"}]}}"#,
    );
    assert!(kinds(&electric).is_empty(), "{:?}", kinds(&electric));
}

/// A crossover on the ground loses a third of the air; joined again, the year takes less.
#[test]
fn a_crossover_that_came_off_is_joined_and_saves() {
    let answer = answer(
        r#"{"today": "2026-09-22", "home": {"zip": "54701", "sections": "double"},
        "first_look": {"co_alarm": "working", "smoke_alarm": "working"},
        "heating": {"fuel": "propane", "price_usd": 2.5, "price_per": "gal"},
        "ducts": {"crossover": "fallen"}}"#,
    );
    let join = answer.firsts.iter().find(|step| step.id == "join_crossover").expect("a first");
    let saving = join.saving.as_ref().expect("a price is known");
    assert!(saving.value > 100.0 && saving.low > 0.0, "{saving:?}");
    let warned: Vec<&str> = join.cautions.iter().map(|caution| caution.code.as_str()).collect();
    assert!(warned.contains(&"W-BELLY-FREEZE"), "the belly gets colder: {warned:?}");
}

/// A heat pump behind a small, dense, blocked filter takes more for the same heat than behind a clean
/// wide one, and no half as much again (common practice).
#[test]
fn a_dense_dirty_filter_costs_a_heat_pump_power() {
    let kwh = |filter: &str| {
        let answer = answer(&format!(
            r#"{{"today": "2026-02-22", "home": {{"zip": "54701", "sections": "single"}},
            "heating": {{"fuel": "heat_pump"}}, "electricity_usd_per_kwh": 0.15,
            "furnace_filter": {{{filter}}}}}"#
        ));
        answer.uses.iter().map(|line| line.energy.value).sum::<f64>()
    };
    let clean = r#""look": "bright", "kind": "fiberglass", "width_in": 20, "height_in": 25"#;
    let dense = r#""look": "bright", "kind": "dense", "width_in": 16, "height_in": 20"#;
    let dirty = r#""look": "blocked", "kind": "dense", "width_in": 16, "height_in": 20"#;
    let [clean, dense, dirty] = [clean, dense, dirty].map(kwh);
    assert!(dirty > 1.02 * dense && dirty > 1.02 * clean, "{clean} {dense} {dirty}");
    assert!(dirty < 1.5 * clean, "a filter is no furnace: {clean} {dirty}");
}
