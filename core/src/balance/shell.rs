//! Heat through walls, roof, floor, windows and doors, and what sun and people give back.

use super::gaps::setpoint;
use super::heating::Loss;
use super::{Months, UseKey, Weather};
use crate::climate::{Hour, Shore};
use crate::envelope::{
    Below, Temperatures, depth_below_a_home, inertia, internal_gains, shell, soil_by_month,
    solar_gains,
};
use crate::home::{Building, Home, Window};
use crate::units::warmer_by;
use uom::si::f64::{Power, Ratio, ThermalConductance, ThermodynamicTemperature};
use uom::si::thermal_conductance::watt_per_kelvin;

/// The year of a shell: what each part takes, and what comes in for nothing. Most repairs leave it
/// alone, so it is worked out once.
#[derive(Debug, Clone, PartialEq)]
pub struct ShellYear {
    building: Building,
    windows: Vec<Window>,
    pub(super) losses: [Loss; 5],
    /// What sun, people and machines give.
    pub(super) gained: Months,
    /// What lies below the floor, on the mean of each month.
    pub(super) below: [MonthBelow; 12],
}

/// A month at a home, on its mean.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct MonthBelow {
    pub(super) outdoor: ThermodynamicTemperature,
    /// Ground and outdoors as the floor sees them.
    pub(super) joined: ThermalConductance,
    pub(super) temperature: ThermodynamicTemperature,
}

impl ShellYear {
    /// That of a home at a place.
    #[must_use]
    pub fn of(home: &Home, weather: &Weather<'_>) -> Self {
        Self {
            building: home.building.clone(),
            windows: home.windows.clone(),
            losses: losses(home, weather),
            gained: gains(home, weather),
            below: below(home, weather),
        }
    }

    /// Whether it holds for this home as well.
    #[must_use]
    pub fn holds_for(&self, home: &Home) -> bool {
        self.building == home.building && self.windows == home.windows
    }
}

fn losses(home: &Home, weather: &Weather<'_>) -> [Loss; 5] {
    let (shell, room) = (shell(home), setpoint(home));
    let below = floor(home, weather);
    let a_watt = ThermalConductance::new::<watt_per_kelvin>(1.0);
    let each = Months::over(weather.year, |_, now| a_watt * warmer_by(room, now.air));
    let outdoors =
        |key, conducts: ThermalConductance| Loss { key, heat: each * (conducts / a_watt) };
    let floor =
        Months::over(weather.year, |month, now| shell.floor * warmer_by(room, below(month, now)));
    [
        outdoors(UseKey::Walls, shell.walls),
        outdoors(UseKey::Roof, shell.roof),
        Loss { key: UseKey::Floor, heat: floor },
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

fn below(home: &Home, weather: &Weather<'_>) -> [MonthBelow; 12] {
    let below = Below::of(home);
    let normals = &weather.place.station.normals;
    let soil = soil_by_month(normals, depth_below_a_home());
    let means = normals.monthly_means();
    std::array::from_fn(|month| {
        let outdoor = means[month];
        let (joined, temperature) = below.seen_by_floor(soil[month], outdoor, normals.wind[month]);
        MonthBelow { outdoor, joined, temperature }
    })
}

/// A home is taken to lie inland, where days swing most.
fn gains(home: &Home, weather: &Weather<'_>) -> Months {
    let station = &weather.place.station;
    let sun = solar_gains(home, &station.normals, station.latitude, Shore::Inland);
    Months::flowing(sun) + Months::steady(internal_gains(&home.building))
}

/// How well a home keeps heat from one hour to the next, with the air that its leaks let through.
pub(super) fn keeps(home: &Home, air: ThermalConductance) -> Ratio {
    let shell = shell(home);
    inertia(shell.floor_area, shell.above_floor() + shell.floor + air)
}
