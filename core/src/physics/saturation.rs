//! How much vapour air can hold, and the temperature at which it holds no more.

use crate::math::{exp, ln};
use crate::units::{celsius, in_celsius};
use std::ops::RangeInclusive;
use uom::si::f64::{Pressure, ThermodynamicTemperature};
use uom::si::pressure::pascal;

/// Temperatures of the saturation curve, °C.
pub const SATURATION_CELSIUS: RangeInclusive<f64> = -100.0..=200.0;

/// Triple point of water, °C: where the curves over ice and over water meet. A change at 0 °C would
/// leave a step of 0.01 % between them.
const TRIPLE_POINT: f64 = 0.01;

/// Halvings of [`SATURATION_CELSIUS`] until a temperature is known to a thousand-millionth of a
/// kelvin and far below.
const HALVINGS: u32 = 50;

/// Pressure of the vapour over ice (up to the triple point, 0.01 °C) or over water.
///
/// # Equation
///
/// ln p = C₁/T + C₂ + C₃·T + C₄·T² + C₅·T³ + C₆·T⁴ + C₇·ln T
///
/// # Symbols
///
/// | symbol  | meaning                                | unit | in code       |
/// |---------|----------------------------------------|------|---------------|
/// | p       | saturation pressure                    | Pa   | return value  |
/// | T       | absolute temperature                   | K    | `temperature` |
/// | C₁ … C₇ | one set for ice, one for water (C₆ = 0) | –    | –             |
///
/// # Source
///
/// [`HANDBOOK_CH1`](crate::sources::moisture::HANDBOOK_CH1)
///
/// # Valid for
///
/// [`SATURATION_CELSIUS`]; `None` elsewhere.
///
/// # Leaves out
///
/// The presence of air, which raises the pressure by 0.4 to 0.6 %.
///
/// # Examples
///
/// ```
/// use uom::si::pressure::pascal;
/// use winterseam::{physics::saturation::saturation_pressure, units::celsius};
///
/// let room = saturation_pressure(celsius(20.0)).unwrap();
/// assert!((room.get::<pascal>() - 2338.80).abs() < 0.005);
/// ```
#[must_use]
pub fn saturation_pressure(temperature: ThermodynamicTemperature) -> Option<Pressure> {
    let t = in_celsius(temperature);
    SATURATION_CELSIUS.contains(&t).then(|| Pressure::new::<pascal>(exp(ln_saturation(t))))
}

/// Temperature at which a vapour pressure is the saturation pressure: the dew point, or below
/// 0 °C the frost point.
///
/// # Equation
///
/// [`saturation_pressure`] turned round by halving.
///
/// # Symbols
///
/// | symbol | meaning            | unit | in code      |
/// |--------|--------------------|------|--------------|
/// | p      | vapour pressure    | Pa   | `vapour`     |
/// | T      | dew or frost point | K    | return value |
///
/// # Source
///
/// [`HANDBOOK_CH1`](crate::sources::moisture::HANDBOOK_CH1)
///
/// # Valid for
///
/// Pressures that belong to [`SATURATION_CELSIUS`]; `None` elsewhere, so for perfectly dry air.
///
/// # Leaves out
///
/// Dew that stays liquid below 0 °C: it forms up to 1 K lower for each 10 K of frost.
///
/// # Examples
///
/// ```
/// use uom::si::{f64::Pressure, pressure::pascal};
/// use winterseam::physics::saturation::saturation_temperature;
/// use winterseam::units::{celsius, kelvins, warmer_by};
///
/// let dew = saturation_temperature(Pressure::new::<pascal>(1228.0)).unwrap();
/// assert!(warmer_by(dew, celsius(10.0)) < kelvins(0.001));
/// assert!(saturation_temperature(Pressure::new::<pascal>(0.0)).is_none());
/// ```
#[must_use]
pub fn saturation_temperature(vapour: Pressure) -> Option<ThermodynamicTemperature> {
    let (mut low, mut high) = SATURATION_CELSIUS.into_inner();
    let wanted = ln(vapour.get::<pascal>());
    let known = ln_saturation(low)..=ln_saturation(high);
    if !known.contains(&wanted) {
        return None;
    }
    for _ in 0..HALVINGS {
        let middle = 0.5 * (low + high);
        if ln_saturation(middle) < wanted { low = middle } else { high = middle }
    }
    Some(celsius(high))
}

/// ln(p / Pa) at a temperature in °C; rises everywhere, also from ice to water.
fn ln_saturation(celsius: f64) -> f64 {
    let t = celsius + 273.15;
    if celsius < TRIPLE_POINT { ln_over_ice(t) } else { ln_over_water(t) }
}

fn ln_over_ice(t: f64) -> f64 {
    let polynomial = 6.392_524_7
        + t * (-9.677_843e-3 + t * (6.221_570_1e-7 + t * (2.074_782_5e-9 - t * 9.484_024e-13)));
    -5.674_535_9e3 / t + polynomial + 4.163_501_9 * ln(t)
}

fn ln_over_water(t: f64) -> f64 {
    let polynomial =
        1.391_499_3 + t * (-4.864_023_9e-2 + t * (4.176_476_8e-5 - t * 1.445_209_3e-8));
    -5.800_220_6e3 / t + polynomial + 6.545_967_3 * ln(t)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_curve_rises_everywhere_also_from_ice_to_water() {
        let curve: Vec<f64> =
            (-10_000..=20_000).map(|step| ln_saturation(f64::from(step) / 100.0)).collect();
        assert!(curve.windows(2).all(|pair| pair[0] < pair[1]));
        let step = ln_over_water(TRIPLE_POINT + 273.15) - ln_over_ice(TRIPLE_POINT + 273.15);
        assert!(step.abs() < 1e-7, "{step}");
    }

    #[test]
    fn the_way_back_finds_the_temperature() {
        for step in -1000..=2000 {
            let there = celsius(f64::from(step) / 10.0);
            let back = saturation_temperature(saturation_pressure(there).unwrap()).unwrap();
            assert!((in_celsius(back) - in_celsius(there)).abs() < 1e-9, "{step}");
        }
    }

    #[test]
    fn vapour_beyond_the_curve_is_refused() {
        for vapour in [f64::NAN, -1.0, 0.0, 1e-4, 2e6, f64::INFINITY] {
            assert_eq!(saturation_temperature(Pressure::new::<pascal>(vapour)), None);
        }
        for t in [f64::NAN, -100.1, 200.1] {
            assert_eq!(saturation_pressure(celsius(t)), None);
        }
    }
}
