//! Every row of the tables beside the atlas is in the atlas, unit for unit.

use crate::harness::Tally;
use std::collections::BTreeMap;
use std::path::Path;
use uom::si::f64::{TemperatureInterval, ThermodynamicTemperature, Velocity};
use uom::si::{
    length, temperature_interval, thermodynamic_temperature::degree_fahrenheit,
    velocity::mile_per_hour,
};
use winterseam::climate::{Atlas, Sequence, Station};

const MONTHS: [&str; 12] =
    ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

type Row = BTreeMap<String, String>;

fn rows(table: &str) -> Vec<Row> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/data/climate").join(table);
    let text = std::fs::read_to_string(&path).unwrap_or_else(|why| panic!("{table}: {why}"));
    let mut lines = text.lines().filter(|line| !line.starts_with('#'));
    let head = lines.next().expect("names of columns").split(',').collect::<Vec<_>>();
    let named = |line: &str| {
        head.iter().zip(line.split(',')).map(|(k, v)| ((*k).to_owned(), v.to_owned())).collect()
    };
    lines.map(named).collect()
}

fn number(row: &Row, column: &str) -> f64 {
    row[column].parse().unwrap_or_else(|_| panic!("{column}: {:?}", row[column]))
}

/// Ours differ from the table by no more than the last bits of a change of unit.
fn note(tally: &mut Tally, row: &Row, column: &str, ours: f64) {
    let theirs = number(row, column);
    tally.note(&row["usaf"], column, (ours, theirs), (ours - theirs).abs() < 1e-9, None);
}

fn note_months(tally: &mut Tally, row: &Row, what: &str, ours: impl Fn(usize) -> f64) {
    for (at, month) in MONTHS.iter().enumerate() {
        note(tally, row, &format!("{what}_{month}"), ours(at));
    }
}

fn note_station(tally: &mut Tally, row: &Row, station: &Station) {
    let f = |t: ThermodynamicTemperature| t.get::<degree_fahrenheit>();
    let normals = &station.normals;
    note_months(tally, row, "max", |m| f(normals.max[m]));
    note_months(tally, row, "min", |m| f(normals.min[m]));
    note_months(tally, row, "dew", |m| f(normals.dew_point[m]));
    note_months(tally, row, "wind", |m| Velocity::get::<mile_per_hour>(&normals.wind[m]));
    note_months(tally, row, "sigma", |m| {
        TemperatureInterval::get::<temperature_interval::degree_fahrenheit>(&normals.day_to_day[m])
    });
    note(tally, row, "elevation", station.elevation.get::<length::foot>());
    note(tally, row, "hdd65", station.hdd65.0);
    note(tally, row, "cdd65", station.cdd65.0);
    note(tally, row, "cold_99", f(station.cold_99));
    note(tally, row, "cold_99_6", f(station.cold_99_6));
}

#[test]
fn every_station_is_in_the_atlas() {
    let rows = rows("stations.csv");
    assert_eq!(rows.len(), Atlas::embedded().stations().len());
    let mut tally = Tally::default();
    for row in &rows {
        let station = super::station(&row["usaf"]);
        assert_eq!((&station.name, &station.state), (&row["name"], &row["state"]));
        note_station(&mut tally, row, &station);
        let day = |day: Option<u16>| day.map_or(String::new(), |day| day.to_string());
        assert_eq!(day(station.last_freeze()), row["last_freeze"], "{}", station.name);
        assert_eq!(day(station.first_freeze()), row["first_freeze"], "{}", station.name);
    }
    tally.report("climate/stations.csv");
}

#[test]
fn every_zip_area_is_in_the_atlas() {
    let rows = rows("zips.csv");
    for row in &rows {
        let place = Atlas::embedded().place(&row["zip"]).expect("a ZIP area of the table");
        assert_eq!(place.station.usaf, row["station"], "{}", row["zip"]);
        let km = place.distance.expect("a distance").get::<length::kilometer>();
        assert!((km - number(row, "distance_km")).abs() < 1e-9, "{}", row["zip"]);
        assert_eq!(place.zone.to_string(), row["zone"], "{}", row["zip"]);
        assert!(!place.by_area);
    }
    let known = |code: &u32| {
        Atlas::embedded().place(&format!("{code:05}")).is_some_and(|place| !place.by_area)
    };
    assert_eq!((0..100_000).filter(known).count(), rows.len(), "and no other");
}

#[test]
fn every_zip_start_is_in_the_atlas() {
    let listed = rows("zips.csv").into_iter().map(|row| row["zip"].clone()).collect::<Vec<_>>();
    for row in rows("zip3.csv") {
        let unlisted = (0..100)
            .map(|end| format!("{}{end:02}", row["zip3"]))
            .find(|zip| listed.binary_search(zip).is_err());
        // A start with all its hundred codes listed is never asked.
        let Some(zip) = unlisted else { continue };
        let place = Atlas::embedded().place(&zip).expect("a start of the table");
        assert_eq!(place.station.usaf, row["station"], "{zip}");
        assert_eq!(place.zone.to_string(), row["zone"], "{zip}");
        assert!(place.by_area && place.distance.is_none(), "{zip}");
    }
}

#[test]
fn every_day_is_in_the_sequence() {
    let rows = rows("sequence.csv");
    assert_eq!(rows.len(), 365);
    for (at, row) in rows.iter().enumerate() {
        for (ours, column) in
            [(Sequence::FIXED.warmth()[at], "temperature"), (Sequence::FIXED.range()[at], "range")]
        {
            assert!((ours - number(row, column)).abs() < 1e-12, "{column} of day {}", at + 1);
        }
    }
}
