//! The few unknowns whose answer could change the plan.

use super::Phrase;
use crate::home::Home;

/// Nobody answers more than three.
const AT_MOST: usize = 3;

type Question = (&'static str, fn(&Home) -> bool);

/// What is asked, the most telling first.
const QUESTIONS: &[Question] = &[
    ("co_alarm", |h| h.first_look.co_alarm.is_none() && h.something_burns() != Some(false)),
    ("smoke_alarm", |h| h.first_look.smoke_alarm.is_none()),
    ("tap_asked_back", cool_tap),
    ("tap", |h| h.water_heater.tap.is_none()),
    ("people", |h| {
        h.water_heater.tap.is_some()
            && !h.people.burn_faster()
            && [h.people.child_under_5, h.people.age_65_or_more, h.people.cannot_feel_or_move]
                .contains(&None)
    }),
    ("heater_kind", |h| h.water_heater.kind.is_none()),
    ("openings", |h| {
        h.burner_may_need_air()
            && h.water_heater.kind.is_some()
            && h.water_heater.openings.is_none()
    }),
    ("heat_cable", |h| h.cable.is_none()),
    ("cable_control", |h| h.cable.as_ref().is_some_and(|c| c.present && c.control.is_none())),
    ("zip", |h| h.building.zip.is_none()),
    ("filter", |h| h.filter.look.is_none() && h.filter.in_use.is_none()),
    ("fuel_price", |h| {
        !h.gaps.is_empty()
            && (h.heating.fuel.is_none()
                || (h.heating.price.is_none() && h.electricity_price.is_none()))
    }),
    ("gaps", |h| h.gaps.is_empty()),
];

/// A reading so cool that it is asked back: the cold tap, the heater off, or °C?
fn cool_tap(home: &Home) -> bool {
    let line = crate::safety::Lines::default().cool_tap;
    home.water_heater.tap.is_some_and(|tap| tap < line)
}

pub(super) fn look_next(home: &Home) -> Vec<Phrase> {
    QUESTIONS
        .iter()
        .filter(|(_, open)| open(home))
        .take(AT_MOST)
        .map(|(name, _)| Phrase::new(format!("look.{name}")))
        .collect()
}
