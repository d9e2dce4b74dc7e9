//! What keeps heat in hot water: jacket, sleeve, and a shower that takes less.

use super::{Changes, Fee, Life, Material, Order, Repair, Warning, Who};
use crate::home::{HeaterKind, Home};
use crate::hot_water::{Scald, scald};
use uom::si::f64::VolumeRate;
use uom::si::volume_rate::gallon_per_minute;

/// A shower that takes more than this is worth a new head:
/// [`SHOWER`](crate::sources::water_heater::SHOWER).
const MUCH_GPM: f64 = 2.0;
/// A listed head that saves; the same source.
const SAVER_GPM: f64 = 1.8;

fn burns(home: &Home) -> bool {
    home.water_heater.kind.is_none_or(HeaterKind::burns)
}

/// A jacket round an electric tank. Round a burner's tank none is advised: flue, controls and the
/// air below must stay free, and nobody can see from here that they do.
pub(super) const TANK_JACKET: Repair = Repair {
    id: "tank_jacket",
    order: |_| Order::SmallSeals,
    changes: Changes::HotWater,
    who: |_| Who::AbleAdult,
    apply: |home| {
        let heater = &home.water_heater;
        let bare = heater.kind == Some(HeaterKind::Electric) && heater.jacket == Some(false);
        let mut after = home.clone();
        after.water_heater.jacket = Some(true);
        bare.then_some(after)
    },
    materials: |_| vec![Material::new("tank_jacket", 1.0)],
    fee: |_| Fee::NONE,
    cautions: |_| vec![Warning::BREAKER],
    lasts: Life::about(7.0),
};

/// A sleeve on the first feet of the hot pipe; at a burner it ends six inches from the vent.
pub(super) const PIPE_SLEEVE: Repair = Repair {
    id: "pipe_sleeve",
    order: |_| Order::SmallSeals,
    changes: Changes::HotWater,
    who: |home| if burns(home) { Who::AbleAdult } else { Who::Resident },
    apply: |home| {
        let heater = &home.water_heater;
        let bare = heater.kind?.has_tank() && heater.sleeve == Some(false);
        let mut after = home.clone();
        after.water_heater.sleeve = Some(true);
        bare.then_some(after)
    },
    materials: |_| vec![Material::new("pipe_sleeve_6ft", 1.0)],
    fee: |_| Fee::NONE,
    cautions: |home| {
        if burns(home) { vec![Warning::DO_NOT_SEAL_COMBUSTION_AIR] } else { vec![] }
    },
    lasts: Life::about(10.0),
};

/// A shower head that takes less, where a bucket showed that the old one takes much.
pub(super) const SHOWER_HEAD: Repair = Repair {
    id: "shower_head",
    order: |_| Order::Controls,
    changes: Changes::HotWater,
    who: |_| Who::Resident,
    apply: |home| {
        let flow = |gpm| VolumeRate::new::<gallon_per_minute>(gpm);
        let much = home.water_heater.shower? > flow(MUCH_GPM);
        let mut after = home.clone();
        after.water_heater.shower = Some(flow(SAVER_GPM));
        much.then_some(after)
    },
    materials: |_| vec![Material::new("shower_head", 1.0)],
    fee: |_| Fee::NONE,
    // A thin stream follows every other tap, so hot water at its end burns all the more.
    cautions: |home| match home.water_heater.tap.map(scald) {
        Some(Scald::Unlikely) | None => vec![],
        Some(_) => vec![Warning::SCALD],
    },
    lasts: Life::about(10.0),
};
