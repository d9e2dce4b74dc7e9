//! The shell of a home, the space below it, and what sun and people give.

mod below;
mod parts;
mod shell;
mod year;

use crate::harness::Table;
use serde_json::Value;
use uom::si::f64::{Power, ThermalConductance, VolumeRate};
use uom::si::power::watt;
use uom::si::thermal_conductance::watt_per_kelvin;
use uom::si::thermodynamic_temperature::degree_fahrenheit;
use uom::si::volume_rate::cubic_foot_per_minute;
use winterseam::envelope::{CrawlSpace, Temperatures, crawl_temperature};
use winterseam::home::Home;
use winterseam::units::fahrenheit;
use winterseam::wire::{Tree, home};

/// Watts for each kelvin in a Btu an hour for each °F.
const BTU_H_F: f64 = 0.293_071_07 * 1.8;

fn conducts(btu_h_f: f64) -> ThermalConductance {
    ThermalConductance::new::<watt_per_kelvin>(btu_h_f * BTU_H_F)
}

fn btu_h_f(conducts: ThermalConductance) -> f64 {
    conducts.get::<watt_per_kelvin>() / BTU_H_F
}

/// The typed home of a request.
fn typed(request: &Value) -> Home {
    let tree = Tree::from_json(&request.to_string()).expect("JSON");
    home(&tree).unwrap_or_else(|errors| panic!("{request}: {errors:?}"))
}

fn between(ground_f: f64, outdoor_f: f64) -> Temperatures {
    Temperatures {
        indoor: fahrenheit(70.0),
        ground: fahrenheit(ground_f),
        outdoor: fahrenheit(outdoor_f),
    }
}

fn space(skirting_u: f64, air_changes: f64) -> CrawlSpace {
    CrawlSpace {
        floor: conducts(70.0),
        ground: conducts(80.0),
        skirting: conducts(400.0 * skirting_u),
        air: VolumeRate::new::<cubic_foot_per_minute>(2500.0 * air_changes / 60.0),
        ducts: Power::new::<watt>(0.0),
    }
}

#[test]
fn the_crawl_space_settles_where_the_arithmetic_says() {
    Table::read("envelope/crawl-balance").compare(|row| {
        let space = space(row.number("skirting_u"), row.number("air_changes_h"));
        let between = between(row.number("ground_f"), row.number("outdoor_f"));
        vec![("crawl_f", crawl_temperature(&space, between).get::<degree_fahrenheit>())]
    });
}

#[test]
fn heat_of_ducts_warms_it_and_holes_cool_it() {
    let at = |space: &CrawlSpace| crawl_temperature(space, between(45.0, 0.0));
    let tight = space(0.8, 1.0);
    let heated = CrawlSpace { ducts: Power::new::<watt>(500.0), ..tight };
    assert!(at(&heated) > at(&tight) && at(&space(0.8, 60.0)) < at(&tight));
}
