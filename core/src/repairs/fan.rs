//! The bath fan.

use super::{Changes, Fee, Life, Material, Order, Repair, Warning, Who};
use crate::home::{FanEnd, Home};

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
    lasts: Life::about(15.0),
};

/// A fan that was felt to move air, that blows outdoors, and that pulls on no burner.
fn works(home: &Home) -> bool {
    let fan = &home.bath_fan;
    fan.ends == Some(FanEnd::Outdoors) && fan.emptying.is_some() && !home.fan_may_pull_fumes()
}

/// Let a fan bring the fresh air that leaks no longer bring. The plan offers it where they do not.
pub(super) const VENTILATE: Repair = Repair {
    id: "ventilate",
    order: |_| Order::Moisture,
    changes: Changes::Safety,
    who: |home| if works(home) { Who::Resident } else { Who::Qualified },
    apply: |home| {
        let mut after = home.clone();
        after.bath_fan.runs_steadily = Some(true);
        (home.bath_fan.runs_steadily != Some(true)).then_some(after)
    },
    materials: |home| {
        let timer = if works(home) { "fan_timer" } else { "ventilation_fan" };
        vec![Material::new(timer, 1.0)]
    },
    fee: |home| if works(home) { Fee::NONE } else { Fee::HALF_DAY },
    cautions: |home| {
        let pulls = home.fan_may_pull_fumes();
        vec![if pulls { Warning::FAN_DRAFT } else { Warning::VENT_AFTER_TIGHT }]
    },
    lasts: Life::about(15.0),
};
