//! A roof over the year: when a leak wets it, and when it dries.

use super::cavity::mixed_with_outdoor_air;
use super::ceiling::{CeilingLeak, carried};
use super::indoors::IndoorVapour;
use crate::climate::{Hour, Year};
use crate::physics::moist_air::MoistAir;
use crate::physics::saturation::saturation_pressure;
use crate::units::celsius;
use uom::si::f64::{Mass, Pressure, Ratio, TemperatureInterval, ThermodynamicTemperature, Time};
use uom::si::{ratio::ratio, time::hour};

/// A roof above a ceiling that leaks, and the home below.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Roof {
    /// The leak.
    pub leak: CeilingLeak,
    /// Dry air from outdoors that passes through for each kilogram of leak. None at all is the
    /// upper bound of what can condense.
    pub ventilation: Ratio,
    /// How much colder it is under the sky than the air tells.
    pub under_sky: TemperatureInterval,
    /// Air of the home in winter; in summer it is as warm as outdoors.
    pub room: ThermodynamicTemperature,
    /// How damp that air is.
    pub vapour: IndoorVapour,
    /// Pressure of the air at this altitude.
    pub pressure: Pressure,
}

/// One month of a roof.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct RoofMonth {
    /// Vapour that the leak carries up.
    pub carried: Mass,
    /// What of it can turn to dew or frost.
    pub wetting: Mass,
    /// What the same air can take up in the other hours, if it finds water.
    pub drying: Mass,
    /// Time in which the roof is at or below the dew point of the air under it.
    pub wet: Time,
    /// Of that, time below 0 °C: frost, which drips when it thaws.
    pub frost: Time,
    /// Time in which the roof is above that dew point.
    pub dry: Time,
}

impl RoofMonth {
    /// Whether more can condense than dry.
    #[must_use]
    pub fn gains(&self) -> bool {
        self.wetting > self.drying
    }
}

/// Twelve months of a roof, January first.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct RoofYear {
    /// The months.
    pub months: [RoofMonth; 12],
}

/// How a year of a roof ends: the three outcomes of
/// [`ISO_13788`](crate::sources::moisture::ISO_13788).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum RoofGrade {
    /// In no month can more condense than dry.
    StaysDry,
    /// What condenses dries within the year.
    DriesWithinTheYear,
    /// More can condense than dry: it may stay wet from one winter to the next.
    MayStayWet,
}

impl RoofYear {
    /// Most water at the end of a month: gains and losses carried on from month to month, never
    /// below nothing, in a year that follows a year of the same kind.
    #[must_use]
    pub fn most(&self) -> Mass {
        self.stores().fold(Mass::default(), Mass::max)
    }

    /// How the year ends.
    #[must_use]
    pub fn grade(&self) -> RoofGrade {
        if !self.months.iter().any(RoofMonth::gains) {
            RoofGrade::StaysDry
        } else if self.stores().any(|store| store == Mass::default()) {
            RoofGrade::DriesWithinTheYear
        } else {
            RoofGrade::MayStayWet
        }
    }

    /// Water at the end of each month of the second year.
    fn stores(&self) -> impl Iterator<Item = Mass> {
        let mut store = Mass::default();
        let two_years = self.months.iter().chain(&self.months).map(move |month| {
            store = (store + month.wetting - month.drying).max(Mass::default());
            store
        });
        two_years.skip(12)
    }

    /// Water that can turn to dew or frost in the year.
    #[must_use]
    pub fn wetting(&self) -> Mass {
        self.months.iter().map(|month| month.wetting).sum()
    }
}

