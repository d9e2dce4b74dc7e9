//! Air through a whole home.

use super::question::{Answer, Gives, Model, Question};
use super::refuse;
use crate::air::enhanced::{self, Foundation, Pressing};
use crate::air::infiltration::{Coefficients, Storeys, flow};
use crate::bounds::question as bounds;
use crate::error::{FieldError, Reason};
use crate::home::Shelter;
use crate::home::Spoken;
use crate::physics::power_law::{PowerLaw, Reference};
use crate::units::{celsius, warmer_by};
use crate::wire::shape::{Field, Shape};
use crate::wire::tree::Tree;
use serde_json::{Value, json};
use uom::si::f64::{Area, Ratio, TemperatureInterval, Velocity};
use uom::si::volume_rate::cubic_meter_per_second;
use uom::si::{area::square_meter, ratio::ratio, velocity::meter_per_second};

/// Fields that only the enhanced model has.
const ENHANCED: [&str; 3] = ["exponent", "flue", "foundation"];

pub(super) const QUESTION: Question = Question {
    name: "infiltration",
    fields: Shape::Map(&[
        Field::needed("model", Shape::Word(&["basic", "enhanced"]), "Model of the handbook."),
        Field::needed("leakage_area_m2", Shape::Number(&bounds::LEAKAGE_AREA), "At 4 Pa."),
        Field::needed("indoor_c", Shape::Number(&bounds::AIR), "Indoor air."),
        Field::needed("outdoor_c", Shape::Number(&bounds::AIR), "Outdoor air."),
        Field::needed("wind_m_s", Shape::Number(&bounds::WIND), "Wind at the station."),
        Field::needed("shelter_class", Shape::Whole(&bounds::SHELTER_CLASS), "1 open to 5."),
        Field::needed("storeys", Shape::Whole(&bounds::STOREYS), "Storeys."),
        Field::seen("exponent", Shape::Number(&bounds::EXPONENT), "Enhanced model only."),
        Field::seen("flue", Shape::Flag, "Enhanced model only."),
        Field::seen("foundation", Shape::Word(&["slab", "crawl_space"]), "Enhanced model only."),
    ]),
    gives: &[
        Gives::Number("flow_m3_s"),
        Gives::NumberOrNull("stack_m3_s"),
        Gives::NumberOrNull("wind_m3_s"),
    ],
    model: Model::Plain(answer),
};

fn answer(fields: &Tree) -> Answer {
    let enhanced_asked = fields.get("model").text() == Some("enhanced");
    let wrong = if enhanced_asked { missing(fields) } else { foreign(fields) };
    let Some(asked) = Asked::of(fields) else { return refuse("", Reason::NotANumber) };
    match wrong.is_empty() {
        false => Err(wrong),
        true if enhanced_asked => enhanced(fields, &asked),
        true => Ok(basic(&asked)),
    }
}

/// What only the enhanced model has.
fn foreign(fields: &Tree) -> Vec<FieldError> {
    let seen = ENHANCED.iter().filter(|key| fields.get(key).is_seen());
    seen.map(|key| FieldError::at(*key, Reason::Contradicts { other: "model" })).collect()
}

/// What the enhanced model cannot do without.
fn missing(fields: &Tree) -> Vec<FieldError> {
    let absent = ENHANCED.iter().filter(|key| **key != "exponent" && !fields.get(key).is_seen());
    absent.map(|key| FieldError::at(*key, Reason::Missing)).collect()
}

/// What both models ask for.
struct Asked {
    leakage_area: Area,
    apart: TemperatureInterval,
    wind: Velocity,
    shelter: Shelter,
    storeys: Storeys,
}

impl Asked {
    fn of(fields: &Tree) -> Option<Self> {
        let class = usize::from(fields.must_count("shelter_class"));
        let of_class = |choice: &&Shelter| usize::from(choice.class()) == class;
        let indoors = celsius(fields.must("indoor_c"));
        Some(Self {
            leakage_area: Area::new::<square_meter>(fields.must("leakage_area_m2")),
            apart: warmer_by(indoors, celsius(fields.must("outdoor_c"))),
            wind: Velocity::new::<meter_per_second>(fields.must("wind_m_s")),
            shelter: *Shelter::CHOICES.iter().find(of_class)?,
            storeys: Storeys::from_count(fields.must_count("storeys"))?,
        })
    }
}

fn basic(asked: &Asked) -> Value {
    let home = Coefficients::of(asked.shelter, asked.storeys);
    let flow = flow(asked.leakage_area, asked.apart, asked.wind, &home);
    let flow = flow.best.get::<cubic_meter_per_second>();
    json!({"flow_m3_s": flow, "stack_m3_s": null, "wind_m3_s": null})
}

fn enhanced(fields: &Tree, asked: &Asked) -> Answer {
    let exponent = Ratio::new::<ratio>(fields.number_or("exponent", Pressing::EXPONENT));
    let area = asked.leakage_area;
    let Some(leaks) = PowerLaw::of_area(area, Reference::FOUR_PASCALS, exponent) else {
        return refuse("exponent", Reason::NotANumber);
    };
    let foundation = match fields.get("foundation").text() {
        Some("slab") => Foundation::Slab,
        _ => Foundation::CrawlSpace,
    };
    let flue = fields.get("flue").flag() == Some(true);
    let home = Pressing::of(asked.shelter, asked.storeys, flue, foundation);
    let air = enhanced::flow(&leaks, asked.apart, asked.wind, &home);
    Ok(json!({
        "flow_m3_s": air.flow.best.get::<cubic_meter_per_second>(),
        "stack_m3_s": air.stack.get::<cubic_meter_per_second>(),
        "wind_m3_s": air.wind.get::<cubic_meter_per_second>(),
    }))
}
