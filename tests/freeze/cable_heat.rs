//! What a drip and a cable do to a pipe, against the same laws on real air.

use super::{in_fahrenheit, usual, windy};
use crate::harness::Table;
use uom::si::f64::{Length, LinearPowerDensity};
use uom::si::length::foot;
use uom::si::time::hour;
use uom::si::volume::gallon;
use winterseam::freeze::{drip, plastic_limit};
use winterseam::physics::pipe::{Pipe, settled_temperature};
use winterseam::units::fahrenheit;
use winterseam::units::linear_power_density::watt_per_foot;

#[test]
fn a_drip_keeps_a_pipe_open_at_the_flow_of_the_table() {
    Table::read("freeze/coolprop-8-0-0__drip").compare(|row| {
        let pipe = Pipe { emissivity: 0.9.into(), ..usual(row, "three_quarters").1 };
        let around = windy(row.number("air_f"), row.number("wind_mph"));
        let length = Length::new::<foot>(row.number("length_ft"));
        let flow = drip(&pipe, length, fahrenheit(50.0), around).expect("a flow");
        let hourly = flow * uom::si::f64::Time::new::<hour>(1.0);
        vec![("gallons_h", hourly.get::<gallon>())]
    });
}

#[test]
fn a_cable_that_is_never_switched_off_heats_its_pipe_as_in_the_table() {
    Table::read("freeze/coolprop-8-0-0__always-on").compare(|row| {
        let usual = usual(row, "three_quarters").1;
        // The cable lies on the outside of the wall.
        let pipe = Pipe { inside: usual.outside, emissivity: 0.9.into(), ..usual };
        let around = windy(row.number("air_f"), row.number("wind_mph"));
        let power = LinearPowerDensity::new::<watt_per_foot>(row.number("power_w_ft"));
        vec![("pipe_f", in_fahrenheit(settled_temperature(&pipe, power, around)))]
    });
}

#[test]
fn under_foam_it_passes_the_limit_of_plastic_pipe_in_summer() {
    let table = Table::read("freeze/coolprop-8-0-0__always-on");
    let summer: Vec<_> = table.rows().iter().filter(|row| row.number("air_f") > 50.0).collect();
    assert!(!summer.is_empty());
    for row in summer {
        assert!(fahrenheit(row.number("pipe_f")) > plastic_limit(), "{}", row.text("id"));
    }
}
