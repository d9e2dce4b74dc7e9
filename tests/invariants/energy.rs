//! Energy of gaps, cables and hot water: more hole, more air; no path outdoors, no heat; hotter,
//! more.

use super::typed;
use serde_json::{Value, json};
use uom::si::energy::kilowatt_hour;
use uom::si::f64::Energy;
use winterseam::balance::{Assessment, UseKey, Weather, assess};
use winterseam::climate::{Atlas, Year};
use winterseam::home::Home;
use winterseam::repairs::{self, Changes, Repair};

fn year(request: &Value) -> Assessment {
    let place = Atlas::embedded().place("59801").expect("known");
    let hours = Year::of(&place.station);
    assess(&typed(request), &Weather { place: &place, year: &hours })
}

fn with_gap(length_in: f64, width_in: f64, leads_to: &str) -> Value {
    json!({
        "today": "2026-11-25",
        "heating": {"fuel": "propane", "price_usd": 2.6, "price_per": "gal"},
        "gaps": [{"place": "door_bottom", "length_in": length_in, "width_in": width_in,
            "leads_to": leads_to}],
    })
}

/// Heat that the first gap takes.
fn lost(request: &Value) -> f64 {
    let year = year(request);
    let losses = year.heating.expect("air is known").losses;
    let gap = losses.iter().find(|loss| loss.key == UseKey::Gap(0)).expect("a gap");
    kwh(gap.heat.total())
}

fn of(year: &Assessment, keys: &[UseKey]) -> Energy {
    year.uses.iter().filter(|one| keys.contains(&one.key)).map(|one| one.bought).sum()
}

fn kwh(energy: Energy) -> f64 {
    energy.get::<kilowatt_hour>()
}

#[test]
fn a_wider_or_longer_gap_takes_more() {
    let mut last = 0.0;
    for width in [0.02, 0.0625, 0.125, 0.25, 0.5, 1.0] {
        let takes = lost(&with_gap(36.0, width, "outdoors"));
        assert!(takes > last, "{width} in");
        last = takes;
    }
    let short = lost(&with_gap(18.0, 0.25, "outdoors"));
    let long = lost(&with_gap(36.0, 0.25, "outdoors"));
    assert!((long / short - 2.0).abs() < 1e-9, "twice as long, twice the air");
}

#[test]
fn a_gap_into_a_room_costs_no_heat_and_one_behind_another_skin_less() {
    let takes = |leads_to| lost(&with_gap(36.0, 0.25, leads_to));
    assert!(takes("room_or_return").abs() < 1e-12);
    assert!(takes("belly") < takes("outdoors"));
    // Two equal openings in series pass 1/√2 of one: the orifice law.
    assert!((takes("wall") / takes("outdoors") - 0.5_f64.sqrt()).abs() < 1e-9);
}

/// Source: arithmetic of the trade, W/ft × ft × 8,760 h: 60 ft at 7 W/ft is 420 W and 3,679 kWh.
#[test]
fn a_cable_that_is_always_on_takes_its_watts_all_year() {
    let year = year(&json!({
        "today": "2026-11-25",
        "electricity_usd_per_kwh": 0.13,
        "heat_cable": {"present": true, "length_ft": 60, "power_w_per_ft": 7, "control": "always_on"},
    }));
    assert!((kwh(of(&year, &[UseKey::HeatCable])) - 3_679.2).abs() < 0.05);
    let cable = year.uses.iter().find(|one| one.key == UseKey::HeatCable).expect("a cable");
    let cost = cable.cost.expect("a price").0;
    assert!((cost - 478.3).abs() < 0.05, "{cost}");
}

/// Source: U.S. Energy Information Administration, 91,452 Btu in a gallon of propane; a furnace of
/// 0.78: the dollars are the gallons at their price.
#[test]
fn propane_is_bought_by_the_gallon() {
    let year = year(&with_gap(36.0, 0.375, "outdoors"));
    let gallons = kwh(of(&year, &[UseKey::Gap(0)])) * 3_412.142 / 91_452.0;
    let cost = year.uses[0].cost.expect("a price").0;
    assert!((cost - gallons * 2.6).abs() < 1e-3 * cost, "{cost} for {gallons}");
    assert!((15.0..40.0).contains(&gallons), "{gallons}");
}

