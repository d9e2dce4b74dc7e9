//! Air that wind and warmth drive through the leaks of a whole home: the handbook's basic model.

use crate::home::Shelter;
use crate::sources::air::HANDBOOK_2021_CH16;
use crate::sources::{Confidence, Figure};
use uom::si::f64::{Area, TemperatureInterval, Velocity, VolumeRate};
use uom::si::{temperature_interval::kelvin, velocity::meter_per_second};

/// Stack coefficients by storeys, (L/s)²/(cm⁴ K); [`HANDBOOK_2021_CH16`], table 4.
const STACK: [f64; 3] = [0.000_145, 0.000_290, 0.000_435];

/// Wind coefficients by shelter class (1 open … 5 close), then by storeys, (L/s)²/(cm⁴ (m/s)²);
/// [`HANDBOOK_2021_CH16`], table 6.
const WIND: [[f64; 3]; 5] = [
    [0.000_319, 0.000_420, 0.000_494],
    [0.000_246, 0.000_325, 0.000_382],
    [0.000_174, 0.000_231, 0.000_271],
    [0.000_104, 0.000_137, 0.000_161],
    [0.000_032, 0.000_042, 0.000_049],
];

/// (L/s)²/cm⁴ in (m³/s)²/m⁴.
const PER_AREA_SI: f64 = 100.0;

/// Average error of models of this kind; [`HANDBOOK_2021_CH16`].
pub const MODEL_ERROR: f64 = 0.40;

/// How many storeys a home has.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Storeys {
    /// One: every manufactured home as delivered.
    One,
    /// Two.
    Two,
    /// Three.
    Three,
}

impl Storeys {
    /// From a count; `None` unless it is 1, 2 or 3.
    #[must_use]
    pub fn from_count(count: u8) -> Option<Self> {
        match count {
            1 => Some(Self::One),
            2 => Some(Self::Two),
            3 => Some(Self::Three),
            _ => None,
        }
    }
}

/// How strongly warmth and wind drive air through each unit of leakage area of a home.
///
/// In units in which a leakage area in m² times [`Coefficients::speed`] in m/s is a flow in m³/s,
/// so that a year costs one square root an hour and is `area · Σ speed`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Coefficients {
    /// Square of the speed for each kelvin, m²/(s² K).
    stack: f64,
    /// Square of the speed for each square of the wind.
    wind: f64,
}

impl Coefficients {
    /// Those of a home behind this shelter, with so many storeys.
    #[must_use]
    pub fn of(shelter: Shelter, storeys: Storeys) -> Self {
        let (class, storey) = (shelter as usize, storeys as usize);
        Self { stack: PER_AREA_SI * STACK[storey], wind: PER_AREA_SI * WIND[class][storey] }
    }

    /// Flow through each unit of leakage area, in one hour of the year: the kernel of [`flow`].
    #[must_use]
    pub fn speed(&self, apart: TemperatureInterval, wind: Velocity) -> Velocity {
        let (dt, u) = (apart.get::<kelvin>().abs(), wind.get::<meter_per_second>());
        Velocity::new::<meter_per_second>((self.stack * dt + self.wind * u * u).sqrt())
    }
}

/// Air that leaks through a whole home.
///
/// # Equation
///
/// Q = (A / 1000) · √(Cs · |ΔT| + Cw · U²)
///
/// # Symbols
///
/// | symbol | meaning                                | unit              | in code         |
/// |--------|----------------------------------------|-------------------|-----------------|
/// | Q      | volume flow                            | m³/s              | return value    |
/// | A      | effective leakage area at 4 Pa         | cm²               | `leakage_area`  |
/// | Cs     | stack coefficient                      | (L/s)²/(cm⁴ K)     | `home`          |
/// | Cw     | wind coefficient                       | (L/s)²/(cm⁴ m²/s²) | `home`          |
/// | ΔT     | indoors less outdoors                  | K                 | `apart`         |
/// | U      | wind at the weather station            | m/s               | `wind`          |
///
/// # Source
///
/// [`HANDBOOK_2021_CH16`]
///
/// # Valid for
///
/// Homes of one to three storeys without a tall flue, half of the leaks in floor and ceiling,
/// hourly means; wind as the station gives it, not reduced. The range is the average error of
/// models of this kind (40 %); a single home may be off by twice that.
///
/// # Leaves out
///
/// Fans, duct leaks and flues, which all add; the sign of the temperature difference.
///
/// # Examples
///
/// Example 3 of the source: 690 cm², one storey in town, 17 K, 2.7 m/s.
///
/// ```
/// use uom::si::f64::{Area, Velocity};
/// use uom::si::{area::square_centimeter, velocity::meter_per_second};
/// use uom::si::volume_rate::cubic_meter_per_second;
/// use winterseam::air::infiltration::{Coefficients, Storeys, flow};
/// use winterseam::{home::Shelter, units::kelvins};
///
/// let home = Coefficients::of(Shelter::NeighboursApart, Storeys::One);
/// let area = Area::new::<square_centimeter>(690.0);
/// let air = flow(area, kelvins(17.0), Velocity::new::<meter_per_second>(2.7), &home);
/// assert!((air.best.get::<cubic_meter_per_second>() - 0.0392).abs() < 0.00005);
/// ```
#[must_use]
pub fn flow(
    leakage_area: Area,
    apart: TemperatureInterval,
    wind: Velocity,
    home: &Coefficients,
) -> Figure<VolumeRate> {
    let best = leakage_area * home.speed(apart, wind);
    Figure::exact(best, Confidence::Seen, &[&HANDBOOK_2021_CH16])
        .between(best * (1.0 - MODEL_ERROR), best * (1.0 + MODEL_ERROR))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::kelvins;

    #[test]
    fn only_one_two_or_three_storeys_have_coefficients() {
        assert_eq!(Storeys::from_count(0), None);
        assert_eq!(Storeys::from_count(3), Some(Storeys::Three));
        assert_eq!(Storeys::from_count(4), None);
    }

    #[test]
    fn a_hot_day_leaks_as_much_as_a_cold_one() {
        let home = Coefficients::of(Shelter::LoneHome, Storeys::One);
        let still = Velocity::new::<meter_per_second>(0.0);
        assert_eq!(home.speed(kelvins(-12.0), still), home.speed(kelvins(12.0), still));
    }
}
