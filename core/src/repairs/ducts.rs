//! Ducts below the floor: joined again, and sealed.

use super::{Changes, Fee, Life, Material, Order, Repair, Warning, Who, airflow};
use crate::ducts::diagnosis;
use crate::home::{Crossover, DuctGapPlace, Home, Tenure};
use uom::si::ratio::ratio;

/// Under the home, where warmth from ducts kept the pipes.
fn below(home: &Home) -> Vec<Warning> {
    let mut all =
        vec![Warning::ELECTRIC_OFF_UNDER, Warning::CRAWL_COLD_RODENT, Warning::BELLY_FREEZE];
    if home.building.tenure == Some(Tenure::RentsHome) {
        all.push(Warning::RENTER_WRITTEN_NOTICE);
    }
    all
}

/// The duct between two sections joined, clamped and hung off the ground.
pub(super) const JOIN_CROSSOVER: Repair = Repair {
    id: "join_crossover",
    order: |_| Order::Airflow,
    changes: Changes::Ducts,
    who: |_| Who::Qualified,
    apply: |home| {
        let off = home.ducts.crossover? != Crossover::Sound;
        let mut after = home.clone();
        after.ducts.crossover = Some(Crossover::Sound);
        off.then_some(after)
    },
    materials: |_| vec![Material::new("duct_strap", 2.0), Material::new("duct_mastic", 1.0)],
    fee: |_| Fee(100.0, 400.0),
    cautions: below,
    lasts: Life::about(15.0),
};

/// Cabinet and plenum are closed at the furnace, and a return is no supply.
fn under_floor(place: DuctGapPlace) -> bool {
    use DuctGapPlace::{CoilCabinet, Plenum, ReturnSide};
    !matches!(place, CoilCabinet | Plenum | ReturnSide)
}

/// Whether somebody felt or measured that ducts lose air on the way.
fn lose_air(home: &Home) -> bool {
    let gap = home.ducts.gaps.iter().any(|gap| !gap.sealed && under_floor(gap.place));
    let lost = diagnosis(home).and_then(|found| found.lost_on_the_way);
    let likely = lost.is_some_and(|lost| lost.get::<ratio>() >= 0.5);
    gap || likely
}

/// Boots, collars and end caps sealed with mastic, from inside the registers and from below.
pub(super) const SEAL_DUCTS: Repair = Repair {
    id: "seal_ducts",
    order: |_| Order::Airflow,
    changes: Changes::Ducts,
    who: |_| Who::Qualified,
    apply: |home| {
        let sealed_before = home.ducts.sealed == Some(true);
        let mut after = airflow::sealed(home, under_floor).unwrap_or_else(|| home.clone());
        after.ducts.sealed = Some(true);
        (lose_air(home) && !sealed_before).then_some(after)
    },
    materials: |_| vec![Material::new("duct_mastic", 1.0), Material::new("foil_tape_roll", 1.0)],
    fee: |_| Fee(200.0, 700.0),
    cautions: below,
    lasts: Life::about(15.0),
};
