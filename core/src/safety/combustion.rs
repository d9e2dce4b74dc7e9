//! Burners and the air they need.

use super::{Kind, Lines, Stop, Warning};
use crate::home::{AirOpenings, GapPlace, Home};

pub(super) fn soot(home: &Home, _: &Lines) -> Option<Stop> {
    [home.heating.soot, home.water_heater.soot].contains(&Some(true)).then(|| {
        Stop::new("soot", Warning::GAS_PRO, Kind::Off)
            .meanwhile(&["burner_off", "co_alarm_tonight"])
            .taking_away()
    })
}

/// The openings as they were seen; a strip or tape on a gap of the closet covers part of them.
fn openings(home: &Home) -> Option<AirOpenings> {
    let covered = home
        .gaps
        .iter()
        .any(|gap| gap.place == GapPlace::WaterHeaterCloset && gap.sealed == Some(true));
    match home.water_heater.openings {
        None | Some(AirOpenings::Open) if covered => Some(AirOpenings::Partly),
        seen => seen,
    }
}

/// A wood stove too close to what burns, or with a chimney that nobody looked at.
pub(super) fn stove(home: &Home, _: &Lines) -> Option<Stop> {
    (home.heating.stove_clear == Some(false)).then(|| {
        Stop::new("stove", Warning::SOLID_FUEL_CLEARANCE, Kind::Today)
            .meanwhile(&["no_fire", "smoke_alarm_tonight"])
    })
}

/// Openings under half open are *off*; under three quarters they are cleared this week.
pub(super) fn openings_blocked(home: &Home, _: &Lines) -> Option<Stop> {
    const STOP: Stop =
        Stop::new("openings_blocked", Warning::DO_NOT_SEAL_COMBUSTION_AIR, Kind::Soon)
            .meanwhile(&["clear_openings", "closet_pipes_cold"]);
    let may_burn = home.something_burns() != Some(false);
    match openings(home).filter(|_| may_burn && home.burner_in_closet() != Some(false))? {
        AirOpenings::Open => None,
        AirOpenings::Partly => Some(STOP),
        AirOpenings::Blocked => Some(
            Stop { kind: Kind::Off, ..STOP }
                .meanwhile(&[
                    "burner_off",
                    "clear_openings",
                    "closet_pipes_cold",
                    "co_alarm_tonight",
                ])
                .taking_away(),
        ),
    }
}
