//! The heat cable over the hours of the year.

use super::{Use, UseKey, Weather, fuel};
use crate::freeze::{CableSeen, FrostFree, cable_year};
use crate::home::{Home, Season};
use uom::si::f64::Time;

/// The year of the cable: what it takes, and how long the pipe may freeze.
pub(super) struct CableUse {
    pub(super) used: Use,
    pub(super) freeze_risk: Time,
}

pub(super) fn year(home: &Home, weather: &Weather<'_>) -> Option<CableUse> {
    let mut cable = CableSeen::of(home.cable.as_ref()?)?.best();
    // Who switches by hand is reminded by the careful dates, so the year is counted by them.
    let station = &weather.place.station;
    let all_year = station.freeze.map(|_| Season { on_day: 1, off_day: 365 });
    let careful = FrostFree::of(station).map(FrostFree::cable_season).or(all_year);
    cable.season = cable.season.or(careful);
    let year = cable_year(&cable, weather.year, weather.place.station.freeze);
    let bought = year.electricity;
    let cost = fuel::electricity_cost(home, bought);
    Some(CableUse {
        used: Use { key: UseKey::HeatCable, bought, cost },
        freeze_risk: year.freeze_risk,
    })
}
