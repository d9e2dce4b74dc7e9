//! How much water can gather in the roof, from the draws of a home.

use super::draw::SOURCES;
use super::{Draw, draw};
use crate::balance::{self, Weather};
use crate::home::{Home, WetWindows};
use crate::moisture::{Dampness, IndoorVapour, RoofGrade, RoofMonth, RoofYear};
use crate::sources::{Confidence, Figure, Source, moisture};
use crate::units::kelvins;
use uom::si::f64::Mass;
use uom::si::mass::kilogram;

/// A roof under a clear sky, at the high end, day and night;
/// [`CLEAR_SKY`](moisture::CLEAR_SKY).
const CLEAR_SKY_K: f64 = 4.0;
/// A month that brings less than this share of the year's water is not told: judgement.
const LEAST_SHARE: f64 = 0.05;
/// Less than a glass of water in a year is none.
const LEAST_KG: f64 = 0.25;

const ROOF_SOURCES: &[&Source] = &[
    &moisture::HANDBOOK_CH1,
    &moisture::LEAKAGE_AREA,
    &moisture::ISO_13788,
    &moisture::WINTER_HUMIDITY,
    &moisture::CLEAR_SKY,
    &moisture::ROOF_LAYERS,
];

/// Water that leaks can bring into the roof in a year.
#[derive(Debug, Clone, PartialEq)]
pub struct RoofWater {
    /// First month in which much of it comes and more gathers than dries, 1 to 12.
    pub from: u8,
    /// The last such month; before the first where the new year lies between.
    pub to: u8,
    /// The most that can turn to frost or dew in the months in which more gathers than dries: a
    /// range of upper bounds.
    pub most: Figure<Mass>,
    /// How the year ends where no air goes through the roof.
    pub unaired: RoofGrade,
}

/// The most water that the gaps of a home can bring into its roof; `None` where no gap is known to
/// lead there, or where nothing gathers in an ordinary year.
#[must_use]
pub fn roof_water(home: &Home, weather: &Weather<'_>) -> Option<RoofWater> {
    let year = |end, dampness, sky| {
        let home = draw(home, end);
        balance::wet_roof(&home, weather, IndoorVapour::Added(dampness), kelvins(sky))
    };
    let [dry, usual, damp] = dampness(home);
    let best = year(Draw::Best, usual, 0.0)?;
    let low = year(Draw::Low, dry, 0.0)?;
    let high = year(Draw::High, damp, CLEAR_SKY_K)?;
    let gains: [bool; 12] = best.months.each_ref().map(RoofMonth::gains);
    let water = |year: &RoofYear| -> Mass {
        year.months.iter().zip(gains).filter(|(_, gains)| *gains).map(|(m, _)| m.wetting).sum()
    };
    let sources = [ROOF_SOURCES, SOURCES].concat();
    let most = Figure::exact(water(&best), Confidence::Guessed, &sources)
        .between(water(&low), water(&high))
        .from_inputs(["gaps", "home.zip", "home.setpoint_f", "home.wet_windows"]);
    let least = best.wetting() * LEAST_SHARE;
    let (from, to) =
        season(best.months.each_ref().map(|month| month.gains() && month.wetting >= least))?;
    let unaired = best.grade();
    (most.best >= Mass::new::<kilogram>(LEAST_KG)).then_some(RoofWater { from, to, most, unaired })
}

/// How damp the home is, low, best and high: wet windows tell of a class more, dry ones of a class
/// less ([`WINTER_HUMIDITY`](moisture::WINTER_HUMIDITY)).
fn dampness(home: &Home) -> [Dampness; 3] {
    use Dampness::{Damp, Dry, Usual, Wet};
    match home.building.wet_windows {
        Some(WetWindows::Often) => [Usual, Damp, Wet],
        Some(WetWindows::Never) => [Dry, Dry, Usual],
        Some(WetWindows::Sometimes) | None => [Dry, Usual, Damp],
    }
}

/// First and last of these months, counted from July on, so that a winter is one.
fn season(months: [bool; 12]) -> Option<(u8, u8)> {
    let from_july = || (7..=12).chain(1..=6).filter(|&month| months[usize::from(month) - 1]);
    Some((from_july().next()?, from_july().next_back()?))
}

#[cfg(test)]
mod tests {
    use super::season;

    #[test]
    fn a_winter_goes_through_the_new_year() {
        let mut months = [false; 12];
        assert_eq!(season(months), None);
        months[0] = true;
        assert_eq!(season(months), Some((1, 1)));
        months[11] = true;
        months[2] = true;
        assert_eq!(season(months), Some((12, 3)));
    }
}
