//! Lists of times that documents print; one table a document.

use super::{onset_s, water_f, yes};
use crate::harness::Table;
use uom::si::f64::{ThermodynamicTemperature, Time};
use uom::si::time::second;
use winterseam::hot_water::{Person, burn_time, thermometer_error};

fn told(water: ThermodynamicTemperature, person: Person) -> Time {
    let told = burn_time(water, thermometer_error(true), person).expect("water of a tap");
    told.low.expect("within six hours")
}

fn compare(list: &str, person: Person) {
    let skin = person.injury().exposure();
    Table::read(&format!("hot_water/{list}")).compare(|row| {
        let ours = onset_s(&skin, water_f(row));
        let mut found = vec![];
        if row.has("injured_s") {
            let theirs = row.number("injured_s");
            let told = told(water_f(row), person).get::<second>();
            found.push(("injured_s", ours));
            found.push(("told_never_later", yes(told <= theirs)));
            if person == Person::Adult {
                found.push(("never_later", yes(ours <= theirs)));
            }
        }
        if ["hospital-list", "heater-manual-dial"].contains(&list) && row.has("at_least_s") {
            found.push(("at_least_s", ours.min(row.number("at_least_s"))));
        }
        found
    });
}

#[test]
fn an_adult_burns_when_the_memorandum_says() {
    compare("memorandum-1978", Person::Adult);
}

#[test]
fn an_adult_burns_when_the_hospital_says() {
    compare("hospital-list", Person::Adult);
}

#[test]
fn an_adult_burns_when_the_manual_of_a_heater_says() {
    compare("heater-manual-dial", Person::Adult);
}

#[test]
fn an_adult_burns_when_the_handouts_say() {
    compare("paediatric-handout", Person::Adult);
    compare("university-handout", Person::Adult);
}

#[test]
fn an_adult_burns_when_the_charity_says() {
    compare("burn-charity-list", Person::Adult);
}

#[test]
fn an_adult_burns_when_the_remembered_list_says() {
    compare("adult-list", Person::Adult);
}

#[test]
fn a_child_burns_when_the_campaign_says() {
    compare("baby-campaign", Person::Child);
}
