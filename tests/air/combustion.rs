//! Air for burners: fuel gas codes, an appliance manual, and the handbook.

use crate::harness::{Row, Table};
use uom::si::f64::{Area, Power};
use uom::si::{
    area::{square_centimeter, square_inch},
    pressure::pascal,
    volume::cubic_foot,
    volume_rate::liter_per_second,
};
use winterseam::air::combustion::{
    AirFrom, Draft, closet_pressure, demand, indoor_volume, opening,
};
use winterseam::units::power::btu_per_hour;

fn input(row: &Row) -> Power {
    Power::new::<btu_per_hour>(row.number("input_btu_h"))
}

/// Source: the codes' rules for each way of the air.
#[test]
fn openings_are_as_large_as_the_code_asks() {
    Table::read("air/fuel-gas-code-openings").compare(|row| {
        let from = match row.text("from") {
            "two" => AirFrom::OutdoorsByTwo,
            "level_ducts" => AirFrom::OutdoorsByLevelDucts,
            "one" => AirFrom::OutdoorsByOne,
            "indoors" => AirFrom::Indoors,
            other => panic!("from {other:?}"),
        };
        vec![("each_in2", opening(input(row), from).best.get::<square_inch>())]
    });
}

/// Source: a furnace manual's table of volumes.
#[test]
fn a_burner_that_breathes_room_air_needs_room() {
    Table::read("air/furnace-manual-known-air-changes").compare(|row| {
        let draft = match row.text("draft") {
            "natural" => Draft::Natural,
            "fan_assisted" => Draft::FanAssisted,
            other => panic!("draft {other:?}"),
        };
        let volume = indoor_volume(input(row), draft, row.number("air_changes_h")).unwrap();
        vec![("volume_ft3", volume.best.get::<cubic_foot>())]
    });
}

/// Source: the handbook's air need, through what is left of a sealed closet.
#[test]
fn a_sealed_closet_is_pulled_far_below_the_room() {
    Table::read("air/handbook-2021-ch17__closet").compare(|row| {
        let left = Area::new::<square_centimeter>(row.number("left_cm2"));
        let pull = closet_pressure(input(row), left).unwrap();
        let taken = demand(input(row)).best.get::<liter_per_second>();
        vec![("demand_l_s", taken), ("pressure_pa", pull.get::<pascal>())]
    });
}
