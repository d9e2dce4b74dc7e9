//! Dry air: how heavy, how viscous, how much heat it carries, and its pressure by altitude.

use crate::math::pow;
use crate::units::{celsius, in_celsius, in_kelvin};
use std::ops::RangeInclusive;
use uom::si::f64::{
    DynamicViscosity, Length, MassDensity, Pressure, SpecificHeatCapacity, ThermodynamicTemperature,
};
use uom::si::{
    dynamic_viscosity::pascal_second, length::meter, mass_density::kilogram_per_cubic_meter,
    pressure::pascal, specific_heat_capacity::joule_per_kilogram_kelvin,
};

/// Gas constant of dry air, J/(kg K); [`DRY_AIR`](crate::sources::air::DRY_AIR).
pub(super) const GAS_CONSTANT: f64 = 287.05;

/// Heat capacity of dry air at constant pressure, J/(kg K);
/// [`DRY_AIR`](crate::sources::air::DRY_AIR).
pub(super) const HEAT_CAPACITY: f64 = 1006.0;

/// Pressure of the standard atmosphere at sea level, Pa.
pub(super) const SEA_LEVEL: f64 = 101_325.0;

/// Temperatures of air that this crate answers for, °C.
pub const AIR_CELSIUS: RangeInclusive<f64> = -100.0..=200.0;

/// Altitudes of [`standard_pressure`], m: the lowest layer of the standard atmosphere.
pub const ALTITUDE_METRES: RangeInclusive<f64> = -500.0..=11_000.0;

/// Air as a flow law sees it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Air {
    density: MassDensity,
    viscosity: DynamicViscosity,
}

impl Air {
    /// Air of a stated density and viscosity; `None` unless both are positive and finite.
    #[must_use]
    pub fn new(density: MassDensity, viscosity: DynamicViscosity) -> Option<Self> {
        let sound = is_positive(density.get::<kilogram_per_cubic_meter>())
            && is_positive(viscosity.get::<pascal_second>());
        sound.then_some(Self { density, viscosity })
    }

    /// Dry air.
    ///
    /// # Equation
    ///
    /// ρ = p / (R · T); μ = 1.458·10⁻⁶ · T^1.5 / (T + 110.4)
    ///
    /// # Symbols
    ///
    /// | symbol | meaning              | unit     | in code       |
    /// |--------|----------------------|----------|---------------|
    /// | ρ      | density              | kg/m³    | `density()`   |
    /// | μ      | dynamic viscosity    | Pa s     | `viscosity()` |
    /// | p      | absolute pressure    | Pa       | `pressure`    |
    /// | T      | temperature          | K        | `temperature` |
    /// | R      | gas constant, 287.05 | J/(kg K) | –             |
    ///
    /// # Source
    ///
    /// [`DRY_AIR`](crate::sources::air::DRY_AIR),
    /// [`STANDARD_ATMOSPHERE_1976`](crate::sources::air::STANDARD_ATMOSPHERE_1976)
    ///
    /// # Valid for
    ///
    /// [`AIR_CELSIUS`] and a positive pressure; `None` elsewhere.
    ///
    /// # Leaves out
    ///
    /// Real-gas behaviour (density 0.1 % too low at −20 °C) and moisture (density up to 1 % too
    /// high in a room).
    ///
    /// # Examples
    ///
    /// ```
    /// use uom::si::{f64::Pressure, mass_density::kilogram_per_cubic_meter, pressure::pascal};
    /// use winterseam::{properties::air::Air, units::celsius};
    ///
    /// let air = Air::dry(celsius(20.0), Pressure::new::<pascal>(101_325.0)).unwrap();
    /// assert!((air.density().get::<kilogram_per_cubic_meter>() - 1.204).abs() < 0.0005);
    /// ```
    #[must_use]
    pub fn dry(temperature: ThermodynamicTemperature, pressure: Pressure) -> Option<Self> {
        let (t, p) = (in_kelvin(temperature), pressure.get::<pascal>());
        let sound = AIR_CELSIUS.contains(&in_celsius(temperature)) && is_positive(p);
        sound.then(|| Self {
            density: MassDensity::new::<kilogram_per_cubic_meter>(p / (GAS_CONSTANT * t)),
            viscosity: DynamicViscosity::new::<pascal_second>(sutherland(t)),
        })
    }

