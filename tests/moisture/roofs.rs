//! Leaks into roofs: the laws written out with `PsychroLib`, values kept in tables.

use super::{ceiling_leak, grams_an_hour, moist_air};
use crate::harness::Table;
use uom::si::f64::{Pressure, Ratio};
use uom::si::{
    pressure::pascal, ratio::ratio, thermodynamic_temperature::degree_celsius,
    volume_rate::liter_per_second,
};
use winterseam::moisture::{carried, mixed_with_outdoor_air};
use winterseam::physics::moist_air::vapour_pressure;
use winterseam::physics::saturation::saturation_temperature;
use winterseam::units::celsius;

const SEA_LEVEL: f64 = 101_325.0;

/// Source: stack pressure and leakage area of the handbook, moist air of the peer.
#[test]
fn a_leak_carries_vapour_into_the_roof() {
    Table::read("moisture/psychrolib-2.5.0__ceiling-leak").compare(|row| {
        let leak = ceiling_leak(
            row.number("area_cm2") / 1e4,
            row.number("height_m"),
            row.number("inside_m2_k_w"),
            row.number("outside_m2_k_w"),
        );
        let room = moist_air(row.number("indoor_c"), row.number("indoor_rh"), SEA_LEVEL);
        let out = carried(&leak, &room, celsius(row.number("outdoor_c"))).unwrap();
        vec![
            ("air_l_s", out.air.get::<liter_per_second>()),
            ("vapour_g_h", grams_an_hour(out.vapour)),
            ("condensable_g_h", grams_an_hour(out.condensable)),
            ("surface_c", out.surface.get::<degree_celsius>()),
        ]
    });
}

/// Source: balance of mass, moist air of the peer.
#[test]
fn air_from_outdoors_dries_the_roof() {
    Table::read("moisture/psychrolib-2.5.0__ventilated-roof").compare(|row| {
        let indoors = moist_air(row.number("indoor_c"), row.number("indoor_rh"), SEA_LEVEL);
        let outdoors = moist_air(row.number("outdoor_c"), row.number("outdoor_rh"), SEA_LEVEL);
        let ventilation = Ratio::new::<ratio>(row.number("ventilation"));
        let mixed = mixed_with_outdoor_air(&indoors, &outdoors, ventilation);
        let vapour = vapour_pressure(mixed, Pressure::new::<pascal>(SEA_LEVEL));
        let frost_point = saturation_temperature(vapour).unwrap();
        vec![
            ("humidity_ratio", mixed.get::<ratio>()),
            ("dew_point_c", frost_point.get::<degree_celsius>()),
        ]
    });
}
