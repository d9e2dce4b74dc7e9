//! The heat cable on the water pipe.

use uom::si::f64::{Length, LinearPowerDensity};

/// The heat cable on the water pipe.
#[derive(Debug, Clone, PartialEq)]
pub struct HeatCable {
    /// Someone looked, and there is one.
    pub present: bool,
    /// Its length.
    pub length: Option<Length>,
    /// Heat for each length, as its tag says.
    pub power: Option<LinearPowerDensity>,
    /// What switches it.
    pub control: Option<CableControl>,
    /// Days on which a person plugs it in and out, with [`CableControl::Seasonal`].
    pub season: Option<Season>,
    /// Outside diameter of the pipe.
    pub pipe_outside: Option<Length>,
    /// Thickness of the insulation on the pipe; zero is bare.
    pub insulation: Option<Length>,
    /// What its looks say.
    pub signs: CableSigns,
    /// Plugged into an outlet with a ground-fault switch.
    pub ground_fault_outlet: Option<bool>,
    /// Its thermostat was seen to switch with an ice pack.
    pub thermostat_proved: Option<bool>,
    /// Somebody is sure to be there in autumn to plug it in.
    pub someone_plugs_in: Option<bool>,
}

/// What switches a heat cable.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum CableControl {
    /// Nothing: full power whenever it is plugged in, all year.
    AlwaysOn,
    /// A thermostat on the pipe.
    Thermostat,
    /// The cable itself, which gives less as it warms.
    SelfRegulating,
    /// A person, who plugs it in in autumn and out in spring.
    Seasonal,
}

/// Days of the year, 1 to 365, on which a cable goes in and out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Season {
    /// First day with power.
    pub on_day: u16,
    /// Last day with power.
    pub off_day: u16,
}

/// What the looks of a heat cable say. `None` is not seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct CableSigns {
    /// Cracked, charred, bare or melted; a hot plug or sparks.
    pub damaged: Option<bool>,
    /// Cable or plug is wet.
    pub wet: Option<bool>,
    /// No mark of a test laboratory, or uncertified and over three years old.
    pub uncertified: Option<bool>,
    /// Under foam or vinyl.
    pub under_foam: Option<bool>,
    /// Laid over itself.
    pub lapped: Option<bool>,
}