    /// Dry air at 20 °C and the pressure of sea level.
    #[must_use]
    pub fn of_a_room() -> Self {
        let t = in_kelvin(celsius(20.0));
        Self {
            density: MassDensity::new::<kilogram_per_cubic_meter>(SEA_LEVEL / (GAS_CONSTANT * t)),
            viscosity: DynamicViscosity::new::<pascal_second>(sutherland(t)),
        }
    }

    /// How heavy it is.
    #[must_use]
    pub fn density(&self) -> MassDensity {
        self.density
    }

    /// How much it resists shear.
    #[must_use]
    pub fn viscosity(&self) -> DynamicViscosity {
        self.viscosity
    }
}

/// Heat that a kilogram of dry air takes for each kelvin at constant pressure.
#[must_use]
pub fn heat_capacity() -> SpecificHeatCapacity {
    SpecificHeatCapacity::new::<joule_per_kilogram_kelvin>(HEAT_CAPACITY)
}

/// Pressure of the standard atmosphere at an altitude.
///
/// # Equation
///
/// p = 101325 · (1 − 2.25577·10⁻⁵ · z)^5.2559
///
/// # Symbols
///
/// | symbol | meaning             | unit | in code      |
/// |--------|---------------------|------|--------------|
/// | p      | absolute pressure   | Pa   | return value |
/// | z      | height above the sea | m   | `altitude`   |
///
/// # Source
///
/// [`HANDBOOK_CH1`](crate::sources::moisture::HANDBOOK_CH1)
///
/// # Valid for
///
/// [`ALTITUDE_METRES`]; `None` elsewhere.
///
/// # Leaves out
///
/// Weather, which moves the pressure by up to 3 % either way.
///
/// # Examples
///
/// ```
/// use uom::si::{f64::Length, length::meter, pressure::pascal};
/// use winterseam::properties::air::standard_pressure;
///
/// let valley = standard_pressure(Length::new::<meter>(1000.0)).unwrap();
/// assert!((valley.get::<pascal>() - 89_874.5).abs() < 0.5);
/// ```
#[must_use]
pub fn standard_pressure(altitude: Length) -> Option<Pressure> {
    let z = altitude.get::<meter>();
    ALTITUDE_METRES
        .contains(&z)
        .then(|| Pressure::new::<pascal>(SEA_LEVEL * pow(1.0 - 2.255_77e-5 * z, 5.2559)))
}

/// Viscosity of dry air, Pa s, at a temperature in kelvin.
pub(super) fn sutherland(t: f64) -> f64 {
    1.458e-6 * t * t.sqrt() / (t + 110.4)
}

fn is_positive(value: f64) -> bool {
    value > 0.0 && value.is_finite()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn dry(t: f64, p: f64) -> Option<Air> {
        Air::dry(celsius(t), Pressure::new::<pascal>(p))
    }

    #[test]
    fn air_outside_its_range_is_refused() {
        assert_eq!(dry(-100.1, SEA_LEVEL), None);
        assert_eq!(dry(200.1, SEA_LEVEL), None);
        assert_eq!(dry(f64::NAN, SEA_LEVEL), None);
        assert_eq!(dry(20.0, 0.0), None);
        assert_eq!(dry(20.0, f64::INFINITY), None);
        assert_eq!(standard_pressure(Length::new::<meter>(20_000.0)), None);
        assert_eq!(standard_pressure(Length::new::<meter>(f64::NAN)), None);
    }

    #[test]
    fn air_of_a_room_is_dry_air_at_twenty_degrees() {
        assert_eq!(Some(Air::of_a_room()), dry(20.0, SEA_LEVEL));
    }
}
