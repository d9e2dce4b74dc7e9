//! Openings one behind another.

use uom::si::area::square_meter;
use uom::si::f64::Area;

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
