//! The heat cable: fire on one side, a frozen pipe on the other.

use super::{Kind, Lines, Stop, Warning};
use crate::home::Home;

/// Cracked, charred, wet or hot: off now, and in the same step the plan for the pipe.
pub(super) fn damaged(home: &Home, _: &Lines) -> Option<Stop> {
    let cable = home.cable.as_ref().filter(|c| c.present)?;
    [cable.signs.damaged, cable.signs.wet].contains(&Some(true)).then(|| {
        Stop::new("cable_damaged", Warning::HEATCABLE_FIRE, Kind::Off)
            .meanwhile(&[
                "cable_off",
                "breaker_first",
                "cable_replace_today",
                "drain_before_dark",
                "stream_only_with_drain",
            ])
            .taking_away()
    })
}

/// Old, uncertified, under foam or lapped, but whole: replaced this week, on while it freezes.
pub(super) fn old(home: &Home, lines: &Lines) -> Option<Stop> {
    let cable = home.cable.as_ref().filter(|c| c.present)?;
    let signs = cable.signs;
    let old = [signs.uncertified, signs.under_foam, signs.lapped].contains(&Some(true));
    (old && damaged(home, lines).is_none()).then(|| {
        Stop::new("cable_old", Warning::HEATCABLE_FIRE, Kind::Soon)
            .meanwhile(&["cable_stays_on_in_frost", "smoke_alarm_tonight"])
    })
}
