//! A number as it is read off a tape: `3/8`, `1 1/4`, `1-1/4`, `0.375`, `0,375`.

/// The number at the start of a text, and the text behind it.
pub(super) fn number(text: &str) -> Option<(f64, &str)> {
    let (value, rest) = decimal_or_whole(text)?;
    match value {
        Read::Decimal(value) => Some((value, rest)),
        Read::Whole(whole) => Some(with_fraction(whole, rest)?),
    }
}

enum Read {
    Whole(f64),
    Decimal(f64),
}

/// Digits, with one decimal point or comma between or before them.
fn decimal_or_whole(text: &str) -> Option<(Read, &str)> {
    let (whole, rest) = digits(text);
    let mark = rest.chars().next().filter(|c| matches!(c, '.' | ','));
    let behind = mark.map(|_| digits(&rest[1..]));
    match behind {
        Some((decimals, rest)) if !decimals.is_empty() => {
            if mark == Some(',') && could_be_thousands(whole, decimals) {
                return None;
            }
            Some((Read::Decimal(parse(&format!("0{whole}.{decimals}"))?), rest))
        }
        _ => Some((Read::Whole(parse(whole)?), rest)),
    }
}

/// `1,250` is one and a quarter to some and more than a thousand to others; `0,375` is neither.
fn could_be_thousands(whole: &str, decimals: &str) -> bool {
    whole.is_empty() || decimals.len() == 3 && !whole.starts_with('0')
}

/// A fraction behind a whole number, or below it: `1 1/4`, `1-1/4`, `3/8`.
fn with_fraction(whole: f64, rest: &str) -> Option<(f64, &str)> {
    if let Some(below) = rest.strip_prefix('/') {
        return over(whole, below);
    }
    let behind = rest.trim_start();
    let behind = behind.strip_prefix('-').unwrap_or(behind).trim_start();
    match fraction(behind) {
        _ if behind.len() == rest.len() => Some((whole, rest)), // "1250" has no fraction behind it
        Some((part, rest)) if part < 1.0 => Some((whole + part, rest)),
        _ => Some((whole, rest)),
    }
}

/// `1/4` and nothing else.
fn fraction(text: &str) -> Option<(f64, &str)> {
    let (above, rest) = digits(text);
    over(parse(above)?, rest.strip_prefix('/')?)
}

/// What stands above a line, divided by the digits below it. Zero below is no fraction.
fn over(above: f64, below: &str) -> Option<(f64, &str)> {
    let (below, rest) = digits(below);
    let below = parse(below).filter(|below| *below > 0.0)?;
    Some((above / below, rest))
}

fn digits(text: &str) -> (&str, &str) {
    let end = text.find(|c: char| !c.is_ascii_digit()).unwrap_or(text.len());
    text.split_at(end)
}

/// No tape, bill or watch shows more than nine digits.
fn parse(digits: &str) -> Option<f64> {
    if digits.is_empty() || digits.len() > 10 { None } else { digits.parse().ok() }
}
