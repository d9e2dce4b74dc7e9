//! Which fields of a home a figure was made from, how they are known, and what the figure rests on.

use super::{UseKey, fuel};
use crate::air::components::usual_leakage;
use crate::air::whole_home;
use crate::envelope::ShellSeen;
use crate::home::{Gap, HeatCable, Home};
use crate::hot_water::HeaterSeen;
use crate::properties::water::WATER_HEAT;
use crate::sources::{
    Confidence, Figure, Source, air, climate, ducts, envelope, freeze, trade, water_heater,
};
use uom::si::f64::ThermalConductance;

const GAP_SOURCES: &[&Source] = &[
    &air::CRACK_FLOW_1987,
    &air::CRACK_EDGE,
    &air::HANDBOOK_2021_CH16,
    &air::HANDBOOK_2021_CH16_ENHANCED,
    &trade::GAP_DEPTHS,
];
/// What every path of heat rests on.
const HEATING_SOURCES: &[&Source] = &[
    &envelope::ISO_13790,
    &envelope::INTERNAL_GAINS,
    &envelope::DIFFUSE_SHARE,
    &envelope::SHADE,
    &climate::FAO_56,
    &climate::SERIES,
    &climate::TYPICAL_YEARS,
    &climate::NORMALS,
];
/// What the space below the floor rests on.
const BELOW_SOURCES: &[&Source] = &[
    &envelope::CRAWL_BALANCE,
    &envelope::SKIRTING,
    &envelope::SKIRTING_VENTS,
    &envelope::WIND_THROUGH_OPENINGS,
    &envelope::WIND_NEAR_GROUND,
    &envelope::SOIL_OVER_THE_YEAR,
];
const CABLE_SOURCES: &[&Source] = &[
    &freeze::CABLE_POWER,
    &freeze::CABLE_LENGTH,
    &freeze::CABLE_THERMOSTAT,
    &freeze::CABLE_SELF_REGULATING,
    &freeze::CABLE_HOLD,
    &freeze::PIPE_SIZES,
    &freeze::PIPE_FOAM,
    &freeze::PIPE_FOAM_THICKNESS,
    &freeze::CHURCHILL_CHU_1975,
    &freeze::FREEZE_SPREAD,
    &climate::SERIES,
    &climate::TYPICAL_YEARS,
    &climate::NORMALS,
];

const HEATER_SOURCES: &[&Source] = &[
    &water_heater::FACTOR_TEST,
    &water_heater::FACTOR_ALGEBRA,
    &water_heater::MAINS,
    &WATER_HEAT,
    &climate::SERIES,
    &climate::TYPICAL_YEARS,
    &climate::NORMALS,
];

/// Where a figure comes from.
#[derive(Debug, Clone)]
pub struct Inputs {
    /// Paths in the request.
    pub fields: Vec<String>,
    /// The least sure of them.
    pub confidence: Confidence,
    /// What the models rest on.
    pub sources: Vec<&'static Source>,
}

/// What the figure of one use was made from.
#[must_use]
pub fn use_inputs(home: &Home, key: UseKey) -> Inputs {
    match key {
        UseKey::HotWater | UseKey::HotTank | UseKey::DrawnByHeater => heater_inputs(home),
        UseKey::Walls => shell_inputs(home, |seen| &seen.walls),
        UseKey::Roof => shell_inputs(home, |seen| &seen.roof),
        UseKey::Floor => floor_inputs(home),
        UseKey::Ducts => duct_inputs(home),
        UseKey::Windows => shell_inputs(home, |seen| &seen.windows),
        UseKey::Doors => shell_inputs(home, |seen| &seen.doors),
        UseKey::Gap(index) => gap_inputs(home, |i, _| i == index),
        UseKey::OtherLeaks => other_inputs(home),
        UseKey::SteadyFan => fan_inputs(home),
        UseKey::HeatCable => cable_inputs(home),
    }
}

/// What a figure of these gaps was made from.
#[must_use]
pub fn gap_inputs(home: &Home, which: impl Fn(usize, &Gap) -> bool) -> Inputs {
    let mut fields: Vec<String> = home
        .gaps
        .iter()
        .enumerate()
        .filter(|(i, gap)| which(*i, gap))
        .map(|(i, _)| format!("gaps[{i}]"))
        .collect();
    let known = [
        (home.building.zip.is_some(), "home.zip"),
        (home.building.shelter.is_some(), "home.shelter"),
        (home.building.setpoint.is_some(), "home.setpoint_f"),
        (home.heating.fuel.is_some(), "heating.fuel"),
    ];
    fields.extend(known.iter().filter(|(seen, _)| *seen).map(|(_, path)| (*path).to_owned()));
    let rows = home.gaps.iter().enumerate().filter(|(i, gap)| which(*i, gap));
    let usual: Vec<_> = rows.filter_map(|(_, gap)| row_sources(gap)).flatten().collect();
    let all_seen = known.iter().all(|(seen, _)| *seen) && usual.is_empty();
    Inputs {
        fields,
        confidence: if all_seen { Confidence::Seen } else { Confidence::Guessed },
        sources: [GAP_SOURCES, HEATING_SOURCES, fuel::SOURCES, &usual].concat(),
    }
}

