//! Degree days and freeze dates that the weather service publishes for one station in full.

use super::{air_f, heating_degree_days, station};
use crate::harness::{Table, Tally};
use winterseam::climate::Year;
use winterseam::units::fahrenheit;

const LEBANON: &str = "726116";

#[test]
fn the_year_has_the_degree_days_that_are_published() {
    let lebanon = station(LEBANON);
    let air = air_f(&Year::of(&lebanon));
    Table::read("climate/noaa-1991-2020-lebanon-nh").compare(|row| {
        vec![
            ("published", heating_degree_days(&air, row.number("base_f"))),
            ("closed_form", lebanon.normals.degree_days_below(fahrenheit(row.number("base_f"))).0),
            ("table", lebanon.hdd65.0),
        ]
    });
}

#[test]
fn the_freeze_dates_lie_among_those_of_the_record() {
    let lebanon = station(LEBANON);
    let mut tally = Tally::default();
    for row in Table::read("climate/noaa-1991-2020-lebanon-nh-freeze").rows() {
        let day = match row.text("id") {
            "last-freeze" => lebanon.last_freeze(),
            _ => lebanon.first_freeze(),
        };
        let ours = f64::from(day.expect("it freezes in New Hampshire"));
        let (earliest, latest) = (row.number("earliest"), row.number("latest"));
        tally.note(row.text("id"), "earliest", (ours, earliest), ours >= earliest, None);
        tally.note(row.text("id"), "latest", (ours, latest), ours <= latest, None);
    }
    tally.report("climate/noaa-1991-2020-lebanon-nh-freeze");
}
