//! Baker, Sharples and Ward, Air flow through cracks, 1987: the quadratic law.

use super::{slit_of, table_air};
use crate::harness::{Row, Table};
use uom::si::f64::{Pressure, Ratio};
use uom::si::volume_rate::{cubic_meter_per_second, liter_per_second};
use uom::si::{area::square_centimeter, pressure::pascal, ratio::ratio};
use winterseam::physics::gap::{flow, flow_with_loss, leakage_area, local_exponent};

/// Source: six gaps of a home, solved from the law by a root finder.
#[test]
fn gaps_of_a_home_flow_as_the_law_says() {
    Table::read("air/crack-flow-1987").compare(|row| {
        let (slit, air) = (slit_of(row), table_air());
        let across = Pressure::new::<pascal>(row.number("pressure_pa"));
        vec![
            ("flow_m3_s", flow(&slit, across, &air).get::<cubic_meter_per_second>()),
            ("leakage_area_cm2", leakage_area(&slit, &air).get::<square_centimeter>()),
            ("exponent", local_exponent(&slit, across, &air).get::<ratio>()),
        ]
    });
}

/// Source: a grid of widths, depths and bends, solved from the law to thirty digits.
#[test]
fn the_closed_form_solves_the_law() {
    Table::read("air/crack-flow-1987__grid").compare(|row| {
        let (slit, air) = (slit_of(row), table_air());
        let litres = |p| flow(&slit, Pressure::new::<pascal>(p), &air).get::<liter_per_second>();
        let at_4 = Pressure::new::<pascal>(4.0);
        vec![
            ("flow_4_l_s", litres(4.0)),
            ("flow_50_l_s", litres(50.0)),
            ("exponent", local_exponent(&slit, at_4, &air).get::<ratio>()),
            ("leakage_area_cm2", leakage_area(&slit, &air).get::<square_centimeter>()),
        ]
    });
}

/// Source: shallow cracks by the law without an edge term.
#[test]
fn the_kernel_takes_a_stated_loss() {
    let table = Table::read("air/crack-flow-1987__without-edge");
    table.compare(|row| vec![("flow_m3_s", without_edge(row))]);
    for row in table.rows() {
        let across = Pressure::new::<pascal>(row.number("pressure_pa"));
        let with_edge = flow(&slit_of(row), across, &table_air()).get::<cubic_meter_per_second>();
        assert!(with_edge < row.number("flow_m3_s"), "{}", row.text("id"));
    }
}

fn without_edge(row: &Row) -> f64 {
    let loss = Ratio::new::<ratio>(1.5 + row.number("bends"));
    let across = Pressure::new::<pascal>(row.number("pressure_pa"));
    flow_with_loss(&slit_of(row), loss, across, &table_air()).get::<cubic_meter_per_second>()
}
