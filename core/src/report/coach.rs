//! How to bring the tap to its temperature, step by step.

use super::Phrase;
use crate::balance::{self, Weather};
use crate::home::{HeaterKind, Home, Tenure, Turn};
use crate::hot_water::coach::{Advice, advice};
use crate::hot_water::{Target, target};
use crate::plan::Plan;
use crate::units::in_fahrenheit;
use uom::si::f64::ThermodynamicTemperature;
use uom::si::{time::hour, volume::gallon};

/// A wait up to this is told in hours.
const TOLD_IN_HOURS: f64 = 36.0;

/// What to do next with dial, panel or valve; nothing where there is nothing to turn, or where a stop
/// keeps everyone from it.
pub(super) fn coach(home: &Home, weather: Option<&Weather<'_>>, plan: &Plan) -> Vec<Phrase> {
    let turns = &home.water_heater.turns;
    let Some(last) = turns.last().filter(|_| !plan.holds_back("turn_down")) else { return vec![] };
    let too_hot = |target| matches!(advice(&[*last], target), Some(Advice::Down(_)));
    let said = match target(home) {
        Target::TurnTo(target) => turn(home, weather, turns, target),
        Target::StoreHotAndMix(target) if too_hot(target) => vec![say("care")],
        Target::SetValve(target) if too_hot(target) => vec![say("valve")],
        _ => vec![],
    };
    let asks_first = !said.is_empty() && home.building.tenure == Some(Tenure::RentsHome);
    asks_first.then(|| say("renter")).into_iter().chain(said).collect()
}

fn turn(
    home: &Home,
    weather: Option<&Weather<'_>>,
    turns: &[Turn],
    target: ThermodynamicTemperature,
) -> Vec<Phrase> {
    let tried = turns.len() > 1;
    let kind = home.water_heater.kind;
    let numbered = kind.is_some_and(|kind| kind == HeaterKind::HeatPump || !kind.has_tank());
    let (key, marks) = match advice(turns, target) {
        Some(Advice::Down(_)) if numbered => {
            return vec![say("number").with("target", in_fahrenheit(target).round())];
        }
        Some(Advice::Down(marks)) => ("down", marks),
        Some(Advice::Back(marks)) => ("back", marks),
        Some(Advice::Stay) if tried => return vec![say("stay")],
        _ => return vec![],
    };
    let first = match kind {
        Some(HeaterKind::Electric) => vec![say("both_thermostats"), say("cover_back")],
        None => vec![say("kind_first")],
        Some(_) if !tried => vec![say("pencil")],
        Some(_) => vec![],
    };
    let step = say(key).with("marks", marks_in_words(marks));
    first.into_iter().chain([step]).chain(wait(home, weather, turns, target)).collect()
}

fn wait(
    home: &Home,
    weather: Option<&Weather<'_>>,
    turns: &[Turn],
    target: ThermodynamicTemperature,
) -> Option<Phrase> {
    let from = turns.last()?.tap.max(target);
    let wait = balance::settles(home, weather, from, target)?;
    let hours = wait.time.get::<hour>().ceil();
    let (key, n) = if hours <= TOLD_IN_HOURS {
        ("wait_hours", hours)
    } else {
        ("wait_days", (hours / 24.0).ceil())
    };
    let gallons = (wait.tankful.get::<gallon>() / 5.0).ceil() * 5.0;
    Some(say(key).with("n", n).with("gallons", gallons))
}

fn say(name: &str) -> Phrase {
    Phrase::new(format!("coach.{name}"))
}

/// Quarters of a mark, as the coach counts them.
fn marks_in_words(marks: f64) -> Phrase {
    Phrase::new(match marks {
        m if m < 0.4 => "marks.quarter",
        m if m < 0.6 => "marks.half",
        m if m < 0.9 => "marks.three_quarters",
        _ => "marks.one",
    })
}
