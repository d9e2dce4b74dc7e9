//! Air for the furnace: registers, return, blower and cabinet. Nothing here ever closes a register.

use super::{Changes, Fee, Life, Material, Order, Repair, Warning, Who};
use crate::home::{DuctGapPlace, Home, LeakAir};

const AT_FURNACE: [DuctGapPlace; 2] = [DuctGapPlace::CoilCabinet, DuctGapPlace::Plenum];

/// Hands near the furnace: power off, and back on.
fn at_furnace(_: &Home) -> Vec<Warning> {
    vec![Warning::POWER_OFF_FURNACE, Warning::BREAKER]
}

/// Every register open and uncovered.
pub(super) const OPEN_REGISTERS: Repair = Repair {
    id: "open_registers",
    order: |_| Order::Airflow,
    changes: Changes::Safety,
    who: |_| Who::Resident,
    apply: |home| {
        let closed = home.ducts.closed? > 0;
        let mut after = home.clone();
        after.ducts.closed = Some(0);
        closed.then_some(after)
    },
    materials: |_| vec![],
    fee: |_| Fee::NONE,
    cautions: |_| vec![],
    lasts: Life::exactly(1.0),
};

/// Nothing in front of the return.
pub(super) const CLEAR_RETURN: Repair = Repair {
    id: "clear_return",
    order: |_| Order::Airflow,
    changes: Changes::Safety,
    who: |_| Who::Resident,
    apply: |home| {
        let blocked = home.ducts.return_blocked?;
        let mut after = home.clone();
        after.ducts.return_blocked = Some(false);
        blocked.then_some(after)
    },
    materials: |_| vec![],
    fee: |_| Fee::NONE,
    cautions: |_| vec![],
    lasts: Life::exactly(1.0),
};

/// Blower and coil cleaned.
pub(super) const CLEAN_BLOWER: Repair = Repair {
    id: "clean_blower",
    order: |_| Order::Airflow,
    changes: Changes::Safety,
    who: |_| Who::Qualified,
    apply: |home| {
        let dirty = home.ducts.blower_dirty?;
        let mut after = home.clone();
        after.ducts.blower_dirty = Some(false);
        dirty.then_some(after)
    },
    materials: |_| vec![],
    fee: |_| Fee::HALF_DAY,
    cautions: at_furnace,
    lasts: Life::about(3.0),
};

/// Gaps of cabinet and plenum closed from outside, with listed tape. What is sucked in beside a
/// burner waits for the technician of that stop.
pub(super) const TAPE_CABINET: Repair = Repair {
    id: "tape_cabinet",
    order: |_| Order::Airflow,
    changes: Changes::Safety,
    who: |_| Who::Qualified,
    apply: |home| sealed(home, |place| AT_FURNACE.contains(&place)),
    materials: |_| vec![Material::new("foil_tape_roll", 1.0)],
    fee: |_| Fee::VISIT,
    cautions: at_furnace,
    lasts: Life::about(10.0),
};

/// The home with its duct gaps at these places closed; `None` where there is none to close.
pub(super) fn sealed(home: &Home, at: impl Fn(DuctGapPlace) -> bool) -> Option<Home> {
    let burns = home.something_burns() != Some(false);
    let mut after = home.clone();
    let mut any = false;
    for gap in &mut after.ducts.gaps {
        let draws_fumes = burns && gap.air == Some(LeakAir::SuckedIn);
        if at(gap.place) && !gap.sealed && !draws_fumes {
            gap.sealed = true;
            any = true;
        }
    }
    any.then_some(after)
}
