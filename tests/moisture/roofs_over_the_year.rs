//! What must hold for every roof over the year, whatever the numbers.

use super::ceiling_leak;
use uom::si::f64::{Mass, Ratio};
use uom::si::{mass::kilogram, ratio::ratio, time::hour};
use winterseam::climate::{Atlas, Station, Year};
use winterseam::moisture::{Dampness, IndoorVapour, Roof, RoofGrade, RoofYear, roof_year};
use winterseam::properties::air::standard_pressure;
use winterseam::units::{celsius, kelvins};

/// From subtropical to arctic, low and high: Miami, Key West, Missoula, Chicago, Fairbanks,
/// Gunnison.
const STATIONS: [&str; 6] = ["722020", "722010", "727730", "725300", "702610", "724677"];

fn station(number: &str) -> Station {
    Atlas::embedded().station(number).unwrap_or_else(|| panic!("no station {number}"))
}

fn roof(at: &Station, dampness: Dampness, ventilation: f64) -> Roof {
    Roof {
        leak: ceiling_leak(0.001, 1.25, 2.0, 0.05),
        ventilation: Ratio::new::<ratio>(ventilation),
        under_sky: kelvins(0.0),
        room: celsius(20.0),
        vapour: IndoorVapour::Added(dampness),
        pressure: standard_pressure(at.elevation).unwrap(),
    }
}

fn year_of(number: &str, dampness: Dampness, ventilation: f64) -> RoofYear {
    let at = station(number);
    roof_year(&roof(&at, dampness, ventilation), &Year::of(&at)).unwrap()
}

fn kilograms(mass: Mass) -> f64 {
    mass.get::<kilogram>()
}

#[test]
fn no_more_wets_a_roof_than_is_carried_and_every_hour_is_wet_or_dry() {
    for number in STATIONS {
        let year = year_of(number, Dampness::Usual, 0.0);
        for month in &year.months {
            assert!(month.wetting <= month.carried);
            assert!(month.frost <= month.wet);
        }
        let hours: f64 = year.months.iter().map(|m| (m.wet + m.dry).get::<hour>()).sum();
        assert!((hours - 8760.0).abs() < 1e-6);
    }
}

#[test]
fn a_damper_home_wets_its_roof_more_and_a_ventilated_roof_less() {
    let damp = [Dampness::Dry, Dampness::Usual, Dampness::Damp, Dampness::Wet];
    for number in STATIONS {
        let by_damp = damp.map(|d| kilograms(year_of(number, d, 0.0).wetting()));
        assert!(by_damp.is_sorted(), "{number}: {by_damp:?}");
        let by_air = [30.0, 10.0, 3.0, 0.0].map(|v| year_of(number, Dampness::Usual, v).grade());
        assert!(by_air.is_sorted(), "{number}: {by_air:?}");
    }
}

#[test]
fn frost_gathers_in_the_north_and_not_on_the_keys() {
    let arctic = year_of("702610", Dampness::Usual, 0.0);
    assert!(arctic.months[0].gains() && arctic.months[0].frost.get::<hour>() > 700.0);
    let keys = year_of("722010", Dampness::Usual, 0.0);
    assert!(keys.months.iter().all(|month| month.frost.get::<hour>() == 0.0));
    assert_eq!(year_of("702610", Dampness::Usual, 30.0).grade(), RoofGrade::StaysDry);
}
