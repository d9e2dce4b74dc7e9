//! The water pipe without its heat cable: how soon it may block on the coldest night.

use super::Weather;
use crate::freeze::{CableSeen, PipeKind, PipeSize, freeze_stages};
use crate::home::Home;
use crate::physics::film::Surroundings;
use crate::physics::pipe::Pipe;
use crate::sources::{Confidence, Figure, Source, climate, freeze, pipes};
use crate::units::fahrenheit;
use uom::si::f64::Time;

/// What a cable held until it failed, °F: [`CABLE_HOLD`](freeze::CABLE_HOLD).
const HELD_F: f64 = 40.0;

const SOURCES: &[&Source] = &[
    &pipes::ISO_12241_FREEZING,
    &pipes::DENDRITIC_ICE,
    &pipes::SUPERCOOLING,
    &pipes::WATER_AND_ICE,
    &pipes::PIPE_WALLS,
    &freeze::CABLE_HOLD,
    &freeze::PIPE_SIZES,
    &freeze::PIPE_FOAM,
    &freeze::PIPE_FOAM_THICKNESS,
    &freeze::CHURCHILL_CHU_1975,
    &climate::COLDEST_NIGHT,
    &climate::TYPICAL_YEARS,
    &climate::NORMALS,
];

/// How soon a plug of ice may block the pipe when its cable gives nothing on the coldest night of an
/// ordinary year: the pipe as it was seen, or as pipes usually are, with the wall that lets it
/// freeze soonest. Skirting, ground and warm ends give longer; wind, a hollow, or less insulation
/// than is usual, less.
#[must_use]
pub fn time_to_plug(home: &Home, weather: &Weather<'_>) -> Option<Figure<Time>> {
    let cable = CableSeen::of(home.cable.as_ref()?)?;
    let night = Surroundings::still(weather.place.station.coldest_night().best);
    let plug = |kind: PipeKind| {
        let pipe = pipe(kind, &cable);
        Some(freeze_stages(&pipe, kind.wall_heat(), fahrenheit(HELD_F), night)?.to_plug)
    };
    let soonest = PipeKind::ALL.into_iter().filter_map(plug).reduce(Time::min)?;
    let inputs = cable.pipe_outside.inputs.iter().chain(&cable.insulation.inputs).cloned();
    let figure = Figure::exact(soonest, Confidence::Guessed, SOURCES);
    Some(figure.from_inputs(inputs.chain(["home.zip".to_owned()])))
}

/// The pipe below the cable, with the wall of this kind.
fn pipe(kind: PipeKind, cable: &CableSeen) -> Pipe {
    let usual = kind.bare(PipeSize::ThreeQuarters);
    let outside = cable.pipe_outside.best;
    Pipe {
        inside: outside * (usual.inside / usual.outside),
        outside,
        insulation: cable.insulation.best,
        insulation_conductivity: cable.conductivity.best,
        ..usual
    }
}
