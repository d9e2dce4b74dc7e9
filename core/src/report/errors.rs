//! What is wrong with a request, as a sentence.

use super::phrase::{Arg, Phrase};
use crate::bounds::Bounds;
use crate::error::{FieldError, Reason};

/// The sentence for an error. `name` gives the words for the field at a path.
///
/// ```
/// use winterseam::error::{FieldError, Reason};
/// use winterseam::report::{Phrase, problem};
///
/// let error = FieldError::at("today", Reason::Missing);
/// let phrase = problem(&error, |path| Phrase::new(format!("field.{path}")).into());
/// assert_eq!(phrase.key, "error.missing");
/// ```
#[must_use]
pub fn problem(error: &FieldError, name: impl Fn(&str) -> Arg) -> Phrase {
    let phrase = Phrase::new(format!("error.{}", error.reason.code()));
    let named = || phrase.clone().with("what", name(&error.path));
    match &error.reason {
        Reason::NotJson { line, column } => {
            phrase.with("line", count(*line)).with("column", count(*column))
        }
        Reason::TooLarge { of, limit } => phrase.with("of", *of).with("limit", count(*limit)),
        Reason::Unknown { got, near } => {
            phrase.with("got", got.as_str()).with("near", near.unwrap_or_default())
        }
        Reason::WrongType { want, got } | Reason::Malformed { want, got } => {
            named().with("want", Phrase::new(format!("want.{want}"))).with("got", got.as_str())
        }
        Reason::OutOfRange { got, allowed } => ranged(named(), allowed).with("got", *got),
        Reason::NotOneOf { got, allowed } => {
            named().with("allowed", allowed.join(", ")).with("got", got.as_str())
        }
        Reason::NoSuchPlace { got } => named().with("got", got.as_str()),
        Reason::Contradicts { other } => named().with("other", name(other)),
        Reason::Twice | Reason::Missing | Reason::NotANumber => named(),
        Reason::NoClimate => phrase,
    }
}

fn ranged(phrase: Phrase, allowed: &Bounds) -> Phrase {
    phrase.with("min", allowed.min).with("max", allowed.max).with("unit", unit(allowed.unit))
}

/// The words for a unit of the walk; the units of SI are the same in every language.
fn unit(written: &'static str) -> Arg {
    let key = match written {
        "in" => "unit.in",
        "ft" => "unit.ft",
        "°F" => "unit.f",
        "in²" => "unit.in2",
        "cfm" => "unit.cfm",
        "s" => "unit.s",
        "days" => "unit.days",
        "W/ft" => "unit.w_per_ft",
        "$" => "unit.usd",
        "$/kWh" => "unit.usd_per_kwh",
        "$/therm" => "unit.usd_per_therm",
        "$/ccf" => "unit.usd_per_ccf",
        "$/gal" => "unit.usd_per_gal",
        si => return si.into(),
    };
    Phrase::new(key).into()
}

#[expect(clippy::cast_precision_loss, reason = "a count of lines or fields is far below 2^53")]
fn count(n: usize) -> f64 {
    n as f64
}
