//! How warm the soil below a home is.

use crate::climate::Normals;
use crate::math::{cos, exp, sin, sqrt};
use crate::units::{celsius, in_celsius};
use std::f64::consts::PI;
use uom::si::f64::{Length, ThermodynamicTemperature};
use uom::si::length::meter;

/// How soil spreads heat, m²/day.
const DIFFUSIVITY: f64 = 0.05;
/// Days of a year and of a month.
const YEAR: f64 = 365.0;
const MONTH: f64 = YEAR / 12.0;

/// Soil that a home exchanges heat with through 0.10 Btu/(h·ft²·°F): some two metres of it.
#[must_use]
pub fn depth_below_a_home() -> Length {
    Length::new::<meter>(2.0)
}

/// Temperature of soil at a depth in the middle of each month.
///
/// # Equation
/// ```text
/// T = T_m + e^(−z ÷ d) · (C·cos(2πt ÷ 365 − z ÷ d) + S·sin(2πt ÷ 365 − z ÷ d)),
/// d = √(365·α ÷ π), C = Σ T·cos(2πt ÷ 365) ÷ 6, S likewise with the sine
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `T` | soil | °C | returned |
/// | `T_m` | mean air of the twelve months | °C | `mean` |
/// | `C`, `S` | the swing of the air over the year | K | `swing` |
/// | `t` | middle of the month | day | `day` |
/// | `z` | below the ground | m | `depth` |
/// | `d` | depth at which the swing is 1 ÷ e | m | `damping` |
/// | `α` | how soil spreads heat, 0.05 | m²/day | `DIFFUSIVITY` |
///
/// # Source
/// [`SOIL_OVER_THE_YEAR`](crate::sources::envelope::SOIL_OVER_THE_YEAR)
///
/// # Valid for
/// Soil whose surface follows the air. Covered and bare soil conduct alike: a sheet keeps water
/// down, not heat.
///
/// # Leaves out
/// Snow and the home above, which keep soil a little warmer in winter; what bare damp soil loses to
/// drying; ground water.
///
/// # Examples
/// ```
/// # #[cfg(feature = "atlas")] {
/// use winterseam::climate::Atlas;
/// use winterseam::envelope::{depth_below_a_home, soil_by_month};
///
/// let station = Atlas::embedded().place("59801").expect("a ZIP area of the tables").station;
/// let soil = soil_by_month(&station.normals, depth_below_a_home());
/// // Warmer than the air in January and colder in July.
/// let air = station.normals.monthly_means();
/// assert!(soil[0] > air[0] && soil[6] < air[6]);
/// # }
/// ```
#[must_use]
pub fn soil_by_month(normals: &Normals, depth: Length) -> [ThermodynamicTemperature; 12] {
    let air = normals.monthly_means().map(in_celsius);
    let mean = air.iter().sum::<f64>() / 12.0;
    let swing = |of: fn(f64) -> f64| {
        (0u8..12).zip(air).map(|(month, air)| air * of(turn(month))).sum::<f64>() / 6.0
    };
    let (cosine, sine) = (swing(cos), swing(sin));
    let damping = sqrt(YEAR * DIFFUSIVITY / PI);
    let late = depth.get::<meter>() / damping;
    std::array::from_fn(|month| {
        let at = turn(u8::try_from(month).unwrap_or(0)) - late;
        celsius(mean + exp(-late) * (cosine * cos(at) + sine * sin(at)))
    })
}

/// The middle of a month, as an angle of the year.
fn turn(month: u8) -> f64 {
    2.0 * PI * (f64::from(month) + 0.5) * MONTH / YEAR
}
