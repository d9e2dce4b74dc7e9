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

/// Dead heat in the cold months, where nobody read how cold it is inside.
pub(super) fn heat_out(home: &Home, _: &Lines) -> Option<Stop> {
    let cold_months = !(5..=9).contains(&home.today.month());
    let dead = home.first_look.heat_holds == Some(false) && home.building.indoors.is_none();
    (cold_months && dead)
        .then(|| Stop::new("heat_out", Warning::NO_HEAT, Kind::Today).taking_away())
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
