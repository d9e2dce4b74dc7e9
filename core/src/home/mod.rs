//! What a person saw and measured, typed and already valid. What was not seen is `None`: unknown,
//! never zero and never good.

mod appliance;
mod building;
mod burner;
mod cable;
mod ducts;
mod gap;
mod people;
mod spoken;
mod window;

pub use appliance::{
    AirOpenings, Filter, FilterKind, FilterLook, Fuel, FuelPrice, HeaterKind, HeaterPlace, Heating,
    PriceUnit, Relief, Turn, WaterHeater,
};
pub use building::{
    Belly, Building, Cooling, GroundBelow, LeakTest, Sections, Shelter, SkirtingVents, Tenure,
    WetWindows,
};
pub use cable::{CableControl, CableSigns, HeatCable, Season};
pub use ducts::{Crossover, DuctGap, DuctGapPlace, DuctsFound, LeakAir, WarmAir};
pub use gap::{Gap, GapPlace, LeadsTo, WidthClass, WindowKind};
pub use people::{Alarm, FirstLook, People};
pub(crate) use spoken::{Spoken, spoken};
pub use window::{Panes, Window};

use jiff::civil::Date;

/// One home on one day.
#[derive(Debug, Clone, PartialEq)]
pub struct Home {
    /// The day of the walk; the crate knows no clock.
    pub today: Date,
    /// The building and where it stands.
    pub building: Building,
    /// Who lives there, as far as it changes the advice.
    pub people: People,
    /// What is looked for before anything is touched.
    pub first_look: FirstLook,
    /// The main heating.
    pub heating: Heating,
    /// Dollars for a kilowatt-hour of electricity.
    pub electricity_price: Option<crate::money::Dollars>,
    /// The furnace filter.
    pub filter: Filter,
    /// Registers, furnace and ducts.
    pub ducts: DuctsFound,
    /// The water heater and its tap.
    pub water_heater: WaterHeater,
    /// The bath fan.
    pub bath_fan: BathFan,
    /// Gaps measured with a tape.
    pub gaps: Vec<Gap>,
    /// The windows; empty when nobody listed them.
    pub windows: Vec<Window>,
    /// The heat cable on the water pipe; `None` when nobody looked.
    pub cable: Option<HeatCable>,
    /// What somebody was told of repairs.
    pub own_costs: Vec<ToldCost>,
}

/// What somebody was told that a repair costs, or how long it lasts.
#[derive(Debug, Clone, PartialEq)]
pub struct ToldCost {
    /// Name of the repair.
    pub repair: String,
    /// All of it, work and materials.
    pub cost: Option<crate::money::Dollars>,
    /// How long it lasts.
    pub life: Option<crate::money::Years>,
}

/// A bath fan and the bag held over it.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct BathFan {
    /// Seconds in which the fan emptied the bag.
    pub emptying: Option<uom::si::f64::Time>,
    /// Where its air goes.
    pub ends: Option<FanEnd>,
    /// Whether it, or another fan, runs long enough each day to bring the home its fresh air.
    pub runs_steadily: Option<bool>,
}

/// Where a fan blows to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FanEnd {
    /// Open air.
    Outdoors,
    /// The space above the ceiling.
    RoofCavity,
    /// The space below the floor.
    UnderHome,
}
