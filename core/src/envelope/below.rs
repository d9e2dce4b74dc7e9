//! The space below a home as a person saw it: skirting, vents, ground.

use super::crawl::{Temperatures, Ways, settled, wind_through_skirting};
use super::shell::shell;
use super::u_values::{Three, between, btu};
use crate::home::{Building, Home, Shelter, SkirtingVents};
use crate::properties::air::{Air, heat_capacity};
use crate::units::{carried, kelvins};
use uom::si::f64::{
    Area, Frequency, Length, Power, ThermalConductance, ThermodynamicTemperature, Velocity,
    VolumeRate,
};
use uom::si::frequency::cycle_per_minute;
use uom::si::{length::foot, ratio::ratio, velocity::meter_per_second};

/// Height of the space, ft; heat through plain skirting, through boards of R-10 behind it, and
/// through the ground, Btu/(h·ft²·°F); [`SKIRTING`](crate::sources::envelope::SKIRTING).
const HEIGHT_FT: f64 = 3.0;
const PLAIN: f64 = 0.9;
const INSULATED: f64 = 0.09;
const GROUND: Three = [0.12, 0.10, 0.08];
/// Missing share of the length of the skirting where nobody measured it, and where nobody looked.
const MISSING: Three = [0.05, 0.15, 0.40];
const NOBODY_LOOKED: Three = [0.0, 0.02, 0.15];
/// Share of the vents of the standard that is open where nobody looked.
const VENTS_NOT_SEEN: Three = [0.0, 0.5, 1.0];
/// Floor for each area of vent; [`SKIRTING_VENTS`](crate::sources::envelope::SKIRTING_VENTS).
const FLOOR_FOR_VENT: f64 = 150.0;
/// In still air warm air leaves through a hole as if this wind blew near the ground, m/s: judgement.
const CALM: f64 = 0.5;

/// The space below a home, made ready for every hour of a year.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Below {
    floor: ThermalConductance,
    ground: ThermalConductance,
    /// Through closed skirting and the air that seeps through it.
    closed: ThermalConductance,
    /// By the air that a wind near the ground of 1 m/s drives through holes and vents.
    each_wind: ThermalConductance,
    /// Wind near the ground for each at the station.
    wind_near_ground: f64,
}

impl Below {
    /// That of a home, as it is known or as a draw has set it.
    #[must_use]
    pub fn of(home: &Home) -> Self {
        let building = &home.building;
        let skirting = Skirting::of(building);
        let insulated = building.skirting_insulated == Some(true);
        let (u, changes) = if insulated { (INSULATED, 0.5) } else { (PLAIN, 1.0) };
        let (width, length) = building.size();
        let volume = width * length * height();
        let seeping = volume * Frequency::new::<cycle_per_minute>(changes / 60.0);
        // What wind comes in by on one side it leaves by on the other.
        let each = wind_through_skirting(skirting.open / 2.0, a_metre_each_second());
        Self {
            floor: shell(home).floor,
            ground: btu(between(GROUND, off(building))) * (width * length),
            closed: btu(u) * skirting.closed + by_air(seeping),
            each_wind: by_air(each),
            wind_near_ground: near_ground(building.shelter),
        }
    }

    /// What the floor sees through the air below it: how well that is joined to ground and outdoors,
    /// and how warm they are together.
    #[must_use]
    pub fn seen_by_floor(
        &self,
        ground: ThermodynamicTemperature,
        outdoor: ThermodynamicTemperature,
        wind: Velocity,
    ) -> (ThermalConductance, ThermodynamicTemperature) {
        let out = self.out(wind);
        let ways = Ways { floor: ThermalConductance::default(), ground: self.ground, out };
        // Whatever is indoors: the floor is left out.
        let between = Temperatures { indoor: outdoor, ground, outdoor };
        (self.ground + out, settled(ways, between, Power::default()))
    }

    fn out(&self, wind: Velocity) -> ThermalConductance {
        let wind = (wind.get::<meter_per_second>() * self.wind_near_ground).max(CALM);
        self.closed + self.each_wind * wind
    }

    /// Temperature of the air below the home. `wind` is that of the station, 10 m up. It counts heat
    /// and ranks repairs; it never lets a heat cable or a sleeve go: only a thermometer through a
    /// cold spell may.
    #[must_use]
    pub fn temperature(
        &self,
        between: Temperatures,
        wind: Velocity,
        ducts: Power,
    ) -> ThermodynamicTemperature {
        let out = self.out(wind);
        settled(Ways { floor: self.floor, ground: self.ground, out }, between, ducts)
    }
}

fn off(building: &Building) -> f64 {
    building.shell_off.map_or(0.0, |off| off.get::<ratio>())
}

fn height() -> Length {
    Length::new::<foot>(HEIGHT_FT)
}

fn a_metre_each_second() -> Velocity {
    Velocity::new::<meter_per_second>(1.0)
}

/// Heat that a flow of air carries for each kelvin.
fn by_air(flow: VolumeRate) -> ThermalConductance {
    let one = kelvins(1.0);
    carried(flow, Air::of_a_room().density(), heat_capacity(), one) / one
}

/// [`WIND_NEAR_GROUND`](crate::sources::envelope::WIND_NEAR_GROUND); among homes where nobody
/// looked.
fn near_ground(shelter: Option<Shelter>) -> f64 {
    match shelter {
        Some(Shelter::OpenGround | Shelter::LoneHome) => 0.72,
        _ => 0.43,
    }
}

/// Closed and open area round the space.
struct Skirting {
    closed: Area,
    open: Area,
}

impl Skirting {
    fn of(building: &Building) -> Self {
        let (width, length) = building.size();
        let (round, off) = (2.0 * (width + length), off(building));
        let missing = match (building.skirting_gap, building.skirting_open) {
            (Some(gap), _) => gap.min(round),
            (None, Some(false)) => Length::default(),
            (None, Some(true)) => round * between(MISSING, off),
            (None, None) => round * between(NOBODY_LOOKED, off),
        };
        let vents = match building.skirting_vents {
            Some(SkirtingVents::Open) => 1.0,
            Some(SkirtingVents::Blocked | SkirtingVents::None) => 0.0,
            None => between(VENTS_NOT_SEEN, off),
        };
        let vents = width * length / FLOOR_FOR_VENT * vents;
        let missing = missing * height();
        Self { closed: round * height() - missing, open: missing + vents }
    }
}