/// What stands in for a gap that nobody measured.
fn row_sources(gap: &Gap) -> Option<Vec<&'static Source>> {
    gap.width.is_none().then(|| usual_leakage(gap)).flatten().map(|figure| figure.sources)
}

/// What the figure of a steady fan was made from.
fn fan_inputs(home: &Home) -> Inputs {
    let leaks = other_inputs(home);
    let fan = ["bath_fan.bag_emptied_s", "bath_fan.ends", "bath_fan.runs_steadily"];
    let sources: &[&Source] = &[
        &air::HANDBOOK_2021_CH16_FANS,
        &air::HANDBOOK_2021_CH17_FANS,
        &air::HANDBOOK_2021_CH17,
        &air::BAG_TEST,
    ];
    Inputs {
        fields: fan.map(String::from).into_iter().chain(leaks.fields).collect(),
        confidence: Confidence::Guessed,
        sources: [sources, &leaks.sources].concat(),
    }
}

/// What the figure of all other leaks was made from: what the home has, less what was found.
fn other_inputs(home: &Home) -> Inputs {
    let whole = whole_home::leakage(&home.building);
    let gaps = gap_inputs(home, |_, _| true);
    Inputs {
        fields: [whole.inputs, gaps.fields].concat(),
        confidence: whole.confidence.max(gaps.confidence),
        sources: [whole.sources, gaps.sources].concat(),
    }
}

/// What the figure of one part of the shell was made from.
fn shell_inputs(home: &Home, part: fn(&ShellSeen) -> &Figure<ThermalConductance>) -> Inputs {
    let seen = ShellSeen::of(&home.building, &home.windows);
    let part = part(&seen);
    Inputs {
        fields: part.inputs.clone(),
        // Sun, people and soil are never seen.
        confidence: Confidence::Guessed,
        sources: [&part.sources, HEATING_SOURCES, fuel::SOURCES].concat(),
    }
}

/// What the figure of the floor was made from, and of the space below it.
fn floor_inputs(home: &Home) -> Inputs {
    let floor = shell_inputs(home, |seen| &seen.floor);
    let below = [
        "home.skirting_open_ft",
        "home.skirting_open",
        "home.skirting_vents",
        "home.skirting_insulated",
    ];
    Inputs {
        fields: floor.fields.into_iter().chain(below.map(String::from)).collect(),
        confidence: floor.confidence,
        sources: [&floor.sources, BELOW_SOURCES].concat(),
    }
}

/// What the figure of the ducts was made from.
#[must_use]
pub fn duct_inputs(home: &Home) -> Inputs {
    let lost = crate::ducts::lost(home);
    let more: &[&Source] = &[
        &ducts::DELIVERY,
        &ducts::CYCLING,
        &ducts::BLOWER_TABLES,
        &ducts::PRESSURE_DROPS,
        &ducts::DUCT_PRESSURES,
        &ducts::DUCT_LEAK_EXPONENT,
        &air::JOINED_FLOWS,
        &envelope::SHELL_BY_YEARS,
    ];
    Inputs {
        fields: lost.inputs,
        confidence: Confidence::Guessed,
        sources: [&lost.sources, more, BELOW_SOURCES, HEATING_SOURCES, fuel::SOURCES].concat(),
    }
}

/// What a figure of the heat cable was made from.
#[must_use]
pub fn cable_inputs(home: &Home) -> Inputs {
    let known = |cable: &HeatCable| {
        cable.length.is_some() && cable.power.is_some() && cable.control.is_some()
    };
    let confidence = match &home.cable {
        Some(cable) if known(cable) => Confidence::Seen,
        _ => Confidence::Guessed,
    };
    let fields = ["home.zip", "heat_cable", "electricity_usd_per_kwh"].map(String::from).to_vec();
    Inputs { fields, confidence, sources: CABLE_SOURCES.to_vec() }
}

/// What a figure of the water heater was made from.
#[must_use]
pub fn heater_inputs(home: &Home) -> Inputs {
    let heater = &home.water_heater;
    let known = [
        (home.building.zip.is_some(), "home.zip"),
        (heater.kind.is_some(), "water_heater.kind"),
        (heater.tap.is_some(), "water_heater.tap_f"),
        (heater.place.is_some(), "water_heater.place"),
        (home.people.count.is_some(), "people.residents_count"),
        (heater.shower.is_some(), "water_heater.shower_gallon_s"),
    ];
    let fields = known.iter().filter(|(seen, _)| *seen).map(|(_, path)| (*path).to_owned());
    Inputs {
        fields: fields.collect(),
        // What the tank loses and what people draw is never seen.
        confidence: Confidence::Guessed,
        sources: [HEATER_SOURCES, HeaterSeen::SOURCES, fuel::SOURCES].concat(),
    }
}
