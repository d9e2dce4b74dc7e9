//! Damage that adds up in warm tissue: Henriques' integral over the warming of the basal layer.

use super::skin::{Moment, SURFACE_C, Warming};
use crate::math;
use crate::units::{celsius, in_celsius, in_kelvin};
use uom::si::f64::{Frequency, Length, Ratio, ThermodynamicTemperature, Time};
use uom::si::thermodynamic_temperature::kelvin;
use uom::si::{frequency::hertz, ratio::ratio, time::second};

/// The longest time that is told, in seconds: six hours, the longest exposure of the experiments.
pub const LONGEST_S: f64 = 21_600.0;

/// How fast tissue is injured at a temperature: rate = P exp(−(E/R)/T).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DamageLaw {
    /// P.
    pub frequency_factor: Frequency,
    /// E/R, as a temperature.
    pub activation: ThermodynamicTemperature,
}

/// What counts as an injury, and how deep it is looked for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Injury {
    /// Depth of the basal layer: the thickness of the epidermis.
    pub basal_depth: Length,
    /// How fast damage adds up there.
    pub law: DamageLaw,
    /// Damage at which the injury has happened.
    pub threshold: Ratio,
}

/// An [`Injury`] in the making: the warming is worked out once for all water temperatures.
#[derive(Debug, Clone)]
pub struct Exposure {
    injury: Injury,
    warming: Warming,
}

impl DamageLaw {
    /// The pair of constants that belongs together; see
    /// [`DAMAGE_INTEGRAL`](crate::sources::hot_water::DAMAGE_INTEGRAL).
    ///
    /// The same P with E of 6.27 or 6.28e8 J/kmol over R of 8314 J/(kmol K) stands in later works;
    /// that pair gives three to five times the published times.
    #[must_use]
    pub fn henriques() -> Self {
        Self {
            frequency_factor: Frequency::new::<hertz>(3.1e98),
            activation: ThermodynamicTemperature::new::<kelvin>(75_000.0),
        }
    }

    /// Rate of damage at a temperature.
    ///
    /// # Equation
    /// r = P exp(−(E/R)/T)
    ///
    /// # Symbols
    /// | symbol | meaning | unit | in the code |
    /// |---|---|---|---|
    /// | P | frequency factor | 1/s | [`Self::frequency_factor`] |
    /// | E/R | activation energy over the gas constant | K | [`Self::activation`] |
    /// | T | temperature of the tissue | K | `at` |
    ///
    /// # Source
    /// [`DAMAGE_INTEGRAL`](crate::sources::hot_water::DAMAGE_INTEGRAL).
    ///
    /// # Valid for
    /// Living tissue from 43 °C; the constants were drawn through exposures of 44 to 60 °C.
    ///
    /// # Leaves out
    /// Healing while the damage adds up: long times come out too short, the safe side.
    ///
    /// # Examples
    /// ```
    /// use uom::si::frequency::hertz;
    /// use winterseam::{hot_water::damage::DamageLaw, units::celsius};
    ///
    /// let rate = |c| DamageLaw::henriques().rate(celsius(c)).get::<hertz>();
    /// assert!((2.0..2.2).contains(&(rate(45.0) / rate(44.0))), "a degree doubles it");
    /// ```
    #[must_use]
    pub fn rate(&self, at: ThermodynamicTemperature) -> Frequency {
        Frequency::new::<hertz>(math::exp(self.ln_rate(in_kelvin(at))))
    }

    fn ln_rate(&self, at_k: f64) -> f64 {
        math::ln(self.frequency_factor.get::<hertz>()) - in_kelvin(self.activation) / at_k
    }
}

impl Injury {
    /// The exposure of this skin to water.
    #[must_use]
    pub fn exposure(self) -> Exposure {
        let warming = Warming::new(self.basal_depth, Time::new::<second>(LONGEST_S));
        Exposure { injury: self, warming }
    }
}

