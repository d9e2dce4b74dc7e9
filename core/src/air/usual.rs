//! What a gap is usually like where nobody measured more than its opening.

use crate::home::{GapPlace, LeadsTo};
use crate::sources::{Source, trade};
use uom::si::f64::Length;
use uom::si::length::inch;

/// What the air travels through, and what lies behind.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Usual {
    /// The way through the gap.
    pub depth: Length,
    /// Corners on that way.
    pub bends: u8,
    /// What lies behind it.
    pub leads_to: LeadsTo,
}

impl Usual {
    /// How such homes are built.
    pub const SOURCE: &'static Source = &trade::GAP_DEPTHS;
}

/// What is usual at a place; [`GAP_DEPTHS`](trade::GAP_DEPTHS).
#[must_use]
pub fn usual(place: GapPlace) -> Usual {
    let (depth_in, bends, leads_to) = match place {
        GapPlace::DoorBottom => (1.75, 0, LeadsTo::Outdoors),
        GapPlace::DoorSide => (1.75, 1, LeadsTo::Outdoors),
        GapPlace::WindowSash => (0.75, 1, LeadsTo::Outdoors),
        GapPlace::CoolerGrille => (0.5, 0, LeadsTo::Outdoors),
        GapPlace::Casing => (0.75, 1, LeadsTo::Wall),
        GapPlace::OutletPlate | GapPlace::Elsewhere => (0.5, 1, LeadsTo::Wall),
        GapPlace::CeilingJoint | GapPlace::BathFanHousing => (0.5, 0, LeadsTo::RoofCavity),
        GapPlace::MarriageLine => (3.5, 1, LeadsTo::Belly),
        // A flap in a thin hood.
        GapPlace::FanDamper | GapPlace::DryerVent | GapPlace::RangeHood => {
            (0.1, 0, LeadsTo::Outdoors)
        }
        GapPlace::PipeHole => (0.75, 0, LeadsTo::Belly),
        GapPlace::AccessPanel | GapPlace::ClosetInnerPanel => {
            (0.5, 1, LeadsTo::ClosetWithOutsideAir)
        }
        GapPlace::WaterHeaterCloset => (0.5, 0, LeadsTo::ClosetWithOutsideAir),
        // Of two skins in a row, the closet's inner side is the other one.
        GapPlace::ClosetOuterDoor => (0.75, 1, LeadsTo::ClosetWithOutsideAir),
        GapPlace::FurnaceCloset | GapPlace::CoilCabinet => (0.1, 0, LeadsTo::RoomOrReturn),
    };
    Usual { depth: Length::new::<inch>(depth_in), bends, leads_to }
}
