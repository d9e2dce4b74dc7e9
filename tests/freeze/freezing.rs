//! How long standing water takes to freeze: the handbook's formula and printed times, and the whole
//! model against the same laws on real air.

use super::{conductivity, usual, windy};
use crate::harness::{Row, Table};
use uom::si::f64::{HeatTransfer, Length};
use uom::si::heat_transfer::watt_per_square_meter_kelvin;
use uom::si::length::inch;
use uom::si::time::hour;
use winterseam::freeze::{freeze_stages, freeze_times};
use winterseam::physics::pipe::Pipe;
use winterseam::units::fahrenheit;

fn lump(row: &Row, film: Option<HeatTransfer>) -> Vec<(&'static str, f64)> {
    let wall = if row.has("wall_w_m_k") { row.number("wall_w_m_k") } else { 390.0 };
    let pipe = Pipe {
        inside: Length::new::<inch>(row.number("inside_in")),
        wall: conductivity(wall),
        insulation: Length::new::<inch>(row.number("insulation_in")),
        insulation_conductivity: conductivity(row.number("insulation_w_m_k")),
        ..Pipe::thin(Length::new::<inch>(row.number("outside_in")), 0.9.into())
    };
    let (water, air) = (fahrenheit(row.number("water_f")), fahrenheit(row.number("air_f")));
    let times = freeze_times(&pipe, film, water, air).expect("frost");
    vec![
        ("to_zero_h", times.to_zero.get::<hour>()),
        ("to_solid_h", times.further_to_solid.get::<hour>()),
    ]
}

#[test]
fn water_cools_to_freezing_in_the_times_that_the_handbook_prints() {
    Table::read("freeze/handbook-2009-ch23__published").compare(|row| lump(row, None));
}

#[test]
fn water_cools_to_freezing_as_the_handbook_reckons() {
    Table::read("freeze/handbook-2009-ch23__closed-form").compare(|row| lump(row, None));
}

#[test]
fn a_lump_of_water_behind_a_film_freezes_as_by_hand() {
    let film = HeatTransfer::new::<watt_per_square_meter_kelvin>(9.0);
    Table::read("freeze/python-3-11__lumped").compare(|row| lump(row, Some(film)));
}

#[test]
fn usual_pipes_freeze_in_the_times_of_the_table() {
    Table::read("freeze/coolprop-8-0-0__freezing").compare(|row| {
        let (kind, pipe) = usual(row, row.text("size"));
        let around = windy(row.number("air_f"), row.number("wind_mph"));
        let stages = freeze_stages(&pipe, kind.wall_heat(), fahrenheit(50.0), around);
        let stages = stages.expect("frost");
        let further = stages.to_solid - stages.to_zero;
        vec![
            ("to_zero_h", stages.to_zero.get::<hour>()),
            ("further_to_solid_h", further.get::<hour>()),
        ]
    });
}
