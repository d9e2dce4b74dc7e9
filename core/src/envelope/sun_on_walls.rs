//! Sunshine on upright walls and windows.

use crate::climate::SunPath;
use crate::math::{cos, sqrt};
use std::f64::consts::PI;
use uom::si::f64::{Angle, RadiantExposure};
use uom::si::ratio::ratio;

/// Share that the ground reflects.
const REFLECTED: f64 = 0.2;
/// Steps from noon to sunset.
const STEPS: u8 = 16;

/// Sunshine of a day on a wall, as a mean over all directions.
///
/// # Equation
/// ```text
/// S = ((1 − k) · r + k ÷ 2 + ρ ÷ 2) · H, r = ∫ cos h dω ÷ (π · ∫ sin h dω),
/// sin h = sin φ·sin δ + cos φ·cos δ·cos ω, k = 1 − 1.13 · H ÷ R
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `S` | on the wall | J/m² | returned |
/// | `H`, `R` | on level ground, and without air | J/m² | `on_ground`, `above` |
/// | `k` | share from the whole sky, 0.15 to 1 | – | `diffuse` |
/// | `r` | beam on a wall over that on the ground | – | `beam` |
/// | `h`, `ω` | height of the sun, hour angle up to sunset | rad | `height`, `hour` |
/// | `φ`, `δ` | latitude, declination | rad | `latitude`, `SunPath` |
/// | `ρ` | share that the ground reflects, 0.2 | – | `REFLECTED` |
///
/// # Source
/// [`DIFFUSE_SHARE`](crate::sources::envelope::DIFFUSE_SHARE),
/// [`FAO_56`](crate::sources::climate::FAO_56); a wall that faces every way alike takes cos h ÷ π
/// of a beam.
///
/// # Valid for
/// Walls to all sides, means of a month.
///
/// # Leaves out
/// Snow, which reflects more; a sun so low that `r` has no bound: five is the most.
///
/// # Examples
/// ```
/// use winterseam::climate::sun_above_air;
/// use winterseam::envelope::sun_on_walls;
/// use uom::si::{angle::degree, f64::Angle, ratio::ratio};
///
/// let north = Angle::new::<degree>(40.0);
/// let share = |day| {
///     let above = sun_above_air(north, day);
///     (sun_on_walls(above, above * 0.5, north, day) / (above * 0.5)).get::<ratio>()
/// };
/// // A low sun shines on walls, a high one on the ground.
/// assert!(share(15) > 0.7 && share(196) < 0.6);
/// ```
#[must_use]
pub fn sun_on_walls(
    above: RadiantExposure,
    on_ground: RadiantExposure,
    latitude: Angle,
    day: u16,
) -> RadiantExposure {
    if above <= RadiantExposure::default() {
        return RadiantExposure::default();
    }
    let clearness = (on_ground / above).get::<ratio>();
    let diffuse = (1.0 - 1.13 * clearness).clamp(0.15, 1.0);
    let beam = beam_on_walls(latitude, day);
    on_ground * ((1.0 - diffuse) * beam + f64::midpoint(diffuse, REFLECTED))
}

/// Beam on walls over beam on the ground, in the middle of each step from noon to sunset.
fn beam_on_walls(latitude: Angle, day: u16) -> f64 {
    const MOST: f64 = 5.0;
    let SunPath { rising, upright, sunset } = SunPath::of(latitude, day);
    let (mut wall, mut ground) = (0.0, 0.0);
    for step in 0..STEPS {
        let hour = (f64::from(step) + 0.5) * sunset / f64::from(STEPS);
        let height = (rising + upright * cos(hour)).max(0.0);
        ground += height;
        wall += sqrt(1.0 - height * height) / PI;
    }
    if ground > 0.0 { (wall / ground).min(MOST) } else { 0.0 }
}
