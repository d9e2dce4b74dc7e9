//! Dollars, and what a spending is worth over its life.

mod worth;

pub use worth::{Spending, Worth, Years, usual_real_rate, worth};

use std::iter::Sum;
use std::ops::{Add, Mul, Neg, Sub};

/// United States dollars of today.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
pub struct Dollars(pub f64);

impl Add for Dollars {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

impl Sub for Dollars {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0 - other.0)
    }
}

impl Neg for Dollars {
    type Output = Self;
    fn neg(self) -> Self {
        Self(-self.0)
    }
}

impl Mul<f64> for Dollars {
    type Output = Self;
    fn mul(self, times: f64) -> Self {
        Self(self.0 * times)
    }
}

impl Sum for Dollars {
    fn sum<I: Iterator<Item = Self>>(amounts: I) -> Self {
        amounts.fold(Self::default(), Add::add)
    }
}
