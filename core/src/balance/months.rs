//! Heat by the months of a year.

use crate::climate::{DAYS_IN, Hour, Year};
use std::iter::Sum;
use std::ops::{Add, Index, IndexMut, Mul};
use uom::si::f64::{Energy, Power, Ratio, Time};
use uom::si::time::{day, hour};

/// An amount of heat for each month, January first.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Months([Energy; 12]);

impl Months {
    /// From what each month has, January 0.
    #[must_use]
    pub fn each(heat: impl FnMut(usize) -> Energy) -> Self {
        Self(std::array::from_fn(heat))
    }

    /// What flows in each hour of a year, summed.
    pub(super) fn over(year: &Year, flow: impl Fn(usize, Hour) -> Power) -> Self {
        let an_hour = Time::new::<hour>(1.0);
        year.hours_by_month().fold(Self::default(), |mut sums, (month, now)| {
            sums[month] += flow(month, now) * an_hour;
            sums
        })
    }

    /// What flows all year long.
    pub(super) fn steady(flow: Power) -> Self {
        Self::flowing([flow; 12])
    }

    /// What flows in each month.
    pub(super) fn flowing(flow: [Power; 12]) -> Self {
        Self::each(|month| flow[month] * Time::new::<day>(f64::from(DAYS_IN[month])))
    }

    /// The year.
    #[must_use]
    pub fn total(&self) -> Energy {
        self.0.iter().copied().sum()
    }
}

impl Index<usize> for Months {
    type Output = Energy;

    fn index(&self, month: usize) -> &Energy {
        &self.0[month]
    }
}

impl IndexMut<usize> for Months {
    fn index_mut(&mut self, month: usize) -> &mut Energy {
        &mut self.0[month]
    }
}

impl Add for Months {
    type Output = Self;

    fn add(self, other: Self) -> Self {
        Self::each(|month| self[month] + other[month])
    }
}

impl Mul<Ratio> for Months {
    type Output = Self;

    fn mul(self, by: Ratio) -> Self {
        Self::each(|month| self[month] * by)
    }
}

impl Sum for Months {
    fn sum<I: Iterator<Item = Self>>(all: I) -> Self {
        all.fold(Self::default(), Add::add)
    }
}
