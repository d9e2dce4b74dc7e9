//! Heat along a duct, marched.

use super::{btu_h, ducts};
use crate::harness::Table;
use uom::si::ratio::ratio;
use uom::si::thermodynamic_temperature::degree_fahrenheit;
use winterseam::ducts::heating;
use winterseam::units::fahrenheit;

#[test]
fn ducts_bring_what_a_march_along_them_brings() {
    Table::read("ducts/march__heating").compare(|row| {
        let indoor = fahrenheit(row.number("indoor_f"));
        let air = heating(&ducts(row), btu_h(row.number("btu_h")), indoor);
        let all = [
            ("effectiveness", air.effectiveness.get::<ratio>()),
            ("plenum_f", air.plenum.get::<degree_fahrenheit>()),
            ("register_f", air.register.get::<degree_fahrenheit>()),
        ];
        all.into_iter().filter(|(column, _)| row.has(column)).collect()
    });
}
