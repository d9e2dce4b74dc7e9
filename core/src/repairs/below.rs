//! Skirting and belly. Nothing here closes a vent, and no warmth that it brings lets a heat cable go.

use super::{Changes, Fee, Life, Material, Order, Repair, Warning, Who};
use crate::home::{Belly, Home, SkirtingVents, Tenure};
use uom::si::f64::Length;
use uom::si::length::foot;

/// Share of the skirting that is missing where nobody measured it: judgement.
const USUALLY_MISSING: f64 = 0.15;

fn missing(home: &Home) -> Option<Length> {
    let (width, length) = home.building.size();
    let some = home.building.skirting_open == Some(true);
    let usual = some.then(|| (width + length) * 2.0 * USUALLY_MISSING);
    home.building.skirting_gap.or(usual).filter(|gap| *gap > Length::default())
}

fn for_renters(home: &Home) -> Option<Warning> {
    let rents = home.building.tenure == Some(Tenure::RentsHome);
    rents.then_some(Warning::RENTER_WRITTEN_NOTICE)
}

fn under_the_home(home: &Home) -> Vec<Warning> {
    let below = [Warning::ELECTRIC_OFF_UNDER, Warning::CRAWL_COLD_RODENT, Warning::BELLY_FREEZE];
    below.into_iter().chain(for_renters(home)).collect()
}

/// Panels with vents where skirting is missing; bales go.
pub(super) const SKIRTING: Repair = Repair {
    id: "skirting",
    order: |_| Order::Shell,
    changes: Changes::Floor,
    who: |_| Who::AbleAdult,
    apply: |home| {
        missing(home)?;
        let mut after = home.clone();
        let building = &mut after.building;
        building.skirting_gap = Some(Length::default());
        building.skirting_open = Some(false);
        building.skirting_vents = Some(SkirtingVents::Open);
        building.hay_bales = building.hay_bales.map(|_| false);
        Some(after)
    },
    materials: |home| {
        let feet = missing(home).map_or(0.0, |gap| gap.get::<foot>());
        vec![Material::new("skirting_panel_4ft", feet / 4.0)]
    },
    fee: |_| Fee::NONE,
    cautions: |home| {
        let bales = (home.building.hay_bales == Some(true)).then_some(Warning::HAY_BALES);
        for_renters(home).into_iter().chain(bales).collect()
    },
    lasts: Life::about(15.0),
};

fn with_sound_belly(home: &Home) -> Home {
    let mut after = home.clone();
    after.building.belly = Some(Belly::Sound);
    after.building.belly_hole = None;
    after
}

/// Holes of the belly patched, with the insulation behind them.
pub(super) const BELLY_PATCH: Repair = Repair {
    id: "belly_patch",
    order: |_| Order::Shell,
    changes: Changes::Floor,
    who: |_| Who::Qualified,
    apply: |home| (home.building.belly? == Belly::Torn).then(|| with_sound_belly(home)),
    materials: |_| vec![Material::new("belly_patch_kit", 1.0)],
    fee: |_| Fee(100.0, 400.0),
    cautions: under_the_home,
    lasts: Life::about(10.0),
};

/// Insulation and belly anew where both are gone.
pub(super) const BELLY_INSULATION: Repair = Repair {
    id: "belly_insulation",
    order: |_| Order::Shell,
    changes: Changes::Floor,
    who: |_| Who::Qualified,
    apply: |home| (home.building.belly? == Belly::Missing).then(|| with_sound_belly(home)),
    materials: |_| vec![],
    fee: |_| Fee(1_500.0, 5_000.0),
    cautions: under_the_home,
    lasts: Life::about(20.0),
};
