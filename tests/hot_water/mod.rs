//! Burn times against exposures, lists, a standard and other programs; conduction against its closed
//! forms; tanks, mains and dials against procedures and manuals.

mod closed_form_conduction;
mod contact_standard;
mod heater_manual_dials;
mod layered_skin_program;
mod lists;
mod mains;
mod moritz_henriques;
mod near_pipe;
#[cfg(feature = "peers")]
mod scipy_live;
mod tank;
mod twenty_two_points;

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
