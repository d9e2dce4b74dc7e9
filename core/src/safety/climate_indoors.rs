//! Rooms too cold or too hot to stay in.

use super::lines::reaches;
use super::{Kind, Lines, Stop, Warning};
use crate::home::Home;

pub(super) fn too_cold(home: &Home, lines: &Lines) -> Option<Stop> {
    let indoors = home.building.indoors?;
    let frail = home.people.frail_in_cold() && home.first_look.heat_holds == Some(false);
    let line = if frail { lines.cold_frail } else { lines.cold_anyone };
    (!reaches(indoors, line))
        .then(|| Stop::new("too_cold", Warning::NO_HEAT, Kind::Today).taking_away())
}

pub(super) fn too_hot(home: &Home, lines: &Lines) -> Option<Stop> {
    let indoors = home.building.indoors?;
    let line = if home.people.frail_in_cold() { lines.heat_frail } else { lines.heat_anyone };
    reaches(indoors, line).then(|| Stop::new("too_hot", Warning::NO_COOLING, Kind::Today))
}
