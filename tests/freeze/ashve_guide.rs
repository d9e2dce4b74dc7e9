//! The engineers' guide of 1941: bare pipes in a still room.

use super::{BTU_PER_HOUR_W, FOOT_M, bare, windy};
use crate::harness::{Row, Table};
use uom::si::linear_power_density::watt_per_meter;
use winterseam::physics::pipe::heat_loss;
use winterseam::units::fahrenheit;

const ROOM_F: f64 = 70.0;

fn loss(row: &Row) -> Vec<(&'static str, f64)> {
    let apart = row.number("apart_f");
    let pipe = bare(row, row.number("emissivity"));
    let loss = heat_loss(&pipe, fahrenheit(ROOM_F + apart), windy(ROOM_F, 0.0));
    let btu_h_ft = loss.per_length.get::<watt_per_meter>() * FOOT_M / BTU_PER_HOUR_W;
    vec![("loss_btu_h_ft_f", btu_h_ft / apart)]
}

#[test]
fn bare_steel_loses_what_the_guide_says() {
    Table::read("freeze/ashve-guide-1941__steel").compare(loss);
}

#[test]
fn bright_copper_loses_what_the_guide_says() {
    Table::read("freeze/ashve-guide-1941__copper").compare(loss);
}
