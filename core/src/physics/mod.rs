//! Laws that more than one model needs and that know no home.

pub mod conduction;
pub mod film;
pub mod gap;
pub mod joined_flows;
pub mod moist_air;
pub mod openings;
pub mod pipe;
pub mod power_law;
pub mod saturation;
pub mod stack;

/// Standard gravity, m/s².
const GRAVITY_M_S2: f64 = 9.806_65;
