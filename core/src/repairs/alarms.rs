//! Alarms.

use super::{Changes, Fee, Life, Material, Order, Repair, Who};
use crate::home::Alarm;

/// A working carbon monoxide alarm near where people sleep.
pub(super) const CO_ALARM: Repair = Repair {
    id: "co_alarm",
    order: |_| Order::LifeSafety,
    changes: Changes::Safety,
    who: |_| Who::Resident,
    apply: |home| {
        let alarm = home.first_look.co_alarm?;
        let needed = alarm != Alarm::Working && home.something_burns() != Some(false);
        let mut after = home.clone();
        after.first_look.co_alarm = Some(Alarm::Working);
        needed.then_some(after)
    },
    materials: |_| vec![Material::new("co_alarm", 1.0)],
    fee: |_| Fee::NONE,
    cautions: |_| vec![],
    lasts: Life::about(7.0),
};

/// Working smoke alarms.
pub(super) const SMOKE_ALARM: Repair = Repair {
    id: "smoke_alarm",
    order: |_| Order::LifeSafety,
    changes: Changes::Safety,
    who: |_| Who::Resident,
    apply: |home| {
        // A chirp asks for a battery first.
        let alarm = home.first_look.smoke_alarm?;
        let needed = matches!(alarm, Alarm::Missing | Alarm::Expired);
        let mut after = home.clone();
        after.first_look.smoke_alarm = Some(Alarm::Working);
        needed.then_some(after)
    },
    materials: |home| {
        let bedrooms = home.building.bedrooms.map_or(1, |n| n.max(1));
        vec![Material::new("smoke_alarm", f64::from(bedrooms) + 1.0)]
    },
    fee: |_| Fee::NONE,
    cautions: |_| vec![],
    lasts: Life::about(10.0),
};
