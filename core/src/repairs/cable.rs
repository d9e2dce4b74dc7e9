//! The heat cable.

use super::{Changes, Fee, Life, Material, Order, Repair, Warning, Who};
use crate::home::{CableControl, CableSigns, HeatCable, Home, Season, Tenure};
use uom::si::length::foot;

/// The cable of a home where one was seen.
fn seen(home: &Home) -> Option<&HeatCable> {
    home.cable.as_ref().filter(|cable| cable.present)
}

/// The home with a new listed cable of the same length on a thermostat.
fn with_new_cable(home: &Home) -> Option<Home> {
    let mut after = home.clone();
    let cable = after.cable.as_mut()?;
    cable.control = Some(CableControl::Thermostat);
    cable.thermostat_proved = Some(true);
    cable.signs = CableSigns {
        damaged: Some(false),
        wet: Some(false),
        uncertified: Some(false),
        under_foam: Some(false),
        lapped: Some(false),
    };
    Some(after)
}

/// Burning or wet: it goes off at once, whatever the forecast.
fn is_dangerous(home: &Home) -> bool {
    seen(home).is_some_and(|c| [c.signs.damaged, c.signs.wet].contains(&Some(true)))
}

fn cautions(home: &Home) -> Vec<Warning> {
    let mut all = vec![Warning::HEATCABLE_FIRE];
    if !is_dangerous(home) {
        all.push(Warning::FREEZE_BEFORE_UNPLUG);
    }
    if [home.people.oxygen, home.people.medical_machine] != [Some(false); 2] {
        all.push(Warning::BREAKER);
    }
    all.extend([Warning::ELECTRIC_OFF_UNDER, Warning::CRAWL_COLD_RODENT]);
    if home.building.tenure == Some(Tenure::RentsHome) {
        all.push(Warning::RENTER_WRITTEN_NOTICE);
    }
    all
}

/// A thermostat that did not switch when it was tried may keep the cable off in frost.
fn has_failed(home: &Home) -> bool {
    seen(home).is_some_and(|cable| {
        cable.control == Some(CableControl::Thermostat) && cable.thermostat_proved == Some(false)
    })
}

/// One cable for each thirty feet of pipe.
fn new_cable(home: &Home) -> Vec<Material> {
    let feet = seen(home).and_then(|cable| cable.length).map_or(30.0, |l| l.get::<foot>());
    vec![Material::new("heat_cable_thermostat", (feet / 30.0).max(1.0))]
}

/// A new listed cable, where the old one shows any sign of age or damage.
pub(super) const REPLACE_CABLE: Repair = Repair {
    id: "replace_cable",
    order: |home| if is_dangerous(home) { Order::LifeSafety } else { Order::HeatAndPipes },
    changes: Changes::Cable,
    who: |_| Who::Qualified,
    apply: |home| {
        let s = seen(home)?.signs;
        let bad = [s.damaged, s.wet, s.uncertified, s.under_foam, s.lapped].contains(&Some(true));
        bad.then(|| with_new_cable(home)).flatten()
    },
    materials: new_cable,
    fee: |_| Fee::HALF_DAY,
    cautions,
    lasts: Life::about(7.0),
};

/// A cable with a thermostat in place of one that is always on.
pub(super) const CABLE_THERMOSTAT: Repair = Repair {
    id: "cable_thermostat",
    order: |home| if has_failed(home) { Order::HeatAndPipes } else { Order::Controls },
    changes: Changes::Cable,
    who: |_| Who::Qualified,
    apply: |home| {
        let control = seen(home)?.control?;
        let without = matches!(control, CableControl::AlwaysOn | CableControl::SelfRegulating);
        (without || has_failed(home)).then(|| with_new_cable(home)).flatten()
    },
    materials: new_cable,
    fee: |_| Fee::HALF_DAY,
    cautions,
    lasts: Life::about(7.0),
};

/// Unplugged in the frost-free season, when somebody is sure to plug it in again.
///
/// The plan offers it only in that season, and only where the season is long enough: a repair
/// knows no climate.
pub(super) const CABLE_SEASON: Repair = Repair {
    id: "cable_season",
    order: |_| Order::Controls,
    changes: Changes::Cable,
    who: |_| Who::Resident,
    apply: |home| {
        let cable = seen(home)?;
        let always =
            matches!(cable.control?, CableControl::AlwaysOn | CableControl::SelfRegulating);
        let sure = cable.someone_plugs_in == Some(true) && cable.thermostat_proved != Some(true);
        let mut after = home.clone();
        let changed = after.cable.as_mut()?;
        changed.control = Some(CableControl::Seasonal);
        changed.season = None::<Season>;
        (always && sure).then_some(after)
    },
    materials: |_| vec![],
    fee: |_| Fee::NONE,
    cautions,
    lasts: Life::exactly(1.0),
};
