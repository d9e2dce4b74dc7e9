//! What a spending is worth, and what a gap costs.

mod caulk;
mod gap_year;
#[cfg(feature = "peers")]
mod numpy_financial;
mod own_costs;
mod worked_examples;

use uom::si::f64::Ratio;
use winterseam::money::{Dollars, Spending, Worth, Years, worth};

fn of(cost: f64, saving: f64, years: f64, rate: f64) -> Worth {
    worth(&Spending {
        cost: Dollars(cost),
        saving_per_year: Dollars(saving),
        life: Years(years),
        real_rate: Ratio::from(rate),
    })
}
