//! Air that a home lets through, and the fresh air it needs.

pub mod combustion;
pub mod components;
pub mod design_day;
pub mod driven;
pub mod enhanced;
pub mod fans;
pub mod infiltration;
pub mod leaks;
pub mod spread;
pub mod usual;
pub mod ventilation;
pub mod whole_home;
