//! As much of the complex numbers as an inverse Laplace transform asks for, through [`math`].

use crate::math;
use std::ops::{Add, Div, Mul, Sub};

/// A complex number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Complex {
    pub(super) re: f64,
    pub(super) im: f64,
}

impl Complex {
    pub(super) const ZERO: Self = Self::real(0.0);
    pub(super) const ONE: Self = Self::real(1.0);

    pub(super) const fn new(re: f64, im: f64) -> Self {
        Self { re, im }
    }

    pub(super) const fn real(re: f64) -> Self {
        Self::new(re, 0.0)
    }

    pub(super) fn exp(self) -> Self {
        let size = math::exp(self.re);
        Self::new(size * math::cos(self.im), size * math::sin(self.im))
    }

    /// The root whose real part is not negative.
    pub(super) fn sqrt(self) -> Self {
        let size = self.size();
        let half = math::sqrt(0.5 * (size + self.re.abs()));
        if half == 0.0 {
            Self::ZERO
        } else if self.re >= 0.0 {
            Self::new(half, self.im / (2.0 * half))
        } else {
            Self::new(self.im.abs() / (2.0 * half), half.copysign(self.im))
        }
    }

    pub(super) fn size(self) -> f64 {
        math::sqrt(self.re * self.re + self.im * self.im)
    }
}

impl Add for Complex {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self::new(self.re + other.re, self.im + other.im)
    }
}

impl Sub for Complex {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self::new(self.re - other.re, self.im - other.im)
    }
}

impl Mul for Complex {
    type Output = Self;
    fn mul(self, other: Self) -> Self {
        Self::new(self.re * other.re - self.im * other.im, self.re * other.im + self.im * other.re)
    }
}

impl Mul<f64> for Complex {
    type Output = Self;
    fn mul(self, by: f64) -> Self {
        Self::new(self.re * by, self.im * by)
    }
}

impl Div for Complex {
    type Output = Self;
    fn div(self, by: Self) -> Self {
        let square = by.re * by.re + by.im * by.im;
        self * Self::new(by.re / square, -by.im / square)
    }
}

#[cfg(test)]
mod tests {
    use super::Complex;

    #[test]
    fn a_root_squared_is_the_number_again_on_both_sides_of_the_cut() {
        for (re, im) in [(3.0, 4.0), (-3.0, 4.0), (-3.0, -4.0), (-9.0, 0.0), (0.0, 2.0)] {
            let root = Complex::new(re, im).sqrt();
            let back = root * root - Complex::new(re, im);
            assert!(root.re >= 0.0 && back.size() < 1e-12, "{re} {im}: {root:?}");
        }
    }
}
