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

/// All stops. While someone has to leave, nothing else is asked of anyone.
pub(super) fn dangers(home: &Home, stops: &[Stop], mends: &[(&str, Step)]) -> Vec<Danger> {
    let leave = stops.iter().any(|stop| stop.kind == Kind::Out);
    let card_at = stops.iter().position(|stop| stop.takes_away && (stop.kind > Kind::Out) != leave);
    stops
        .iter()
        .enumerate()
        .map(|(at, stop)| {
            let asks = !leave || stop.kind == Kind::Out;
            let mends = mends.iter().filter(|(rule, _)| *rule == stop.rule);
            Danger {
                code: stop.warning,
                kind: stop.kind,
                text: warning(stop.warning),
                because: Phrase::new(format!("because.{}", stop.rule)),
                meanwhile: if asks { say("meanwhile", stop.meanwhile) } else { vec![] },
                mends: mends.map(|(_, step)| step.clone()).collect(),
                card: if card_at == Some(at) { say("card", &card(home, leave)) } else { vec![] },
            }
        })
        .collect()
}

fn say(folder: &str, names: &[&str]) -> Vec<Phrase> {
    names.iter().map(|name| Phrase::new(format!("{folder}.{name}"))).collect()
}

/// A warning in words.
pub(super) fn warning(code: Warning) -> Phrase {
    Phrase::new(format!("warning.{}", code.0))
}

/// Who has to leave is asked for nothing that is done in the home.
fn card(home: &Home, leave: bool) -> Vec<&'static str> {
    let mut lines = vec!["where_to_stay"];
    if !leave {
        lines.extend(["heat_tonight", "water_tonight", "tag"]);
    }
    lines.push("help_211");
    if home.building.tenure == Some(Tenure::RentsHome) {
        lines.extend(["landlord_told", "legal_aid"]);
    }
    lines
}
