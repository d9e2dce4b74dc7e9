//! Soil, sun and gains over the year.

use crate::harness::Table;
use uom::si::angle::degree;
use uom::si::f64::{Angle, Length, RadiantExposure, Ratio, ThermalConductance};
use uom::si::length::meter;
use uom::si::radiant_exposure::joule_per_square_meter;
use uom::si::ratio::ratio;
use uom::si::temperature_interval::degree_fahrenheit;
use uom::si::thermal_conductance::watt_per_kelvin;
use uom::si::time::hour;
use uom::si::{area::square_meter, f64::Area};
use winterseam::climate::{Atlas, Normals, sun_above_air};
use winterseam::envelope::{
    inertia, internal_gains, soil_by_month, sun_on_walls, time_constant, utilisation,
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
        let watts = internal_gains(&building).get::<uom::si::power::watt>();
        assert!((watts / 0.293_071 - btu_h).abs() < 1.0, "{watts}");
    }
}
