//! A gap measured with a tape.

use uom::si::f64::{Length, Ratio};
use uom::si::ratio::ratio;

/// A gap measured with a tape.
#[derive(Debug, Clone, PartialEq)]
pub struct Gap {
    /// Where it is.
    pub place: GapPlace,
    /// What the person calls it.
    pub label: Option<String>,
    /// Along the gap.
    pub length: Length,
    /// The opening seen.
    pub width: Length,
    /// The way the air travels through it; `None` takes what is usual at the place.
    pub depth: Option<Length>,
    /// Corners on that way; `None` takes what is usual at the place.
    pub bends: Option<u8>,
    /// What lies behind it; `None` is not known.
    pub leads_to: Option<LeadsTo>,
    /// Leakage area of the next skin, in multiples of the gap's own; `None` takes as much.
    pub next_skin: Option<Ratio>,
    /// Share of its length that is still open: all of it until it is sealed.
    pub open: Ratio,
    /// Share of its length that a good seal leaves open; `None` takes what is usual at the place.
    pub seal_leaves: Option<Ratio>,
}

impl Gap {
    /// A gap as the tape found it, with nothing else known.
    #[must_use]
    pub fn measured(place: GapPlace, length: Length, width: Length) -> Self {
        Self {
            place,
            label: None,
            length,
            width,
            depth: None,
            bends: None,
            leads_to: None,
            next_skin: None,
            open: Ratio::new::<ratio>(1.0),
            seal_leaves: None,
        }
    }
}

/// Where a gap is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum GapPlace {
    /// Below an outside door.
    DoorBottom,
    /// Side or top of an outside door.
    DoorSide,
    /// Between sash and frame of a window.
    WindowSash,
    /// Between the casing of a window or door and the wall.
    Casing,
    /// Where wall and ceiling meet.
    CeilingJoint,
    /// Where two sections meet.
    MarriageLine,
    /// Round a pipe through floor or wall.
    PipeHole,
    /// Round the housing of a bath fan.
    BathFanHousing,
    /// Round an access panel.
    AccessPanel,
    /// Behind the plate of an outlet or switch.
    OutletPlate,
    /// The grille of an evaporative cooler out of season.
    CoolerGrille,
    /// In or round the closet of the water heater.
    WaterHeaterCloset,
    /// In or round the closet of the furnace.
    FurnaceCloset,
    /// Between furnace, coil cabinet and floor.
    CoilCabinet,
    /// Anywhere else.
    Elsewhere,
}

/// What lies behind a gap.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum LeadsTo {
    /// Open air.
    Outdoors,
    /// The insulated space below the floor.
    Belly,
    /// The space above the ceiling.
    RoofCavity,
    /// A closet that is open to outside air.
    ClosetWithOutsideAir,
    /// The inside of a wall.
    Wall,
    /// Another room, or the way back to the furnace.
    RoomOrReturn,
}
