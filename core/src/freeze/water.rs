//! Water that stands in a pipe, for each metre of it; [`WATER_AND_ICE`].
//!
//! [`WATER_AND_ICE`]: crate::sources::pipes::WATER_AND_ICE

use crate::physics::pipe::Pipe;
use std::f64::consts::PI;
use uom::si::length::meter;

/// J/(m³·K).
const HEAT_CAPACITY: f64 = 4.2e6;
/// J/m³.
const FUSION: f64 = 333.55e6;
/// W/(m·K).
pub(super) const ICE_CONDUCTIVITY: f64 = 2.22;

/// Heat that the water gives up for each kelvin, J/(m·K).
pub(super) fn heat_capacity(pipe: &Pipe) -> f64 {
    HEAT_CAPACITY * inside_area(pipe)
}

/// Heat that the water gives up while all of it freezes, J/m.
pub(super) fn fusion(pipe: &Pipe) -> f64 {
    FUSION * inside_area(pipe)
}

/// Share of water that turns to ice at once when it was so many kelvins too cold.
pub(super) fn ice_of(supercooling: f64) -> f64 {
    HEAT_CAPACITY * supercooling / FUSION
}

/// m².
fn inside_area(pipe: &Pipe) -> f64 {
    let inside = pipe.inside.get::<meter>();
    PI / 4.0 * inside * inside
}
