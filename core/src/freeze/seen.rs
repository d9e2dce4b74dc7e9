//! A heat cable as a person saw it: what was not seen is filled with what is usual, as a range.

use super::basis::Basis;
use super::cable::{CableOnPipe, CableYear};
use crate::home::{CableControl, HeatCable, Season};
use crate::sources::freeze::{
    CABLE_HOLD, CABLE_LENGTH, CABLE_POWER, CABLE_SELF_REGULATING, CABLE_THERMOSTAT,
    CHURCHILL_CHU_1975, PIPE_FOAM, PIPE_FOAM_THICKNESS, PIPE_SIZES,
};
use crate::sources::{Confidence, Figure, Source};
use crate::units::linear_power_density::watt_per_foot;
use uom::si::f64::{Energy, Length, LinearPowerDensity, ThermalConductivity, Time};
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

/// The year of a heat cable as figures.
#[derive(Debug, Clone, PartialEq)]
pub struct CableFigures {
    /// Electricity that it used.
    pub electricity: Figure<Energy>,
    /// Heat that holds the pipe at 40 °F all year.
    pub needed: Figure<Energy>,
    /// Time with power.
    pub on: Figure<Time>,
    /// Time below freezing without power, or with less than the pipe loses at 0 °C.
    pub freeze_risk: Figure<Time>,
}

/// An end of the range of a figure, or its middle.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum End {
    Low,
    Best,
    High,
}

impl End {
    fn of<Q: Copy>(self, figure: &Figure<Q>) -> Q {
        match self {
            Self::Low => figure.low,
            Self::Best => figure.best,
            Self::High => figure.high,
        }
    }

