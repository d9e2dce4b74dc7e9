//! Random ducts against a march along them, and against enthalpies of moist air.

use super::psychrolib::air_c;
use crate::harness::{Tally, numbers, peer};
use uom::si::f64::{MassDensity, Power, Ratio, ThermalConductance, VolumeRate};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::power::watt;
use uom::si::ratio::ratio;
use uom::si::thermal_conductance::watt_per_kelvin;
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::volume_rate::cubic_meter_per_second;
use winterseam::ducts::{Coil, Ducts, LeaksAt, Side, cooling, heating};
use winterseam::units::celsius;

/// The solver is held to eleven digits.
const MARCHED: f64 = 1e-8;
/// Both sides read the same formula of enthalpy; the vapour pressure over water is fitted apart, by
/// less than a ten-thousandth.
const ENTHALPY: f64 = 5e-4;

fn side(conducts: f64, lost: f64, zone_c: f64) -> Side {
    Side {
        conducts: ThermalConductance::new::<watt_per_kelvin>(conducts),
        lost: Ratio::new::<ratio>(lost),
        zone: celsius(zone_c),
    }
}

fn ducts(fan: f64, density: f64, supply: Side, back: Side) -> Ducts {
    Ducts {
        fan: VolumeRate::new::<cubic_meter_per_second>(fan),
        density: MassDensity::new::<kilogram_per_cubic_meter>(density),
        supply,
        supply_leaks: LeaksAt::Registers,
        back,
    }
}

#[test]
fn random_ducts_bring_what_a_solver_says() {
    let mut tally = Tally::default();
    for (at, line) in peer("ducts.py").iter().enumerate() {
        let id = format!("ducts {at}");
        if line.starts_with("0,") {
            heat(&id, numbers(line), &mut tally);
        } else {
            cold(&id, numbers(line), &mut tally);
        }
    }
    tally.report("ducts/scipy-live");
}

fn heat(id: &str, given: [f64; 14], tally: &mut Tally) {
    let [_, fan, power, density, ks, ls, kr, lr, room, zs, zr, theirs @ ..] = given;
    let ducts = ducts(fan, density, side(ks, ls, zs), side(kr, lr, zr));
    let air = heating(&ducts, Power::new::<watt>(power), celsius(room));
    let ours = [
        air.effectiveness.get::<ratio>(),
        air.plenum.get::<degree_celsius>(),
        air.register.get::<degree_celsius>(),
    ];
    for ((column, ours), theirs) in
        ["effectiveness", "plenum", "register"].iter().zip(ours).zip(theirs)
    {
        tally.note(id, column, (ours, theirs), (ours - theirs).abs() <= MARCHED, None);
    }
}

fn cold(id: &str, given: [f64; 13], tally: &mut Tally) {
    let [_, fan, power, sensible, ks, ls, kr, lr, room, room_rh, zone, zone_rh, theirs] = given;
    let ducts = ducts(fan, 1.2, side(ks, ls, zone), side(kr, lr, zone));
    let coil = Coil { takes: Power::new::<watt>(power), sensible: Ratio::new::<ratio>(sensible) };
    let ours = cooling(&ducts, coil, &air_c(room, room_rh), &air_c(zone, zone_rh));
    let ours = ours.get::<ratio>();
    tally.note(id, "effectiveness", (ours, theirs), (ours - theirs).abs() <= ENTHALPY, None);
}
