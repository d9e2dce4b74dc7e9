//! Leaks and fans together.

use crate::physics::joined_flows::{Joining, joined};
use crate::sources::air::{HANDBOOK_2021_CH16_FANS, HANDBOOK_2021_CH17_FANS};
use crate::sources::{Confidence, Figure};
use uom::si::f64::VolumeRate;

/// Fans that move air across the envelope.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Fans {
    /// Air that is both brought in and sent out.
    pub balanced: VolumeRate,
    /// Air that is only brought in or only sent out; leaks let the same amount through.
    pub unbalanced: VolumeRate,
}

/// Air that a home with fans exchanges.
///
/// # Equation
///
/// Q = Qb + √(Qu² + Qi²), best value; Q = Qb + max(Qu, Qi + ½ · Qu), other end of the range
///
/// # Symbols
///
/// | symbol | meaning               | unit | in code           |
/// |--------|-----------------------|------|-------------------|
/// | Q      | air exchanged         | m³/s | return value      |
/// | Qi     | air through the leaks | m³/s | `leaks`           |
/// | Qb     | balanced fans         | m³/s | `fans.balanced`   |
/// | Qu     | unbalanced fans       | m³/s | `fans.unbalanced` |
///
/// # Source
///
/// [`HANDBOOK_2021_CH16_FANS`] and [`HANDBOOK_2021_CH17_FANS`]. The two chapters disagree, by
/// 10 % where the three flows are alike. The first is the best value: it joins the pressures of
/// wind, warmth and fan as the models of leakage do. The second is the end of the range.
///
/// # Valid for
///
/// Flows of one home; hourly means.
///
/// # Leaves out
///
/// Which side of the home the fan draws from.
///
/// # Examples
///
/// ```
/// use uom::si::{f64::VolumeRate, volume_rate::liter_per_second};
/// use winterseam::air::fans::{Fans, with_fans};
///
/// let flow = VolumeRate::new::<liter_per_second>;
/// let fans = Fans { balanced: flow(10.0), unbalanced: flow(25.0) };
/// let air = with_fans(flow(40.0), fans);
/// assert!((air.best - flow(57.17)).abs() < flow(0.005));
/// assert!((air.high - flow(62.5)).abs() < flow(1e-9));
/// ```
#[must_use]
pub fn with_fans(leaks: VolumeRate, fans: Fans) -> Figure<VolumeRate> {
    let by = |rule| fans.balanced + joined(leaks, fans.unbalanced, rule);
    let (by_pressures, by_halves) = (by(Joining::Squares), by(Joining::HalfFan));
    let sources = &[&HANDBOOK_2021_CH16_FANS, &HANDBOOK_2021_CH17_FANS];
    Figure::exact(by_pressures, Confidence::Seen, sources).between(by_pressures, by_halves)
}
