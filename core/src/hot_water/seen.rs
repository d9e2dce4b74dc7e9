//! A water heater as a person saw it: what was not seen is filled with what is usual, as a range.

use super::draws::Draws;
use super::heater::Heater;
use crate::home::{HeaterKind, HeaterPlace, Home};
use crate::sources::water_heater::{CLOSET_WARMTH, NEAR_PIPE, SHOWER, USUAL_FACTORS, WATER_USE};
use crate::sources::{Confidence, Figure, Source, safety};
use crate::units::fahrenheit;
use uom::si::f64::{Length, Ratio, ThermodynamicTemperature, Volume, VolumeRate};
use uom::si::length::foot;
use uom::si::ratio::ratio;
use uom::si::volume::gallon;
use uom::si::volume_rate::gallon_per_minute;

/// A water heater with a figure for everything: seen, or what is usual.
#[derive(Debug, Clone, PartialEq)]
pub struct HeaterSeen {
    /// What makes the hot water.
    pub kind: HeaterKind,
    /// Factor of the heater; a better one takes less.
    pub factor: Figure<Ratio>,
    /// Water in the tank.
    pub volume: Figure<Volume>,
    /// Its temperature.
    pub stored: Figure<ThermodynamicTemperature>,
    /// How far its place follows the outdoors: 0 is a heated room, 1 is outside.
    pub follows_outdoors: Figure<Ratio>,
    /// People who use the water.
    pub people: Figure<Ratio>,
    /// Pipe at the tank that stays hot between draws.
    pub near_pipe: Figure<Length>,
    /// Water used over what is usual for so many people.
    pub thirst: Figure<Ratio>,
    /// Flow of the shower.
    pub shower: Figure<VolumeRate>,
    /// The pipe at the tank wears a sleeve; bare where nobody looked.
    pub sleeve: bool,
    /// The tank wears a jacket; bare where nobody looked.
    pub jacket: bool,
}

impl HeaterSeen {
    /// What the figures that nobody saw rest on.
    pub const SOURCES: &'static [&'static Source] =
        &[&USUAL_FACTORS, &WATER_USE, &SHOWER, &CLOSET_WARMTH, &NEAR_PIPE];

    /// Fills what was not seen; `None` where nobody saw what makes the hot water.
    #[must_use]
    pub fn of(home: &Home) -> Option<Self> {
        let seen = &home.water_heater;
        let kind = seen.kind?;
        let gallons = |v| Volume::new::<gallon>(v);
        let feet = |l| Length::new::<foot>(l);
        let flow = |q| VolumeRate::new::<gallon_per_minute>(q);
        let people = home.people.count.map(|n| share(f64::from(n)));
        Some(Self {
            kind,
            factor: told(seen.factor, || usual(factors(kind).map(share), &USUAL_FACTORS)),
            volume: told(seen.volume, || usual([40.0, 30.0, 50.0].map(gallons), &USUAL_FACTORS)),
            stored: stored(home),
            follows_outdoors: told(seen.follows_outdoors, || {
                usual(closeness(seen.place).map(share), &CLOSET_WARMTH)
            }),
            people: told(people, || usual([2.0, 1.0, 4.0].map(share), &WATER_USE)),
            near_pipe: told(seen.near_pipe, || usual([1.5, 0.6, 3.0].map(feet), &NEAR_PIPE)),
            thirst: told(seen.thirst, || usual([1.0, 0.6, 1.6].map(share), &WATER_USE)),
            shower: told(seen.shower, || usual([2.1, 1.6, 3.0].map(flow), &SHOWER)),
            sleeve: seen.sleeve == Some(true),
            jacket: seen.jacket == Some(true),
        })
    }

    /// The heater with the best value of everything.
    #[must_use]
    pub fn heater(&self) -> Heater {
        let bare = Heater::new(self.kind, self.factor.best, self.volume.best);
        if self.jacket { bare.in_jacket() } else { bare }
    }

    /// The water of a day with the best value of everything.
    #[must_use]
    pub fn draws(&self) -> Draws {
        Draws::of(self.people.best * self.thirst.best, self.shower.best)
    }
}

/// Usual, best and worst of a kind.
fn factors(kind: HeaterKind) -> [f64; 3] {
    match kind {
        HeaterKind::Electric => [0.92, 0.95, 0.86],
        HeaterKind::HeatPump => [2.5, 3.3, 1.8],
        HeaterKind::SealedCombustion | HeaterKind::DraftHood => [0.59, 0.62, 0.50],
        HeaterKind::TanklessElectric => [0.98, 0.99, 0.97],
        HeaterKind::TanklessGas => [0.80, 0.94, 0.78],
    }
}

/// Usual, warmest and coldest place.
fn closeness(place: Option<HeaterPlace>) -> [f64; 3] {
    match place {
        Some(HeaterPlace::Room) => [0.0; 3],
        Some(HeaterPlace::ClosetInnerDoor) => [0.2, 0.0, 0.5],
        Some(HeaterPlace::ClosetOuterDoor) => [0.7, 0.4, 1.0],
        None => [0.4, 0.0, 1.0],
    }
}

/// Water in the tank: that of the tap, unless a mixing valve sits between.
fn stored(home: &Home) -> Figure<ThermodynamicTemperature> {
    let seen = &home.water_heater;
    let behind_valve = seen.mixing_valve == Some(true);
    let tap = seen.tap.filter(|_| !behind_valve);
    told(seen.stored.or(tap), || {
        let usually = if behind_valve { [140.0, 130.0, 150.0] } else { [122.0, 115.0, 140.0] };
        usual(usually.map(fahrenheit), &safety::HOT_STORAGE)
    })
}

fn share(value: f64) -> Ratio {
    Ratio::new::<ratio>(value)
}

fn told<Q: Copy + PartialOrd>(seen: Option<Q>, usual: impl FnOnce() -> Figure<Q>) -> Figure<Q> {
    seen.map_or_else(usual, |q| Figure::exact(q, Confidence::Seen, &[]))
}

/// Low is the end that takes less energy, whatever the order of the numbers.
fn usual<Q>([best, low, high]: [Q; 3], source: &'static Source) -> Figure<Q> {
    let (confidence, sources) = (Confidence::Guessed, vec![source]);
    Figure { best, low, high, confidence, inputs: vec![], sources }
}
