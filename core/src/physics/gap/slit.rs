//! The shape of a gap.

use std::ops::RangeInclusive;
use uom::si::f64::{Length, Ratio};
use uom::si::{length::meter, ratio::ratio};

/// Loss at the mouth and the end of a deep straight slit, in velocity heads;
/// [`CRACK_FLOW_1987`](crate::sources::air::CRACK_FLOW_1987).
const STRAIGHT_LOSS: f64 = 1.5;

/// What a sharp edge adds to it; [`CRACK_EDGE`](crate::sources::air::CRACK_EDGE).
const EDGE_LOSS: f64 = 1.28;

/// Widths of depth after which the edge no longer shows;
/// [`CRACK_EDGE`](crate::sources::air::CRACK_EDGE).
const EDGE_WIDTHS: f64 = 5.0;

/// Lengths that a [`Slit`] may have, m; a width or depth of zero is a closed slit, a sharp edge.
pub const SLIT_METRES: RangeInclusive<f64> = 0.0..=1000.0;

/// A gap of one width all along.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Slit {
    pub(super) length: Length,
    pub(super) width: Length,
    pub(super) depth: Length,
    bends: u8,
}

impl Slit {
    /// A slit so long along the gap, so wide where it is seen, so deep on the way the air takes,
    /// with so many corners on that way; `None` when a length is outside [`SLIT_METRES`].
    #[must_use]
    pub fn new(length: Length, width: Length, depth: Length, bends: u8) -> Option<Self> {
        [length, width, depth]
            .iter()
            .all(|side| SLIT_METRES.contains(&side.get::<meter>()))
            .then_some(Self { length, width, depth, bends })
    }
}

/// What a slit takes from the flow beside friction, in velocity heads.
///
/// # Equation
///
/// C = 1.5 + N + 1.28 · max(0, 1 − z / (5 · d))
///
/// # Symbols
///
/// | symbol | meaning               | unit | in code      |
/// |--------|-----------------------|------|--------------|
/// | C      | loss coefficient      | –    | return value |
/// | N      | corners               | –    | `slit.bends` |
/// | z      | way of the air        | m    | `slit.depth` |
/// | d      | opening seen          | m    | `slit.width` |
///
/// # Source
///
/// [`CRACK_FLOW_1987`](crate::sources::air::CRACK_FLOW_1987) for 1.5 and the corners,
/// [`CRACK_EDGE`](crate::sources::air::CRACK_EDGE) for the sharp edge, which makes the law end at
/// the orifice of [`HANDBOOK_2021_CH16_ORIFICE`](crate::sources::air::HANDBOOK_2021_CH16_ORIFICE).
///
/// # Valid for
///
/// Every [`Slit`].
///
/// # Leaves out
///
/// Corners measured elsewhere cost 1.2 to 2.0 heads each: a gap with bends leaks a little less. A
/// sharp edge leaks less than a slit some widths deep, because its jet does not fill the opening.
///
/// # Examples
///
/// ```
/// use uom::si::{f64::Length, length::millimeter, ratio::ratio};
/// use winterseam::physics::gap::{Slit, loss_coefficient};
///
/// let mm = Length::new::<millimeter>;
/// let sharp = Slit::new(mm(1000.0), mm(10.0), mm(0.0), 0).unwrap();
/// let deep = Slit::new(mm(1000.0), mm(10.0), mm(50.0), 1).unwrap();
/// assert!((loss_coefficient(&sharp).get::<ratio>() - 2.78).abs() < 1e-12);
/// assert!((loss_coefficient(&deep).get::<ratio>() - 2.5).abs() < 1e-12);
/// ```
#[must_use]
pub fn loss_coefficient(slit: &Slit) -> Ratio {
    let (z, d) = (slit.depth.get::<meter>(), slit.width.get::<meter>());
    let edge = if z < EDGE_WIDTHS * d { EDGE_LOSS * (1.0 - z / (EDGE_WIDTHS * d)) } else { 0.0 };
    Ratio::new::<ratio>(STRAIGHT_LOSS + f64::from(slit.bends) + edge)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn slit(length: f64, width: f64, depth: f64) -> Option<Slit> {
        let m = Length::new::<meter>;
        Slit::new(m(length), m(width), m(depth), 0)
    }

    #[test]
    fn a_slit_that_cannot_be_is_refused() {
        for bad in [-0.001, f64::NAN, f64::INFINITY] {
            assert_eq!(slit(bad, 0.01, 0.02), None);
            assert_eq!(slit(1.0, bad, 0.02), None);
            assert_eq!(slit(1.0, 0.01, bad), None);
        }
    }
}
