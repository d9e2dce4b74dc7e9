//! A furnace above a belly, balanced by hand.

use super::{btu_h, conducts, density};
use crate::harness::{Row, Table};
use uom::si::f64::{Power, Ratio, ThermalConductance, VolumeRate};
use uom::si::ratio::ratio;
use uom::si::volume_rate::cubic_foot_per_minute;
use winterseam::ducts::{Asked, Belly, Cycle, Ducts, LeaksAt, Side, cycle};
use winterseam::units::fahrenheit;

const BELLY_FT2: f64 = 924.0;
const FAN_CFM: f64 = 800.0;
const APART_F: f64 = 50.0;

/// Need of the rooms above a belly that no duct warms, Btu/h: other parts, leaks and floor.
fn need(belly_r: f64) -> f64 {
    let floor = BELLY_FT2 / (2.5 + belly_r);
    (200.0 + 1.08 * 60.0 + floor) * APART_F
}

/// What the fan's leaks draw in beyond the 60 cfm, Btu/h.
fn drawn_in(lost: f64) -> f64 {
    let fan = FAN_CFM * lost;
    1.08 * ((60.0 * 60.0 + fan * fan).sqrt() - 60.0) * APART_F
}

fn on_and_off(row: &Row) -> Cycle {
    let (belly_r, lost) = (row.number("belly_r"), row.number("lost"));
    let side = |conducts: ThermalConductance, lost: f64| Side {
        conducts,
        lost: Ratio::new::<ratio>(lost),
        zone: fahrenheit(20.0),
    };
    let ducts = Ducts {
        fan: VolumeRate::new::<cubic_foot_per_minute>(FAN_CFM),
        density: density(),
        supply: side(conducts(250.0, 6.0), lost),
        supply_leaks: LeaksAt::Registers,
        back: side(ThermalConductance::default(), 0.0),
    };
    let belly = Belly {
        to_rooms: conducts(BELLY_FT2, 2.5),
        beyond: conducts(BELLY_FT2, belly_r),
        beyond_is: fahrenheit(20.0),
        kept_warm: Ratio::new::<ratio>(row.number("kept_warm")),
    };
    let asked = Asked {
        capacity: btu_h(47_520.0),
        need: btu_h(need(belly_r)),
        drawn_in: btu_h(drawn_in(lost)),
        indoor: fahrenheit(70.0),
    };
    cycle(&ducts, &belly, &asked)
}

#[test]
fn belly_and_furnace_settle_as_by_hand() {
    Table::read("ducts/belly-balance").compare(|row| {
        let hour = on_and_off(row);
        let efficiency: Ratio = btu_h(need(row.number("belly_r"))) / hour.given;
        let all = [("on", hour.on.get::<ratio>()), ("efficiency", efficiency.get::<ratio>())];
        all.into_iter().filter(|(column, _)| row.has(column)).collect()
    });
}

/// Sealing ducts leaves the belly and its pipes colder.
#[test]
fn what_is_no_longer_lost_no_longer_warms() {
    let tables = Table::read("ducts/belly-balance");
    let belly = |id: &str| {
        let row = tables.rows().iter().find(|row| row.text("id") == id).expect("a row");
        on_and_off(row).belly
    };
    assert!(belly("row-25") > belly("row-24") && belly("row-24") > belly("row-23"));
}

/// A furnace whose leaks draw in more than it brings runs all the time, and no belly gets hotter than
/// its plenum.
#[test]
fn a_hopeless_furnace_runs_all_the_time() {
    let table = Table::read("ducts/belly-balance");
    let row = &table.rows()[2];
    let side = |lost: f64| Side {
        conducts: conducts(250.0, 6.0),
        lost: Ratio::new::<ratio>(lost),
        zone: fahrenheit(20.0),
    };
    let ducts = Ducts {
        fan: VolumeRate::new::<cubic_foot_per_minute>(FAN_CFM),
        density: density(),
        supply: side(0.6),
        supply_leaks: LeaksAt::Registers,
        back: Side { conducts: ThermalConductance::default(), ..side(0.0) },
    };
    let belly = Belly {
        to_rooms: conducts(BELLY_FT2, 2.5),
        beyond: conducts(BELLY_FT2, row.number("belly_r")),
        beyond_is: fahrenheit(20.0),
        kept_warm: Ratio::new::<ratio>(1.0),
    };
    let asked = Asked {
        capacity: btu_h(47_520.0),
        need: btu_h(need(12.0)),
        drawn_in: btu_h(40_000.0),
        indoor: fahrenheit(70.0),
    };
    let hour = cycle(&ducts, &belly, &asked);
    assert!((hour.on.get::<ratio>() - 1.0).abs() < 1e-12);
    assert!(hour.belly > fahrenheit(20.0) && hour.belly < fahrenheit(125.0), "{hour:?}");
}

/// A furnace that need not run gives nothing.
#[test]
fn no_need_no_heat() {
    let none = Asked {
        capacity: btu_h(47_520.0),
        need: Power::default(),
        drawn_in: Power::default(),
        indoor: fahrenheit(70.0),
    };
    let row = &Table::read("ducts/belly-balance").rows()[1].number("lost");
    assert!(*row > 0.0);
    let side = Side {
        conducts: conducts(250.0, 6.0),
        lost: Ratio::new::<ratio>(*row),
        zone: fahrenheit(20.0),
    };
    let ducts = Ducts {
        fan: VolumeRate::new::<cubic_foot_per_minute>(FAN_CFM),
        density: density(),
        supply: side,
        supply_leaks: LeaksAt::Registers,
        back: Side { conducts: ThermalConductance::default(), lost: Ratio::default(), ..side },
    };
    let belly = Belly {
        to_rooms: conducts(BELLY_FT2, 2.5),
        beyond: conducts(BELLY_FT2, 12.0),
        beyond_is: fahrenheit(20.0),
        kept_warm: Ratio::default(),
    };
    assert!(cycle(&ducts, &belly, &none).on.get::<ratio>().abs() < 1e-12);
}
