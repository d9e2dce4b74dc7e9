//! How hot a cable that nothing switches makes its pipe on a warm day.

use super::seen::CableSeen;
use super::steady::plastic_limit;
use crate::home::{CableControl, HeatCable};
use crate::physics::film::Surroundings;
use crate::physics::pipe::{Pipe, settled_temperature};
use crate::sources::freeze::{CABLE_POWER, CHURCHILL_CHU_1975, PIPE_FOAM};
use crate::sources::pipes::PLASTIC_LIMIT;
use crate::sources::{Confidence, Figure};
use crate::units::fahrenheit;
use uom::si::f64::{Length, LinearPowerDensity, ThermodynamicTemperature};
use uom::si::length::inch;

/// A warm day, °F: an assumption, on the cool side of summer.
const WARM_DAY_F: f64 = 75.0;

/// Temperature that the pipe reaches on a warm day below insulation that was seen, with a cable that
/// nothing switches; `None` unless even the least power of it passes what plastic pipe bears
/// ([`PLASTIC_LIMIT`]).
///
/// ```
/// use winterseam::freeze::left_on;
/// use winterseam::home::{CableControl, CableSigns, HeatCable};
/// use winterseam::units::fahrenheit;
///
/// # let unseen = HeatCable {
/// #     present: true, length: None, power: None, control: None, season: None,
/// #     pipe_outside: None, insulation: None, signs: Default::default(),
/// #     ground_fault_outlet: None, thermostat_proved: None, someone_plugs_in: None,
/// # };
/// let signs = CableSigns { under_foam: Some(true), ..CableSigns::default() };
/// let control = Some(CableControl::AlwaysOn);
/// let hot = left_on(&HeatCable { control, signs, ..unseen.clone() }).expect("too hot");
/// assert!(hot.low > fahrenheit(122.0));
/// assert!(left_on(&HeatCable { signs, ..unseen }).is_none(), "it may have a thermostat");
/// ```
#[must_use]
pub fn left_on(cable: &HeatCable) -> Option<Figure<ThermodynamicTemperature>> {
    let seen = CableSeen::of(cable).filter(|c| c.control == Some(CableControl::AlwaysOn))?;
    let wrapped = cable.signs.under_foam == Some(true) || cable.insulation.is_some();
    let covered = wrapped && seen.insulation.best > Length::new::<inch>(0.0);
    let pipe = Pipe {
        insulation: seen.insulation.best,
        insulation_conductivity: seen.conductivity.best,
        ..Pipe::thin(seen.pipe_outside.best, 0.9.into())
    };
    let around = Surroundings::still(fahrenheit(WARM_DAY_F));
    let reached = |power: LinearPowerDensity| settled_temperature(&pipe, power, around);
    let sources = [&CABLE_POWER, &PIPE_FOAM, &CHURCHILL_CHU_1975, &PLASTIC_LIMIT];
    let hot = Figure::exact(reached(seen.power.best), Confidence::Guessed, &sources)
        .between(reached(seen.power.low), reached(seen.power.high))
        .from_inputs(["heat_cable"]);
    (covered && hot.low > plastic_limit()).then_some(hot)
}
