//! What the tables know of one weather station.

use super::curve::{self, DAYS_IN};
use crate::sources::climate::{COLDEST_NIGHT, TYPICAL_YEARS};
use crate::sources::{Confidence, Figure};
use crate::units::{celsius, in_celsius, kelvins};
use uom::si::f64::{Angle, Length, TemperatureInterval, ThermodynamicTemperature, Velocity};
use uom::si::{temperature_interval::degree_fahrenheit, velocity::meter_per_second};

/// One weather station.
#[derive(Debug, Clone, PartialEq)]
pub struct Station {
    /// Number of the station, six digits.
    pub usaf: String,
    /// Name as the files write it.
    pub name: String,
    /// Two letters.
    pub state: String,
    /// North of the equator, to a tenth of a degree.
    pub latitude: Angle,
    /// Above the sea.
    pub elevation: Length,
    /// The weather of its twelve months.
    pub normals: Normals,
    /// What its maxima and minima rest on.
    pub temperature_basis: TemperatureBasis,
    /// How cold the year is, below 65 °F.
    pub hdd65: DegreeDays,
    /// How hot the year is, above 65 °F.
    pub cdd65: DegreeDays,
    /// The usual freeze dates; `None` where it does not freeze in an ordinary year.
    pub freeze: Option<FreezeDates>,
    /// 99 % of the hours of a typical year are warmer. No design temperature.
    pub cold_99: ThermodynamicTemperature,
    /// 99.6 % of the hours of a typical year are warmer. No design temperature.
    pub cold_99_6: ThermodynamicTemperature,
}

/// The weather of the twelve months at a station, January first.
#[derive(Debug, Clone, PartialEq)]
pub struct Normals {
    /// Mean of the daily maxima.
    pub max: [ThermodynamicTemperature; 12],
    /// Mean of the daily minima.
    pub min: [ThermodynamicTemperature; 12],
    /// Mean dew point.
    pub dew_point: [ThermodynamicTemperature; 12],
    /// Mean wind at 10 m.
    pub wind: [Velocity; 12],
    /// Standard deviation of the daily mean about the smooth course of the year.
    pub day_to_day: [TemperatureInterval; 12],
}

/// Degree days, in °F · day; 1.8 of them make one K · day.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
pub struct DegreeDays(pub f64);

/// The median days of freezing, 1–365 without 29 February. Where a freeze is rare the last may fall
/// after the first: both then lie in midwinter.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct FreezeDates {
    /// Last day of 32 °F.
    pub last: u16,
    /// First day of 32 °F.
    pub first: u16,
    /// How they are known.
    pub basis: FrostBasis,
}

/// How freeze dates are known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum FrostBasis {
    /// Published medians.
    Published,
    /// From the monthly minima; ten days either way.
    Estimated,
}

/// What the maxima and minima of a station rest on, the best first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum TemperatureBasis {
    /// Published normals of 1991–2020.
    Published,
    /// A typical year, corrected to the normals of its neighbours.
    Corrected,
    /// A typical year of earlier decades alone; a little too cold.
    TypicalYear,
}

impl Station {
    /// Last day of 32 °F of an ordinary year.
    #[must_use]
    pub fn last_freeze(&self) -> Option<u16> {
        self.freeze.map(|dates| dates.last)
    }

    /// First day of 32 °F of an ordinary year.
    #[must_use]
    pub fn first_freeze(&self) -> Option<u16> {
        self.freeze.map(|dates| dates.first)
    }

    /// The coldest night of an ordinary year.
    ///
    /// # Equation
    /// `T = T₉₉.₆ − 6 °F`, with a range of 4 °F either way.
    ///
    /// # Symbols
    /// | symbol | meaning | unit | name |
    /// |---|---|---|---|
    /// | T₉₉.₆ | 99.6 % of the hours of the typical year are warmer | °F | `cold_99_6` |
    ///
    /// # Source
    /// [`COLDEST_NIGHT`], [`TYPICAL_YEARS`].
    ///
    /// # Valid for
    /// The stations of the atlas.
    ///
    /// # Leaves out
    /// Cold air that pools where the home stands: a hollow is colder. Typical years are from
    /// earlier decades, which makes the figure a little too cold.
    ///
    /// # Examples
    /// ```
    /// # #[cfg(feature = "atlas")] {
    /// use winterseam::climate::Atlas;
    /// use winterseam::units::fahrenheit;
    ///
    /// let fairbanks = Atlas::embedded().station("702610").expect("a station of the tables");
    /// assert!(fairbanks.coldest_night().best < fahrenheit(-30.0));
    /// # }
    /// ```
    #[must_use]
    pub fn coldest_night(&self) -> Figure<ThermodynamicTemperature> {
        let below = |f: f64| self.cold_99_6 - TemperatureInterval::new::<degree_fahrenheit>(f);
        Figure::exact(below(6.0), Confidence::Guessed, &[&COLDEST_NIGHT, &TYPICAL_YEARS])
            .between(below(10.0), below(2.0))
    }
}

impl Normals {
    /// Mean air temperature of each month: halfway between maximum and minimum.
    #[must_use]
    pub fn monthly_means(&self) -> [ThermodynamicTemperature; 12] {
        std::array::from_fn(|m| {
            celsius(f64::midpoint(in_celsius(self.max[m]), in_celsius(self.min[m])))
        })
    }

    /// Mean air temperature of the year, each month with its days.
    #[must_use]
    pub fn annual_mean(&self) -> ThermodynamicTemperature {
        celsius(by_days(&self.monthly_means().map(in_celsius)))
    }

    /// The warmest monthly mean less the coldest.
    #[must_use]
    pub fn annual_swing(&self) -> TemperatureInterval {
        let means = self.monthly_means().map(in_celsius);
        let warmest = means.into_iter().fold(means[0], f64::max);
        let coldest = means.into_iter().fold(means[0], f64::min);
        kelvins(warmest - coldest)
    }

    /// First and last day on which the course of the daily means is colder than this, the first in
    /// autumn; `None` where it never or always is.
    ///
    /// ```
    /// # #[cfg(feature = "atlas")] {
    /// use winterseam::{climate::Atlas, units::fahrenheit};
    ///
    /// let town = Atlas::embedded().station("727730").expect("a station");
    /// let (autumn, spring) = town.normals.days_colder_than(fahrenheit(50.0)).expect("a winter");
    /// assert!((250..300).contains(&autumn) && (100..150).contains(&spring));
    /// # }
    /// ```
    #[must_use]
    pub fn days_colder_than(&self, limit: ThermodynamicTemperature) -> Option<(u16, u16)> {
        let course = curve::through(&self.monthly_means().map(in_celsius));
        let cold = |day: u16| course[usize::from((day - 1) % 365)] < in_celsius(limit);
        // From the height of summer on, once round the year.
        let round = || (200..565).map(|day| (day - 1) % 365 + 1);
        let first = round().find(|day| cold(*day)).filter(|first| *first != 200)?;
        let last = round().rfind(|day| cold(*day))?;
        Some((first, last))
    }

    /// Mean wind of the year, each month with its days.
    #[must_use]
    pub fn mean_wind(&self) -> Velocity {
        Velocity::new::<meter_per_second>(by_days(
            &self.wind.map(|wind| wind.get::<meter_per_second>()),
        ))
    }
}

fn by_days(monthly: &[f64; 12]) -> f64 {
    monthly.iter().zip(DAYS_IN).map(|(value, days)| value * f64::from(days)).sum::<f64>() / 365.0
}
