//! ISO 5167-2: what a sharp-edged orifice discharges.

use super::{slit, table_air};
use crate::harness::Table;
use uom::si::area::square_meter;
use winterseam::physics::gap::leakage_area;

/// Source: corner taps, diameter ratio 0.1.
#[test]
fn the_edge_of_a_gap_costs_what_the_edge_of_an_orifice_costs() {
    Table::read("air/iso-5167__orifice").compare(|_| {
        let hole = leakage_area(&slit(1.0, 10.0, 0.0, 0), &table_air());
        vec![("discharge_coefficient", hole.get::<square_meter>() / 0.01)]
    });
}
