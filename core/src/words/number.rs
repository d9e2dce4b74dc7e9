//! Numbers as people in the United States write them, in either language: `1,234.5`.

use super::Language;

/// How a number is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Style {
    /// Digits after the point that always stand.
    pub(super) least: usize,
    /// Digits after the point that may stand.
    pub(super) most: usize,
    /// A comma before every three digits.
    pub(super) grouped: bool,
}

impl Default for Style {
    fn default() -> Self {
        Self { least: 0, most: 3, grouped: true }
    }
}

impl Style {
    /// The number as text; `None` when it is not finite.
    pub(super) fn write(self, number: f64) -> Option<String> {
        let digits = self.digits(number)?;
        let (whole, part) = digits.split_once('.').unwrap_or((&digits, ""));
        let sign =
            if number < 0.0 && digits.contains(|c| matches!(c, '1'..='9')) { "-" } else { "" };
        let whole = if self.grouped { grouped(whole) } else { whole.to_owned() };
        let point = if part.is_empty() { "" } else { "." };
        Some(format!("{sign}{whole}{point}{part}"))
    }

    /// The number rounded as it will be written, for exact keys.
    pub(super) fn rounded(self, number: f64) -> Option<f64> {
        let size: f64 = self.digits(number)?.parse().ok()?;
        Some(size.copysign(number))
    }

    /// The plural category of the number as it will be written, by the rules of the Unicode
    /// CLDR. Spanish `many` (whole millions) is left out: no message counts so far.
    pub(super) fn plural(self, number: f64, language: Language) -> Option<&'static str> {
        let digits = self.digits(number)?;
        let one = match language {
            // i = 1 and v = 0: "1" and never "1.0".
            Language::English => digits == "1",
            // n = 1: "1" and "1.0".
            Language::Spanish => self.rounded(number)?.abs().to_bits() == 1.0_f64.to_bits(),
        };
        Some(if one { "one" } else { "other" })
    }

    /// The size of the number without sign and commas, halves away from zero, zeros at the end
    /// dropped as far as `least` allows.
    fn digits(self, number: f64) -> Option<String> {
        if !number.is_finite() {
            return None;
        }
        let size = number.abs();
        let size = if half_way(size, self.most) { size.next_up() } else { size };
        let mut text = format!("{size:.*}", self.most);
        while self.trailing(&text) > self.least && text.ends_with('0') {
            text.pop();
        }
        Some(text.trim_end_matches('.').to_owned())
    }

    /// How many digits stand after the point.
    fn trailing(self, text: &str) -> usize {
        if self.most == 0 { 0 } else { text.split_once('.').map_or(0, |(_, part)| part.len()) }
    }
}

/// Whether a number lies exactly between two neighbours of that many decimals. Then, and only
/// then, is it an odd number of steps of `1 / 2^(decimals + 1)`; the products are exact.
fn half_way(size: f64, decimals: usize) -> bool {
    let steps = (0..=decimals).fold(size, |steps, _| steps * 2.0);
    (steps % 2.0).to_bits() == 1.0_f64.to_bits()
}

fn grouped(whole: &str) -> String {
    let mut text = String::with_capacity(whole.len() + whole.len() / 3);
    for (at, digit) in whole.chars().enumerate() {
        if at > 0 && (whole.len() - at).is_multiple_of(3) {
            text.push(',');
        }
        text.push(digit);
    }
    text
}

#[cfg(test)]
mod tests {
    use super::Style;

    fn with_digits(least: usize, most: usize) -> impl Fn(f64) -> Option<String> {
        move |number| Style { least, most, grouped: true }.write(number)
    }

    /// ECMA-402, `Intl.NumberFormat`: `roundingMode` is "halfExpand" unless said otherwise.
    #[test]
    fn a_number_half_way_goes_away_from_zero() {
        for (number, text) in [(0.5, "1"), (1.5, "2"), (2.5, "3"), (-2.5, "-3"), (999.5, "1,000")] {
            assert_eq!(with_digits(0, 0)(number).as_deref(), Some(text));
        }
        assert_eq!(with_digits(0, 2)(0.125).as_deref(), Some("0.13"));
        // Not half way: the nearest f64 lies below.
        assert_eq!(with_digits(0, 2)(1.115).as_deref(), Some("1.11"));
    }

    #[test]
    fn zeros_at_the_end_stand_only_where_they_are_asked_for() {
        assert_eq!(with_digits(0, 2)(1200.0).as_deref(), Some("1,200"));
        assert_eq!(with_digits(2, 2)(2.6).as_deref(), Some("2.60"));
        assert_eq!(with_digits(1, 3)(2.0).as_deref(), Some("2.0"));
        assert_eq!(with_digits(0, 0)(1200.0).as_deref(), Some("1,200"));
    }

    #[test]
    fn nothing_is_written_for_what_is_no_number_and_zero_has_no_sign() {
        assert_eq!(with_digits(0, 3)(f64::NAN), None);
        assert_eq!(with_digits(0, 3)(f64::INFINITY), None);
        assert_eq!(with_digits(0, 1)(-0.01).as_deref(), Some("0"));
    }
}
