//! Pipes in the cold and heat cables.

mod ashve_guide;
mod coolprop;
mod given_film;
mod heat_tracing_table;
mod missouri_guide;
mod nusselt;
#[cfg(feature = "peers")]
mod typical_years;

use crate::harness::Row;
use uom::si::f64::{Length, ThermalConductivity, ThermodynamicTemperature, Velocity};
use uom::si::length::inch;
use uom::si::thermal_conductivity::watt_per_meter_kelvin;
use uom::si::velocity::mile_per_hour;
use winterseam::physics::film::Surroundings;
use winterseam::physics::pipe::Pipe;
use winterseam::units::fahrenheit;

/// Metres in a foot.
const FOOT_M: f64 = 0.3048;
/// Watts in a Btu an hour, international table.
const BTU_PER_HOUR_W: f64 = 0.293_071_07;

fn conductivity(w_m_k: f64) -> ThermalConductivity {
    ThermalConductivity::new::<watt_per_meter_kelvin>(w_m_k)
}

/// The bare pipe of a row.
fn bare(row: &Row, emissivity: f64) -> Pipe {
    Pipe {
        inside: Length::new::<inch>(row.number("inside_in")),
        wall: conductivity(row.number("wall_w_m_k")),
        ..Pipe::thin(Length::new::<inch>(row.number("outside_in")), emissivity.into())
    }
}

/// The pipe of a row with its insulation.
fn insulated(row: &Row) -> Pipe {
    Pipe {
        insulation: Length::new::<inch>(row.number("insulation_in")),
        insulation_conductivity: conductivity(row.number("insulation_w_m_k")),
        ..bare(row, row.number("emissivity"))
    }
}

fn windy(air_f: f64, wind_mph: f64) -> Surroundings {
    Surroundings { air: fahrenheit(air_f), wind: Velocity::new::<mile_per_hour>(wind_mph) }
}

fn in_fahrenheit(t: ThermodynamicTemperature) -> f64 {
    t.get::<uom::si::thermodynamic_temperature::kelvin>() * 1.8 - 459.67
}
