//! `PsychroLib` 2.5.0: the handbook's moist air, values kept in tables.

use super::moist_air_of;
use crate::harness::Table;
use uom::si::f64::Length;
use uom::si::{
    available_energy::kilojoule_per_kilogram, length::meter,
    mass_density::kilogram_per_cubic_meter, pressure::pascal, ratio::ratio,
    thermodynamic_temperature::degree_celsius,
};
use winterseam::physics::saturation::saturation_pressure;
use winterseam::properties::air::standard_pressure;
use winterseam::units::celsius;

/// Source: `GetSatVapPres`.
#[test]
fn vapour_over_ice_and_over_water() {
    Table::read("moisture/psychrolib-2.5.0__saturation").compare(|row| {
        let saturation = saturation_pressure(celsius(row.number("celsius"))).unwrap();
        vec![("saturation_pa", saturation.get::<pascal>())]
    });
}

/// Source: `GetHumRatioFromRelHum`, `GetTDewPointFromRelHum`, `GetMoistAirEnthalpy`,
/// `GetMoistAirDensity`.
#[test]
fn moist_air_from_frost_to_summer() {
    Table::read("moisture/psychrolib-2.5.0__moist-air").compare(|row| {
        let air = moist_air_of(row);
        vec![
            ("humidity_ratio", air.humidity_ratio().get::<ratio>()),
            ("dew_point_c", air.dew_point().unwrap().get::<degree_celsius>()),
            ("enthalpy_kj_kg", air.enthalpy().get::<kilojoule_per_kilogram>()),
            ("density_kg_m3", air.density().get::<kilogram_per_cubic_meter>()),
        ]
    });
}

/// Source: `GetStandardAtmPressure`.
#[test]
fn the_air_is_thinner_higher_up() {
    Table::read("moisture/psychrolib-2.5.0__altitude").compare(|row| {
        let altitude = Length::new::<meter>(row.number("altitude_m"));
        vec![("pressure_pa", standard_pressure(altitude).unwrap().get::<pascal>())]
    });
}
