//! Alarms, smells, symptoms and flames where none belong.

use super::{Kind, Lines, Stop, Warning};
use crate::home::{Alarm, Home};

pub(super) fn gas_smell(home: &Home, _: &Lines) -> Option<Stop> {
    (home.first_look.gas_smell == Some(true))
        .then(|| Stop::new("gas_smell", Warning::GAS_SMELL, Kind::Out).taking_away())
}

pub(super) fn carbon_monoxide(home: &Home, _: &Lines) -> Option<Stop> {
    let look = &home.first_look;
    let danger = look.symptoms == Some(true) || look.co_alarm == Some(Alarm::Sounding);
    danger.then(|| Stop::new("carbon_monoxide", Warning::CO_EMERGENCY, Kind::Out).taking_away())
}

pub(super) fn smoke_alarm_sounding(home: &Home, _: &Lines) -> Option<Stop> {
    (home.first_look.smoke_alarm == Some(Alarm::Sounding))
        .then(|| Stop::new("smoke_alarm_sounding", Warning::ALARM_SOUNDS, Kind::Out))
}

pub(super) fn flame_indoors(home: &Home, _: &Lines) -> Option<Stop> {
    (home.first_look.flame_indoors == Some(true))
        .then(|| Stop::new("flame_indoors", Warning::FLAME_INDOORS, Kind::Out).taking_away())
}

pub(super) fn oven_for_heat(home: &Home, _: &Lines) -> Option<Stop> {
    (home.first_look.oven_for_heat == Some(true))
        .then(|| Stop::new("oven_for_heat", Warning::OVEN_HEAT, Kind::Today))
}

/// No alarm that works: today where something burns, this week where nobody knows.
pub(super) fn co_alarm_missing(home: &Home, _: &Lines) -> Option<Stop> {
    let alarm = home.first_look.co_alarm?;
    let dead = matches!(alarm, Alarm::Missing | Alarm::Expired | Alarm::Chirping);
    let kind = match home.something_burns() {
        Some(true) => Kind::Today,
        None => Kind::Soon,
        Some(false) => return None,
    };
    dead.then(|| Stop::new("co_alarm_missing", Warning::CO, kind))
}

pub(super) fn smoke_alarm_missing(home: &Home, _: &Lines) -> Option<Stop> {
    matches!(home.first_look.smoke_alarm?, Alarm::Missing | Alarm::Expired)
        .then(|| Stop::new("smoke_alarm_missing", Warning::SMOKE_ALARM, Kind::Today))
}

pub(super) fn alarm_chirps(home: &Home, _: &Lines) -> Option<Stop> {
    let look = &home.first_look;
    [look.co_alarm, look.smoke_alarm]
        .contains(&Some(Alarm::Chirping))
        .then(|| Stop::new("alarm_chirps", Warning::ALARM_SOUNDS, Kind::Soon))
}
