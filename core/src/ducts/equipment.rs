//! Cooling machines and heat pumps at other flows and temperatures than those of their label.

use crate::units::in_fahrenheit;
use uom::si::f64::{Ratio, ThermodynamicTemperature};
use uom::si::ratio::ratio;

/// Capacity and efficiency over those of the label.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OfLabel {
    /// Heat or cold over that of the label.
    pub capacity: Ratio,
    /// Heat or cold for each unit of power over that of the label.
    pub efficiency: Ratio,
}

/// What a machine does.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Does {
    /// It cools.
    Cooling,
    /// It heats.
    Heating,
}

/// Quadratics of the share of the label's flow: capacity, energy input.
const COOLING: [[f64; 3]; 2] =
    [[0.718_605_468, 0.410_099_989, -0.128_705_457], [1.322_999_05, -0.477_711_207, 0.154_712_157]];
const HEATING: [[f64; 3]; 2] = [
    [0.694_045_465, 0.474_207_981, -0.168_253_446],
    [2.185_418_751, -1.942_827_919, 0.757_409_168],
];
/// Biquadratics of indoor and outdoor °F: 1, x, x², y, y², xy. Copies of these wander; the last
/// number of the capacity is −0.00000675.
const HEATING_CAPACITY: [f64; 6] =
    [0.566_333_415, -0.000_744_164, -0.000_010_3, 0.009_414_634, 0.000_050_6, -0.000_006_75];
const HEATING_INPUT: [f64; 6] =
    [0.718_398_423, 0.003_498_178, 0.000_142_202, -0.005_724_331, 0.000_140_85, -0.000_215_321];
/// Where heat pumps are rated, °F indoors and outdoors.
const RATED_F: (f64, f64) = (70.0, 47.0);

/// A machine with another flow than its label's.
///
/// # Equation
/// ```text
/// c = a₀ + a₁·f + a₂·f²,  i = b₀ + b₁·f + b₂·f²,  e = 1 ÷ i
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `c`, `e` | capacity, efficiency over the label's | – | `capacity`, `efficiency` |
/// | `f` | flow over the label's | – | `flow` |
///
/// # Source
/// [`EQUIPMENT_CURVES`](crate::sources::ducts::EQUIPMENT_CURVES)
///
/// # Valid for
/// 0.75 to 1.25 of the flow; below that an extrapolation.
///
/// # Leaves out
/// A coil that freezes over.
///
/// # Examples
/// ```
/// use uom::si::{f64::Ratio, ratio::percent};
/// use winterseam::ducts::{Does, at_flow};
///
/// let short = at_flow(Does::Cooling, Ratio::new::<percent>(80.0));
/// assert!((short.capacity.get::<percent>() - 96.4).abs() < 0.1);
/// ```
#[must_use]
pub fn at_flow(does: Does, flow: Ratio) -> OfLabel {
    let f = flow.get::<ratio>();
    let curve = |[a, b, c]: [f64; 3]| a + b * f + c * f * f;
    let [capacity, input] = match does {
        Does::Cooling => COOLING,
        Does::Heating => HEATING,
    };
    OfLabel {
        capacity: Ratio::new::<ratio>(curve(capacity)),
        efficiency: Ratio::new::<ratio>(1.0 / curve(input)),
    }
}

/// A heat pump with other temperatures than at its rating of 47 °F outdoors.
///
/// # Equation
/// ```text
/// q(x, y) = a₀ + a₁·x + a₂·x² + a₃·y + a₄·y² + a₅·x·y,  c = q(x, y) ÷ q(70, 47)
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `c` | capacity over that at the rating; likewise the input, and the efficiency is one over it | – | `capacity`, `efficiency` |
/// | `x`, `y` | indoors, outdoors | °F | `indoor`, `outdoor` |
///
/// # Source
/// [`EQUIPMENT_CURVES`](crate::sources::ducts::EQUIPMENT_CURVES)
///
/// # Valid for
/// Outdoors 0 to 60 °F.
///
/// # Leaves out
/// Frost on the coil, which takes about a tenth between 20 and 40 °F (from memory).
///
/// # Examples
/// ```
/// use uom::si::ratio::percent;
/// use winterseam::{ducts::heat_pump_at, units::fahrenheit};
///
/// let cold = heat_pump_at(fahrenheit(70.0), fahrenheit(17.0));
/// assert!((cold.capacity.get::<percent>() - 63.3).abs() < 0.1);
/// ```
#[must_use]
pub fn heat_pump_at(
    indoor: ThermodynamicTemperature,
    outdoor: ThermodynamicTemperature,
) -> OfLabel {
    let at = (in_fahrenheit(indoor), in_fahrenheit(outdoor));
    let of_rated = |curve| surface(curve, at) / surface(curve, RATED_F);
    OfLabel {
        capacity: Ratio::new::<ratio>(of_rated(&HEATING_CAPACITY)),
        efficiency: Ratio::new::<ratio>(1.0 / of_rated(&HEATING_INPUT)),
    }
}

fn surface([c, x1, x2, y1, y2, xy]: &[f64; 6], (x, y): (f64, f64)) -> f64 {
    c + x1 * x + x2 * x * x + y1 * y + y2 * y * y + xy * x * y
}

/// Efficiency of a heat pump and its auxiliary heat together.
///
/// # Equation
/// ```text
/// e = 1 ÷ (s ÷ p + 1 − s), s = 1 ÷ max(1, n)
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `e` | heat for each unit of power, both together | – | returned |
/// | `p` | the same of the pump alone | – | `pump` |
/// | `n` | need over what the pump can give | – | `need_over_capacity` |
/// | `s` | share of the need that the pump gives | – | `by_pump` |
///
/// # Source
/// [`EQUIPMENT_CURVES`](crate::sources::ducts::EQUIPMENT_CURVES) for `p`; the rest is a balance.
///
/// # Valid for
/// A pump that runs along with its auxiliary heat.
///
/// # Leaves out
/// Auxiliary heat that a thermostat calls for too early.
///
/// # Examples
/// ```
/// use uom::si::{f64::Ratio, ratio::ratio};
/// use winterseam::ducts::with_auxiliary;
///
/// let of = |x| Ratio::new::<ratio>(x);
/// // Half by a pump of 2, half by resistance: one unit of heat for 0.75 of power.
/// assert!((with_auxiliary(of(2.0), of(2.0)).value - 1.0 / 0.75).abs() < 1e-12);
/// assert_eq!(with_auxiliary(of(2.0), of(0.5)), of(2.0));
/// ```
#[must_use]
pub fn with_auxiliary(pump: Ratio, need_over_capacity: Ratio) -> Ratio {
    let by_pump = 1.0 / need_over_capacity.get::<ratio>().max(1.0);
    Ratio::new::<ratio>(1.0 / (by_pump / pump.get::<ratio>() + 1.0 - by_pump))
}
