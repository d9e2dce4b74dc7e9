//! What a tap reading means: from ice to steam, every one of them means something.

use super::Lines;
use super::lines::reaches;
use crate::home::Home;
use crate::hot_water::{Scald, Target, scald, target};

/// What a tap reading means, from cold to hot.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Meaning {
    /// So cool that it is asked back: the cold tap, the heater off, or a reading in °C?
    AskBack,
    /// Germs may grow in a tank this cool: a finding, and no reason to turn it up blindly.
    TooCool,
    /// As it should be.
    Fine,
    /// Hotter than need be.
    Hot,
    /// Hot enough to burn the people who live here: today.
    Stop,
    /// The tank overheats: off.
    TankDanger,
}

/// What the reading at the tap means in this home; `None` without one.
///
/// ```
/// use winterseam::safety::{Lines, Meaning, meaning};
/// use winterseam::wire::{Tree, home};
///
/// let request = r#"{"today": "2026-11-25", "water_heater": {"tap_f": 200}}"#;
/// let home = home(&Tree::from_json(request).unwrap()).unwrap();
/// assert_eq!(meaning(&home, &Lines::default()), Some(Meaning::TankDanger));
/// ```
#[must_use]
pub fn meaning(home: &Home, lines: &Lines) -> Option<Meaning> {
    let tap = home.water_heater.tap?;
    // Who was not asked about may be a child.
    let robust = home.people.burn_faster() == Some(false);
    let stop = if robust { lines.hot_tap_anyone } else { lines.hot_tap_frail };
    let stored_hot = matches!(target(home), Target::StoreHotAndMix(_));
    let growth = if stored_hot { lines.growth_tap_frail } else { lines.growth_tap };
    Some(match tap {
        _ if reaches(tap, lines.hot_tank) => Meaning::TankDanger,
        _ if reaches(tap, stop) => Meaning::Stop,
        _ if scald(tap) > Scald::Unlikely => Meaning::Hot,
        _ if reaches(tap, growth) => Meaning::Fine,
        _ if reaches(tap, lines.cool_tap) => Meaning::TooCool,
        _ => Meaning::AskBack,
    })
}
