//! What a person found at registers, furnace and ducts.

use uom::si::f64::{Length, Ratio, ThermodynamicTemperature, Time};

/// What a person found at registers, furnace and ducts.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct DuctsFound {
    /// Registers of the home.
    pub registers: Option<u8>,
    /// How many of them are closed or covered.
    pub closed: Option<u8>,
    /// Something stands in front of the return.
    pub return_blocked: Option<bool>,
    /// Air at the return, with the furnace running for ten minutes.
    pub return_air: Option<ThermodynamicTemperature>,
    /// Air at the nearest register out of sight of the exchanger, and at the farthest.
    pub near_air: Option<ThermodynamicTemperature>,
    /// See `near_air`.
    pub far_air: Option<ThermodynamicTemperature>,
    /// Time until the nearest register fills the bag.
    pub near_bag: Option<Time>,
    /// Time until the farthest does.
    pub far_bag: Option<Time>,
    /// Dust lies thick on the blades of the blower.
    pub blower_dirty: Option<bool>,
    /// The furnace goes on and off within minutes.
    pub short_cycles: Option<bool>,
    /// The duct that joins two sections under the home.
    pub crossover: Option<Crossover>,
    /// Gaps in ducts and cabinet that were measured.
    pub gaps: Vec<DuctGap>,
    /// Share of the fan's air that ducts lose where nobody found why; `None` takes what is usual.
    pub lost: Option<Ratio>,
    /// Somebody sealed joints and boots with mastic.
    pub sealed: Option<bool>,
}

/// The duct that joins two sections under a home.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Crossover {
    /// Joined, and off the ground.
    Sound,
    /// Loose, torn or crushed.
    Loose,
    /// Off its collar.
    Fallen,
}

/// A gap in ducts or cabinet.
#[derive(Debug, Clone, PartialEq)]
pub struct DuctGap {
    /// Where it is.
    pub place: DuctGapPlace,
    /// What the person calls it.
    pub label: Option<String>,
    /// Along the gap.
    pub length: Length,
    /// The opening seen.
    pub width: Length,
    /// What its air does with the fan on.
    pub air: Option<LeakAir>,
    /// It is closed with tape or mastic.
    pub sealed: bool,
}

/// Where a gap in ducts or cabinet is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum DuctGapPlace {
    /// Beside the coil, between blower and ducts.
    CoilCabinet,
    /// The box below the furnace.
    Plenum,
    /// Between a duct and its register.
    Boot,
    /// Collar of the duct that joins two sections.
    Crossover,
    /// Far end of a trunk.
    EndCap,
    /// Between return and blower.
    ReturnSide,
}

/// What the air of a leak does with the fan on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum LeakAir {
    /// It blows into the furnace closet.
    BlownIntoCloset,
    /// It blows down under the floor, or out.
    BlownDown,
    /// It is sucked in.
    SuckedIn,
}

/// How much of the heat comes out of registers.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum WarmAir {
    /// All of it.
    All,
    /// Most.
    Most,
    /// About half.
    Half,
    /// Little: a stove or room heaters give the most.
    Little,
    /// None.
    None,
}
