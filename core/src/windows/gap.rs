//! How the air between two panes carries heat.

use crate::math;
use uom::si::f64::{HeatTransfer, Length, TemperatureInterval};
use uom::si::heat_transfer::watt_per_square_meter_kelvin;
use uom::si::length::meter;
use uom::si::temperature_interval::kelvin;

/// Mean temperature of the gap, K.
const MEAN_K: f64 = 283.0;
/// Emissivity of plain glass.
const GLASS: f64 = 0.837;
const STEFAN_BOLTZMANN: f64 = 5.67e-8;
const GRAVITY: f64 = 9.81;

/// Air at 10 °C, by the standard: kg/m³, Pa·s, W/(m·K), J/(kg·K).
const DENSITY: f64 = 1.232;
const VISCOSITY: f64 = 1.761e-5;
const CONDUCTIVITY: f64 = 0.02496;
const HEAT_CAPACITY: f64 = 1008.0;

/// Shape of the correlation for upright gaps.
const FACTOR: f64 = 0.035;
const EXPONENT: f64 = 0.38;

/// Heat that an upright gap between plain panes carries for each area and kelvin.
///
/// # Equation
/// ```text
/// h = 4·σ·T³ ÷ (2 ÷ ε − 1) + Nu · λ ÷ s, Nu = max(1, 0.035 · (Gr · Pr)^0.38),
/// Gr = 9.81 · s³ · ΔT · ρ² ÷ (T · μ²), Pr = μ · c ÷ λ
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `h` | radiation and convection | W/(m²·K) | returned |
/// | `s` | width of the gap | m | `width` |
/// | `ΔT` | between the panes | K | `apart` |
/// | `T` | mean, 283 K | K | `MEAN_K` |
/// | `ε` | emissivity of both panes, 0.837 | – | `GLASS` |
/// | `σ` | radiation constant | W/(m²·K⁴) | `STEFAN_BOLTZMANN` |
/// | `ρ`, `μ`, `λ`, `c` | air at 10 °C | kg/m³, Pa·s, W/(m·K), J/(kg·K) | `DENSITY` and the next |
///
/// # Source
/// [`EN_673`](crate::sources::windows::EN_673)
///
/// # Valid for
/// Upright windows without coating. Beyond some 15 mm a wider gap changes next to nothing.
///
/// # Leaves out
/// The frame and its edge; air that leaks through the gap.
///
/// # Examples
/// ```
/// use winterseam::windows::gap_conductance;
/// use winterseam::units::kelvins;
/// use uom::si::{f64::Length, length::millimeter, heat_transfer::watt_per_square_meter_kelvin};
///
/// let h = gap_conductance(Length::new::<millimeter>(12.0), kelvins(15.0));
/// assert!((h.get::<watt_per_square_meter_kelvin>() - 5.78).abs() < 0.01);
/// ```
#[must_use]
pub fn gap_conductance(width: Length, apart: TemperatureInterval) -> HeatTransfer {
    let (s, apart) = (width.get::<meter>(), apart.get::<kelvin>().abs());
    let radiation = 4.0 * STEFAN_BOLTZMANN * MEAN_K * MEAN_K * MEAN_K / (2.0 / GLASS - 1.0);
    let grashof =
        GRAVITY * s * s * s * apart * DENSITY * DENSITY / (MEAN_K * VISCOSITY * VISCOSITY);
    let prandtl = VISCOSITY * HEAT_CAPACITY / CONDUCTIVITY;
    let nusselt = (FACTOR * math::pow(grashof * prandtl, EXPONENT)).max(1.0);
    HeatTransfer::new::<watt_per_square_meter_kelvin>(radiation + nusselt * CONDUCTIVITY / s)
}
