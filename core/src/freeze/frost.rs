//! When frost is likely at a station, and when a cable should have its plug in.

use crate::climate::{FreezeDates, FrostBasis, Station};
use crate::home::Season;

/// From the median first freeze back to the one that comes earlier in one year of ten, in days;
/// stations with published quantiles have 13 to 16:
/// [`FREEZE_SPREAD`](crate::sources::freeze::FREEZE_SPREAD).
const FIRST_SPREAD: u16 = 16;
/// From the median last freeze on to the one that comes later in one year of ten; 13 to 24.
const LAST_SPREAD: u16 = 24;
/// Dates that were estimated from monthly means are uncertain by this much more.
const ESTIMATED: u16 = 10;
/// A plug that would go in again sooner is not pulled.
const LEAST_STAY_OUT: u16 = 30;
/// The plug goes in this long before the date of risk.
const AHEAD: u16 = 14;

/// The days in which frost comes in less than one year of ten.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct FrostFree {
    /// First of them, 1 to 365.
    pub from: u16,
    /// Last of them.
    pub to: u16,
}

impl FrostFree {
    /// The frost-free days of a station; `None` where it never freezes in an ordinary year, where a
    /// rare freeze has no season, or where too few such days are left to pull a
    /// plug.
    ///
    /// ```
    /// use winterseam::climate::Atlas;
    /// use winterseam::freeze::FrostFree;
    ///
    /// let cold = Atlas::embedded().place("58201").expect("a known ZIP code");
    /// let days = FrostFree::of(&cold.station).expect("a summer");
    /// assert!(days.from > 120 && days.to < 275);
    /// assert!(days.may_unplug_on(days.from) && !days.may_unplug_on(days.to));
    /// ```
    #[must_use]
    pub fn of(station: &Station) -> Option<Self> {
        let FreezeDates { last, first, basis } = station.freeze?;
        let doubt = if basis == FrostBasis::Estimated { ESTIMATED } else { 0 };
        let from = last + LAST_SPREAD + doubt;
        let to = first.checked_sub(FIRST_SPREAD + doubt)?;
        let days = Self { from, to };
        days.may_unplug_on(from).then_some(days)
    }

    /// Whether a plug may be pulled on this day of the year: within the frost-free days and a month
    /// or more before it goes in again.
    #[must_use]
    pub fn may_unplug_on(self, day: u16) -> bool {
        self.from <= day && day + LEAST_STAY_OUT <= self.plug_in_day()
    }

    /// Day of the year on which a heat cable is plugged in and tried: two weeks before frost is
    /// likely.
    #[must_use]
    pub fn plug_in_day(self) -> u16 {
        self.to.saturating_sub(AHEAD).max(1)
    }

    /// The season of a cable that a careful person plugs in and out.
    #[must_use]
    pub fn cable_season(self) -> Season {
        Season { on_day: self.plug_in_day(), off_day: self.from }
    }
}
