//! The tap's temperature: the dial, the valve behind the tank.

use super::{Changes, Fee, Life, Material, Order, Repair, Warning, Who};
use crate::home::{HeaterKind, Home, Tenure};
use crate::hot_water::{Scald, Target, scald, target};
use crate::units::warmer_by;
use uom::si::f64::ThermodynamicTemperature;
use uom::si::temperature_interval;

/// A reading this far above the target is worth a turn of the dial; below, it is the thermometer.
const WORTH_TURNING_F: f64 = 3.0;

fn too_hot(home: &Home, target: ThermodynamicTemperature) -> bool {
    home.water_heater.tap.is_some_and(|tap| {
        warmer_by(tap, target).get::<temperature_interval::degree_fahrenheit>() >= WORTH_TURNING_F
    })
}

fn warnings(home: &Home) -> Vec<Warning> {
    let scalds = home.water_heater.tap.map_or(Scald::Unlikely, scald);
    let mut all = vec![];
    if scalds == Scald::Anyone {
        all.push(Warning::SCALD);
    }
    if scalds >= Scald::TheFrail && home.people.burn_faster() == Some(true) {
        all.push(Warning::SCALD_CHILD);
    }
    if home.people.lung_or_immune != Some(false) {
        all.push(Warning::LEGIONELLA);
    }
    if home.building.tenure == Some(Tenure::RentsHome) {
        all.push(Warning::RENTER_WRITTEN_NOTICE);
    }
    all
}

/// The dial of a burner and the panel of a heat pump or of a heater without tank are for anyone;
/// behind the plates of an electric tank are 240 volts.
fn who_turns_it(home: &Home) -> Who {
    match home.water_heater.kind {
        None | Some(HeaterKind::Electric) => Who::Qualified,
        Some(_) => Who::Resident,
    }
}

/// A tap that burns somebody who lives here comes first; else it is a control like any other.
fn order(home: &Home) -> Order {
    let robust = home.people.burn_faster() != Some(true);
    let burns_from = if robust { Scald::Anyone } else { Scald::TheFrail };
    let scalds = home.water_heater.tap.map_or(Scald::Unlikely, scald);
    if scalds >= burns_from { Order::LifeSafety } else { Order::Controls }
}

/// Turn the heater down to 120 °F; not where infection is the greater danger.
pub(super) const TURN_DOWN: Repair = Repair {
    id: "turn_down",
    order,
    changes: Changes::Tap,
    who: who_turns_it,
    apply: |home| match target(home) {
        Target::TurnTo(target) if too_hot(home, target) => {
            let mut after = home.clone();
            after.water_heater.tap = Some(target);
            Some(after)
        }
        _ => None,
    },
    materials: |_| vec![Material::new("thermometer", 1.0)],
    fee: |home| Fee::unless_resident(who_turns_it(home)),
    cautions: warnings,
    lasts: Life::about(5.0),
};

/// A mixing valve at the heater, where the water has to be stored hot.
pub(super) const MIXING_VALVE: Repair = Repair {
    id: "mixing_valve",
    order,
    changes: Changes::Tap,
    who: |_| Who::Qualified,
    apply: |home| match target(home) {
        Target::StoreHotAndMix(target)
            if too_hot(home, target) && home.water_heater.mixing_valve != Some(true) =>
        {
            let mut after = home.clone();
            after.water_heater.tap = Some(target);
            after.water_heater.mixing_valve = Some(true);
            // The tank is stored hot from now on, whatever was known of it.
            after.water_heater.stored = None;
            Some(after)
        }
        _ => None,
    },
    materials: |_| vec![Material::new("mixing_valve", 1.0), Material::new("thermometer", 1.0)],
    fee: |_| Fee::HALF_DAY,
    cautions: warnings,
    lasts: Life::about(10.0),
};

/// The valve that is there, set to 120 °F. The tank behind it stays hot.
pub(super) const SET_VALVE: Repair = Repair {
    id: "set_valve",
    order,
    changes: Changes::Tap,
    who: |_| Who::Qualified,
    apply: |home| match target(home) {
        Target::SetValve(target) if too_hot(home, target) => {
            let mut after = home.clone();
            after.water_heater.tap = Some(target);
            Some(after)
        }
        _ => None,
    },
    materials: |_| vec![Material::new("thermometer", 1.0)],
    fee: |_| Fee::VISIT,
    cautions: warnings,
    lasts: Life::about(5.0),
};
