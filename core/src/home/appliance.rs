//! Furnace, filter, water heater, and what their fuel costs.

use super::WarmAir;
use crate::money::Dollars;
use uom::si::f64::{
    Length, Power, Ratio, TemperatureInterval, ThermodynamicTemperature, Time, Volume, VolumeRate,
};

/// What the main heating burns or draws.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Fuel {
    /// Electric resistance.
    Electricity,
    /// A heat pump.
    HeatPump,
    /// Natural gas.
    NaturalGas,
    /// Propane.
    Propane,
    /// Fuel oil.
    FuelOil,
    /// Kerosene.
    Kerosene,
    /// Split wood.
    Wood,
    /// Pellets of pressed wood.
    Pellets,
}

impl Fuel {
    /// Whether something burns.
    #[must_use]
    pub fn burns(self) -> bool {
        !matches!(self, Self::Electricity | Self::HeatPump)
    }

    /// Whether a stove in a room burns it, with a flue of its own.
    #[must_use]
    pub fn in_a_stove(self) -> bool {
        matches!(self, Self::Wood | Self::Pellets)
    }

    /// The units that it is sold by, on a meter or a slip.
    #[must_use]
    pub fn sold_by(self) -> &'static [PriceUnit] {
        match self {
            Self::Electricity | Self::HeatPump => &[PriceUnit::KilowattHour],
            Self::NaturalGas => &[PriceUnit::Therm, PriceUnit::Ccf],
            Self::Propane | Self::FuelOil | Self::Kerosene => &[PriceUnit::Gallon],
            Self::Wood => &[PriceUnit::Cord],
            Self::Pellets => &[PriceUnit::Bag],
        }
    }
}

/// The unit that a fuel is sold by.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum PriceUnit {
    /// Kilowatt-hour.
    KilowattHour,
    /// Therm.
    Therm,
    /// Hundred cubic feet.
    Ccf,
    /// Gallon.
    Gallon,
    /// Stack of wood, 4 by 4 by 8 feet.
    Cord,
    /// Bag of pellets, 40 pounds.
    Bag,
}

/// What a fuel costs, by the unit on the bill.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FuelPrice {
    /// Dollars for one unit.
    pub amount: Dollars,
    /// The unit.
    pub per: PriceUnit,
}

/// The main heating.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Heating {
    /// What it burns or draws.
    pub fuel: Option<Fuel>,
    /// What that costs; electricity has its own price when this is empty.
    pub price: Option<FuelPrice>,
    /// Heat given for each unit of fuel; `None` takes what is usual for the fuel.
    pub efficiency: Option<Ratio>,
    /// How much of the heat comes out of registers.
    pub warm_air: Option<WarmAir>,
    /// Heat that the furnace gives, as its label says.
    pub output: Option<Power>,
    /// Least and most that air may be warmed by, as its label says.
    pub label_rise: Option<(TemperatureInterval, TemperatureInterval)>,
    /// The label that says sealed combustion was seen.
    pub sealed_label_seen: Option<bool>,
    /// Soot, scorch, roll-out, a loose flue or a yellow flame.
    pub soot: Option<bool>,
    /// A wood stove stands clear of what burns, and its chimney was looked at this year; `None`
    /// where there is none or nobody looked.
    pub stove_clear: Option<bool>,
}

/// The furnace filter.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Filter {
    /// Time since it was put in.
    pub in_use: Option<Time>,
    /// How it looks against a flashlight.
    pub look: Option<FilterLook>,
    /// What it is made of.
    pub kind: Option<FilterKind>,
    /// Width and height of its face.
    pub face: Option<(Length, Length)>,
}

/// What a filter is made of, as its frame says or its looks do.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum FilterKind {
    /// Spun glass that one sees through.
    Fiberglass,
    /// Pleats of paper or cloth.
    Pleated,
    /// Dense pleats, MERV 11 or more.
    Dense,
}

/// A filter held against a flashlight, from clean to blocked.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum FilterLook {
    /// Light passes.
    Bright,
    /// Grey, light passes.
    Grey,
    /// Light barely passes.
    Dim,
    /// No light passes, sucked in, wet, or no filter at all.
    Blocked,
}

