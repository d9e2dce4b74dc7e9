use super::{adult, onset_s, seconds, water_c, water_f};
use crate::harness::{Row, Table};
use uom::si::f64::{Frequency, HeatTransfer, Length, ThermodynamicTemperature, Time};
use uom::si::heat_transfer::watt_per_square_meter_kelvin;
use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};
use uom::si::{
    frequency::hertz, length::micrometer, length::millimeter, ratio::ratio, time::second,
};
use winterseam::hot_water::damage::{DamageLaw, Injury};
use winterseam::hot_water::{Person, burn_time, skin, thermometer_error};
use winterseam::physics::conduction::Wall;
use winterseam::units::{celsius, fahrenheit};

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

#[test]
fn a_film_of_water_and_other_depths_change_the_time_as_in_a_program_with_a_mesh() {
    Table::read("hot_water/layered-skin-program__variants").compare(|row| {
        let basal_depth = Length::new::<micrometer>(row.number("depth_um"));
        let seconds = if row.has("film_w_m2_k") {
            behind_a_film(row, basal_depth)
        } else {
            let skin = Injury { basal_depth, ..Person::Adult.injury() }.exposure();
            onset_s(&skin, water_c(row))
        };
        vec![("seconds", seconds)]
    });
}

/// The damage integral by trapezia over the logarithm of time, the skin behind a film.
fn behind_a_film(row: &Row, basal_depth: Length) -> f64 {
    let film = HeatTransfer::new::<watt_per_square_meter_kelvin>(row.number("film_w_m2_k"));
    let wall = Wall { film: Some(film), ..skin::skin(basal_depth) };
    let (response, law) = (wall.at(basal_depth), DamageLaw::henriques());
    // What is outside of the film at rest, so that the surface is at 34 °C.
    let surface = wall.at(Length::new::<micrometer>(0.0)).settled().get::<ratio>();
    let outside = skin::at_rest_c(1.0 / surface);
    let rest = skin::at_rest_c(response.settled().get::<ratio>() / surface);
    let done = |seconds: f64| {
        let share = response.after(Time::new::<second>(seconds)).get::<ratio>();
        let at = celsius(rest + (row.number("water_c") - outside) * share);
        law.rate(at).get::<hertz>() * seconds
    };
    let (step, mut seconds, mut damage) = (0.002_f64, 0.01, 0.0);
    while damage < 1.0 {
        let next = seconds * step.exp();
        damage += f64::midpoint(done(seconds), done(next)) * step;
        seconds = next;
    }
    seconds
}

#[test]
fn times_lie_by_the_polynomials_that_were_drawn_through_them() {
    let skins =
        [("adult_s", Person::Adult), ("child_s", Person::Child), ("older_s", Person::OlderAdult)];
    Table::read("hot_water/fitted-polynomial").compare(|row| {
        let time = |(column, person): &(&'static str, Person)| {
            (*column, onset_s(person.exposure(), water_f(row)))
        };
        skins.iter().map(time).collect()
    });
}

/// Source: the same program, "a reading of 120 °F that may be off by 2 °F".
#[test]
fn the_error_of_a_thermometer_is_a_factor_of_two_at_120() {
    let burn = burn_time(fahrenheit(120.0), thermometer_error(true), Person::Adult).expect("a tap");
    let time = burn.time.expect("within six hours");
    for (ours, theirs) in [(time.low, 256.0), (time.high, 1_135.0)] {
        assert!((ours.get::<second>() / theirs - 1.0).abs() < 0.003);
    }
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
