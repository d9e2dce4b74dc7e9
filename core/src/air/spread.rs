//! Air that wind and warmth drive through a home whose leaks are known part by part: the full
//! model of which the [enhanced](super::enhanced) one is a table.

use super::enhanced::{Foundation, LeakFlow};
use crate::math::pow;
use crate::physics::power_law::PowerLaw;
use crate::physics::stack::stack_pressure;
use crate::properties::air::{AIR_CELSIUS, Air};
use crate::sources::air::{LEAK_SPREAD_1998, LEAK_SPREAD_1998_CRAWL_SPACE};
use crate::sources::{Confidence, Figure, Source};
use crate::units::in_celsius;
use uom::si::f64::{
    Area, Length, Ratio, TemperatureInterval, ThermodynamicTemperature, Velocity, VolumeRate,
};
use uom::si::{
    area::square_meter, length::meter, mass_density::kilogram_per_cubic_meter, pressure::pascal,
    ratio::ratio, velocity::meter_per_second, volume_rate::cubic_meter_per_second,
};

/// How much wind and warmth take from each other where they meet: −0.33 in the source.
const MEETING: f64 = -1.0 / 3.0;

/// Largest share of the leaks that a flue may have, and largest height over that of the ceiling.
/// Usual are a fifth and one and a half; far beyond, the stack factor turns negative.
const FLUE: (f64, f64) = (0.5, 2.0);

/// Wind at the top of a flue over wind at the eaves.
const AT_THE_FLUE: f64 = 1.5;

/// Bias and scatter of a whole home where its spread is known and wind drives it.
const MODEL_ERROR: f64 = 0.15;

/// Leakage areas of the parts of a home, all stated alike.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Leaks {
    /// In the ceiling.
    pub ceiling: Area,
    /// In the floor.
    pub floor: Area,
    /// In the walls.
    pub walls: Area,
    /// An open flue, if there is one.
    pub flue: Option<Flue>,
    /// From the floor to the ceiling of the uppermost storey.
    pub height: Length,
}

/// A flue that stands open to the rooms.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Flue {
    /// Its leakage area.
    pub area: Area,
    /// Its top above the floor.
    pub top: Length,
}

/// How the leaks of a home are spread over its parts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spread {
    /// Share of ceiling and floor together, R.
    level: f64,
    /// Share of the ceiling less that of the floor, X.
    uneven: f64,
    /// Share of the flue, Y.
    flue: f64,
    /// Flue above the ceiling over height of the ceiling, β − 1.
    rise: f64,
    height_m: f64,
}

impl Spread {
    /// From the leaks of each part; `None` for a negative area, a home without leaks or height,
    /// and a flue with more than half of the leaks or a top outside one to two ceiling heights.
    #[must_use]
    pub fn of(leaks: &Leaks) -> Option<Self> {
        let height_m = leaks.height.get::<meter>();
        let flue = leaks.flue.unwrap_or(Flue { area: Area::default(), top: leaks.height });
        let top = flue.top.get::<meter>() / height_m;
        let [ceiling, floor, walls, flue] = [leaks.ceiling, leaks.floor, leaks.walls, flue.area]
            .map(|area| area.get::<square_meter>());
        let all = ceiling + floor + walls + flue;
        let spread = Self {
            level: (ceiling + floor) / all,
            uneven: (ceiling - floor) / all,
            flue: flue / all,
            rise: top - 1.0,
            height_m,
        };
        let sound = [ceiling, floor, walls, flue].iter().all(|area| *area >= 0.0)
            && [all, height_m].iter().all(|size| *size > 0.0 && size.is_finite());
        (sound && spread.flue <= FLUE.0 && (1.0..=FLUE.1).contains(&top)).then_some(spread)
    }

    /// Share of the pressure of warmth that drives air, raised to the exponent: fs.
    #[must_use]
    pub fn stack_factor(&self, exponent: Ratio) -> Ratio {
        let n = exponent.get::<ratio>();
        let neutral = self.uneven + (2.0 * n + 1.0) * self.flue;
        let off_centre = (neutral * neutral / (2.0 - self.level)).min(1.0);
        let two_sided = pow(0.5 - 0.5 * pow(off_centre, 1.25), n + 1.0);
        let rooms = (1.0 + n * self.level) / (n + 1.0) * two_sided;
        Ratio::new::<ratio>(rooms + self.drawn_by_the_flue(n))
    }

    /// What a flue adds to the stack factor: F.
    fn drawn_by_the_flue(&self, n: f64) -> f64 {
        let drawn_over = self.level + 2.0 * (1.0 - self.level - self.flue) / (n + 1.0)
            - 2.0 * self.flue * pow(self.rise, n);
        let short = drawn_over - self.uneven;
        let lost = 3.0 * short * short * pow(self.level, 1.0 - n) / (2.0 * (self.rise + 2.0));
        n * self.flue * pow(self.rise, (3.0 * n - 1.0) / 3.0) * (1.0 - lost)
    }

