//! Hot taps and overheating tanks.

use super::lines::reaches;
use super::{Kind, Lines, Stop, Warning};
use crate::home::{Home, Relief};

const UNTIL_MENDED: &[&str] = &["cold_first", "infant_bath", "child_never_alone"];

pub(super) fn tank_danger(home: &Home, lines: &Lines) -> Option<Stop> {
    let heater = &home.water_heater;
    let over = heater.tap.is_some_and(|tap| reaches(tap, lines.hot_tank));
    let relief = matches!(heater.relief, Some(Relief::Running | Relief::Missing | Relief::Plugged));
    (over || relief || heater.steam_or_rumbling == Some(true)).then(|| {
        Stop::new("tank_danger", Warning::TANK_DANGER, Kind::Off)
            .meanwhile(&["breaker_check", "cold_first", "infant_bath", "child_never_alone"])
            .taking_away()
    })
}

pub(super) fn hot_tap(home: &Home, lines: &Lines) -> Option<Stop> {
    let tap = home.water_heater.tap?;
    // Who was not asked about may be a child.
    let robust = home.people.burn_faster() == Some(false);
    let line = if robust { lines.hot_tap_anyone } else { lines.hot_tap_frail };
    let warning =
        if home.people.burn_faster() == Some(true) { Warning::SCALD_CHILD } else { Warning::SCALD };
    (reaches(tap, line) && !reaches(tap, lines.hot_tank))
        .then(|| Stop::new("hot_tap", warning, Kind::Today).meanwhile(UNTIL_MENDED))
}
