//! Leakage of a whole home: handbook relations, fits, fans, and the credit for leaks.

use crate::harness::{Row, Table};
use uom::si::f64::{Area, Length, MassDensity, Pressure, Ratio, VolumeRate};
use uom::si::volume_rate::{cubic_meter_per_second, liter_per_second};
use uom::si::{
    area::square_centimeter, area::square_meter, length::meter,
    mass_density::kilogram_per_cubic_meter, pressure::pascal, ratio::ratio,
};
use winterseam::air::fans::{Fans, with_fans};
use winterseam::air::ventilation::credit;
use winterseam::physics::power_law::{PowerLaw, Reference, normalized_leakage, through_the_leaks};
use winterseam::units::volume_rate::cfm;

fn share(value: f64) -> Ratio {
    Ratio::new::<ratio>(value)
}

fn litres(value: f64) -> VolumeRate {
    VolumeRate::new::<liter_per_second>(value)
}

fn square_centimetres(leaks: &PowerLaw, stated: Reference) -> f64 {
    leaks.leakage_area(stated).get::<square_centimeter>()
}

/// Source: chapter 16, equations 40 to 45, and areas printed in its examples.
#[test]
fn flow_and_area_are_two_names_of_one_leakage() {
    Table::read("air/handbook-2021-ch16__leakage").compare(|row| {
        let leaks = leaks_of(row);
        let area = square_centimetres(&leaks, Reference::FOUR_PASCALS);
        vec![
            ("area_4pa_cm2", area),
            ("area_10pa_cm2", square_centimetres(&leaks, Reference::TEN_PASCALS)),
            ("printed_cm2", area),
        ]
    });
}

fn leaks_of(row: &Row) -> PowerLaw {
    let exponent = share(row.number("exponent"));
    if row.has("coefficient") {
        return PowerLaw::new(row.number("coefficient"), exponent).unwrap();
    }
    let flow = VolumeRate::new::<cfm>(row.number("flow_cfm"));
    PowerLaw::through(flow, Pressure::new::<pascal>(row.number("at_pa")), exponent).unwrap()
}

/// Source: chapter 16, equation 42: from 4 Pa without loss to 10 Pa with a sharp edge.
#[test]
fn an_area_at_four_pascals_is_smaller_than_the_same_at_ten() {
    let leaks = PowerLaw::new(0.05, share(0.65)).unwrap();
    let factor = square_centimetres(&leaks, Reference::TEN_PASCALS)
        / square_centimetres(&leaks, Reference::FOUR_PASCALS);
    assert!((factor - 1.8778).abs() < 0.00005, "{factor}");
}

/// Source: chapter 16, equation 46.
#[test]
fn normalized_leakage_compares_homes() {
    Table::read("air/handbook-2021-ch16__normalized").compare(|row| {
        let leakage = normalized_leakage(
            Area::new::<square_centimeter>(row.number("leakage_area_cm2")),
            Area::new::<square_meter>(row.number("floor_m2")),
            Length::new::<meter>(row.number("height_m")),
        );
        vec![("leakage", leakage.get::<ratio>())]
    });
}

/// Eight readings of a blower test, of our own invention: Pa and m³/s.
const READINGS: [(f64, f64); 8] = [
    (10.0, 0.2712),
    (15.0, 0.3471),
    (20.0, 0.4239),
    (25.0, 0.4868),
    (30.0, 0.5492),
    (40.0, 0.6561),
    (50.0, 0.7655),
    (60.0, 0.8571),
];

/// Source: numpy's polynomial fit of the logarithms.
#[test]
fn the_line_of_the_logarithms_is_the_one_of_least_squares() {
    let test = READINGS
        .map(|(p, q)| (Pressure::new::<pascal>(p), VolumeRate::new::<cubic_meter_per_second>(q)));
    let leaks = PowerLaw::fitted(&test).unwrap();
    Table::read("air/numpy-2-4-6__power-law").compare(|_| {
        let at_50 = leaks.flow(Pressure::new::<pascal>(50.0));
        vec![
            ("exponent", leaks.exponent().get::<ratio>()),
            ("coefficient", leaks.coefficient()),
            ("flow_50_m3_s", at_50.get::<cubic_meter_per_second>()),
            ("area_4pa_cm2", square_centimetres(&leaks, Reference::FOUR_PASCALS)),
        ]
    });
}

/// Source: the test standard's corrections, from memory; computed by Python 3.11 for a blower that
/// draws 21 °C room air out while 0 °C air comes in.
#[test]
fn a_winter_test_is_brought_to_standard_air() {
    let density = |celsius: f64| {
        MassDensity::new::<kilogram_per_cubic_meter>(1.2041 * 293.15 / (celsius + 273.15))
    };
    let fan = VolumeRate::new::<cubic_meter_per_second>(0.0600);
    let leaks = through_the_leaks(fan, density(21.0), density(0.0));
    let at_one_pascal = Pressure::new::<pascal>(1.0);
    let envelope = PowerLaw::through(leaks, at_one_pascal, share(0.65)).unwrap();
    assert!((envelope.coefficient() - 0.05572).abs() < 0.000_005);
    // Viscosity after Sutherland at 0 and at 20 °C.
    let viscosity = |kelvin: f64| 1.458e-6 * kelvin.powf(1.5) / (kelvin + 110.4);
    let (thicker, denser) = (viscosity(273.15) / viscosity(293.15), 293.15 / 273.15);
    let standard = envelope.at_standard_air(share(denser), share(thicker));
    assert!((standard.coefficient() - 0.05617).abs() < 0.000_005, "{}", standard.coefficient());
}

/// Source: the work specification's two forms of the credit for leaks.
#[test]
fn leaks_count_for_fresh_air_as_the_rule_of_2013_says() {
    Table::read("air/infiltration-credit-2013").compare(|row| {
        let floor = Area::new::<square_meter>(row.number("floor_m2"));
        let (leakage, weather) = (share(row.number("leakage")), share(row.number("weather")));
        let flow = credit(leakage, weather, floor).best.get::<liter_per_second>();
        vec![("flow_l_s", flow), ("flow_50_form_l_s", flow)]
    });
}

/// Source: chapters 16 and 17, which disagree.
#[test]
fn fans_and_leaks_add_up_as_each_chapter_says() {
    Table::read("air/handbook-2021-ch16-ch17__fans").compare(|row| {
        let fans = Fans {
            balanced: litres(row.number("balanced_l_s")),
            unbalanced: litres(row.number("unbalanced_l_s")),
        };
        let air = with_fans(litres(row.number("leaks_l_s")), fans);
        vec![
            ("ch16_l_s", air.best.get::<liter_per_second>()),
            ("ch17_l_s", air.high.get::<liter_per_second>()),
        ]
    });
}
