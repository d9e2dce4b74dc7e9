//! Energy in the unit on the bill.

use super::shown::{Scale, Shown};
use crate::home::{Fuel, PriceUnit};
use crate::sources::Figure;
use crate::units::energy::{million_btu, therm};
use uom::si::energy::{joule, kilowatt_hour};
use uom::si::f64::Energy;

/// Energy in a year, in the unit that this fuel is sold by; million Btu for one without a meter.
pub(super) fn a_year(figure: &Figure<Energy>, fuel: Option<Fuel>) -> Shown {
    let (unit, shown): (_, fn(Energy) -> f64) = match fuel {
        Some(Fuel::NaturalGas) => ("therm_per_year", |e| e.get::<therm>()),
        Some(Fuel::Propane) => ("gal_per_year", |e| gallons(e, Fuel::Propane)),
        Some(Fuel::FuelOil) => ("gal_per_year", |e| gallons(e, Fuel::FuelOil)),
        Some(Fuel::Kerosene) => ("gal_per_year", |e| gallons(e, Fuel::Kerosene)),
        Some(Fuel::Electricity | Fuel::HeatPump) => ("kwh_per_year", |e| e.get::<kilowatt_hour>()),
        Some(Fuel::Wood) | None => ("mmbtu_per_year", |e| e.get::<million_btu>()),
    };
    Shown::new(figure, &Scale { unit, si_unit: "J/a", shown, si: |e| e.get::<joule>() })
}

fn gallons(energy: Energy, fuel: Fuel) -> f64 {
    let gallon = crate::balance::heat_content(fuel, PriceUnit::Gallon).expect("sold by the gallon");
    energy.get::<joule>() / gallon.get::<joule>()
}
