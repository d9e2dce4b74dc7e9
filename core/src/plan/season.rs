//! What the time of the year and the place allow.

use crate::balance::Weather;
use crate::freeze::FrostFree;
use crate::home::Home;
use crate::repairs::Repair;
use crate::safety::Lines;

/// Whether place and day allow a repair.
pub(super) fn allows(
    repair: &Repair,
    home: &Home,
    weather: Option<&Weather<'_>>,
    lines: &Lines,
) -> bool {
    match repair.id {
        // An evaporative cooler is never closed while it may be in use.
        "cooler_cover" => !(5..=9).contains(&home.today.month()),
        "cable_season" => weather.is_some_and(|w| may_unplug(home, w, lines)),
        _ => true,
    }
}

/// Only within the frost-free days, where the season between the median freezes is long enough.
fn may_unplug(home: &Home, weather: &Weather<'_>, lines: &Lines) -> bool {
    let today = home.today.day_of_year().unsigned_abs();
    let station = &weather.place.station;
    station.has_frost_free(lines.frost_free_days)
        && FrostFree::of(station).is_some_and(|days| days.may_unplug_on(today))
}
