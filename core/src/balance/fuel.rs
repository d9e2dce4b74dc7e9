//! From heat to what is bought, and from what is bought to dollars.

use crate::home::{Fuel, Home, PriceUnit};
use crate::money::Dollars;
use crate::sources::{Source, fuel};
use crate::units::energy::{btu, therm};
use uom::si::energy::kilowatt_hour;
use uom::si::f64::{Energy, Ratio};
use uom::si::ratio::ratio;

/// Sources of the heat contents and of the usual efficiencies.
pub(super) const SOURCES: &[&Source] = &[&fuel::HEAT_CONTENTS, &fuel::EFFICIENCIES];

/// Heat given for each unit of fuel where nobody knows better.
fn usual_efficiency(fuel: Fuel) -> Ratio {
    Ratio::new::<ratio>(match fuel {
        Fuel::Electricity => 1.0,
        Fuel::HeatPump => 2.2,
        Fuel::NaturalGas | Fuel::Propane | Fuel::Pellets => 0.78,
        Fuel::FuelOil | Fuel::Kerosene => 0.76,
        Fuel::Wood => 0.65,
    })
}

/// Heat in one unit of a fuel as it is sold; `None` for a unit that the fuel is not sold by.
#[must_use]
pub fn heat_content(fuel: Fuel, per: PriceUnit) -> Option<Energy> {
    Some(match (fuel, per) {
        (Fuel::Electricity | Fuel::HeatPump, PriceUnit::KilowattHour) => {
            Energy::new::<kilowatt_hour>(1.0)
        }
        (Fuel::NaturalGas, PriceUnit::Therm) => Energy::new::<therm>(1.0),
        (Fuel::NaturalGas, PriceUnit::Ccf) => Energy::new::<btu>(103_700.0),
        (Fuel::Propane, PriceUnit::Gallon) => Energy::new::<btu>(91_452.0),
        (Fuel::FuelOil, PriceUnit::Gallon) => Energy::new::<btu>(138_500.0),
        (Fuel::Kerosene, PriceUnit::Gallon) => Energy::new::<btu>(135_000.0),
        (Fuel::Wood, PriceUnit::Cord) => Energy::new::<btu>(20_000_000.0),
        // A fiftieth of a ton of 2,000 lb.
        (Fuel::Pellets, PriceUnit::Bag) => Energy::new::<btu>(16_500_000.0 / 50.0),
        _ => return None,
    })
}

/// Energy bought to give this heat; the heat itself where the fuel is not known.
pub(super) fn bought(home: &Home, heat: Energy) -> Energy {
    let heating = &home.heating;
    match heating.efficiency.or(heating.fuel.map(usual_efficiency)) {
        Some(efficiency) => heat / efficiency,
        None => heat,
    }
}

/// What energy bought for heating costs; `None` without fuel and price.
pub(super) fn heating_cost(home: &Home, bought: Energy) -> Option<Dollars> {
    let fuel = home.heating.fuel?;
    match home.heating.price {
        Some(price) => {
            let units: Ratio = bought / heat_content(fuel, price.per)?;
            Some(price.amount * units.get::<ratio>())
        }
        None if !fuel.burns() => electricity_cost(home, bought),
        None => None,
    }
}

/// What the water heater takes; a burner has the gas of the furnace, if that has one.
#[must_use]
pub fn heater_fuel(home: &Home) -> Option<Fuel> {
    if !home.water_heater.kind?.burns() {
        return Some(Fuel::Electricity);
    }
    home.heating.fuel.filter(|fuel| matches!(fuel, Fuel::NaturalGas | Fuel::Propane))
}

/// What energy bought for hot water costs; `None` without fuel and price.
pub(super) fn heater_cost(home: &Home, bought: Energy) -> Option<Dollars> {
    if heater_fuel(home)?.burns() {
        heating_cost(home, bought)
    } else {
        electricity_cost(home, bought)
    }
}

/// What electricity costs; `None` without its price.
pub(super) fn electricity_cost(home: &Home, bought: Energy) -> Option<Dollars> {
    let same = home.heating.fuel.is_some_and(|fuel| !fuel.burns());
    let heating = home.heating.price.filter(|_| same).map(|price| price.amount);
    Some(home.electricity_price.or(heating)? * bought.get::<kilowatt_hour>())
}
