//! What a cable must give on the coldest night, and how hot it makes a pipe that needs nothing.

use super::cable::HOLD_C;
use crate::physics::film::Surroundings;
use crate::physics::pipe::{Pipe, heat_loss};
use crate::units::celsius;
use uom::si::f64::{LinearPowerDensity, ThermodynamicTemperature};

/// A cable gives this much more than the pipe loses.
const MARGIN: f64 = 1.25;
/// Plastic pipe may not get hotter, 122 °F.
const PLASTIC_LIMIT_C: f64 = 50.0;

/// Heat for each length that holds a pipe at 40 °F, with a margin.
///
/// # Equation
/// ```text
/// w = 1.25 · q(4.44 °C)
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `w` | heat for each length | W/m | returned |
/// | `q` | loss of the pipe held at that temperature, [`heat_loss`] | W/m | `heat_loss` |
///
/// # Source
/// [`CABLE_HOLD`](crate::sources::freeze::CABLE_HOLD),
/// [`CABLE_MARGIN`](crate::sources::pipes::CABLE_MARGIN)
///
/// # Valid for
/// The air and wind of the coldest night that is to be borne.
///
/// # Leaves out
/// Plastic pipe, on which a cable without foil gives only 70 to 90 % of what its tag says.
///
/// # Examples
/// ```
/// use winterseam::freeze::{PipeKind, PipeSize, power_needed};
/// use winterseam::physics::film::Surroundings;
/// use winterseam::units::{fahrenheit, linear_power_density::watt_per_foot};
///
/// let bare = PipeKind::CopperL.bare(PipeSize::Half);
/// let night = power_needed(&bare, Surroundings::still(fahrenheit(0.0)));
/// assert!(night.get::<watt_per_foot>() > 4.0);
/// ```
#[must_use]
pub fn power_needed(pipe: &Pipe, around: Surroundings) -> LinearPowerDensity {
    heat_loss(pipe, celsius(HOLD_C), around).per_length * MARGIN
}

/// The hottest that a plastic pipe may get below a cable;
/// [`PLASTIC_LIMIT`](crate::sources::pipes::PLASTIC_LIMIT).
#[must_use]
pub fn plastic_limit() -> ThermodynamicTemperature {
    celsius(PLASTIC_LIMIT_C)
}
