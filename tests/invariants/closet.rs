//! The closet of the water heater: what a burner there may need stays open. The rules are written
//! out here once more, from what was typed, without a look at how the core decides.

use super::random::{Luck, request};
use super::typed;
use serde_json::{Value, json};
use winterseam::home::Home;
use winterseam::plan::plan;
use winterseam::repairs::{self, Who};
use winterseam::safety::{Kind, Lines, stops};

const HOMES: u64 = 10_000;

/// Every field that the rules look at, and the value that speaks for closing.
const FOR_CLOSING: [(&str, &str, &str); 9] = [
    ("water_heater", "kind", r#""electric""#),
    ("water_heater", "place", r#""closet_outer_door""#),
    ("water_heater", "openings", r#""open""#),
    ("water_heater", "shares_closet", "false"),
    ("water_heater", "old_flue_open", "false"),
    ("water_heater", "checked_by_technician", "true"),
    ("heating", "sealed_label_seen", "true"),
    ("first_look", "gas_smell", "false"),
    ("first_look", "co_alarm", r#""working""#),
];

/// A random home with both gaps at its closet; half of them are nearly ready to have them closed.
fn random_home(seed: u64) -> Value {
    let luck = &mut Luck::new(seed);
    let mut request = request(luck, false);
    for place in ["closet_inner_panel", "closet_outer_door"] {
        let gap = json!({"place": place, "length_in": 30, "width_in": 0.25});
        request["gaps"].as_array_mut().expect("a list").push(gap);
    }
    if seed.is_multiple_of(2) {
        for (group, field, value) in FOR_CLOSING {
            if luck.below(12) > 0 {
                request[group][field] = serde_json::from_str(value).expect("JSON");
            }
        }
    }
    request
}

/// No burner stands in the closet and none draws air from it: both seen.
fn no_burner(request: &Value) -> bool {
    let (heater, heating) = (&request["water_heater"], &request["heating"]);
    let electric = |word: &Value| {
        ["electric", "electricity", "heat_pump", "tankless_electric"].iter().any(|e| word == e)
    };
    let alone = electric(&heater["kind"]) && heater["shares_closet"] == false;
    alone && (electric(&heating["fuel"]) || heating["sealed_label_seen"] == true)
}

fn leads(gap: &Value, to: &[&str]) -> bool {
    to.iter().any(|place| gap["leads_to"] == *place)
}

/// Both the main heat and the water heater are electric.
fn nothing_burns(request: &Value) -> bool {
    let electric = ["electric", "electricity", "heat_pump", "tankless_electric"];
    let is = |word: &Value| electric.iter().any(|e| word == e);
    is(&request["heating"]["fuel"]) && is(&request["water_heater"]["kind"])
}

/// Whether a gap has to stay open, by the rules for closets with burners; what nobody saw counts
/// against closing.
fn must_stay_open(request: &Value, gap: &Value) -> bool {
    let heater = &request["water_heater"];
    match gap["place"].as_str().expect("a place") {
        "closet_inner_panel" => {
            let air_seen = heater["openings"] == "open" && heater["place"] == "closet_outer_door";
            let checked = heater["checked_by_technician"] == true;
            // A furnace in the same closet would lose the way back of its air.
            let alone = heater["shares_closet"] == false && !heater["kind"].is_null();
            !(no_burner(request) || (air_seen && checked && alone))
        }
        "closet_outer_door" => {
            let no_smell = request["first_look"]["gas_smell"] == false;
            !(no_burner(request) && no_smell && heater["old_flue_open"] == false)
        }
        "water_heater_closet" | "furnace_closet" | "coil_cabinet" => true,
        // A hole to the roof or outdoors may be the collar of a flue.
        "pipe_hole" | "elsewhere" if leads(gap, &["roof_cavity", "outdoors"]) => {
            !nothing_burns(request)
        }
        _ => leads(gap, &["closet_with_outside_air"]) && !no_burner(request),
    }
}

/// Positions of the gaps that are less open than before.
fn closed(before: &Home, after: &Home) -> Vec<usize> {
    let pairs = before.gaps.iter().zip(&after.gaps).enumerate();
    pairs.filter(|(_, (was, is))| is.open < was.open).map(|(index, _)| index).collect()
}

#[test]
fn no_repair_closes_what_a_burner_may_need() {
    let mut tried = [("closet_inner_panel", 0), ("closet_outer_door", 0)];
    for request in (0..HOMES).map(random_home) {
        let home = typed(&request);
        for repair in repairs::ALL {
            let Some(after) = (repair.apply)(&home) else { continue };
            for index in closed(&home, &after) {
                let gap = &request["gaps"][index];
                assert!(!must_stay_open(&request, gap), "{}: {request}", repair.id);
                tried.iter_mut().filter(|t| gap["place"] == t.0).for_each(|t| t.1 += 1);
            }
        }
    }
    assert!(tried.iter().all(|(_, closed)| *closed > 500), "{tried:?}");
}

/// A repair sees the home that the earlier ones leave behind. What they change counts for nothing:
/// the rules ask for what was seen on the walk.
#[test]
fn no_order_of_repairs_gets_past_the_rules() {
    let mut tried = 0;
    for request in (0..HOMES).map(random_home) {
        for proposal in plan(&typed(&request), None, &Lines::default()).proposals() {
            let after = (proposal.repair.apply)(&proposal.before).expect("proposed");
            for index in closed(&proposal.before, &after) {
                let gap = &request["gaps"][index];
                assert!(!must_stay_open(&request, gap), "{}: {request}", proposal.repair.id);
                tried += 1;
            }
        }
    }
    assert!(tried > 1_000, "{tried}");
}

/// A home of which everything speaks for closing both sides.
fn idle_closet() -> Value {
    let mut request = json!({
        "today": "2026-11-25",
        "gaps": [
            {"place": "closet_inner_panel", "length_in": 30, "width_in": 0.25},
            {"place": "closet_outer_door", "length_in": 30, "width_in": 0.25},
        ],
        "water_heater": {}, "first_look": {}, "heating": {"fuel": "propane"},
    });
    for (group, field, value) in FOR_CLOSING {
        request[group][field] = serde_json::from_str(value).expect("JSON");
    }
    request
}

fn with_burner(kind: &str, shares_closet: bool) -> Value {
    let mut request = idle_closet();
    request["water_heater"]["kind"] = json!(kind);
    request["water_heater"]["shares_closet"] = json!(shares_closet);
    request
}

fn offers(request: &Value, repair: &str) -> bool {
    (repairs::by_id(repair).expect("listed").apply)(&typed(request)).is_some()
}

/// The repair is offered here, and no longer once one of these is answered otherwise.
fn each_shuts(request: &Value, repair: &str, gates: &[(&str, &str, &[Value])]) {
    assert!(offers(request, repair), "{repair}: {request}");
    for (group, field, others) in gates {
        for other in *others {
            let mut changed = request.clone();
            changed[*group][*field] = other.clone();
            assert!(!offers(&changed, repair), "{repair}: {field} {other}");
        }
    }
}

#[test]
fn each_gate_of_the_outer_door_shuts_it_alone() {
    let wrong = |value: bool| vec![Value::Null, json!(value)];
    let (yes, no) = (wrong(true), wrong(false));
    let kinds = [Value::Null, json!("draft_hood"), json!("sealed_combustion")];
    let places = [Value::Null, json!("room"), json!("closet_inner_door")];
    let seen = [json!(true)];
    each_shuts(
        &idle_closet(),
        "closet_outer_door",
        &[
            ("water_heater", "kind", &kinds),
            ("water_heater", "place", &places),
            ("water_heater", "shares_closet", &yes),
            ("water_heater", "old_flue_open", &yes),
            ("water_heater", "soot", &seen),
            ("heating", "sealed_label_seen", &no),
            ("heating", "soot", &seen),
            ("first_look", "gas_smell", &yes),
            ("first_look", "oven_for_heat", &seen),
            ("first_look", "flame_indoors", &seen),
            ("first_look", "heat_holds", &[json!(false)]),
        ],
    );
}

#[test]
fn no_technician_opens_the_outer_door_beside_a_burner() {
    for (kind, shares) in [("sealed_combustion", false), ("draft_hood", false), ("electric", true)]
    {
        assert!(!offers(&with_burner(kind, shares), "closet_outer_door"), "{kind}");
    }
}

#[test]
fn each_gate_of_the_inner_panel_shuts_it_alone_beside_any_burner() {
    let openings = [Value::Null, json!("partly"), json!("blocked")];
    let places = [Value::Null, json!("room"), json!("closet_inner_door")];
    let (unchecked, seen) = ([Value::Null, json!(false)], [json!(true)]);
    let kinds_unseen = [Value::Null];
    let shared = [Value::Null, json!(true)];
    for kind in ["sealed_combustion", "draft_hood"] {
        let request = with_burner(kind, false);
        each_shuts(
            &request,
            "closet_inner_panel",
            &[
                ("water_heater", "kind", &kinds_unseen),
                ("water_heater", "shares_closet", &shared),
                ("water_heater", "openings", &openings),
                ("water_heater", "place", &places),
                ("water_heater", "checked_by_technician", &unchecked),
                ("water_heater", "soot", &seen),
                ("heating", "soot", &seen),
                ("first_look", "gas_smell", &seen),
            ],
        );
        let who = repairs::by_id("closet_inner_panel").expect("listed").who;
        assert_eq!(who(&typed(&request)), Who::Qualified, "{kind}");
    }
}

/// What is called a panel and leads to the belly or outdoors may be one of the burner's openings.
#[test]
fn beside_a_burner_a_panel_that_leads_elsewhere_stays() {
    let mut request = with_burner("draft_hood", false);
    for leads_to in ["outdoors", "belly", "roof_cavity", "wall", "room_or_return"] {
        request["gaps"][0]["leads_to"] = json!(leads_to);
        assert!(!offers(&request, "closet_inner_panel"), "{leads_to}");
    }
    request["gaps"][0]["leads_to"] = json!("closet_with_outside_air");
    assert!(offers(&request, "closet_inner_panel"));
}

/// Without a burner nothing of the burner's is asked; any doubt asks for all of it.
#[test]
fn a_doubt_about_a_burner_counts_as_one() {
    let mut request = idle_closet();
    request["water_heater"]["checked_by_technician"] = Value::Null;
    assert!(offers(&request, "closet_inner_panel"));
    for doubt in [("water_heater", "kind"), ("water_heater", "shares_closet")] {
        let mut unsure = request.clone();
        unsure[doubt.0][doubt.1] = Value::Null;
        assert!(!offers(&unsure, "closet_inner_panel"), "{doubt:?}");
    }
}

/// Cleared openings have to be seen again, with the burner, before a panel is closed.
#[test]
fn clearing_the_openings_asks_for_another_look() {
    let mut request = with_burner("draft_hood", false);
    request["water_heater"]["openings"] = json!("partly");
    let cleared = (repairs::by_id("clear_openings").expect("listed").apply)(&typed(&request));
    let panel = repairs::by_id("closet_inner_panel").expect("listed");
    assert!((panel.apply)(&cleared.expect("partly closed")).is_none());
}

#[test]
fn blocked_openings_stop_a_burner_beside_an_electric_tank() {
    let mut request = with_burner("electric", true);
    request["heating"]["fuel"] = json!("electricity");
    request["water_heater"]["openings"] = json!("blocked");
    let off = |request: &Value| {
        let found = stops(&typed(request), &Lines::default());
        found.iter().any(|stop| stop.rule == "openings_blocked" && stop.kind == Kind::Off)
    };
    assert!(off(&request));
    request["water_heater"]["shares_closet"] = json!(false);
    assert!(!off(&request), "nothing burns there");
}

/// Both sides leave the closet colder: its pipes are wrapped in the same step, and no foam is bought.
#[test]
fn a_colder_closet_comes_with_wrapped_pipes() {
    let home = typed(&idle_closet());
    for id in ["closet_inner_panel", "closet_outer_door"] {
        let repair = repairs::by_id(id).expect("listed");
        let items: Vec<&str> = (repair.materials)(&home).iter().map(|m| m.item).collect();
        assert!(items.contains(&"pipe_sleeve_6ft"), "{id}: {items:?}");
        let cautions = (repair.cautions)(&home);
        assert!(cautions.contains(&repairs::Warning::CLOSET_FREEZE), "{id}");
        assert!(cautions.contains(&repairs::Warning::DO_NOT_SEAL_COMBUSTION_AIR), "{id}");
    }
}
