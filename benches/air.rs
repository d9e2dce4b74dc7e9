//! Air that leaks, and the water in it.

use std::sync::LazyLock;
use uom::si::f64::{Area, Pressure, Ratio, Velocity};
use uom::si::{
    area::square_meter, pressure::pascal, ratio::ratio, thermodynamic_temperature::kelvin,
    velocity::meter_per_second, volume_rate::cubic_meter_per_second,
};
use winterseam::air::driven::Driven;
use winterseam::air::enhanced::{Foundation, Pressing, usual_exponent};
use winterseam::air::infiltration::{Coefficients, Storeys};
use winterseam::climate::{Atlas, Year};
use winterseam::home::Shelter;
use winterseam::physics::moist_air::{MoistAir, RelativeHumidity};
use winterseam::physics::power_law::PowerLaw;
use winterseam::units::{celsius, kelvins};

/// Hours of a year.
pub(crate) const HOURS: u32 = 8760;
/// States of moist air.
pub(crate) const STATES: u32 = 1000;

/// Air through a home with 0.05 m² of leaks, summed over a made-up year, m³/s.
pub(crate) fn leakage() -> f64 {
    let home = Coefficients::of(Shelter::HomesAcrossRoad, Storeys::One);
    let leaks = Area::new::<square_meter>(0.05);
    let hour = |hour: u32| {
        let apart = kelvins(f64::from(hour * 37 % 400) / 10.0);
        let wind = Velocity::new::<meter_per_second>(f64::from(hour * 53 % 120) / 10.0);
        (leaks * home.speed(apart, wind)).get::<cubic_meter_per_second>()
    };
    (0..HOURS).map(hour).sum()
}

/// A winter and a summer, raised to the powers of the model once.
static DRIVEN: LazyLock<Driven> = LazyLock::new(|| {
    let station = Atlas::embedded().station("727730").expect("a station of the tables");
    Driven::of(&Year::of(&station), celsius(20.0), usual_exponent())
});

/// Air through a home by the enhanced model, summed over the year of a station, m³/s.
pub(crate) fn enhanced() -> f64 {
    let home = Pressing::of(Shelter::HomesAcrossRoad, Storeys::One, false, Foundation::CrawlSpace);
    let leaks = PowerLaw::new(0.06, usual_exponent()).expect("an exponent of leaks");
    let flows = DRIVEN.flows(&leaks, &home).expect("of the same exponent");
    flows.map(|flow| flow.get::<cubic_meter_per_second>()).sum()
}

/// Dew point, humidity ratio, enthalpy and density of each state; dew points summed, K.
pub(crate) fn moist() -> f64 {
    let pressure = Pressure::new::<pascal>(101_325.0);
    let state = |state: u32| {
        let dry_bulb = celsius(f64::from(state % 40));
        let humidity = Ratio::new::<ratio>(f64::from(state % 9 + 1) / 10.0);
        let air = MoistAir::new(dry_bulb, RelativeHumidity::new(humidity)?, pressure)?;
        std::hint::black_box((air.humidity_ratio(), air.enthalpy(), air.density()));
        Some(air.dew_point()?.get::<kelvin>())
    };
    (0..STATES).filter_map(state).sum()
}
