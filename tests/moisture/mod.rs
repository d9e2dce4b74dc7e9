//! Dry and moist air.

mod coolprop;
mod psychrolib;
#[cfg(feature = "peers")]
mod psychrolib_live;

use crate::harness::Row;
use uom::si::f64::{Pressure, Ratio};
use uom::si::{pressure::pascal, ratio::ratio};
use winterseam::physics::moist_air::{MoistAir, RelativeHumidity};
use winterseam::units::celsius;

/// Moist air from °C, a share and Pa.
fn moist_air(dry_bulb_c: f64, share: f64, pressure_pa: f64) -> MoistAir {
    let humidity = RelativeHumidity::new(Ratio::new::<ratio>(share)).unwrap();
    MoistAir::new(celsius(dry_bulb_c), humidity, Pressure::new::<pascal>(pressure_pa)).unwrap()
}

/// The moist air of a row.
fn moist_air_of(row: &Row) -> MoistAir {
    moist_air(row.number("celsius"), row.number("relative_humidity"), row.number("pressure_pa"))
}
