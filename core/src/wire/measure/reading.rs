//! One reading: numbers with their units, largest first.

use super::number::number;
use super::unit::{Asked, Written};

/// Nobody writes more for one reading.
const MOST_BYTES: usize = 64;

/// The value of a reading in the asked unit; `None` when it is no reading of that kind.
pub(super) fn read(text: &str, asked: Asked) -> Option<f64> {
    if text.len() > MOST_BYTES {
        return None;
    }
    let plain = plain(text);
    let (sign, text) = match plain.trim().strip_prefix('-') {
        Some(rest) if asked.may_be_negative() => (-1.0, rest),
        _ => (1.0, plain.trim()),
    };
    match text.strip_prefix('$') {
        Some(amount) if asked == Asked::Dollars => alone(amount.trim_start()),
        Some(_) => None,
        None => parts(text, sign, asked),
    }
}

/// A number with nothing behind it.
fn alone(text: &str) -> Option<f64> {
    number(text).filter(|(_, rest)| rest.is_empty()).map(|(value, _)| value)
}

/// `3 ft 2 in`: each part in the asked unit, each unit the next smaller of the one before, which
/// may go unsaid: `3' 2`.
fn parts(text: &str, sign: f64, asked: Asked) -> Option<f64> {
    let (value, unit, mut rest) = part(text, Some(asked.bare()))?;
    let mut total = asked.convert(sign * value, unit)?;
    let mut last = unit;
    while !rest.is_empty() {
        let (value, unit, behind) = part(rest, last.smaller())?;
        if last.smaller() != Some(unit) {
            return None;
        }
        total += asked.convert(value, unit)?;
        (last, rest) = (unit, behind);
    }
    Some(total + 0.0)
}

/// A number, its unit (`bare` when it stands alone), and the text behind both.
fn part(text: &str, bare: Option<Written>) -> Option<(f64, Written, &str)> {
    let (value, rest) = number(text)?;
    let rest = rest.trim_start();
    let end = rest.find(|c: char| c.is_ascii_digit() || c == ' ').unwrap_or(rest.len());
    let (word, behind) = rest.split_at(end);
    let unit =
        if word == "°" || word.is_empty() && behind.is_empty() { bare } else { Written::of(word) };
    Some((value, unit?, behind.trim_start()))
}

/// The text in lower case, with one spelling for each sign that a keyboard or a telephone makes.
fn plain(text: &str) -> String {
    let mut plain = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '’' | '′' | '‘' => plain.push('\''),
            '”' | '″' | '“' => plain.push('"'),
            '\u{2044}' | '\u{2215}' => plain.push('/'),
            '−' | '‐' | '‑' | '–' => plain.push('-'),
            'º' | '˚' => plain.push('°'),
            '℃' => plain.push_str("°c"),
            '℉' => plain.push_str("°f"),
            _ if c.is_whitespace() => plain.push(' '),
            _ => match vulgar(c) {
                Some(fraction) => plain.extend([" ", fraction]),
                None => plain.push(small(c)),
            },
        }
    }
    tidy_degrees(&plain)
}

/// `48 ° C` and `48 degrees C` as `48 °c`.
fn tidy_degrees(text: &str) -> String {
    let one = text.replace("degrees", "°").replace("deg", "°").replace("grados", "°");
    one.replace("° ", "°")
}

/// The small letter. The letters of all languages would cost tables of forty kilobytes; these are
/// those of the words that are read.
fn small(c: char) -> char {
    match c {
        'Í' => 'í',
        'Ó' => 'ó',
        _ => c.to_ascii_lowercase(),
    }
}

/// The fraction that stands in one character.
fn vulgar(c: char) -> Option<&'static str> {
    Some(match c {
        '¼' => "1/4",
        '½' => "1/2",
        '¾' => "3/4",
        '⅛' => "1/8",
        '⅜' => "3/8",
        '⅝' => "5/8",
        '⅞' => "7/8",
        '⅓' => "1/3",
        '⅔' => "2/3",
        _ => return None,
    })
}
