//! The year of a home: the only place that joins models.
//!
//! Counted are air through the gaps that were measured, heated again by the furnace; the heat cable;
//! and hot water. Beside them stands the water that gaps bring into the roof. A saving is never
//! computed here: it is one year less another.

mod cable;
mod fuel;
mod gaps;
mod hot_water;
mod inputs;
mod roof;
mod windows;

pub use fuel::{heat_content, heater_fuel};
pub use gaps::leads_to;
pub use hot_water::settles;
pub use inputs::{Inputs, cable_inputs, gap_inputs, heater_inputs, use_inputs};
pub use roof::wet_roof;
pub use windows::wet_window_humidity;

use crate::climate::{Place, Year};
use crate::home::Home;
use crate::money::Dollars;
use uom::si::f64::{Energy, Time};

/// Where a home stands and the hours of its year.
#[derive(Debug, Clone, Copy)]
pub struct Weather<'a> {
    /// The place.
    pub place: &'a Place,
    /// Its hours.
    pub year: &'a Year,
}

/// What takes energy.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum UseKey {
    /// Air through the gap with this index.
    Gap(usize),
    /// The heat cable.
    HeatCable,
    /// Hot water that is used.
    HotWater,
    /// Keeping tank and pipe hot.
    HotTank,
    /// Heat that a tank in a heated room takes off the furnace (less than nothing), or a heat pump
    /// there lays upon it.
    TankInRoom,
}

/// What one use takes in a year.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Use {
    /// What takes it.
    pub key: UseKey,
    /// Energy bought for it.
    pub bought: Energy,
    /// What that costs, where the price is known.
    pub cost: Option<Dollars>,
}

/// The year of one home.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Assessment {
    /// What takes energy.
    pub uses: Vec<Use>,
    /// Time in which a pipe with a heat cable may freeze.
    pub freeze_risk: Option<Time>,
}

impl Assessment {
    /// Energy bought for all uses.
    #[must_use]
    pub fn bought(&self) -> Energy {
        self.uses.iter().map(|one| one.bought).sum()
    }
}

/// The year of a home at a place.
#[must_use]
pub fn assess(home: &Home, weather: &Weather<'_>) -> Assessment {
    let mut year = Assessment { uses: gaps::uses(home, weather), freeze_risk: None };
    if let Some(cable) = cable::year(home, weather) {
        year.uses.push(cable.used);
        year.freeze_risk = Some(cable.freeze_risk);
    }
    year.uses.extend(hot_water::uses(home, weather));
    year
}
