//! Heat that pipes lose, and heat that burns.

use uom::si::f64::{Length, ThermalConductivity};
use uom::si::{
    length::millimeter, linear_power_density::watt_per_meter,
    thermal_conductivity::watt_per_meter_kelvin, time::second,
};
use winterseam::hot_water::{Person, burn_time, thermometer_error};
use winterseam::physics::film::Surroundings;
use winterseam::physics::pipe::{Pipe, heat_loss};
use winterseam::units::celsius;

/// Pipes.
pub(crate) const PIPES: u32 = 200;
/// Readings at a tap.
pub(crate) const TAPS: u32 = 20;

/// Loss of a pipe with thicker and thicker insulation, summed, W/m.
pub(crate) fn pipes() -> f64 {
    let around = Surroundings::still(celsius(-10.0));
    let mut pipe = Pipe {
        inside: Length::new::<millimeter>(19.9),
        outside: Length::new::<millimeter>(22.2),
        wall: ThermalConductivity::new::<watt_per_meter_kelvin>(390.0),
        insulation: Length::new::<millimeter>(0.0),
        insulation_conductivity: ThermalConductivity::new::<watt_per_meter_kelvin>(0.036),
        emissivity: 0.9.into(),
    };
    let mut loss = |step: u32| {
        pipe.insulation = Length::new::<millimeter>(f64::from(step) / 10.0);
        heat_loss(&pipe, celsius(4.44), around).per_length.get::<watt_per_meter>()
    };
    (0..PIPES).map(&mut loss).sum()
}

/// People whose skin is worked out.
pub(crate) const SKINS: u32 = 3;

/// The warming of each person's skin worked out anew, and one time from it, summed, s: what a first
/// reading takes; every later one has the skin already.
pub(crate) fn skins() -> f64 {
    [Person::Adult, Person::Child, Person::OlderAdult]
        .into_iter()
        .filter_map(|person| person.injury().exposure().onset(celsius(55.0)))
        .map(|time| time.get::<second>())
        .sum()
}

/// Time to a burn from a warm to a very hot tap, summed, s.
pub(crate) fn burns() -> f64 {
    let time = |tap: u32| {
        let water = celsius(f64::from(tap) + 50.0);
        let burn = burn_time(water, thermometer_error(true), Person::Adult).ok()?;
        Some(burn.low?.get::<second>())
    };
    (0..TAPS).filter_map(time).sum()
}
