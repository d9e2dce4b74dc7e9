use crate::harness::{Row, Table};
use uom::si::f64::TemperatureInterval;
use uom::si::temperature_interval::degree_fahrenheit as interval;
use uom::si::thermodynamic_temperature::degree_fahrenheit;
use winterseam::climate::Atlas;
use winterseam::hot_water::mains_water;
use winterseam::units::fahrenheit;
use winterseam::wire::{Tree, ask};

fn mains_f(row: &Row, day: u16) -> f64 {
    let swing = TemperatureInterval::new::<interval>(row.number("swing_f"));
    let mean = fahrenheit(row.number("annual_mean_f"));
    mains_water(mean, swing, day).get::<degree_fahrenheit>()
}

#[test]
fn the_mains_are_as_warm_as_the_published_equation_says() {
    Table::read("hot_water/burch-christensen-2007").compare(|row| {
        let day = row.text("day").parse().expect("a day");
        vec![("mains_f", mains_f(row, day))]
    });
}

#[test]
fn the_mains_of_a_year_have_the_published_mean_and_ends() {
    Table::read("hot_water/burch-christensen-2007__year").compare(|row| {
        let year = (1..=365).map(|day| mains_f(row, day)).collect::<Vec<_>>();
        let least = year.iter().copied().fold(f64::MAX, f64::min);
        let most = year.iter().copied().fold(f64::MIN, f64::max);
        vec![("mean_f", year.iter().sum::<f64>() / 365.0), ("least_f", least), ("most_f", most)]
    });
}

#[test]
fn the_probe_gives_the_same_mains() {
    for row in Table::read("hot_water/burch-christensen-2007").rows() {
        let question = format!(
            r#"{{"ask": "mains_water", "annual_mean_c": {}, "monthly_swing_k": {}, "day_of_year": {}}}"#,
            (row.number("annual_mean_f") - 32.0) / 1.8,
            row.number("swing_f") / 1.8,
            row.text("day"),
        );
        let answer = ask(&Tree::from_json(&question).expect("JSON"), Atlas::embedded());
        let got = answer.expect("an answer")["water_c"].as_f64().expect("a number");
        assert!((got * 1.8 + 32.0 - row.number("mains_f")).abs() <= 0.0051, "{}", row.text("id"));
    }
}
