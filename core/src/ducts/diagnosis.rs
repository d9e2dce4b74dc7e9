//! Whether a furnace is short of air, whether its ducts lose it on the way, or both: how likely each
//! is after what was measured.

use super::bag;
use super::leak::{GoesTo, goes_to};
use crate::home::{Crossover, DuctGap, DuctsFound, FilterLook, Heating, Home};
use crate::math::{exp, sqrt};
use crate::units::volume_rate::cfm;
use crate::units::warmer_by;
use uom::si::f64::{Ratio, TemperatureInterval, Time};
use uom::si::ratio::ratio;
use uom::si::temperature_interval::degree_fahrenheit;

/// One home in three has each fault: odds of one to two.
const ODDS: f64 = 0.5;
/// A label that nobody read: rises that furnaces of such homes allow, °F.
const USUAL_LABEL_F: (f64, f64) = (45.0, 75.0);

/// What to measure next, the cheapest first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Next {
    /// The thermometer in the nearest register and in the return.
    Rise,
    /// The label of the furnace.
    Label,
    /// The thermometer in the farthest register.
    FarAir,
    /// The bag over the nearest register.
    NearBag,
    /// The bag over the farthest register.
    FarBag,
}

/// How likely each fault is; `None` where nothing that was measured or seen tells of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Diagnosis {
    /// The furnace is short of air.
    pub short_of_air: Option<Ratio>,
    /// Air is lost on the way.
    pub lost_on_the_way: Option<Ratio>,
    /// What would tell more; `None` where all was measured.
    pub next: Option<Next>,
}

/// What a reading is where the fault is and where it is not, and how far readings spread round each.
/// With one spread for both a reading further off never tells less.
struct Telling {
    fault: f64,
    sound: f64,
    spread: f64,
}

impl Telling {
    /// How much likelier the reading is with the fault than without; no reading tells more than
    /// twenty to one.
    fn of(&self, reading: f64) -> f64 {
        let halfway = f64::midpoint(self.fault, self.sound);
        let apart = (self.fault - self.sound) / self.spread;
        exp(apart * (reading - halfway) / self.spread).clamp(0.05, 20.0)
    }
}

/// What readings and signs say of furnace and ducts; `None` where there are none.
///
/// # Equation
/// ```text
/// P = o ÷ (1 + o), o = ½ · Π s · Π exp((f − g) · (x − (f + g)/2) ÷ σ²)
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `P` | how likely a fault is | – | `short_of_air`, `lost_on_the_way` |
/// | `o` | odds for it | – | `odds` |
/// | `s` | how much likelier what was seen makes it | – | `signs`, `signs_of_loss` |
/// | `x` | rise, cfm by the bag, drop from near to far in °F, far over near by the bag | | readings |
/// | `f`, `g` | mean of the reading with the fault, without it | like `x` | `fault`, `sound` |
/// | `σ` | spread round each mean: bell curves alike | like `x` | `spread` |
///
/// # Source
/// [`AIRFLOW_DIAGNOSIS`](crate::sources::ducts::AIRFLOW_DIAGNOSIS); means and spreads are judgement,
/// with 3 °F for each reading of a thermometer and 15 % for the bag in them.
///
/// # Valid for
/// Readings after ten minutes of heating. Each reading is taken to tell on its own.
///
/// # Leaves out
/// A furnace whose burner or elements are at fault, which warms the air less.
///
/// # Examples
/// ```
/// use winterseam::ducts::diagnosis;
/// use winterseam::wire::{Tree, home};
///
/// let walk = r#"{"today": "2026-02-22", "ducts": {"supply_f": 164, "return_f": 70},
///     "heating": {"label_rise_min_f": 55, "label_rise_max_f": 85}}"#;
/// let home = home(&Tree::from_json(walk).unwrap()).unwrap();
/// let found = diagnosis(&home).unwrap();
/// assert!(found.short_of_air.unwrap().value > 0.8);
/// assert_eq!(found.lost_on_the_way, None);
/// ```
#[must_use]
pub fn diagnosis(home: &Home) -> Option<Diagnosis> {
    let (found, heating) = (&home.ducts, &home.heating);
    let short = [rise_tells(found, heating), near_bag_tells(found)];
    let seen = signs(home);
    let diagnosis = Diagnosis {
        // Dirt in a filter alone is told of by itself.
        short_of_air: likely(seen * dirt(home), &short, seen > 1.0),
        lost_on_the_way: likely(signs_of_loss(found), &lost_on_the_way(found), false),
        next: next(found, heating),
    };
    let any = diagnosis.short_of_air.is_some() || diagnosis.lost_on_the_way.is_some();
    any.then_some(diagnosis)
}

