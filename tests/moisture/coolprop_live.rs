//! `CoolProp` asked live: dry air as a real gas, on many points.

use crate::harness::{Tally, numbers, peer};
use uom::si::f64::Pressure;
use uom::si::{
    dynamic_viscosity::pascal_second, mass_density::kilogram_per_cubic_meter, pressure::pascal,
};
use winterseam::properties::air::Air;
use winterseam::units::celsius;

/// Theirs is a real gas: its density is the ideal one less the second virial term, which the peer
/// gives with each point. What is left is the third term, some millionths, and the gas constant,
/// which ours has to five digits.
const GAS_CONSTANT: f64 = 5e-5;

/// Published uncertainty of the peer's own viscosity of air (from memory).
const VISCOSITY: f64 = 0.01;

/// The fewest points that make the check worth its name.
const POINTS: usize = 500;

#[test]
fn dry_air_is_that_of_coolprop() {
    let mut tally = Tally::default();
    let rows = peer("dry_air.py");
    assert!(rows.len() >= POINTS, "only {} points", rows.len());
    for row in &rows {
        let [t, p, density, viscosity, virial] = numbers(row);
        let air = Air::dry(celsius(t), Pressure::new::<pascal>(p)).unwrap();
        let id = format!("{t} °C {p} Pa");
        let ours = air.density().get::<kilogram_per_cubic_meter>();
        // p = ρRT(1 + Bρ), so ideal over real is 1 + Bρ.
        let near = (ours / (density * (1.0 + virial)) - 1.0).abs() <= GAS_CONSTANT;
        tally.note(&id, "density", (ours, density), near, None);
        let ours = air.viscosity().get::<pascal_second>();
        let near = (ours / viscosity - 1.0).abs() <= VISCOSITY;
        tally.note(&id, "viscosity", (ours, viscosity), near, None);
    }
    tally.report("moisture/coolprop-live");
}
