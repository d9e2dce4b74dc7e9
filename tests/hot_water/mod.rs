//! Burn times against exposures, lists, a standard and another program; conduction against its
//! closed forms.

mod closed_form_conduction;
mod contact_standard;
mod layered_skin_program;
mod lists;
mod moritz_henriques;

use crate::harness::Row;
use uom::si::f64::{Ratio, ThermodynamicTemperature, Time};
use uom::si::{ratio::ratio, time::second};
use winterseam::hot_water::Person;
use winterseam::hot_water::damage::{Exposure, Injury};
use winterseam::units::{celsius, fahrenheit};

/// Seconds until an injury.
fn onset_s(exposure: &Exposure, water: ThermodynamicTemperature) -> f64 {
    exposure.onset(water).expect("within six hours").get::<second>()
}

/// An adult's skin.
fn adult() -> Exposure {
    Person::Adult.injury().exposure()
}

/// An adult's skin, up to the first injury.
fn adult_first_injury() -> Exposure {
    Injury { threshold: Ratio::new::<ratio>(0.53), ..Person::Adult.injury() }.exposure()
}

fn water_c(row: &Row) -> ThermodynamicTemperature {
    celsius(row.number("water_c"))
}

fn water_f(row: &Row) -> ThermodynamicTemperature {
    fahrenheit(row.number("water_f"))
}

fn seconds(row: &Row, column: &str) -> Time {
    Time::new::<second>(row.number(column))
}

/// 1 for yes, so that a table can hold and dispute an answer.
fn yes(answer: bool) -> f64 {
    f64::from(u8::from(answer))
}
