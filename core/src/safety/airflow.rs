//! Furnaces that are short of air, and fans that draw fumes.

use super::{Kind, Lines, Stop, Warning};
use crate::ducts::rise_found;
use crate::home::{FilterLook, Home, LeakAir};

/// Whether the air leaves hotter than the label allows.
pub(super) fn is_too_hot(home: &Home) -> bool {
    let (rise, label) = (rise_found(&home.ducts), home.heating.label_rise);
    rise.zip(label).is_some_and(|(rise, (_, most))| rise > most)
}

/// What a person can do for the furnace's air is done: filter, registers, return.
fn is_tended(home: &Home) -> bool {
    let clean = matches!(home.filter.look, Some(FilterLook::Bright | FilterLook::Grey));
    let open = home.ducts.closed == Some(0) && home.ducts.return_blocked == Some(false);
    clean && open
}

/// A rise above the label is cured before anything is sealed; where filter, registers and return do
/// not cure it, the furnace stays off.
pub(super) fn overheats(home: &Home, _: &Lines) -> Option<Stop> {
    const STOP: Stop = Stop::new("overheats", Warning::OVERHEAT_LIMIT, Kind::Today)
        .meanwhile(&["measure_rise_again", "co_alarm_tonight"]);
    let off = Stop { kind: Kind::Off, ..STOP }
        .meanwhile(&["furnace_off", "co_alarm_tonight"])
        .taking_away();
    is_too_hot(home).then(|| if is_tended(home) { off } else { STOP })
}

/// A gap that sucks air in near a burner pulls its fumes into the rooms.
pub(super) fn sucks_near_burner(home: &Home, _: &Lines) -> Option<Stop> {
    let sucks = home.ducts.gaps.iter().any(|gap| gap.air == Some(LeakAir::SuckedIn) && !gap.sealed);
    (sucks && home.something_burns() != Some(false)).then(|| {
        Stop::new("sucks_near_burner", Warning::GAS_PRO, Kind::Off)
            .meanwhile(&["furnace_off", "co_alarm_tonight"])
            .taking_away()
    })
}
