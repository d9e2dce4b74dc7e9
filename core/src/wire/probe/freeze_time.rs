//! How long standing water takes to freeze.

use super::pipe_loss::pipe;
use super::question::{Answer, Gives, Model, Question};
use crate::bounds::question as bounds;
use crate::freeze::freeze_times;
use crate::units::celsius;
use crate::wire::shape::{Field, Shape};
use crate::wire::tree::Tree;
use serde_json::json;
use uom::si::f64::{HeatTransfer, Ratio};
use uom::si::{heat_transfer::watt_per_square_meter_kelvin, time::hour};

pub(super) const QUESTION: Question = Question {
    name: "freeze_time",
    fields: Shape::Map(&[
        Field::needed("inner_diameter_m", Shape::Number(&bounds::INNER_DIAMETER), "Of the pipe."),
        Field::needed("outer_diameter_m", Shape::Number(&bounds::DIAMETER), "Of the bare pipe."),
        Field::needed("wall_w_m_k", Shape::Number(&bounds::CONDUCTIVITY), "Conductivity."),
        Field::needed("insulation_m", Shape::Number(&bounds::INSULATION), "0 is bare."),
        Field::needed("insulation_w_m_k", Shape::Number(&bounds::CONDUCTIVITY), "Conductivity."),
        Field::seen(
            "film_w_m2_k",
            Shape::Number(&bounds::FILM),
            "Convection and radiation of the outermost surface; resists nothing if absent.",
        ),
        Field::needed("water_c", Shape::Number(&bounds::STANDING_WATER), "At the start."),
        Field::needed("air_c", Shape::Number(&bounds::AIR), "Around the pipe."),
    ]),
    gives: &[Gives::NumberOrNull("to_zero_h"), Gives::NumberOrNull("to_solid_h")],
    model: Model::Plain(answer),
};

fn answer(fields: &Tree) -> Answer {
    // The film is given as a whole, so nothing hangs on the emissivity.
    let pipe = pipe(fields, Ratio::default())?;
    let film = fields.get("film_w_m2_k").number();
    let film = film.map(HeatTransfer::new::<watt_per_square_meter_kelvin>);
    let (water, air) = (celsius(fields.must("water_c")), celsius(fields.must("air_c")));
    let times = freeze_times(&pipe, film, water, air);
    Ok(json!({
        "to_zero_h": times.map(|times| times.to_zero.get::<hour>()),
        "to_solid_h": times.map(|times| times.further_to_solid.get::<hour>()),
    }))
}
