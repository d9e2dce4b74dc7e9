use super::{adult, onset_s, water_c, yes};
use crate::harness::Table;
use uom::si::f64::{Frequency, ThermodynamicTemperature};
use uom::si::frequency::hertz;
use uom::si::thermodynamic_temperature::kelvin;
use winterseam::hot_water::Person;
use winterseam::hot_water::damage::{DamageLaw, Injury};

#[test]
fn the_set_of_all_published_points_is_met_as_another_program_met_it() {
    // 10^95.636, drawn through these same points: it shows what a fit could gain, and is not used.
    let fit = DamageLaw {
        frequency_factor: Frequency::new::<hertz>(4.325_14e95),
        activation: ThermodynamicTemperature::new::<kelvin>(73_003.0),
    };
    let skins = [adult(), Injury { law: fit, ..Person::Adult.injury() }.exposure()];
    Table::read("hot_water/twenty-two-points").compare(|row| {
        let over = |skin| onset_s(skin, water_c(row)) / row.number("published_s");
        let mut found = vec![("first_pair", yes((0.545..=0.975).contains(&over(&skins[0]))))];
        if row.has("fitted_pair") {
            found.push(("fitted_pair", yes((1.0 / 1.30..=1.30).contains(&over(&skins[1])))));
        }
        found
    });
}
