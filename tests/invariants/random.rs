//! Random walks through random homes, the same on every machine.

use serde_json::{Map, Value, json};

/// A linear congruential generator (Knuth's MMIX constants): plenty for picking answers.
pub(super) struct Luck(u64);

impl Luck {
    pub(super) fn new(seed: u64) -> Self {
        Self(seed.wrapping_mul(2_654_435_761).wrapping_add(99_991))
    }

    pub(super) fn below(&mut self, n: usize) -> usize {
        self.0 =
            self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        usize::try_from(self.0 >> 33).expect("31 bits") % n
    }

    fn pick<'a, T>(&mut self, list: &'a [T]) -> &'a T {
        &list[self.below(list.len())]
    }

    fn between(&mut self, low: f64, high: f64) -> f64 {
        let step = u32::try_from(self.below(1_001)).expect("small");
        low + (high - low) * f64::from(step) / 1_000.0
    }
}

const FLAGS: [Value; 3] = [Value::Null, Value::Bool(false), Value::Bool(true)];
const PLACES: [&str; 19] = [
    "door_bottom",
    "door_side",
    "window_sash",
    "casing",
    "ceiling_joint",
    "marriage_line",
    "pipe_hole",
    "bath_fan_housing",
    "access_panel",
    "outlet_plate",
    "cooler_grille",
    "water_heater_closet",
    "closet_inner_panel",
    "closet_inner_panel",
    "closet_outer_door",
    "closet_outer_door",
    "furnace_closet",
    "coil_cabinet",
    "elsewhere",
];
const LEADS: [&str; 6] =
    ["outdoors", "belly", "roof_cavity", "closet_with_outside_air", "wall", "room_or_return"];
/// Working more often than not, so that many homes may be tightened.
const ALARM: [&str; 6] = ["working", "working", "working", "missing", "expired", "chirping"];
const ZIPS: [&str; 6] = ["59801", "56649", "70560", "85283", "30901", "99701"];

/// A word of a list, or not seen.
fn word(luck: &mut Luck, list: &[&str]) -> Value {
    if luck.below(4) == 0 { Value::Null } else { json!(luck.pick(list)) }
}

fn number(luck: &mut Luck, low: f64, high: f64) -> Value {
    if luck.below(4) == 0 { Value::Null } else { json!(luck.between(low, high)) }
}

fn flags(luck: &mut Luck, keys: &[&str]) -> Map<String, Value> {
    keys.iter().map(|key| ((*key).to_owned(), luck.pick(&FLAGS).clone())).collect()
}

/// A request that the door lets in. Dangers are rarer than in life's worst homes, so that plans with
/// jobs are among them.
pub(super) fn request(luck: &mut Luck, with_zip: bool) -> Value {
    let mut request = json!({
        "today": format!("2026-{:02}-{:02}", 1 + luck.below(12), 1 + luck.below(28)),
        "home": {
            "width_ft": number(luck, 8.0, 32.0), "length_ft": number(luck, 30.0, 76.0),
            "bedrooms_count": luck.below(5), "setpoint_f": number(luck, 60.0, 76.0),
            "indoors_f": number(luck, 50.0, 95.0),
            "shelter": word(luck, &["open_ground", "lone_home", "neighbours_close"]),
            "cooling": word(luck, &["none", "evaporative", "air_conditioner"]),
            "ground_below": word(luck, &["bare", "covered"]),
            "skirting_open": luck.pick(&FLAGS).clone(),
            "skirting_insulated": luck.pick(&FLAGS).clone(),
            "skirting_vents": word(luck, &["open", "blocked", "none"]),
            "hay_bales": luck.pick(&FLAGS).clone(),
            "belly": word(luck, &["sound", "torn", "missing"]),
            "wet_windows": word(luck, &["often", "sometimes", "never"]),
            "tenure": word(luck, &["owns_home_and_lot", "owns_home_rents_lot", "rents_home"]),
        },
        "people": flags(luck, &[
            "child_under_5", "age_65_or_more", "cannot_feel_or_move", "lung_or_immune", "oxygen",
            "medical_machine",
        ]),
        "first_look": {
            "co_alarm": word(luck, &ALARM), "smoke_alarm": word(luck, &ALARM),
            "gas_smell": luck.pick(&FLAGS[..2]).clone(),
        },
        "furnace_filter": {
            "in_use_days": number(luck, 0.0, 300.0),
            "look": word(luck, &["bright", "grey", "dim", "blocked"]),
            "kind": word(luck, &["fiberglass", "pleated", "dense"]),
        },
        "water_heater": water_heater(luck),
        "bath_fan": {
            "bag_emptied_s": number(luck, 1.0, 30.0),
            "ends": word(luck, &["outdoors", "roof_cavity", "under_home"]),
        },
        "gaps": gaps(luck),
        "ducts": ducts(luck),
        "windows": windows(luck),
        "heat_cable": cable(luck),
        "heating": {"fuel": word(luck, &["electricity", "heat_pump", "propane", "wood"]),
            "sealed_label_seen": luck.pick(&FLAGS).clone(),
            "stove_clear": luck.pick(&FLAGS).clone(),
            "warm_air": word(luck, &["all", "most", "half", "little", "none"])},
        "electricity_usd_per_kwh": number(luck, 0.08, 0.4),
    });
    if luck.below(8) == 0 {
        let dangers = ["gas_smell", "symptoms", "hot_wiring", "oven_for_heat", "tap_dry"];
        request["first_look"][*luck.pick(&dangers)] = json!(true);
    }
    if request["heating"]["fuel"] == "propane" {
        request["heating"]["price_usd"] = json!(2.6);
        request["heating"]["price_per"] = json!("gal");
    }
    measure_below(luck, &mut request["home"]);
    name_windows(luck, &mut request);
    if with_zip {
        request["home"]["zip"] = json!(luck.pick(&ZIPS));
    }
    request
}

