//! Stops in words.

use super::Phrase;
use crate::home::Home;
use crate::home::Tenure;
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
    /// The next twenty-four hours, where heat, gas, water or power is lost.
    pub card: Vec<Phrase>,
}

pub(super) fn danger(home: &Home, stop: &Stop) -> Danger {
    let say = |names: &[&str], folder: &str| -> Vec<Phrase> {
        names.iter().map(|name| Phrase::new(format!("{folder}.{name}"))).collect()
    };
    Danger {
        code: stop.warning,
        kind: stop.kind,
        text: warning(stop.warning),
        because: Phrase::new(format!("because.{}", stop.rule)),
        meanwhile: say(stop.meanwhile, "meanwhile"),
        card: if stop.takes_away { say(&card(home), "card") } else { vec![] },
    }
}

/// A warning in words.
pub(super) fn warning(code: Warning) -> Phrase {
    Phrase::new(format!("warning.{}", code.0))
}

fn card(home: &Home) -> Vec<&'static str> {
    let mut lines = vec!["where_to_stay", "heat_tonight", "water_tonight", "tag", "help_211"];
    if home.building.tenure == Some(Tenure::RentsHome) {
        lines.extend(["landlord_told", "legal_aid"]);
    }
    lines
}
