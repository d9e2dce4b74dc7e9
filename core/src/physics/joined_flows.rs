//! Air that leaks and a fan exchange together: less than their sum, since a fan presses leaks shut.

use crate::math::sqrt;
use uom::si::f64::VolumeRate;
use uom::si::volume_rate::cubic_meter_per_second;

/// How leaks and an unbalanced fan are joined. Where they are alike the rules differ by 30 %.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Joining {
    /// The greater of the two: the least that can be.
    Greater,
    /// By squares, as pressures of wind, warmth and fan add up.
    Squares,
    /// All leaks and half the fan, or the fan alone where that is more.
    HalfFan,
    /// What leaks add falls with their share of the whole.
    SubAdditive,
    /// Their sum: the most that can be.
    Sum,
}

/// Air exchanged by leaks and an unbalanced fan together.
///
/// # Equation
/// ```text
/// Q = max(q_i, q_u); √(q_i² + q_u²); max(q_u, q_i + ½·q_u); ½·(q_u + √(q_u² + 4·q_i²)); q_i + q_u
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `Q` | air exchanged | m³/s | returned |
/// | `q_i` | air through the leaks alone | m³/s | `leaks` |
/// | `q_u` | air that the fan only brings in or only sends out | m³/s | `fan` |
///
/// # Source
/// [`HANDBOOK_2021_CH16_FANS`](crate::sources::air::HANDBOOK_2021_CH16_FANS),
/// [`HANDBOOK_2021_CH17_FANS`](crate::sources::air::HANDBOOK_2021_CH17_FANS),
/// [`JOINED_FLOWS`](crate::sources::air::JOINED_FLOWS)
///
/// # Valid for
/// Flows of one home, zero or more; hourly means.
///
/// # Leaves out
/// On which side of the home the fan works.
///
/// # Examples
/// ```
/// use uom::si::{f64::VolumeRate, volume_rate::liter_per_second};
/// use winterseam::physics::joined_flows::{Joining, joined};
///
/// let flow = VolumeRate::new::<liter_per_second>;
/// let air = joined(flow(30.0), flow(40.0), Joining::Squares);
/// assert!((air - flow(50.0)).abs() < flow(1e-9));
/// ```
#[must_use]
pub fn joined(leaks: VolumeRate, fan: VolumeRate, by: Joining) -> VolumeRate {
    let si = |q: VolumeRate| q.get::<cubic_meter_per_second>();
    let (qi, qu) = (si(leaks), si(fan));
    VolumeRate::new::<cubic_meter_per_second>(match by {
        Joining::Greater => qi.max(qu),
        Joining::Squares => sqrt(qu * qu + qi * qi),
        Joining::HalfFan => qu.max(qi + 0.5 * qu),
        Joining::SubAdditive => 0.5 * (qu + sqrt(qu * qu + 4.0 * qi * qi)),
        Joining::Sum => qi + qu,
    })
}
