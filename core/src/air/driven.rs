//! The hours of a year as the enhanced model sees them: raised to its powers once, so that a home
//! costs a square root an hour.

use super::enhanced::Pressing;
use crate::climate::Year;
use crate::math::{pow, sqrt};
use crate::physics::power_law::PowerLaw;
use crate::units::{celsius, warmer_by};
use uom::si::f64::{Ratio, ThermodynamicTemperature, VolumeRate};
use uom::si::{ratio::ratio, temperature_interval::kelvin, volume_rate::cubic_meter_per_second};

/// What warmth and wind do in each hour of a year, at one place, one thermostat setting and one
/// exponent: |ΔT|²ⁿ and U⁴ⁿ side by side.
#[derive(Debug, Clone, PartialEq)]
pub struct Driven {
    exponent: Ratio,
    warmth: Box<[f64]>,
    wind: Box<[f64]>,
}

impl Driven {
    /// The hours of a year around a room of this temperature.
    #[must_use]
    pub fn of(year: &Year, room: ThermodynamicTemperature, exponent: Ratio) -> Self {
        let n = exponent.get::<ratio>();
        let apart = |air| warmer_by(room, celsius(air)).get::<kelvin>().abs();
        Self {
            exponent,
            warmth: year.air_c().iter().map(|air| pow(apart(*air), 2.0 * n)).collect(),
            wind: year.wind_m_s().iter().map(|wind| pow(*wind, 4.0 * n)).collect(),
        }
    }

    /// Air through a home in each hour, as [`enhanced::flow`](super::enhanced::flow) has it at best;
    /// `None` for leaks of another exponent. Allocates nothing.
    #[must_use]
    pub fn flows(
        &self,
        leaks: &PowerLaw,
        home: &Pressing,
    ) -> Option<impl Iterator<Item = VolumeRate>> {
        let (stack, wind) = home.of_unit_hour(self.exponent);
        let c = leaks.coefficient();
        let (stack, wind) = (c * stack * (c * stack), c * wind * (c * wind));
        let hours = self.warmth.iter().zip(&self.wind);
        let flow = move |(dt, u): (&f64, &f64)| {
            VolumeRate::new::<cubic_meter_per_second>(sqrt(stack * dt + wind * u))
        };
        (leaks.exponent() == self.exponent).then(|| hours.map(flow))
    }
}

#[cfg(all(test, feature = "atlas"))]
mod tests {
    use super::*;
    use crate::air::enhanced::{Foundation, flow};
    use crate::air::infiltration::Storeys;
    use crate::climate::Atlas;
    use crate::home::Shelter;

    /// A square of a power beside a power of twice the exponent: some ulps.
    const ULPS: f64 = 1e-14;

    #[test]
    fn a_year_raised_once_flows_as_each_hour_on_its_own() {
        let station = Atlas::embedded().station("727730").unwrap();
        let (year, room) = (Year::of(&station), celsius(20.0));
        for n in [0.5, 0.6, 0.67, 1.0].map(Ratio::new::<ratio>) {
            let leaks = PowerLaw::new(0.06, n).unwrap();
            let home = Pressing::of(Shelter::LoneHome, Storeys::One, false, Foundation::CrawlSpace);
            let driven = Driven::of(&year, room, n);
            let flows = driven.flows(&leaks, &home).unwrap();
            for (now, ours) in year.hours().zip(flows) {
                let plain = flow(&leaks, warmer_by(room, now.air), now.wind, &home).flow.best;
                assert!((ours - plain).abs() <= plain * ULPS, "{ours:?} {plain:?}");
            }
        }
    }

    #[test]
    fn leaks_of_another_exponent_are_refused() {
        let station = Atlas::embedded().station("727730").unwrap();
        let [n, other] = [0.67, 0.65].map(Ratio::new::<ratio>);
        let driven = Driven::of(&Year::of(&station), celsius(20.0), n);
        let home = Pressing::of(Shelter::LoneHome, Storeys::One, false, Foundation::CrawlSpace);
        assert!(driven.flows(&PowerLaw::new(0.06, other).unwrap(), &home).is_none());
    }
}
