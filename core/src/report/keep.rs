//! What not to touch in this home.

use super::{Phrase, burner_air};
use crate::home::Home;

pub(super) fn do_not_touch(home: &Home) -> Vec<Phrase> {
    let mut names = vec![];
    if burner_air::may_be_needed(home) {
        names.extend(["burner_openings", "closet_outside", "closet_gaps", "flue", "gas_lines"]);
    }
    names.push("relief_valve");
    if home.cable.as_ref().is_none_or(|cable| cable.present) {
        names.push("heat_cable");
    }
    names.extend(["outlet_boxes", "escape_windows", "weep_holes"]);
    names.into_iter().map(|name| Phrase::new(format!("keep.{name}"))).collect()
}
