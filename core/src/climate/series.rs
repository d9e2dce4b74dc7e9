//! The series method: hours of a year from monthly means. See [`Year::from_normals`].

use super::curve::{self, DAYS_IN};
use super::{Normals, Sequence, Year};
use crate::math::{cos, exp, ln, pow};
use crate::units::in_fahrenheit;
use std::f64::consts::PI;
use uom::si::{temperature_interval::degree_fahrenheit, velocity::meter_per_second};

/// How far a day's swing follows the sequence, and the least that is left of it.
const RANGE_FOLLOWS: f64 = 0.35;
const LEAST_RANGE: f64 = 0.15;

/// Hours of the day at which it is coldest and warmest.
const COLDEST: f64 = 6.5;
const WARMEST: f64 = 15.0;

/// Real air lingers where water freezes and thaws: how much, about which °F, how far to each side.
const PLATEAU_PULL: f64 = 0.15;
const PLATEAU_F: f64 = 33.5;
const PLATEAU_WIDTH_F: f64 = 7.0;

/// Wind of each hour of the day, over the mean of the day.
const WIND_BY_HOUR: [f64; 24] = [
    0.81, 0.80, 0.78, 0.78, 0.77, 0.78, 0.83, 0.92, 1.04, 1.13, 1.20, 1.26, 1.30, 1.33, 1.33, 1.30,
    1.22, 1.10, 0.98, 0.91, 0.88, 0.86, 0.84, 0.82,
];

/// Shape of the spread of wind, and Γ(1 + 1/shape), computed by `math.gamma` of `CPython` 3.11.
const WIND_SHAPE: f64 = 1.8;
const WIND_GAMMA: f64 = 0.889_286_732_452_212_9;

/// How far the dew point of a day follows its warmth, by month.
const DEW_FOLLOWS: [f64; 12] =
    [1.07, 1.03, 0.95, 0.77, 0.75, 0.66, 0.51, 0.64, 0.85, 0.97, 1.03, 1.04];

/// The extremes and the dew point of each day, in °F.
struct Days {
    max: [f64; 365],
    min: [f64; 365],
    dew_point: [f64; 365],
}

pub(super) fn year(normals: &Normals, sequence: &Sequence) -> Year {
    let days = days(normals, sequence);
    let air = hourly_air(&days);
    let dew_point = air.iter().enumerate().map(|(hour, air)| days.dew_point[hour / 24].min(*air));
    Year {
        dew_point_c: dew_point.map(from_fahrenheit).collect(),
        air_c: air.iter().copied().map(from_fahrenheit).collect(),
        wind_m_s: hourly_wind(&normals.wind.map(|wind| wind.get::<meter_per_second>())),
    }
}

fn days(normals: &Normals, sequence: &Sequence) -> Days {
    let max = curve::through(&normals.max.map(in_fahrenheit));
    let min = curve::through(&normals.min.map(in_fahrenheit));
    let dew_point = curve::through(&normals.dew_point.map(in_fahrenheit));
    let sigma = normals.day_to_day.map(|sigma| sigma.get::<degree_fahrenheit>());
    let mut days = Days { max, min, dew_point };
    for (day, month) in curve::months().into_iter().enumerate() {
        let middle = f64::midpoint(max[day], min[day]) + sigma[month] * sequence.warmth()[day];
        let half = (max[day] - min[day]) / 2.0
            * (1.0 + RANGE_FOLLOWS * sequence.range()[day]).max(LEAST_RANGE);
        days.max[day] = middle + half;
        days.min[day] = middle - half;
        days.dew_point[day] += DEW_FOLLOWS[month] * sigma[month] * sequence.warmth()[day];
    }
    days
}

/// Joins the extremes of the days, round the end of the year.
fn hourly_air(days: &Days) -> Vec<f64> {
    let shares = std::array::from_fn::<f64, 24, _>(|hour| warm_share(middle_of(hour)));
    let mut air = Vec::with_capacity(Year::HOURS);
    for day in 0..365 {
        for (hour, share) in shares.iter().enumerate() {
            let cold = days.min[if middle_of(hour) > WARMEST { (day + 1) % 365 } else { day }];
            let warm = days.max[if middle_of(hour) < COLDEST { (day + 364) % 365 } else { day }];
            air.push(with_plateau(cold + (warm - cold) * share));
        }
    }
    air
}

/// How near the warmest of its half-day an hour is: 0 at the coldest, 1 at the warmest.
fn warm_share(hour: f64) -> f64 {
    let morning = WARMEST - COLDEST;
    let night = 24.0 - morning;
    let turn = if hour < COLDEST {
        (COLDEST - hour) / night
    } else if hour < WARMEST {
        (hour - COLDEST) / morning
    } else {
        (24.0 + COLDEST - hour) / night
    };
    (1.0 - cos(PI * turn)) / 2.0
}

fn middle_of(hour: usize) -> f64 {
    f64::from(u8::try_from(hour).expect("an hour of a day")) + 0.5
}

fn with_plateau(f: f64) -> f64 {
    let off = f - PLATEAU_F;
    let near = off / PLATEAU_WIDTH_F;
    f - PLATEAU_PULL * off * exp(-near * near / 2.0)
}

fn hourly_wind(monthly: &[f64; 12]) -> Box<[f64]> {
    let mut wind = Vec::with_capacity(Year::HOURS);
    for (mean, days) in monthly.iter().zip(DAYS_IN) {
        let gusts = gusts(u32::from(days) * 24);
        let by_hour = WIND_BY_HOUR.iter().cycle();
        wind.extend(gusts.zip(by_hour).map(|(gust, of_day)| mean * of_day * gust));
    }
    wind.into()
}

/// The wind of each hour of a month over its mean: every quantile once, stepped through so that
/// neighbouring hours are far apart and no hour of the day is favoured.
fn gusts(hours: u32) -> impl Iterator<Item = f64> {
    // 0.618 in whole numbers, rounded up.
    let least = (hours * 618).div_ceil(1000);
    let step = (least..hours).find(|&k| common_divisor(k, hours) == 1).unwrap_or(1);
    (0..hours).map(move |hour| {
        let quantile = (f64::from(hour * step % hours) + 0.5) / f64::from(hours);
        pow(-ln(1.0 - quantile), 1.0 / WIND_SHAPE) / WIND_GAMMA
    })
}

fn common_divisor(a: u32, b: u32) -> u32 {
    if b == 0 { a } else { common_divisor(b, a % b) }
}

fn from_fahrenheit(f: f64) -> f64 {
    (f - 32.0) / 1.8
}

#[cfg(test)]
mod tests {
    use super::{gusts, warm_share, with_plateau};

    #[test]
    fn the_wind_of_a_month_keeps_its_mean() {
        for hours in [672, 720, 744] {
            let mean = gusts(hours).sum::<f64>() / f64::from(hours);
            assert!((mean - 1.0).abs() < 0.002, "{mean}");
        }
    }

    #[test]
    fn the_day_is_coldest_before_sunrise_and_warmest_in_the_afternoon() {
        assert!(warm_share(6.5).abs() < 1e-12);
        assert!((warm_share(15.0) - 1.0).abs() < 1e-12);
        assert!((warm_share(0.0) - warm_share(24.0)).abs() < 1e-12);
    }

    #[test]
    fn the_plateau_draws_air_to_freezing_and_keeps_the_order() {
        assert!(with_plateau(28.0) > 28.0 && with_plateau(39.0) < 39.0);
        let steps = (-400..1200_i16).map(|tenth| with_plateau(f64::from(tenth) / 10.0));
        assert!(steps.is_sorted());
    }
}
