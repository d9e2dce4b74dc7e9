//! Laws that more than one model needs and that know no home.

pub mod conduction;
pub mod film;
pub mod gap;
pub mod moist_air;
pub mod openings;
pub mod pipe;
pub mod saturation;