/// Hour by hour: what a leak carries into a roof, what of it can condense, and what can dry.
///
/// # Equation
///
/// ṁ = ṁd · (1 + r) · (W − W(Tₛ, saturated)) in each hour; its positive hours are wetting, its
/// negative ones drying
///
/// # Symbols
///
/// | symbol | meaning                                   | unit  | in code                      |
/// |--------|-------------------------------------------|-------|------------------------------|
/// | ṁd     | dry air that leaks, of [`carried`]        | kg/s  | `dry_air`                    |
/// | r      | ventilation                               | –     | `roof.ventilation`           |
/// | W      | humidity ratio, [`mixed_with_outdoor_air`] | kg/kg | –                           |
/// | Tₛ     | underside of the roof, of [`carried`], less `under_sky` | K | –                  |
///
/// # Source
///
/// [`carried`] and [`mixed_with_outdoor_air`] on the hours of
/// [`SERIES`](crate::sources::climate::SERIES)
///
/// # Valid for
///
/// Ordinary years. Wetting is an upper bound for the stated roof: every kilogram of the air meets
/// it. Drying is an upper bound too: the air leaves saturated.
///
/// # Leaves out
///
/// Sun on the roof, which dries it; wood, which stores some litres for each square metre before
/// anything drips; wind and fans through the leak; water that runs off. Hours without a stack
/// neither wet nor dry, so a roof without ventilation dries too slowly here.
///
/// # Examples
///
/// ```
/// # #[cfg(feature = "atlas")] {
/// use uom::si::f64::{Area, Length, Ratio};
/// use uom::si::{area::square_centimeter, length::meter, ratio::ratio};
/// use winterseam::climate::{Atlas, Year};
/// use winterseam::moisture::{CeilingLeak, Dampness, IndoorVapour, Roof, roof_year};
/// use winterseam::properties::air::standard_pressure;
/// use winterseam::units::{celsius, insulance, kelvins};
///
/// let station = Atlas::embedded().station("727730").expect("a station of the tables");
/// let area = Area::new::<square_centimeter>(10.0);
/// let height = Length::new::<meter>(1.25);
/// let roof = Roof {
///     leak: CeilingLeak::new(area, height, insulance(2.0), insulance(0.05)).unwrap(),
///     ventilation: Ratio::new::<ratio>(0.0),
///     under_sky: kelvins(0.0),
///     room: celsius(20.0),
///     vapour: IndoorVapour::Added(Dampness::Usual),
///     pressure: standard_pressure(station.elevation).unwrap(),
/// };
/// let year = roof_year(&roof, &Year::of(&station)).unwrap();
/// assert!(year.months[0].gains() && !year.months[6].gains());
/// # }
/// ```
#[must_use]
pub fn roof_year(roof: &Roof, year: &Year) -> Option<RoofYear> {
    let mut sum = RoofYear::default();
    for (month, now) in year.hours_by_month() {
        add(&mut sum.months[month], roof, &now)?;
    }
    Some(sum)
}

fn add(month: &mut RoofMonth, roof: &Roof, now: &Hour) -> Option<()> {
    let an_hour = Time::new::<hour>(1.0);
    let outdoor_vapour = saturation_pressure(now.dew_point)?;
    let outdoors = MoistAir::with_vapour(now.air, outdoor_vapour, roof.pressure)?;
    let indoors = roof.vapour.air(roof.room.max(now.air), &outdoors)?;
    let out = carried(&roof.leak, &indoors, now.air)?;
    let surface = out.surface - roof.under_sky;
    let most = MoistAir::saturated(surface, roof.pressure)?.humidity_ratio();
    let leaks = roof.room > now.air;
    let under_roof = if leaks {
        mixed_with_outdoor_air(&indoors, &outdoors, roof.ventilation)
    } else {
        outdoors.humidity_ratio()
    };
    let air = out.dry_air * (Ratio::new::<ratio>(1.0) + roof.ventilation) * an_hour;
    month.carried += out.vapour * an_hour;
    if under_roof >= most {
        month.wetting += air * (under_roof - most);
        month.wet += an_hour;
        month.frost += if surface < celsius(0.0) { an_hour } else { Time::default() };
    } else {
        month.drying += air * (most - under_roof);
        month.dry += an_hour;
    }
    Some(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::mass::kilogram;

    fn year(nets: [f64; 12]) -> RoofYear {
        let month = |net: f64| RoofMonth {
            wetting: Mass::new::<kilogram>(net.max(0.0)),
            drying: Mass::new::<kilogram>((-net).max(0.0)),
            ..RoofMonth::default()
        };
        RoofYear { months: nets.map(month) }
    }

    fn kilograms(mass: Mass) -> f64 {
        mass.get::<kilogram>()
    }

    #[test]
    fn a_roof_that_never_gains_stays_dry() {
        let dry = year([-1.0; 12]);
        assert_eq!(dry.grade(), RoofGrade::StaysDry);
        assert!(kilograms(dry.most()).abs() < 1e-12);
    }

    #[test]
    fn water_of_autumn_is_carried_over_the_new_year() {
        let summer = [-9.0; 8];
        let mut nets = [1.0; 12];
        nets[2..10].copy_from_slice(&summer);
        let dries = year(nets);
        assert_eq!(dries.grade(), RoofGrade::DriesWithinTheYear);
        assert!((kilograms(dries.most()) - 4.0).abs() < 1e-12, "November to February");
        assert!((kilograms(dries.wetting()) - 4.0).abs() < 1e-12);
    }

    #[test]
    fn a_roof_that_gains_more_than_it_loses_may_stay_wet() {
        let mut nets = [1.0; 12];
        nets[6] = -5.0;
        assert_eq!(year(nets).grade(), RoofGrade::MayStayWet);
    }
}
