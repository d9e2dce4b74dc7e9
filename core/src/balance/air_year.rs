//! What a year of weather drives through each unit of leakage area of a home, by both models of the
//! handbook. Repairs close leaks and leave thermostat and shelter alone, so it is worked out once.

use super::gaps::{indoor_air, setpoint, shelter};
use super::{Months, Weather};
use crate::air::driven::Driven;
use crate::air::enhanced::{Foundation, Pressing, usual_exponent};
use crate::air::infiltration::{Coefficients, MODEL_ERROR, Storeys};
use crate::climate::Year;
use crate::home::{Fuel, HeaterKind, HeaterPlace, Home, Shelter};
use crate::math;
use crate::physics::power_law::{PowerLaw, Reference};
use crate::properties::air::{Air, heat_capacity};
use crate::units::{carried, warmer_by};
use uom::si::area::square_meter;
use uom::si::f64::{
    Area, Energy, Ratio, ThermalConductance, ThermodynamicTemperature, Time, Velocity, VolumeRate,
};
use uom::si::power::watt;
use uom::si::temperature_interval::kelvin;
use uom::si::thermal_conductance::watt_per_kelvin;
use uom::si::volume_rate::cubic_meter_per_second;
use uom::si::{ratio::ratio, time::hour, velocity::meter_per_second};

/// What the year depends on, apart from the weather.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Asked {
    room: ThermodynamicTemperature,
    shelter: Shelter,
    flue: bool,
    error: f64,
}

impl Asked {
    fn of(home: &Home) -> Self {
        let error = home.building.infiltration_error.map_or(0.0, |error| error.get::<ratio>());
        Self { room: setpoint(home), shelter: shelter(home), flue: has_flue(home), error }
    }
}

/// Whether a flue stands open to the rooms: a stove, or a draft hood that breathes their air.
fn has_flue(home: &Home) -> bool {
    let heater = &home.water_heater;
    let indoors = matches!(heater.place, Some(HeaterPlace::Room | HeaterPlace::ClosetInnerDoor));
    home.heating.fuel.is_some_and(Fuel::in_a_stove)
        || (indoors && heater.kind == Some(HeaterKind::DraftHood))
}

/// The year of one square metre of leakage area.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AirYear {
    asked: Asked,
    heat: Months,
    /// Conductance of each square metre in the hours colder than the room.
    conducts: ThermalConductance,
    speed: Velocity,
}

/// What one model says of a year.
#[derive(Debug, Clone, Copy, Default)]
struct Sums {
    /// Heat that the air takes; hours warmer than the room give some back.
    heat: Months,
    /// What it takes in the hours colder than the room.
    cold: Energy,
    /// Kelvins in those hours together.
    kelvins: f64,
    /// Flow of all hours together, m³/s.
    air: f64,
}

impl Sums {
    /// Conductance that takes as much heat in the cold hours.
    fn conducts(&self) -> ThermalConductance {
        let watts = (self.cold / Time::new::<hour>(1.0)).get::<watt>();
        let each = if self.kelvins > 0.0 { watts / self.kelvins } else { 0.0 };
        ThermalConductance::new::<watt_per_kelvin>(each)
    }
}

impl AirYear {
    /// That of a home at a place; `None` where no air is known for it.
    #[must_use]
    pub fn of(home: &Home, weather: &Weather<'_>) -> Option<Self> {
        let (asked, air) = (Asked::of(home), indoor_air(home, weather)?);
        let basic = basic(weather.year, &asked, &air);
        // At best the basic model stands alone, and the other need not be worked out.
        let spread = match asked.error {
            0.0 => 0.0,
            error => spread(error, &basic, &enhanced(weather.year, &asked, &air)?),
        };
        let off = (1.0 + asked.error * spread).max(0.0);
        let mean = basic.air / 8760.0;
        let speed = Velocity::new::<meter_per_second>(mean * off);
        let heat = basic.heat * Ratio::new::<ratio>(off);
        Some(Self { asked, heat, conducts: basic.conducts() * off, speed })
    }

    /// Whether it holds for this home as well.
    #[must_use]
    pub fn holds_for(&self, home: &Home) -> bool {
        self.asked == Asked::of(home)
    }

    /// Heat that the air through this leakage area takes.
    #[must_use]
    pub fn heat(&self, area: Area) -> Months {
        self.heat * Ratio::new::<ratio>(area.get::<square_meter>())
    }

    /// Conductance that takes as much heat in the cold hours as the air through this leakage area.
    #[must_use]
    pub fn conducts(&self, area: Area) -> ThermalConductance {
        self.conducts * area.get::<square_meter>()
    }

    /// Mean flow over the year through each unit of leakage area.
    #[must_use]
    pub fn speed(&self) -> Velocity {
        self.speed
    }
}

/// Error of the basic model, which is the best value: that of any such model, and towards the
/// enhanced model the difference between the two as well. They know nothing of each other, so their
/// squares add up.
fn spread(error: f64, basic: &Sums, enhanced: &Sums) -> f64 {
    let apart: Ratio = (enhanced.cold - basic.cold) / basic.cold;
    let apart = if basic.cold > Energy::default() { apart.get::<ratio>() } else { 0.0 };
    let towards = if error * apart > 0.0 { apart } else { 0.0 };
    math::sqrt(MODEL_ERROR * MODEL_ERROR + towards * towards)
}

fn basic(year: &Year, asked: &Asked, air: &Air) -> Sums {
    let model = Coefficients::of(asked.shelter, Storeys::One);
    let flows = year.hours().map(|now| {
        Area::new::<square_meter>(1.0) * model.speed(warmer_by(asked.room, now.air), now.wind)
    });
    sums(year, asked, air, flows)
}

fn enhanced(year: &Year, asked: &Asked, air: &Air) -> Option<Sums> {
    let (shelter, flue) = (asked.shelter, asked.flue);
    let home = Pressing::of(shelter, Storeys::One, flue, Foundation::CrawlSpace);
    let one = Area::new::<square_meter>(1.0);
    let leaks = PowerLaw::of_area(one, Reference::FOUR_PASCALS, usual_exponent())?;
    let driven = Driven::of(year, asked.room, usual_exponent());
    let flows = driven.flows(&leaks, &home)?;
    Some(sums(year, asked, air, flows))
}

fn sums(year: &Year, asked: &Asked, air: &Air, flows: impl Iterator<Item = VolumeRate>) -> Sums {
    let an_hour = Time::new::<hour>(1.0);
    year.hours_by_month().zip(flows).fold(Sums::default(), |mut sums, ((month, now), flow)| {
        let apart = warmer_by(asked.room, now.air);
        let heat = carried(flow, air.density(), heat_capacity(), apart) * an_hour;
        sums.heat[month] += heat;
        sums.cold += heat.max(Energy::default());
        sums.kelvins += apart.get::<kelvin>().max(0.0);
        sums.air += flow.get::<cubic_meter_per_second>();
        sums
    })
}