/// Every step that tells of dollars saved, of a home with this cable in each climate.
fn savings_with(cable: &Value) -> Vec<Value> {
    let step_of = |zip: &&str| {
        let answer = super::answered(&json!({
            "today": "2026-07-01", "home": {"zip": zip}, "electricity_usd_per_kwh": 0.15,
            "heat_cable": cable,
        }));
        let list = |value: &Value| value.as_array().expect("a list").clone();
        let mends = list(&answer["stops"]).into_iter().flat_map(|stop| list(&stop["mends"]));
        let steps: Vec<Value> =
            mends.chain(list(&answer["firsts"])).chain(list(&answer["later"])).collect();
        steps.into_iter().map(|step| step["saving"].clone()).filter(|saving| !saving.is_null())
    };
    ["56649", "59801", "30901", "99701"].iter().flat_map(step_of).collect()
}

/// A new cable may take more than the old one did, where that was off or too weak for its pipe;
/// nobody is told that this saves, or that a saving has "no cost".
#[test]
fn no_step_promises_a_saving_below_nothing() {
    let mut savings = 0;
    for control in ["always_on", "thermostat", "self_regulating", "seasonal"] {
        for days in [Value::Null, json!([350, 20])] {
            for sign in ["uncertified", "someone_plugs_in"] {
                let cable = json!({"present": true, "control": control, "length_ft": 20,
                    "on_day": days[0], "off_day": days[1], sign: true});
                for saving in savings_with(&cable) {
                    savings += 1;
                    let best = saving["value"].as_f64().expect("a number");
                    assert!(best >= 0.0, "{cable}: {saving}");
                    assert_ne!(saving["text"]["key"], "range.free", "{cable}: {saving}");
                }
            }
        }
    }
    assert!(savings > 20, "{savings}");
}

#[test]
fn no_repair_adds_energy_where_it_is_meant_to_save() {
    let request = json!({
        "today": "2026-07-01",
        "first_look": {"co_alarm": "working"},
        "gaps": [{"place": "door_bottom", "length_in": 36, "width_in": 0.25},
            {"place": "outlet_plate", "length_in": 4, "width_in": 0.1}],
        "heat_cable": {"present": true, "control": "always_on", "someone_plugs_in": true},
    });
    let (home, before) = (typed(&request), year(&request).bought());
    let place = Atlas::embedded().place("59801").expect("known");
    let hours = Year::of(&place.station);
    let mut saved = 0;
    let for_people = |r: &Repair| matches!(r.changes, Changes::Safety | Changes::Tap);
    for repair in repairs::ALL.iter().filter(|repair| !for_people(repair)) {
        if let Some(after) = (repair.apply)(&home) {
            let after = assess(&after, &Weather { place: &place, year: &hours }).bought();
            assert!(after <= before, "{}", repair.id);
            saved += usize::from(after < before);
        }
    }
    assert!(saved >= 4, "{saved}");
}

fn with_heater(heater: Value, people: u8) -> Value {
    let mut heater = heater;
    heater["kind"] = heater.get("kind").cloned().unwrap_or(json!("electric"));
    json!({
        "today": "2026-11-25", "electricity_usd_per_kwh": 0.15,
        "heating": {"fuel": "electricity"}, "people": {"residents_count": people},
        "water_heater": heater,
    })
}

fn hot_water_kwh(request: &Value) -> f64 {
    kwh(of(&year(request), &[UseKey::HotWater, UseKey::HotTank]))
}

fn heater_kwh(heater: Value) -> f64 {
    hot_water_kwh(&with_heater(heater, 2))
}

