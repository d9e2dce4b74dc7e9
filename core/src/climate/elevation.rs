//! A home that lies higher or lower than its station.

use super::Normals;
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
