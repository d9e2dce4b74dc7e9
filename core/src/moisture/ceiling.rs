//! Vapour that warm air carries through a leak in the ceiling, in one hour.

use crate::physics::moist_air::MoistAir;
use crate::physics::power_law::{PowerLaw, Reference};
use crate::physics::stack::stack_pressure;
use crate::properties::air::Air;
use crate::units::{Insulance, insulance, kelvins, warmer_by};
use uom::si::f64::{Area, Length, MassRate, Pressure, Ratio, ThermodynamicTemperature, VolumeRate};
use uom::si::ratio::ratio;

/// A leak in the ceiling and the roof above it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CeilingLeak {
    leaks: PowerLaw,
    height: Length,
    inside: Insulance,
    outside: Insulance,
}

impl CeilingLeak {
    /// A leak of this area at 4 Pa, so high above the level at which the pressures indoors and
    /// outdoors are the same. Of the way to the open air, `inside` lies between the room and the
    /// underside of the roof, `outside` beyond it. `None` when one of them is negative or both
    /// resistances are zero.
    #[must_use]
    pub fn new(area: Area, height: Length, inside: Insulance, outside: Insulance) -> Option<Self> {
        let none = insulance(0.0);
        let resists = inside >= none && outside >= none && inside + outside > none;
        let exponent = Ratio::new::<ratio>(PowerLaw::USUAL_EXPONENT);
        let leaks = PowerLaw::of_area(area, Reference::FOUR_PASCALS, exponent)?;
        (height >= Length::default() && resists).then_some(Self { leaks, height, inside, outside })
    }
}

/// What a leak carries out of the room.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Carried {
    /// Air of the room.
    pub air: VolumeRate,
    /// Dry air in it.
    pub dry_air: MassRate,
    /// Vapour in it.
    pub vapour: MassRate,
    /// How much of the vapour could at most turn to dew or frost under the roof.
    pub condensable: MassRate,
    /// Underside of the roof.
    pub surface: ThermodynamicTemperature,
}

/// Vapour that warm air carries up through a leak in the ceiling, and what of it could condense.
///
/// # Equation
///
/// Δp = ρₒ · g · h · (Tᵢ − Tₒ) / Tᵢ
///
/// Q = A · √(2 · 4 Pa / 1.2 kg/m³) · (Δp / 4 Pa)^0.65
///
/// ṁ = ρd · Q · Wᵢ
///
/// Tₛ = Tₒ + (Tᵢ − Tₒ) · Rₒ / (Rᵢ + Rₒ)
///
/// ṁc = ρd · Q · max(0, Wᵢ − W(Tₛ, saturated))
///
/// # Symbols
///
/// | symbol | meaning                              | unit  | in code                     |
/// |--------|--------------------------------------|-------|-----------------------------|
/// | Δp     | pressure up through the ceiling      | Pa    | –                           |
/// | ρₒ     | density of dry air outdoors          | kg/m³ | –                           |
/// | h      | height above the neutral level       | m     | `leak.height`               |
/// | Tᵢ, Tₒ | air indoors, outdoors                | K     | `indoors`, `outdoors`       |
/// | A      | leakage area at 4 Pa                 | m²    | `leak.area`                 |
/// | Q      | air of the room that leaks           | m³/s  | `air`                       |
/// | ρd     | dry air in a cubic metre of the room | kg/m³ | `indoors.dry_air_density()` |
/// | W      | humidity ratio                       | kg/kg | `indoors.humidity_ratio()`  |
/// | ṁ, ṁc  | vapour carried, condensable          | kg/s  | `vapour`, `condensable`     |
/// | Rᵢ, Rₒ | resistance up to and from Tₛ on      | m²K/W | `leak.inside`, `.outside`   |
/// | Tₛ     | underside of the roof                | K     | `surface`                   |
///
/// # Source
///
/// Stack pressure: the weight of a column of air, less that of the same column at the temperature
/// of the room. [`LEAKAGE_AREA`](crate::sources::moisture::LEAKAGE_AREA),
/// [`HANDBOOK_CH1`](crate::sources::moisture::HANDBOOK_CH1)
///
/// # Valid for
///
/// Outdoor air of [`AIR_CELSIUS`](crate::properties::air::AIR_CELSIUS); `None` elsewhere. Where it
/// is warmer outdoors, air comes down through the leak: nothing is carried.
///
/// # Leaves out
///
/// Wind and fans, which move air in both directions. That air dilutes the leak on its way: the
/// condensable part is the upper bound of what a roof at this temperature can take. A clear sky,
/// which cools a thin roof below the air, and the sun, which dries it.
///
/// # Examples
///
/// Twenty square centimetres, 1.25 m above the neutral level, a room of 20 °C and 50 %, −10 °C:
///
/// ```
/// use uom::si::f64::{Area, Length, Pressure, Ratio};
/// use uom::si::{
///     area::square_centimeter, length::meter, mass_rate::gram_per_second, pressure::pascal,
///     ratio::percent,
/// };
/// use winterseam::moisture::{CeilingLeak, carried};
/// use winterseam::physics::moist_air::{MoistAir, RelativeHumidity};
/// use winterseam::units::{celsius, insulance};
///
/// let half = RelativeHumidity::new(Ratio::new::<percent>(50.0)).unwrap();
/// let room = MoistAir::new(celsius(20.0), half, Pressure::new::<pascal>(101_325.0)).unwrap();
/// let area = Area::new::<square_centimeter>(20.0);
/// let height = Length::new::<meter>(1.25);
/// let leak = CeilingLeak::new(area, height, insulance(2.0), insulance(0.05)).unwrap();
/// let out = carried(&leak, &room, celsius(-10.0)).unwrap();
/// assert!((out.vapour.get::<gram_per_second>() * 3600.0 - 91.5).abs() < 0.1);
/// assert!((out.condensable.get::<gram_per_second>() * 3600.0 - 70.0).abs() < 0.1);
/// ```
#[must_use]
pub fn carried(
    leak: &CeilingLeak,
    indoors: &MoistAir,
    outdoors: ThermodynamicTemperature,
) -> Option<Carried> {
    let density = Air::dry(outdoors, indoors.pressure())?.density();
    let apart = warmer_by(indoors.dry_bulb(), outdoors).max(kelvins(0.0));
    let across = stack_pressure(density, leak.height, apart, indoors.dry_bulb());
    let air = leak.leaks.flow(across);
    let dry_air = indoors.dry_air_density() * air;
    let share: Ratio = leak.outside / (leak.inside + leak.outside);
    let surface = outdoors + warmer_by(indoors.dry_bulb(), outdoors) * share;
    let humidity = indoors.humidity_ratio();
    Some(Carried {
        air,
        dry_air,
        vapour: dry_air * humidity,
        condensable: dry_air * over(humidity, surface, indoors.pressure()),
        surface,
    })
}

