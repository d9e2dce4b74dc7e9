//! Air that leaks through a home on the day that its heating or cooling is sized for.

use super::infiltration::MODEL_ERROR;
use crate::sources::air::{HANDBOOK_2021_CH16, HANDBOOK_2021_CH17_DESIGN_DAY};
use crate::sources::{Confidence, Figure};
use uom::si::f64::{Area, Length, TemperatureInterval, VolumeRate};
use uom::si::{
    area::square_centimeter, length::meter, temperature_interval::kelvin,
    volume_rate::liter_per_second,
};

/// Largest share of the leaks that a flue may have.
const FLUE: f64 = 0.5;

/// The day that is designed for, with its wind.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Season {
    /// A cold day with a wind of 6.7 m/s.
    Heating,
    /// A hot day with a wind of 3.4 m/s.
    Cooling,
}

impl Season {
    /// What wind drives through each cm², mL/s; what warmth drives through it for each metre of
    /// height and kelvin; and what more of that where all of it is a flue.
    fn coefficients(self) -> (f64, f64, f64) {
        match self {
            Self::Heating => (51.0, 0.35, 0.23),
            Self::Cooling => (25.0, 0.38, 0.12),
        }
    }
}

/// Air that leaks through a home on its design day.
///
/// # Equation
///
/// Q = A · (I₀ + H · |ΔT| · (I₁ + I₂ · Af / A)) / 1000
///
/// # Symbols
///
/// | symbol     | meaning                                   | unit                  | in code        |
/// |------------|-------------------------------------------|-----------------------|----------------|
/// | Q          | volume flow                               | L/s                   | return value   |
/// | A          | effective leakage area at 4 Pa, with flue | cm²                   | `leakage_area` |
/// | Af         | that of an open flue                      | cm²                   | `flue`         |
/// | H          | height of the ceiling                     | m                     | `height`       |
/// | ΔT         | indoors less outdoors                     | K                     | `apart`        |
/// | I₀         | wind: 51 heating, 25 cooling              | mL/(s cm²)            | `season`       |
/// | I₁         | warmth: 0.35 heating, 0.38 cooling        | mL/(s cm² m K)        | `season`       |
/// | I₂         | flue: 0.23 heating, 0.12 cooling          | mL/(s cm² m K)        | `season`       |
///
/// # Source
///
/// [`HANDBOOK_2021_CH17_DESIGN_DAY`]
///
/// # Valid for
///
/// Homes as sheltered as a suburb, a wind of 6.7 m/s (heating) or 3.4 m/s (cooling). `None` for an
/// area or a height that is negative or infinite, and for a flue of half of the leaks or more. The
/// range is the average error of models of this kind (40 %).
///
/// # Leaves out
///
/// Other winds, fans and duct leaks; the sign of the temperature difference.
///
/// # Examples
///
/// 500 cm² below a ceiling of 2.5 m, 20 °C indoors and −20 °C outdoors:
///
/// ```
/// use uom::si::f64::{Area, Length};
/// use uom::si::{area::square_centimeter, length::meter, volume_rate::liter_per_second};
/// use winterseam::air::design_day::{Season, flow};
/// use winterseam::units::kelvins;
///
/// let (area, height) = (Area::new::<square_centimeter>(500.0), Length::new::<meter>(2.5));
/// let air = flow(area, Area::default(), height, kelvins(40.0), Season::Heating).unwrap();
/// assert!((air.best.get::<liter_per_second>() - 43.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn flow(
    leakage_area: Area,
    flue: Area,
    height: Length,
    apart: TemperatureInterval,
    season: Season,
) -> Option<Figure<VolumeRate>> {
    let [all, flue] = [leakage_area, flue].map(|area| area.get::<square_centimeter>());
    let (height, dt) = (height.get::<meter>(), apart.get::<kelvin>().abs());
    let sound = [all, flue, height, dt].iter().all(|size| *size >= 0.0 && size.is_finite());
    let small_flue = flue == 0.0 || flue < FLUE * all;
    let (wind, warmth, by_flue) = season.coefficients();
    let millilitres = all * wind + height * dt * (all * warmth + flue * by_flue);
    let best = VolumeRate::new::<liter_per_second>(millilitres / 1000.0);
    let sources = &[&HANDBOOK_2021_CH17_DESIGN_DAY, &HANDBOOK_2021_CH16];
    (sound && small_flue).then(|| {
        Figure::exact(best, Confidence::Seen, sources)
            .between(best * (1.0 - MODEL_ERROR), best * (1.0 + MODEL_ERROR))
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::kelvins;

    fn litres(all_cm2: f64, flue_cm2: f64, height_m: f64, apart_k: f64) -> Option<f64> {
        let (cm2, height) = (Area::new::<square_centimeter>, Length::new::<meter>(height_m));
        let air = flow(cm2(all_cm2), cm2(flue_cm2), height, kelvins(apart_k), Season::Heating);
        air.map(|air| air.best.get::<liter_per_second>())
    }

    #[test]
    fn no_difference_leaves_the_wind_and_no_leaks_leave_nothing() {
        assert!((litres(500.0, 100.0, 2.5, 0.0).unwrap() - 25.5).abs() < 1e-12);
        assert_eq!(litres(0.0, 0.0, 2.5, 40.0), Some(0.0));
    }

    #[test]
    fn a_flue_draws_more_until_it_is_half_of_the_leaks() {
        assert!(litres(500.0, 249.0, 2.5, 40.0) > litres(500.0, 0.0, 2.5, 40.0));
        assert_eq!(litres(500.0, 250.0, 2.5, 40.0), None);
    }

    #[test]
    fn what_is_no_size_is_refused() {
        for bad in [-1.0, f64::NAN, f64::INFINITY] {
            assert_eq!(litres(bad, 0.0, 2.5, 40.0), None);
            assert_eq!(litres(500.0, bad, 2.5, 40.0), None);
            assert_eq!(litres(500.0, 0.0, bad, 40.0), None);
        }
        assert_eq!(litres(500.0, 0.0, 2.5, f64::NAN), None);
    }
}
