//! What ducts bring to the rooms of a furnace's heat.

use super::question::{Gives, Model, Question};
use crate::bounds::question as bounds;
use crate::ducts::{Ducts, LeaksAt, Side, heating};
use crate::units::{celsius, in_celsius};
use crate::wire::shape::{Field, Shape};
use crate::wire::tree::Tree;
use serde_json::{Value, json};
use uom::si::f64::{MassDensity, Power, Ratio, ThermalConductance, VolumeRate};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::thermal_conductance::watt_per_kelvin;
use uom::si::volume_rate::cubic_meter_per_second;
use uom::si::{power::watt, ratio::ratio};

pub(super) const QUESTION: Question = Question {
    name: "duct_delivery",
    fields: Shape::Map(&[
        Field::needed("fan_m3_s", Shape::Number(&bounds::FAN), "Air through the furnace."),
        Field::needed("capacity_w", Shape::Number(&bounds::CAPACITY), "Heat of the furnace."),
        Field::needed("air_density_kg_m3", Shape::Number(&bounds::AIR_DENSITY), "Of that air."),
        Field::needed("supply_ua_w_k", Shape::Number(&bounds::DUCT_WALLS), "All supply ducts."),
        Field::needed(
            "supply_leak_fraction",
            Shape::Number(&bounds::DUCT_LEAK),
            "Share of the fan's air that they lose, at the registers.",
        ),
        Field::needed("return_ua_w_k", Shape::Number(&bounds::DUCT_WALLS), "All return ducts."),
        Field::needed(
            "return_leak_fraction",
            Shape::Number(&bounds::DUCT_LEAK),
            "Share of the fan's air that leaks into them, at the furnace.",
        ),
        Field::needed("indoor_c", Shape::Number(&bounds::AIR), "The rooms."),
        Field::needed("supply_zone_c", Shape::Number(&bounds::AIR), "Round the supply ducts."),
        Field::needed("return_zone_c", Shape::Number(&bounds::AIR), "Round the return ducts."),
    ]),
    gives: &[
        Gives::Number("delivery_effectiveness"),
        Gives::Number("plenum_c"),
        Gives::Number("register_c"),
    ],
    model: Model::Sure(answer),
};

fn answer(fields: &Tree) -> Value {
    let side = |conducts: &str, lost: &str, zone: &str| Side {
        conducts: ThermalConductance::new::<watt_per_kelvin>(fields.must(conducts)),
        lost: Ratio::new::<ratio>(fields.must(lost)),
        zone: celsius(fields.must(zone)),
    };
    let ducts = Ducts {
        fan: VolumeRate::new::<cubic_meter_per_second>(fields.must("fan_m3_s")),
        density: MassDensity::new::<kilogram_per_cubic_meter>(fields.must("air_density_kg_m3")),
        supply: side("supply_ua_w_k", "supply_leak_fraction", "supply_zone_c"),
        supply_leaks: LeaksAt::Registers,
        back: side("return_ua_w_k", "return_leak_fraction", "return_zone_c"),
    };
    let capacity = Power::new::<watt>(fields.must("capacity_w"));
    let air = heating(&ducts, capacity, celsius(fields.must("indoor_c")));
    json!({
        "delivery_effectiveness": air.effectiveness.get::<ratio>(),
        "plenum_c": in_celsius(air.plenum),
        "register_c": in_celsius(air.register),
    })
}
