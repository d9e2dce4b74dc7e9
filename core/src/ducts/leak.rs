//! Leaks of ducts by place: what presses on them, and where their air goes.

use super::system::Running;
use crate::home::{DuctGapPlace, LeakAir};
use uom::si::f64::Pressure;

/// Share of the pressure of the trunk that is left at a boot in the middle of the ducts, and at the
/// far end of a trunk; [`DUCT_PRESSURES`](crate::sources::ducts::DUCT_PRESSURES).
const AT_BOOTS: f64 = 0.5;
const AT_END_CAPS: f64 = 0.3;
const AT_CROSSOVER: f64 = 0.7;

/// What presses on a leak while the blower runs; below zero where it sucks.
#[must_use]
pub(crate) fn pressure_at(place: DuctGapPlace, running: &Running) -> Pressure {
    match place {
        DuctGapPlace::CoilCabinet => running.cabinet,
        DuctGapPlace::Plenum => running.trunk,
        DuctGapPlace::Boot => running.trunk * AT_BOOTS,
        DuctGapPlace::Crossover => running.trunk * AT_CROSSOVER,
        DuctGapPlace::EndCap => running.trunk * AT_END_CAPS,
        DuctGapPlace::ReturnSide => -running.back,
    }
}

/// Where the air of a leak goes, or comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum GoesTo {
    /// Into the closet that is the return: no heat is lost, only air at the registers.
    BackIntoReturn,
    /// Into the belly, where part of its heat comes back through the floor.
    Belly,
    /// Straight out.
    Outdoors,
    /// It is drawn in from outside the rooms.
    DrawnIn,
}

/// Where a leak leads: as it was felt with the fan on, or as is usual at its place;
/// [`USUAL_DUCTS`](crate::sources::ducts::USUAL_DUCTS).
#[must_use]
pub fn goes_to(place: DuctGapPlace, felt: Option<LeakAir>) -> GoesTo {
    match (felt, place) {
        (Some(LeakAir::BlownIntoCloset), _) | (None, DuctGapPlace::CoilCabinet) => {
            GoesTo::BackIntoReturn
        }
        (Some(LeakAir::SuckedIn), _) | (None, DuctGapPlace::ReturnSide) => GoesTo::DrawnIn,
        (_, DuctGapPlace::Crossover) => GoesTo::Outdoors,
        (Some(LeakAir::BlownDown) | None, _) => GoesTo::Belly,
    }
}
