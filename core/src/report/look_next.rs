//! The few unknowns whose answer could change the plan.

use super::Phrase;
use crate::ducts::{Next, diagnosis};
use crate::home::{CableControl, Fuel, Gap, GapPlace, Home};
use crate::safety::{Lines, Meaning, meaning};

/// Nobody answers more than three.
const AT_MOST: usize = 3;

type Question = (&'static str, fn(&Home, &Lines) -> bool);

/// What is asked, the most telling first.
const QUESTIONS: &[Question] = &[
    ("co_alarm", |h, _| h.first_look.co_alarm.is_none() && h.something_burns() != Some(false)),
    ("smoke_alarm", |h, _| h.first_look.smoke_alarm.is_none()),
    ("stove", |h, _| {
        h.heating.fuel.is_some_and(Fuel::in_a_stove) && h.heating.stove_clear.is_none()
    }),
    ("tap_asked_back", cool_tap),
    ("tap", |h, _| h.water_heater.tap.is_none()),
    ("people", |h, _| h.water_heater.tap.is_some() && h.people.burn_faster().is_none()),
    ("heater_kind", |h, _| h.water_heater.kind.is_none()),
    ("openings", |h, _| {
        h.burner_may_need_air()
            && h.water_heater.kind.is_some()
            && h.water_heater.openings.is_none()
    }),
    ("closet", closet_unseen),
    ("technician", technician_next),
    ("heat_cable", |h, _| h.cable.is_none()),
    ("cable_control", |h, _| h.cable.as_ref().is_some_and(|c| c.present && c.control.is_none())),
    ("cable_thermostat", |h, _| {
        h.cable.as_ref().is_some_and(|c| {
            c.present
                && c.control == Some(CableControl::Thermostat)
                && c.thermostat_proved.is_none()
        })
    }),
    ("zip", |h, _| h.building.zip.is_none()),
    ("filter", |h, _| h.filter.look.is_none() && h.filter.in_use.is_none()),
    ("airflow_rise", |h, _| next_of_airflow(h) == Some(Next::Rise)),
    ("airflow_label", |h, _| next_of_airflow(h) == Some(Next::Label)),
    ("airflow_far", |h, _| next_of_airflow(h) == Some(Next::FarAir)),
    ("airflow_bag", |h, _| next_of_airflow(h) == Some(Next::NearBag)),
    ("airflow_far_bag", |h, _| next_of_airflow(h) == Some(Next::FarBag)),
    ("fuel_price", |h, _| !h.gaps.is_empty() && !price_known(h)),
    ("gaps", |h, _| h.gaps.is_empty()),
];

/// What to measure next at furnace and registers, once somebody has begun to.
fn next_of_airflow(home: &Home) -> Option<Next> {
    diagnosis(home)?.next
}

/// Whether a gap at the closet waits for a look into it.
fn closet_unseen(home: &Home, _: &Lines) -> bool {
    let heater = &home.water_heater;
    has_closet_gap(home)
        && home.burner_in_closet().is_none_or(|burner| !burner && heater.old_flue_open.is_none())
}

/// Whether a gap at the closet of a burner waits for a technician's look at it.
fn technician_next(home: &Home, _: &Lines) -> bool {
    has_closet_gap(home)
        && home.burner_in_closet() == Some(true)
        && home.water_heater.checked_by_technician.is_none()
}

fn has_closet_gap(home: &Home) -> bool {
    let at_closet =
        |gap: &Gap| matches!(gap.place, GapPlace::ClosetInnerPanel | GapPlace::ClosetOuterDoor);
    home.gaps.iter().any(at_closet)
}

/// Whether the heat of the gaps can be told in dollars.
fn price_known(home: &Home) -> bool {
    let electric = home.heating.fuel.is_some_and(|fuel| !fuel.burns());
    let unmetered = home.heating.fuel.is_some_and(Fuel::in_a_stove);
    unmetered
        || home.heating.fuel.is_some() && home.heating.price.is_some()
        || electric && home.electricity_price.is_some()
}

/// A reading so cool that it is asked back: the cold tap, the heater off, or °C?
fn cool_tap(home: &Home, lines: &Lines) -> bool {
    meaning(home, lines) == Some(Meaning::AskBack)
}

pub(super) fn look_next(home: &Home, lines: &Lines) -> Vec<Phrase> {
    QUESTIONS
        .iter()
        .filter(|(_, open)| open(home, lines))
        .take(AT_MOST)
        .map(|(name, _)| Phrase::new(format!("look.{name}")))
        .collect()
}
