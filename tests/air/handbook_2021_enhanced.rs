//! ASHRAE Handbook: Fundamentals 2021 (SI), chapter 16: the enhanced model.

use super::handbook_2021_ch16::{BY_CLASS, storeys_of};
use crate::harness::{Row, Table};
use uom::si::f64::{Area, Ratio, Velocity};
use uom::si::volume_rate::{cubic_meter_per_hour, cubic_meter_per_second, liter_per_second};
use uom::si::{area::square_centimeter, ratio::ratio, velocity::meter_per_second};
use winterseam::air::enhanced::{Foundation, LeakFlow, Pressing, flow, usual_exponent};
use winterseam::air::infiltration::Storeys;
use winterseam::physics::power_law::{PowerLaw, Reference};
use winterseam::units::kelvins;

/// Source: worked examples 5, 6 and 7.
#[test]
fn worked_examples_of_the_enhanced_model() {
    Table::read("air/handbook-2021-ch16__enhanced-examples").compare(|row| {
        let exponent = Ratio::new::<ratio>(row.number("exponent"));
        let leaks = PowerLaw::new(row.number("coefficient"), exponent).unwrap();
        let air = pressed(row, &leaks, storeys_of(row));
        let an_hour = air.flow.best.get::<cubic_meter_per_hour>();
        vec![
            ("stack_m3_s", air.stack.get::<cubic_meter_per_second>()),
            ("wind_m3_s", air.wind.get::<cubic_meter_per_second>()),
            ("flow_m3_s", air.flow.best.get::<cubic_meter_per_second>()),
            ("flow_m3_h", an_hour),
            ("air_changes_h", an_hour / row.number("volume_m3")),
        ]
    });
}

/// Source: equations 45, 47, 49 and 50 with tables 7 to 9, one storey.
#[test]
fn the_enhanced_model_on_one_storey() {
    Table::read("air/handbook-2021-ch16__enhanced").compare(|row| {
        let area = Area::new::<square_centimeter>(row.number("leakage_area_cm2"));
        let leaks = PowerLaw::of_area(area, Reference::FOUR_PASCALS, usual_exponent()).unwrap();
        let air = pressed(row, &leaks, Storeys::One);
        vec![
            ("coefficient", leaks.coefficient()),
            ("stack_l_s", air.stack.get::<liter_per_second>()),
            ("wind_l_s", air.wind.get::<liter_per_second>()),
            ("flow_l_s", air.flow.best.get::<liter_per_second>()),
        ]
    });
}

fn pressed(row: &Row, leaks: &PowerLaw, storeys: Storeys) -> LeakFlow {
    let class: usize = row.text("shelter_class").parse().unwrap();
    let flue = row.text("flue") == "yes";
    let foundation = match row.text("foundation") {
        "slab" => Foundation::Slab,
        "crawl_space" => Foundation::CrawlSpace,
        other => panic!("foundation {other:?}"),
    };
    let home = Pressing::of(BY_CLASS[class - 1], storeys, flue, foundation);
    let wind = Velocity::new::<meter_per_second>(row.number("wind_m_s"));
    flow(leaks, kelvins(row.number("apart_k")), wind, &home)
}
