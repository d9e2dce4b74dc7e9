//! What a spending is worth that saves the same each year.

use super::Dollars;
use crate::math;
use uom::si::f64::Ratio;

/// Rates nearer to zero count as zero: the quotient would lose more digits than that misses.
const FLAT: f64 = 1e-9;

/// A span of years.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
pub struct Years(pub f64);

/// Money spent today, and what it saves.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spending {
    /// Paid today.
    pub cost: Dollars,
    /// Saved at the end of each year, in dollars of today.
    pub saving_per_year: Dollars,
    /// How long the saving lasts.
    pub life: Years,
    /// What a dollar earns in a year beyond inflation.
    pub real_rate: Ratio,
}

/// What a spending is worth. `None` is a quotient without meaning.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Worth {
    /// All savings, in dollars of today.
    pub present_value: Dollars,
    /// Present value over cost; above 1 it pays.
    pub savings_to_investment: Option<Ratio>,
    /// Cost over the saving of a year.
    pub simple_payback: Option<Years>,
    /// When the present value of the savings so far has reached the cost; `None` is never.
    pub discounted_payback: Option<Years>,
    /// Yearly yield where savings are laid aside at the real rate.
    pub adjusted_irr: Option<Ratio>,
}

/// Present value, savings-to-investment ratio, paybacks and yearly yield of a spending.
///
/// # Equation
/// ```text
/// PV = S · u(n), u(t) = [1 − (1 + d)^−t] ÷ d, u(t) = t where d = 0;
/// SIR = PV ÷ C; simple payback = C ÷ S; discounted payback t with S · u(t) = C, on a straight line
/// within its year; AIRR = (1 + d) · SIR^(1/n) − 1
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `PV` | present value of all savings | $ | `Worth::present_value` |
/// | `S` | level real saving at each year's end | $/a | `spending.saving_per_year` |
/// | `C` | cost today | $ | `spending.cost` |
/// | `n` | life | a | `spending.life` |
/// | `d` | real discount rate | 1/a | `spending.real_rate` |
/// | `SIR` | savings-to-investment ratio | – | `Worth::savings_to_investment` |
/// | `AIRR` | adjusted internal rate of return | 1/a | `Worth::adjusted_irr` |
///
/// # Source
/// [`NIST_HANDBOOK_135`](crate::sources::money::NIST_HANDBOOK_135),
/// [`ASTM_E917`](crate::sources::money::ASTM_E917)
///
/// # Valid for
/// Real rates above −100 %. A life that ends within a year earns the matching part of its saving.
///
/// # Leaves out
/// Energy prices that rise faster than others, upkeep, and what is left at the end of the life.
/// Rising prices make the spending worth more, upkeep makes it worth less.
///
/// # Examples
/// ```
/// use winterseam::money::{Dollars, Spending, Years, worth};
///
/// let film = Spending {
///     cost: Dollars(100.0),
///     saving_per_year: Dollars(30.0),
///     life: Years(10.0),
///     real_rate: 0.03.into(),
/// };
/// let worth = worth(&film);
/// assert!((worth.present_value.0 - 255.91).abs() < 0.01);
/// assert!((worth.simple_payback.unwrap().0 - 3.33).abs() < 0.01);
/// ```
#[must_use]
pub fn worth(spending: &Spending) -> Worth {
    let Spending { cost, saving_per_year: saving, life: Years(life), real_rate } = *spending;
    let rate = real_rate.value;
    let present_value = saving * uniform(rate, life.max(0.0));
    let ratio = (cost.0 > 0.0).then(|| present_value.0 / cost.0);
    let pays = cost.0 >= 0.0 && saving.0 > 0.0;
    Worth {
        present_value,
        savings_to_investment: ratio.map(Ratio::from),
        simple_payback: pays.then(|| Years(cost.0 / saving.0)),
        discounted_payback: if pays { payback(cost.0 / saving.0, rate, life) } else { None },
        adjusted_irr: ratio
            .filter(|&ratio| ratio >= 0.0 && life > 0.0)
            .map(|ratio| ((1.0 + rate) * math::pow(ratio, 1.0 / life) - 1.0).into()),
    }
}