/// What makes hot water.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum HeaterKind {
    /// Electric tank.
    Electric,
    /// Heat-pump tank.
    HeatPump,
    /// Burner closed to the room, with the label seen.
    SealedCombustion,
    /// Burner open to its closet, with a draft hood.
    DraftHood,
    /// Elements without a tank.
    TanklessElectric,
    /// Burner without a tank.
    TanklessGas,
}

impl HeaterKind {
    /// Whether something burns in it.
    #[must_use]
    pub fn burns(self) -> bool {
        matches!(self, Self::SealedCombustion | Self::DraftHood | Self::TanklessGas)
    }

    /// Whether it keeps water hot.
    #[must_use]
    pub fn has_tank(self) -> bool {
        !matches!(self, Self::TanklessElectric | Self::TanklessGas)
    }
}

/// The dial in one place, and the tap that belongs to it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Turn {
    /// Marks below the place where the dial stood at first.
    pub marks_down: f64,
    /// The hottest reading there.
    pub tap: ThermodynamicTemperature,
}

/// Where the tank stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum HeaterPlace {
    /// In a heated room.
    Room,
    /// In a closet with a door to the inside.
    ClosetInnerDoor,
    /// In a closet with a door to the outside.
    ClosetOuterDoor,
}

/// The openings that bring air to a burner.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AirOpenings {
    /// All open.
    Open,
    /// Less than three quarters open.
    Partly,
    /// Less than half open, taped or stuffed.
    Blocked,
}

/// The valve that lets a tank blow off, and its pipe.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Relief {
    /// There, dry, with its pipe free.
    Sound,
    /// Running or dripping.
    Running,
    /// Missing.
    Missing,
    /// Plugged or capped.
    Plugged,
}

/// The water heater and its tap.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct WaterHeater {
    /// What makes the hot water.
    pub kind: Option<HeaterKind>,
    /// Where the tank stands.
    pub place: Option<HeaterPlace>,
    /// The hottest reading at a tap, the latest where the dial was turned since.
    pub tap: Option<ThermodynamicTemperature>,
    /// Every place of the dial that was tried, in order, with its reading.
    pub turns: Vec<Turn>,
    /// The thermometer showed 32 °F in ice water.
    pub thermometer_checked: Option<bool>,
    /// A mixing valve sits behind the tank.
    pub mixing_valve: Option<bool>,
    /// The openings that bring air to its burner.
    pub openings: Option<AirOpenings>,
    /// Soot, scorch or melted plastic at the top.
    pub soot: Option<bool>,
    /// Steam at the tap, or rumbling.
    pub steam_or_rumbling: Option<bool>,
    /// The relief valve and its pipe.
    pub relief: Option<Relief>,
    /// Another burner, such as the furnace, stands in the same closet.
    pub shares_closet: Option<bool>,
    /// A flue that nothing is joined to any more is open.
    pub old_flue_open: Option<bool>,
    /// A technician looked at burner, flue and air, and found nothing wrong.
    pub checked_by_technician: Option<bool>,
    /// Input of all burners in its closet together, as their labels say.
    pub input: Option<Power>,
    /// Water in the tank, as its label says.
    pub volume: Option<Volume>,
    /// A jacket is round the tank.
    pub jacket: Option<bool>,
    /// The first feet of the hot pipe wear a sleeve.
    pub sleeve: Option<bool>,
    /// Flow of the shower, measured with a bucket.
    pub shower: Option<VolumeRate>,
    /// Factor of the heater; `None` takes what is usual for its kind.
    pub factor: Option<Ratio>,
    /// Water in the tank where the tap does not show it; `None` takes what is usual.
    pub stored: Option<ThermodynamicTemperature>,
    /// Pipe at the tank that stays hot between draws; `None` takes what is usual.
    pub near_pipe: Option<Length>,
    /// Hot water used over what is usual for so many people; `None` takes what is usual.
    pub thirst: Option<Ratio>,
    /// How far its place follows the outdoors; `None` takes what is usual.
    pub follows_outdoors: Option<Ratio>,
}
