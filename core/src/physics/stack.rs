//! The pressure that warm air in a home presses up with.

use super::GRAVITY_M_S2;
use crate::units::warmer_by;
use uom::si::acceleration::meter_per_second_squared;
use uom::si::f64::{
    Acceleration, Length, MassDensity, Pressure, Ratio, TemperatureInterval,
    ThermodynamicTemperature,
};

/// Pressure across a leak at a height above the neutral level.
///
/// # Equation
///
/// Δp = ρ · g · h · ΔT / T
///
/// # Symbols
///
/// | symbol | meaning                          | unit  | in code        |
/// |--------|----------------------------------|-------|----------------|
/// | Δp     | pressure, outwards               | Pa    | return value   |
/// | ρ      | density of the outdoor air       | kg/m³ | `outdoors`     |
/// | g      | gravity                          | m/s²  | `GRAVITY_M_S2` |
/// | h      | height above the neutral level   | m     | `height`       |
/// | ΔT     | rooms less outdoors              | K     | `apart`        |
/// | T      | absolute temperature of the rooms| K     | `room`         |
///
/// # Source
///
/// [`HANDBOOK_2021_CH16`](crate::sources::air::HANDBOOK_2021_CH16): the weight of a column of
/// outdoor air, less that of the same column at the temperature of the rooms.
///
/// # Valid for
///
/// Ideal air under one pressure; a negative difference presses the other way.
///
/// # Leaves out
///
/// Wind and fans, and the vapour in both columns.
///
/// # Examples
///
/// 25 K over 1.25 m press with 1.4 Pa:
///
/// ```
/// use uom::si::f64::{Length, MassDensity};
/// use uom::si::{length::meter, mass_density::kilogram_per_cubic_meter, pressure::pascal};
/// use winterseam::physics::stack::stack_pressure;
/// use winterseam::units::{celsius, kelvins};
///
/// let outdoors = MassDensity::new::<kilogram_per_cubic_meter>(1.317);
/// let height = Length::new::<meter>(1.25);
/// let across = stack_pressure(outdoors, height, kelvins(25.0), celsius(20.0));
/// assert!((across.get::<pascal>() - 1.38).abs() < 0.005);
/// ```
#[must_use]
pub fn stack_pressure(
    outdoors: MassDensity,
    height: Length,
    apart: TemperatureInterval,
    room: ThermodynamicTemperature,
) -> Pressure {
    let gravity = Acceleration::new::<meter_per_second_squared>(GRAVITY_M_S2);
    let lighter: Ratio = apart / warmer_by(room, ThermodynamicTemperature::default());
    outdoors * gravity * height * lighter
}
