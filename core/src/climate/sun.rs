//! Sunshine of a day, from where a place lies and how far its days and nights differ.

use crate::math::{acos, cos, sin, sqrt};
use crate::units::warmer_by;
use std::f64::consts::PI;
use uom::si::f64::{Angle, RadiantExposure, ThermodynamicTemperature};
use uom::si::radiant_exposure::joule_per_square_meter;
use uom::si::{angle::radian, temperature_interval::kelvin};

/// MJ/(m²·min).
const SOLAR_CONSTANT: f64 = 0.0820;
const MINUTES: f64 = 24.0 * 60.0;

/// The sun's way over a day: the sine of its height is `rising + upright · cos ω`.
#[derive(Debug, Clone, Copy)]
pub(crate) struct SunPath {
    pub rising: f64,
    pub upright: f64,
    /// Hour angle of sunset, rad.
    pub sunset: f64,
}

impl SunPath {
    pub(crate) fn of(latitude: Angle, day: u16) -> Self {
        let latitude = latitude.get::<radian>();
        let declination = 0.409 * sin(turn(day) - 1.39);
        let (rising, upright) =
            (sin(latitude) * sin(declination), cos(latitude) * cos(declination));
        Self { rising, upright, sunset: acos((-rising / upright).clamp(-1.0, 1.0)) }
    }
}

/// A day as an angle of the year.
fn turn(day: u16) -> f64 {
    2.0 * PI * f64::from(day) / 365.0
}

/// Where a place lies; the sea narrows the swing of the day without a cloud.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Shore {
    /// Air comes over land.
    Inland,
    /// Air comes from the sea.
    Coast,
}

/// Sunshine of one day on level ground if there were no air.
///
/// # Equation
/// ```text
/// R = 1440 ÷ π · G · d · (ω·sin φ·sin δ + cos φ·cos δ·sin ω), ω = acos(−tan φ·tan δ),
/// d = 1 + 0.033·cos(2πJ ÷ 365), δ = 0.409·sin(2πJ ÷ 365 − 1.39)
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `R` | sunshine of the day | MJ/m² | returned |
/// | `G` | solar constant, 0.0820 | MJ/(m²·min) | `SOLAR_CONSTANT` |
/// | `J` | day of the year, 1 to 365 | – | `day` |
/// | `φ`, `δ` | latitude, declination of the sun | rad | `latitude`, `declination` |
/// | `ω` | hour angle of sunset: 0 in polar night, π in polar day | rad | `SunPath::sunset` |
/// | `d` | how near the sun is | – | `near` |
///
/// # Source
/// [`FAO_56`](crate::sources::climate::FAO_56)
///
/// # Valid for
/// All latitudes.
///
/// # Leaves out
/// Hills on the horizon.
///
/// # Examples
/// ```
/// use winterseam::climate::sun_above_air;
/// use uom::si::{angle::degree, f64::Angle, radiant_exposure::joule_per_square_meter};
///
/// let spring = sun_above_air(Angle::new::<degree>(-20.0), 246);
/// assert!((spring.get::<joule_per_square_meter>() / 1e6 - 32.2).abs() < 0.05);
/// ```
#[must_use]
pub fn sun_above_air(latitude: Angle, day: u16) -> RadiantExposure {
    let near = 1.0 + 0.033 * cos(turn(day));
    let SunPath { rising, upright, sunset } = SunPath::of(latitude, day);
    let path = sunset * rising + upright * sin(sunset);
    let megajoules = MINUTES / PI * SOLAR_CONSTANT * near * path;
    RadiantExposure::new::<joule_per_square_meter>(megajoules * 1e6)
}

/// Sunshine of an ordinary day of a month on level ground.
///
/// # Equation
/// ```text
/// S = k · √(T_max − T_min) · R
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `S` | sunshine of the day | MJ/m² | returned |
/// | `R` | [`sun_above_air`] | MJ/m² | `above` |
/// | `k` | 0.16 inland, 0.19 on a coast | 1/√K | `follows` |
/// | `T_max`, `T_min` | means of the daily extremes | °C | `max`, `min` |
///
/// # Source
/// [`FAO_56`](crate::sources::climate::FAO_56)
///
/// # Valid for
/// Means of a month or of ten days.
///
/// # Leaves out
/// Single days; places where cold air pools, whose swing is wide without more sun.
///
/// # Examples
/// ```
/// use winterseam::climate::{Shore, sun_above_air, sun_on_ground};
/// use winterseam::units::celsius;
/// use uom::si::{angle::degree, f64::Angle, radiant_exposure::joule_per_square_meter};
///
/// let above = sun_above_air(Angle::new::<degree>(45.72), 196);
/// let july = sun_on_ground(above, celsius(26.6), celsius(14.8), Shore::Inland);
/// assert!((july.get::<joule_per_square_meter>() / 1e6 - 22.3).abs() < 0.1);
/// ```
#[must_use]
pub fn sun_on_ground(
    above: RadiantExposure,
    max: ThermodynamicTemperature,
    min: ThermodynamicTemperature,
    shore: Shore,
) -> RadiantExposure {
    let follows = match shore {
        Shore::Inland => 0.16,
        Shore::Coast => 0.19,
    };
    above * (follows * sqrt(warmer_by(max, min).get::<kelvin>().max(0.0)))
}
