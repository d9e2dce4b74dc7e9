//! The openings that bring air to a burner.

use super::{Changes, Fee, Life, Order, Repair, Warning, Who};
use crate::home::AirOpenings;

/// Clear them by hand, and look after the pipes that the cold air reaches.
pub(super) const CLEAR_OPENINGS: Repair = Repair {
    id: "clear_openings",
    order: |_| Order::LifeSafety,
    changes: Changes::Safety,
    who: |_| Who::Resident,
    apply: |home| {
        let closed = home.water_heater.openings? != AirOpenings::Open;
        let mut after = home.clone();
        after.water_heater.openings = Some(AirOpenings::Open);
        // A technician who came before saw another closet.
        after.water_heater.checked_by_technician = None;
        (closed && home.something_burns() != Some(false)).then_some(after)
    },
    materials: |_| vec![],
    fee: |_| Fee::NONE,
    cautions: |_| vec![Warning::DO_NOT_SEAL_COMBUSTION_AIR, Warning::CLOSET_FREEZE],
    lasts: Life::exactly(1.0),
};
