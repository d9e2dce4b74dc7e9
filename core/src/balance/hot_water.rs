//! Hot water: what is used, what keeps the tank hot, and what a tank does to the room about it.

use super::gaps::setpoint;
use super::{Use, UseKey, Weather, fuel};
use crate::home::{HeaterKind, HeaterPlace, Home};
use crate::hot_water::coach::{self, Wait, wait};
use crate::hot_water::year::{HotWaterYear, Service, year};
use crate::hot_water::{HeaterSeen, mains_water};
use crate::units::{celsius, fahrenheit, in_celsius};
use uom::si::f64::{Power, Ratio, ThermodynamicTemperature, Time};
use uom::si::ratio::ratio;
use uom::si::time::hour;

/// The middle of each month.
const MID_MONTHS: [u16; 12] = [16, 45, 75, 105, 136, 166, 197, 228, 258, 289, 319, 350];

/// The hot water of a home.
#[derive(Debug, Clone, Default)]
pub(super) struct HotWater {
    pub(super) uses: Vec<Use>,
    /// Heat that a tank in a room gives to it, or that a heat pump there takes out of it.
    pub(super) warms: Power,
}

/// The year of a home's hot water; nothing where nobody saw the water heater.
pub(super) fn hot_water(home: &Home, weather: &Weather<'_>) -> HotWater {
    let Some(seen) = HeaterSeen::of(home) else { return HotWater::default() };
    let around = Around::of(home, weather, seen.follows_outdoors.best);
    let service = Service {
        water: seen.stored.best,
        mains: around.mains,
        place: around.place,
        draws: seen.draws(),
        near_pipe: seen.near_pipe.best,
        sleeve: seen.sleeve,
    };
    let year = year(&seen.heater(), &service);
    let bought = |key, bought| Use { key, bought, cost: fuel::heater_cost(home, bought) };
    let mut uses = vec![bought(UseKey::HotWater, year.used)];
    if seen.kind.has_tank() {
        uses.push(bought(UseKey::HotTank, year.kept + year.piped));
    }
    let indoors = seen.kind.has_tank() && home.water_heater.place == Some(HeaterPlace::Room);
    HotWater { uses, warms: if indoors { warms(&seen, &year) } else { Power::default() } }
}

/// When a reading tells of a new place of the dial, from this tap to the target; `None` where
/// nobody saw what makes the hot water, or it has no tank. Where no year is known the water comes in
/// as cold, and the place is as warm, as in the federal test.
#[must_use]
pub fn settles(
    home: &Home,
    weather: Option<&Weather<'_>>,
    from: ThermodynamicTemperature,
    to: ThermodynamicTemperature,
) -> Option<Wait> {
    let seen = HeaterSeen::of(home).filter(|seen| seen.kind.has_tank())?;
    let (place, inlet) = weather.map_or((fahrenheit(67.5), fahrenheit(58.0)), |weather| {
        let around = Around::of(home, weather, seen.follows_outdoors.best);
        (around.place, around.mains)
    });
    let drawn_a_day = seen.draws().hot(from, inlet);
    Some(wait(&seen.heater().tank, from, to, &coach::Around { place, inlet, drawn_a_day }))
}

/// What surrounds a heater over the year.
struct Around {
    mains: ThermodynamicTemperature,
    place: ThermodynamicTemperature,
}

impl Around {
    fn of(home: &Home, weather: &Weather<'_>, follows: Ratio) -> Self {
        let normals = &weather.place.station.normals;
        let (mean, swing) = (normals.annual_mean(), normals.annual_swing());
        let mains = MID_MONTHS.map(|day| in_celsius(mains_water(mean, swing, day)));
        let (room, share) = (in_celsius(setpoint(home)), follows.get::<ratio>());
        let hours = weather.year.air_c();
        // A room without heat is as warm as it is outside; a closet lies between the two.
        let place = hours.iter().map(|air| room.max(*air) - share * (room.max(*air) - air));
        let mean_of = |sum: f64, count: f64| celsius(sum / count);
        Self { mains: mean_of(mains.iter().sum(), 12.0), place: mean_of(place.sum(), 8_760.0) }
    }
}

/// What a tank gives off, less what a heat pump takes from the air about it.
fn warms(seen: &HeaterSeen, year: &HotWaterYear) -> Power {
    let pumped = match seen.kind {
        HeaterKind::HeatPump => seen.factor.best - Ratio::new::<ratio>(1.0),
        _ => Ratio::default(),
    };
    year.given_off - (year.used + year.kept) * pumped / Time::new::<hour>(8_760.0)
}