/// The lowest real rate that federal energy projects may be discounted with.
///
/// ```
/// assert_eq!(winterseam::money::usual_real_rate().value, 0.03);
/// ```
///
/// From [`CFR_10_436`](crate::sources::money::CFR_10_436).
#[must_use]
pub fn usual_real_rate() -> Ratio {
    0.03.into()
}

/// Present value of one dollar at the end of each year.
fn uniform(rate: f64, years: f64) -> f64 {
    if rate.abs() < FLAT { years } else { (1.0 - math::pow(1.0 + rate, -years)) / rate }
}

/// When the savings have paid back `factor` times the saving of one year; `None` if not in its life.
fn payback(factor: f64, rate: f64, life: f64) -> Option<Years> {
    if factor > uniform(rate, life) {
        return None;
    }
    let before = crossing(factor, rate).floor().min(life);
    let after = (before + 1.0).min(life);
    if after <= before {
        return Some(Years(before));
    }
    let (paid_before, paid_after) = (uniform(rate, before), uniform(rate, after));
    Some(Years(math::line(factor, (paid_before, before), (paid_after, after))))
}

/// Years t, whole or not, with u(t) = `factor`.
fn crossing(factor: f64, rate: f64) -> f64 {
    if rate.abs() < FLAT { factor } else { -math::ln(1.0 - factor * rate) / math::ln(1.0 + rate) }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn spent(cost: f64, saving: f64, life: f64, rate: f64) -> Worth {
        worth(&Spending {
            cost: Dollars(cost),
            saving_per_year: Dollars(saving),
            life: Years(life),
            real_rate: rate.into(),
        })
    }

    #[test]
    fn what_costs_nothing_has_no_ratio_and_no_yield() {
        let free = spent(0.0, 30.0, 10.0, 0.03);
        assert_eq!((free.savings_to_investment, free.adjusted_irr), (None, None));
        assert_eq!(free.simple_payback, Some(Years(0.0)));
        assert_eq!(free.discounted_payback, Some(Years(0.0)));
    }

    #[test]
    fn what_saves_nothing_never_pays_back() {
        for saving in [0.0, -5.0] {
            let lost = spent(100.0, saving, 10.0, 0.03);
            assert_eq!((lost.simple_payback, lost.discounted_payback), (None, None));
        }
        assert_eq!(spent(100.0, -5.0, 10.0, 0.03).adjusted_irr, None);
        assert!(spent(100.0, 0.0, 10.0, 0.03).adjusted_irr.is_some_and(|r| r.value <= -1.0));
    }

    #[test]
    fn what_does_not_last_is_worth_nothing() {
        let gone = spent(100.0, 30.0, 0.0, 0.03);
        assert!(gone.present_value.0.abs() < 1e-12);
        assert_eq!((gone.discounted_payback, gone.adjusted_irr), (None, None));
    }

    #[test]
    fn without_interest_both_paybacks_agree() {
        for rate in [0.0, 1e-12] {
            let worth = spent(100.0, 30.0, 10.0, rate);
            let years = |y: Option<Years>| y.expect("pays back").0;
            let apart = years(worth.simple_payback) - years(worth.discounted_payback);
            assert!(apart.abs() < 1e-9);
            assert!((worth.present_value.0 - 300.0).abs() < 1e-6);
        }
    }

    #[test]
    fn a_payback_after_the_life_is_never() {
        assert!(spent(95.0, 10.0, 10.0, 0.03).discounted_payback.is_none());
        assert!(spent(85.0, 10.0, 10.0, 0.03).discounted_payback.is_some());
    }

    #[test]
    fn a_payback_on_the_very_last_day_counts() {
        let last_day = spent(255.0, 30.0, 8.5, 0.0).discounted_payback;
        assert!(last_day.is_some_and(|years| (years.0 - 8.5).abs() < 1e-9));
    }
}