#[test]
fn hotter_water_colder_places_and_more_people_take_more() {
    for kind in ["electric", "heat_pump", "draft_hood"] {
        let taps = [115.0, 120.0, 130.0, 140.0, 150.0].map(|tap| {
            heater_kwh(json!({"kind": kind, "tap_f": tap, "place": "closet_outer_door"}))
        });
        assert!(taps.is_sorted_by(|a, b| a < b), "{kind}: {taps:?}");
        let places = ["room", "closet_inner_door", "closet_outer_door"]
            .map(|place| heater_kwh(json!({"kind": kind, "tap_f": 125, "place": place})));
        if kind != "heat_pump" {
            assert!(places.is_sorted_by(|a, b| a < b), "{kind}: {places:?}");
        }
    }
    let people = [1, 2, 4].map(|n| hot_water_kwh(&with_heater(json!({"tap_f": 120}), n)));
    assert!(people.is_sorted_by(|a, b| a < b));
}

/// In a room that electricity heats, part of what a tank gives off spares the furnace; in a closet
/// none of it does.
#[test]
fn only_a_tank_in_a_room_gives_heat_to_the_rooms() {
    let at = |place: &str| year(&with_heater(json!({"tap_f": 125, "place": place}), 2));
    let need = |year: &Assessment| kwh(year.heating.as_ref().expect("air is known").need.total());
    let (room, closet) = (at("room"), at("closet_outer_door"));
    let spared = need(&closet) - need(&room);
    let kept = kwh(of(&room, &[UseKey::HotTank]));
    assert!(0.0 < spared && spared < kept, "{spared} of {kept}");
    assert!((need(&closet) - need(&at("closet_inner_door"))).abs() < 1e-9);
}

/// Every repair of the hot water is a home whose year takes less; together they save less than each
/// for itself, as they fight over the same heat.
#[test]
fn repairs_of_hot_water_save_by_the_year_of_the_home_after() {
    let heater = json!({
        "kind": "electric", "place": "closet_outer_door", "tap_f": 140, "jacket": false,
        "sleeve": false, "shower_gallon_s": 20,
    });
    let before = typed(&with_heater(heater, 3));
    let place = Atlas::embedded().place("59801").expect("known");
    let hours = Year::of(&place.station);
    let weather = Weather { place: &place, year: &hours };
    let bought = |home: &Home| kwh(assess(home, &weather).bought());
    let (mut all, mut alone) = (before.clone(), 0.0);
    for id in ["turn_down", "tank_jacket", "pipe_sleeve", "shower_head"] {
        let repair = repairs::by_id(id).expect("listed");
        let saved = bought(&before) - bought(&(repair.apply)(&before).expect(id));
        assert!(saved > 10.0, "{id}: {saved}");
        alone += saved;
        all = (repair.apply)(&all).expect(id);
        assert!((repair.apply)(&all).is_none(), "{id} twice");
    }
    let together = bought(&before) - bought(&all);
    assert!(0.0 < together && together < alone, "{together} of {alone}");
}

/// Source: advice of an energy department, 3 to 5 % of water heating for 10 °F, and of the same year
/// by hand (2.6 to 7.7 %).
#[test]
fn turning_down_saves_what_is_published() {
    for (kind, low, high) in [("electric", 0.02, 0.08), ("draft_hood", 0.03, 0.10)] {
        let at = |tap: f64| {
            heater_kwh(json!({"kind": kind, "tap_f": tap, "place": "closet_inner_door"}))
        };
        let saved = 1.0 - at(120.0) / at(130.0);
        assert!((low..=high).contains(&saved), "{kind}: {saved}");
    }
}

/// A tap no warmer than the mains of a hot place takes nothing; it never gives.
#[test]
fn a_tap_as_cold_as_the_mains_takes_nothing() {
    let request = with_heater(json!({"tap_f": 60, "kind": "tankless_electric"}), 2);
    let place = Atlas::embedded().place("85283").expect("known");
    let hours = Year::of(&place.station);
    let year = assess(&typed(&request), &Weather { place: &place, year: &hours });
    let kwh = kwh(of(&year, &[UseKey::HotWater]));
    assert!((0.0..50.0).contains(&kwh), "{kwh}");
}
