//! The hours of a year, as every model reads them.

use super::curve;
use super::series;
use super::{DegreeDays, Normals, Sequence, Station};
use crate::units::{celsius, in_celsius};
use uom::si::f64::{Ratio, ThermodynamicTemperature, Velocity};
use uom::si::velocity::meter_per_second;

/// Number of the last hour, from 0.
const LAST_HOUR: f64 = 8759.0;

/// 8,760 hours of weather from 1 January, local standard time; 29 February is dropped. The numbers
/// lie side by side, one column a quantity, because the kernels run through them again and again.
#[derive(Debug, Clone, PartialEq)]
pub struct Year {
    pub(super) air_c: Box<[f64]>,
    pub(super) dew_point_c: Box<[f64]>,
    pub(super) wind_m_s: Box<[f64]>,
}

/// The weather of one hour, at its middle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hour {
    /// Air temperature.
    pub air: ThermodynamicTemperature,
    /// Dew point; never above the air temperature.
    pub dew_point: ThermodynamicTemperature,
    /// Wind at 10 m over open ground.
    pub wind: Velocity,
}

impl Year {
    /// Hours in a year.
    pub const HOURS: usize = 8760;

    /// The year of a station: [`Year::from_normals`] with the fixed sequence.
    #[must_use]
    pub fn of(station: &Station) -> Self {
        Self::from_normals(&station.normals, Sequence::FIXED)
    }

    /// Makes the hours of a year from twelve monthly means.
    ///
    /// # Equation
    /// With all temperatures in °F, `M`, `N` and `D` the courses through the monthly maxima, minima
    /// and dew points that keep each month's mean:
    ///
    /// 1. the day: `a = σ·z`, `r = max(0.15, 1 + 0.35·y)`, `max = (M+N)/2 + a + r·(M−N)/2` at
    ///    15:00 and `min = (M+N)/2 + a − r·(M−N)/2` at 06:30, joined by half cosines through
    ///    midnight to give `T` at the middle of the hour;
    /// 2. the plateau at freezing: `T ← T − 0.15·(T−33.5)·exp(−((T−33.5)/7)²/2)`;
    /// 3. the wind: `V = V̄·d·(−ln(1−p))^(1/1.8) / Γ(1+1/1.8)`, with
    ///    `p = ((i·k mod n) + ½)/n` in hour i of a month of n hours, and k the first whole number
    ///    from 0.618·n on that has no divisor in common with n;
    /// 4. the dew point: `T_d = min(D + s·a, T)`.
    ///
    /// # Symbols
    /// | symbol | meaning | unit | name in the code |
    /// |---|---|---|---|
    /// | M, N | mean daily maximum and minimum | °F | `normals.max`, `normals.min` |
    /// | D | mean dew point | °F | `normals.dew_point` |
    /// | V̄ | mean wind of the month | m/s | `normals.wind` |
    /// | σ | deviation of the daily mean about its course | °F | `normals.day_to_day` |
    /// | z, y | warmth and range of the day in deviations | – | `sequence` |
    /// | d | wind of the hour of the day over the day's mean | – | `WIND_BY_HOUR` |
    /// | s | how far the dew point follows the warmth of a day | – | `DEW_FOLLOWS` |
    ///
    /// # Source
    /// [`SERIES`](crate::sources::climate::SERIES),
    /// [`SEQUENCE`](crate::sources::climate::SEQUENCE).
    ///
    /// # Valid for
    /// The United States. Against the typical years of 909 stations of the lower 48 states, each
    /// with its own monthly means (median of the absolute error): degree days below 65 °F 0.6 %,
    /// hours at or below 32 °F 4.8 %, at or below 38 °F 3.2 %, degree-hours below 38 °F 3.6 %.
    ///
    /// # Leaves out
    /// Rain, snow and sun. Sea fog on mild coasts: heating there comes out up to a tenth too low.
    /// A hard winter: this is an ordinary year, and one year differs from the next by about 6 % in
    /// degree days. Hours of very moist air come out too few.
    ///
    /// # Examples
    /// ```
    /// # #[cfg(feature = "atlas")] {
    /// use winterseam::climate::{Atlas, Sequence, Year};
    ///
    /// let chicago = Atlas::embedded().station("725300").expect("a station of the tables");
    /// let year = Year::from_normals(&chicago.normals, Sequence::FIXED);
    /// assert_eq!(year.hours().count(), Year::HOURS);
    /// # }
    /// ```
    #[must_use]
    pub fn from_normals(normals: &Normals, sequence: &Sequence) -> Self {
        series::year(normals, sequence)
    }

