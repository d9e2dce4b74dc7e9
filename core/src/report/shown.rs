//! A figure as it is shown: in the unit people use, beside its SI value, and rounded in words.

use super::Phrase;
use crate::money::Dollars;
use crate::sources::{Confidence, Figure, Source};

/// A figure in the unit people use, its SI twin, and the words for it.
#[derive(Debug, Clone, PartialEq)]
pub struct Shown {
    /// Best, low and high in the shown unit.
    pub shown: [f64; 3],
    /// Key of the shown unit.
    pub unit: &'static str,
    /// Best, low and high in the SI unit; dollars stay dollars.
    pub si: [f64; 3],
    /// The SI unit.
    pub si_unit: &'static str,
    /// How it is known.
    pub confidence: Confidence,
    /// Fields of the request that it was made from.
    pub inputs: Vec<String>,
    /// What it rests on.
    pub sources: Vec<&'static Source>,
    /// The rounded range in words.
    pub text: Phrase,
}

/// A unit that figures are shown in: its key, its SI unit, and both ways from a quantity.
pub(super) struct Scale<Q> {
    pub(super) unit: &'static str,
    pub(super) si_unit: &'static str,
    pub(super) shown: fn(Q) -> f64,
    pub(super) si: fn(Q) -> f64,
}

impl Shown {
    pub(super) fn new<Q: Copy>(figure: &Figure<Q>, scale: &Scale<Q>) -> Self {
        let three = |f: fn(Q) -> f64| [figure.best, figure.low, figure.high].map(f);
        let shown = three(scale.shown);
        Self {
            shown,
            unit: scale.unit,
            si: three(scale.si),
            si_unit: scale.si_unit,
            confidence: figure.confidence,
            inputs: figure.inputs.clone(),
            sources: figure.sources.clone(),
            text: in_words(shown[1], shown[2], scale.unit),
        }
    }

    /// Dollars, once.
    pub(super) fn dollars(figure: &Figure<Dollars>) -> Self {
        Self::new(figure, &Scale { unit: "usd", si_unit: "USD", shown: |d| d.0, si: |d| d.0 })
    }

    /// Dollars in a year.
    pub(super) fn dollars_a_year(figure: &Figure<Dollars>) -> Self {
        let scale =
            Scale { unit: "usd_per_year", si_unit: "USD/a", shown: |d: Dollars| d.0, si: |d| d.0 };
        Self::new(figure, &scale)
    }
}

/// A low end this far below the high one is not told.
const NEXT_TO_NOTHING: f64 = 0.05;

/// The rounded range in words: never a lone number, unless both ends round to the same.
fn in_words(low: f64, high: f64, unit: &str) -> Phrase {
    let money = unit.starts_with("usd");
    let round = if money { round_dollars } else { round_two_digits };
    let (low, high) = (round(low), round(high));
    let kind = match (low <= high * NEXT_TO_NOTHING, low >= high) {
        _ if high <= 0.0 => {
            return Phrase::new(if unit == "usd" { "range.free" } else { "range.none" });
        }
        (true, _) => "range.under",
        (false, true) => "about",
        (false, false) => "range",
    };
    let key = match unit {
        "usd" => format!("{kind}{}usd", separator(kind)),
        "usd_per_year" => format!("{kind}{}usd_year", separator(kind)),
        _ => format!("{kind}{}unit", separator(kind)),
    };
    let phrase = match kind {
        "range.under" => Phrase::new(key).with("high", high),
        "about" => Phrase::new(key).with("value", high),
        _ => Phrase::new(key).with("low", low).with("high", high),
    };
    if money { phrase } else { phrase.with("unit", Phrase::new(format!("unit.{unit}"))) }
}

fn separator(kind: &str) -> char {
    if kind == "range.under" { '_' } else { '.' }
}

/// Under $50 to $5, under $200 to $10, else to $25; a sum under $5 to the dollar.
fn round_dollars(amount: f64) -> f64 {
    let step = match amount.abs() {
        a if a < 5.0 => 1.0,
        a if a < 50.0 => 5.0,
        a if a < 200.0 => 10.0,
        _ => 25.0,
    };
    (amount / step).round() * step
}

/// To two digits, as no figure here is known better.
fn round_two_digits(value: f64) -> f64 {
    let mut step = 1e-3;
    while step * 100.0 <= value.abs() {
        step *= 10.0;
    }
    (value / step).round() * step
}

#[cfg(test)]
mod tests {
    use super::{in_words, round_dollars, round_two_digits};

    #[test]
    fn money_is_rounded_as_people_speak_of_it() {
        for (amount, said) in [(3.4, 3.0), (12.4, 10.0), (127.43, 130.0), (1_163.0, 1_175.0)] {
            assert!((round_dollars(amount) - said).abs() < 1e-9, "{amount}");
        }
    }

    #[test]
    fn other_figures_keep_two_digits() {
        assert!((round_two_digits(1_472.3) - 1_500.0).abs() < 1e-9);
        assert!((round_two_digits(0.0347) - 0.035).abs() < 1e-9);
    }

    #[test]
    fn a_range_that_rounds_to_one_value_is_said_once() {
        assert_eq!(in_words(9.0, 11.0, "usd").key, "about.usd");
        assert_eq!(in_words(0.2, 11.0, "usd_per_year").key, "range.under_usd_year");
        assert_eq!(in_words(9.0, 31.0, "kwh_per_year").key, "range.unit");
        assert_eq!(in_words(0.0, 0.0, "usd").key, "range.free");
        assert_eq!(in_words(0.0, 0.0, "usd_per_year").key, "range.none");
    }
}
