//! Outside air that a fan brings which runs for hours each day, heated again.

use super::gaps::{heated_below, indoor_air, setpoint, shelter};
use super::{Use, UseKey, Weather, fuel};
use crate::air::fans::{Fans, with_fans};
use crate::air::infiltration::{Coefficients, Storeys};
use crate::air::whole_home::fresh_air_need;
use crate::ducts::bag;
use crate::home::{FanEnd, Home};
use crate::properties::air::heat_capacity;
use crate::units::{carried, warmer_by};
use uom::si::f64::{Area, Energy, Time, VolumeRate};
use uom::si::time::hour;

/// Heat that the fan's air takes beyond that of the leaks, which it presses shut on one side;
/// `None` where none runs.
pub(super) fn year(home: &Home, weather: &Weather<'_>, leakage: Area) -> Option<Use> {
    let flow = (home.bath_fan.runs_steadily == Some(true)).then(|| flow(home))?;
    let air = indoor_air(home, weather)?;
    let (room, heated_below) = (setpoint(home), heated_below(home));
    let model = Coefficients::of(shelter(home), Storeys::One);
    let fans = Fans { unbalanced: flow, ..Fans::default() };
    let heated = weather.year.hours().filter(|now| now.air < heated_below);
    let heat: Energy = heated
        .map(|now| {
            let apart = warmer_by(room, now.air);
            let leaks = leakage * model.speed(apart, now.wind);
            let more = with_fans(leaks, fans).best - leaks;
            carried(more, air.density(), heat_capacity(), apart) * Time::new::<hour>(1.0)
        })
        .sum();
    let bought = fuel::bought(home, heat);
    Some(Use { key: UseKey::SteadyFan, bought, cost: fuel::heating_cost(home, bought) })
}

/// What the bag found at a fan that blows outdoors, and else what the home needs: so much it is
/// meant to bring.
fn flow(home: &Home) -> VolumeRate {
    let fan = &home.bath_fan;
    let outdoors = fan.emptying.filter(|_| fan.ends == Some(FanEnd::Outdoors));
    let felt = outdoors.and_then(|time| bag::flow(time, bag::Direction::Emptying));
    felt.map_or_else(|| fresh_air_need(&home.building), |bag| bag.flow).best
}
