//! The water pipe without its heat cable: how soon it may block on the coldest night.

use super::Weather;
use crate::climate::Station;
use crate::envelope::wind_through_skirting;
use crate::freeze::{CableSeen, PipeKind, PipeSize, freeze_stages, power_needed};
use crate::home::Home;
use crate::physics::film::Surroundings;
use crate::physics::pipe::Pipe;
use crate::sources::{Confidence, Figure, Source, climate, envelope, freeze, pipes};
use crate::units::fahrenheit;
use uom::si::area::square_meter;
use uom::si::f64::{Area, Length, LinearPowerDensity, Time, Velocity};

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
    &freeze::CHURCHILL_BERNSTEIN_1977,
    &envelope::WIND_THROUGH_OPENINGS,
    &climate::COLDEST_NIGHT,
    &climate::TYPICAL_YEARS,
    &climate::NORMALS,
];

const NEED_SOURCES: &[&Source] = &[
    &freeze::CABLE_HOLD,
    &pipes::CABLE_MARGIN,
    &freeze::PIPE_SIZES,
    &freeze::PIPE_FOAM,
    &freeze::PIPE_FOAM_THICKNESS,
    &freeze::CHURCHILL_CHU_1975,
    &freeze::CHURCHILL_BERNSTEIN_1977,
    &envelope::WIND_THROUGH_OPENINGS,
    &climate::COLDEST_NIGHT,
    &climate::TYPICAL_YEARS,
    &climate::NORMALS,
];

/// How soon a plug of ice may block the pipe when its cable gives nothing on the coldest night of an
/// ordinary year: the pipe as it was seen, or as pipes usually are, with the wall that lets it
/// freeze soonest, in the winter's wind where skirting is missing. Skirting, ground and warm ends
/// give longer; more wind, a hollow, or less insulation than is usual, less.
#[must_use]
pub fn time_to_plug(home: &Home, weather: &Weather<'_>) -> Option<Figure<Time>> {
    let cable = CableSeen::of(home.cable.as_ref()?)?;
    let night = coldest_night(home, weather);
    let plug = |kind: PipeKind| {
        let pipe = pipe(kind, &cable);
        Some(freeze_stages(&pipe, kind.wall_heat(), fahrenheit(HELD_F), night)?.to_plug)
    };
    let soonest = PipeKind::ALL.into_iter().filter_map(plug).reduce(Time::min)?;
    let inputs = cable.pipe_outside.inputs.iter().chain(&cable.insulation.inputs).cloned();
    let figure = Figure::exact(soonest, Confidence::Guessed, SOURCES);
    Some(figure.from_inputs(inputs.chain(["home.zip", "home.skirting_open"].map(String::from))))
}

/// Heat for each length that the pipe below a cable needs on the coldest night of an ordinary year,
/// with the margin that cables are chosen with: [`power_needed`]. The range is that of what nobody
/// saw of the pipe.
#[must_use]
pub fn power_needed_on_coldest_night(
    home: &Home,
    weather: &Weather<'_>,
) -> Option<Figure<LinearPowerDensity>> {
    let cable = CableSeen::of(home.cable.as_ref()?)?;
    let night = coldest_night(home, weather);
    let needs = |outside: Length, foam: Length| {
        let pipe = Pipe { outside, insulation: foam, ..pipe(PipeKind::CopperL, &cable) };
        let inside = pipe.inside * (outside / cable.pipe_outside.best);
        power_needed(&Pipe { inside, ..pipe }, night)
    };
    let (size, foam) = (&cable.pipe_outside, &cable.insulation);
    let best = needs(size.best, foam.best);
    let ends = [needs(size.low, foam.high), needs(size.high, foam.low)];
    let inputs = size.inputs.iter().chain(&foam.inputs).cloned();
    let figure = Figure::exact(best, Confidence::Guessed, NEED_SOURCES)
        .between(ends[0].min(best), ends[1].max(best));
    Some(figure.from_inputs(inputs.chain(["home.zip", "home.skirting_open"].map(String::from))))
}

/// Air and wind at the pipe on the coldest night of an ordinary year.
fn coldest_night(home: &Home, weather: &Weather<'_>) -> Surroundings {
    let station = &weather.place.station;
    let gap = home.building.skirting_gap.is_some_and(|gap| gap > Length::default());
    let windy = gap || home.building.skirting_open == Some(true);
    let wind = if windy { wind_below(station) } else { Velocity::default() };
    Surroundings { air: station.coldest_night().best, wind }
}

/// Wind below a home without part of its skirting: the mean of the windiest winter month, as far as
/// openings let it pass.
fn wind_below(station: &Station) -> Velocity {
    let [january, february, .., december] = station.normals.wind;
    let hole = Area::new::<square_meter>(1.0);
    wind_through_skirting(hole, january.max(february).max(december)) / hole
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
