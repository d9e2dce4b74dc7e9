//! ASHRAE Handbook: Fundamentals 2021 (SI), chapter 16.

use super::{slit, table_air};
use crate::harness::{Row, Table};
use uom::si::f64::{Area, Pressure, TemperatureInterval, Velocity, VolumeRate};
use uom::si::volume_rate::{cubic_meter_per_hour, cubic_meter_per_second, liter_per_second};
use uom::si::{
    area::{square_centimeter, square_inch},
    pressure::pascal,
    temperature_interval::degree_fahrenheit,
    velocity::{meter_per_second, mile_per_hour},
};
use winterseam::air::infiltration::{self, Coefficients, Storeys};
use winterseam::home::Shelter;
use winterseam::physics::gap;
use winterseam::units::kelvins;
use winterseam::units::volume_rate::cfm;

pub(super) const BY_CLASS: [Shelter; 5] = [
    Shelter::OpenGround,
    Shelter::LoneHome,
    Shelter::HomesAcrossRoad,
    Shelter::NeighboursApart,
    Shelter::NeighboursClose,
];

/// Source: worked examples 2, 3 and 4.
#[test]
fn worked_examples_of_the_basic_model() {
    Table::read("air/handbook-2021-ch16__examples").compare(|row| {
        let flow = leaks(row);
        let an_hour = flow.get::<cubic_meter_per_hour>();
        vec![
            ("flow_m3_s", flow.get::<cubic_meter_per_second>()),
            ("coarse_flow_m3_s", flow.get::<cubic_meter_per_second>()),
            ("flow_m3_h", an_hour),
            ("air_changes_h", an_hour / row.number("volume_m3")),
        ]
    });
}

/// Source: equation 48 with tables 4 and 6, one storey, all classes.
#[test]
fn the_basic_model_on_one_storey() {
    Table::read("air/handbook-2021-ch16__basic").compare(|row| {
        let flow = leaks(row);
        vec![
            ("flow_l_s", flow.get::<liter_per_second>()),
            ("flow_m3_h", flow.get::<cubic_meter_per_hour>()),
        ]
    });
}

/// Source: the same coefficients in the inch-pound printing; all storeys, all classes.
#[test]
fn the_coefficients_are_those_of_the_other_printing() {
    let calm = Velocity::new::<mile_per_hour>(0.0);
    let one_mph = Velocity::new::<mile_per_hour>(1.0);
    let one_degree = TemperatureInterval::new::<degree_fahrenheit>(1.0);
    let area = Area::new::<square_inch>(1.0);
    Table::read("air/handbook-inch-pound__basic").compare(|row| {
        let squared = |apart, wind| {
            let flow = infiltration::flow(area, apart, wind, &home_of(row)).best.get::<cfm>();
            flow * flow
        };
        vec![("wind", squared(kelvins(0.0), one_mph)), ("stack", squared(one_degree, calm))]
    });
}

/// Source: the discharge coefficient of a sharp-edged opening.
#[test]
fn a_gap_without_depth_is_a_sharp_edged_opening() {
    Table::read("air/handbook-2021-ch16__orifice").compare(|row| {
        let width_mm = 10.0;
        let length_m = row.number("area_cm2") * 1e-4 / (width_mm * 1e-3);
        let hole = slit(length_m, width_mm, 0.0, 0);
        let across = Pressure::new::<pascal>(row.number("pressure_pa"));
        let area = gap::leakage_area(&hole, &table_air());
        vec![
            ("flow_l_s", gap::flow(&hole, across, &table_air()).get::<liter_per_second>()),
            ("leakage_area_cm2", area.get::<square_centimeter>()),
        ]
    });
}

fn leaks(row: &Row) -> VolumeRate {
    infiltration::flow(
        Area::new::<square_centimeter>(row.number("leakage_area_cm2")),
        kelvins(row.number("apart_k")),
        Velocity::new::<meter_per_second>(row.number("wind_m_s")),
        &home_of(row),
    )
    .best
}

fn home_of(row: &Row) -> Coefficients {
    let class: usize = row.text("shelter_class").parse().unwrap();
    Coefficients::of(BY_CLASS[class - 1], storeys_of(row))
}

pub(super) fn storeys_of(row: &Row) -> Storeys {
    Storeys::from_count(row.text("storeys").parse().unwrap()).unwrap()
}
