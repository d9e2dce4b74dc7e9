//! Stops in words.

use super::{Phrase, Step};
use crate::home::{Home, Tenure};
use crate::repairs::Warning;
use crate::safety::{Kind, Stop};

/// A stop as it is told.
#[derive(Debug, Clone, PartialEq)]
pub struct Danger {
    /// Code of its warning.
    pub code: Warning,
    /// How it is met.
    pub kind: Kind,
    /// The warning.
    pub text: Phrase,
    /// What was seen.
    pub because: Phrase,
    /// What to do until it is mended.
    pub meanwhile: Vec<Phrase>,
    /// What mends it.
    pub mends: Vec<Step>,
    /// The next twenty-four hours, where heat, gas, water or power is lost; with one stop only.
    pub card: Vec<Phrase>,
}

/// All stops. While someone has to leave the home, nothing else is asked of anyone.
pub(super) fn dangers(home: &Home, stops: &[Stop], mends: &[(&str, Step)]) -> Vec<Danger> {
    let night = Night::of(home, stops);
    let card_at = stops.iter().position(|s| s.takes_away && (s.kind == Kind::Out) == night.leave());
    stops
        .iter()
        .enumerate()
        .map(|(at, stop)| {
            let asks = !night.leave() || stop.kind == Kind::Out;
            let mends = mends.iter().filter(|(rule, _)| *rule == stop.rule);
            Danger {
                code: stop.warning,
                kind: stop.kind,
                text: warning(stop.warning),
                because: Phrase::new(format!("because.{}", stop.rule)),
                meanwhile: if asks { say("meanwhile", &night.until_mended(stop)) } else { vec![] },
                mends: mends.map(|(_, step)| step.clone()).collect(),
                card: if card_at == Some(at) { say("card", &night.card()) } else { vec![] },
            }
        })
        .collect()
}

/// By when a stop is mended.
pub(super) fn by_when(stops: &[Stop], rule: &str) -> Phrase {
    let soon = stops.iter().any(|stop| stop.rule == rule && stop.kind == Kind::Soon);
    Phrase::new(if soon { "when.this_week" } else { "when.today" })
}

/// What the stops together leave possible tonight.
struct Night<'a> {
    stops: &'a [Stop],
    rents: bool,
}

impl<'a> Night<'a> {
    fn of(home: &Home, stops: &'a [Stop]) -> Self {
        Self { stops, rents: home.building.tenure == Some(Tenure::RentsHome) }
    }

    fn leave(&self) -> bool {
        self.stops.iter().any(|stop| stop.kind == Kind::Out && !stop.below)
    }

    fn open(&self, rules: &[&str]) -> bool {
        self.stops.iter().any(|stop| rules.contains(&stop.rule))
    }

    /// Nobody but the plumber drains anything while the tank is a danger.
    fn until_mended(&self, stop: &Stop) -> Vec<&'static str> {
        let instead = |name| match name {
            "drain_before_dark" if self.open(&["tank_danger"]) => "plumber_drains",
            name => name,
        };
        stop.meanwhile.iter().copied().map(instead).collect()
    }

    fn card(&self) -> Vec<&'static str> {
        let stay = !self.leave();
        [
            (true, "where_to_stay"),
            (stay && !self.open(&["hot_wiring", "tingle"]), "heat_tonight"),
            (stay && !self.open(&["tank_danger"]), "water_tonight"),
            (stay, "tag"),
            (true, "help_211"),
            (self.rents, "landlord_told"),
            (self.rents, "legal_aid"),
        ]
        .into_iter()
        .filter_map(|(applies, line)| applies.then_some(line))
        .collect()
    }
}

fn say(folder: &str, names: &[&str]) -> Vec<Phrase> {
    names.iter().map(|name| Phrase::new(format!("{folder}.{name}"))).collect()
}

/// A warning in words.
pub(super) fn warning(code: Warning) -> Phrase {
    Phrase::new(format!("warning.{}", code.0))
}
