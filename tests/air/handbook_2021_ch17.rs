//! ASHRAE Handbook: Fundamentals 2021 (SI), chapter 17.

use crate::harness::Table;
use uom::si::f64::Area;
use uom::si::{area::square_meter, volume_rate::liter_per_second};
use winterseam::air::ventilation::need;
use winterseam::units::volume_rate::cfm;

/// Source: equation 11, and its inch-pound form.
#[test]
fn fresh_air_for_the_floor_and_the_people() {
    Table::read("air/handbook-2021-ch17__ventilation").compare(|row| {
        let floor = Area::new::<square_meter>(row.number("floor_m2"));
        let fresh = need(floor, row.text("bedrooms").parse().unwrap()).best;
        vec![("flow_l_s", fresh.get::<liter_per_second>()), ("flow_cfm", fresh.get::<cfm>())]
    });
}
