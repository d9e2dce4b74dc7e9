//! Air, films and pipes, against the same laws on real air.

use super::{FOOT_M, in_fahrenheit, insulated, windy};
use crate::harness::{Row, Table};
use uom::si::f64::Length;
use uom::si::heat_transfer::watt_per_square_meter_kelvin;
use uom::si::linear_power_density::watt_per_meter;
use uom::si::thermal_conductivity::watt_per_meter_kelvin;
use winterseam::physics::film::cylinder_film;
use winterseam::physics::pipe::{Loss, heat_loss};
use winterseam::properties::air_heat;
use winterseam::units::{celsius, fahrenheit};

fn loss(row: &Row) -> Loss {
    let around = windy(row.number("air_f"), row.number("wind_mph"));
    heat_loss(&insulated(row), fahrenheit(row.number("pipe_f")), around)
}

fn pipe(row: &Row) -> Vec<(&'static str, f64)> {
    let (pipe, loss) = (insulated(row), loss(row));
    let outermost: Length = pipe.outside + pipe.insulation * 2.0;
    let around = windy(row.number("air_f"), row.number("wind_mph"));
    let film = cylinder_film(outermost, loss.surface, pipe.emissivity, around);
    vec![
        ("loss_w_m", loss.per_length.get::<watt_per_meter>()),
        ("convection_w_m2_k", film.convection.get::<watt_per_square_meter_kelvin>()),
        ("radiation_w_m2_k", film.radiation.get::<watt_per_square_meter_kelvin>()),
        ("surface_f", in_fahrenheit(loss.surface)),
    ]
}

fn watts(row: &Row) -> Vec<(&'static str, f64)> {
    vec![("loss_w_ft", loss(row).per_length.get::<watt_per_meter>() * FOOT_M)]
}

#[test]
fn air_conducts_like_real_air() {
    Table::read("freeze/coolprop-8-0-0__air").compare(|row| {
        let air = celsius(row.number("air_c"));
        let k = air_heat::conductivity(air).get::<watt_per_meter_kelvin>();
        vec![("conductivity_w_m_k", k), ("prandtl", air_heat::prandtl(air).value)]
    });
}

#[test]
fn pipes_in_still_air_lose_what_the_table_says() {
    Table::read("freeze/coolprop-8-0-0__pipes-still").compare(pipe);
}

#[test]
fn pipes_in_wind_lose_what_the_table_says() {
    Table::read("freeze/coolprop-8-0-0__pipes-wind").compare(pipe);
}

#[test]
fn a_cable_in_still_air_must_give_what_the_table_says() {
    Table::read("freeze/coolprop-8-0-0__watts-still").compare(watts);
}

#[test]
fn a_cable_in_wind_must_give_what_the_table_says() {
    Table::read("freeze/coolprop-8-0-0__watts-wind").compare(watts);
}
