//! A year of weather, and all that is said of a home.

use std::sync::LazyLock;
use uom::si::energy::kilowatt_hour;
use winterseam::balance::{Weather, assess as assess_home};
use winterseam::climate::{Atlas, Place, Year};
use winterseam::freeze::{CableSeen, cable_year};
use winterseam::home::Home;
use winterseam::wire::{Tree, assess, home};

const DEMO: &str = include_str!("../core/examples/homes/demo.json");

/// The hours of a year from the normals of a station; their warmth summed.
pub(crate) fn year() -> f64 {
    let station = Atlas::embedded().station("727730");
    let year = station.map(|station| Year::of(&station));
    year.map_or(0.0, |year| year.hours().map(|hour| hour.air.value).sum())
}

/// A place and the hours of its year.
static PLACE: LazyLock<(Place, Year)> = LazyLock::new(|| {
    let place = Atlas::embedded().place("59801").expect("a ZIP area of the tables");
    let year = Year::of(&place.station);
    (place, year)
});

/// The year of the demo home's heat cable, kWh.
pub(crate) fn cable() -> f64 {
    let cable = DEMO_HOME.cable.as_ref().and_then(CableSeen::of);
    let year = |cable: CableSeen| cable_year(&cable.best(), &PLACE.1, PLACE.0.station.freeze);
    cable.map_or(0.0, |cable| year(cable).electricity.get::<kilowatt_hour>())
}

static DEMO_HOME: LazyLock<Home> = LazyLock::new(|| {
    let request = Tree::from_json(DEMO).expect("JSON");
    home(&request).expect("a walk")
});

/// The whole year of the demo home, from nothing, kWh bought.
pub(crate) fn balance() -> f64 {
    let weather = Weather { place: &PLACE.0, year: &PLACE.1 };
    assess_home(&DEMO_HOME, &weather).bought().get::<kilowatt_hour>()
}

/// The demo home from JSON text to a plan in JSON text; what its firsts save at best, dollars.
pub(crate) fn plan() -> f64 {
    let answer =
        Tree::from_json(DEMO).and_then(|request| assess(&request, Some(Atlas::embedded())));
    let Ok(answer) = answer else { return 0.0 };
    let _ = std::hint::black_box(serde_json::to_string(&answer));
    answer.firsts.iter().filter_map(|step| Some(step.saving.as_ref()?.high)).sum()
}
