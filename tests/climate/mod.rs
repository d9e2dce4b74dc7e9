//! Climate: the tables that were carried in, and the year that is made from them.

mod bad_input;
mod energy_code_zones;
mod fao_56;
mod noaa_lebanon;
mod noaa_normals;
mod other_places;
#[cfg(feature = "peers")]
mod real_years;
mod spoiled_files;
mod tables;
#[cfg(feature = "peers")]
mod weather_files;

use uom::si::thermodynamic_temperature::degree_fahrenheit;
use winterseam::climate::{Atlas, Hour, Station, Year};

/// Hourly air temperature in °F.
fn air_f(year: &Year) -> Vec<f64> {
    year.hours().map(|Hour { air, .. }| air.get::<degree_fahrenheit>()).collect()
}

/// Degree days as weather services count them: below the base, from halfway between the highest
/// and the lowest hour of each day.
fn heating_degree_days(air_f: &[f64], base: f64) -> f64 {
    let middle = |day: &[f64]| {
        let low = day.iter().copied().fold(f64::INFINITY, f64::min);
        f64::midpoint(day.iter().copied().fold(f64::NEG_INFINITY, f64::max), low)
    };
    air_f.chunks(24).map(|day| (base - middle(day)).max(0.0)).sum()
}

fn station(usaf: &str) -> Station {
    Atlas::embedded().station(usaf).unwrap_or_else(|| panic!("no station {usaf}"))
}
