//! Air through a gap.

use super::question::{Answer, Gives, Model, Question};
use super::refuse;
use crate::bounds::question as bounds;
use crate::error::Reason;
use crate::physics::gap::{Slit, flow, leakage_area, local_exponent};
use crate::properties::air::Air;
use crate::units::celsius;
use crate::wire::shape::{Field, Shape};
use crate::wire::tree::Tree;
use serde_json::json;
use uom::si::f64::{Length, Pressure};
use uom::si::volume_rate::cubic_meter_per_second;
use uom::si::{area::square_meter, length::meter, pressure::pascal, ratio::ratio};

pub(super) const QUESTION: Question = Question {
    name: "gap",
    fields: Shape::Map(&[
        Field::needed("length_m", Shape::Number(&bounds::GAP_LENGTH), "Along the gap."),
        Field::needed("width_m", Shape::Number(&bounds::GAP_WIDTH), "The opening seen."),
        Field::needed("depth_m", Shape::Number(&bounds::GAP_DEPTH), "The way the air travels."),
        Field::needed("bends", Shape::Whole(&bounds::BENDS), "Corners on that way."),
        Field::needed("pressure_pa", Shape::Number(&bounds::PRESSURE), "Across the gap."),
        Field::seen("air_c", Shape::Number(&bounds::AIR), "Air that enters; 20 if absent."),
        Field::seen("air_pa", Shape::Number(&bounds::AIR_PRESSURE), "101325 if absent."),
    ]),
    gives: &[
        Gives::Number("flow_m3_s"),
        Gives::Number("leakage_area_4pa_m2"),
        Gives::Number("local_exponent"),
    ],
    model: Model::Plain(answer),
};

fn answer(fields: &Tree) -> Answer {
    let metres = |key| Length::new::<meter>(fields.must(key));
    let bends = fields.must_count("bends");
    let slit = Slit::new(metres("length_m"), metres("width_m"), metres("depth_m"), bends);
    let pressure = Pressure::new::<pascal>(fields.number_or("air_pa", 101_325.0));
    let air = Air::dry(celsius(fields.number_or("air_c", 20.0)), pressure);
    let (Some(slit), Some(air)) = (slit, air) else { return refuse("", Reason::NotANumber) };
    let across = Pressure::new::<pascal>(fields.must("pressure_pa"));
    Ok(json!({
        "flow_m3_s": flow(&slit, across, &air).get::<cubic_meter_per_second>(),
        "leakage_area_4pa_m2": leakage_area(&slit, &air).get::<square_meter>(),
        "local_exponent": local_exponent(&slit, across, &air).get::<ratio>(),
    }))
}
