//! One draw: a home in which everything unknown is given a value.

use crate::air::components::usual_leakage;
use crate::air::whole_home;
use crate::ducts;
use crate::freeze::CableSeen;
use crate::home::{Building, CableControl, Fuel, Gap, HeatCable, Home, Shelter, WaterHeater};
use crate::hot_water::HeaterSeen;
use crate::sources::{Figure, Source};
use crate::units::fahrenheit;
use uom::si::f64::{Area, Length, Ratio};
use uom::si::length::inch;
use uom::si::ratio::ratio;

/// Which end of what is possible is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Draw {
    /// Everything on the side of less energy.
    Low,
    /// As read, and what is usual for the rest.
    Best,
    /// Everything on the side of more energy.
    High,
}

impl Draw {
    /// All draws of a first range.
    pub const ALL: [Self; 3] = [Self::Low, Self::Best, Self::High];

    fn pick<T>(self, low: T, best: T, high: T) -> T {
        match self {
            Self::Low => low,
            Self::Best => best,
            Self::High => high,
        }
    }

    fn end<Q: Copy>(self, figure: &Figure<Q>) -> Q {
        self.pick(figure.low, figure.best, figure.high)
    }

    /// Half of the way to an end, as ratios go.
    fn halfway(self, area: &Figure<Area>) -> Area {
        let end: Ratio = self.end(area) / area.best;
        area.best * crate::math::pow(end.get::<ratio>(), HALFWAY)
    }

    fn ratio(self, low: f64, best: f64, high: f64) -> Ratio {
        Ratio::new::<ratio>(self.pick(low, best, high))
    }
}

/// Shell, leaks, ducts and size of a home are unknown apart from each other, and hardly all at their
/// ends at once: of four such parts the squares add up to half of their sum. So each is drawn half of
/// the way.
const HALFWAY: f64 = 0.5;

/// A tape is read to a sixteenth of an inch either way.
const TAPE_IN: f64 = 1.0 / 16.0;
/// A gap that was seen is at least a hair wide.
const HAIR_IN: f64 = 0.01;

/// Sources of the ranges drawn from.
pub(super) const SOURCES: &[&Source] = &[&crate::sources::trade::DRAWN_RANGES];

/// A home drawn at one end of what it could be.
#[must_use]
pub fn draw(home: &Home, draw: Draw) -> Home {
    let mut drawn = home.clone();
    let building = &mut drawn.building;
    building.setpoint.get_or_insert(fahrenheit(draw.pick(65.0, 68.0, 72.0)));
    building.shelter.get_or_insert(draw.pick(
        Shelter::NeighboursClose,
        Shelter::NeighboursApart,
        Shelter::HomesAcrossRoad,
    ));
    building.infiltration_error.get_or_insert(draw.ratio(-1.0, 0.0, 1.0));
    building.shell_off.get_or_insert(draw.ratio(-HALFWAY, 0.0, HALFWAY));
    let lost = ducts::lost(home);
    drawn.ducts.lost.get_or_insert(lost.best + (draw.end(&lost) - lost.best) * HALFWAY);
    draw_size(building, draw);
    let leakage = whole_home::leakage(building);
    let tested = building.leak_test.is_some();
    let drawn_leakage = if tested { draw.end(&leakage) } else { draw.halfway(&leakage) };
    building.leakage.get_or_insert(drawn_leakage);
    let heating = &mut drawn.heating;
    heating.efficiency = heating.efficiency.or(heating.fuel.map(|fuel| efficiency(fuel, draw)));
    drawn.gaps = home.gaps.iter().map(|gap| drawn_gap(gap, draw)).collect();
    if let Some(seen) = HeaterSeen::of(home) {
        drawn.people.count = home.people.count.or(Some(draw.pick(1, 2, 4)));
        drawn.water_heater = drawn_heater(&home.water_heater, &seen, draw);
    }
    drawn.cable = home.cable.as_ref().map(|cable| drawn_cable(cable, draw));
    drawn
}

