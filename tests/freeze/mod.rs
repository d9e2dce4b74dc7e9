//! Pipes in the cold and heat cables.

mod ashve_guide;
mod cable_heat;
mod coolprop;
mod freezing;
mod given_film;
mod heat_tracing_table;
#[cfg(feature = "peers")]
mod live_pipes;
mod missouri_guide;
mod nusselt;
#[cfg(feature = "peers")]
mod typical_years;

use crate::harness::Row;
use uom::si::f64::{Length, ThermalConductivity, ThermodynamicTemperature, Velocity};
use uom::si::length::inch;
use uom::si::thermal_conductivity::watt_per_meter_kelvin;
use uom::si::velocity::mile_per_hour;
use winterseam::freeze::{PipeKind, PipeSize};
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

/// The usual pipe of a row with its foam, and what it is made of.
fn usual(row: &Row, size: &str) -> (PipeKind, Pipe) {
    let kind = match row.text("pipe") {
        "copper_l" => PipeKind::CopperL,
        "pex" => PipeKind::Pex,
        "cpvc" => PipeKind::Cpvc,
        "steel" => PipeKind::Steel,
        other => panic!("no pipe {other}"),
    };
    let size = match size {
        "half" => PipeSize::Half,
        "three_quarters" => PipeSize::ThreeQuarters,
        "one" => PipeSize::One,
        other => panic!("no size {other}"),
    };
    let (bare, foam) = (kind.bare(size), row.number("insulation_in"));
    let wrapped = Pipe {
        insulation: Length::new::<inch>(foam),
        insulation_conductivity: conductivity(0.036),
        emissivity: if foam > 0.0 { 0.9.into() } else { bare.emissivity },
        ..bare
    };
    (kind, wrapped)
}

fn windy(air_f: f64, wind_mph: f64) -> Surroundings {
    Surroundings { air: fahrenheit(air_f), wind: Velocity::new::<mile_per_hour>(wind_mph) }
}

fn in_fahrenheit(t: ThermodynamicTemperature) -> f64 {
    t.get::<uom::si::thermodynamic_temperature::kelvin>() * 1.8 - 459.67
}
