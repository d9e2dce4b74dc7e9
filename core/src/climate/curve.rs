//! A smooth course through the year that keeps the mean of every month.

/// Days in each month; 29 February is dropped.
pub(crate) const DAYS_IN: [u16; 12] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/// How often the nodes are moved. What is left after that is far below the rounding of the tables.
const ROUNDS: u8 = 30;

/// The month of each day, both from 0.
pub(super) fn months() -> [usize; 365] {
    let mut months = [0; 365];
    let mut day = 0;
    for (month, days) in DAYS_IN.into_iter().enumerate() {
        for _ in 0..days {
            months[day] = month;
            day += 1;
        }
    }
    months
}

/// One value a day: straight lines between nodes in mid-month, the nodes moved until the days of
/// each month have its mean.
pub(super) fn through(monthly: &[f64; 12]) -> [f64; 365] {
    let months = months();
    let mut nodes = *monthly;
    for _ in 0..ROUNDS {
        let means = means_of(&between(&nodes, &months), &months);
        for month in 0..12 {
            nodes[month] += monthly[month] - means[month];
        }
    }
    between(&nodes, &months)
}

fn means_of(daily: &[f64; 365], months: &[usize; 365]) -> [f64; 12] {
    let mut means = [0.0; 12];
    for (value, &month) in daily.iter().zip(months) {
        means[month] += value / f64::from(DAYS_IN[month]);
    }
    means
}

/// Straight lines between the nodes, round the end of the year.
fn between(nodes: &[f64; 12], months: &[usize; 365]) -> [f64; 365] {
    let mut daily = [0.0; 365];
    let mut first = 0;
    for day in 0_u16..365 {
        let month = months[usize::from(day)];
        if day > 0 && months[usize::from(day) - 1] != month {
            first = day;
        }
        // From mid-month to the middle of the day; negative in the first half.
        let past_node = f64::from(day - first) + 0.5 - f64::from(DAYS_IN[month]) / 2.0;
        let other = if past_node < 0.0 { (month + 11) % 12 } else { (month + 1) % 12 };
        let apart = f64::from(DAYS_IN[month] + DAYS_IN[other]) / 2.0;
        let share = past_node.abs() / apart;
        daily[usize::from(day)] = nodes[month] + (nodes[other] - nodes[month]) * share;
    }
    daily
}

#[cfg(test)]
mod tests {
    use super::{means_of, months, through};

    #[test]
    fn every_month_keeps_its_mean() {
        let monthly = [-8.0, -6.0, 0.0, 7.0, 13.0, 18.0, 21.0, 20.0, 15.0, 9.0, 2.0, -5.0];
        let kept = means_of(&through(&monthly), &months());
        for (kept, wanted) in kept.into_iter().zip(monthly) {
            assert!((kept - wanted).abs() < 1e-6, "{kept} for {wanted}");
        }
    }

    #[test]
    fn the_year_closes_without_a_step() {
        let mut monthly = [10.0; 12];
        monthly[0] = 0.0;
        let daily = through(&monthly);
        let largest = daily.windows(2).map(|pair| (pair[1] - pair[0]).abs()).fold(0.0, f64::max);
        assert!((daily[0] - daily[364]).abs() <= largest + 1e-12);
    }
}
