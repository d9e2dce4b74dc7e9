//! Furnace and ducts as a person saw them: what was not seen is filled with what is usual.

use super::blower::{Blower, Tap};
use super::filter::{FilterInPlace, drop_of};
use super::leak::{GoesTo, goes_to, pressure_at};
use super::rise::{Derating, kept_at};
use super::system::{Running, System};
use crate::home::{Cooling, Crossover, DuctsFound, Filter, FilterLook, Fuel, Home, WarmAir};
use crate::physics::openings::through;
use crate::sources::ducts::USUAL_DUCTS;
use crate::sources::{Confidence, Figure};
use crate::units::volume_rate::cfm;
use uom::si::f64::{Length, MassDensity, Power, Pressure, Ratio, ThermalConductance, VolumeRate};
use uom::si::power::kilowatt;
use uom::si::pressure::pascal;
use uom::si::ratio::ratio;
use uom::si::thermal_conductance::watt_per_kelvin;
use uom::si::{area::square_meter, f64::Area};

/// Flow that the ducts of such homes are made for, and what outlets and return then hold back, Pa.
const DESIGN_CFM: f64 = 800.0;
const OUTLETS_PA: f64 = 40.0;
const RETURN_PA: f64 = 5.0;
/// What a dry coil holds back then, Pa; [`PRESSURE_DROPS`](crate::sources::ducts::PRESSURE_DROPS).
const COIL_PA: f64 = 50.0;
/// What a matted wheel leaves of a blower's air: judgement.
const DUSTY: f64 = 0.8;
/// What a couch leaves open of a return: judgement.
const BEHIND_A_COUCH: f64 = 0.4;
/// Share of the fan's air that a crossover loses when loose, and when it has come off, beside what
/// the other ducts lose: judgement; of bad homes it is said that a third is lost in all.
const LOOSE: f64 = 0.08;
const FALLEN: f64 = 0.22;
/// No ducts lose more.
const MOST_LOST: f64 = 0.6;
/// What mastic leaves of what was lost.
const MASTIC_LEAVES: f64 = 0.25;
/// Supply ducts over floor, and heat through their walls, W/(m²·K): R-4.
const DUCTS_OF_FLOOR: f64 = 0.27;
const WALLS_W_M2_K: f64 = 1.42;

/// Share of the fan's air that ducts of such homes lose to outside: least, usual, most.
fn usual_loss(home: &Home) -> [f64; 3] {
    match home.building.year_built {
        Some(2000..) => [0.02, 0.06, 0.12],
        _ => [0.05, 0.10, 0.20],
    }
}

/// Share of the fan's air that is usual to be lost where nobody measured: [`USUAL_DUCTS`].
#[must_use]
pub fn lost(home: &Home) -> Figure<Ratio> {
    let [low, best, high] = usual_loss(home).map(Ratio::new::<ratio>);
    Figure::exact(best, Confidence::Guessed, &[&USUAL_DUCTS]).between(low, high).from_inputs([
        "home.year_built",
        "ducts.gaps",
        "ducts.crossover",
    ])
}

/// Share of a home's heat that its ducts bring.
#[must_use]
pub(crate) fn warm_air_share(home: &Home) -> Ratio {
    let stove = home.heating.fuel.is_some_and(Fuel::in_a_stove);
    Ratio::new::<ratio>(match home.heating.warm_air {
        Some(WarmAir::All) => 1.0,
        Some(WarmAir::Most) => 0.75,
        Some(WarmAir::Half) => 0.5,
        Some(WarmAir::Little) => 0.2,
        Some(WarmAir::None) => 0.0,
        None => {
            if stove {
                0.0
            } else {
                1.0
            }
        }
    })
}

/// Heat that the furnace gives while it runs: by its label, or as is usual (common practice); a flame
/// gives less on high ground.
#[must_use]
pub(crate) fn capacity(home: &Home, elevation: Length) -> Power {
    let burns = home.heating.fuel.is_some_and(Fuel::burns);
    let kept = if burns { kept_at(elevation, Derating::PowerOf96) } else { full() };
    label(home) * kept
}

fn label(home: &Home) -> Power {
    let usual = match home.heating.fuel {
        Some(Fuel::HeatPump) => 8.8,
        Some(Fuel::Electricity) => 12.0,
        _ => 13.2,
    };
    home.heating.output.unwrap_or(Power::new::<kilowatt>(usual))
}

/// Heat through the walls of all supply ducts: [`USUAL_DUCTS`].
#[must_use]
pub(crate) fn walls(home: &Home) -> ThermalConductance {
    let (width, length) = home.building.size();
    let area: Area = width * length * DUCTS_OF_FLOOR;
    ThermalConductance::new::<watt_per_kelvin>(area.get::<square_meter>() * WALLS_W_M2_K)
}