    /// One hour of the year, from 0.
    #[must_use]
    pub fn hour(&self, index: usize) -> Option<Hour> {
        Some(Hour {
            air: celsius(*self.air_c().get(index)?),
            dew_point: celsius(*self.dew_point_c().get(index)?),
            wind: Velocity::new::<meter_per_second>(*self.wind_m_s().get(index)?),
        })
    }

    /// All hours, from midnight of 1 January.
    pub fn hours(&self) -> impl Iterator<Item = Hour> {
        (0..Self::HOURS).map_while(|index| self.hour(index))
    }

    /// All hours with their month, January 0.
    pub fn hours_by_month(&self) -> impl Iterator<Item = (usize, Hour)> {
        let months = curve::months();
        self.hours().enumerate().map(move |(index, hour)| (months[index / 24], hour))
    }

    /// How many hours are colder than this.
    #[must_use]
    pub fn hours_below(&self, limit: ThermodynamicTemperature) -> usize {
        let limit = in_celsius(limit);
        self.air_c().iter().filter(|&&air| air < limit).count()
    }

    /// Degree days below a base, summed hour by hour.
    ///
    /// ```
    /// # #[cfg(feature = "atlas")] {
    /// use winterseam::{climate::{Atlas, Year}, units::fahrenheit};
    ///
    /// let chicago = Atlas::embedded().station("725300").expect("a station of the tables");
    /// let year = Year::of(&chicago);
    /// assert!(year.degree_days_below(fahrenheit(40.0)) < year.degree_days_below(fahrenheit(65.0)));
    /// # }
    /// ```
    #[must_use]
    pub fn degree_days_below(&self, base: ThermodynamicTemperature) -> DegreeDays {
        let base = in_celsius(base);
        let kelvin_hours: f64 = self.air_c().iter().map(|air| (base - air).max(0.0)).sum();
        DegreeDays(kelvin_hours * 1.8 / 24.0)
    }

    /// The air that this share of the hours is colder than: by straight lines between the sorted
    /// hours, the coldest at 0 and the warmest at 1.
    ///
    /// ```
    /// # #[cfg(feature = "atlas")] {
    /// use winterseam::climate::{Atlas, Year};
    ///
    /// let chicago = Atlas::embedded().station("725300").expect("a station of the tables");
    /// let year = Year::of(&chicago);
    /// assert!(year.percentile(0.01.into()) < year.percentile(0.5.into()));
    /// # }
    /// ```
    #[must_use]
    pub fn percentile(&self, share: Ratio) -> ThermodynamicTemperature {
        let mut sorted = self.air_c().to_vec();
        sorted.sort_by(f64::total_cmp);
        let place = share.value.clamp(0.0, 1.0) * LAST_HOUR;
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "an hour")]
        let below = place as usize;
        let next = sorted[(below + 1).min(sorted.len() - 1)];
        celsius(sorted[below] + (next - sorted[below]) * place.fract())
    }

    /// Mean wind of the hours.
    #[must_use]
    pub fn mean_wind(&self) -> Velocity {
        let sum = self.wind_m_s().iter().sum::<f64>();
        Velocity::new::<meter_per_second>(sum / 8760.0)
    }

    /// Air temperature of each hour in °C, for kernels.
    pub(crate) fn air_c(&self) -> &[f64] {
        &self.air_c
    }

    /// Dew point of each hour in °C, for kernels.
    pub(crate) fn dew_point_c(&self) -> &[f64] {
        &self.dew_point_c
    }

    /// Wind of each hour in m/s, for kernels.
    pub(crate) fn wind_m_s(&self) -> &[f64] {
        &self.wind_m_s
    }
}
