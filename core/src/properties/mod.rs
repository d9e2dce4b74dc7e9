//! What air and water are like.

pub mod air;
pub mod air_heat;
pub mod water;
