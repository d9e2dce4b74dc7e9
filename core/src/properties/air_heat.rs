//! How air conducts heat, and how that compares with the way it drags.
//!
//! The law is [`US_STANDARD_ATMOSPHERE_1976`]. Newer measurements lie up to 1.3 % above it below
//! freezing, which moves a film coefficient by less than 1 %.
//!
//! [`US_STANDARD_ATMOSPHERE_1976`]: crate::sources::freeze::US_STANDARD_ATMOSPHERE_1976

use super::air::{GAS_CONSTANT, HEAT_CAPACITY, SEA_LEVEL, sutherland};
use crate::math;
use crate::units::in_kelvin;
use uom::si::f64::{Ratio, ThermalConductivity, ThermodynamicTemperature};
use uom::si::thermal_conductivity::watt_per_meter_kelvin;

/// Heat that air conducts: k = 0.002 646 38 · T^1.5 ÷ (T + 245.4 · 10^(−12/T)).
///
/// ```
/// use winterseam::properties::air_heat::conductivity;
/// use winterseam::units::celsius;
/// use uom::si::thermal_conductivity::watt_per_meter_kelvin;
///
/// let k = conductivity(celsius(20.0)).get::<watt_per_meter_kelvin>();
/// assert!((k - 0.0257).abs() < 0.0001);
/// ```
#[must_use]
pub fn conductivity(of: ThermodynamicTemperature) -> ThermalConductivity {
    ThermalConductivity::new::<watt_per_meter_kelvin>(AirFilm::at(in_kelvin(of)).conductivity)
}

/// Prandtl number: how readily momentum spreads in air, over how readily heat does.
///
/// ```
/// use winterseam::properties::air_heat::prandtl;
/// use winterseam::units::celsius;
///
/// assert!((prandtl(celsius(20.0)).value - 0.71).abs() < 0.01);
/// ```
#[must_use]
pub fn prandtl(of: ThermodynamicTemperature) -> Ratio {
    AirFilm::at(in_kelvin(of)).prandtl.into()
}

/// Dry air at 101 325 Pa and one temperature, as a film on a surface sees it.
#[derive(Debug, Clone, Copy)]
pub(crate) struct AirFilm {
    /// W/(m·K).
    pub(crate) conductivity: f64,
    /// Kinematic viscosity, m²/s.
    pub(crate) kinematic: f64,
    pub(crate) prandtl: f64,
}

impl AirFilm {
    pub(crate) fn at(t: f64) -> Self {
        let slowed = t + 245.4 * math::pow(10.0, -12.0 / t);
        let conductivity = 2.646_38e-3 * t * math::sqrt(t) / slowed;
        let viscosity = sutherland(t);
        Self {
            conductivity,
            kinematic: viscosity * GAS_CONSTANT * t / SEA_LEVEL,
            prandtl: HEAT_CAPACITY * viscosity / conductivity,
        }
    }
}
