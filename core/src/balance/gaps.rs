//! Air through the leaks of a home, heated again.

use super::air_year::AirYear;
use super::heating::Loss;
use super::{UseKey, Weather};
use crate::air::leaks::{Leaks, leaks};
use crate::home::{Home, Shelter};
use crate::properties::air::{Air, standard_pressure};
use crate::units::fahrenheit;
use uom::si::f64::ThermodynamicTemperature;

/// Thermostat of a home where nobody read it (common practice).
const USUAL_SETPOINT_F: f64 = 68.0;

/// What each leak takes: the gaps in their order, then all the others.
pub(super) fn losses(leaks: &Leaks, air: &AirYear) -> impl Iterator<Item = Loss> {
    let gaps = leaks.gaps.iter().enumerate().map(|(i, area)| (UseKey::Gap(i), *area));
    let others = (UseKey::OtherLeaks, leaks.others);
    gaps.chain([others]).map(|(key, area)| Loss { key, heat: air.heat(area) })
}

pub(super) fn setpoint(home: &Home) -> ThermodynamicTemperature {
    home.building.setpoint.unwrap_or(fahrenheit(USUAL_SETPOINT_F))
}

/// What breaks the wind; in town where nobody looked (common practice).
pub(super) fn shelter(home: &Home) -> Shelter {
    home.building.shelter.unwrap_or(Shelter::NeighboursApart)
}

pub(super) fn indoor_air(home: &Home, weather: &Weather<'_>) -> Option<Air> {
    Air::dry(setpoint(home), standard_pressure(weather.place.station.elevation)?)
}

/// The leaks of a home in the air of its place.
pub(super) fn leaks_of(home: &Home, weather: &Weather<'_>) -> Option<Leaks> {
    Some(leaks(home, &indoor_air(home, weather)?))
}
