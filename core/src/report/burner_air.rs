//! The air that a closet with a burner needs: how large its openings must be, and what closing them
//! would do.

use super::shown::{Scale, Shown};
use super::{Finding, Phrase};
use crate::air::combustion::{AirFrom, closet_pressure, opening};
use crate::home::{HeaterPlace, Home};
use crate::sources::air::{
    COMBUSTION_DEMAND, FLUE_SPILLS, HANDBOOK_2021_CH16_ORIFICE, USUAL_BURNER_INPUT,
};
use crate::sources::{Confidence, Figure};
use crate::units::power::btu_per_hour;
use uom::si::area::{square_centimeter, square_inch, square_meter};
use uom::si::f64::{Area, Power, Pressure};
use uom::si::pressure::pascal;

/// Input of a usual tank, and its range: [`USUAL_BURNER_INPUT`].
const USUAL_BTU_H: [f64; 3] = [40_000.0, 30_000.0, 50_000.0];
/// Cracks that remain round a closet that somebody closed well, and their range: judgement, some
/// inches of a crack as wide as a coin.
const LEFT_OPEN_CM2: [f64; 3] = [20.0, 10.0, 40.0];

/// Where the closet takes its air from, if there is one in which something may burn.
fn air_from(home: &Home) -> Option<AirFrom> {
    let from = match home.water_heater.place? {
        HeaterPlace::ClosetOuterDoor => AirFrom::OutdoorsByTwo,
        HeaterPlace::ClosetInnerDoor => AirFrom::Indoors,
        HeaterPlace::Room => return None,
    };
    (home.burner_in_closet() != Some(false)).then_some(from)
}

/// Whether a burner may need air here, in its closet or anywhere else.
pub(super) fn may_be_needed(home: &Home) -> bool {
    home.something_burns() != Some(false) || air_from(home).is_some()
}

pub(super) fn findings(home: &Home) -> Vec<Finding> {
    let Some(from) = air_from(home) else { return vec![] };
    match input(home) {
        Some(input) => vec![openings(home, &input, from), pull(&input)],
        None => vec![Finding {
            item: "burner_air",
            text: Phrase::new("finding.burner_air_unsized"),
            figure: None,
        }],
    }
}

/// What the labels say, or what is usual for a tank alone; `None` where the label of another burner,
/// or of one without a tank, was not read.
fn input(home: &Home) -> Option<Figure<Power>> {
    let heater = &home.water_heater;
    if let Some(input) = heater.input {
        let read = Figure::exact(input, Confidence::Seen, &[]);
        return Some(read.from_inputs(["water_heater.input_btu_h"]));
    }
    let lone_tank = heater.shares_closet == Some(false)
        && heater.kind.is_none_or(|kind| kind.burns() && kind.has_tank());
    let [best, low, high] = USUAL_BTU_H.map(Power::new::<btu_per_hour>);
    let usual = Figure::exact(best, Confidence::Guessed, &[&USUAL_BURNER_INPUT]).between(low, high);
    lone_tank.then_some(usual)
}

fn openings(home: &Home, input: &Figure<Power>, from: AirFrom) -> Finding {
    let rule = opening(input.best, from);
    let mut each = input.map(&rule.sources, |input| opening(input, from).best);
    each.inputs.push("water_heater.place".to_owned());
    let scale = Scale {
        unit: "in2",
        si_unit: "m2",
        shown: |area: Area| area.get::<square_inch>(),
        si: |area| area.get::<square_meter>(),
    };
    let shown = Shown::new(&each, &scale);
    let key = match from {
        AirFrom::Indoors => "finding.burner_air_indoors",
        _ => "finding.burner_air",
    };
    let basis = if home.water_heater.input.is_some() { "basis.label" } else { "basis.usual" };
    let text = Phrase::new(key).with("area", shown.text.clone()).with("basis", Phrase::new(basis));
    Finding { item: "burner_air", text, figure: Some(shown) }
}

/// What a closet that is closed but for its cracks would be pulled down to.
fn pull(input: &Figure<Power>) -> Finding {
    let [best, low, high] = LEFT_OPEN_CM2.map(Area::new::<square_centimeter>);
    let pulled = |input, left| closet_pressure(input, left).unwrap_or_default();
    let sources = &[&COMBUSTION_DEMAND, &HANDBOOK_2021_CH16_ORIFICE, &FLUE_SPILLS];
    let figure = Figure {
        confidence: Confidence::Guessed,
        ..input.map(sources, |input| pulled(input, best))
    };
    let figure = figure.between(pulled(input.low, high), pulled(input.high, low));
    let scale = Scale {
        unit: "pa",
        si_unit: "Pa",
        shown: |pressure: Pressure| pressure.get::<pascal>(),
        si: |pressure| pressure.get::<pascal>(),
    };
    let shown = Shown::new(&figure, &scale);
    // Pascals tell a resident nothing; the figure stands beside for those who want it.
    let text = Phrase::new("finding.burner_pull");
    Finding { item: "burner_air", text, figure: Some(shown) }
}
