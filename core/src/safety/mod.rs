//! What must not wait: stops, their lines and what to do meanwhile. Danger outranks money.
//!
//! A rule looks at a home and says whether something is dangerous. It knows no sentence: a stop
//! carries the code of its warning and the name of its rule, and `report` finds the words.

mod airflow;
mod alarms;
mod cable;
mod climate_indoors;
mod combustion;
mod electricity;
mod hot_water;
mod lines;
mod plumbing;
mod reading;
mod tightening;

pub use crate::repairs::Warning;
pub use lines::Lines;
pub use reading::{Meaning, meaning};
pub use tightening::{NoTightening, may_tighten};

use crate::home::Home;
use crate::math::put_in_order;

/// How a danger is met, the worst first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Kind {
    /// Leave now and call from outside. Hides every saving and every job.
    Out,
    /// Something is switched off and stays off until it is checked. Hides savings.
    Off,
    /// Must be made safe today.
    Today,
    /// This week.
    Soon,
}

/// A danger that was found.
#[derive(Debug, Clone, PartialEq)]
pub struct Stop {
    /// Name of the rule, stable for programs and words.
    pub rule: &'static str,
    /// The warning that is shown.
    pub warning: Warning,
    /// How it is met.
    pub kind: Kind,
    /// Names of the things to do until it is mended, in order.
    pub meanwhile: &'static [&'static str],
    /// Whether heat, gas, water or power is lost by it, so that the night has to be planned.
    pub takes_away: bool,
    /// Whether it concerns the space below the home alone.
    pub below: bool,
}

impl Stop {
    /// A stop without anything to do meanwhile.
    #[must_use]
    pub const fn new(rule: &'static str, warning: Warning, kind: Kind) -> Self {
        Self { rule, warning, kind, meanwhile: &[], takes_away: false, below: false }
    }

    /// The same stop, with what to do until it is mended.
    #[must_use]
    pub const fn meanwhile(self, things: &'static [&'static str]) -> Self {
        Self { meanwhile: things, ..self }
    }

    /// The same stop, for the space below the home alone.
    #[must_use]
    pub const fn below_the_home(self) -> Self {
        Self { below: true, ..self }
    }

    /// The same stop, taking heat, gas, water or power away.
    #[must_use]
    pub const fn taking_away(self) -> Self {
        Self { takes_away: true, ..self }
    }
}

/// One rule: a stop, or none.
type Rule = fn(&Home, &Lines) -> Option<Stop>;

const RULES: &[Rule] = &[
    alarms::gas_smell,
    alarms::carbon_monoxide,
    alarms::smoke_alarm_sounding,
    alarms::flame_indoors,
    alarms::oven_for_heat,
    alarms::co_alarm_missing,
    alarms::smoke_alarm_missing,
    alarms::alarm_chirps,
    combustion::soot,
    combustion::openings_blocked,
    combustion::stove,
    airflow::sucks_near_burner,
    airflow::overheats,
    electricity::hot_wiring,
    electricity::tingle,
    electricity::water_below,
    electricity::no_way_out,
    hot_water::tank_danger,
    hot_water::hot_tap,
    cable::damaged,
    cable::old,
    plumbing::tap_dry,
    climate_indoors::too_cold,
    climate_indoors::heat_out,
    climate_indoors::too_hot,
];

/// Every danger found in a home, the worst kind first.
#[must_use]
pub fn stops(home: &Home, lines: &Lines) -> Vec<Stop> {
    let mut found: Vec<Stop> = RULES.iter().filter_map(|rule| rule(home, lines)).collect();
    put_in_order(&mut found, |one, other| one.kind < other.kind);
    found
}

/// Whether savings stay hidden: someone has to leave, or something has to stay off.
#[must_use]
pub fn hides_savings(stops: &[Stop]) -> bool {
    stops.iter().any(|stop| stop.kind <= Kind::Off)
}

/// Whether every job stays hidden: someone has to leave.
#[must_use]
pub fn hides_jobs(stops: &[Stop]) -> bool {
    stops.iter().any(|stop| stop.kind == Kind::Out)
}