/// The size of a home of which nothing but its sections is known; of one that nobody described at all
/// it stays unknown.
fn draw_size(building: &mut Building, draw: Draw) {
    if whole_home::is_known(building) {
        let [least, usual, most] = building.sizes();
        *building = building.of_size(draw.pick(least, usual, most));
    }
}

/// Less efficient is more energy.
fn efficiency(fuel: Fuel, draw: Draw) -> Ratio {
    match fuel {
        Fuel::Electricity => draw.ratio(1.0, 1.0, 1.0),
        Fuel::HeatPump => draw.ratio(2.8, 2.2, 1.6),
        Fuel::NaturalGas | Fuel::Propane => draw.ratio(0.92, 0.78, 0.70),
        Fuel::FuelOil | Fuel::Kerosene => draw.ratio(0.84, 0.76, 0.68),
        Fuel::Wood => draw.ratio(0.75, 0.65, 0.50),
        Fuel::Pellets => draw.ratio(0.80, 0.78, 0.70),
    }
}

/// Least, read and most width.
fn widths(gap: &Gap, read: Length) -> [Length; 3] {
    let (tape, hair) = (Length::new::<inch>(TAPE_IN), Length::new::<inch>(HAIR_IN));
    let (least, most) = gap.width_within.unwrap_or((read - tape, read + tape));
    [least.max(hair.min(read)), read, most]
}

fn drawn_gap(gap: &Gap, draw: Draw) -> Gap {
    let width = gap.width.map(|read| {
        let [least, read, most] = widths(gap, read);
        draw.pick(least, read, most)
    });
    Gap {
        width,
        leakage: gap.leakage.or(usual_leakage(gap).map(|figure| draw.end(&figure))),
        next_skin: gap.next_skin.or(Some(draw.ratio(0.5, 1.0, 10.0))),
        seal_leaves: gap.seal_leaves.or(match draw {
            Draw::Low => Some(Ratio::new::<ratio>(0.5)),
            Draw::Best => None,
            Draw::High => Some(Ratio::new::<ratio>(0.05)),
        }),
        ..gap.clone()
    }
}

fn drawn_heater(heater: &WaterHeater, seen: &HeaterSeen, draw: Draw) -> WaterHeater {
    WaterHeater {
        factor: Some(draw.end(&seen.factor)),
        volume: Some(draw.end(&seen.volume)),
        // What the tap shows is not drawn, so that turning it down changes the tank in every draw.
        stored: heater.tap.is_none().then(|| draw.end(&seen.stored)),
        near_pipe: Some(draw.end(&seen.near_pipe)),
        thirst: Some(draw.end(&seen.thirst)),
        follows_outdoors: Some(draw.end(&seen.follows_outdoors)),
        shower: heater.shower.or(Some(draw.end(&seen.shower))),
        sleeve: heater.sleeve.or(Some(draw == Draw::Low)),
        ..heater.clone()
    }
}

fn tag(cable: &HeatCable, draw: Draw) -> Ratio {
    if cable.power.is_some() { draw.ratio(0.9, 1.0, 1.1) } else { Ratio::new::<ratio>(1.0) }
}

/// The cable with its least, usual or most; a control that nobody saw is drawn as well.
fn drawn_cable(cable: &HeatCable, draw: Draw) -> HeatCable {
    let Some(seen) = CableSeen::of(cable) else { return cable.clone() };
    HeatCable {
        length: Some(draw.end(&seen.length)),
        // A tag is kept to within a tenth, by cable and by voltage.
        power: Some(draw.end(&seen.power) * tag(cable, draw)),
        pipe_outside: Some(draw.end(&seen.pipe_outside)),
        insulation: Some(draw.end(&seen.insulation)),
        control: seen.control.or(Some(draw.pick(
            CableControl::Thermostat,
            CableControl::Thermostat,
            CableControl::AlwaysOn,
        ))),
        ..cable.clone()
    }
}
