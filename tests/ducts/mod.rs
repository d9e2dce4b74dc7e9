//! Ducts, their leaks and what they bring.

mod airflow;
mod arithmetic;
mod belly;
mod field;
mod fuels;
mod marched;
mod psychrolib;
#[cfg(feature = "peers")]
mod scipy_live;

use crate::harness::Row;
use uom::si::area::square_foot;
use uom::si::f64::{Area, HeatTransfer, MassDensity, Power, Ratio, ThermalConductance, VolumeRate};
use uom::si::heat_transfer::btu_it_per_hour_square_foot_degree_fahrenheit;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::power::watt;
use uom::si::ratio::ratio;
use uom::si::volume_rate::cubic_foot_per_minute;
use winterseam::ducts::{Ducts, LeaksAt, Side};
use winterseam::units::fahrenheit;

/// Watts in a Btu an hour.
const BTU_H: f64 = 0.293_071_07;

fn btu_h(heat: f64) -> Power {
    Power::new::<watt>(heat * BTU_H)
}

/// Air of 0.24 Btu/(lb·°F) and 0.075 lb/ft³ carries as much as ours of this density.
fn density() -> MassDensity {
    let carries = 1.08 * BTU_H * 1.8;
    let flow = VolumeRate::new::<cubic_foot_per_minute>(1.0).value;
    MassDensity::new::<kilogram_per_cubic_meter>(carries / flow / 1006.0)
}

fn conducts(ft2: f64, r: f64) -> ThermalConductance {
    HeatTransfer::new::<btu_it_per_hour_square_foot_degree_fahrenheit>(1.0 / r)
        * Area::new::<square_foot>(ft2)
}

fn side(row: &Row, name: &str, zone_f: f64) -> Side {
    let cell = |what: &str| {
        let column = format!("{name}_{what}");
        if row.has(&column) { row.number(&column) } else { 0.0 }
    };
    let r = if cell("r") > 0.0 { cell("r") } else { 1.0 };
    Side {
        conducts: conducts(cell("ft2"), r),
        lost: Ratio::new::<ratio>(cell("lost")),
        zone: fahrenheit(zone_f),
    }
}

fn ducts(row: &Row) -> Ducts {
    let zone = row.number("zone_f");
    let at_plenum = row.has("leaks_at") && row.text("leaks_at") == "plenum";
    Ducts {
        fan: VolumeRate::new::<cubic_foot_per_minute>(row.number("cfm")),
        density: density(),
        supply: side(row, "supply", zone),
        supply_leaks: if at_plenum { LeaksAt::Plenum } else { LeaksAt::Registers },
        back: side(row, "return", zone),
    }
}
