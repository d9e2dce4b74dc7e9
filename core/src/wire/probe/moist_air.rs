//! Moist air.

use super::question::{Answer, Gives, Model, Question};
use super::refuse;
use crate::bounds::question as bounds;
use crate::error::Reason;
use crate::physics::moist_air::{MoistAir, RelativeHumidity};
use crate::units::{celsius, in_celsius};
use crate::wire::shape::{Field, Shape};
use crate::wire::tree::Tree;
use serde_json::json;
use uom::si::f64::{Pressure, Ratio};
use uom::si::{
    available_energy::joule_per_kilogram, mass_density::kilogram_per_cubic_meter, pressure::pascal,
    ratio::ratio,
};

pub(super) const QUESTION: Question = Question {
    name: "moist_air",
    fields: Shape::Map(&[
        Field::needed("dry_bulb_c", Shape::Number(&bounds::DRY_BULB), "Air temperature."),
        Field::needed(
            "relative_humidity",
            Shape::Number(&bounds::RELATIVE_HUMIDITY),
            "A share, not per cent.",
        ),
        Field::needed("pressure_pa", Shape::Number(&bounds::AIR_PRESSURE), "Of the moist air."),
    ]),
    gives: &[
        Gives::Number("humidity_ratio"),
        Gives::NumberOrNull("dew_point_c"),
        Gives::Number("enthalpy_j_kg"),
        Gives::Number("density_kg_m3"),
        Gives::Number("saturation_pa"),
    ],
    model: Model::Plain(answer),
};

fn answer(fields: &Tree) -> Answer {
    let humidity = RelativeHumidity::new(Ratio::new::<ratio>(fields.must("relative_humidity")));
    let pressure = Pressure::new::<pascal>(fields.must("pressure_pa"));
    let air = humidity
        .and_then(|humidity| MoistAir::new(celsius(fields.must("dry_bulb_c")), humidity, pressure));
    let Some(air) = air else {
        // The vapour alone would have more than the whole pressure.
        return refuse("relative_humidity", Reason::Contradicts { other: "pressure_pa" });
    };
    Ok(json!({
        "humidity_ratio": air.humidity_ratio().get::<ratio>(),
        "dew_point_c": air.dew_point().map(in_celsius),
        "enthalpy_j_kg": air.enthalpy().get::<joule_per_kilogram>(),
        "density_kg_m3": air.density().get::<kilogram_per_cubic_meter>(),
        "saturation_pa": air.saturation_pressure().get::<pascal>(),
    }))
}
