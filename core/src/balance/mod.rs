//! The year of a home: the only place that joins models.
//!
//! Counted are the air through each gap that was found and through the other leaks of the home,
//! heated again by the furnace; the heat cable; and hot water. Beside them stands the water that
//! gaps bring into the roof. A saving is never computed here: it is one year less another.

mod air_year;
mod cable;
mod fan;
mod fuel;
mod gaps;
mod hot_water;
mod inputs;
mod pipe;
mod roof;
mod windows;

pub use air_year::AirYear;
pub use fuel::{heat_content, heater_fuel};
pub use hot_water::settles;
pub use inputs::{Inputs, cable_inputs, gap_inputs, heater_inputs, use_inputs};
pub use pipe::time_to_plug;
pub use roof::wet_roof;
pub use windows::wet_window_humidity;

use crate::climate::{Place, Year};
use crate::home::Home;
use crate::money::Dollars;
use uom::si::f64::{Area, Energy, Time};

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
    /// Air through all leaks that nobody found.
    OtherLeaks,
    /// The heat cable.
    HeatCable,
    /// Outside air that a steady fan brings.
    SteadyFan,
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
    /// All leaks of the home together, where enough is known of it.
    pub leakage: Option<Area>,
    /// What the weather drives through each unit of it.
    pub air: Option<AirYear>,
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
    assess_with(home, weather, AirYear::of(home, weather))
}

/// The year of a home after a change: what the change left alone is taken over from the year before.
#[must_use]
pub fn assess_again(home: &Home, weather: &Weather<'_>, before: &Assessment) -> Assessment {
    let air = before.air.filter(|air| air.holds_for(home));
    assess_with(home, weather, air.or_else(|| AirYear::of(home, weather)))
}

fn assess_with(home: &Home, weather: &Weather<'_>, air: Option<AirYear>) -> Assessment {
    let mut year = Assessment { air, ..Assessment::default() };
    if let (Some(air), Some(leaks)) = (&air, gaps::leaks_of(home, weather)) {
        year.uses = gaps::uses(home, &leaks, air);
        year.leakage = leaks.all();
    }
    if let Some(cable) = cable::year(home, weather) {
        year.uses.push(cable.used);
        year.freeze_risk = Some(cable.freeze_risk);
    }
    year.uses.extend(hot_water::uses(home, weather));
    // Last, so that a fan which a plan adds leaves the order of the others.
    year.uses.extend(year.leakage.and_then(|leakage| fan::year(home, weather, leakage)));
    year
}
