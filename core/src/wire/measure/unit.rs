//! The units that people write, and what they are in the unit that was asked for.

/// Centimetres of an inch: exact by definition.
const CM_PER_INCH: f64 = 2.54;
/// Metres of a foot: exact by definition.
const M_PER_FOOT: f64 = 0.3048;

/// The unit that a field asks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Asked {
    Inches,
    Feet,
    Fahrenheit,
    Seconds,
    Days,
    Dollars,
    WattsPerFoot,
}

impl Asked {
    pub(super) const WORDS: &'static [&'static str] =
        &["in", "ft", "f", "s", "days", "usd", "w_per_ft"];

    pub(super) fn of(word: &str) -> Option<Self> {
        Some(match word {
            "in" => Self::Inches,
            "ft" => Self::Feet,
            "f" => Self::Fahrenheit,
            "s" => Self::Seconds,
            "days" => Self::Days,
            "usd" => Self::Dollars,
            "w_per_ft" => Self::WattsPerFoot,
            _ => return None,
        })
    }

    pub(super) fn word(self) -> &'static str {
        Self::WORDS[self as usize]
    }

    /// The unit of a number that stands alone.
    pub(super) fn bare(self) -> Written {
        match self {
            Self::Inches => Written::Inch,
            Self::Feet => Written::Foot,
            Self::Fahrenheit => Written::Fahrenheit,
            Self::Seconds => Written::Second,
            Self::Days => Written::Day,
            Self::Dollars => Written::Dollar,
            Self::WattsPerFoot => Written::WattPerFoot,
        }
    }

    /// Whether a reading may be below zero.
    pub(super) fn may_be_negative(self) -> bool {
        self == Self::Fahrenheit
    }

    /// A number in a written unit, in the asked unit; `None` when one is no measure of the other.
    pub(super) fn convert(self, value: f64, from: Written) -> Option<f64> {
        match self {
            Self::Inches => in_inches(value, from),
            Self::Feet if from == Written::Foot => Some(value),
            Self::Feet => in_inches(value, from).map(|inches| inches / 12.0),
            Self::Fahrenheit => in_fahrenheit(value, from),
            Self::Seconds => in_seconds(value, from),
            Self::Days => in_days(value, from),
            Self::Dollars => (from == Written::Dollar).then_some(value),
            Self::WattsPerFoot => in_watts_per_foot(value, from),
        }
    }
}

/// A unit as people write it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Written {
    Inch,
    Foot,
    Millimetre,
    Centimetre,
    Metre,
    Fahrenheit,
    Celsius,
    Second,
    Minute,
    Day,
    Week,
    Month,
    Dollar,
    WattPerFoot,
    WattPerMetre,
}

impl Written {
    /// The unit of a word in lower case, English or Spanish.
    pub(super) fn of(word: &str) -> Option<Self> {
        Some(match word {
            "in" | "in." | "inch" | "inches" | "\"" | "''" | "pulg" | "pulg." | "pulgada"
            | "pulgadas" => Self::Inch,
            "ft" | "ft." | "foot" | "feet" | "'" | "pie" | "pies" => Self::Foot,
            "mm" => Self::Millimetre,
            "cm" => Self::Centimetre,
            "m" => Self::Metre,
            "f" | "°f" | "fahrenheit" | "°fahrenheit" => Self::Fahrenheit,
            "c" | "°c" | "celsius" | "°celsius" => Self::Celsius,
            "s" | "sec" | "sec." | "secs" | "second" | "seconds" | "seg" | "seg." | "segundo"
            | "segundos" => Self::Second,
            "min" | "min." | "mins" | "minute" | "minutes" | "minuto" | "minutos" => Self::Minute,
            "d" | "day" | "days" | "día" | "días" | "dia" | "dias" => Self::Day,
            "wk" | "wks" | "week" | "weeks" | "semana" | "semanas" => Self::Week,
            "month" | "months" | "mes" | "meses" => Self::Month,
            "$" | "usd" | "dollar" | "dollars" | "dólar" | "dólares" | "dolares" => Self::Dollar,
            "w/ft" | "w/pie" => Self::WattPerFoot,
            "w/m" => Self::WattPerMetre,
            _ => return None,
        })
    }

    /// The unit that may follow this one in one reading: `3 ft 2 in`, `2 min 30 s`.
    pub(super) fn smaller(self) -> Option<Self> {
        match self {
            Self::Foot => Some(Self::Inch),
            Self::Minute => Some(Self::Second),
            _ => None,
        }
    }
}

fn in_inches(value: f64, from: Written) -> Option<f64> {
    Some(match from {
        Written::Inch => value,
        Written::Foot => value * 12.0,
        Written::Millimetre => value / (CM_PER_INCH * 10.0),
        Written::Centimetre => value / CM_PER_INCH,
        Written::Metre => value / CM_PER_INCH * 100.0,
        _ => return None,
    })
}

fn in_fahrenheit(value: f64, from: Written) -> Option<f64> {
    match from {
        Written::Fahrenheit => Some(value),
        Written::Celsius => Some(value * 9.0 / 5.0 + 32.0),
        _ => None,
    }
}

fn in_seconds(value: f64, from: Written) -> Option<f64> {
    match from {
        Written::Second => Some(value),
        Written::Minute => Some(value * 60.0),
        _ => None,
    }
}

fn in_days(value: f64, from: Written) -> Option<f64> {
    match from {
        Written::Day => Some(value),
        Written::Week => Some(value * 7.0),
        Written::Month => Some(value * 30.0),
        _ => None,
    }
}

fn in_watts_per_foot(value: f64, from: Written) -> Option<f64> {
    match from {
        Written::WattPerFoot => Some(value),
        Written::WattPerMetre => Some(value * M_PER_FOOT),
        _ => None,
    }
}
