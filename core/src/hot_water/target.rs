//! The temperature to aim for at the tap.

use crate::home::{HeaterKind, Home};
use crate::units::fahrenheit;
use uom::si::f64::ThermodynamicTemperature;

/// How the tap is brought to its temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Target {
    /// Turn the heater to this.
    TurnTo(ThermodynamicTemperature),
    /// Keep the water stored hot and bring the tap to this with a mixing valve, after a talk with
    /// the care team.
    StoreHotAndMix(ThermodynamicTemperature),
    /// Set the mixing valve that is there to this; the tank behind it stays as it is.
    SetValve(ThermodynamicTemperature),
}

/// The temperature to aim for: 120 °F at the tap for every age. What has to be turned for it hangs
/// on the rest. Behind a mixing valve the tap does not show the tank, so the valve is set. Where
/// lungs or immune system are weak, infection is the greater danger and no tank is turned down
/// blindly; a heater without a tank stores nothing that germs could grow in.
///
/// [`TAP_TARGET`](crate::sources::safety::TAP_TARGET),
/// [`HOT_STORAGE`](crate::sources::safety::HOT_STORAGE)
#[must_use]
pub fn target(home: &Home) -> Target {
    let at_the_tap = fahrenheit(120.0);
    let heater = &home.water_heater;
    let stores = heater.kind.is_none_or(HeaterKind::has_tank);
    match (heater.mixing_valve, home.people.lung_or_immune) {
        (Some(true), _) => Target::SetValve(at_the_tap),
        (_, Some(true)) if stores => Target::StoreHotAndMix(at_the_tap),
        _ => Target::TurnTo(at_the_tap),
    }
}

/// What is said of a tap reading.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Scald {
    /// Burns no faster than people expect.
    Unlikely,
    /// Burns those who burn faster: from 123 °F.
    TheFrail,
    /// Burns anyone in seconds: from 130 °F.
    Anyone,
}

/// What is said of a tap reading: judgement, [`LINES`](crate::sources::safety::LINES).
#[must_use]
pub fn scald(tap: ThermodynamicTemperature) -> Scald {
    if tap >= fahrenheit(130.0) {
        Scald::Anyone
    } else if tap >= fahrenheit(123.0) {
        Scald::TheFrail
    } else {
        Scald::Unlikely
    }
}
