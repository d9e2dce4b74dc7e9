//! Soil, sun and gains over the year.

use crate::harness::Table;
use serde_json::json;
use uom::si::angle::degree;
use uom::si::f64::{Angle, Length, RadiantExposure, Ratio, ThermalConductance};
use uom::si::length::meter;
use uom::si::power::watt;
use uom::si::radiant_exposure::joule_per_square_meter;
use uom::si::ratio::ratio;
use uom::si::temperature_interval::{degree_fahrenheit, kelvin};
use uom::si::thermal_conductance::watt_per_kelvin;
use uom::si::time::hour;
use uom::si::{area::square_meter, f64::Area};
use winterseam::climate::{Atlas, Normals, Shore, sun_above_air};
use winterseam::envelope::{
    inertia, internal_gains, soil_by_month, solar_gains, sun_on_walls, time_constant, utilisation,
};
use winterseam::home::Building;
use winterseam::units::{fahrenheit, warmer_by};

#[test]
fn gains_are_used_as_the_standard_says() {
    Table::read("envelope/iso-13790-2008__utilisation").compare(|row| {
        let of = |column| Ratio::new::<ratio>(row.number(column));
        vec![("share", utilisation(of("gains_over_losses"), of("a")).get::<ratio>())]
    });
}

/// A very light home of 86 m² that loses 160 W/K keeps heat for 11.9 h (80 kJ/(K·m²) · 86 ÷ 160) and
/// has an inertia of 1.80; ISO 13790 from memory, computed by Python 3.11.
#[test]
fn a_light_home_keeps_heat_for_half_a_day() {
    let (floor, loses) =
        (Area::new::<square_meter>(86.0), ThermalConductance::new::<watt_per_kelvin>(160.0));
    assert!((time_constant(floor, loses).get::<hour>() - 11.9).abs() < 0.05);
    assert!((inertia(floor, loses).get::<ratio>() - 1.80).abs() < 0.005);
}

#[test]
fn walls_get_the_sun_that_its_path_gives_them() {
    Table::read("envelope/pvlib__sun-on-walls").compare(|row| {
        let latitude = Angle::new::<degree>(row.number("latitude_degrees"));
        let day = format!("{:.0}", row.number("day")).parse().expect("a day");
        let above: RadiantExposure = sun_above_air(latitude, day);
        let ground = above * row.number("clearness");
        let walls = sun_on_walls(above, ground, latitude, day);
        let joules = |sun: RadiantExposure| sun.get::<joule_per_square_meter>();
        vec![("share", joules(walls) / joules(ground))]
    });
}

const COLD_F: [f64; 12] = [18., 24., 35., 45., 54., 62., 71., 70., 60., 45., 31., 20.];
const MILD_F: [f64; 12] = [44., 46., 51., 57., 64., 72., 77., 76., 70., 61., 52., 46.];

#[test]
fn soil_follows_the_air_as_conduction_lets_it() {
    let any = Atlas::embedded().place("59801").expect("known").station.normals;
    Table::read("envelope/scipy__soil").compare(|row| {
        let air = if row.text("air") == "cold" { COLD_F } else { MILD_F }.map(fahrenheit);
        let normals = Normals { max: air, min: air, ..any.clone() };
        let month: usize = row.text("month").parse().expect("a month");
        let at = |metres| {
            let soil = soil_by_month(&normals, Length::new::<meter>(metres))[month];
            warmer_by(soil, fahrenheit(0.0)).get::<degree_fahrenheit>()
        };
        vec![("one_metre_f", at(1.0)), ("two_metres_f", at(2.0))]
    });
}

/// 17,900 + 23.8 · 924 + 4,104 · 2 Btu a day are 2,004 Btu/h; for 1,568 ft² and three bedrooms
/// 2,814: the reference home of the energy code (section R405), from memory.
#[test]
fn people_and_machines_give_what_the_code_reckons() {
    for (width, length, bedrooms, btu_h) in [(14.0, 66.0, 2, 2_004.0), (28.0, 56.0, 3, 2_814.0)] {
        let feet = Length::new::<uom::si::length::foot>;
        let building = Building {
            width: Some(feet(width)),
            length: Some(feet(length)),
            bedrooms: Some(bedrooms),
            ..Building::default()
        };
        let watts = internal_gains(&building).get::<watt>();
        assert!((watts / 0.293_071 - btu_h).abs() < 1.0, "{watts}");
    }
}

/// Mean of four sides of a home at 40 to 48° north, in shares of what falls on level ground: 0.7 to
/// 1.0 in winter, 0.45 to 0.60 in summer (common practice).
#[test]
fn walls_get_the_shares_that_the_trade_expects() {
    for (day, shares) in [(15, 0.7..=1.0), (196, 0.45..=0.60)] {
        let latitude = Angle::new::<degree>(44.0);
        let above = sun_above_air(latitude, day);
        let share = sun_on_walls(above, above * 0.5, latitude, day) / (above * 0.5);
        assert!(shares.contains(&share.get::<ratio>()), "day {day}: {share:?}");
    }
}

#[test]
fn polar_night_brings_walls_nothing() {
    let arctic = Angle::new::<degree>(80.0);
    let above = sun_above_air(arctic, 355);
    assert_eq!(sun_on_walls(above, above, arctic, 355), RadiantExposure::default());
}

/// January through the glass of a usual single section, by hand: 12 % of 924 ft² is glass, 0.72 ·
/// 0.75 of the sun on it gets in, and 0.7 of it is not shaded. Missoula swings 0.16 · √ΔT.
#[test]
fn the_sun_through_glass_is_a_share_of_that_on_the_walls() {
    let home = super::typed(&json!({"today": "2026-11-25", "home": {"sections": "single"}}));
    let station = Atlas::embedded().place("59801").expect("known").station;
    let gains = solar_gains(&home, &station.normals, station.latitude, Shore::Inland);
    let swing = warmer_by(station.normals.max[0], station.normals.min[0]).get::<kelvin>().sqrt();
    let above = sun_above_air(station.latitude, 15);
    let walls = sun_on_walls(above, above * (0.16 * swing), station.latitude, 15);
    let glass_m2 = 0.12 * 924.0 * 0.092_903_04 * 0.72 * 0.75 * 0.7;
    let by_hand = glass_m2 * walls.get::<joule_per_square_meter>() / 86_400.0;
    assert!((gains[0].get::<watt>() - by_hand).abs() < 1e-6 * by_hand);
}

/// Where gains equal losses the equation is nothing by nothing; the share passes there without a jump.
#[test]
fn the_share_of_gains_passes_one_smoothly() {
    let at = |gamma: f64| {
        utilisation(Ratio::new::<ratio>(gamma), Ratio::new::<ratio>(1.8)).get::<ratio>()
    };
    assert!((at(1.0 - 2e-6) - at(1.0)).abs() < 1e-5 && (at(1.0 + 2e-6) - at(1.0)).abs() < 1e-5);
    assert!((at(-0.5) + 2.0).abs() < 1e-12, "below zero it is 1 ÷ γ");
}