/// A furnace and its ducts that run.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct AirMoved {
    /// Air and pressures.
    pub running: Running,
    /// Share of the fan's air that leaves the ducts for belly or outdoors.
    pub lost: Ratio,
    /// Share of what is lost that goes straight outdoors, below the belly.
    pub straight_out: Ratio,
    /// Air over that of the same furnace with clean filter and blower, open registers and return.
    pub of_clean: Ratio,
}

/// What a furnace moves, as it was found; a draw may have set what its ducts lose.
#[must_use]
pub(crate) fn air_moved(home: &Home, density: MassDensity) -> AirMoved {
    let found = &home.ducts;
    let system = system(home, density);
    let running = system.running();
    // The label holds for a usual filter.
    let new_filter = Filter { look: Some(FilterLook::Bright), ..Filter::default() };
    let clean = System {
        dust: full(),
        filter: Some(FilterInPlace::of(&new_filter, drop_of(&new_filter).best)),
        back_open: full(),
        outlets_open: full(),
        ..system
    };
    let crossover = match found.crossover {
        Some(Crossover::Loose) => LOOSE,
        Some(Crossover::Fallen) => FALLEN,
        Some(Crossover::Sound) | None => 0.0,
    };
    let share: Ratio = running.leaked / running.flow;
    let all = share.get::<ratio>() + crossover;
    let lost = all.min(MOST_LOST);
    AirMoved {
        running,
        lost: Ratio::new::<ratio>(lost),
        straight_out: Ratio::new::<ratio>(if all > 0.0 { crossover / all } else { 0.0 }),
        of_clean: running.flow / clean.running().flow,
    }
}

fn full() -> Ratio {
    Ratio::new::<ratio>(1.0)
}

fn system(home: &Home, density: MassDensity) -> System {
    let found = &home.ducts;
    let closed = found.registers.zip(found.closed);
    let open = closed.map_or(1.0, |(all, closed)| 1.0 - f64::from(closed) / f64::from(all));
    // A furnace that cools as well has a coil, and a blower made for it.
    let pump = home.heating.fuel == Some(Fuel::HeatPump);
    let coil = pump || home.building.cooling == Some(Cooling::AirConditioner);
    let or = |seen: Option<bool>, then: f64| if seen == Some(true) { then } else { 1.0 };
    System {
        blower: Blower::ConstantSpeed(if coil { Tap::Medium } else { Tap::Low }),
        dust: Ratio::new::<ratio>(or(found.blower_dirty, DUSTY)),
        filter: Some(FilterInPlace::of(&home.filter, drop_of(&home.filter).best)),
        design: VolumeRate::new::<cfm>(DESIGN_CFM),
        back: Pressure::new::<pascal>(RETURN_PA),
        back_open: Ratio::new::<ratio>(or(found.return_blocked, BEHIND_A_COUCH)),
        coil: if coil { Pressure::new::<pascal>(COIL_PA) } else { Pressure::default() },
        outlets: Pressure::new::<pascal>(OUTLETS_PA),
        outlets_open: Ratio::new::<ratio>(open),
        leak: leaks_at_design(home, density) / VolumeRate::new::<cfm>(DESIGN_CFM),
        density,
    }
}

/// What ducts leak to belly and outdoors at the design flow. What was found is part of what is usual;
/// the rest stays until somebody finds it, or mastic does.
fn leaks_at_design(home: &Home, density: MassDensity) -> VolumeRate {
    let found = &home.ducts;
    let usual = VolumeRate::new::<cfm>(DESIGN_CFM) * found.lost.unwrap_or(lost(home).best);
    let gaps = |only_open: bool| gaps_to_outside(found, density, only_open);
    let unfound = (usual - gaps(false)).max(VolumeRate::default());
    let mastic = if found.sealed == Some(true) { MASTIC_LEAVES } else { 1.0 };
    (unfound * mastic + gaps(true)).min(VolumeRate::new::<cfm>(DESIGN_CFM * MOST_LOST))
}

/// Pressures at the design flow.
fn at_design() -> Running {
    let (trunk, back) = (Pressure::new::<pascal>(OUTLETS_PA), Pressure::new::<pascal>(RETURN_PA));
    let flow = VolumeRate::new::<cfm>(DESIGN_CFM);
    Running { flow, leaked: VolumeRate::default(), cabinet: trunk, trunk, back }
}

/// Air through the gaps that were measured and that lead to belly or outdoors, at the design flow.
fn gaps_to_outside(found: &DuctsFound, density: MassDensity, only_open: bool) -> VolumeRate {
    let leads_out = |to| matches!(to, GoesTo::Belly | GoesTo::Outdoors);
    found
        .gaps
        .iter()
        .filter(|gap| !(only_open && gap.sealed) && leads_out(goes_to(gap.place, gap.air)))
        .map(|gap| through(gap.length * gap.width, pressure_at(gap.place, &at_design()), density))
        .sum()
}
