//! The bag test: how long a fan or a register takes to fill or to empty a bag of 66 × 91 cm.

use crate::math::{ln, pow};
use crate::sources::air::BAG_TEST;
use crate::sources::{Confidence, Figure};
use crate::units::volume_rate::cfm;
use uom::si::f64::{Time, VolumeRate};
use uom::si::time::second;

/// Seconds and cfm of a bag that fills; [`BAG_TEST`].
const FILLING: [(f64, f64); 3] = [(2.0, 75.0), (4.0, 40.0), (10.0, 20.0)];

/// Seconds and cfm of a bag that empties; [`BAG_TEST`].
const EMPTYING: [(f64, f64); 3] = [(3.0, 75.0), (5.0, 40.0), (11.0, 20.0)];

/// Ends of the bands that a bag can tell apart, cfm. The test is good to 10 or 20 %; finer steps
/// would promise more than a bag knows.
const BANDS: [f64; 5] = [20.0, 30.0, 40.0, 50.0, 75.0];

/// What the air does to the bag.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Direction {
    /// A register blows it up.
    Filling,
    /// A fan sucks it flat.
    Emptying,
}

/// On which side of the figure the flow lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Bound {
    /// Between the published points: the figure is the flow.
    Exact,
    /// Slower than the last point: the flow is at most the figure.
    AtMost,
    /// Faster than the first point: the flow is at least the figure, whose range has no known
    /// upper end.
    AtLeast,
}

/// A flow that was measured with a bag.
#[derive(Debug, Clone, PartialEq)]
pub struct BagFlow {
    /// The flow and its band.
    pub flow: Figure<VolumeRate>,
    /// On which side of the figure the flow lies.
    pub bound: Bound,
}

/// Flow of a register or a fan from the time a bag takes; `None` unless that is positive and
/// finite.
///
/// # Equation
///
/// Q = Q₁ · (Q₂ / Q₁)^(ln(t / t₁) / ln(t₂ / t₁)) between the published points; the end value
/// beyond them
///
/// # Symbols
///
/// | symbol | meaning                               | unit | in code      |
/// |--------|---------------------------------------|------|--------------|
/// | Q      | volume flow                           | cfm  | return value |
/// | t      | time until the bag is full, or flat   | s    | `time`       |
/// | t₁, Q₁ | published point before                | s, cfm | –          |
/// | t₂, Q₂ | published point after                 | s, cfm | –          |
///
/// # Source
///
/// [`BAG_TEST`]
///
/// # Valid for
///
/// A thin bag of 66 × 91 cm held open by a wire. The range is the band of 20, 30, 40, 50, 75 cfm
/// that the flow falls into.
///
/// # Leaves out
///
/// The pressure that the bag itself needs: a weak fan moves a little more than the bag says. The
/// three points are not one volume over time (71, 76, 94 L), which is why they are not replaced
/// by one.
///
/// # Examples
///
/// ```
/// use uom::si::{f64::Time, time::second};
/// use winterseam::ducts::bag::{Bound, Direction, flow};
/// use winterseam::units::volume_rate::cfm;
///
/// let weak = flow(Time::new::<second>(8.0), Direction::Filling).unwrap();
/// assert_eq!(weak.bound, Bound::Exact);
/// assert!((weak.flow.best.get::<cfm>() - 23.7).abs() < 0.05);
///
/// let dead = flow(Time::new::<second>(60.0), Direction::Emptying).unwrap();
/// assert_eq!(dead.bound, Bound::AtMost);
/// ```
#[must_use]
pub fn flow(time: Time, direction: Direction) -> Option<BagFlow> {
    let seconds = time.get::<second>();
    if !(seconds > 0.0 && seconds.is_finite()) {
        return None;
    }
    let points = match direction {
        Direction::Filling => &FILLING,
        Direction::Emptying => &EMPTYING,
    };
    let (best, bound) = between_points(points, seconds);
    let (low, high) = band(best, bound);
    let rate = VolumeRate::new::<cfm>;
    let flow = Figure::exact(rate(best), Confidence::Measured, &[&BAG_TEST])
        .between(rate(low), rate(high));
    Some(BagFlow { flow, bound })
}

/// On a straight line of the logarithms from one point to the next; a point itself stays exact.
fn between_points(points: &[(f64, f64); 3], seconds: f64) -> (f64, Bound) {
    let [first, middle, last] = *points;
    if seconds < first.0 {
        return (first.1, Bound::AtLeast);
    }
    if seconds >= last.0 {
        let bound = if seconds > last.0 { Bound::AtMost } else { Bound::Exact };
        return (last.1, bound);
    }
    let (from, to) = if seconds < middle.0 { (first, middle) } else { (middle, last) };
    let share = ln(seconds / from.0) / ln(to.0 / from.0);
    (from.1 * pow(to.1 / from.1, share), Bound::Exact)
}

/// The band round a flow, cfm. One that is an end of two bands belongs to the lower one.
fn band(best: f64, bound: Bound) -> (f64, f64) {
    match bound {
        Bound::AtMost => (0.0, best),
        Bound::AtLeast => (best, best),
        Bound::Exact => BANDS
            .windows(2)
            .find(|ends| best <= ends[1])
            .map_or((best, best), |ends| (ends[0], ends[1])),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn measured(seconds: f64) -> Option<BagFlow> {
        flow(Time::new::<second>(seconds), Direction::Emptying)
    }

    fn band_of(seconds: f64) -> (f64, f64) {
        let BagFlow { flow, .. } = measured(seconds).unwrap();
        (flow.low.get::<cfm>().round(), flow.high.get::<cfm>().round())
    }

    #[test]
    fn a_time_that_cannot_be_is_refused() {
        for seconds in [0.0, -3.0, f64::NAN, f64::INFINITY] {
            assert_eq!(measured(seconds), None);
        }
    }

    #[test]
    fn a_figure_comes_with_the_band_it_falls_into() {
        assert_eq!(band_of(3.5), (50.0, 75.0));
        assert_eq!(band_of(6.0), (30.0, 40.0));
        assert_eq!(band_of(9.0), (20.0, 30.0));
    }

    #[test]
    fn beyond_the_points_only_a_bound_is_known() {
        assert_eq!(measured(2.9).unwrap().bound, Bound::AtLeast);
        assert_eq!(band_of(2.9), (75.0, 75.0));
        assert_eq!(measured(11.1).unwrap().bound, Bound::AtMost);
        assert_eq!(band_of(11.1), (0.0, 20.0));
    }

    #[test]
    fn a_slower_bag_never_tells_of_more_air() {
        let flows: Vec<_> =
            (1..200).map(|t| measured(f64::from(t) / 10.0).unwrap().flow.best).collect();
        assert!(flows.windows(2).all(|pair| pair[0] >= pair[1]));
    }
}
