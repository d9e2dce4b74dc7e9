use super::{adult_first_injury, onset_s};
use crate::harness::Table;
use winterseam::hot_water::damage::Exposure;
use winterseam::units::celsius;

/// The temperature that injures in so many seconds, °C.
fn injures_in(skin: &Exposure, seconds: f64) -> f64 {
    let (mut low, mut high) = (44.0, 90.0);
    for _ in 0..40 {
        let middle = f64::midpoint(low, high);
        if onset_s(skin, celsius(middle)) > seconds {
            low = middle;
        } else {
            high = middle;
        }
    }
    low
}

#[test]
fn first_injury_comes_at_the_temperature_of_the_standard_for_contact() {
    let skin = adult_first_injury();
    Table::read("hot_water/contact-standard")
        .compare(|row| vec![("water_c", injures_in(&skin, row.number("seconds")))]);
}