/// The stretch between two moments; between them the logarithm of the damage done in an e-fold of
/// time is a straight line over the logarithm of time.
struct Stretch {
    ln_s: f64,
    width: f64,
    /// Damage in an e-fold of time at the start.
    first: f64,
    /// Growth of its logarithm over the stretch.
    growth: f64,
}

impl Stretch {
    /// Damage done by a share of the stretch.
    fn damage(&self, share: f64) -> f64 {
        let done = self.first * self.width;
        if self.growth.abs() < 1e-9 {
            return done * share;
        }
        done * (math::exp(self.growth * share) - 1.0) / self.growth
    }

    /// Seconds at which this much damage of the stretch is done; the inverse of [`Self::damage`].
    fn moment(&self, damage: f64) -> f64 {
        let part = damage / (self.first * self.width);
        let share = if self.growth.abs() < 1e-9 {
            part
        } else {
            math::ln(1.0 + self.growth * part) / self.growth
        };
        math::exp(self.ln_s + self.width * share)
    }
}

impl Exposure {
    /// Time until the injury; `None` when it takes longer than [`LONGEST_S`].
    ///
    /// # Equation
    /// The t at which Ω(t) = ∫₀ᵗ P exp(−(E/R)/T(τ)) dτ reaches its threshold, where the basal layer
    /// is at T(τ) = B + (W − F) S(τ).
    ///
    /// # Symbols
    /// | symbol | meaning | unit | in the code |
    /// |---|---|---|---|
    /// | Ω | damage | – | [`Self::damage`], [`Injury::threshold`] |
    /// | P, E/R | constants of the rate | 1/s, K | [`DamageLaw`] |
    /// | S | share of a step at the surface that has reached the basal layer | – | [`StepResponse`] |
    /// | W | water | K | `water` |
    /// | B | basal layer at rest | K | [`at_rest_c`] |
    /// | F | surface at rest | K | [`SURFACE_C`] |
    ///
    /// The integral is taken over the logarithm of time, in which the damage of an e-fold is nearly
    /// a straight line on a logarithmic scale: a quarter of the step changes no time by 0.1 %.
    ///
    /// # Source
    /// [`DAMAGE_INTEGRAL`](crate::sources::hot_water::DAMAGE_INTEGRAL),
    /// [`BLOOD_FLOW`](crate::sources::hot_water::BLOOD_FLOW),
    /// [`SKIN_LAYERS`](crate::sources::hot_water::SKIN_LAYERS).
    ///
    /// # Valid for
    /// Running water from 43 to 72 °C on all sides of the skin looked at; beyond, down to 0 and up
    /// to 100 °C, the same law without an exposure behind it.
    ///
    /// # Leaves out
    /// The film of slow water (burns later: not counted on), damage while the skin cools afterwards
    /// (up to 8 % earlier at 155 °F), blood flow that rises with warmth (up to 10 % later).
    ///
    /// # Examples
    /// ```
    /// use uom::si::time::second;
    /// use winterseam::{hot_water::Person, units::celsius};
    ///
    /// let adult = Person::Adult.injury().exposure();
    /// let onset = adult.onset(celsius(60.0)).unwrap().get::<second>();
    /// assert!((3.0..=5.0).contains(&onset), "published: healed after 3 s, not after 5 s");
    /// ```
    ///
    /// [`StepResponse`]: crate::physics::conduction::StepResponse
    /// [`at_rest_c`]: super::skin::at_rest_c
    #[must_use]
    pub fn onset(&self, water: ThermodynamicTemperature) -> Option<Time> {
        let threshold = self.injury.threshold.get::<ratio>();
        let mut done = 0.0;
        for stretch in self.stretches(water) {
            let more = stretch.damage(1.0);
            if done + more >= threshold {
                return Some(Time::new::<second>(stretch.moment(threshold - done)));
            }
            done += more;
        }
        None
    }

