//! How much of the heat of sun, people and appliances spares heating.

use crate::math;
use uom::si::f64::{Area, HeatCapacity, Ratio, ThermalConductance, Time};
use uom::si::{area::square_meter, heat_capacity::kilojoule_per_kelvin, ratio::ratio, time::hour};

/// Heat that a very light building stores for each square metre of floor, kJ/(K·m²).
const VERY_LIGHT: f64 = 80.0;
/// Reference of the monthly method, h.
const REFERENCE_H: f64 = 15.0;

/// Share of the gains of a month that spares heating.
///
/// # Equation
/// ```text
/// η = (1 − γ^a) ÷ (1 − γ^(a + 1)); a ÷ (a + 1) where γ = 1; 1 ÷ γ where γ < 0
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `η` | share that spares heating | – | returned |
/// | `γ` | gains over losses of the month | – | `gains_over_losses` |
/// | `a` | how long the home holds heat, [`inertia`] | – | `inertia` |
///
/// # Source
/// [`ISO_13790`](crate::sources::envelope::ISO_13790)
///
/// # Valid for
/// Months that are heated day and night. With the little that such a home stores, an hourly count
/// differs by 10 to 20 % in mild winters.
///
/// # Leaves out
/// Nights at a lower setting.
///
/// # Examples
/// ```
/// use winterseam::envelope::utilisation;
/// use uom::si::{f64::Ratio, ratio::ratio};
///
/// let share = |gamma| utilisation(Ratio::new::<ratio>(gamma), Ratio::new::<ratio>(2.0));
/// assert!((share(1.0).get::<ratio>() - 2.0 / 3.0).abs() < 1e-12);
/// assert!(share(0.1) > share(0.5));
/// ```
#[must_use]
pub fn utilisation(gains_over_losses: Ratio, inertia: Ratio) -> Ratio {
    /// So near to one the quotient is nothing by nothing.
    const AT_ONE: f64 = 1e-6;
    let (gamma, a) = (gains_over_losses.get::<ratio>(), inertia.get::<ratio>());
    Ratio::new::<ratio>(match gamma {
        _ if gamma < 0.0 => 1.0 / gamma,
        _ if (gamma - 1.0).abs() < AT_ONE => a / (a + 1.0),
        _ if gamma > 1.0 => above_one(1.0 / gamma, a),
        _ => (1.0 - math::pow(gamma, a)) / (1.0 - math::pow(gamma, a + 1.0)),
    })
}

/// The same quotient with losses over gains, in which nothing grows beyond what a number holds.
fn above_one(losses_over_gains: f64, a: f64) -> f64 {
    let shrunk = math::pow(losses_over_gains, a);
    losses_over_gains * (1.0 - shrunk) / (1.0 - losses_over_gains * shrunk)
}

/// How long a home holds heat, as the monthly method counts it.
///
/// # Equation
/// ```text
/// a = 1 + τ ÷ 15 h, τ = C ÷ K
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `a` | parameter of [`utilisation`] | – | returned |
/// | `τ` | [`time_constant`] | h | `time_constant` |
///
/// # Source
/// [`ISO_13790`](crate::sources::envelope::ISO_13790)
///
/// # Valid for
/// Homes of thin boards on a light frame.
///
/// # Leaves out
/// Furniture.
///
/// # Examples
/// ```
/// use winterseam::envelope::inertia;
/// use uom::si::f64::{Area, ThermalConductance};
/// use uom::si::{area::square_meter, ratio::ratio, thermal_conductance::watt_per_kelvin};
///
/// let loses = ThermalConductance::new::<watt_per_kelvin>(160.0);
/// let a = inertia(Area::new::<square_meter>(86.0), loses);
/// assert!((a.get::<ratio>() - 1.80).abs() < 0.005);
/// ```
#[must_use]
pub fn inertia(floor: Area, loses: ThermalConductance) -> Ratio {
    let hours = time_constant(floor, loses).get::<hour>();
    Ratio::new::<ratio>(1.0 + hours / REFERENCE_H)
}

/// Time in which a home would lose all but 1 ÷ e of its heat.
///
/// # Equation
/// ```text
/// τ = c · A ÷ K
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `τ` | time | s | returned |
/// | `c` | of a very light building, 80 | kJ/(K·m²) | `VERY_LIGHT` |
/// | `A` | floor | m² | `floor` |
/// | `K` | all that the home loses for each degree | W/K | `loses` |
///
/// # Source
/// [`ISO_13790`](crate::sources::envelope::ISO_13790)
///
/// # Valid for
/// Homes that lose heat: `loses` above zero.
///
/// # Leaves out
/// Furniture.
///
/// # Examples
/// ```
/// use winterseam::envelope::time_constant;
/// use uom::si::f64::{Area, ThermalConductance};
/// use uom::si::{area::square_meter, thermal_conductance::watt_per_kelvin, time::hour};
///
/// let loses = ThermalConductance::new::<watt_per_kelvin>(160.0);
/// let time = time_constant(Area::new::<square_meter>(86.0), loses);
/// assert!((time.get::<hour>() - 11.9).abs() < 0.05);
/// ```
#[must_use]
pub fn time_constant(floor: Area, loses: ThermalConductance) -> Time {
    let stores =
        HeatCapacity::new::<kilojoule_per_kelvin>(VERY_LIGHT * floor.get::<square_meter>());
    stores / loses
}
