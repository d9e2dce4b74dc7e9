//! Air through measured gaps, heated again.

use super::{Use, UseKey, Weather, fuel};
use crate::air::infiltration::{Coefficients, Storeys};
use crate::air::usual::usual;
use crate::home::{Gap, Home, LeadsTo, Shelter};
use crate::physics::gap::{Slit, leakage_area};
use crate::physics::openings::in_series;
use crate::properties::air::{Air, heat_capacity, standard_pressure};
use crate::units::{carried, fahrenheit, warmer_by};
use uom::si::f64::{Area, Energy, Ratio, ThermodynamicTemperature, Time};
use uom::si::ratio::ratio;
use uom::si::time::hour;

/// Below this outdoor temperature a home is heated: the base of degree days (common practice).
const HEATED_BELOW_F: f64 = 65.0;
/// Thermostat of a home where nobody read it (common practice).
const USUAL_SETPOINT_F: f64 = 68.0;

pub(super) fn uses(home: &Home, weather: &Weather<'_>) -> Vec<Use> {
    if home.gaps.is_empty() {
        return vec![];
    }
    let Some(air) = indoor_air(home, weather) else { return vec![] };
    let heat_of_one = heat_of_a_square_metre(home, weather, &air);
    home.gaps
        .iter()
        .enumerate()
        .map(|(index, gap)| {
            let share: Ratio = leakage(gap, &air) / square_metre();
            let bought = fuel::bought(home, heat_of_one * share);
            Use { key: UseKey::Gap(index), bought, cost: fuel::heating_cost(home, bought) }
        })
        .collect()
}

fn square_metre() -> Area {
    Area::new::<uom::si::area::square_meter>(1.0)
}

pub(super) fn setpoint(home: &Home) -> ThermodynamicTemperature {
    home.building.setpoint.unwrap_or(fahrenheit(USUAL_SETPOINT_F))
}

/// Colder than this outdoors and the furnace runs.
pub(super) fn heated_below(home: &Home) -> ThermodynamicTemperature {
    fahrenheit(HEATED_BELOW_F).min(setpoint(home))
}

pub(super) fn indoor_air(home: &Home, weather: &Weather<'_>) -> Option<Air> {
    Air::dry(setpoint(home), standard_pressure(weather.place.station.elevation)?)
}

/// Heat that a year's air through one square metre of leakage area takes. Leakage area is linear
/// in the model, so the year is summed once for all gaps.
fn heat_of_a_square_metre(home: &Home, weather: &Weather<'_>, air: &Air) -> Energy {
    let indoors = setpoint(home);
    let shelter = home.building.shelter.unwrap_or(Shelter::NeighboursApart);
    let model = Coefficients::of(shelter, Storeys::One);
    let heated_below = heated_below(home);
    let an_hour = Time::new::<hour>(1.0);
    let by_the_model: Energy = weather
        .year
        .hours()
        .filter(|now| now.air < heated_below)
        .map(|now| {
            let apart = warmer_by(indoors, now.air);
            let flow = square_metre() * model.speed(apart, now.wind);
            carried(flow, air.density(), heat_capacity(), apart) * an_hour
        })
        .sum();
    by_the_model * home.building.infiltration_factor.unwrap_or(Ratio::new::<ratio>(1.0))
}

/// What lies behind a gap, as seen or as is usual at its place.
#[must_use]
pub fn leads_to(gap: &Gap) -> LeadsTo {
    gap.leads_to.unwrap_or(usual(gap.place).leads_to)
}

/// Leakage area of a gap as the whole home feels it: what is open of it, in series with the skin
/// behind it.
pub(super) fn leakage(gap: &Gap, air: &Air) -> Area {
    let usual = usual(gap.place);
    let depth = gap.depth.unwrap_or(usual.depth);
    let slit = Slit::new(gap.length, gap.width, depth, gap.bends.unwrap_or(usual.bends));
    let whole = slit.map_or(Area::default(), |slit| leakage_area(&slit, air));
    let alone = whole * gap.open;
    match leads_to(gap) {
        LeadsTo::Outdoors => alone,
        LeadsTo::RoomOrReturn => Area::default(),
        LeadsTo::Belly | LeadsTo::RoofCavity | LeadsTo::ClosetWithOutsideAir | LeadsTo::Wall => {
            in_series(alone, whole * gap.next_skin.unwrap_or(Ratio::new::<ratio>(1.0)))
        }
    }
}
