//! What the time of the year and the place allow.

use crate::balance::Weather;
use crate::climate::{FrostBasis, Station};
use crate::home::Home;
use crate::repairs::Repair;
use crate::safety::Lines;

/// From the median first freeze back to the one that comes earlier in one year of ten, in days;
/// stations with published quantiles have 13 to 16: [`FREEZE_SPREAD`](crate::sources::trade::FREEZE_SPREAD).
const FIRST_FREEZE_SPREAD: u16 = 16;
/// From the median last freeze on to the one that comes later in one year of ten; 13 to 24.
const LAST_FREEZE_SPREAD: u16 = 24;
/// Dates that were estimated from monthly means are uncertain by this much more.
const ESTIMATED: u16 = 10;
/// The plug goes in this long before the date of risk.
const AHEAD: u16 = 14;
const YEAR: u16 = 365;

fn doubt(station: &Station) -> u16 {
    if station.frost_basis == FrostBasis::Estimated { ESTIMATED } else { 0 }
}

/// First and last day of the season in which frost comes in less than one year of ten, as days of
/// the year; `None` where no freeze date is known or no such season is left.
#[must_use]
pub fn frost_free(station: &Station) -> Option<(u16, u16)> {
    let from = station.last_freeze? + LAST_FREEZE_SPREAD + doubt(station);
    let to = station.first_freeze?.checked_sub(FIRST_FREEZE_SPREAD + doubt(station))?;
    (from < to && from <= YEAR).then_some((from, to))
}

/// Day of the year on which a heat cable is plugged in and tried.
#[must_use]
pub fn plug_in_day(station: &Station) -> Option<u16> {
    let risk = station.first_freeze?.checked_sub(FIRST_FREEZE_SPREAD + doubt(station));
    Some(risk?.saturating_sub(AHEAD).max(1))
}

/// Whether place and day allow a repair.
pub(super) fn allows(
    repair: &Repair,
    home: &Home,
    weather: Option<&Weather<'_>>,
    lines: &Lines,
) -> bool {
    let month = home.today.month();
    match repair.id {
        "cooler_cover" => !(5..=9).contains(&month),
        "cable_season" => weather.is_some_and(|w| {
            let today = home.today.day_of_year().unsigned_abs();
            frost_free(&w.place.station).is_some_and(|(from, to)| {
                to - from >= lines.frost_free_days && (from..=to).contains(&today)
            })
        }),
        _ => true,
    }
}
