//! A function of time from its Laplace transform.

use super::complex::Complex;
use crate::math;
use std::f64::consts::PI;

/// Terms of the sum. Each gives about 0.6 digits until rounding takes them away again; 14 give
/// eight, far more than a temperature needs.
const TERMS: u32 = 14;

/// Fixed Talbot contour: nodes δ in units of 1/t and their weights γ/δ, the same at every time.
#[derive(Debug, Clone)]
pub(super) struct Contour(Vec<(Complex, Complex)>);

impl Contour {
    /// The contour of [`TERMS`] nodes.
    pub(super) fn new() -> Self {
        Self((0..TERMS).map(node).collect())
    }

    /// The response at a time to a step, from the transform of the response to an impulse.
    ///
    /// The transform may have singularities on the negative real axis only, as all conduction has.
    pub(super) fn step(&self, time: f64, transform: impl Fn(Complex) -> Complex) -> f64 {
        let term = |&(at, weight): &(Complex, Complex)| (weight * transform(at * (1.0 / time))).re;
        0.4 * self.0.iter().map(term).sum::<f64>()
    }
}

fn node(k: u32) -> (Complex, Complex) {
    if k == 0 {
        let at = Complex::real(0.4 * f64::from(TERMS));
        return (at, at.exp() * 0.5 / at);
    }
    let angle = f64::from(k) * PI / f64::from(TERMS);
    let cot = math::cos(angle) / math::sin(angle);
    let at = Complex::new(cot, 1.0) * (0.4 * f64::from(k) * PI);
    let slope = Complex::new(1.0, angle * (1.0 + cot * cot) - cot);
    (at, slope * at.exp() / at)
}

#[cfg(test)]
mod tests {
    use super::{Complex, Contour};
    use crate::math;

    #[test]
    fn a_lag_of_first_order_comes_back_as_its_exponential() {
        let contour = Contour::new();
        for t in [0.01, 1.0, 5.0] {
            let ours = contour.step(t, |s| Complex::ONE / (s + Complex::ONE));
            assert!((ours - (1.0 - math::exp(-t))).abs() < 1e-7, "{t}: {ours}");
        }
    }
}
