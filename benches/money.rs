//! What repairs are worth.

use winterseam::money::{Dollars, Spending, Years, usual_real_rate, worth};

/// Repairs.
pub(crate) const REPAIRS: u32 = 1000;

/// Present value, paybacks and yield of each; present values summed, dollars.
pub(crate) fn worths() -> f64 {
    let value = |repair: u32| {
        let spending = Spending {
            cost: Dollars(f64::from(repair % 50 * 10 + 20)),
            saving_per_year: Dollars(f64::from(repair % 70 + 30)),
            life: Years(f64::from(repair % 20 + 5)),
            real_rate: usual_real_rate(),
        };
        std::hint::black_box(worth(&spending)).present_value.0
    };
    (0..REPAIRS).map(value).sum()
}
