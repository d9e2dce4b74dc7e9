//! A home that lies higher or lower than its station.

use super::{FreezeDates, FrostBasis, Normals, Station, curve};
use crate::units::{celsius, in_celsius};
use uom::si::f64::{Length, ThermodynamicTemperature};
use uom::si::length::foot;

/// K for each 1,000 ft, 3.4 °F; [`LAPSE`](crate::sources::climate::LAPSE).
const COLDER_BY: f64 = 3.4 / 1.8;

impl Normals {
    /// The same weather so much higher; negative is lower. Wind and day-to-day changes stay. By
    /// [`LAPSE`](crate::sources::climate::LAPSE).
    ///
    /// ```
    /// # #[cfg(feature = "atlas")] {
    /// use winterseam::{climate::Atlas, units::warmer_by};
    /// use uom::si::{f64::Length, length::foot, temperature_interval::degree_fahrenheit};
    ///
    /// let valley = Atlas::embedded().station("727730").expect("a station").normals;
    /// let ridge = valley.lifted(Length::new::<foot>(2000.0));
    /// let apart = warmer_by(valley.annual_mean(), ridge.annual_mean());
    /// assert!((apart.get::<degree_fahrenheit>() - 6.8).abs() < 1e-9);
    /// # }
    /// ```
    #[must_use]
    pub fn lifted(&self, by: Length) -> Self {
        let colder = COLDER_BY * by.get::<foot>() / 1000.0;
        let lift =
            |all: [ThermodynamicTemperature; 12]| all.map(|t| celsius(in_celsius(t) - colder));
        Self {
            max: lift(self.max),
            min: lift(self.min),
            dew_point: lift(self.dew_point),
            ..self.clone()
        }
    }
}

impl Station {
    /// The same station so much higher; negative is lower. Weather and coldest nights by
    /// [`LAPSE`](crate::sources::climate::LAPSE); freezes move to the days on which the course of the
    /// minima, so much colder, is where it was on their old days. Degree days stay those of the
    /// station.
    ///
    /// ```
    /// # #[cfg(feature = "atlas")] {
    /// use winterseam::climate::Atlas;
    /// use uom::si::{f64::Length, length::foot};
    ///
    /// let valley = Atlas::embedded().station("727730").expect("a station");
    /// let ridge = valley.lifted(Length::new::<foot>(2000.0));
    /// assert!(ridge.coldest_night().best < valley.coldest_night().best);
    /// assert!(ridge.first_freeze() < valley.first_freeze());
    /// assert!(ridge.last_freeze() > valley.last_freeze());
    /// # }
    /// ```
    #[must_use]
    pub fn lifted(&self, by: Length) -> Self {
        let colder = COLDER_BY * by.get::<foot>() / 1000.0;
        let lift = |t: ThermodynamicTemperature| celsius(in_celsius(t) - colder);
        let minima = curve::through(&self.normals.min.map(in_celsius));
        Self {
            elevation: self.elevation + by,
            normals: self.normals.lifted(by),
            freeze: self.freeze.map(|dates| moved(dates, &minima, colder)),
            cold_99: lift(self.cold_99),
            cold_99_6: lift(self.cold_99_6),
            ..self.clone()
        }
    }
}

/// Freezes where the minima are so much colder: never past the warmest day of the year, as there a
/// year has no season without frost.
fn moved(dates: FreezeDates, minima: &[f64; 365], colder: f64) -> FreezeDates {
    let at = |day: u16| minima[usize::from(day - 1).min(364)];
    let warmest = (1..=365).max_by(|a, b| at(*a).total_cmp(&at(*b))).unwrap_or(200);
    let (last, first) = (at(dates.last) + colder, at(dates.first) + colder);
    let spring = (1..=warmest).find(|day| at(*day) >= last).unwrap_or(warmest);
    let autumn = (warmest..=365).find(|day| at(*day) < first).unwrap_or(365);
    let basis = if colder.abs() > 0.0 { FrostBasis::Estimated } else { dates.basis };
    // Where a freeze is rare its two days cross in midwinter: those stay.
    if colder == 0.0 || dates.last > dates.first {
        return dates;
    }
    FreezeDates { last: spring, first: autumn, basis }
}
