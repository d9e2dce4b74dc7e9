//! The warnings that this home calls for, beside those of its stops and steps.

use super::{Danger, Phrase, Step, burner_air, dangers};
use crate::climate::Place;
use crate::home::{Alarm, Fuel, Home, Tenure};
use crate::hot_water::{Scald, scald};
use crate::repairs::{Warning, Who};
use std::collections::BTreeSet;

/// Every warning that applies, once each, without those a stop shows already.
pub(super) fn warnings<'a>(
    home: &Home,
    place: Option<&Place>,
    stops: &[Danger],
    steps: impl IntoIterator<Item = &'a Step>,
) -> Vec<(Warning, Phrase)> {
    let mut codes = BTreeSet::new();
    codes.extend(of_the_home(home));
    if place.is_some_and(|place| place.zone.is_hot_humid()) {
        codes.insert(Warning::NO_PLASTIC_INSIDE);
    }
    let rents = home.building.tenure == Some(Tenure::RentsHome);
    if rents && !stops.is_empty() {
        codes.insert(Warning::RENTER_WRITTEN_NOTICE);
    }
    for step in steps {
        codes.extend(step.cautions.iter().map(|(code, _)| *code));
        if step.who == Who::Qualified && rents {
            codes.insert(Warning::RENTER_WRITTEN_NOTICE);
        }
    }
    for stop in stops {
        codes.remove(&stop.code);
    }
    codes.into_iter().map(|code| (code, dangers::warning(code))).collect()
}

fn of_the_home(home: &Home) -> Vec<Warning> {
    let scalds = home.water_heater.tap.map_or(Scald::Unlikely, scald);
    let measured = home.water_heater.tap.is_some();
    let cable = home.cable.as_ref().is_some_and(|cable| cable.present);
    let dangerous =
        home.cable.as_ref().is_some_and(|c| [c.signs.damaged, c.signs.wet].contains(&Some(true)));
    let wood = home.heating.fuel.is_some_and(Fuel::in_a_stove);
    let alarm_known = home.first_look.co_alarm == Some(Alarm::Working);
    [
        (home.people.oxygen == Some(true), Warning::OXYGEN),
        (home.something_burns() != Some(false) && !alarm_known, Warning::CO),
        (burner_air::may_be_needed(home), Warning::DO_NOT_SEAL_COMBUSTION_AIR),
        (scalds == Scald::Anyone, Warning::SCALD),
        (
            scalds >= Scald::TheFrail && home.people.burn_faster() == Some(true),
            Warning::SCALD_CHILD,
        ),
        (scalds >= Scald::TheFrail, Warning::BURN_FIRST_AID),
        (measured && home.people.lung_or_immune == Some(true), Warning::LEGIONELLA),
        (cable && !dangerous, Warning::FREEZE_BEFORE_UNPLUG),
        (wood && home.heating.stove_clear != Some(true), Warning::SOLID_FUEL_CLEARANCE),
        (wood, Warning::UNMEASURED_FUEL),
        (home.building.hay_bales == Some(true), Warning::HAY_BALES),
        (home.first_look.heat_holds == Some(false), Warning::SPACE_HEATER),
    ]
    .into_iter()
    .filter_map(|(applies, code)| applies.then_some(code))
    .collect()
}
