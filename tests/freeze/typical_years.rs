//! Heat cables over two typical years, against a table and against Python on the same hours.

use crate::harness::{Row, Table, Tally};
use serde_json::Value;
use std::collections::BTreeMap;
use std::process::Command;
use uom::si::energy::kilowatt_hour;
use uom::si::f64::{Length, LinearPowerDensity, ThermalConductivity, ThermodynamicTemperature};
use uom::si::length::{foot, inch};
use uom::si::thermal_conductivity::watt_per_meter_kelvin;
use uom::si::time::hour;
use winterseam::freeze::{CableOnPipe, CableYear, over_hours};
use winterseam::home::{CableControl, Season};
use winterseam::units::celsius;
use winterseam::units::linear_power_density::watt_per_foot;

/// 15 October to 20 April.
const SEASON: Season = Season { on_day: 288, off_day: 110 };

fn stations() -> BTreeMap<String, Value> {
    let python = std::env::var("WINTERSEAM_PYTHON").expect("set by cargo verify");
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/peers/typical_years.py");
    let output = Command::new(python).arg(script).output().expect("Python runs");
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let text = String::from_utf8(output.stdout).expect("text");
    let lines = text.lines().map(|line| serde_json::from_str::<Value>(line).expect("JSON"));
    lines.map(|line| (line["station"].as_str().expect("a name").to_owned(), line)).collect()
}

fn air(station: &Value) -> Vec<ThermodynamicTemperature> {
    let hours = station["air_c"].as_array().expect("hours").iter();
    hours.map(|c| celsius(c.as_f64().expect("a number"))).collect()
}

fn year(air: &[ThermodynamicTemperature], control: CableControl, watts_ft: f64) -> CableYear {
    let cable = CableOnPipe {
        power: LinearPowerDensity::new::<watt_per_foot>(watts_ft),
        length: Length::new::<foot>(20.0),
        control,
        season: Some(SEASON),
        pipe_outside: Length::new::<inch>(0.875),
        insulation: Length::new::<inch>(0.5),
        conductivity: ThermalConductivity::new::<watt_per_meter_kelvin>(0.036),
    };
    over_hours(&cable, air, None)
}

fn kwh(year: &CableYear) -> f64 {
    year.electricity.get::<kilowatt_hour>()
}

#[test]
fn cables_use_what_the_table_says() {
    let stations = stations();
    Table::read("freeze/pvlib-0-11-0__cable").compare(|row: &Row| {
        let air = air(&stations[row.text("id")]);
        let always = year(&air, CableControl::AlwaysOn, 6.0);
        vec![
            ("always_kwh", kwh(&always)),
            ("thermostat_kwh", kwh(&year(&air, CableControl::Thermostat, 6.0))),
            ("self_regulating_kwh", kwh(&year(&air, CableControl::SelfRegulating, 5.0))),
            ("needed_kwh", always.needed.get::<kilowatt_hour>()),
        ]
    });
}

#[test]
fn cables_follow_their_rules_like_a_plain_reading_of_them() {
    let mut tally = Tally::default();
    for (name, station) in stations() {
        let air = air(&station);
        let seasonal = year(&air, CableControl::Seasonal, 6.0);
        let pairs = [
            ("thermostat_kwh", kwh(&year(&air, CableControl::Thermostat, 6.0))),
            ("self_regulating_kwh", kwh(&year(&air, CableControl::SelfRegulating, 5.0))),
            ("seasonal_hours", seasonal.on.get::<hour>()),
            ("seasonal_risk_hours", seasonal.freeze_risk.get::<hour>()),
        ];
        for (column, ours) in pairs {
            let theirs = station[column].as_f64().expect("a number");
            // Both add 8760 numbers; the order of additions moves the tenth digit.
            let agrees = (ours - theirs).abs() <= 1e-9 * theirs.abs();
            tally.note(&name, column, (ours, theirs), agrees, None);
        }
    }
    tally.report("freeze/typical-years");
}
