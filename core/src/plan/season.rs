//! What the time of the year and the place allow.

use crate::balance::Weather;
use crate::climate::Station;
use crate::freeze::FrostFree;
use crate::home::Home;
use crate::repairs::Repair;
use crate::safety::Lines;
use crate::units::fahrenheit;

/// Whether place and day allow a repair.
pub(super) fn allows(
    repair: &Repair,
    home: &Home,
    weather: Option<&Weather<'_>>,
    lines: &Lines,
) -> bool {
    match repair.id {
        // An evaporative cooler is never closed while it may be in use.
        "cooler_cover" => is_cold_month(home, weather),
        "window_film" => winter_is_worth_a_film(home, weather),
        "cable_season" => weather.is_some_and(|w| may_unplug(home, w, lines)),
        _ => true,
    }
}

/// A film lasts one winter: it is worth its price while that lies ahead, or has eight weeks left;
/// judgement. Without a place from September to January.
fn winter_is_worth_a_film(home: &Home, weather: Option<&Weather<'_>>) -> bool {
    const WEEKS_LEFT: u16 = 8;
    const AHEAD_DAYS: u16 = 75;
    let Some(weather) = weather else { return !(2..=8).contains(&home.today.month()) };
    let colder = weather.place.station.normals.days_colder_than(fahrenheit(50.0));
    let today = home.today.day_of_year().unsigned_abs();
    colder.is_some_and(|(from, to)| {
        let until = |day: u16| (day + 365 - today) % 365;
        let winter = (to + 365 - from) % 365;
        (WEEKS_LEFT * 7..=winter + AHEAD_DAYS).contains(&until(to))
    })
}

/// Days of this month that no longer need cooling, on the mean of their warmest hour; without a
/// place only the depth of winter.
fn is_cold_month(home: &Home, weather: Option<&Weather<'_>>) -> bool {
    const COOL_F: f64 = 75.0;
    let month = home.today.month();
    match weather {
        Some(weather) => {
            let index = usize::from(month.unsigned_abs()) - 1;
            weather.place.station.normals.max[index] < fahrenheit(COOL_F)
        }
        None => !(3..=11).contains(&month),
    }
}

/// Whether a cable may have a season at all: somebody is sure to plug it in, no thermostat does the
/// work, and the time between the median freezes is long enough.
#[must_use]
pub fn may_be_seasonal(home: &Home, station: &Station, lines: &Lines) -> bool {
    let by_hand = home.cable.as_ref().is_some_and(|cable| {
        cable.someone_plugs_in == Some(true) && cable.thermostat_proved != Some(true)
    });
    let long = station.freeze.is_some_and(|dates| {
        dates.first >= dates.last && dates.first - dates.last >= lines.frost_free_days
    });
    by_hand && long
}

/// Only within the frost-free days.
fn may_unplug(home: &Home, weather: &Weather<'_>, lines: &Lines) -> bool {
    let today = home.today.day_of_year().unsigned_abs();
    let station = &weather.place.station;
    may_be_seasonal(home, station, lines)
        && FrostFree::of(station).is_some_and(|days| days.may_unplug_on(today))
}