    /// Share of the pressure of wind that drives air, raised to the exponent: fw.
    #[must_use]
    pub fn wind_factor(&self, exponent: Ratio, foundation: Foundation) -> Ratio {
        let n = exponent.get::<ratio>();
        let even = 0.19 * (2.0 - n);
        Ratio::new::<ratio>(match foundation {
            Foundation::Slab => even * self.left_by_the_ceiling() - self.taken_by_the_flue(),
            Foundation::CrawlSpace => even * self.left_by_the_crawl_space(n),
        })
    }

    fn left_by_the_ceiling(&self) -> f64 {
        1.0 - pow(self.ceiling(), 1.5 - self.flue)
    }

    fn taken_by_the_flue(&self) -> f64 {
        let above = self.ceiling() + self.flue;
        self.flue / 4.0 * (above - 2.0 * self.flue * pow(above, 4.0))
    }

    fn ceiling(&self) -> f64 {
        0.5 * (self.uneven + self.level)
    }

    fn left_by_the_crawl_space(&self, n: f64) -> f64 {
        let balanced = (1.0 - self.level) / 5.0 - 1.5 * self.flue;
        let uneven = 1.0 - pow(0.5 * (self.uneven - balanced).abs(), 1.5);
        uneven * (1.0 - self.level * (0.5 * n + 0.2)) * (1.0 - self.flue / 4.0)
    }

    /// Wind that the leaks feel over wind at the eaves, Sw, from the shelter of the walls and of
    /// the top of the flue (1 where nothing stands before it).
    #[must_use]
    pub fn shelter(&self, walls: Ratio, flue_top: Ratio) -> Ratio {
        walls * (1.0 - self.flue) + flue_top * (AT_THE_FLUE * self.flue)
    }
}

/// What drives air through a home in one hour.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weather {
    /// The air outdoors.
    pub air: Air,
    /// The temperature of the rooms.
    pub room: ThermodynamicTemperature,
    /// Rooms less outdoors.
    pub apart: TemperatureInterval,
    /// Wind that the leaks feel: at the eaves, times [`Spread::shelter`].
    pub wind: Velocity,
}

impl Weather {
    fn is_sound(&self) -> bool {
        AIR_CELSIUS.contains(&in_celsius(self.room))
            && self.apart.is_finite()
            && self.wind.is_finite()
    }
}

