//! The zones of counties in the energy code, asked by ZIP code.

use crate::harness::Table;
use winterseam::climate::{Atlas, Moisture, Place};

fn place(zip: &str) -> Place {
    Atlas::embedded().place(zip).unwrap_or_else(|| panic!("no place {zip}"))
}

#[test]
fn a_zip_code_lies_in_the_zone_of_its_county() {
    let letter = |moisture| match moisture {
        None => 0.0,
        Some(Moisture::Humid) => 1.0,
        Some(Moisture::Dry) => 2.0,
        Some(Moisture::Marine) => 3.0,
    };
    Table::read("climate/energy-code-2012-zones").compare(|row| {
        let zone = place(row.text("zip")).zone;
        vec![("number", f64::from(zone.number())), ("letter", letter(zone.moisture()))]
    });
}

#[test]
fn the_station_of_a_city_stands_in_its_state() {
    for row in Table::read("climate/energy-code-2012-zones").rows() {
        assert_eq!(place(row.text("zip")).station.state, row.text("state"), "{}", row.text("id"));
    }
}

#[test]
fn the_towns_of_alaska_have_the_weather_of_their_own_airfields() {
    // The middle of these very large areas lies far from the town that nearly all live in.
    assert_eq!(place("99701").station.name, "FAIRBANKS INTL ARPT");
    assert_eq!(place("99503").station.name, "ANCHORAGE MERRILL FIELD");
    assert!(place("99519").station.name.starts_with("ANCHORAGE"), "post-office boxes");
}
