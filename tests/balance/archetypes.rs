//! Heating of usual homes from warm to cold places, against degree days by hand.

use crate::harness::{Row, Table};
use serde_json::json;
use uom::si::energy::kilowatt_hour;
use winterseam::balance::{Weather, assess};
use winterseam::climate::{Atlas, Year};
use winterseam::wire::{Tree, home};

/// Heat of a year, brought to the degree days that the figure was made for.
fn kwh(row: &Row) -> f64 {
    let request = json!({
        "today": "2026-11-25",
        "home": {
            "sections": row.text("sections"), "width_ft": row.number("width_ft"),
            "length_ft": row.number("length_ft"), "year_built": row.number("year"),
            "bedrooms_count": 2, "skirting_open": false,
        },
    });
    let home = home(&Tree::from_json(&request.to_string()).expect("JSON")).expect("a home");
    let place = Atlas::embedded().place(row.text("zip")).expect("known");
    let year = Year::of(&place.station);
    let year = assess(&home, &Weather { place: &place, year: &year });
    let need = year.heating.expect("air is known").need.total().get::<kilowatt_hour>();
    need * row.number("hdd") / place.station.hdd65.0
}

#[test]
fn usual_homes_take_what_degree_days_say() {
    Table::read("balance/archetypes").compare(|row| vec![("kwh", kwh(row))]);
}
