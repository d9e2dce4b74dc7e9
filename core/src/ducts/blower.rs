//! How much air a blower moves against a pressure.

use crate::math::line;
use crate::units::pressure::inch_of_water;
use crate::units::volume_rate::cfm;
use uom::si::f64::{MassDensity, Pressure, VolumeRate};
use uom::si::mass_density::kilogram_per_cubic_meter;

/// Density that the tables of makers hold for, kg/m³: 0.075 lb/ft³.
const STANDARD: f64 = 1.201_4;

/// Density of air over that of the tables.
pub(super) fn over_standard(density: MassDensity) -> f64 {
    density.get::<kilogram_per_cubic_meter>() / STANDARD
}

/// A blower by what its motor holds on to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Blower {
    /// Its speed: the usual blower of older furnaces, on one of its taps.
    ConstantSpeed(Tap),
    /// Its torque.
    ConstantTorque,
    /// The flow itself, at the price of power.
    ConstantFlow(VolumeRate),
}

/// The tap that the fan is wired to, of a blower of a third of a horsepower.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Tap {
    /// Low.
    Low,
    /// Medium: heating, most often.
    Medium,
    /// High: cooling, most often.
    High,
}

/// Flow in cfm at 0.1, 0.2 … inches of water; [`BLOWER_TABLES`](crate::sources::ducts::BLOWER_TABLES).
const LOW: &[f64] = &[875., 835., 820., 805., 780., 770., 760., 750.];
const MEDIUM: &[f64] = &[1140., 1090., 1060., 1030., 980., 950., 910., 870.];
const HIGH: &[f64] = &[1280., 1210., 1180., 1140., 1090., 1070., 1030., 990.];
const TORQUE: &[f64] = &[1160., 1120., 1070., 1020., 965., 905., 835., 765., 695., 630.];
/// Beyond its table a blower is taken to give out along the last step, and no blower pushes against
/// more than this, inches of water: judgement.
const GIVES_OUT: f64 = 2.0;

/// Air that a blower moves against a pressure.
///
/// # Equation
/// ```text
/// Q = Q₀(Δp · ρ₀ ÷ ρ), Q₀ by straight lines through the table
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `Q` | air moved | m³/s | returned |
/// | `Δp` | pressure that filter, coil, ducts and registers hold against it | Pa | `against` |
/// | `ρ`, `ρ₀` | density of the air, and that of the tables | kg/m³ | `density`, `STANDARD` |
///
/// # Source
/// [`BLOWER_TABLES`](crate::sources::ducts::BLOWER_TABLES),
/// [`FAN_LAWS`](crate::sources::ducts::FAN_LAWS)
///
/// # Valid for
/// 0.1 to 0.8 inches of water, for torque to 1.0; beyond by the last step of the table.
///
/// # Leaves out
/// Dust on the blades: [`System::dust`](super::System).
///
/// # Examples
/// ```
/// use uom::si::f64::{MassDensity, Pressure};
/// use uom::si::mass_density::kilogram_per_cubic_meter;
/// use winterseam::ducts::{Blower, Tap, moved};
/// use winterseam::units::{pressure::inch_of_water, volume_rate::cfm};
///
/// let sea = MassDensity::new::<kilogram_per_cubic_meter>(1.2014);
/// let flow = moved(Blower::ConstantSpeed(Tap::Medium), Pressure::new::<inch_of_water>(0.4), sea);
/// assert!((flow.get::<cfm>() - 1030.0).abs() < 1e-6);
/// ```
#[must_use]
pub fn moved(blower: Blower, against: Pressure, density: MassDensity) -> VolumeRate {
    let thinner = 1.0 / over_standard(density);
    let inches = against.get::<inch_of_water>() * thinner;
    let table = match blower {
        Blower::ConstantSpeed(Tap::Low) => LOW,
        Blower::ConstantSpeed(Tap::Medium) => MEDIUM,
        Blower::ConstantSpeed(Tap::High) => HIGH,
        Blower::ConstantTorque => TORQUE,
        Blower::ConstantFlow(held) => return held_up_to(held, inches),
    };
    VolumeRate::new::<cfm>(between(table, inches).max(0.0))
}

/// A flow is held as long as the motor has power, and then gives out.
fn held_up_to(held: VolumeRate, inches: f64) -> VolumeRate {
    const POWER_ENDS: f64 = 0.8;
    held * line(inches.max(POWER_ENDS), (POWER_ENDS, 1.0), (GIVES_OUT, 0.0)).max(0.0)
}

/// A table of every tenth of an inch from the first on.
fn between(table: &[f64], inches: f64) -> f64 {
    let place = (inches * 10.0 - 1.0).clamp(0.0, 1e3);
    let last = table.len() - 2;
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "0 to 1,000")]
    let from = (place as usize).min(last);
    let (least, most) = (table[from], table[from + 1]);
    #[expect(clippy::cast_precision_loss, reason = "a handful")]
    let share = inches * 10.0 - 1.0 - from as f64;
    least + (most - least) * share
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn more_pressure_is_never_more_air_and_nothing_is_blown_backwards() {
        let density = MassDensity::new::<kilogram_per_cubic_meter>(1.0);
        let held = Blower::ConstantFlow(VolumeRate::new::<cfm>(1000.0));
        let speed = Blower::ConstantSpeed;
        for blower in [held, Blower::ConstantTorque, speed(Tap::Low), speed(Tap::High)] {
            let at = |tenths: u8| {
                let against = Pressure::new::<inch_of_water>(f64::from(tenths) / 10.0);
                moved(blower, against, density).get::<cfm>()
            };
            let flows: Vec<f64> = (0..60).map(at).collect();
            assert!(flows.is_sorted_by(|a, b| a >= b), "{flows:?}");
            assert!(flows.iter().all(|flow| *flow >= 0.0));
        }
    }
}