/// Air that leaks through a home whose leaks are known part by part.
///
/// # Equation
///
/// Q = (Qs^(1/n) + Qw^(1/n) − ⅓ · (Qs · Qw)^(1/2n))ⁿ
///
/// Qs = c · fs · (ρ · g · H · |ΔT| / T)ⁿ; Qw = c · fw · (ρ · U² / 2)ⁿ
///
/// fs = (1 + n · R) / (n + 1) · (½ − ½ · M^(5/4))^(n+1) + F; M = min(1, (X + (2n + 1) · Y)² / (2 − R))
///
/// F = n · Y · (β − 1)^(n−⅓) · (1 − 3 · (Z − X)² · R^(1−n) / (2 · (β + 1)));
/// Z = R + 2 · (1 − R − Y) / (n + 1) − 2 · Y · (β − 1)ⁿ
///
/// On a slab: fw = 0.19 · (2 − n) · (1 − ((X + R) / 2)^(3/2−Y)) − Y / 4 · (J − 2 · Y · J⁴);
/// J = (X + R + 2 · Y) / 2
///
/// Over a crawl space: fw = 0.19 · (2 − n) · (1 − |(X − Xs) / 2|^(3/2)) · (1 − R · (n / 2 + 0.2)) ·
/// (1 − Y / 4); Xs = (1 − R) / 5 − 1.5 · Y
///
/// # Symbols
///
/// | symbol | meaning                                       | unit       | in code                   |
/// |--------|-----------------------------------------------|------------|---------------------------|
/// | Q      | volume flow                                   | m³/s       | `flow`                    |
/// | Qs, Qw | that by warmth and by wind alone              | m³/s       | `stack`, `wind`           |
/// | c, n   | flow coefficient and exponent                 | m³/(s Paⁿ) | `leaks`                   |
/// | fs     | stack factor                                  | –          | [`Spread::stack_factor`]  |
/// | fw     | wind factor                                   | –          | [`Spread::wind_factor`]   |
/// | R      | share of ceiling and floor in the leaks       | –          | `level`                   |
/// | X      | share of the ceiling less that of the floor   | –          | `uneven`                  |
/// | Y      | share of the flue                             | –          | `flue`                    |
/// | β      | height of the flue over that of the ceiling   | –          | `rise` + 1                |
/// | H      | height of the ceiling                         | m          | `height_m`                |
/// | ρ      | density of the air outdoors                   | kg/m³      | `weather.air`             |
/// | T      | temperature of the rooms                      | K          | `weather.room`            |
/// | ΔT     | rooms less outdoors                           | K          | `weather.apart`           |
/// | U      | wind that the leaks feel                      | m/s        | `weather.wind`            |
/// | g      | gravity                                       | m/s²       | –                         |
/// | M, F, Z, J, Xs | steps on the way                      | –          | –                         |
///
/// # Source
///
/// [`LEAK_SPREAD_1998`]; over a crawl space [`LEAK_SPREAD_1998_CRAWL_SPACE`].
///
/// # Valid for
///
/// Exponents from ½ to 1, homes of one room of air; flues with up to half of the leaks and up to
/// twice as high as the ceiling. `None` for rooms outside [`AIR_CELSIUS`], for a difference or a
/// wind without an end, and where a factor turns negative: outside the fit, as with an exponent
/// near 1 and a small flue over leaks in the floor alone.
///
/// The range is the bias and scatter of the source where wind drives (15 %; 7 % where warmth does),
/// for homes whose spread is known: a guessed one errs as the simple models do, by some 40 %.
///
/// The handbook's table of the enhanced model comes out within 3 %, in all storeys, if the leaks go
/// with the surface: half, a third and a quarter of them in floor and ceiling of one, two and three
/// storeys. The handbook says half; with half, two and three storeys miss it by up to 15 %.
///
/// # Leaves out
///
/// Fans, duct leaks, fires in the flue, wind from one side; the sign of the temperature difference.
///
/// # Examples
///
/// Half of the leaks in the walls, 3 m/s at the eaves behind a shelter of 0.7, 20 K apart:
///
/// ```
/// use uom::si::f64::{Area, Length, Ratio, Velocity};
/// use uom::si::{area::square_centimeter, length::meter, ratio::ratio};
/// use uom::si::{velocity::meter_per_second, volume_rate::liter_per_second};
/// use winterseam::air::enhanced::Foundation;
/// use winterseam::physics::power_law::PowerLaw;
/// use winterseam::air::spread::{Leaks, Spread, Weather, flow};
/// use winterseam::properties::air::Air;
/// use winterseam::units::{celsius, kelvins};
///
/// let quarter = Area::new::<square_centimeter>(120.0);
/// let height = Length::new::<meter>(2.5);
/// let leaks =
///     Leaks { ceiling: quarter, floor: quarter, walls: quarter * 2.0, flue: None, height };
/// let spread = Spread::of(&leaks).unwrap();
/// let wind = Velocity::new::<meter_per_second>(0.7 * 3.0);
/// let (air, room) = (Air::of_a_room(), celsius(20.0));
/// let weather = Weather { air, room, apart: kelvins(20.0), wind };
/// let home = PowerLaw::new(0.05, Ratio::new::<ratio>(0.67)).unwrap();
/// let through = flow(&home, &spread, &weather, Foundation::Slab).unwrap().flow;
/// assert!((through.best.get::<liter_per_second>() - 29.1).abs() < 0.1);
/// ```
#[must_use]
pub fn flow(
    leaks: &PowerLaw,
    spread: &Spread,
    weather: &Weather,
    foundation: Foundation,
) -> Option<LeakFlow> {
    let (stack_pa, wind_pa) = pressures(spread, weather);
    let exponent = leaks.exponent();
    let n = exponent.get::<ratio>();
    let alone = |factor: Ratio, pa| leaks.coefficient() * factor.get::<ratio>() * pow(pa, n);
    let stack = alone(spread.stack_factor(exponent), stack_pa);
    let wind = alone(spread.wind_factor(exponent, foundation), wind_pa);
    let made = VolumeRate::new::<cubic_meter_per_second>;
    let best = made(joined(stack, wind, n));
    let flow = Figure::exact(best, Confidence::Seen, sources(foundation))
        .between(best * (1.0 - MODEL_ERROR), best * (1.0 + MODEL_ERROR));
    let is_driven = stack >= 0.0 && wind >= 0.0;
    (weather.is_sound() && is_driven).then(|| LeakFlow {
        flow,
        stack: made(stack),
        wind: made(wind),
    })
}

/// What warmth puts between floor and ceiling, and what wind puts on a wall, Pa.
fn pressures(spread: &Spread, weather: &Weather) -> (f64, f64) {
    let density = weather.air.density().get::<kilogram_per_cubic_meter>();
    let height = Length::new::<meter>(spread.height_m);
    let stack = stack_pressure(weather.air.density(), height, weather.apart.abs(), weather.room);
    let wind = weather.wind.get::<meter_per_second>();
    (stack.get::<pascal>(), 0.5 * density * wind * wind)
}

