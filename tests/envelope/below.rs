//! What skirting, vents and belly change below a home.

use super::{between, typed};
use serde_json::{Value, json};
use uom::si::f64::{Power, Velocity};
use uom::si::power::watt;
use uom::si::thermodynamic_temperature::degree_fahrenheit;
use uom::si::velocity::meter_per_second;
use winterseam::envelope::Below;

/// Watts in a Btu an hour.
const BTU_H: f64 = 0.293_071_07;

/// A closed space below a home of 14 by 66 ft, with what is said of it besides.
fn below(said: &Value) -> Below {
    let mut home = json!({
        "sections": "single", "width_ft": 14, "length_ft": 66, "year_built": 1988,
        "belly": "sound", "skirting_vents": "none",
    });
    for (key, value) in said.as_object().expect("fields") {
        home[key] = value.clone();
    }
    Below::of(&typed(&json!({"today": "2026-11-25", "home": home})))
}

fn fahrenheit_below(said: &Value, wind_m_s: f64, ducts_btu_h: f64) -> f64 {
    let wind = Velocity::new::<meter_per_second>(wind_m_s);
    let ducts = Power::new::<watt>(ducts_btu_h * BTU_H);
    below(said).temperature(between(45.0, 10.0), wind, ducts).get::<degree_fahrenheit>()
}

/// Without skirting the air below a home in wind is outdoor air: within 1 °F, by common practice.
#[test]
fn without_skirting_it_is_as_cold_as_outdoors() {
    for wind in [2.0, 8.0] {
        let air = fahrenheit_below(&json!({"skirting_open_ft": 160}), wind, 0.0);
        assert!((10.0..=11.0).contains(&air), "{wind} m/s: {air} °F");
    }
}

/// What people of the trade say of plain skirting: some 10 to 15 °F warmer than outdoors, up to 16
/// where it is cold and tight, and next to nothing where much of it is missing.
#[test]
fn plain_skirting_is_worth_what_the_trade_says() {
    let over = |said: &Value| fahrenheit_below(said, 4.0, 0.0) - 10.0;
    assert!((8.0..=16.0).contains(&over(&json!({"skirting_open": false}))));
    assert!(over(&json!({"skirting_open_ft": 50})) < 4.0);
}

#[test]
fn more_open_skirting_is_colder_below_in_every_wind() {
    for wind in [0.0, 1.0, 5.0, 15.0] {
        let at = |feet: u8| fahrenheit_below(&json!({"skirting_open_ft": feet}), wind, 0.0);
        let falls = [0, 2, 8, 30, 90, 160].windows(2).all(|two| at(two[1]) < at(two[0]));
        assert!(falls, "{wind} m/s");
    }
    let vents =
        |word| fahrenheit_below(&json!({"skirting_open": false, "skirting_vents": word}), 4.0, 0.0);
    assert!(vents("open") < vents("none") && vents("blocked") <= vents("none"));
}

#[test]
fn heat_of_ducts_and_an_open_belly_warm_it() {
    let closed = json!({"skirting_open": false});
    assert!(fahrenheit_below(&closed, 4.0, 3000.0) > fahrenheit_below(&closed, 4.0, 0.0));
    let torn = json!({"skirting_open": false, "belly": "missing"});
    assert!(fahrenheit_below(&torn, 4.0, 0.0) > fahrenheit_below(&closed, 4.0, 0.0));
}

/// It stays between the coldest and the warmest of what surrounds it.
#[test]
fn it_lies_between_what_surrounds_it() {
    for (ground, outdoor) in [(45.0, -30.0), (30.0, 60.0), (70.0, 100.0)] {
        let around = between(ground, outdoor);
        let air = below(&json!({})).temperature(
            around,
            Velocity::new::<meter_per_second>(3.0),
            Power::default(),
        );
        let all = [around.indoor, around.ground, around.outdoor];
        assert!(all.iter().any(|t| *t <= air) && all.iter().any(|t| *t >= air));
    }
}
