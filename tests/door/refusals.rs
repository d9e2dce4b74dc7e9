//! Checking: everything that is wrong is named at once, and nothing that was not seen is made up.

use super::{walk_in, with, wrong};
use uom::si::{length::foot, thermodynamic_temperature::degree_fahrenheit};
use winterseam::error::Reason;
use winterseam::home::GapPlace;
use winterseam::wire::{Tree, home};

#[test]
fn five_wrong_fields_of_five_kinds_are_all_named() {
    let request = r#"{
        "today": "2026-11-25",
        "home": {"width_ft": -14, "lenght_ft": 66, "setpoint_f": "68"},
        "heating": {"fuel": "coal"},
        "gaps": [{"place": "door_side", "length_in": 36}]
    }"#;
    assert_eq!(
        wrong(request),
        [
            "home.lenght_ft unknown_field",
            "home.width_ft out_of_range",
            "home.setpoint_f wrong_type",
            "heating.fuel not_one_of",
            "gaps[0].width_in missing",
        ]
    );
}

#[test]
fn an_unknown_field_comes_with_the_known_one_that_it_resembles() {
    let error = &walk_in(&with("home", r#"{"lenght_ft": 66}"#)).unwrap_err()[0];
    let near = Some("length_ft");
    assert_eq!(error.reason, Reason::Unknown { got: "lenght_ft".to_owned(), near });
}

#[test]
fn nothing_seen_is_a_valid_walk_in_which_nothing_is_known() {
    let nothing = walk_in(r#"{"today": "2026-11-25"}"#).unwrap();
    assert_eq!(nothing.building, winterseam::home::Building::default());
    assert!(nothing.cable.is_none() && nothing.gaps.is_empty());
    let nulls = r#"{"today": "2026-11-25", "home": null, "gaps": null,
        "heating": {"fuel": null, "price_usd": null}, "heat_cable": {"present": null, "wet": null}}"#;
    assert_eq!(walk_in(nulls).unwrap(), nothing);
}

#[test]
fn what_was_seen_arrives_in_its_unit() {
    let request = r#"{"today": "2026-11-25", "home": {"width_ft": 14, "setpoint_f": 70},
        "gaps": [{"place": "marriage_line", "length_in": 600, "width_in": 0.125, "bends_count": 2}]}"#;
    let home = walk_in(request).unwrap();
    assert!((home.building.width.unwrap().get::<foot>() - 14.0).abs() < 1e-9);
    let setpoint = home.building.setpoint.unwrap().get::<degree_fahrenheit>();
    assert!((setpoint - 70.0).abs() < 1e-9, "{setpoint}: 70 °F does not round-trip exactly");
    assert_eq!((home.gaps[0].place, home.gaps[0].bends), (GapPlace::MarriageLine, Some(2)));
}

#[test]
fn no_day_and_no_map_are_refused() {
    assert_eq!(wrong("{}"), ["today missing"]);
    assert_eq!(wrong("[]"), [" wrong_type"]);
    assert_eq!(wrong(r#""{}""#), [" wrong_type"]);
    assert_eq!(wrong(r#"{"today": "25.11.2026"}"#), ["today malformed"]);
    assert_eq!(wrong(r#"{"today": "2026-02-29"}"#), ["today malformed"]);
    assert_eq!(wrong(r#"{"today": "2026-11-25T10:00"}"#), ["today malformed"]);
    assert_eq!(wrong(r#"{"today": "1066-10-14"}"#), ["today out_of_range"]);
}

#[test]
fn what_is_no_number_is_refused_and_not_taken_for_unseen() {
    for odd in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        let width = Tree::Map([("width_ft".to_owned(), Tree::Number(odd))].into());
        let today = Tree::Text("2026-11-25".to_owned());
        let request = [("today".to_owned(), today), ("home".to_owned(), width)];
        let problems = home(&Tree::Map(request.into())).unwrap_err();
        assert_eq!(problems[0].path, "home.width_ft");
        assert_eq!(problems[0].reason, Reason::NotANumber);
    }
}

#[test]
fn whole_numbers_words_codes_and_flags_are_held_to_their_kind() {
    let cases = [
        (r#"{"year_built": 1988.5}"#, "home.year_built wrong_type"),
        (r#"{"bedrooms_count": -1}"#, "home.bedrooms_count out_of_range"),
        (r#"{"zip": 59801}"#, "home.zip wrong_type"),
        (r#"{"zip": "5980"}"#, "home.zip malformed"),
        (r#"{"zip": "５９８０１"}"#, "home.zip malformed"),
        (r#"{"sections": "Single"}"#, "home.sections not_one_of"),
        (r#"{"sections": true}"#, "home.sections wrong_type"),
        (r#"{"width_ft": [14]}"#, "home.width_ft wrong_type"),
        (r#"{"width_ft": 1e300}"#, "home.width_ft out_of_range"),
    ];
    for (object, expected) in cases {
        assert_eq!(wrong(&with("home", object)), [expected], "{object}");
    }
    assert_eq!(wrong(&with("people", r#"{"oxygen": 1}"#)), ["people.oxygen wrong_type"]);
    assert_eq!(wrong(&with("people", r#"{"oxygen": "yes"}"#)), ["people.oxygen wrong_type"]);
}

#[test]
fn a_gap_is_named_by_its_place_in_the_list() {
    let good = r#"{"place": "casing", "length_in": 36, "width_in": 0.1}"#;
    let gaps = format!("[{good}, null, 5, {{}}]");
    assert_eq!(
        wrong(&with("gaps", &gaps)),
        [
            "gaps[1] wrong_type",
            "gaps[2] wrong_type",
            "gaps[3].place missing",
            "gaps[3].length_in missing",
            "gaps[3].width_in missing",
        ]
    );
    let many = format!("[{}]", vec![good; 201].join(","));
    assert_eq!(wrong(&with("gaps", &many)), ["gaps too_large"]);
    let long = format!(
        r#"[{{"place": "casing", "length_in": 36, "width_in": 0.1, "label": "{}"}}]"#,
        "x".repeat(81)
    );
    assert_eq!(wrong(&with("gaps", &long)), ["gaps[0].label too_large"]);
}

#[test]
fn fields_that_cannot_be_true_together_are_refused() {
    let heating = |fields: &str| wrong(&with("heating", fields));
    assert_eq!(heating(r#"{"price_usd": 2.6}"#), ["heating.price_per missing"]);
    assert_eq!(heating(r#"{"price_per": "gal"}"#), ["heating.price_usd missing"]);
    let sold = |fuel: &str, per: &str, usd: f64| {
        heating(&format!(r#"{{"fuel": "{fuel}", "price_usd": {usd}, "price_per": "{per}"}}"#))
    };
    assert_eq!(sold("propane", "gal", 2.6), [""; 0]);
    assert_eq!(sold("natural_gas", "ccf", 1.2), [""; 0]);
    assert_eq!(sold("propane", "therm", 2.6), ["heating.price_per contradicts"]);
    assert_eq!(sold("heat_pump", "gal", 2.6), ["heating.price_per contradicts"]);
    assert_eq!(sold("wood", "gal", 2.6), ["heating.price_per contradicts"]);
    assert_eq!(sold("pellets", "cord", 300.0), ["heating.price_per contradicts"]);
    assert_eq!(sold("pellets", "bag", 6.5), [""; 0]);
    assert_eq!(sold("wood", "cord", 250.0), [""; 0]);
    assert_eq!(sold("wood", "cord", 6.0), ["heating.price_usd out_of_range"]);
    assert_eq!(sold("electricity", "kwh", 15.0), ["heating.price_usd out_of_range"]);
    let ducts = |fields: &str| wrong(&with("ducts", fields));
    assert_eq!(
        ducts(r#"{"registers_count": 8, "registers_closed_count": 9}"#),
        ["ducts.registers_closed_count contradicts"]
    );
    assert_eq!(ducts(r#"{"return_f": 70, "supply_f": 60}"#), ["ducts.supply_f contradicts"]);
    assert_eq!(ducts(r#"{"near_bag_s": 0}"#), ["ducts.near_bag_s out_of_range"]);
    assert_eq!(ducts(r#"{"far_bag_s": -4}"#), ["ducts.far_bag_s out_of_range"]);
    let label = r#"{"label_rise_min_f": 75, "label_rise_max_f": 45}"#;
    assert_eq!(heating(label), ["heating.label_rise_max_f contradicts"]);
    assert_eq!(heating(r#"{"label_rise_max_f": 75}"#), ["heating.label_rise_min_f missing"]);
    let filter = |fields: &str| wrong(&with("furnace_filter", fields));
    assert_eq!(filter(r#"{"width_in": 20}"#), ["furnace_filter.height_in missing"]);
    assert_eq!(filter(r#"{"kind": "sponge"}"#), ["furnace_filter.kind not_one_of"]);
    let built = |year: i32| wrong(&with("home", &format!(r#"{{"year_built": {year}}}"#)));
    assert_eq!(built(2026), [""; 0]);
    assert_eq!(built(2027), ["home.year_built contradicts"]);
    assert_eq!(built(1066), ["home.year_built out_of_range"]);
}

#[test]
fn skirting_and_belly_are_whole_or_have_holes() {
    let home = |fields: &str| wrong(&with("home", fields));
    assert_eq!(
        home(r#"{"skirting_open": false, "skirting_open_ft": 12}"#),
        ["home.skirting_open_ft contradicts"]
    );
    assert_eq!(
        home(r#"{"belly": "sound", "belly_hole_in2": 12}"#),
        ["home.belly_hole_in2 contradicts"]
    );
    assert_eq!(home(r#"{"skirting_open_ft": -1}"#), ["home.skirting_open_ft out_of_range"]);
    assert_eq!(
        home(r#"{"skirting_vents": "shut", "hay_bales": 3, "belly": "ripped"}"#),
        ["home.skirting_vents not_one_of", "home.hay_bales wrong_type", "home.belly not_one_of"]
    );
}

#[test]
fn a_window_has_both_sides_and_panes_that_there_are() {
    let windows = |rows: &str| wrong(&with("windows", rows));
    assert_eq!(windows(r#"[{"width_in": 30}]"#), ["windows[0].height_in missing"]);
    assert_eq!(
        windows(r#"[{"glazing": "single"}, {"count": 0, "glazing": "triple", "escape": "no"}]"#),
        [
            "windows[1].count out_of_range",
            "windows[1].glazing not_one_of",
            "windows[1].escape wrong_type"
        ]
    );
    assert_eq!(
        windows(r#"[{"count": 2, "width_in": 3, "height_in": 300}]"#),
        ["windows[0].width_in out_of_range", "windows[0].height_in out_of_range"]
    );
}

#[test]
fn a_heat_cable_that_is_not_there_has_no_length() {
    let cable = |fields: &str| wrong(&with("heat_cable", fields));
    assert_eq!(cable(r#"{"present": false}"#), [""; 0]);
    let both = ["heat_cable.length_ft contradicts", "heat_cable.wet contradicts"];
    assert_eq!(cable(r#"{"present": false, "length_ft": 24, "wet": false, "lapped": null}"#), both);
    assert_eq!(cable(r#"{"length_ft": 24}"#), ["heat_cable.present missing"]);
    assert_eq!(cable(r#"{"present": true, "on_day": 280}"#), ["heat_cable.off_day missing"]);
    assert_eq!(cable(r#"{"present": false, "colour": 1}"#), ["heat_cable.colour unknown_field"]);
}

/// What is said of the width of a gap, and of a blower test.
#[test]
fn a_gap_has_one_width_and_a_blower_test_one_result() {
    let gap = |fields: &str| {
        wrong(&format!(
            r#"{{"today": "2026-11-25", "gaps": [{{"place": "door_side", {fields}}}]}}"#
        ))
    };
    assert!(gap(r#""length_in": 80, "width_class": "dime""#).is_empty());
    assert!(gap(r#""width_class": "not_measured""#).is_empty());
    assert_eq!(
        gap(r#""length_in": 80, "width_in": 0.25, "width_class": "dime""#),
        ["gaps[0].width_class contradicts"]
    );
    assert_eq!(gap(r#""width_class": "dime""#), ["gaps[0].length_in missing"]);
    assert_eq!(
        gap(r#""length_in": 80, "width_class": "dime", "width_error_in": 0.1"#),
        ["gaps[0].width_in missing"]
    );
    let line = r#"{"today": "2026-11-25",
        "gaps": [{"place": "marriage_line", "width_class": "not_measured"}]}"#;
    assert_eq!(wrong(line), ["gaps[0].width_in missing"]);
    let twice = r#"{"today": "2026-11-25",
        "leak_test": {"flow_50_cfm": 1200, "area_4pa_in2": 66, "exponent": 0.4}}"#;
    assert_eq!(
        wrong(twice),
        ["leak_test.exponent out_of_range", "leak_test.area_4pa_in2 contradicts"]
    );
    let lone = r#"{"today": "2026-11-25", "leak_test": {"exponent": 0.6}}"#;
    assert_eq!(wrong(lone), ["leak_test.flow_50_cfm missing"]);
}

#[test]
fn what_is_said_of_a_closet_is_checked_like_the_rest() {
    let heater = |fields: &str| wrong(&with("water_heater", fields));
    for outside in ["9999", "400001", "-40000", "40"] {
        let fields = format!(r#"{{"input_btu_h": {outside}}}"#);
        assert_eq!(heater(&fields), ["water_heater.input_btu_h out_of_range"], "{outside}");
    }
    let fields = r#"{"shares_closet": "yes", "old_flue_open": 0, "checked_by_technician": "no"}"#;
    assert_eq!(
        heater(fields),
        [
            "water_heater.shares_closet wrong_type",
            "water_heater.old_flue_open wrong_type",
            "water_heater.checked_by_technician wrong_type",
        ]
    );
    let ends = with("water_heater", r#"{"input_btu_h": 10000, "shares_closet": null}"#);
    assert!(walk_in(&ends).is_ok());
}