    fn other(self) -> Self {
        match self {
            Self::Low => Self::High,
            Self::Best => Self::Best,
            Self::High => Self::Low,
        }
    }
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
            control: cable.control,
            season: cable.season,
        })
    }

    /// The cable with the best value of everything. A control that was not seen is taken for a
    /// thermostat, so that no saving is promised from it.
    #[must_use]
    pub fn best(&self) -> CableOnPipe {
        self.case(End::Best, End::Best)
    }

    /// The year as figures, from a model of the year of one definite cable.
    ///
    /// Electricity and need lie between the smallest cable on the best kept pipe and the largest on
    /// the worst kept; the risk between the strongest on the best kept and the weakest on the worst.
    ///
    /// ```
    /// # use winterseam::freeze::{CableSeen, over_hours};
    /// # use winterseam::home::{CableControl, HeatCable};
    /// # use winterseam::units::celsius;
    /// # let tag_worn = HeatCable {
    /// #     present: true, length: None, power: None, control: Some(CableControl::AlwaysOn),
    /// #     season: None, pipe_outside: None, insulation: None, signs: Default::default(),
    /// #     ground_fault_outlet: None, thermostat_proved: None, someone_plugs_in: None,
    /// # };
    /// let cable = CableSeen::of(&tag_worn).expect("a cable is there");
    /// let air = vec![celsius(-5.0); 8760];
    /// let year = cable.year(|cable| over_hours(cable, &air, None));
    /// assert!(year.electricity.low < year.electricity.best);
    /// ```
    #[must_use]
    pub fn year(&self, model: impl Fn(&CableOnPipe) -> CableYear) -> CableFigures {
        let run = |cable, cold| model(&self.case(cable, cold));
        let best = run(End::Best, End::Best);
        let (small, large) = (run(End::Low, End::Low), run(End::High, End::High));
        let (strong, weak) = (run(End::High, End::Low), run(End::Low, End::High));
        let (cable, pipe) = (self.cable_basis(), self.pipe_basis());
        let both = cable.clone().and(&pipe);
        CableFigures {
            electricity: cable.figure(best.electricity, (small.electricity, large.electricity)),
            needed: pipe.figure(best.needed, (small.needed, large.needed)),
            on: cable.figure(best.on, (small.on, large.on)),
            freeze_risk: both.figure(best.freeze_risk, (strong.freeze_risk, weak.freeze_risk)),
        }
    }

    /// `cable` picks the end for what gives heat, `cold` for what loses it.
    fn case(&self, cable: End, cold: End) -> CableOnPipe {
        let unseen =
            if cable == End::High { CableControl::AlwaysOn } else { CableControl::Thermostat };
        CableOnPipe {
            power: cable.of(&self.power),
            length: cable.of(&self.length),
            control: self.control.unwrap_or(unseen),
            season: self.season,
            pipe_outside: cold.of(&self.pipe_outside),
            insulation: cold.other().of(&self.insulation),
            conductivity: cold.of(&self.conductivity),
        }
    }

    fn cable_basis(&self) -> Basis {
        let control = self.control.and_then(|c| told(Some(c), "control"));
        let control = control.map_or_else(|| Basis::guess(&CABLE_THERMOSTAT), |c| Basis::of(&c));
        let basis = Basis::of(&self.power).and(&Basis::of(&self.length)).and(&control);
        match self.control {
            Some(CableControl::Thermostat) => basis.resting_on(&[&CABLE_THERMOSTAT]),
            Some(CableControl::SelfRegulating) => basis.resting_on(&[&CABLE_SELF_REGULATING]),
            Some(CableControl::AlwaysOn | CableControl::Seasonal) | None => basis,
        }
    }

    fn pipe_basis(&self) -> Basis {
        Basis::of(&self.length)
            .and(&Basis::of(&self.pipe_outside))
            .and(&Basis::of(&self.insulation))
            .and(&Basis::of(&self.conductivity))
            .resting_on(&[&CABLE_HOLD, &CHURCHILL_CHU_1975])
    }
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
    use crate::freeze::over_hours;
    use crate::units::celsius;
    use uom::si::energy::kilowatt_hour;

    fn seen(control: Option<CableControl>) -> HeatCable {
        HeatCable {
            present: true,
            length: Some(Length::new::<foot>(20.0)),
            power: Some(LinearPowerDensity::new::<watt_per_foot>(6.0)),
            control,
            season: None,
            pipe_outside: None,
            insulation: None,
            signs: crate::home::CableSigns::default(),
            ground_fault_outlet: None,
            thermostat_proved: None,
            someone_plugs_in: None,
        }
    }

    fn year(cable: &HeatCable, air_c: f64) -> CableFigures {
        let air = vec![celsius(air_c); 8760];
        CableSeen::of(cable).expect("a cable is there").year(|c| over_hours(c, &air, None))
    }

    #[test]
    fn a_home_without_a_cable_has_no_year() {
        let none = HeatCable { present: false, ..seen(Some(CableControl::AlwaysOn)) };
        assert!(CableSeen::of(&none).is_none());
    }

    #[test]
    fn what_was_read_on_the_tag_leaves_no_range() {
        let used = year(&seen(Some(CableControl::AlwaysOn)), 10.0).electricity;
        for end in [used.low, used.best, used.high] {
            assert!((end.get::<kilowatt_hour>() - 1051.2).abs() < 1e-6);
        }
        assert_eq!(used.confidence, Confidence::Seen);
        let fields = ["power_w_per_ft", "length_ft", "control"].map(|f| format!("heat_cable.{f}"));
        assert_eq!(used.inputs, fields);
    }

    #[test]
    fn an_unseen_control_promises_nothing_and_may_cost_the_whole_year() {
        let used = year(&seen(None), 10.0).electricity;
        assert!(used.best.value.abs() < 1e-9);
        assert!((used.high.get::<kilowatt_hour>() - 1051.2).abs() < 1e-6);
        assert_eq!(used.confidence, Confidence::Guessed);
    }

    #[test]
    fn an_unseen_pipe_is_needy_within_a_range_that_holds_its_best() {
        let needed = year(&seen(Some(CableControl::Thermostat)), -10.0).needed;
        assert!(needed.low < needed.best && needed.best < needed.high);
        assert!(needed.sources.contains(&&PIPE_FOAM) && needed.sources.contains(&&PIPE_SIZES));
    }

    #[test]
    fn a_bare_pipe_makes_the_risk_of_a_weak_cable_worse() {
        let power = Some(LinearPowerDensity::new::<watt_per_foot>(2.0));
        let weak = HeatCable { power, ..seen(Some(CableControl::AlwaysOn)) };
        let risk = year(&weak, -20.0).freeze_risk;
        assert!(risk.low < risk.high && risk.best <= risk.high);
    }
}
