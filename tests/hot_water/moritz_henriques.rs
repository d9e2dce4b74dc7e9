use super::{adult, onset_s, seconds, water_c, yes};
use crate::harness::{Row, Table};
use uom::si::f64::ThermodynamicTemperature;
use uom::si::thermodynamic_temperature::kelvin;
use winterseam::hot_water::Person;
use winterseam::hot_water::damage::{DamageLaw, Injury};
use winterseam::units::celsius;

fn inside(row: &Row, ours_s: f64) -> bool {
    row.number("healed_s") <= ours_s && ours_s <= row.number("injured_s")
}

#[test]
fn a_burn_comes_between_the_exposure_that_healed_and_the_one_that_did_not() {
    let adult = adult();
    for name in ["pairs", "exposures"] {
        Table::read(&format!("hot_water/moritz-henriques-1947__{name}")).compare(|row| {
            let ours = onset_s(&adult, water_c(row));
            let mut found = vec![("inside", yes(inside(row, ours)))];
            if name == "pairs" {
                found.push(("injured_s", ours));
            }
            found
        });
    }
}

#[test]
fn a_degree_about_halves_the_time() {
    // Headline of the same paper, from memory: up to about 51 °C.
    let adult = adult();
    for at in [44.0, 45.0, 46.0, 47.0, 48.0, 49.0, 50.0] {
        let share = onset_s(&adult, celsius(at + 1.0)) / onset_s(&adult, celsius(at));
        assert!((0.45..=0.55).contains(&share), "{at}: {share}");
    }
}

#[test]
fn the_misquoted_pair_of_constants_would_burn_later_than_every_exposure() {
    // 6.28e8 J/kmol over 8314.46 J/(kmol K), with the P that belongs to 75 000 K.
    let misquoted = DamageLaw {
        activation: ThermodynamicTemperature::new::<kelvin>(6.28e8 / 8314.46),
        ..DamageLaw::henriques()
    };
    let skin = Injury { law: misquoted, ..Person::Adult.injury() }.exposure();
    for row in Table::read("hot_water/moritz-henriques-1947__pairs").rows() {
        let injured = seconds(row, "injured_s");
        let later = skin.onset(water_c(row)).is_none_or(|ours| ours > injured * 1.5);
        assert!(later, "{}", row.text("id"));
    }
}
