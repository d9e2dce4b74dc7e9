//! The year of a heat cable at a station.

use super::question::{Answer, Gives, Model, Question};
use super::refuse;
use crate::bounds::question as bounds;
use crate::climate::{Atlas, Year};
use crate::error::Reason;
use crate::freeze::{CableOnPipe, cable_year};
use crate::home::{CableControl, Season, Spoken};
use crate::wire::shape::{Field, Shape};
use crate::wire::tree::Tree;
use serde_json::json;
use uom::si::f64::{Length, LinearPowerDensity, ThermalConductivity};
use uom::si::linear_power_density::watt_per_meter;
use uom::si::thermal_conductivity::watt_per_meter_kelvin;
use uom::si::{energy::kilowatt_hour, length::meter, time::hour};

pub(super) const QUESTION: Question = Question {
    name: "cable_year",
    fields: Shape::Map(&[
        Field::needed("station", super::climate::STATION, "Number of the weather station."),
        Field::needed("w_m", Shape::Number(&bounds::CABLE_POWER), "Heat, as its tag says."),
        Field::needed("length_m", Shape::Number(&bounds::CABLE_LENGTH), "Length of the cable."),
        Field::needed("control", Shape::Word(CableControl::WORDS), "What switches it."),
        Field::needed("outer_diameter_m", Shape::Number(&bounds::DIAMETER), "Of the pipe."),
        Field::needed("insulation_m", Shape::Number(&bounds::INSULATION), "0 is bare."),
        Field::needed("insulation_w_m_k", Shape::Number(&bounds::CONDUCTIVITY), "Conductivity."),
        Field::seen("on_day", Shape::Whole(&bounds::DAY), "First day with power."),
        Field::seen("off_day", Shape::Whole(&bounds::DAY), "Last day with power."),
    ]),
    gives: &[
        Gives::Number("kwh"),
        Gives::Number("needed_kwh"),
        Gives::Number("hours_on"),
        Gives::Number("freeze_risk_hours"),
    ],
    model: Model::Placed(answer),
};

fn answer(fields: &Tree, atlas: &Atlas) -> Answer {
    let season = match (fields.whole("on_day"), fields.whole("off_day")) {
        (Some(on_day), Some(off_day)) => Some(Season { on_day, off_day }),
        (Some(_), None) => return refuse("off_day", Reason::Missing),
        (None, Some(_)) => return refuse("on_day", Reason::Missing),
        (None, None) => None,
    };
    let Some(control) = fields.choice("control") else { return refuse("control", Reason::Missing) };
    let station = super::climate::station(fields, atlas)?;
    let cable = cable(fields, control, season);
    let year = cable_year(&cable, &Year::of(&station), station.freeze);
    Ok(json!({
        "kwh": year.electricity.get::<kilowatt_hour>(),
        "needed_kwh": year.needed.get::<kilowatt_hour>(),
        "hours_on": year.on.get::<hour>(),
        "freeze_risk_hours": year.freeze_risk.get::<hour>(),
    }))
}

fn cable(fields: &Tree, control: CableControl, season: Option<Season>) -> CableOnPipe {
    CableOnPipe {
        power: LinearPowerDensity::new::<watt_per_meter>(fields.must("w_m")),
        length: Length::new::<meter>(fields.must("length_m")),
        control,
        season,
        pipe_outside: Length::new::<meter>(fields.must("outer_diameter_m")),
        insulation: Length::new::<meter>(fields.must("insulation_m")),
        conductivity: ThermalConductivity::new::<watt_per_meter_kelvin>(
            fields.must("insulation_w_m_k"),
        ),
    }
}
