use crate::harness::{Row, Table};
use uom::si::f64::{
    Frequency, HeatTransfer, Length, ThermalConductivity, Time, VolumetricHeatCapacity,
};
use uom::si::{
    frequency::hertz, heat_transfer::watt_per_square_meter_kelvin, length::millimeter,
    ratio::ratio, thermal_conductivity::watt_per_meter_kelvin, time::second,
    volumetric_heat_capacity::joule_per_cubic_meter_kelvin,
};
use winterseam::physics::conduction::{Back, Layer, Wall};

fn layer(thickness_mm: f64, conductivity: f64, capacity: f64) -> Layer {
    Layer {
        thickness: Length::new::<millimeter>(thickness_mm),
        conductivity: ThermalConductivity::new::<watt_per_meter_kelvin>(conductivity),
        heat_capacity: VolumetricHeatCapacity::new::<joule_per_cubic_meter_kelvin>(capacity),
        sink: Frequency::new::<hertz>(0.0),
    }
}

fn wall(row: &Row) -> Wall {
    let outer =
        layer(row.number("depth_mm"), row.number("outer_w_m_k"), row.number("outer_j_m3_k"));
    let inner = layer(400.0, row.number("inner_w_m_k"), row.number("inner_j_m3_k"));
    let film = row
        .has("film_w_m2_k")
        .then(|| HeatTransfer::new::<watt_per_square_meter_kelvin>(row.number("film_w_m2_k")));
    Wall { layers: vec![outer, inner], back: Back::Held, film }
}

#[test]
fn a_step_goes_into_a_body_as_the_closed_forms_say() {
    Table::read("hot_water/closed-form-conduction").compare(|row| {
        let depth = Length::new::<millimeter>(row.number("depth_mm"));
        let share = wall(row).at(depth).after(Time::new::<second>(row.number("after_s")));
        vec![("share", share.get::<ratio>())]
    });
}
