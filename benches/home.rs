//! A year of weather, and all that is said of a home.

use winterseam::climate::{Atlas, Year};
use winterseam::wire::{Tree, assess};

const DEMO: &str = include_str!("../core/examples/homes/demo.json");

/// The hours of a year from the normals of a station; their warmth summed.
pub(crate) fn year() -> f64 {
    let station = Atlas::embedded().station("727730");
    let year = station.map(|station| Year::of(&station));
    year.map_or(0.0, |year| year.hours().map(|hour| hour.air.value).sum())
}

/// The demo home from JSON text to a plan in JSON text; what its firsts save at best, dollars.
pub(crate) fn plan() -> f64 {
    let answer =
        Tree::from_json(DEMO).and_then(|request| assess(&request, Some(Atlas::embedded())));
    let Ok(answer) = answer else { return 0.0 };
    let _ = std::hint::black_box(serde_json::to_string(&answer));
    answer.firsts.iter().filter_map(|step| Some(step.saving.as_ref()?.high)).sum()
}
