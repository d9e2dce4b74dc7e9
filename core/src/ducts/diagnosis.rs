//! Whether a furnace is short of air, whether its ducts lose it on the way, or both: how likely each
//! is after what was measured.

use super::bag;
use crate::home::{DuctsFound, FilterLook, Heating, Home};
use crate::math::exp;
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

/// How likely each fault is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Diagnosis {
    /// The furnace is short of air.
    pub short_of_air: Ratio,
    /// Air is lost on the way.
    pub lost_on_the_way: Ratio,
    /// What would tell more; `None` where all was measured.
    pub next: Option<Next>,
}

/// A reading where the fault is, and where it is not: mean and spread of each.
struct Telling {
    fault: (f64, f64),
    sound: (f64, f64),
}

impl Telling {
    /// How much likelier the reading is with the fault than without; no reading tells more than
    /// twenty to one.
    fn of(&self, reading: f64) -> f64 {
        let bell = |(mean, spread): (f64, f64)| {
            let off = (reading - mean) / spread;
            exp(-off * off / 2.0) / spread
        };
        (bell(self.fault) / bell(self.sound).max(1e-12)).clamp(0.05, 20.0)
    }
}

/// What the readings say of furnace and ducts; `None` where nothing was measured.
///
/// # Equation
/// ```text
/// P = o ÷ (1 + o), o = ½ · Π s · Π b(x; fault) ÷ b(x; sound)
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `P` | how likely a fault is | – | `short_of_air`, `lost_on_the_way` |
/// | `o` | odds for it | – | `odds` |
/// | `s` | how much likelier a sign makes it: filter, registers, return, blower, cycles | – | `signs` |
/// | `b` | bell curve of a reading, with the fault and without | – | `Telling` |
/// | `x` | rise, cfm by the bag, drop from near to far in °F, far over near by the bag | | readings |
///
/// # Source
/// [`AIRFLOW_DIAGNOSIS`](crate::sources::ducts::AIRFLOW_DIAGNOSIS); means and spreads are judgement,
/// with 3 °F for thermometers and 15 % for the bag in them.
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
/// assert!(diagnosis(&home).unwrap().short_of_air.value > 0.8);
/// ```
#[must_use]
pub fn diagnosis(home: &Home) -> Option<Diagnosis> {
    let (found, heating) = (&home.ducts, &home.heating);
    let (short, lost) = (short_of_air(found, heating), lost_on_the_way(found));
    let any = short.iter().chain(&lost).any(Option::is_some);
    let likely = |first: f64, tell: &[Option<f64>]| {
        let odds = tell.iter().flatten().fold(first, |odds, tells| odds * tells);
        Ratio::new::<ratio>(odds / (1.0 + odds))
    };
    any.then(|| Diagnosis {
        short_of_air: likely(ODDS * signs(home), &short),
        lost_on_the_way: likely(ODDS, &lost),
        next: next(found, heating),
    })
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

fn short_of_air(found: &DuctsFound, heating: &Heating) -> [Option<f64>; 2] {
    let (min, max) =
        heating.label_rise.map_or(USUAL_LABEL_F, |(min, max)| (fahrenheit(min), fahrenheit(max)));
    let range = max - min;
    let rise = Telling {
        fault: (max + range / 4.0, range / 2.0),
        sound: (f64::midpoint(min, max), range / 4.0 + 3.0),
    };
    let bag = Telling { fault: (40.0, 15.0), sound: (75.0, 20.0) };
    [rise_found(found).map(|x| rise.of(fahrenheit(x))), filled(found.near_bag).map(|x| bag.of(x))]
}

/// What was seen without an instrument: each sign makes a furnace short of air so much likelier, by
/// judgement.
fn signs(home: &Home) -> f64 {
    let found = &home.ducts;
    let many_closed = |(all, closed): (u8, u8)| f64::from(closed) > 0.2 * f64::from(all);
    [
        (matches!(home.filter.look, Some(FilterLook::Dim)), 2.0),
        (matches!(home.filter.look, Some(FilterLook::Blocked)), 5.0),
        (found.registers.zip(found.closed).is_some_and(many_closed), 2.0),
        (found.return_blocked == Some(true), 3.0),
        (found.blower_dirty == Some(true), 3.0),
        (found.short_cycles == Some(true), 3.0),
    ]
    .into_iter()
    .filter(|(seen, _)| *seen)
    .map(|(_, likelier)| likelier)
    .product()
}

fn lost_on_the_way(found: &DuctsFound) -> [Option<f64>; 2] {
    let drop = Telling { fault: (20.0, 9.0), sound: (6.0, 5.0) };
    let share = Telling { fault: (0.45, 0.2), sound: (0.85, 0.2) };
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
