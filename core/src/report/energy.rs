//! Energy in the unit on the bill.

use super::shown::{Scale, Shown};
use crate::home::Fuel;
use crate::sources::Figure;
use crate::units::energy::{million_btu, therm};
use uom::si::energy::{joule, kilowatt_hour};
use uom::si::f64::Energy;

/// Energy in a year, in the unit that this fuel is sold by; million Btu where nobody said which.
pub(super) fn a_year(figure: &Figure<Energy>, fuel: Option<Fuel>) -> Shown {
    let (unit, shown): (_, fn(Energy) -> f64) = match fuel {
        Some(Fuel::NaturalGas) => ("therm_per_year", |e| e.get::<therm>()),
        Some(Fuel::Propane) => ("gal_per_year", |e| units(e, Fuel::Propane)),
        Some(Fuel::FuelOil) => ("gal_per_year", |e| units(e, Fuel::FuelOil)),
        Some(Fuel::Kerosene) => ("gal_per_year", |e| units(e, Fuel::Kerosene)),
        Some(Fuel::Wood) => ("cord_per_year", |e| units(e, Fuel::Wood)),
        Some(Fuel::Pellets) => ("bag_per_year", |e| units(e, Fuel::Pellets)),
        Some(Fuel::Electricity | Fuel::HeatPump) => ("kwh_per_year", |e| e.get::<kilowatt_hour>()),
        None => ("mmbtu_per_year", |e| e.get::<million_btu>()),
    };
    Shown::new(figure, &Scale { unit, si_unit: "J/a", shown, si: |e| e.get::<joule>() })
}

/// In the unit that a fuel is sold by.
fn units(energy: Energy, fuel: Fuel) -> f64 {
    let unit = fuel.sold_by().first().and_then(|per| crate::balance::heat_content(fuel, *per));
    unit.map_or(0.0, |unit| energy.get::<joule>() / unit.get::<joule>())
}
