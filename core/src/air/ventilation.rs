//! The fresh air that a home needs.

use crate::sources::air::HANDBOOK_2021_CH17;
use crate::sources::{Confidence, Figure};
use uom::si::f64::{Area, VolumeRate};
use uom::si::{area::square_meter, volume_rate::liter_per_second};

/// Fresh air that a whole home needs, from leaks and fans together.
///
/// # Equation
///
/// Q = 0.15 · A + 3.5 · (N + 1)
///
/// # Symbols
///
/// | symbol | meaning                    | unit | in code      |
/// |--------|----------------------------|------|--------------|
/// | Q      | fresh air                  | L/s  | return value |
/// | A      | area of the floor          | m²   | `floor`      |
/// | N      | rooms meant for sleeping   | –    | `bedrooms`   |
///
/// # Source
///
/// [`HANDBOOK_2021_CH17`]
///
/// # Valid for
///
/// Homes in which one person more lives than there are bedrooms; the rule since 2013. It is a
/// rule, so it has no range.
///
/// # Leaves out
///
/// More people than that (3.5 L/s each), and fans in kitchen and bath. The form in inches and
/// pounds is rounded apart and asks for 1.4 % more; the rule before 2013 for a third as much for
/// the floor.
///
/// # Examples
///
/// ```
/// use uom::si::{area::square_meter, f64::Area, volume_rate::liter_per_second};
/// use winterseam::air::ventilation::need;
///
/// let fresh = need(Area::new::<square_meter>(80.0), 3);
/// assert!((fresh.best.get::<liter_per_second>() - 26.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn need(floor: Area, bedrooms: u8) -> Figure<VolumeRate> {
    let people = f64::from(bedrooms) + 1.0;
    let flow = 0.15 * floor.get::<square_meter>() + 3.5 * people;
    let flow = VolumeRate::new::<liter_per_second>(flow);
    Figure::exact(flow, Confidence::Measured, &[&HANDBOOK_2021_CH17])
}
