//! Degree days and cold hours straight from monthly means: no hours are made.

use super::curve;
use super::{DegreeDays, Normals};
use crate::math::{cos, erf, exp, sqrt};
use crate::units::in_fahrenheit;
use std::f64::consts::{FRAC_1_SQRT_2, PI};
use uom::si::f64::{ThermodynamicTemperature, Time};
use uom::si::{temperature_interval::degree_fahrenheit, time::hour};

/// How far the range of a day differs from its mean.
const RANGE_VARIES: f64 = 0.35;
/// Hour at which it is warmest.
const WARMEST: f64 = 15.0;

impl Normals {
    /// Degree days below a base, without an hourly year: each day is spread about its course like a
    /// bell.
    ///
    /// # Equation
    /// ```text
    /// D = Σ (b − μ)·Φ(q) + σ·φ(q), q = (b − μ) ÷ σ
    /// ```
    ///
    /// # Symbols
    /// | symbol | meaning | unit | name |
    /// |---|---|---|---|
    /// | `D` | degree days | °F·day | returned |
    /// | `b` | base | °F | `base` |
    /// | `μ` | course of the daily means | °F | `course` |
    /// | `σ` | deviation of the daily mean | °F | `day_to_day` |
    /// | `Φ`, `φ` | the bell summed up, and the bell | – | `below`, `bell` |
    ///
    /// # Source
    /// [`SERIES`](crate::sources::climate::SERIES)
    ///
    /// # Valid for
    /// The United States. Against 909 typical years, with their own monthly means, degree days below
    /// 65 °F are off by 0.4 % (median), 1.9 % (95 of 100).
    ///
    /// # Leaves out
    /// What one day has from the last; single years.
    ///
    /// # Examples
    /// ```
    /// # #[cfg(feature = "atlas")] {
    /// use winterseam::{climate::Atlas, units::fahrenheit};
    ///
    /// let lebanon = Atlas::embedded().station("726116").expect("a station");
    /// let days = lebanon.normals.degree_days_below(fahrenheit(65.0)).0;
    /// assert!((days / 7333.4 - 1.0).abs() < 0.015);
    /// # }
    /// ```
    #[must_use]
    pub fn degree_days_below(&self, base: ThermodynamicTemperature) -> DegreeDays {
        let base = in_fahrenheit(base);
        let months = curve::months();
        let course = curve::through(&self.monthly_means().map(in_fahrenheit));
        let lack = |(mean, month): (f64, usize)| lack(base - mean, self.deviation(month));
        DegreeDays(course.into_iter().zip(months).map(lack).sum())
    }

    /// Hours colder than a limit, without an hourly year.
    ///
    /// # Equation
    /// ```text
    /// H = Σ Φ((b − μ) ÷ s), μ = m + r·cos(2π·(h − 15) ÷ 24), s² = σ² + (0.35·r·cos(2π·(h − 15) ÷ 24))²
    /// ```
    ///
    /// # Symbols
    /// | symbol | meaning | unit | name |
    /// |---|---|---|---|
    /// | `H` | hours | h | returned |
    /// | `b` | limit | °F | `limit` |
    /// | `m`, `r` | middle and half the range of a day | °F | `middle`, `half` |
    /// | `h` | middle of an hour of the day | h | `at` |
    /// | `σ` | deviation of the daily mean | °F | `day_to_day` |
    ///
    /// # Source
    /// [`SERIES`](crate::sources::climate::SERIES)
    ///
    /// # Valid for
    /// As [`degree_days_below`](Self::degree_days_below); hours at or below 32 °F are off by 4.6 %
    /// (median).
    ///
    /// # Leaves out
    /// That real air lingers where water freezes.
    ///
    /// # Examples
    /// ```
    /// # #[cfg(feature = "atlas")] {
    /// use winterseam::{climate::Atlas, units::fahrenheit};
    ///
    /// let chicago = Atlas::embedded().station("725300").expect("a station");
    /// let frost = chicago.normals.hours_below(fahrenheit(32.0));
    /// assert!(frost < chicago.normals.hours_below(fahrenheit(50.0)));
    /// # }
    /// ```
    #[must_use]
    pub fn hours_below(&self, limit: ThermodynamicTemperature) -> Time {
        let limit = in_fahrenheit(limit);
        let max = curve::through(&self.max.map(in_fahrenheit));
        let min = curve::through(&self.min.map(in_fahrenheit));
        let months = curve::months();
        let day = |day: usize| -> f64 {
            let (middle, half) = (f64::midpoint(max[day], min[day]), (max[day] - min[day]) / 2.0);
            let sigma = self.deviation(months[day]);
            let of_hour = |at: u8| {
                let swing = half * cos(2.0 * PI * (f64::from(at) + 0.5 - WARMEST) / 24.0);
                let varies = RANGE_VARIES * swing;
                below((limit - middle - swing) / sqrt(sigma * sigma + varies * varies))
            };
            (0..24).map(of_hour).sum()
        };
        Time::new::<hour>((0..365).map(day).sum())
    }

    /// Deviation of the daily mean in a month, °F.
    fn deviation(&self, month: usize) -> f64 {
        self.day_to_day[month].get::<degree_fahrenheit>()
    }
}

/// Mean lack of days that lie so far below on their mean, with this deviation.
fn lack(by: f64, sigma: f64) -> f64 {
    if sigma <= 0.0 {
        return by.max(0.0);
    }
    let q = by / sigma;
    by * below(q) + sigma * exp(-q * q / 2.0) / sqrt(2.0 * PI)
}

/// Share of a bell below so many deviations.
fn below(deviations: f64) -> f64 {
    if deviations.is_nan() { 0.5 } else { f64::midpoint(1.0, erf(deviations * FRAC_1_SQRT_2)) }
}
