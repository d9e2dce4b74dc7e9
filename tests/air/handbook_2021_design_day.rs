//! ASHRAE Handbook: Fundamentals 2021 (SI), chapter 17: the day that is designed for.

use crate::harness::Table;
use uom::si::f64::{Area, Length};
use uom::si::{area::square_centimeter, length::meter, volume_rate::liter_per_second};
use winterseam::air::design_day::{Season, flow};
use winterseam::units::kelvins;

/// Source: table 5.
#[test]
fn leakage_on_the_design_day() {
    Table::read("air/handbook-2021-ch17__design-day").compare(|row| {
        let season = match row.text("season") {
            "heating" => Season::Heating,
            "cooling" => Season::Cooling,
            other => panic!("season {other:?}"),
        };
        let height = Length::new::<meter>(row.number("height_m"));
        let apart = kelvins(row.number("room_c") - row.number("outdoors_c"));
        let one = Area::new::<square_centimeter>(1.0);
        let air = flow(one, Area::default(), height, apart, season).unwrap().best;
        let flow = air.get::<liter_per_second>();
        vec![("flow_l_s_cm2", flow), ("coarse_flow_l_s_cm2", flow)]
    });
}
