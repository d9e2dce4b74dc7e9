//! Published normals of airports: those that the tables rest on, and neighbours that they do not.

use super::station;
use crate::harness::{Row, Table};
use uom::si::thermodynamic_temperature::degree_fahrenheit;

fn ours(row: &Row) -> Vec<(&'static str, f64)> {
    let station = station(row.text("station"));
    let max = station.normals.max.map(|t| t.get::<degree_fahrenheit>());
    let min = station.normals.min.map(|t| t.get::<degree_fahrenheit>());
    // No date agrees with no published date.
    let day = |day: Option<u16>| day.map_or(f64::NAN, f64::from);
    vec![
        ("max_jan", max[0]),
        ("min_jan", min[0]),
        ("max_apr", max[3]),
        ("min_apr", min[3]),
        ("max_jul", max[6]),
        ("min_jul", min[6]),
        ("max_oct", max[9]),
        ("min_oct", min[9]),
        ("last_freeze", day(station.last_freeze())),
        ("first_freeze", day(station.first_freeze())),
    ]
}

#[test]
fn published_normals_were_carried_as_they_stand() {
    Table::read("climate/noaa-1991-2020-normals").compare(ours);
}

#[test]
fn normals_without_a_record_of_their_own_are_near_those_of_a_neighbour() {
    Table::read("climate/noaa-1991-2020-neighbours").compare(ours);
}
