//! A table of the trade that leaves the film out and adds a tenth.

use super::conductivity;
use crate::harness::Table;
use uom::si::f64::Length;
use uom::si::length::inch;
use uom::si::linear_power_density::watt_per_meter;
use winterseam::physics::pipe::{Pipe, heat_loss_with_film};
use winterseam::units::fahrenheit;

/// 0.25 Btu·in/(h·ft²·°F).
const GLASS_FIBRE_W_M_K: f64 = 0.25 * 0.144_228;
const MARGIN: f64 = 1.10;

#[test]
fn insulated_metal_pipes_lose_what_the_trade_designs_for() {
    Table::read("freeze/heat-tracing-table__insulated-metal").compare(|row| {
        let pipe = Pipe {
            insulation: Length::new::<inch>(row.number("insulation_in")),
            insulation_conductivity: conductivity(GLASS_FIBRE_W_M_K),
            ..Pipe::thin(Length::new::<inch>(row.number("outside_in")), 0.9.into())
        };
        let apart = 40.0;
        let loss = heat_loss_with_film(&pipe, fahrenheit(apart), fahrenheit(0.0), None);
        let w_ft = loss.per_length.get::<watt_per_meter>() * super::FOOT_M;
        vec![("loss_w_ft_f", w_ft * MARGIN / apart)]
    });
}
