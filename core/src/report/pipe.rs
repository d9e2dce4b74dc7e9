//! What frost does to the water pipe.

use super::findings::plain;
use super::shown::{Scale, Shown};
use super::{Finding, Phrase};
use crate::balance::{self, Weather};
use crate::freeze::left_on;
use crate::home::{CableControl, Home};
use crate::units::linear_power_density::watt_per_foot;
use crate::units::{in_fahrenheit, in_kelvin};
use uom::si::f64::{LinearPowerDensity, Time};
use uom::si::linear_power_density::watt_per_meter;
use uom::si::time::{hour, minute, second};

/// How soon the pipe may block without its cable; never when it is solid ice, and never that
/// nothing would happen.
pub(super) fn finding(home: &Home, weather: Option<&Weather<'_>>) -> Option<Finding> {
    let plug = balance::time_to_plug(home, weather?)?;
    let (unit, n, shown): (_, _, fn(Time) -> f64) = match rounded(plug.best) {
        (n, true) => ("h", n, |t| t.get::<hour>()),
        (n, false) => ("min", n, |t| t.get::<minute>()),
    };
    let scale = Scale { unit, si_unit: "s", shown, si: |t| t.get::<second>() };
    let mut figure = Shown::new(&plug, &scale);
    let unit = Phrase::new(format!("unit.{unit}"));
    figure.text = Phrase::new("about.unit").with("value", n).with("unit", unit);
    let text = Phrase::new("finding.pipe_plug").with("time", figure.text.clone());
    Some(Finding { item: "pipe", text, figure: Some(figure) })
}

/// A thermostat that did not switch when it was tried.
pub(super) fn thermostat_failed(home: &Home) -> Option<Finding> {
    let cable = home.cable.as_ref().filter(|cable| cable.present)?;
    let thermostat = cable.control == Some(CableControl::Thermostat);
    let failed = thermostat && cable.thermostat_proved == Some(false);
    failed.then(|| plain("heat_cable", Phrase::new("finding.thermostat_failed")))
}

/// The tag promises less than the pipe needs on the coldest night of an ordinary year; never that it
/// promises enough, as a rare night is colder.
pub(super) fn too_weak(home: &Home, weather: Option<&Weather<'_>>) -> Option<Finding> {
    let tag = home.cable.as_ref()?.power?;
    let need = balance::power_needed_on_coldest_night(home, weather?)?;
    let watts = |power: LinearPowerDensity| power.get::<watt_per_foot>();
    let scale =
        Scale { unit: "w_per_ft", si_unit: "W/m", shown: watts, si: |p| p.get::<watt_per_meter>() };
    let figure = Shown::new(&need, &scale);
    let text = Phrase::new("finding.cable_weak")
        .with("need", figure.text.clone())
        .with("tag", (watts(tag) * 10.0).round() / 10.0);
    (need.best > tag).then_some(Finding { item: "heat_cable", text, figure: Some(figure) })
}

/// A cable that nothing switches, under insulation, may be more than a plastic pipe bears.
pub(super) fn too_hot(home: &Home) -> Option<Finding> {
    let scale = Scale { unit: "f", si_unit: "K", shown: in_fahrenheit, si: in_kelvin };
    let figure = Shown::new(&left_on(home.cable.as_ref()?)?, &scale);
    let text = Phrase::new("finding.pipe_hot").with("temperature", figure.text.clone());
    Some(Finding { item: "heat_cable", text, figure: Some(figure) })
}

/// Down to whole hours, and below two of them to five minutes; whether it is hours.
fn rounded(time: Time) -> (f64, bool) {
    let hours = time.get::<hour>();
    if hours >= 2.0 {
        return (hours.floor(), true);
    }
    ((time.get::<minute>() / 5.0).floor().max(1.0) * 5.0, false)
}
