//! Wiring, water near it, and the way out.

use super::{Kind, Lines, Stop, Warning};
use crate::home::Home;

pub(super) fn hot_wiring(home: &Home, _: &Lines) -> Option<Stop> {
    (home.first_look.hot_wiring == Some(true)).then(|| {
        Stop::new("hot_wiring", Warning::HOT_WIRE, Kind::Off)
            .meanwhile(&["breaker_check"])
            .taking_away()
    })
}

pub(super) fn tingle(home: &Home, _: &Lines) -> Option<Stop> {
    (home.first_look.metal_tingles == Some(true))
        .then(|| Stop::new("tingle", Warning::TINGLE, Kind::Today))
}

pub(super) fn water_below(home: &Home, _: &Lines) -> Option<Stop> {
    (home.first_look.water_below == Some(true))
        .then(|| Stop::new("water_below", Warning::WET_CRAWL, Kind::Out).below_the_home())
}

pub(super) fn no_way_out(home: &Home, _: &Lines) -> Option<Stop> {
    (home.first_look.ways_out == Some(false))
        .then(|| Stop::new("no_way_out", Warning::EXIT, Kind::Today))
}
