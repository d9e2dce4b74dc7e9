//! How much warmer air leaves a furnace than it came, and what that tells of its flow.

use crate::math::pow;
use crate::properties::air::heat_capacity;
use uom::si::f64::{Length, MassDensity, Power, Ratio, TemperatureInterval, VolumeRate};
use uom::si::length::foot;
use uom::si::ratio::ratio;

/// Rise of air that passes a furnace.
///
/// # Equation
/// ```text
/// ΔT = P ÷ (ρ · c · Q)
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `ΔT` | rise | K | returned |
/// | `P` | heat that the furnace gives | W | `output` |
/// | `ρ`, `c` | density and heat capacity of air | kg/m³, J/(kg·K) | `density` |
/// | `Q` | air through it | m³/s | `flow` |
///
/// # Source
/// [`RISE_TABLES`](crate::sources::ducts::RISE_TABLES)
///
/// # Valid for
/// A furnace that has run for ten minutes.
///
/// # Leaves out
/// What the cabinet gives off; the glow that a thermometer near the exchanger sees.
///
/// # Examples
/// ```
/// use uom::si::f64::{MassDensity, Power, VolumeRate};
/// use uom::si::mass_density::kilogram_per_cubic_meter;
/// use uom::si::temperature_interval::degree_fahrenheit;
/// use winterseam::ducts::rise;
/// use winterseam::units::{power::btu_per_hour, volume_rate::cfm};
///
/// let sea = MassDensity::new::<kilogram_per_cubic_meter>(1.2014);
/// let output = Power::new::<btu_per_hour>(45_000.0);
/// let hot = rise(output, VolumeRate::new::<cfm>(694.4), sea);
/// assert!((hot.get::<degree_fahrenheit>() - 60.0).abs() < 0.2);
/// ```
#[must_use]
pub fn rise(output: Power, flow: VolumeRate, density: MassDensity) -> TemperatureInterval {
    output / (density * heat_capacity() * flow)
}

/// Air that passes a furnace of this output with this rise: [`rise`] turned round.
///
/// # Equation
/// ```text
/// Q = P ÷ (ρ · c · ΔT)
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `Q` | air through it | m³/s | returned |
/// | `P` | heat that the furnace gives | W | `output` |
/// | `ΔT` | rise | K | `rise` |
/// | `ρ`, `c` | density and heat capacity of air | kg/m³, J/(kg·K) | `density` |
///
/// # Source
/// [`RISE_TABLES`](crate::sources::ducts::RISE_TABLES)
///
/// # Valid for
/// A rise above zero, after ten minutes.
///
/// # Leaves out
/// A burner that gives less than its label says.
///
/// # Examples
/// ```
/// use uom::si::f64::{MassDensity, Power, TemperatureInterval};
/// use uom::si::mass_density::kilogram_per_cubic_meter;
/// use uom::si::temperature_interval::degree_fahrenheit;
/// use winterseam::ducts::flow_of_rise;
/// use winterseam::units::{power::btu_per_hour, volume_rate::cfm};
///
/// let sea = MassDensity::new::<kilogram_per_cubic_meter>(1.2014);
/// let rise = TemperatureInterval::new::<degree_fahrenheit>(60.0);
/// let flow = flow_of_rise(Power::new::<btu_per_hour>(45_000.0), rise, sea);
/// assert!((flow.get::<cfm>() - 694.4).abs() < 2.0);
/// ```
#[must_use]
pub fn flow_of_rise(output: Power, rise: TemperatureInterval, density: MassDensity) -> VolumeRate {
    output / (density * heat_capacity() * rise)
}

/// How makers and codes take the output of gas burners down with height.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Derating {
    /// Each 1,000 ft takes 4 % of what the last one left: a furnace for manufactured homes.
    PowerOf96,
    /// Each 1,000 ft takes 2 %: another maker.
    TwoPercent,
    /// Each 1,000 ft above 2,000 ft takes 4 %: the fuel gas code, from memory.
    FourAboveTwoThousand,
}

/// Share of its output that a gas furnace keeps at a height. The rules disagree and stand side by
/// side; electric furnaces keep all.
///
/// # Equation
/// ```text
/// s = 0.96^h; 1 − 0.02·h; 1 − 0.04·max(0, h − 2)
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `s` | share kept | – | returned |
/// | `h` | height above the sea | 1,000 ft | `height` |
///
/// # Source
/// [`FURNACE_ALTITUDE`](crate::sources::ducts::FURNACE_ALTITUDE)
///
/// # Valid for
/// 0 to 10,000 ft.
///
/// # Leaves out
/// Orifices that somebody changed for the height.
///
/// # Examples
/// ```
/// use uom::si::{f64::Length, length::foot, ratio::percent};
/// use winterseam::ducts::{Derating, kept_at};
///
/// let high = Length::new::<foot>(5000.0);
/// assert!((kept_at(high, Derating::PowerOf96).get::<percent>() - 81.5).abs() < 0.1);
/// assert!((kept_at(high, Derating::TwoPercent).get::<percent>() - 90.0).abs() < 0.1);
/// ```
#[must_use]
pub fn kept_at(height: Length, rule: Derating) -> Ratio {
    let thousands = (height.get::<foot>() / 1000.0).max(0.0);
    Ratio::new::<ratio>(match rule {
        Derating::PowerOf96 => pow(0.96, thousands),
        Derating::TwoPercent => (1.0 - 0.02 * thousands).max(0.0),
        Derating::FourAboveTwoThousand => (1.0 - 0.04 * (thousands - 2.0).max(0.0)).clamp(0.0, 1.0),
    })
}
