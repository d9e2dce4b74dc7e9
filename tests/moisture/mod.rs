//! Dry and moist air, wet roofs and windows.

mod coolprop;
#[cfg(feature = "peers")]
mod coolprop_live;
mod iso_13788;
mod psychrolib;
#[cfg(feature = "peers")]
mod psychrolib_live;
mod roofs;
#[cfg(feature = "peers")]
mod roofs_live;
mod roofs_over_the_year;
mod told;

use crate::harness::Row;
use uom::si::f64::{Area, Length, MassRate, Pressure, Ratio};
use uom::si::{
    area::square_meter, length::meter, mass_rate::gram_per_second, pressure::pascal, ratio::ratio,
};
use winterseam::moisture::CeilingLeak;
use winterseam::physics::moist_air::{MoistAir, RelativeHumidity};
use winterseam::units::{celsius, insulance};

/// Moist air from °C, a share and Pa.
fn moist_air(dry_bulb_c: f64, share: f64, pressure_pa: f64) -> MoistAir {
    let humidity = RelativeHumidity::new(Ratio::new::<ratio>(share)).unwrap();
    MoistAir::new(celsius(dry_bulb_c), humidity, Pressure::new::<pascal>(pressure_pa)).unwrap()
}

/// A leak in a ceiling from m², m and m²K/W.
fn ceiling_leak(area: f64, height: f64, inside: f64, outside: f64) -> CeilingLeak {
    let (area, height) = (Area::new::<square_meter>(area), Length::new::<meter>(height));
    CeilingLeak::new(area, height, insulance(inside), insulance(outside)).unwrap()
}

/// A mass rate in g/h.
fn grams_an_hour(rate: MassRate) -> f64 {
    rate.get::<gram_per_second>() * 3600.0
}

/// The moist air of a row.
fn moist_air_of(row: &Row) -> MoistAir {
    moist_air(row.number("celsius"), row.number("relative_humidity"), row.number("pressure_pa"))
}