/// How likely a fault is by its signs and readings; without a reading only where signs are enough.
fn likely(signs: f64, readings: &[Option<f64>], signs_are_enough: bool) -> Option<Ratio> {
    let told = signs_are_enough || readings.iter().any(Option::is_some);
    let odds = readings.iter().flatten().fold(ODDS * signs, |odds, tells| odds * tells);
    told.then(|| Ratio::new::<ratio>(odds / (1.0 + odds)))
}

/// Rise of the air from return to nearest register, as [`rise`](super::rise()) reckons it.
#[must_use]
pub fn rise_found(found: &DuctsFound) -> Option<TemperatureInterval> {
    Some(warmer_by(found.near_air?, found.return_air?))
}

fn fahrenheit(apart: TemperatureInterval) -> f64 {
    apart.get::<degree_fahrenheit>()
}

fn filled(time: Option<Time>) -> Option<f64> {
    Some(bag::flow(time?, bag::Direction::Filling)?.flow.best.get::<cfm>())
}

/// Error of a difference of two readings of a thermometer, °F.
fn of_two_readings() -> f64 {
    3.0 * sqrt(2.0)
}

fn rise_tells(found: &DuctsFound, heating: &Heating) -> Option<f64> {
    let (min, max) =
        heating.label_rise.map_or(USUAL_LABEL_F, |(min, max)| (fahrenheit(min), fahrenheit(max)));
    let quarter = (max - min) / 4.0;
    let error = of_two_readings();
    let rise = Telling {
        fault: max + quarter,
        sound: f64::midpoint(min, max),
        spread: sqrt(quarter * quarter + error * error),
    };
    rise_found(found).map(|found| rise.of(fahrenheit(found)))
}

fn near_bag_tells(found: &DuctsFound) -> Option<f64> {
    let bag = Telling { fault: 40.0, sound: 75.0, spread: 18.0 };
    filled(found.near_bag).map(|flow| bag.of(flow))
}

fn product(signs: &[(bool, f64)]) -> f64 {
    signs.iter().filter(|(seen, _)| *seen).map(|(_, likelier)| likelier).product()
}

/// What was seen without an instrument: each sign makes a furnace short of air so much likelier, by
/// judgement.
fn signs(home: &Home) -> f64 {
    let found = &home.ducts;
    let many_closed = |(all, closed): (u8, u8)| f64::from(closed) > 0.2 * f64::from(all);
    product(&[
        (found.registers.zip(found.closed).is_some_and(many_closed), 2.0),
        (found.return_blocked == Some(true), 3.0),
        (found.blower_dirty == Some(true), 3.0),
        (found.short_cycles == Some(true), 3.0),
    ])
}

/// The same of what is in the filter.
fn dirt(home: &Home) -> f64 {
    match home.filter.look {
        Some(FilterLook::Dim) => 2.0,
        Some(FilterLook::Blocked) => 5.0,
        _ => 1.0,
    }
}

/// The same of air that is lost on the way.
fn signs_of_loss(found: &DuctsFound) -> f64 {
    let leads_out = |to| matches!(to, GoesTo::Belly | GoesTo::Outdoors);
    let leaks = |gap: &DuctGap| !gap.sealed && leads_out(goes_to(gap.place, gap.air));
    product(&[
        (found.crossover == Some(Crossover::Loose), 4.0),
        (found.crossover == Some(Crossover::Fallen), 20.0),
        (found.gaps.iter().any(leaks), 3.0),
    ])
}

fn lost_on_the_way(found: &DuctsFound) -> [Option<f64>; 2] {
    let drop = Telling { fault: 20.0, sound: 6.0, spread: 7.0 };
    let share = Telling { fault: 0.45, sound: 0.85, spread: 0.2 };
    let cooled = found.near_air.zip(found.far_air).map(|(near, far)| warmer_by(near, far));
    let far_of_near = filled(found.near_bag).zip(filled(found.far_bag));
    [cooled.map(|x| drop.of(fahrenheit(x))), far_of_near.map(|(near, far)| share.of(far / near))]
}

fn next(found: &DuctsFound, heating: &Heating) -> Option<Next> {
    [
        (found.near_air.is_none() || found.return_air.is_none(), Next::Rise),
        (heating.label_rise.is_none(), Next::Label),
        (found.far_air.is_none(), Next::FarAir),
        (found.near_bag.is_none(), Next::NearBag),
        (found.far_bag.is_none(), Next::FarBag),
    ]
    .into_iter()
    .find_map(|(open, next)| open.then_some(next))
}
