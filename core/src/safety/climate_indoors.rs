//! Rooms too cold or too hot to stay in.

use super::lines::reaches;
use super::{Kind, Lines, Stop, Warning};
use crate::home::Home;

pub(super) fn too_cold(home: &Home, lines: &Lines) -> Option<Stop> {
    let indoors = home.building.indoors?;
    let heat = home.first_look.heat_holds;
    let frail = match home.people.frail_indoors() {
        Some(true) => heat != Some(true),
        None => heat == Some(false),
        Some(false) => false,
    };
    let line = if frail { lines.cold_frail } else { lines.cold_anyone };
    (!reaches(indoors, line))
        .then(|| Stop::new("too_cold", Warning::NO_HEAT, Kind::Today).taking_away())
}

pub(super) fn too_hot(home: &Home, lines: &Lines) -> Option<Stop> {
    let indoors = home.building.indoors?;
    let line = if home.people.frail_indoors() == Some(true) {
        lines.heat_frail
    } else {
        lines.heat_anyone
    };
    reaches(indoors, line).then(|| Stop::new("too_hot", Warning::NO_COOLING, Kind::Today))
}
