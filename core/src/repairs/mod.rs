//! Repairs: each a function from one home to another.
//!
//! A repair knows what it changes, who may do it, what it costs and what to buy. It does not know
//! what it saves: that is the year before less the year after.

mod airflow;
mod alarms;
mod below;
mod cable;
mod catalogue;
mod closet;
mod ducts;
mod fan;
mod filter;
mod hot_water;
mod openings;
mod seal;
mod shopping;
mod tank;
mod warning;
mod windows;

pub use catalogue::{ALL, IDS, by_id};
pub use shopping::{Material, Unit};
pub use warning::Warning;

use crate::home::{GapPlace, Home, ToldCost};
use crate::money::Dollars;
use crate::money::Years;
use crate::sources::{Confidence, Figure, Source, trade};

/// A change to a home that somebody can make.
pub struct Repair {
    /// Stable name.
    pub id: &'static str,
    /// Its step in the order of work, as far as this home is known.
    pub order: fn(&Home) -> Order,
    /// The part of the home that it changes.
    pub changes: Changes,
    /// Who may do it, as far as this home is known.
    pub who: fn(&Home) -> Who,
    /// The home after it; `None` when there is nothing to do or it may not be done.
    pub apply: fn(&Home) -> Option<Home>,
    /// What to buy.
    pub materials: fn(&Home) -> Vec<Material>,
    /// What somebody takes for the work, when it is not the resident.
    pub fee: fn(&Home) -> Fee,
    /// Warnings that go with it.
    pub cautions: fn(&Home) -> Vec<Warning>,
    /// How long it lasts: [`trade::REPAIR_LIVES`].
    pub lasts: Life,
}

/// How long a repair lasts, years: least, usual, most.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Life {
    low: f64,
    best: f64,
    high: f64,
}

impl Life {
    /// By its season or its calendar.
    const fn exactly(years: f64) -> Self {
        Self { low: years, best: years, high: years }
    }

    /// As tables of lives have it, which differ by as much: from 0.6 to 1.5 of it.
    const fn about(years: f64) -> Self {
        Self { low: years * 0.6, best: years, high: years * 1.5 }
    }
}

/// Low and high fee in dollars: [`trade::TRADE_FEES`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fee(pub f64, pub f64);

impl Fee {
    /// Done by the people who live there.
    const NONE: Self = Self(0.0, 0.0);
    /// A short visit of a qualified person.
    const VISIT: Self = Self(75.0, 150.0);
    /// Half a day of one.
    const HALF_DAY: Self = Self(100.0, 300.0);

    /// The fee of a visit, unless the resident may do it.
    fn unless_resident(who: Who) -> Self {
        if who == Who::Resident { Self::NONE } else { Self::VISIT }
    }
}

/// The part of a home that a repair changes, as far as energy is counted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Changes {
    /// Gaps at this place.
    Gaps(GapPlace),
    /// The heat cable.
    Cable,
    /// The temperature at the tap: it keeps people safe, whatever it saves.
    Tap,
    /// Tank, pipe and shower.
    HotWater,
    /// What ducts lose.
    Ducts,
    /// Glass, and the leaks of its sash.
    Windows,
    /// Floor and the space below it.
    Floor,
    /// Something that keeps people safe; no energy is counted for it.
    Safety,
}

/// The order of work: what comes first is done first, whatever it saves.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Order {
    /// Keeps people alive and unhurt.
    LifeSafety,
    /// Stops water and damp.
    Moisture,
    /// Keeps heat and pipes alive.
    HeatAndPipes,
    /// Gives the furnace its air.
    Airflow,
    /// Big holes.
    BigHoles,
    /// Controls, which are free or cheap.
    Controls,
    /// Small seals.
    SmallSeals,
    /// Insulation, belly and skirting.
    Shell,
    /// Film and storm windows.
    Windows,
    /// Drafts so small that they are never among the firsts.
    Trifles,
}

/// Who may do a job. Local law decides; this is never looser than the trade's own table.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Who {
    /// The resident.
    Resident,
    /// A capable adult with instructions.
    AbleAdult,
    /// A licensed or otherwise qualified person.
    Qualified,
}

impl Repair {
    /// What somebody was told of it.
    fn told<'a>(&self, home: &'a Home) -> Option<&'a ToldCost> {
        home.own_costs.iter().find(|told| told.repair == self.id)
    }

    /// How long it lasts: as somebody was told, or as lives are usually taken.
    #[must_use]
    pub fn life(&self, home: &Home) -> Figure<Years> {
        if let Some(told) = self.told(home).and_then(|told| told.life) {
            return Figure::exact(told, Confidence::Seen, &[&trade::TOLD_COSTS])
                .from_inputs(["own_costs"]);
        }
        let Life { low, best, high } = self.lasts;
        Figure::exact(Years(best), Confidence::Guessed, &[&trade::REPAIR_LIVES])
            .between(Years(low), Years(high))
    }

    /// Cost of materials and fee together: as somebody was told, or prices from memory, for
    /// orientation only.
    #[must_use]
    pub fn cost(&self, home: &Home) -> Figure<Dollars> {
        const SOURCES: &[&Source] = &[&trade::RETAIL_PRICES, &trade::TRADE_FEES];
        if let Some(told) = self.told(home).and_then(|told| told.cost) {
            return Figure::exact(told, Confidence::Billed, &[&trade::TOLD_COSTS])
                .from_inputs(["own_costs"]);
        }
        let Fee(low, high) = (self.fee)(home);
        let (low, high) = (self.materials)(home)
            .iter()
            .map(Material::cost_usd)
            .fold((low, high), |sum, cost| (sum.0 + cost.0, sum.1 + cost.1));
        Figure::exact(Dollars(f64::midpoint(low, high)), Confidence::Guessed, SOURCES)
            .between(Dollars(low), Dollars(high))
    }
}
