//! Heat through walls, roof, floor, windows and doors, and what sun and people give back.

use super::gaps::setpoint;
use super::heating::Loss;
use super::{Months, UseKey, Weather};
use crate::envelope::{Shell, TimeConstant, shell};
use crate::home::Home;
use crate::units::warmer_by;
use uom::si::f64::{Power, ThermalConductance};
use uom::si::power::watt;
use uom::si::temperature_interval::kelvin;
use uom::si::thermal_conductance::watt_per_kelvin;

/// What each part of the shell takes.
pub(super) fn losses(home: &Home, weather: &Weather<'_>) -> Vec<Loss> {
    let (shell, room) = (shell(home), setpoint(home));
    let a_watt_per_kelvin = Months::over(weather.year, |now| {
        Power::new::<watt>(warmer_by(room, now.air).get::<kelvin>())
    });
    let outdoors = |key, conducts: ThermalConductance| Loss {
        key,
        heat: a_watt_per_kelvin * Ratio::new::<ratio>(conducts.get::<watt_per_kelvin>()),
    };
    vec![
        outdoors(UseKey::Walls, shell.walls),
        outdoors(UseKey::Roof, shell.roof),
        Loss { key: UseKey::Floor, heat: floor(home, weather, &shell) },
        outdoors(UseKey::Windows, shell.windows),
        outdoors(UseKey::Doors, shell.doors),
    ]
}
