//! Air that wind and warmth drive through the leaks of a whole home: the handbook's enhanced model.

use super::infiltration::{MODEL_ERROR, Storeys};
use crate::home::Shelter;
use crate::math;
use crate::physics::power_law::PowerLaw;
use crate::sources::air::HANDBOOK_2021_CH16_ENHANCED;
use crate::sources::{Confidence, Figure};
use uom::si::f64::{Ratio, TemperatureInterval, Velocity, VolumeRate};
use uom::si::{
    ratio::ratio, temperature_interval::kelvin, velocity::meter_per_second,
    volume_rate::cubic_meter_per_second,
};

/// Stack coefficients by storeys without and with a flue, (Pa/K)ⁿ; table 7.
const STACK: [[f64; 2]; 3] = [[0.054, 0.069], [0.078, 0.089], [0.098, 0.107]];

/// Wind coefficients by storeys without and with a flue on a slab, (Pa s²/m²)ⁿ; table 7.
const WIND_SLAB: [[f64; 2]; 3] = [[0.156, 0.142], [0.170, 0.156], [0.170, 0.167]];

/// The same over a crawl space.
const WIND_CRAWL_SPACE: [[f64; 2]; 3] = [[0.128, 0.128], [0.142, 0.142], [0.151, 0.154]];

/// Wind at the eaves over wind at the station, by storeys; table 8.
const AT_THE_EAVES: [f64; 3] = [0.48, 0.59, 0.67];

/// Shelter factors by class without a flue; table 9.
const SHELTER: [f64; 5] = [1.00, 0.90, 0.70, 0.50, 0.30];

/// Shelter factors by class with a flue, by storeys; table 9.
const SHELTER_FLUE: [[f64; 3]; 5] = [
    [1.10, 1.07, 1.06],
    [1.02, 0.98, 0.97],
    [0.86, 0.81, 0.79],
    [0.70, 0.64, 0.61],
    [0.54, 0.47, 0.43],
];

/// What a home stands on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Foundation {
    /// A slab or a basement.
    Slab,
    /// A crawl space, as below every manufactured home on piers.
    CrawlSpace,
}

/// How strongly warmth and wind press on the leaks of a home.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pressing {
    stack: f64,
    wind: f64,
    /// Wind at the leaks over wind at the station.
    sheltered: f64,
}

impl Pressing {
    /// The exponent that the coefficients were made with.
    pub const EXPONENT: f64 = 0.67;

    /// That on a home behind this shelter, with so many storeys, with or without a flue.
    #[must_use]
    pub fn of(shelter: Shelter, storeys: Storeys, flue: bool, foundation: Foundation) -> Self {
        let (class, storey) = (shelter as usize, storeys as usize);
        let wind = match foundation {
            Foundation::Slab => &WIND_SLAB,
            Foundation::CrawlSpace => &WIND_CRAWL_SPACE,
        };
        let shelter = if flue { SHELTER_FLUE[class][storey] } else { SHELTER[class] };
        Self {
            stack: STACK[storey][usize::from(flue)],
            wind: wind[storey][usize::from(flue)],
            sheltered: shelter * AT_THE_EAVES[storey],
        }
    }

    /// Flow by warmth of 1 K alone and by wind of 1 m/s alone, for each unit of the flow coefficient.
    pub(super) fn of_unit_hour(&self, exponent: Ratio) -> (f64, f64) {
        self.alone(1.0, 1.0, exponent.get::<ratio>())
    }

    /// Flow by warmth alone and by wind alone, for each unit of the flow coefficient.
    fn alone(&self, dt: f64, wind: f64, n: f64) -> (f64, f64) {
        let stack = self.stack * math::pow(dt.abs(), n);
        (stack, self.wind * math::pow(self.sheltered * wind, 2.0 * n))
    }
}

/// Air that leaks through a home, and what warmth and wind alone would drive.
#[derive(Debug, Clone, PartialEq)]
pub struct LeakFlow {
    /// Both together.
    pub flow: Figure<VolumeRate>,
    /// Warmth alone.
    pub stack: VolumeRate,
    /// Wind alone.
    pub wind: VolumeRate,
}

