//! When a heat cable has power.

use super::cable::CableOnPipe;
use crate::home::{CableControl, Season};

/// The thermostat closes here, 38 °F.
const ON_C: f64 = 3.33;
/// The thermostat opens here, 45 °F.
const OFF_C: f64 = 7.22;
/// Days before the first and after the last frost with the cable plugged in.
const MARGIN_DAYS: u16 = 14;
const YEAR_DAYS: u16 = 365;

/// The days on which a cable is usually plugged in and out, from the days of the first frost of
/// autumn and the last of spring.
///
/// # Equation
/// ```text
/// on = first − 14 d, off = last + 14 d, counted around New Year
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `on`, `off` | first and last day with power | day of the year | `Season` |
/// | `first` | first day at 32 °F or colder after summer | day of the year | `first_freeze_day` |
/// | `last` | last day at 32 °F or colder before summer | day of the year | `last_freeze_day` |
///
/// # Source
/// [`CABLE_SEASON`](crate::sources::freeze::CABLE_SEASON)
///
/// # Valid for
/// Days 1 to 365. Where the two ends would meet, the cable stays plugged in all year.
///
/// # Leaves out
/// How much single years differ: one in ten freezes two to three weeks before the usual day.
///
/// # Examples
/// ```
/// use winterseam::freeze::usual_season;
///
/// let season = usual_season(280, 130);
/// assert_eq!((season.on_day, season.off_day), (266, 144));
/// ```
#[must_use]
pub fn usual_season(first_freeze_day: u16, last_freeze_day: u16) -> Season {
    let frosty = (last_freeze_day + YEAR_DAYS - first_freeze_day) % YEAR_DAYS;
    if frosty + 2 * MARGIN_DAYS + 1 >= YEAR_DAYS {
        return Season { on_day: 1, off_day: YEAR_DAYS };
    }
    Season {
        on_day: (first_freeze_day + YEAR_DAYS - MARGIN_DAYS - 1) % YEAR_DAYS + 1,
        off_day: (last_freeze_day + MARGIN_DAYS - 1) % YEAR_DAYS + 1,
    }
}

/// Whether the cable has power, hour after hour.
pub(super) enum Switch {
    Plugged,
    Thermostat { closed: bool },
    Days(Option<Season>),
}

impl Switch {
    pub(super) fn of(cable: &CableOnPipe, air_c: &[f64], usual: Option<Season>) -> Self {
        match cable.control {
            CableControl::AlwaysOn | CableControl::SelfRegulating => Self::Plugged,
            CableControl::Thermostat => Self::Thermostat { closed: closed_at_the_end(air_c) },
            CableControl::Seasonal => Self::Days(cable.season.or(usual)),
        }
    }

    /// Moves on by one hour and tells whether the cable has power in it.
    pub(super) fn turn(&mut self, hour: usize, air: f64) -> bool {
        match self {
            Self::Plugged => true,
            Self::Thermostat { closed } => {
                *closed = air <= ON_C || (*closed && air < OFF_C);
                *closed
            }
            Self::Days(season) => season.is_some_and(|s| has_power(s, hour)),
        }
    }
}

/// The last hour that moved the thermostat tells how it enters the next year.
fn closed_at_the_end(air_c: &[f64]) -> bool {
    air_c.iter().rev().find(|&&t| t <= ON_C || t >= OFF_C).is_some_and(|&t| t <= ON_C)
}

fn has_power(season: Season, hour: usize) -> bool {
    let day = hour / 24 % usize::from(YEAR_DAYS) + 1;
    let (on, off) = (usize::from(season.on_day), usize::from(season.off_day));
    if on <= off { (on..=off).contains(&day) } else { day >= on || day <= off }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn thermostat(air_c: &[f64]) -> Vec<bool> {
        let mut switch = Switch::Thermostat { closed: closed_at_the_end(air_c) };
        air_c.iter().enumerate().map(|(hour, &air)| switch.turn(hour, air)).collect()
    }

    #[test]
    fn a_thermostat_stays_as_it_was_between_its_two_points() {
        let air = [8.0, 5.0, 3.33, 5.0, 7.21, 7.22, 5.0, 3.4];
        let closed = [false, false, true, true, true, false, false, false];
        assert_eq!(thermostat(&air), closed);
    }

    #[test]
    fn a_thermostat_enters_january_as_it_left_december() {
        assert_eq!(thermostat(&[5.0, 8.0, 2.0]), [true, false, true]);
        assert_eq!(thermostat(&[5.0, 2.0, 8.0]), [false, true, false]);
    }

    #[test]
    fn a_season_has_power_on_both_of_its_ends() {
        let winter = Season { on_day: 280, off_day: 130 };
        let powered = |season, day: usize| has_power(season, (day - 1) * 24 + 23);
        for (day, on) in [(1, true), (130, true), (131, false), (279, false), (280, true)] {
            assert_eq!(powered(winter, day), on, "day {day}");
        }
        let february = Season { on_day: 32, off_day: 59 };
        assert!(!powered(february, 31) && powered(february, 32) && !powered(february, 60));
    }

    #[test]
    fn seasons_close_around_new_year_and_short_summers_stay_plugged() {
        let days = |first, last| {
            let season = usual_season(first, last);
            (season.on_day, season.off_day)
        };
        assert_eq!(days(5, 20), (356, 34));
        assert_eq!(days(360, 355), (1, 365));
        assert_eq!(days(220, 200), (1, 365));
        assert_eq!(days(230, 200), (216, 214));
        assert_eq!(days(229, 200), (1, 365));
    }
}
