//! The bath fan.

use super::{Changes, Fee, Material, Order, Repair, Warning, Who};
use crate::home::FanEnd;

/// Lead its air outdoors.
pub(super) const BATH_FAN_OUTDOORS: Repair = Repair {
    id: "bath_fan_outdoors",
    order: |_| Order::Moisture,
    changes: Changes::Safety,
    who: |_| Who::Qualified,
    apply: |home| {
        let wrong = home.bath_fan.ends? != FanEnd::Outdoors;
        let mut after = home.clone();
        after.bath_fan.ends = Some(FanEnd::Outdoors);
        wrong.then_some(after)
    },
    materials: |_| {
        vec![Material::new("bath_fan_duct_kit", 1.0), Material::new("foil_tape_roll", 1.0)]
    },
    fee: |_| Fee::HALF_DAY,
    cautions: |_| vec![Warning::MOISTURE_FIRST],
    life_years: 15.0,
};
