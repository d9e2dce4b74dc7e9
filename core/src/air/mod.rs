//! Air that a home lets through, and the fresh air it needs.

pub mod infiltration;
pub mod usual;
pub mod ventilation;