    /// Damage that has added up after a time; what [`LONGEST_S`] adds where the time is longer.
    #[must_use]
    pub fn damage(&self, water: ThermodynamicTemperature, after: Time) -> Ratio {
        let end = math::ln(after.get::<second>());
        let part = |s: Stretch| s.damage(((end - s.ln_s) / s.width).clamp(0.0, 1.0));
        Ratio::new::<ratio>(self.stretches(water).map(part).sum())
    }

    /// Temperature of the basal layer after a time in the water.
    #[must_use]
    pub fn temperature(
        &self,
        water: ThermodynamicTemperature,
        after: Time,
    ) -> ThermodynamicTemperature {
        celsius(self.basal_c(in_celsius(water), self.warming.share_after(after)))
    }

    fn basal_c(&self, water_c: f64, share: f64) -> f64 {
        self.warming.start_c() + (water_c - SURFACE_C) * share
    }

    fn stretches(&self, water: ThermodynamicTemperature) -> impl Iterator<Item = Stretch> {
        let water_c = in_celsius(water);
        let ln_done = move |m: &Moment| {
            self.injury.law.ln_rate(self.basal_c(water_c, m.share) + 273.15) + m.ln_s
        };
        self.warming.moments().windows(2).map(move |pair| {
            let first = ln_done(&pair[0]);
            Stretch {
                ln_s: pair[0].ln_s,
                width: pair[1].ln_s - pair[0].ln_s,
                first: math::exp(first),
                growth: ln_done(&pair[1]) - first,
            }
        })
    }
}

#[cfg(test)]
mod tests {
    use super::super::Person;
    use super::{Exposure, LONGEST_S, Warming};
    use crate::units::celsius;
    use uom::si::{f64::Time, ratio::ratio, time::second};

    fn onset_s(exposure: &Exposure, water_c: f64) -> f64 {
        exposure.onset(celsius(water_c)).map_or(f64::INFINITY, |time| time.get::<second>())
    }

    /// Every water of a tap, in steps of a quarter of a degree.
    fn waters() -> impl Iterator<Item = f64> {
        (0..=400_u32).map(|quarter| f64::from(quarter) / 4.0)
    }

    #[test]
    fn hotter_water_never_burns_later() {
        for person in Person::ALL {
            let skin = person.injury().exposure();
            let times = waters().map(|water| onset_s(&skin, water)).collect::<Vec<_>>();
            assert!(times.is_sorted_by(|cooler, hotter| hotter <= cooler), "{person:?}");
        }
    }

    #[test]
    fn a_child_burns_before_an_older_adult_and_an_older_adult_before_an_adult() {
        let skin = |person: Person| person.injury().exposure();
        let (child, older, adult) =
            (skin(Person::Child), skin(Person::OlderAdult), skin(Person::Adult));
        for water in waters() {
            let times = [&child, &older, &adult].map(|skin| onset_s(skin, water));
            assert!(times.is_sorted(), "{water} °C: {times:?}");
        }
    }

    #[test]
    fn the_damage_at_the_onset_is_the_threshold() {
        for person in Person::ALL {
            let skin = person.injury().exposure();
            for water in [45.0, 55.0, 65.0, 100.0].map(celsius) {
                let damage = skin.damage(water, skin.onset(water).expect("within six hours"));
                let apart = damage.get::<ratio>() / person.injury().threshold.get::<ratio>() - 1.0;
                assert!(apart.abs() < 1e-9, "{person:?}: {apart}");
            }
        }
    }

    #[test]
    fn a_quarter_of_the_step_changes_no_time_by_a_thousandth() {
        for injury in Person::ALL.map(Person::injury) {
            let longest = Time::new::<second>(LONGEST_S);
            let warming = Warming::with_moments(injury.basal_depth, longest, 40.0);
            let (ours, fine) = (injury.exposure(), Exposure { injury, warming });
            for water in [44.5, 48.0, 52.0, 60.0, 70.0, 85.0, 100.0] {
                let change = onset_s(&ours, water) / onset_s(&fine, water) - 1.0;
                assert!(change.abs() < 1e-3, "{injury:?} {water} °C: {change}");
            }
        }
    }
}
