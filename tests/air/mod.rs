//! Leaks, fresh air, the bag.

mod bag_test;
mod combustion;
mod crack_flow_1987;
mod handbook_2021_ch16;
mod handbook_2021_ch17;
mod handbook_2021_design_day;
mod handbook_2021_enhanced;
mod invariants;
mod iso_5167;
mod leak_spread_1998;
#[cfg(feature = "peers")]
mod scipy_brentq;
mod whole_home;

use uom::si::f64::{Length, MassDensity};
use uom::si::{
    dynamic_viscosity::pascal_second, f64::DynamicViscosity, length::meter, length::millimeter,
    mass_density::kilogram_per_cubic_meter,
};
use winterseam::physics::gap::Slit;
use winterseam::properties::air::Air;

use crate::harness::Row;

/// The air that the crack tables state.
fn table_air() -> Air {
    let density = MassDensity::new::<kilogram_per_cubic_meter>(1.204);
    Air::new(density, DynamicViscosity::new::<pascal_second>(1.82e-5)).unwrap()
}

/// A slit from its length in metres, its width and depth in millimetres, and its bends.
fn slit(length_m: f64, width_mm: f64, depth_mm: f64, bends: u8) -> Slit {
    let mm = Length::new::<millimeter>;
    Slit::new(Length::new::<meter>(length_m), mm(width_mm), mm(depth_mm), bends).unwrap()
}

/// The slit of a row.
fn slit_of(row: &Row) -> Slit {
    let bends = row.text("bends").parse().unwrap();
    slit(row.number("length_m"), row.number("width_mm"), row.number("depth_mm"), bends)
}
