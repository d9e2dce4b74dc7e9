//! Reads what a person writes beside a tape, a thermometer, a watch or a bill.
//!
//! | asked unit | also read | examples |
//! |---|---|---|
//! | `in`, `ft` | inches, feet, cm, mm, m | `3/8`, `1 1/4`, `1-1/4"`, `3' 2"`, `3 ft 2 in`, `9 mm` |
//! | `f` | °F, °C | `120`, `48 °C`, `-5F` |
//! | `s` | seconds, minutes | `12`, `2 min 30 s` |
//! | `days` | days, weeks, months of 30 days | `90`, `6 weeks` |
//! | `usd` | dollars | `2.60`, `$2.60` |
//! | `w_per_ft` | watts per foot or metre | `7`, `7 W/ft`, `23 W/m` |
//!
//! A number without a unit is in the asked unit. Digits are never guessed at: one comma between
//! digits is a decimal comma (`0,375`), but `1,250` could be either and is refused. What is no
//! reading at all is refused too, and so is anything negative but a temperature. Whether the value
//! makes sense in its field is not asked here; the check of the request does that.

mod number;
mod reading;
#[cfg(test)]
mod tests;
mod unit;

use crate::error::{FieldError, Reason};
use unit::Asked;

/// A reading in the unit of the field that asked.
#[derive(Debug, Clone, PartialEq, serde::Serialize)]
pub struct Measured {
    /// The number.
    pub value: f64,
    /// The asked unit.
    pub unit: &'static str,
}

/// Reads a text in the unit of the field that asks: `in`, `ft`, `f`, `s`, `days`, `usd` or
/// `w_per_ft`.
///
/// ```
/// use winterseam::wire::measure;
///
/// assert_eq!(measure("1 1/4", "in")?.value, 1.25);
/// assert_eq!(measure("3' 2\"", "in")?.value, 38.0);
/// assert_eq!(measure("48 °C", "f")?.value, 118.4);
/// assert!(measure("1,250", "usd").is_err()); // one and a quarter, or more than a thousand?
/// # Ok::<(), winterseam::error::FieldError>(())
/// ```
///
/// # Errors
///
/// At `text` when it is no reading of that kind; at `unit` when the unit is none of these.
pub fn measure(text: &str, unit: &str) -> Result<Measured, FieldError> {
    let Some(asked) = Asked::of(unit) else {
        let got = super::path::shortened(unit);
        return Err(FieldError::at("unit", Reason::NotOneOf { got, allowed: Asked::WORDS }));
    };
    let Some(value) = reading::read(text, asked) else {
        let got = super::path::shortened(text.trim());
        return Err(FieldError::at("text", Reason::Malformed { want: "reading", got }));
    };
    Ok(Measured { value, unit: asked.word() })
}