/// Humidity ratio over that of saturated air at a surface; nothing where it boils.
fn over(humidity: Ratio, surface: ThermodynamicTemperature, pressure: Pressure) -> Ratio {
    let most = MoistAir::saturated(surface, pressure).map(|air| air.humidity_ratio());
    most.map_or(Ratio::default(), |most| (humidity - most).max(Ratio::default()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::physics::moist_air::RelativeHumidity;
    use crate::units::celsius;
    use uom::si::area::square_meter;
    use uom::si::length::meter;
    use uom::si::pressure::pascal;

    fn leak(area: f64, height: f64, inside: f64, outside: f64) -> Option<CeilingLeak> {
        let (area, height) = (Area::new::<square_meter>(area), Length::new::<meter>(height));
        CeilingLeak::new(area, height, insulance(inside), insulance(outside))
    }

    fn room() -> MoistAir {
        let half = RelativeHumidity::new(Ratio::new::<ratio>(0.5)).unwrap();
        MoistAir::new(celsius(20.0), half, Pressure::new::<pascal>(101_325.0)).unwrap()
    }

    #[test]
    fn a_leak_that_cannot_be_is_refused() {
        for bad in [-0.1, f64::NAN] {
            assert_eq!(leak(bad, 1.0, 2.0, 0.05), None);
            assert_eq!(leak(0.1, bad, 2.0, 0.05), None);
            assert_eq!(leak(0.1, 1.0, bad, 0.05), None);
            assert_eq!(leak(0.1, 1.0, 2.0, bad), None);
        }
        assert_eq!(leak(0.1, 1.0, 0.0, 0.0), None);
    }

    #[test]
    fn nothing_is_carried_where_it_is_no_colder_outdoors() {
        let leak = leak(0.002, 1.25, 2.0, 0.05).unwrap();
        for outdoors in [20.0, 35.0] {
            let out = carried(&leak, &room(), celsius(outdoors)).unwrap();
            assert_eq!(out.air, VolumeRate::default());
            assert_eq!(out.vapour, MassRate::default());
            assert_eq!(out.condensable, MassRate::default());
        }
        assert_eq!(carried(&leak, &room(), celsius(-101.0)), None);
    }

    #[test]
    fn no_more_condenses_than_is_carried() {
        let leak = leak(0.002, 1.25, 2.0, 0.05).unwrap();
        for outdoors in [-40.0, -10.0, 0.0, 9.0, 19.0] {
            let out = carried(&leak, &room(), celsius(outdoors)).unwrap();
            assert!(out.condensable <= out.vapour && out.condensable >= MassRate::default());
        }
    }
}
