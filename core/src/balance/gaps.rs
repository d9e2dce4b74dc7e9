//! Air through the leaks of a home, heated again.

use super::air_year::AirYear;
use super::{Use, UseKey, Weather, fuel};
use crate::air::leaks::{Leaks, leaks};
use crate::home::{Home, Shelter};
use crate::properties::air::{Air, standard_pressure};
use crate::units::fahrenheit;
use uom::si::f64::{Area, ThermodynamicTemperature};

/// Thermostat of a home where nobody read it (common practice).
const USUAL_SETPOINT_F: f64 = 68.0;
/// Below this outdoor temperature a home is heated: the base of degree days (common practice).
const HEATED_BELOW_F: f64 = 65.0;

/// What each leak takes: the gaps in their order, then all the others.
pub(super) fn uses(home: &Home, leaks: &Leaks, air: &AirYear) -> Vec<Use> {
    let taken = |(key, area): (UseKey, Area)| {
        let bought = fuel::bought(home, air.heat(area));
        Use { key, bought, cost: fuel::heating_cost(home, bought) }
    };
    let gaps = leaks.gaps.iter().enumerate().map(|(i, area)| (UseKey::Gap(i), *area));
    let others = leaks.others.map(|area| (UseKey::OtherLeaks, area));
    gaps.chain(others).map(taken).collect()
}

pub(super) fn setpoint(home: &Home) -> ThermodynamicTemperature {
    home.building.setpoint.unwrap_or(fahrenheit(USUAL_SETPOINT_F))
}

/// What breaks the wind; in town where nobody looked (common practice).
pub(super) fn shelter(home: &Home) -> Shelter {
    home.building.shelter.unwrap_or(Shelter::NeighboursApart)
}

/// Colder than this outdoors and the furnace runs.
pub(super) fn heated_below(home: &Home) -> ThermodynamicTemperature {
    fahrenheit(HEATED_BELOW_F).min(setpoint(home))
}

pub(super) fn indoor_air(home: &Home, weather: &Weather<'_>) -> Option<Air> {
    Air::dry(setpoint(home), standard_pressure(weather.place.station.elevation)?)
}

/// The leaks of a home in the air of its place.
pub(super) fn leaks_of(home: &Home, weather: &Weather<'_>) -> Option<Leaks> {
    Some(leaks(home, &indoor_air(home, weather)?))
}
