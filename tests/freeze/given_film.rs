//! The series of resistances with a film of given strength, against hand arithmetic.

use super::{conductivity, in_fahrenheit};
use crate::harness::Table;
use uom::si::f64::{HeatTransfer, Length};
use uom::si::heat_transfer::watt_per_square_meter_kelvin;
use uom::si::length::inch;
use uom::si::linear_power_density::watt_per_meter;
use winterseam::physics::pipe::{Pipe, heat_loss_with_film};
use winterseam::units::fahrenheit;

#[test]
fn layers_and_film_add_up() {
    Table::read("freeze/python-3-11__given-film").compare(|row| {
        let pipe = Pipe {
            insulation: Length::new::<inch>(row.number("insulation_in")),
            insulation_conductivity: conductivity(row.number("insulation_w_m_k")),
            ..Pipe::thin(Length::new::<inch>(row.number("outside_in")), 0.9.into())
        };
        let (held, air) = (row.number("pipe_f"), row.number("air_f"));
        let film = row.has("film_w_m2_k").then(|| row.number("film_w_m2_k"));
        let film = film.map(HeatTransfer::new::<watt_per_square_meter_kelvin>);
        let loss = heat_loss_with_film(&pipe, fahrenheit(held), fahrenheit(air), film);
        let per_length = loss.per_length.get::<watt_per_meter>();
        vec![
            ("resistance_m_k_w", (held - air) / 1.8 / per_length),
            ("loss_w_m", per_length),
            ("surface_f", in_fahrenheit(loss.surface)),
        ]
    });
}
