//! The air of a roof that is ventilated.

use crate::physics::moist_air::MoistAir;
use uom::si::f64::Ratio;
use uom::si::ratio::ratio;

/// Vapour for each kilogram of dry air in a roof where leaked air meets air from outdoors.
///
/// # Equation
///
/// W = (Wᵢ + r · Wₒ) / (1 + r)
///
/// # Symbols
///
/// | symbol | meaning                                         | unit  | in code                     |
/// |--------|-------------------------------------------------|-------|-----------------------------|
/// | W      | humidity ratio of the mixture                   | kg/kg | return value                |
/// | Wᵢ     | humidity ratio indoors                          | kg/kg | `indoors.humidity_ratio()`  |
/// | Wₒ     | humidity ratio outdoors                         | kg/kg | `outdoors.humidity_ratio()` |
/// | r      | dry air from outdoors for each kilogram of leak | –     | `ventilation`               |
///
/// # Source
///
/// Balance of mass, with the humidity ratio of
/// [`HANDBOOK_CH1`](crate::sources::moisture::HANDBOOK_CH1).
///
/// # Valid for
///
/// Air that is mixed before it meets the roof; r from 0, a roof without any ventilation, which is
/// the upper bound of what can condense.
///
/// # Leaves out
///
/// Wood, which takes up vapour and gives it back, and leaks that wash the roof before they mix.
///
/// # Examples
///
/// ```
/// use uom::si::f64::{Pressure, Ratio};
/// use uom::si::{pressure::pascal, ratio::{percent, ratio}};
/// use winterseam::moisture::mixed_with_outdoor_air;
/// use winterseam::physics::moist_air::{MoistAir, RelativeHumidity};
/// use winterseam::units::celsius;
///
/// let air = |t, rh| {
///     let humidity = RelativeHumidity::new(Ratio::new::<percent>(rh)).unwrap();
///     MoistAir::new(celsius(t), humidity, Pressure::new::<pascal>(101_325.0)).unwrap()
/// };
/// let ten = Ratio::new::<ratio>(10.0);
/// let mixed = mixed_with_outdoor_air(&air(20.0, 50.0), &air(-10.0, 80.0), ten);
/// assert!((mixed.get::<ratio>() - 0.001823).abs() < 1e-6);
/// ```
#[must_use]
pub fn mixed_with_outdoor_air(
    indoors: &MoistAir,
    outdoors: &MoistAir,
    ventilation: Ratio,
) -> Ratio {
    let one = Ratio::new::<ratio>(1.0);
    let sum = indoors.humidity_ratio() + ventilation * outdoors.humidity_ratio();
    sum / (one + ventilation)
}
