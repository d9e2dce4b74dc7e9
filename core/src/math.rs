//! The one door to transcendental functions: the same bits on every machine and in wasm. And one way
//! to put a short list in order.

/// x to the power y.
#[must_use]
pub fn pow(x: f64, y: f64) -> f64 {
    libm::pow(x, y)
}

/// e to the power x.
#[must_use]
pub fn exp(x: f64) -> f64 {
    libm::exp(x)
}

/// Natural logarithm.
#[must_use]
pub fn ln(x: f64) -> f64 {
    libm::log(x)
}

/// Sine of an angle in radians.
#[must_use]
pub fn sin(x: f64) -> f64 {
    libm::sin(x)
}

/// Cosine of an angle in radians.
#[must_use]
pub fn cos(x: f64) -> f64 {
    libm::cos(x)
}

/// Angle in radians of a cosine.
#[must_use]
pub fn acos(x: f64) -> f64 {
    libm::acos(x)
}

/// Error function.
#[must_use]
pub fn erf(x: f64) -> f64 {
    libm::erf(x)
}

/// Square root; exact in every implementation of IEEE 754.
#[must_use]
pub fn sqrt(x: f64) -> f64 {
    x.sqrt()
}

/// Straight line through two points, at x.
#[must_use]
pub fn line(x: f64, (x0, y0): (f64, f64), (x1, y1): (f64, f64)) -> f64 {
    y0 + (y1 - y0) * (x - x0) / (x1 - x0)
}

/// Puts a short list in order; what is equal stays as it came. The sort of the standard library is
/// quicker for long lists, and brings five kilobytes of code into the page for every kind of list.
pub(crate) fn put_in_order<T>(list: &mut [T], comes_before: impl Fn(&T, &T) -> bool) {
    for end in 1..list.len() {
        let mut at = end;
        while at > 0 && comes_before(&list[at], &list[at - 1]) {
            list.swap(at, at - 1);
            at -= 1;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::put_in_order;

    #[test]
    fn a_list_is_put_in_order_and_equals_stay_as_they_came() {
        let mut list = vec![(3, 'a'), (1, 'b'), (3, 'c'), (2, 'd'), (1, 'e')];
        put_in_order(&mut list, |one, other| one.0 < other.0);
        assert_eq!(list, [(1, 'b'), (1, 'e'), (2, 'd'), (3, 'a'), (3, 'c')]);
        put_in_order(&mut list[..0], |_, _| true);
    }
}
