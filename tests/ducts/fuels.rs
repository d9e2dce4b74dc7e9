//! What heat costs, and how flows join.

use crate::harness::{Row, Table};
use serde_json::json;
use uom::si::energy::kilowatt_hour;
use uom::si::f64::{Ratio, VolumeRate};
use uom::si::ratio::ratio;
use uom::si::volume_rate::cubic_foot_per_minute;
use winterseam::balance::{Weather, assess};
use winterseam::climate::{Atlas, Year};
use winterseam::physics::joined_flows::{Joining, joined};
use winterseam::wire::{Tree, home};

/// Dollars that the heating of a home costs for each million Btu that the furnace gives.
fn usd_mmbtu(row: &Row) -> f64 {
    let request = json!({
        "today": "2026-11-25", "home": {"sections": "single"},
        "heating": {
            "fuel": row.text("fuel"), "price_per": row.text("per"),
            "price_usd": row.number("price"),
        },
    });
    let tree = Tree::from_json(&request.to_string()).expect("JSON");
    let mut home = home(&tree).unwrap_or_else(|errors| panic!("{request}: {errors:?}"));
    home.heating.efficiency = Some(Ratio::new::<ratio>(row.number("efficiency")));
    let place = Atlas::embedded().place("55401").expect("known");
    let hours = Year::of(&place.station);
    let year = assess(&home, &Weather { place: &place, year: &hours });
    let bought: f64 = year.uses.iter().map(|one| one.bought.get::<kilowatt_hour>()).sum();
    let cost: f64 = year.uses.iter().map(|one| one.cost.expect("a price").0).sum();
    cost / (bought * row.number("efficiency") * 3_412.142 / 1e6)
}

#[test]
fn a_million_btu_of_heat_costs_what_its_fuel_does() {
    Table::read("ducts/fuel-prices").compare(|row| vec![("usd_mmbtu", usd_mmbtu(row))]);
}

#[test]
fn leaks_and_fans_join_by_each_rule() {
    let flow = VolumeRate::new::<cubic_foot_per_minute>;
    Table::read("ducts/joined-flows").compare(|row| {
        let by = |rule| {
            joined(flow(row.number("leaks_cfm")), flow(row.number("fan_cfm")), rule)
                .get::<cubic_foot_per_minute>()
        };
        vec![
            ("greater", by(Joining::Greater)),
            ("squares", by(Joining::Squares)),
            ("half_fan", by(Joining::HalfFan)),
            ("sub_additive", by(Joining::SubAdditive)),
            ("sum", by(Joining::Sum)),
        ]
    });
}
