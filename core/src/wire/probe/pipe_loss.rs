//! What a pipe loses to air and wind.

use super::question::{Answer, Gives, Model, Question};
use super::refuse;
use crate::bounds::question as bounds;
use crate::error::{FieldError, Reason};
use crate::physics::film::Surroundings;
use crate::physics::pipe::{Pipe, heat_loss};
use crate::units::{celsius, in_celsius};
use crate::wire::shape::{Field, Shape};
use crate::wire::tree::Tree;
use serde_json::json;
use uom::si::f64::{Length, Ratio, ThermalConductivity, Velocity};
use uom::si::thermal_conductivity::watt_per_meter_kelvin;
use uom::si::{length::meter, linear_power_density::watt_per_meter, velocity::meter_per_second};

pub(super) const QUESTION: Question = Question {
    name: "pipe_loss",
    fields: Shape::Map(&[
        Field::needed("outer_diameter_m", Shape::Number(&bounds::DIAMETER), "Of the bare pipe."),
        Field::needed("inner_diameter_m", Shape::Number(&bounds::INNER_DIAMETER), "Of the pipe."),
        Field::needed("wall_w_m_k", Shape::Number(&bounds::CONDUCTIVITY), "Conductivity."),
        Field::needed("insulation_m", Shape::Number(&bounds::INSULATION), "0 is bare."),
        Field::needed("insulation_w_m_k", Shape::Number(&bounds::CONDUCTIVITY), "Conductivity."),
        Field::needed("emissivity", Shape::Number(&bounds::EMISSIVITY), "Outermost surface."),
        Field::needed("pipe_c", Shape::Number(&bounds::PIPE_TEMPERATURE), "Inside of the wall."),
        Field::needed("air_c", Shape::Number(&bounds::AIR), "Air and all that the pipe sees."),
        Field::needed("wind_m_s", Shape::Number(&bounds::WIND), "Across the pipe."),
    ]),
    gives: &[Gives::Number("loss_w_m"), Gives::Number("surface_c")],
    model: Model::Plain(answer),
};

fn answer(fields: &Tree) -> Answer {
    let pipe = pipe(fields, Ratio::from(fields.must("emissivity")))?;
    let around = Surroundings {
        air: celsius(fields.must("air_c")),
        wind: Velocity::new::<meter_per_second>(fields.must("wind_m_s")),
    };
    let loss = heat_loss(&pipe, celsius(fields.must("pipe_c")), around);
    Ok(json!({
        "loss_w_m": loss.per_length.get::<watt_per_meter>(),
        "surface_c": in_celsius(loss.surface),
    }))
}

/// The pipe of the fields that describe one.
pub(super) fn pipe(fields: &Tree, emissivity: Ratio) -> Result<Pipe, Vec<FieldError>> {
    let metres = |key| Length::new::<meter>(fields.must(key));
    let conducts = |key| ThermalConductivity::new::<watt_per_meter_kelvin>(fields.must(key));
    let pipe = Pipe {
        inside: metres("inner_diameter_m"),
        outside: metres("outer_diameter_m"),
        wall: conducts("wall_w_m_k"),
        insulation: metres("insulation_m"),
        insulation_conductivity: conducts("insulation_w_m_k"),
        emissivity,
    };
    if pipe.inside > pipe.outside {
        return refuse("inner_diameter_m", Reason::Contradicts { other: "outer_diameter_m" });
    }
    Ok(pipe)
}
