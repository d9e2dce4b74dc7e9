//! Openings, alone and one behind another.

use crate::math;
use uom::si::area::square_meter;
use uom::si::f64::{Area, MassDensity, Pressure, Velocity, VolumeRate};
use uom::si::velocity::meter_per_second;

/// What is left of a jet behind a sharp edge.
const CONTRACTS: f64 = 0.6;

/// The single opening that lets as much air through as two, one behind the other.
///
/// # Equation
///
/// A = (A₁⁻² + A₂⁻²)^−½
///
/// # Symbols
///
/// | symbol | meaning          | unit | in code      |
/// |--------|------------------|------|--------------|
/// | A      | area of the pair | m²   | return value |
/// | A₁     | one opening      | m²   | `one`        |
/// | A₂     | the other        | m²   | `other`      |
///
/// # Source
///
/// [`HANDBOOK_2021_CH16_ORIFICE`](crate::sources::air::HANDBOOK_2021_CH16_ORIFICE): the flow of
/// each goes with the root of its own share of the pressure, and both flows are the same.
///
/// # Valid for
///
/// Openings whose flow goes with the root of the pressure. Three in a row are two pairs.
///
/// # Leaves out
///
/// Narrow cracks, whose flow goes with a higher power: the true area is then a little smaller.
///
/// # Examples
///
/// A gap of 20 cm² into a belly that leaks through 15 cm²:
///
/// ```
/// use uom::si::{area::square_centimeter, f64::Area};
/// use winterseam::physics::openings::in_series;
///
/// let area = Area::new::<square_centimeter>;
/// assert!((in_series(area(20.0), area(15.0)) - area(12.0)).abs() < area(1e-9));
/// ```
#[must_use]
pub fn in_series(one: Area, other: Area) -> Area {
    let (a, b) = (one.get::<square_meter>(), other.get::<square_meter>());
    // A closed opening, 1/0, closes the pair.
    Area::new::<square_meter>((1.0 / (a * a) + 1.0 / (b * b)).sqrt().recip())
}

/// Air that a pressure drives through a sharp opening.
///
/// # Equation
///
/// Q = C · A · √(2 · Δp / ρ)
///
/// # Symbols
///
/// | symbol | meaning                       | unit  | in code      |
/// |--------|-------------------------------|-------|--------------|
/// | Q      | air through it                | m³/s  | return value |
/// | C      | contraction of the jet, 0.6   | –     | `CONTRACTS`  |
/// | A      | opening                       | m²    | `area`       |
/// | Δp     | pressure across it            | Pa    | `across`     |
/// | ρ      | density of the air            | kg/m³ | `density`    |
///
/// # Source
///
/// [`HANDBOOK_2021_CH16_ORIFICE`](crate::sources::air::HANDBOOK_2021_CH16_ORIFICE)
///
/// # Valid for
///
/// Openings wider than their wall is thick; a pressure from the other side drives as much back.
///
/// # Leaves out
///
/// Narrow cracks: [`flow`](super::gap::flow).
///
/// # Examples
///
/// ```
/// use uom::si::f64::{Area, MassDensity, Pressure};
/// use uom::si::{area::square_centimeter, mass_density::kilogram_per_cubic_meter};
/// use uom::si::{pressure::pascal, volume_rate::liter_per_second};
/// use winterseam::physics::openings::through;
///
/// let density = MassDensity::new::<kilogram_per_cubic_meter>(1.2);
/// let area = Area::new::<square_centimeter>(1.0);
/// let flow = through(area, Pressure::new::<pascal>(25.0), density);
/// assert!((flow.get::<liter_per_second>() - 0.387).abs() < 0.001);
/// ```
#[must_use]
pub fn through(area: Area, across: Pressure, density: MassDensity) -> VolumeRate {
    let speed = math::sqrt(2.0 * (across / density).value.abs());
    let speed = Velocity::new::<meter_per_second>(speed.copysign(across.value));
    CONTRACTS * area * speed
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_closed_opening_closes_the_series() {
        let closed = Area::new::<square_meter>(0.0);
        assert_eq!(in_series(Area::new::<square_meter>(0.3), closed), closed);
        assert_eq!(in_series(closed, closed), closed);
    }
}
