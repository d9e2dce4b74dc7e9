//! Tanks and their year against the procedure of the federal test, by hand.

use crate::harness::{Row, Table};
use uom::si::f64::{
    Length, Power, Ratio, TemperatureInterval, ThermalConductance, ThermodynamicTemperature, Time,
    Volume,
};
use uom::si::length::foot;
use uom::si::temperature_interval::degree_fahrenheit as interval;
use uom::si::thermal_conductance::watt_per_kelvin;
use uom::si::time::{hour, minute};
use uom::si::{energy::kilowatt_hour, ratio::ratio, volume::gallon};
use winterseam::home::HeaterKind;
use winterseam::hot_water::draws::Draws;
use winterseam::hot_water::heater::Heater;
use winterseam::hot_water::mixing::{hot_share, mixed};
use winterseam::hot_water::rating::{Rating, Test};
use winterseam::hot_water::tank::Tank;
use winterseam::hot_water::year::{Service, year};
use winterseam::units::energy::therm;
use winterseam::units::fahrenheit;
use winterseam::units::power::btu_per_hour;

/// One Btu/(h °F) in W/K.
const BTU_H_F: f64 = 1_055.055_852_62 * 1.8 / 3_600.0;

fn f(row: &Row, column: &str) -> ThermodynamicTemperature {
    fahrenheit(row.number(column))
}

#[test]
fn losses_are_what_the_test_of_the_label_leaves() {
    Table::read("hot_water/federal-water-heater-test").compare(|row| {
        let rating = Rating {
            factor: row.number("label").into(),
            recovery: row.number("recovery").into(),
            input: Power::new::<btu_per_hour>(row.number("input_btu_h")),
        };
        let uniform = row.has("uniform_gal").then(|| Test::uniform(row.number("uniform_gal")));
        let test = uniform.unwrap_or(Test::energy_factor());
        let bought = rating.bought_loss(&test);
        let given_off = rating.cooling_loss(&test);
        vec![
            ("bought_btu_h_f", bought.get::<watt_per_kelvin>() / BTU_H_F),
            ("given_off_btu_h_f", given_off.get::<watt_per_kelvin>() / BTU_H_F),
            ("factor", rating.factor_with(bought, &test).get::<ratio>()),
        ]
    });
}

fn tank(row: &Row) -> Tank {
    Tank {
        volume: Volume::new::<gallon>(row.number("volume_gal")),
        loss: ThermalConductance::new::<watt_per_kelvin>(row.number("given_off_btu_h_f") * BTU_H_F),
        heating: Power::new::<btu_per_hour>(row.number("heating_btu_h")),
    }
}

/// How far a tank falls in two hours: the end at which the time is two hours.
fn falls_in_two_hours(row: &Row) -> f64 {
    let (mut low, mut high) = (0.0, 20.0);
    for _ in 0..50 {
        let middle = f64::midpoint(low, high);
        let end = f(row, "from_f") - TemperatureInterval::new::<interval>(middle);
        let time = tank(row).cooling_time(f(row, "from_f"), end, f(row, "place_f"));
        if time.expect("it cools") < Time::new::<hour>(2.0) { low = middle } else { high = middle }
    }
    low
}

#[test]
fn a_tank_cools_is_drawn_and_recovers_as_by_hand() {
    Table::read("hot_water/tank-behaviour").compare(|row| {
        let tank = tank(row);
        let (from, to) = (f(row, "from_f"), f(row, "to_f"));
        let cools = tank.cooling_time(from, to, f(row, "place_f")).expect("it cools");
        let inlet = fahrenheit(58.0);
        let draw = tank.draw_to_cool(from, to, inlet).expect("it cools");
        let by_90 = tank.recovery_time(fahrenheit(30.0), fahrenheit(120.0)).get::<hour>();
        let gallons = row.number("volume_gal");
        vec![
            ("cools_h", cools.get::<hour>()),
            ("falls_f", falls_in_two_hours(row)),
            ("draw_gal", draw.get::<gallon>()),
            ("recovers_min", tank.recovery_time(inlet, to).get::<minute>()),
            ("first_hour_gal", 0.7 * gallons + gallons / by_90),
        ]
    });
}

struct Bought {
    all: f64,
    standby: f64,
}

/// Therms of gas or kWh of electricity in a year.
fn bought(row: &Row, water: ThermodynamicTemperature) -> Bought {
    let gas = row.text("kind") == "gas";
    let (kind, factor, gallons) =
        if gas { (HeaterKind::DraftHood, 0.59, 40.0) } else { (HeaterKind::Electric, 0.90, 50.0) };
    let heater = Heater::new(kind, Ratio::new::<ratio>(factor), Volume::new::<gallon>(gallons));
    let service = Service {
        water,
        mains: fahrenheit(58.0),
        place: fahrenheit(67.5),
        draws: Draws {
            mixed: Volume::new::<gallon>(row.number("mixed_gal")),
            plain: Volume::new::<gallon>(row.number("plain_gal")),
        },
        near_pipe: Length::new::<foot>(0.0),
        sleeve: false,
    };
    let year = year(&heater, &service);
    let sold = |energy: uom::si::f64::Energy| {
        if gas { energy.get::<therm>() } else { energy.get::<kilowatt_hour>() }
    };
    Bought { all: sold(year.used + year.kept), standby: sold(year.kept) }
}

#[test]
fn the_year_of_a_heater_is_as_by_hand() {
    Table::read("hot_water/year-of-a-heater").compare(|row| {
        let hot = bought(row, f(row, "water_f"));
        let mut found = vec![("bought", hot.all), ("standby", hot.standby)];
        if row.has("cooler_f") {
            let saved = 1.0 - bought(row, f(row, "cooler_f")).all / hot.all;
            found.push(("saved_percent", saved * 100.0));
        }
        found
    });
}

#[test]
fn hot_and_cold_mix_as_energy_says() {
    use uom::si::thermodynamic_temperature::degree_fahrenheit;
    Table::read("hot_water/mixing").compare(|row| {
        let (hot, cold) = (f(row, "hot_f"), f(row, "cold_f"));
        let share = hot_share(f(row, "mixed_f"), hot, cold).expect("between");
        let by_table = Ratio::new::<ratio>(row.number("share"));
        let mix = mixed(by_table, hot, cold).get::<degree_fahrenheit>();
        vec![("share", share.get::<ratio>()), ("mixed_f", mix)]
    });
}