/// Air that leaks through a whole home.
///
/// # Equation
///
/// Q = √(Qs² + Qw²); Qs = c · Cs · |ΔT|ⁿ; Qw = c · Cw · (s · G · U)²ⁿ
///
/// # Symbols
///
/// | symbol | meaning                           | unit        | in code    |
/// |--------|-----------------------------------|-------------|------------|
/// | Q      | volume flow                       | m³/s        | `flow`     |
/// | c, n   | flow coefficient and exponent     | m³/(s Paⁿ)  | `leaks`    |
/// | Cs     | stack coefficient                 | (Pa/K)ⁿ     | `home`     |
/// | Cw     | wind coefficient                  | (Pa s²/m²)ⁿ | `home`     |
/// | s      | shelter factor                    | –           | `home`     |
/// | G      | wind at the eaves over station    | –           | `home`     |
/// | ΔT     | indoors less outdoors             | K           | `apart`    |
/// | U      | wind at the weather station       | m/s         | `wind`     |
///
/// # Source
///
/// [`HANDBOOK_2021_CH16_ENHANCED`]
///
/// # Valid for
///
/// Homes of one to three storeys, half of the leaks in the walls; made for an exponent of 0.67:
/// another bends the units, though example 6 of the source does it. Within 10 % where everything
/// is known well; the range is the average error of models of this kind (40 %).
///
/// # Leaves out
///
/// Fans and duct leaks.
///
/// # Examples
///
/// Example 7 of the source: three storeys over a crawl space with a flue, 5 K, 4.47 m/s.
///
/// ```
/// use uom::si::f64::{Ratio, Velocity};
/// use uom::si::{ratio::ratio, velocity::meter_per_second};
/// use uom::si::volume_rate::cubic_meter_per_second;
/// use winterseam::air::enhanced::{Foundation, Pressing, flow};
/// use winterseam::air::infiltration::Storeys;
/// use winterseam::physics::power_law::PowerLaw;
/// use winterseam::{home::Shelter, units::kelvins};
///
/// let leaks = PowerLaw::new(0.102, Ratio::new::<ratio>(0.67)).unwrap();
/// let home =
///     Pressing::of(Shelter::NeighboursClose, Storeys::Three, true, Foundation::CrawlSpace);
/// let air = flow(&leaks, kelvins(5.0), Velocity::new::<meter_per_second>(4.47), &home);
/// assert!((air.flow.best.get::<cubic_meter_per_second>() - 0.039).abs() < 0.0005);
/// ```
#[must_use]
pub fn flow(
    leaks: &PowerLaw,
    apart: TemperatureInterval,
    wind: Velocity,
    home: &Pressing,
) -> LeakFlow {
    let (dt, u) = (apart.get::<kelvin>(), wind.get::<meter_per_second>());
    let (stack, wind) = home.alone(dt, u, leaks.exponent().get::<ratio>());
    let made = |each: f64| VolumeRate::new::<cubic_meter_per_second>(leaks.coefficient() * each);
    let best = made(math::sqrt(stack * stack + wind * wind));
    let flow = Figure::exact(best, Confidence::Seen, &[&HANDBOOK_2021_CH16_ENHANCED])
        .between(best * (1.0 - MODEL_ERROR), best * (1.0 + MODEL_ERROR));
    LeakFlow { flow, stack: made(stack), wind: made(wind) }
}

/// The exponent that the coefficients were made with.
#[must_use]
pub fn usual_exponent() -> Ratio {
    Ratio::new::<ratio>(Pressing::EXPONENT)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::kelvins;

    #[test]
    fn no_wind_and_no_difference_give_no_flow() {
        let leaks = PowerLaw::new(0.05, usual_exponent()).unwrap();
        for (flue, foundation) in [(true, Foundation::Slab), (false, Foundation::CrawlSpace)] {
            let home = Pressing::of(Shelter::OpenGround, Storeys::One, flue, foundation);
            let still = flow(&leaks, kelvins(0.0), Velocity::default(), &home);
            assert_eq!(still.flow.best, VolumeRate::default());
        }
    }
}
