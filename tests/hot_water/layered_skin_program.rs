use super::{adult, onset_s, seconds, water_c, water_f};
use crate::harness::{Row, Table};
use uom::si::f64::{Frequency, Length, ThermodynamicTemperature};
use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};
use uom::si::{
    frequency::hertz, length::micrometer, length::millimeter, ratio::ratio, time::second,
};
use winterseam::hot_water::Person;
use winterseam::hot_water::damage::{DamageLaw, Injury};
use winterseam::hot_water::skin;
use winterseam::units::celsius;

#[test]
fn the_times_are_those_of_a_program_with_a_mesh() {
    let deep = Injury { basal_depth: Length::new::<micrometer>(100.0), ..Person::Adult.injury() };
    let skins = [
        ("adult_s", Person::Adult.injury().exposure()),
        ("adult_100um_s", deep.exposure()),
        ("older_s", Person::OlderAdult.injury().exposure()),
        ("child_s", Person::Child.injury().exposure()),
    ];
    Table::read("hot_water/layered-skin-program__times").compare(|row| {
        let filled = skins.iter().filter(|(column, _)| row.has(column));
        filled.map(|(column, skin)| (*column, onset_s(skin, water_f(row)))).collect()
    });
}

#[test]
fn skin_warms_and_is_damaged_as_in_a_program_with_a_mesh() {
    let adult = adult();
    Table::read("hot_water/layered-skin-program__states").compare(|row| {
        let after = seconds(row, "after_s");
        let basal = adult.temperature(water_c(row), after).get::<degree_celsius>();
        vec![("basal_c", basal), ("damage", adult.damage(water_c(row), after).get::<ratio>())]
    });
}

#[test]
fn skin_rests_at_the_temperatures_of_a_program_with_a_mesh() {
    let wall = skin::skin(Person::Adult.injury().basal_depth);
    Table::read("hot_water/layered-skin-program__rest").compare(|row| {
        let there = wall.at(Length::new::<millimeter>(row.number("depth_mm")));
        vec![("rest_c", skin::at_rest_c(there.settled().get::<ratio>()))]
    });
}

fn law(row: &Row) -> DamageLaw {
    DamageLaw {
        frequency_factor: Frequency::new::<hertz>(row.number("frequency_factor_hz")),
        activation: ThermodynamicTemperature::new::<kelvin>(row.number("activation_k")),
    }
}

#[test]
fn each_set_of_constants_is_as_far_from_the_published_times_as_another_program_finds() {
    Table::read("hot_water/layered-skin-program__constants").compare(|row| {
        let skin = Injury { law: law(row), ..Person::Adult.injury() }.exposure();
        let ours = skin.onset(water_c(row)).expect("within six hours").get::<second>();
        vec![("ratio", ours / row.number("published_s"))]
    });
}

#[test]
fn the_rates_of_damage_are_those_of_the_first_pair_of_constants() {
    Table::read("hot_water/damage-rate").compare(|row| {
        let rate = DamageLaw::henriques().rate(celsius(row.number("at_c")));
        vec![("rate_hz", rate.get::<hertz>())]
    });
}
