//! The cold water that comes into a home.

use crate::math;
use crate::units::{fahrenheit, in_fahrenheit};
use std::f64::consts::PI;
use uom::si::f64::{TemperatureInterval, ThermodynamicTemperature};
use uom::si::temperature_interval::degree_fahrenheit;

/// Temperature of the mains on a day of the year.
///
/// # Equation
/// With all temperatures in °F:
///
/// ```text
/// T = (A + 6) + r·(S/2)·sin(0.986·(d − 15 − L) − 90°), not below 32
/// r = 0.4 + 0.01·(A − 44), kept to 0 … 1
/// L = 35 − (A − 44)
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | T | water of the mains | °F | return value |
/// | A | mean air temperature of the year | °F | `annual_mean` |
/// | S | warmest less coldest monthly mean | °F | `monthly_swing` |
/// | d | day of the year, 1 to 365 | – | `day` |
/// | r | how far the ground follows the air | – | |
/// | L | how long it lags | d | |
///
/// # Source
/// [`MAINS`](crate::sources::water_heater::MAINS)
///
/// # Valid for
/// The northern hemisphere, buried mains. The 6 °F above the air and the two slopes were fitted to
/// mains of the United States.
///
/// # Leaves out
/// Wells, which keep near the mean of the year; shallow lines of a park, which follow the weather.
///
/// # Examples
/// ```
/// use uom::si::{f64::TemperatureInterval, temperature_interval::degree_fahrenheit};
/// use winterseam::{hot_water::mains_water, units::fahrenheit};
///
/// let swing = TemperatureInterval::new::<degree_fahrenheit>(50.0);
/// let january = mains_water(fahrenheit(50.0), swing, 15);
/// assert!((january.value - fahrenheit(45.90).value).abs() < 0.01);
/// ```
#[must_use]
pub fn mains_water(
    annual_mean: ThermodynamicTemperature,
    monthly_swing: TemperatureInterval,
    day: u16,
) -> ThermodynamicTemperature {
    let above = in_fahrenheit(annual_mean) - 44.0;
    let follows = (0.4 + 0.01 * above).clamp(0.0, 1.0);
    let lag = 35.0 - above;
    let angle = (0.986 * (f64::from(day) - 15.0 - lag) - 90.0) * PI / 180.0;
    let half = monthly_swing.get::<degree_fahrenheit>() / 2.0;
    let mains = in_fahrenheit(annual_mean) + 6.0 + follows * half * math::sin(angle);
    fahrenheit(mains.max(32.0))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{celsius, kelvins};

    #[test]
    fn mains_water_is_never_ice_and_swings_no_further_than_the_air() {
        for mean in [-20.0, 0.0, 12.0, 28.0, 40.0] {
            let over =
                |swing: f64| (1..=365).map(move |d| mains_water(celsius(mean), kelvins(swing), d));
            assert!(over(60.0).all(|water| water >= fahrenheit(32.0) - kelvins(1e-9)));
            let (low, high) = over(20.0)
                .map(in_fahrenheit)
                .fold((f64::MAX, f64::MIN), |(low, high), t| (low.min(t), high.max(t)));
            assert!(high - low <= 36.0 + 1e-9, "{mean}");
        }
    }
}