const HEATERS: [&str; 6] = [
    "electric",
    "heat_pump",
    "sealed_combustion",
    "draft_hood",
    "tankless_electric",
    "tankless_gas",
];

fn turns(luck: &mut Luck) -> Value {
    let many = luck.below(3);
    let turn = |luck: &mut Luck| json!({"marks_down": luck.between(-2.0, 4.0), "tap_f": luck.between(90.0, 170.0)});
    (0..many).map(|_| turn(luck)).collect()
}

fn water_heater(luck: &mut Luck) -> Value {
    json!({
        "kind": word(luck, &HEATERS),
        "tap_f": number(luck, 60.0, 170.0), "thermometer_checked": luck.pick(&FLAGS).clone(),
        "relief": word(luck, &["sound", "sound", "sound", "running", "plugged"]),
        "openings": word(luck, &["open", "open", "open", "partly", "blocked"]),
        "place": word(luck, &["room", "closet_inner_door", "closet_outer_door"]),
        "mixing_valve": luck.pick(&FLAGS).clone(), "jacket": luck.pick(&FLAGS).clone(),
        "sleeve": luck.pick(&FLAGS).clone(), "shower_gallon_s": number(luck, 12.0, 60.0),
        "turns": turns(luck),
        "shares_closet": luck.pick(&FLAGS).clone(),
        "old_flue_open": luck.pick(&FLAGS).clone(),
        "checked_by_technician": luck.pick(&FLAGS).clone(),
        "input_btu_h": number(luck, 10_000.0, 400_000.0),
    })
}

const DUCT_PLACES: [&str; 6] =
    ["coil_cabinet", "plenum", "boot", "crossover", "end_cap", "return_side"];

fn ducts(luck: &mut Luck) -> Value {
    let all = 1 + luck.below(16);
    let gap = |luck: &mut Luck| {
        json!({
            "place": luck.pick(&DUCT_PLACES), "length_in": luck.between(1.0, 60.0),
            "width_in": luck.between(0.02, 1.0),
            "air": word(luck, &["blown_into_closet", "blown_down", "sucked_in"]),
        })
    };
    let many = luck.below(3);
    json!({
        "registers_count": all, "registers_closed_count": luck.below(all + 1),
        "return_blocked": luck.pick(&FLAGS).clone(), "return_f": number(luck, 55.0, 78.0),
        "supply_f": number(luck, 80.0, 180.0), "far_f": number(luck, 80.0, 180.0),
        "near_bag_s": number(luck, 1.0, 20.0), "far_bag_s": number(luck, 1.0, 20.0),
        "blower_dirty": luck.pick(&FLAGS).clone(), "short_cycles": luck.pick(&FLAGS).clone(),
        "crossover": word(luck, &["sound", "loose", "fallen"]),
        "gaps": (0..many).map(|_| gap(luck)).collect::<Vec<_>>(),
    })
}

/// Missing skirting and holes, where some may be.
fn measure_below(luck: &mut Luck, home: &mut Value) {
    if home["skirting_open"] == true {
        home["skirting_open_ft"] = number(luck, 1.0, 200.0);
    }
    if home["belly"] == "torn" {
        home["belly_hole_in2"] = number(luck, 1.0, 5_000.0);
    }
}

/// Windows, and the gaps round them, are called by one of two names or by none.
fn name_windows(luck: &mut Luck, request: &mut Value) {
    for list in ["windows", "gaps"] {
        for row in request[list].as_array_mut().expect("a list") {
            row["label"] = word(luck, &["kitchen", "bedroom"]);
        }
    }
}

fn windows(luck: &mut Luck) -> Value {
    let many = luck.below(3);
    let window = |luck: &mut Luck| {
        json!({
            "count": 1 + luck.below(6), "width_in": luck.between(12.0, 60.0),
            "height_in": luck.between(12.0, 60.0),
            "glazing": word(luck, &["single", "single_storm", "double"]),
            "film": luck.pick(&FLAGS).clone(), "escape": luck.pick(&FLAGS).clone(),
        })
    };
    (0..many).map(|_| window(luck)).collect()
}

fn gaps(luck: &mut Luck) -> Value {
    let many = luck.below(5);
    let gap = |luck: &mut Luck| {
        let mut gap = json!({
            "place": luck.pick(&PLACES), "length_in": luck.between(2.0, 200.0),
            "leads_to": word(luck, &LEADS), "sealed": luck.pick(&FLAGS).clone(),
        });
        match luck.below(4) {
            0 => gap["width_class"] = json!(luck.pick(&["card", "dime", "two_coins", "pencil"])),
            _ => gap["width_in"] = json!(luck.between(0.02, 2.0)),
        }
        gap
    };
    (0..many).map(|_| gap(luck)).collect()
}

fn cable(luck: &mut Luck) -> Value {
    let keys = [
        "uncertified",
        "under_foam",
        "lapped",
        "ground_fault_outlet",
        "thermostat_proved",
        "someone_plugs_in",
    ];
    let mut cable = flags(luck, &keys);
    cable.insert("present".to_owned(), json!(true));
    cable.insert("damaged".to_owned(), json!(luck.below(8) == 0));
    cable.insert("length_ft".to_owned(), number(luck, 3.0, 60.0));
    cable.insert("power_w_per_ft".to_owned(), number(luck, 3.0, 12.0));
    let controls = ["always_on", "thermostat", "self_regulating", "seasonal"];
    cable.insert("control".to_owned(), word(luck, &controls));
    match luck.below(4) {
        0 => Value::Null,
        1 => json!({"present": false}),
        _ => Value::Object(cable),
    }
}
