//! The picture of the tap: how soon water burns, from warm to very hot, with this home's reading in
//! it; and what to do next about it. A table says the same as the picture.

use super::findings::{told, who_is, whose};
use super::{Phrase, coach};
use crate::balance::Weather;
use crate::home::Home;
use crate::hot_water::{LONGEST_S, Person, WordedTime, burn_time, thermometer_error};
use crate::math;
use crate::plan::Plan;
use crate::units::{fahrenheit, in_fahrenheit};
use uom::si::f64::Time;
use uom::si::time::second;

/// From warm to very hot water, °F.
const FROM_F: f64 = 110.0;
const TO_F: f64 = 160.0;
const STEP_F: f64 = 5.0;
/// The shortest time that has a place of its own.
const SHORTEST_S: f64 = 0.1;
/// Lines across the picture: how long, and in which words.
const TICKS: [(f64, &str, u32); 6] = [
    (1.0, "axis.seconds", 1),
    (10.0, "axis.seconds", 10),
    (60.0, "axis.minutes", 1),
    (600.0, "axis.minutes", 10),
    (3_600.0, "axis.hours", 1),
    (LONGEST_S, "axis.hours", 6),
];

/// The picture and its table, and what the coach says.
#[derive(Debug, Clone, PartialEq)]
pub struct Tap {
    /// The reading, °F.
    pub reading: f64,
    /// Whose times they are.
    pub people: Vec<Phrase>,
    /// Water from warm to very hot, the reading among it.
    pub rows: Vec<TapRow>,
    /// Lines across the picture.
    pub ticks: Vec<(f64, Phrase)>,
    /// What to do next, in order.
    pub coach: Vec<Phrase>,
}

/// One temperature.
#[derive(Debug, Clone, PartialEq)]
pub struct TapRow {
    /// The water, °F.
    pub water: f64,
    /// How far it lies to the right in the picture, 0 to 1.
    pub across: f64,
    /// Whether it is the reading.
    pub is_reading: bool,
    /// For each of the people: how high it lies in the picture, 0 to 1, and the time in words.
    pub times: Vec<(f64, Phrase)>,
}

pub(super) fn tap(home: &Home, weather: Option<&Weather<'_>>, plan: &Plan) -> Option<Tap> {
    let reading = in_fahrenheit(home.water_heater.tap?);
    let people = whose(home.people);
    let mut waters: Vec<f64> = (0..=10_u32).map(|i| FROM_F + STEP_F * f64::from(i)).collect();
    let in_picture = (FROM_F..=TO_F).contains(&reading);
    if in_picture && waters.iter().all(|water| (water - reading).abs() > 0.5) {
        waters.push(reading);
        math::put_in_order(&mut waters, |one, other| one < other);
    }
    Some(Tap {
        reading: reading.round(),
        rows: waters.into_iter().map(|water| row(home, &people, water, reading)).collect(),
        people: people.into_iter().map(who_is).collect(),
        ticks: TICKS.map(|(at, key, n)| (height(at), Phrase::new(key).with("n", n))).to_vec(),
        coach: coach::coach(home, weather, plan),
    })
}

fn row(home: &Home, people: &[Person], water: f64, reading: f64) -> TapRow {
    let error = thermometer_error(home.water_heater.thermometer_checked == Some(true));
    let time = |person: &Person| {
        let low = burn_time(fahrenheit(water), error, *person).ok()?.low;
        let longest = Time::new::<second>(LONGEST_S);
        let place = height(low.unwrap_or(longest).get::<second>());
        Some((place, told(WordedTime::rounded_down(low))))
    };
    TapRow {
        water: water.round(),
        across: (water - FROM_F) / (TO_F - FROM_F),
        is_reading: (water - reading).abs() <= 0.5,
        times: people.iter().filter_map(time).collect(),
    }
}

/// Times lie on a scale of equal factors, the longest on top.
fn height(seconds: f64) -> f64 {
    let share = math::ln(seconds / SHORTEST_S) / math::ln(LONGEST_S / SHORTEST_S);
    share.clamp(0.0, 1.0)
}
