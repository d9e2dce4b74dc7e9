//! The furnace filter.

use super::{Changes, Fee, Life, Material, Order, Repair, Warning, Who};
use crate::home::FilterLook;
use uom::si::f64::Time;
use uom::si::time::day;

/// A filter is due at three months, or when light barely passes:
/// [`FILTER_CHANGE`](crate::sources::trade::FILTER_CHANGE).
const DUE_DAYS: f64 = 90.0;

/// A new filter of the same size.
pub(super) const NEW_FILTER: Repair = Repair {
    id: "new_filter",
    order: |_| Order::Airflow,
    changes: Changes::Safety,
    who: |_| Who::Resident,
    apply: |home| {
        let old = home.filter.in_use.is_some_and(|t| t.get::<day>() >= DUE_DAYS);
        let dirty = home.filter.look.is_some_and(|look| look >= FilterLook::Dim);
        let mut after = home.clone();
        after.filter.in_use = Some(Time::new::<day>(0.0));
        after.filter.look = Some(FilterLook::Bright);
        (old || dirty).then_some(after)
    },
    materials: |_| vec![Material::new("furnace_filter", 3.0)],
    fee: |_| Fee::NONE,
    cautions: |_| vec![Warning::POWER_OFF_FURNACE, Warning::BREAKER],
    lasts: Life::exactly(0.25),
};
