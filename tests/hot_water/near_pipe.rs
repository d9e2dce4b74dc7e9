use crate::harness::{Row, Table};
use std::f64::consts::PI;
use uom::si::f64::{Length, Power, TemperatureInterval, ThermalConductivity, Volume, VolumeRate};
use uom::si::length::{foot, inch};
use uom::si::temperature_interval::degree_fahrenheit as interval;
use uom::si::volume::gallon;
use uom::si::{
    power::watt, thermal_conductivity::watt_per_meter_kelvin, volume_rate::gallon_per_minute,
};
use winterseam::physics::film::Surroundings;
use winterseam::physics::pipe::{Pipe, heat_loss};
use winterseam::properties::water::heat_of_water;
use winterseam::units::fahrenheit;
use winterseam::units::power::btu_per_hour;

/// Heat that a foot of the row's pipe loses.
fn a_foot(row: &Row) -> Power {
    let foam = row.number("foam_in");
    let pipe = Pipe {
        insulation: Length::new::<inch>(foam),
        insulation_conductivity: ThermalConductivity::new::<watt_per_meter_kelvin>(0.040),
        ..Pipe::thin(
            Length::new::<inch>(row.number("outside_in")),
            if foam > 0.0 { 0.9 } else { 0.6 }.into(),
        )
    };
    let around = Surroundings::still(fahrenheit(row.number("air_f")));
    heat_loss(&pipe, fahrenheit(120.0), around).per_length * Length::new::<foot>(1.0)
}

/// How much cooler water comes out after thirty feet.
fn far_drop(row: &Row) -> TemperatureInterval {
    let flow = VolumeRate::new::<gallon_per_minute>(row.number("flow_gpm"));
    Power::new::<watt>(30.0 * a_foot(row).get::<watt>()) / (flow * heat_of_water())
}

#[test]
fn a_hot_pipe_loses_what_another_correlation_says() {
    Table::read("hot_water/near-pipe").compare(|row| {
        let inside = Length::new::<inch>(0.811);
        let content: Volume = inside * inside * Length::new::<foot>(30.0) * (PI / 4.0);
        let mut found = vec![
            ("loss_btu_h_ft", a_foot(row).get::<btu_per_hour>()),
            ("content_gal", content.get::<gallon>()),
        ];
        if row.has("flow_gpm") {
            found.push(("far_drop_f", far_drop(row).get::<interval>()));
        }
        found
    });
}
