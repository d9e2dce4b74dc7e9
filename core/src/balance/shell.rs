//! Heat through walls, roof, floor, windows and doors, and what sun and people give back.

use super::gaps::setpoint;
use super::heating::Loss;
use super::{Months, UseKey, Weather};
use crate::climate::{Hour, Shore};
use crate::envelope::{
    Below, Temperatures, depth_below_a_home, inertia, internal_gains, shell, soil_by_month,
    solar_gains,
};
use crate::home::Home;
use crate::units::warmer_by;
use uom::si::f64::{Power, Ratio, ThermalConductance, ThermodynamicTemperature};

/// What each part of the shell takes.
pub(super) fn losses(home: &Home, weather: &Weather<'_>) -> Vec<Loss> {
    let (shell, room) = (shell(home), setpoint(home));
    let outdoors = |key, conducts: ThermalConductance| Loss {
        key,
        heat: Months::over(weather.year, |_, now| conducts * warmer_by(room, now.air)),
    };
    let below = floor(home, weather);
    vec![
        outdoors(UseKey::Walls, shell.walls),
        outdoors(UseKey::Roof, shell.roof),
        Loss {
            key: UseKey::Floor,
            heat: Months::over(weather.year, |month, now| {
                shell.floor * warmer_by(room, below(month, now))
            }),
        },
        outdoors(UseKey::Windows, shell.windows),
        outdoors(UseKey::Doors, shell.doors),
    ]
}

/// How warm it is below the floor in an hour of a month.
fn floor(
    home: &Home,
    weather: &Weather<'_>,
) -> impl Fn(usize, Hour) -> ThermodynamicTemperature + use<> {
    let below = Below::of(home);
    let soil = soil_by_month(&weather.place.station.normals, depth_below_a_home());
    let indoor = setpoint(home);
    move |month, now| {
        let between = Temperatures { indoor, ground: soil[month], outdoor: now.air };
        below.temperature(between, now.wind, Power::default())
    }
}

/// What sun, people and machines give. A home is taken to lie inland, where days swing most.
pub(super) fn gains(home: &Home, weather: &Weather<'_>) -> Months {
    let station = &weather.place.station;
    let sun = solar_gains(home, &station.normals, station.latitude, Shore::Inland);
    Months::flowing(sun) + Months::steady(internal_gains(&home.building))
}

/// How well a home keeps heat from one hour to the next, with the air that its leaks let through.
pub(super) fn keeps(home: &Home, air: ThermalConductance) -> Ratio {
    let shell = shell(home);
    inertia(shell.floor_area, shell.above_floor() + shell.floor + air)
}
