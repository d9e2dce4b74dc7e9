//! A heat cable as a person saw it: what was not seen is filled with what is usual, as a range.

use super::cable::CableOnPipe;
use crate::home::{CableControl, HeatCable, Season};
use crate::sources::freeze::{
    CABLE_LENGTH, CABLE_POWER, PIPE_FOAM, PIPE_FOAM_THICKNESS, PIPE_SIZES,
};
use crate::sources::{Confidence, Figure, Source};
use crate::units::linear_power_density::watt_per_foot;
use uom::si::f64::{Length, LinearPowerDensity, ThermalConductivity};
use uom::si::length::{foot, inch};
use uom::si::thermal_conductivity::watt_per_meter_kelvin;

/// A heat cable with a figure for everything: seen, or what is usual.
#[derive(Debug, Clone, PartialEq)]
pub struct CableSeen {
    /// Heat for each length.
    pub power: Figure<LinearPowerDensity>,
    /// Length of cable and pipe.
    pub length: Figure<Length>,
    /// Outside diameter of the pipe.
    pub pipe_outside: Figure<Length>,
    /// Thickness of the insulation.
    pub insulation: Figure<Length>,
    /// Conductivity of the insulation.
    pub conductivity: Figure<ThermalConductivity>,
    /// What switches it; `None` is not seen.
    pub control: Option<CableControl>,
    /// Days of plugging in and out; `None` is not told.
    pub season: Option<Season>,
}

impl CableSeen {
    /// Fills what was not seen; `None` where there is no cable.
    ///
    /// ```
    /// use winterseam::freeze::CableSeen;
    /// use winterseam::home::HeatCable;
    /// use winterseam::units::linear_power_density::watt_per_foot;
    ///
    /// # let unseen = HeatCable {
    /// #     present: true, length: None, power: None, control: None, season: None,
    /// #     pipe_outside: None, insulation: None, signs: Default::default(),
    /// #     ground_fault_outlet: None, thermostat_proved: None, someone_plugs_in: None,
    /// # };
    /// let cable = CableSeen::of(&unseen).expect("a cable is there");
    /// assert!(cable.power.low < cable.power.best && cable.power.best < cable.power.high);
    /// ```
    #[must_use]
    pub fn of(cable: &HeatCable) -> Option<Self> {
        let watts = |w| LinearPowerDensity::new::<watt_per_foot>(w);
        let feet = |l| Length::new::<foot>(l);
        let inches = |l| Length::new::<inch>(l);
        let foam = [0.036, 0.033, 0.040].map(ThermalConductivity::new::<watt_per_meter_kelvin>);
        cable.present.then(|| Self {
            power: told(cable.power, "power_w_per_ft")
                .unwrap_or_else(|| usual([6.0, 3.0, 12.0].map(watts), &CABLE_POWER)),
            length: told(cable.length, "length_ft")
                .unwrap_or_else(|| usual([12.0, 6.0, 30.0].map(feet), &CABLE_LENGTH)),
            pipe_outside: told(cable.pipe_outside, "pipe_outside_in")
                .unwrap_or_else(|| usual([0.875, 0.625, 1.125].map(inches), &PIPE_SIZES)),
            insulation: told(cable.insulation, "insulation_in")
                .unwrap_or_else(|| usual([0.375, 0.0, 0.5].map(inches), &PIPE_FOAM_THICKNESS)),
            conductivity: usual(foam, &PIPE_FOAM),
            control: believed(cable),
            season: cable.season,
        })
    }

    /// The cable with the best value of everything. A control that was not seen is taken for a
    /// thermostat, so that no saving is promised from it.
    #[must_use]
    pub fn best(&self) -> CableOnPipe {
        CableOnPipe {
            power: self.power.best,
            length: self.length.best,
            control: self.control.unwrap_or(CableControl::Thermostat),
            season: self.season,
            pipe_outside: self.pipe_outside.best,
            insulation: self.insulation.best,
            conductivity: self.conductivity.best,
        }
    }
}

/// What switches a cable, as far as it can be believed: a thermostat that did not switch when it was
/// tried may hold the cable on or off.
fn believed(cable: &HeatCable) -> Option<CableControl> {
    let failed = cable.thermostat_proved == Some(false);
    cable.control.filter(|control| !(failed && *control == CableControl::Thermostat))
}

fn told<Q: Copy + PartialOrd>(seen: Option<Q>, field: &str) -> Option<Figure<Q>> {
    let path = format!("heat_cable.{field}");
    seen.map(|q| Figure::exact(q, Confidence::Seen, &[]).from_inputs([path]))
}

fn usual<Q: Copy + PartialOrd>([best, low, high]: [Q; 3], source: &'static Source) -> Figure<Q> {
    Figure::exact(best, Confidence::Guessed, &[source]).between(low, high)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn seen(power: Option<LinearPowerDensity>) -> HeatCable {
        HeatCable {
            present: true,
            length: None,
            power,
            control: None,
            season: None,
            pipe_outside: None,
            insulation: None,
            signs: crate::home::CableSigns::default(),
            ground_fault_outlet: None,
            thermostat_proved: None,
            someone_plugs_in: None,
        }
    }

    #[test]
    fn a_home_without_a_cable_has_none_filled_in() {
        let none = HeatCable { present: false, ..seen(None) };
        assert!(CableSeen::of(&none).is_none());
    }

    #[test]
    fn what_was_read_on_the_tag_leaves_no_range() {
        let tag = LinearPowerDensity::new::<watt_per_foot>(6.0);
        let power = CableSeen::of(&seen(Some(tag))).expect("a cable is there").power;
        assert_eq!([power.low, power.best, power.high], [tag; 3]);
        assert_eq!(power.confidence, Confidence::Seen);
        assert_eq!(power.inputs, ["heat_cable.power_w_per_ft"]);
    }

    #[test]
    fn what_nobody_saw_is_a_guess_with_its_source() {
        let cable = CableSeen::of(&seen(None)).expect("a cable is there");
        assert_eq!(cable.pipe_outside.confidence, Confidence::Guessed);
        assert!(cable.pipe_outside.sources.contains(&&PIPE_SIZES));
        assert!(cable.insulation.low < cable.insulation.best);
    }

    #[test]
    fn an_unseen_control_promises_nothing() {
        let cable = CableSeen::of(&seen(None)).expect("a cable is there").best();
        assert_eq!(cable.control, CableControl::Thermostat);
    }
}
