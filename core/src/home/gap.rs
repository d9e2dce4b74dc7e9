//! A gap measured with a tape.

use uom::si::f64::{Area, Length, Ratio};
use uom::si::ratio::ratio;

/// A gap measured with a tape.
#[derive(Debug, Clone, PartialEq)]
pub struct Gap {
    /// Where it is.
    pub place: GapPlace,
    /// What the person calls it.
    pub label: Option<String>,
    /// How many there are like it.
    pub count: u16,
    /// Whether a strip, sweep, gasket, damper or caulk is there already; only told apart where
    /// nobody measured.
    pub sealed: Option<bool>,
    /// What kind of window it is at.
    pub window: Option<WindowKind>,
    /// Along the gap.
    pub length: Option<Length>,
    /// The opening seen; `None` where nobody measured: what is usual at the place stands in.
    pub width: Option<Length>,
    /// Least and most that the opening may be; `None` takes the error of a tape.
    pub width_within: Option<(Length, Length)>,
    /// Leakage area of one, where a draw has set it.
    pub leakage: Option<Area>,
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
        Self { length: Some(length), width: Some(width), ..Self::seen(place) }
    }

    /// A gap that was seen and not measured.
    #[must_use]
    pub fn seen(place: GapPlace) -> Self {
        Self {
            place,
            label: None,
            count: 1,
            sealed: None,
            window: None,
            length: None,
            width: None,
            width_within: None,
            leakage: None,
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
    /// The damper in the duct of a bath fan.
    FanDamper,
    /// The vent of a clothes dryer.
    DryerVent,
    /// The damper of a range hood.
    RangeHood,
    /// Round an access panel.
    AccessPanel,
    /// Behind the plate of an outlet or switch.
    OutletPlate,
    /// The grille of an evaporative cooler out of season.
    CoolerGrille,
    /// Floor opening, louver, flue or whatever else of the water heater's closet: no repair's business.
    WaterHeaterCloset,
    /// Round the panel or wall between the water heater's closet and the rooms.
    ClosetInnerPanel,
    /// In or round the door between the water heater's closet and the open air.
    ClosetOuterDoor,
    /// In or round the closet of the furnace.
    FurnaceCloset,
    /// Between furnace, coil cabinet and floor.
    CoilCabinet,
    /// Anywhere else.
    Elsewhere,
}

/// How a window opens.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WindowKind {
    /// Up or down.
    Hung,
    /// To the side.
    Sliding,
    /// Out, hinged at the top.
    Awning,
    /// By many glass slats.
    Jalousie,
}

/// The thickest thing that slips into a gap too narrow for a tape.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WidthClass {
    /// A bank card.
    Card,
    /// A dime.
    Dime,
    /// Two quarters.
    TwoCoins,
    /// A pencil.
    Pencil,
    /// Seen, and left unmeasured: what is usual at the place stands in.
    NotMeasured,
}

impl WidthClass {
    /// Least and most that the gap is wide, where something slipped in: as thick as this, and less than the next; a pencil goes
    /// up to half an inch. Thickness of a card by ISO/IEC 7810, of coins by the mint's
    /// specification (from memory); a pencil is common practice.
    #[must_use]
    pub fn within(self) -> Option<(Length, Length)> {
        let (low, high) = match self {
            Self::Card => (0.76, 1.35),
            Self::Dime => (1.35, 3.5),
            Self::TwoCoins => (3.5, 7.0),
            Self::Pencil => (7.0, 12.7),
            Self::NotMeasured => return None,
        };
        let mm = Length::new::<uom::si::length::millimeter>;
        Some((mm(low), mm(high)))
    }
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
