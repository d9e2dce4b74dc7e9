//! Cold along a duct.

use super::{btu_h, ducts};
use crate::harness::Table;
use uom::si::f64::{Pressure, Ratio};
use uom::si::pressure::pascal;
use uom::si::ratio::ratio;
use winterseam::ducts::{Coil, cooling};
use winterseam::physics::moist_air::{MoistAir, RelativeHumidity};
use winterseam::units::celsius;

fn air(f: f64, rh: f64) -> MoistAir {
    air_c((f - 32.0) / 1.8, rh)
}

pub(super) fn air_c(c: f64, rh: f64) -> MoistAir {
    let humidity = RelativeHumidity::new(Ratio::new::<ratio>(rh)).expect("a share");
    MoistAir::new(celsius(c), humidity, Pressure::new::<pascal>(101_325.0)).expect("air")
}

#[test]
fn ducts_bring_the_cold_that_moist_air_brings() {
    Table::read("ducts/psychrolib-2-5-0__cooling").compare(|row| {
        let state = |place: &str| {
            let cell = |what: &str| row.number(&format!("{place}_{what}"));
            air(cell("f"), cell("rh"))
        };
        let coil = Coil {
            takes: btu_h(row.number("btu_h")),
            sensible: Ratio::new::<ratio>(row.number("sensible")),
        };
        let brings = cooling(&ducts(row), coil, &state("indoor"), &state("zone"));
        vec![("effectiveness", brings.get::<ratio>())]
    });
}
