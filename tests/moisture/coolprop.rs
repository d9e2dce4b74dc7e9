//! `CoolProp` 8.0.0: air as a real gas.

use super::moist_air_of;
use crate::harness::Table;
use uom::si::f64::Pressure;
use uom::si::specific_heat_capacity::joule_per_kilogram_kelvin;
use uom::si::{
    dynamic_viscosity::pascal_second, mass_density::kilogram_per_cubic_meter, pressure::pascal,
    ratio::ratio, thermodynamic_temperature::degree_celsius,
};
use winterseam::properties::air::{Air, heat_capacity};
use winterseam::units::celsius;

/// Source: `PropsSI` for dry air.
#[test]
fn dry_air_is_as_heavy_as_viscous_and_as_hard_to_warm_as_the_real_gas() {
    Table::read("moisture/coolprop-8.0.0__dry-air").compare(|row| {
        let sea_level = Pressure::new::<pascal>(101_325.0);
        let air = Air::dry(celsius(row.number("celsius")), sea_level).unwrap();
        vec![
            ("density_kg_m3", air.density().get::<kilogram_per_cubic_meter>()),
            ("viscosity_upa_s", air.viscosity().get::<pascal_second>() * 1e6),
            ("heat_capacity_j_kg_k", heat_capacity().get::<joule_per_kilogram_kelvin>()),
        ]
    });
}

/// Source: `HAPropsSI` for moist air.
#[test]
fn moist_air_is_near_the_real_gas() {
    Table::read("moisture/coolprop-8.0.0__moist-air").compare(|row| {
        let air = moist_air_of(row);
        vec![
            ("humidity_ratio", air.humidity_ratio().get::<ratio>()),
            ("dew_point_c", air.dew_point().unwrap().get::<degree_celsius>()),
            ("density_kg_m3", air.density().get::<kilogram_per_cubic_meter>()),
        ]
    });
}
