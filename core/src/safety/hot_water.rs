//! Hot taps and overheating tanks.

use super::{Kind, Lines, Meaning, Stop, Warning, meaning};
use crate::home::{Home, Relief};

/// Until a tank is mended, and without its breaker until a tap is.
const TANK: &[&str] = &["breaker_check", "cold_first", "infant_bath", "child_never_alone"];
const UNTIL_MENDED: &[&str] = TANK.split_at(1).1;

pub(super) fn tank_danger(home: &Home, lines: &Lines) -> Option<Stop> {
    let heater = &home.water_heater;
    let over = meaning(home, lines) == Some(Meaning::TankDanger);
    let relief = matches!(heater.relief, Some(Relief::Running | Relief::Missing | Relief::Plugged));
    (over || relief || heater.steam_or_rumbling == Some(true)).then(|| {
        Stop::new("tank_danger", Warning::TANK_DANGER, Kind::Off).meanwhile(TANK).taking_away()
    })
}

pub(super) fn hot_tap(home: &Home, lines: &Lines) -> Option<Stop> {
    let warning =
        if home.people.burn_faster() == Some(true) { Warning::SCALD_CHILD } else { Warning::SCALD };
    (meaning(home, lines) == Some(Meaning::Stop))
        .then(|| Stop::new("hot_tap", warning, Kind::Today).meanwhile(UNTIL_MENDED))
}
