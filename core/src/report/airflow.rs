//! Furnace airflow and ducts in words.

use super::Phrase;
use super::findings::{Finding, plain};
use crate::ducts::{GoesTo, diagnosis, goes_to, rise_found};
use crate::home::{Crossover, DuctGap, DuctsFound, Home};
use uom::si::f64::{Ratio, TemperatureInterval};
use uom::si::ratio::ratio;
use uom::si::temperature_interval::degree_fahrenheit;

pub(super) fn findings(home: &Home) -> Vec<Finding> {
    let found = &home.ducts;
    let mut all: Vec<Phrase> = vec![];
    all.extend(rise(home));
    all.extend(registers(found));
    let seen =
        |flag: Option<bool>, key: &'static str| (flag == Some(true)).then(|| Phrase::new(key));
    all.extend(seen(found.return_blocked, "finding.return_blocked"));
    all.extend(seen(found.blower_dirty, "finding.blower_dirty"));
    all.extend(seen(found.short_cycles, "finding.short_cycles"));
    all.extend(diagnosed(home));
    all.extend(found.gaps.iter().map(gap));
    all.extend(match found.crossover {
        Some(Crossover::Loose) => Some(Phrase::new("finding.crossover_loose")),
        Some(Crossover::Fallen) => Some(Phrase::new("finding.crossover_fallen")),
        Some(Crossover::Sound) | None => None,
    });
    all.into_iter().map(|text| plain("airflow", text)).collect()
}

/// The rise of the air against the label.
fn rise(home: &Home) -> Option<Phrase> {
    let rise = rise_found(&home.ducts)?;
    let f = |apart: TemperatureInterval| apart.get::<degree_fahrenheit>().round();
    let Some((min, max)) = home.heating.label_rise else {
        return Some(Phrase::new("finding.rise_no_label").with("rise", f(rise)));
    };
    let key = if rise > max {
        "finding.rise_above"
    } else if rise < min {
        "finding.rise_below"
    } else {
        "finding.rise_within"
    };
    Some(Phrase::new(key).with("rise", f(rise)).with("min", f(min)).with("max", f(max)))
}

fn registers(found: &DuctsFound) -> Option<Phrase> {
    let closed = found.closed.filter(|closed| *closed > 0)?;
    Some(match found.registers {
        Some(all) => Phrase::new("finding.registers_closed")
            .with("closed", f64::from(closed))
            .with("all", f64::from(all)),
        None => Phrase::new("finding.some_registers_closed").with("closed", f64::from(closed)),
    })
}

/// What the readings together say, with how likely it is.
fn diagnosed(home: &Home) -> Vec<Phrase> {
    let Some(found) = diagnosis(home) else { return vec![] };
    let told = |key: &'static str, likely: Option<Ratio>| {
        likely.map(|likely| Phrase::new(key).with("how", Phrase::new(how(likely))))
    };
    [
        told("finding.short_of_air", found.short_of_air),
        told("finding.lost_on_the_way", found.lost_on_the_way),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// Words for a likelihood: judgement.
fn how(likely: Ratio) -> &'static str {
    match likely.get::<ratio>() {
        p if p >= 0.85 => "likelihood.very_likely",
        p if p >= 0.6 => "likelihood.likely",
        p if p >= 0.3 => "likelihood.perhaps",
        _ => "likelihood.unlikely",
    }
}

fn gap(gap: &DuctGap) -> Phrase {
    Phrase::new(match goes_to(gap.place, gap.air) {
        GoesTo::BackIntoReturn => "finding.duct_gap_closet",
        GoesTo::Belly => "finding.duct_gap_belly",
        GoesTo::Outdoors => "finding.duct_gap_outdoors",
        GoesTo::DrawnIn => "finding.duct_gap_drawn_in",
    })
}
