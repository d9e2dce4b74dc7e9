//! Outside air that a fan brings which runs for hours each day, heated again.

use super::gaps::{indoor_air, setpoint, shelter};
use super::heating::Loss;
use super::{Months, UseKey, Weather};
use crate::air::fans::{Fans, with_fans};
use crate::air::infiltration::{Coefficients, Storeys};
use crate::air::whole_home::fresh_air_need;
use crate::ducts::bag;
use crate::home::{FanEnd, Home};
use crate::properties::air::heat_capacity;
use crate::units::{carried, warmer_by};
use uom::si::f64::{Area, VolumeRate};

/// Heat that the fan's air takes beyond that of the leaks, which it presses shut on one side;
/// `None` where none runs.
pub(super) fn loss(home: &Home, weather: &Weather<'_>, leakage: Area) -> Option<Loss> {
    let flow = (home.bath_fan.runs_steadily == Some(true)).then(|| flow(home))?;
    let (air, room) = (indoor_air(home, weather)?, setpoint(home));
    let model = Coefficients::of(shelter(home), Storeys::One);
    let fans = Fans { unbalanced: flow, ..Fans::default() };
    let heat = Months::over(weather.year, |_, now| {
        let apart = warmer_by(room, now.air);
        let leaks = leakage * model.speed(apart, now.wind);
        carried(with_fans(leaks, fans).best - leaks, air.density(), heat_capacity(), apart)
    });
    Some(Loss { key: UseKey::SteadyFan, heat })
}

/// What the bag found at a fan that blows outdoors, and else what the home needs: so much it is
/// meant to bring.
fn flow(home: &Home) -> VolumeRate {
    let fan = &home.bath_fan;
    let outdoors = fan.emptying.filter(|_| fan.ends == Some(FanEnd::Outdoors));
    let felt = outdoors.and_then(|time| bag::flow(time, bag::Direction::Emptying));
    felt.map_or_else(|| fresh_air_need(&home.building), |bag| bag.flow).best
}
