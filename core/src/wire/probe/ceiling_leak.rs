//! Vapour through a leak in the ceiling.

use super::question::{Answer, Gives, Model, Question};
use super::refuse;
use crate::bounds::question as bounds;
use crate::error::Reason;
use crate::moisture::{CeilingLeak, carried};
use crate::physics::moist_air::{MoistAir, RelativeHumidity};
use crate::properties::air::standard_pressure;
use crate::units::{celsius, in_celsius, insulance};
use crate::wire::shape::{Field, Shape};
use crate::wire::tree::Tree;
use serde_json::json;
use uom::si::f64::{Area, Length, MassRate, Ratio};
use uom::si::{area::square_meter, length::meter, mass_rate::gram_per_second, ratio::ratio};

pub(super) const QUESTION: Question = Question {
    name: "ceiling_leak",
    fields: Shape::Map(&[
        Field::needed("leakage_area_m2", Shape::Number(&bounds::LEAKAGE_AREA), "At 4 Pa."),
        Field::needed(
            "height_m",
            Shape::Number(&bounds::ABOVE_NEUTRAL),
            "Above the level of equal pressures.",
        ),
        Field::needed("indoor_c", Shape::Number(&bounds::AIR), "Indoor air."),
        Field::needed(
            "indoor_rh",
            Shape::Number(&bounds::RELATIVE_HUMIDITY),
            "A share, not per cent.",
        ),
        Field::needed("outdoor_c", Shape::Number(&bounds::AIR), "Outdoor air."),
        Field::needed(
            "r_inside_m2_k_w",
            Shape::Number(&bounds::INSULANCE),
            "From the room to the underside of the roof.",
        ),
        Field::needed(
            "r_outside_m2_k_w",
            Shape::Number(&bounds::INSULANCE),
            "From there to the open air.",
        ),
        Field::seen("altitude_m", Shape::Number(&bounds::ALTITUDE), "Above the sea; 0 if absent."),
    ]),
    gives: &[
        Gives::Number("vapour_g_h"),
        Gives::Number("condensable_g_h"),
        Gives::Number("surface_c"),
    ],
    model: Model::Plain(answer),
};

fn answer(fields: &Tree) -> Answer {
    let leak = CeilingLeak::new(
        Area::new::<square_meter>(fields.must("leakage_area_m2")),
        Length::new::<meter>(fields.must("height_m")),
        insulance(fields.must("r_inside_m2_k_w")),
        insulance(fields.must("r_outside_m2_k_w")),
    );
    let Some(leak) = leak else {
        // A surface between two resistances needs one of them.
        return refuse("r_outside_m2_k_w", Reason::Contradicts { other: "r_inside_m2_k_w" });
    };
    let Some(out) =
        indoors(fields).and_then(|room| carried(&leak, &room, celsius(fields.must("outdoor_c"))))
    else {
        return refuse("", Reason::NotANumber);
    };
    let grams_an_hour = |rate: MassRate| rate.get::<gram_per_second>() * 3600.0;
    Ok(json!({
        "vapour_g_h": grams_an_hour(out.vapour),
        "condensable_g_h": grams_an_hour(out.condensable),
        "surface_c": in_celsius(out.surface),
    }))
}

fn indoors(fields: &Tree) -> Option<MoistAir> {
    let pressure = standard_pressure(Length::new::<meter>(fields.number_or("altitude_m", 0.0)))?;
    let humidity = RelativeHumidity::new(Ratio::new::<ratio>(fields.must("indoor_rh")))?;
    MoistAir::new(celsius(fields.must("indoor_c")), humidity, pressure)
}
