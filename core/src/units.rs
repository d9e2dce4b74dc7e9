//! Units that `uom` lacks or rounds, and the few operations that its types leave open.
//!
//! `uom` tells an absolute temperature from a difference, but lets a conductance meet an absolute
//! temperature. Heat flows in this crate are therefore written through [`conducted`] and
//! [`carried`], which take a [`TemperatureInterval`] and nothing else:
//!
//! ```compile_fail
//! use winterseam::units::conducted;
//! use uom::si::f64::{ThermalConductance, ThermodynamicTemperature};
//! use uom::si::{thermal_conductance::watt_per_kelvin, thermodynamic_temperature::degree_celsius};
//!
//! let loss = ThermalConductance::new::<watt_per_kelvin>(160.0);
//! let outdoors = ThermodynamicTemperature::new::<degree_celsius>(-10.0);
//! conducted(loss, outdoors); // an absolute temperature: refused by the compiler
//! ```

use std::ops::Div;
use uom::si::f64::{
    HeatFluxDensity, MassDensity, Power, SpecificHeatCapacity, TemperatureInterval,
    ThermalConductance, ThermodynamicTemperature, VolumeRate,
};
use uom::si::heat_flux_density::watt_per_square_meter;
use uom::si::{temperature_interval, thermodynamic_temperature};

/// One international-table Btu in joules (exact definition, from memory).
pub(crate) const BTU_IT_J: f64 = 1_055.055_852_62;

/// Energy units of fuel bills.
pub mod energy {
    unit! {
        system: uom::si;
        quantity: uom::si::energy;

        @btu: crate::units::BTU_IT_J; "Btu", "Btu (IT)", "Btu (IT)";
        @therm: crate::units::BTU_IT_J * 1.0E5; "therm", "therm (IT)", "therms (IT)";
        @million_btu: crate::units::BTU_IT_J * 1.0E6; "MMBtu", "million Btu (IT)", "million Btu (IT)";
    }
}

/// Power units of heating labels.
pub mod power {
    unit! {
        system: uom::si;
        quantity: uom::si::power;

        @btu_per_hour: crate::units::BTU_IT_J / 3600.0; "Btu/h", "Btu (IT) per hour", "Btu (IT) per hour";
    }
}

/// Air flow as labels and test sheets give it.
pub mod volume_rate {
    unit! {
        system: uom::si;
        quantity: uom::si::volume_rate;

        @cfm: 0.028_316_846_592 / 60.0; "cfm", "cubic foot per minute", "cubic feet per minute";
    }
}

/// Pressure of fans and ducts.
pub mod pressure {
    unit! {
        system: uom::si;
        quantity: uom::si::pressure;

        @inch_of_water: 249.088_91; "inH2O", "inch of water (4 °C)", "inches of water (4 °C)";
    }
}

/// Heat of a cable for each foot of it.
pub mod linear_power_density {
    unit! {
        system: uom::si;
        quantity: uom::si::linear_power_density;

        @watt_per_foot: 1.0 / 0.3048; "W/ft", "watt per foot", "watts per foot";
    }
}

/// Thermal insulance, the R-value of a layer, which `uom` knows without a name.
pub type Insulance = <TemperatureInterval as Div<HeatFluxDensity>>::Output;

/// An insulance from m²·K/W.
#[must_use]
pub fn insulance(m2_k_w: f64) -> Insulance {
    kelvins(m2_k_w) / HeatFluxDensity::new::<watt_per_square_meter>(1.0)
}

/// How much warmer `a` is than `b`; negative when it is colder.
///
/// ```
/// use winterseam::units::warmer_by;
/// use uom::si::f64::ThermodynamicTemperature;
/// use uom::si::{temperature_interval, thermodynamic_temperature::degree_fahrenheit};
///
/// let room = ThermodynamicTemperature::new::<degree_fahrenheit>(70.0);
/// let outdoors = ThermodynamicTemperature::new::<degree_fahrenheit>(20.0);
/// let apart = warmer_by(room, outdoors).get::<temperature_interval::degree_fahrenheit>();
/// assert!((apart - 50.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn warmer_by(a: ThermodynamicTemperature, b: ThermodynamicTemperature) -> TemperatureInterval {
    kelvins(in_kelvin(a) - in_kelvin(b))
}

/// Heat that flows through a conductance between two places that far apart in temperature.
#[must_use]
pub fn conducted(through: ThermalConductance, apart: TemperatureInterval) -> Power {
    through * apart
}

/// Heat that a flow of air or water carries for each difference in temperature.
#[must_use]
pub fn carried(
    flow: VolumeRate,
    density: MassDensity,
    heat_capacity: SpecificHeatCapacity,
    apart: TemperatureInterval,
) -> Power {
    flow * density * heat_capacity * apart
}

/// A temperature in kelvin, for use inside a kernel.
pub(crate) fn in_kelvin(t: ThermodynamicTemperature) -> f64 {
    t.get::<thermodynamic_temperature::kelvin>()
}

/// A temperature in degrees Celsius, for use inside a kernel.
pub(crate) fn in_celsius(t: ThermodynamicTemperature) -> f64 {
    in_kelvin(t) - 273.15
}

/// A temperature in degrees Fahrenheit, for tables kept in it.
pub(crate) fn in_fahrenheit(t: ThermodynamicTemperature) -> f64 {
    in_celsius(t) * 1.8 + 32.0
}

/// A temperature from degrees Celsius.
#[must_use]
pub fn celsius(t: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<thermodynamic_temperature::kelvin>(t + 273.15)
}

/// A temperature from degrees Fahrenheit.
#[must_use]
pub fn fahrenheit(t: f64) -> ThermodynamicTemperature {
    celsius((t - 32.0) / 1.8)
}

/// A difference of temperatures from kelvins.
#[must_use]
pub fn kelvins(dt: f64) -> TemperatureInterval {
    TemperatureInterval::new::<temperature_interval::kelvin>(dt)
}