/// Two flows as one: their pressures add, less what they take from each other.
fn joined(stack: f64, wind: f64, n: f64) -> f64 {
    let pressure = |flow| pow(flow, 1.0 / n);
    let meeting = MEETING * pow(stack * wind, 0.5 / n);
    pow(pressure(stack) + pressure(wind) + meeting, n)
}

fn sources(foundation: Foundation) -> &'static [&'static Source] {
    match foundation {
        Foundation::Slab => &[&LEAK_SPREAD_1998],
        Foundation::CrawlSpace => &[&LEAK_SPREAD_1998, &LEAK_SPREAD_1998_CRAWL_SPACE],
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{celsius, kelvins};
    use uom::si::area::square_centimeter;

    /// Ceiling, floor, walls and flue in parts of the whole, below a ceiling of one metre.
    fn spread([ceiling, floor, walls, flue]: [f64; 4], top_m: f64) -> Option<Spread> {
        let [ceiling, floor, walls, area] =
            [ceiling, floor, walls, flue].map(Area::new::<square_centimeter>);
        let flue = Some(Flue { area, top: Length::new::<meter>(top_m) });
        Spread::of(&Leaks { ceiling, floor, walls, flue, height: Length::new::<meter>(1.0) })
    }

    fn weather(apart_k: f64, wind_m_s: f64) -> Weather {
        let wind = Velocity::new::<meter_per_second>(wind_m_s);
        Weather { air: Air::of_a_room(), room: celsius(20.0), apart: kelvins(apart_k), wind }
    }

    #[test]
    fn every_spread_gives_a_flow_or_none_and_without_a_flue_always_one() {
        let parts = [0.0, 0.1, 0.5, 2.0, 50.0];
        let laws = [0.5, 0.67, 0.8, 1.0].map(|n| PowerLaw::new(0.05, Ratio::new::<ratio>(n)));
        for (area, top) in parts.iter().flat_map(|area| [1.0, 1.3, 2.0].map(|top| (*area, top))) {
            for (ceiling, floor) in parts.iter().flat_map(|up| parts.map(|down| (*up, down))) {
                let Some(home) = spread([ceiling, floor, 1.0, area], top) else { continue };
                for leaks in laws.map(Option::unwrap) {
                    for on in [Foundation::Slab, Foundation::CrawlSpace] {
                        let air = flow(&leaks, &home, &weather(20.0, 3.0), on);
                        assert!(area > 0.0 || air.is_some(), "{ceiling} {floor}");
                        assert!(air.is_none_or(|air| air.flow.best.is_sign_positive()));
                    }
                }
            }
        }
    }

    #[test]
    fn slow_leaks_in_the_floor_alone_below_a_flue_are_outside_the_fit() {
        let home = spread([0.0, 50.0, 1.0, 0.5], 2.0).unwrap();
        let leaks = PowerLaw::new(0.05, Ratio::new::<ratio>(1.0)).unwrap();
        assert_eq!(flow(&leaks, &home, &weather(20.0, 0.0), Foundation::Slab), None);
    }

    #[test]
    fn no_wind_and_no_difference_give_no_flow() {
        let home = spread([1.0, 1.0, 2.0, 1.0], 1.8).unwrap();
        let leaks = PowerLaw::new(0.05, Ratio::new::<ratio>(0.67)).unwrap();
        let through = |weather| flow(&leaks, &home, &weather, Foundation::CrawlSpace);
        let still = through(weather(0.0, 0.0)).unwrap();
        assert_eq!(still.flow.best, VolumeRate::default());
        let (calm, mild) =
            (through(weather(20.0, 0.0)).unwrap(), through(weather(0.0, 3.0)).unwrap());
        // A power and its inverse: some ulps.
        assert!((calm.flow.best - calm.stack).abs() < calm.stack * 1e-14);
        assert!((mild.flow.best - mild.wind).abs() < mild.wind * 1e-14);
        assert_eq!(through(weather(f64::NAN, 3.0)), None);
        assert_eq!(through(weather(20.0, f64::INFINITY)), None);
    }

    #[test]
    fn leaks_that_no_home_has_are_refused() {
        assert!(spread([1.0, 1.0, 2.0, 0.0], 1.0).is_some());
        for bad in
            [[0.0; 4], [-1.0, 1.0, 2.0, 0.0], [f64::NAN, 1.0, 2.0, 0.0], [0.0, 0.0, 1.0, 1.1]]
        {
            assert_eq!(spread(bad, 1.5), None, "{bad:?}");
        }
        for top in [0.9, 2.1, f64::NAN] {
            assert_eq!(spread([1.0, 1.0, 2.0, 1.0], top), None, "{top}");
        }
    }
}
