//! Tables of factors and worked examples.

use super::of;
use crate::harness::Table;

#[test]
fn factors_agree_with_the_library() {
    Table::read("worth/numpy-financial-1-0-0__factors").compare(|row| {
        let (rate, rise) = (row.number("rate_percent") / 100.0, row.number("rise_percent") / 100.0);
        // Savings that rise each year are level ones at a smaller rate.
        let rate = (1.0 + rate) / (1.0 + rise) - 1.0;
        vec![("factor", of(1.0, 1.0, row.number("years"), rate).present_value.0)]
    });
}

#[test]
fn worked_examples_agree_with_the_library() {
    Table::read("worth/numpy-financial-1-0-0__worked").compare(|row| {
        let (cost, saving) = (row.number("cost_usd"), row.number("saving_usd"));
        let years = row.number("years");
        let worth = of(cost, saving, years, row.number("rate_percent") / 100.0);
        let at_irr = of(cost, saving, years, row.number("irr"));
        let never = row.text("discounted_payback_years") == "never";
        assert_eq!(worth.discounted_payback.is_none(), never, "{}", row.text("id"));
        let ratio = |r: Option<uom::si::f64::Ratio>| r.expect("it costs something").value;
        let mut ours = vec![
            ("present_value_usd", worth.present_value.0),
            ("savings_to_investment", ratio(worth.savings_to_investment)),
            ("adjusted_irr", ratio(worth.adjusted_irr)),
            ("at_irr", ratio(at_irr.savings_to_investment)),
            ("simple_payback_years", worth.simple_payback.expect("it saves").0),
        ];
        ours.extend(worth.discounted_payback.map(|y| ("discounted_payback_years", y.0)));
        ours
    });
}
