//! Hot water: what is used, what keeps the tank hot, and what a tank in a room does to the furnace.

use super::gaps::{heated_below, setpoint};
use super::{Use, UseKey, Weather, fuel};
use crate::home::{HeaterKind, HeaterPlace, Home};
use crate::hot_water::coach::{self, Wait, wait};
use crate::hot_water::year::{HotWaterYear, Service, year};
use crate::hot_water::{HeaterSeen, mains_water};
use crate::units::{celsius, fahrenheit, in_celsius};
use uom::si::f64::{Energy, Ratio, ThermodynamicTemperature, Time};
use uom::si::ratio::ratio;
use uom::si::time::hour;

/// The middle of each month.
const MID_MONTHS: [u16; 12] = [16, 45, 75, 105, 136, 166, 197, 228, 258, 289, 319, 350];

/// Uses of a home whose water heater somebody saw.
pub(super) fn uses(home: &Home, weather: &Weather<'_>) -> Vec<Use> {
    let Some(seen) = HeaterSeen::of(home) else { return vec![] };
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
    let mut all = vec![bought(UseKey::HotWater, year.used)];
    if seen.kind.has_tank() {
        all.push(bought(UseKey::HotTank, year.kept + year.piped));
    }
    if seen.kind.has_tank() && home.water_heater.place == Some(HeaterPlace::Room) {
        all.push(in_room(home, &seen, &year, around.heated));
    }
    all
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
    /// Hours in which the furnace runs.
    heated: Time,
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
        #[expect(clippy::cast_precision_loss, reason = "at most 8,760")]
        let heated = weather.year.hours_below(heated_below(home)) as f64;
        Self {
            mains: mean_of(mains.iter().sum(), 12.0),
            place: mean_of(place.sum(), 8_760.0),
            heated: Time::new::<hour>(heated),
        }
    }
}

/// What the furnace is spared by the warmth of a tank, and has to add for a heat pump that takes its
/// heat from the room.
fn in_room(home: &Home, seen: &HeaterSeen, year: &HotWaterYear, heated: Time) -> Use {
    let season: Ratio = heated / Time::new::<hour>(8_760.0);
    let from_the_room = match seen.kind {
        HeaterKind::HeatPump => {
            let pumped = seen.factor.best - Ratio::new::<ratio>(1.0);
            (year.used + year.kept) * pumped * season
        }
        _ => Energy::default(),
    };
    let heat = from_the_room - year.given_off * heated;
    let bought = fuel::bought(home, heat);
    Use { key: UseKey::TankInRoom, bought, cost: fuel::heating_cost(home, bought) }
}
