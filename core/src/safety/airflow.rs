//! Furnaces that are short of air, and fans that draw fumes.

use super::{Kind, Lines, Stop, Warning};
use crate::ducts::rise_found;
use crate::home::{FilterLook, Home, LeakAir};

/// Whether the air leaves hotter than the label allows; `None` where rise or label is not known.
fn is_above_label(home: &Home) -> Option<bool> {
    let (rise, (_, most)) = rise_found(&home.ducts).zip(home.heating.label_rise)?;
    Some(rise > most)
}

/// Whether the furnace is too hot for want of air, or trips as if it were and nobody measured that it
/// is not.
pub(super) fn is_starved(home: &Home) -> bool {
    is_above_label(home).unwrap_or(home.ducts.short_cycles == Some(true))
}

/// What a person can do for the furnace's air is done: filter, registers, return.
fn is_tended(home: &Home) -> bool {
    let clean = matches!(home.filter.look, Some(FilterLook::Bright | FilterLook::Grey));
    let open = home.ducts.closed == Some(0) && home.ducts.return_blocked == Some(false);
    clean && open
}

/// A rise above the label is cured before anything is sealed; where filter, registers and return do
/// not cure it, the furnace stays off. One that only trips is measured first.
pub(super) fn overheats(home: &Home, _: &Lines) -> Option<Stop> {
    let above = is_above_label(home) == Some(true);
    let rule = if above { "overheats" } else { "short_cycles" };
    let stays_off = above && is_tended(home);
    let electric = home.something_burns() == Some(false);
    is_starved(home).then(|| {
        let stop = |kind| Stop::new(rule, Warning::OVERHEAT_LIMIT, kind);
        let today = || stop(Kind::Today);
        let off = || stop(Kind::Off).taking_away();
        match (stays_off, electric) {
            (false, false) => today().meanwhile(&["measure_rise_again", "co_alarm_tonight"]),
            (false, true) => today().meanwhile(&["measure_rise_again", "smoke_alarm_tonight"]),
            (true, false) => off().meanwhile(&["furnace_off", "co_alarm_tonight"]),
            (true, true) => off().meanwhile(&["furnace_off", "smoke_alarm_tonight"]),
        }
    })
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
