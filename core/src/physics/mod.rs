//! Laws that more than one model needs and that know no home.

pub mod gap;
pub mod moist_air;
pub mod openings;
pub mod saturation;
pub mod conduction;
