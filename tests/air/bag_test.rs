//! The bag test of a national housing agency.

use crate::harness::{Row, Table};
use uom::si::f64::Time;
use uom::si::time::second;
use winterseam::ducts::bag::{BagFlow, Bound, Direction, flow};
use winterseam::units::volume_rate::cfm;

/// Source: the published points, and what lies beyond them.
#[test]
fn the_published_points_stay_and_beyond_them_is_only_a_bound() {
    let table = Table::read("air/bag-test__points");
    table.compare(cubic_feet_a_minute);
    for row in table.rows() {
        assert_eq!(word(measured(row).bound), row.text("bound"), "{}", row.text("id"));
    }
}

/// Source: straight lines of the logarithms.
#[test]
fn between_the_points_the_logarithms_go_straight() {
    Table::read("air/bag-test__between").compare(cubic_feet_a_minute);
}

fn cubic_feet_a_minute(row: &Row) -> Vec<(&'static str, f64)> {
    vec![("flow_cfm", measured(row).flow.best.get::<cfm>())]
}

fn measured(row: &Row) -> BagFlow {
    let direction = match row.text("direction") {
        "filling" => Direction::Filling,
        "emptying" => Direction::Emptying,
        other => panic!("direction {other:?}"),
    };
    flow(Time::new::<second>(row.number("seconds")), direction).unwrap()
}

fn word(bound: Bound) -> &'static str {
    match bound {
        Bound::Exact => "exact",
        Bound::AtMost => "at_most",
        Bound::AtLeast => "at_least",
    }
}
