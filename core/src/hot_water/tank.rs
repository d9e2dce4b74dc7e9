//! A tank that cools, is drawn from and recovers.

use crate::math;
use crate::properties::water::heat_of_water;
use crate::units::{conducted, warmer_by};
use uom::si::f64::{
    HeatCapacity, Power, Ratio, TemperatureInterval, ThermalConductance, ThermodynamicTemperature,
    Time, Volume,
};
use uom::si::ratio::ratio;
use uom::si::temperature_interval::kelvin;

/// A tank of hot water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tank {
    /// Water in it.
    pub volume: Volume,
    /// Heat that it gives off, for each kelvin above the room.
    pub loss: ThermalConductance,
    /// Heat into the water while burner or element is on.
    pub heating: Power,
}

impl Tank {
    /// Heat that warms all of its water by a kelvin.
    #[must_use]
    pub fn heat_capacity(&self) -> HeatCapacity {
        self.volume * heat_of_water()
    }

    /// Time in which the tank cools with no draw and no heat; `None` when the room is too warm for
    /// that.
    ///
    /// # Equation
    /// `t = (C/U)·ln[(T₁ − T_r)/(T₂ − T_r)]`
    ///
    /// # Symbols
    /// | symbol | meaning | unit | name |
    /// |---|---|---|---|
    /// | t | time | s | return value |
    /// | C | heat capacity of the water | J/K | [`Self::heat_capacity`] |
    /// | U | heat given off | W/K | `loss` |
    /// | T₁, T₂ | at the start and at the end | K | `from`, `to` |
    /// | `T_r` | room | K | `room` |
    ///
    /// # Source
    /// Newton's law of cooling; the loss by
    /// [`cooling_loss`](super::rating::Rating::cooling_loss).
    ///
    /// # Valid for
    /// One temperature all through, a room that stays as it is.
    ///
    /// # Leaves out
    /// Layers, a pilot flame, the steel of the tank.
    ///
    /// # Examples
    /// ```
    /// use uom::si::f64::{Power, ThermalConductance, Volume};
    /// use uom::si::{thermal_conductance::watt_per_kelvin, time::hour, volume::gallon};
    /// use uom::si::power::watt;
    /// use winterseam::{hot_water::tank::Tank, units::fahrenheit};
    ///
    /// let tank = Tank {
    ///     volume: Volume::new::<gallon>(40.0),
    ///     loss: ThermalConductance::new::<watt_per_kelvin>(4.157),
    ///     heating: Power::new::<watt>(8_900.0),
    /// };
    /// let time = tank.cooling_time(fahrenheit(140.0), fahrenheit(120.0), fahrenheit(67.5)).unwrap();
    /// assert!((time.get::<hour>() - 13.5).abs() < 0.1);
    /// ```
    #[must_use]
    pub fn cooling_time(
        &self,
        from: ThermodynamicTemperature,
        to: ThermodynamicTemperature,
        room: ThermodynamicTemperature,
    ) -> Option<Time> {
        let times = share(warmer_by(from, room), warmer_by(to, room));
        let logarithm = Ratio::new::<ratio>(math::ln(times));
        (times >= 1.0).then(|| self.heat_capacity() / self.loss * logarithm)
    }

    /// Water to draw until a mixed tank has cooled, with no heat.
    ///
    /// # Equation
    /// `V·ln[(T₁ − T_c)/(T₂ − T_c)]`
    ///
    /// # Symbols
    /// | symbol | meaning | unit | name |
    /// |---|---|---|---|
    /// | V | water in the tank | m³ | `volume` |
    /// | T₁, T₂ | at the start and at the end | K | `from`, `to` |
    /// | `T_c` | water that comes in | K | `inlet` |
    ///
    /// # Source
    /// Balance of a stirred tank; the numbers as in
    /// [`TURNING_DOWN`](crate::sources::water_heater::TURNING_DOWN).
    ///
    /// # Valid for
    /// The least that can do: hot water lies in layers, and a tall tank gives nearly all of it
    /// before it cools.
    ///
    /// # Leaves out
    /// Layers, and what is lost to the room meanwhile.
    ///
    /// # Examples
    /// ```
    /// use uom::si::f64::{Power, ThermalConductance, Volume};
    /// use uom::si::{power::watt, thermal_conductance::watt_per_kelvin, volume::gallon};
    /// use winterseam::{hot_water::tank::Tank, units::fahrenheit};
    ///
    /// let tank = Tank {
    ///     volume: Volume::new::<gallon>(40.0),
    ///     loss: ThermalConductance::new::<watt_per_kelvin>(4.0),
    ///     heating: Power::new::<watt>(8_900.0),
    /// };
    /// let drawn = tank.draw_to_cool(fahrenheit(140.0), fahrenheit(120.0), fahrenheit(58.0));
    /// assert!((drawn.unwrap().get::<gallon>() - 11.2).abs() < 0.1);
    /// ```
    #[must_use]
    pub fn draw_to_cool(
        &self,
        from: ThermodynamicTemperature,
        to: ThermodynamicTemperature,
        inlet: ThermodynamicTemperature,
    ) -> Option<Volume> {
        let times = share(warmer_by(from, inlet), warmer_by(to, inlet));
        (times >= 1.0).then(|| self.volume * Ratio::new::<ratio>(math::ln(times)))
    }

    /// Time in which burner or element warms the whole tank.
    ///
    /// # Equation
    /// `t = C·(T₂ − T₁)/P`
    ///
    /// # Symbols
    /// | symbol | meaning | unit | name |
    /// |---|---|---|---|
    /// | t | time | s | return value |
    /// | C | heat capacity of the water | J/K | [`Self::heat_capacity`] |
    /// | T₁, T₂ | at the start and at the end | K | `from`, `to` |
    /// | P | heat into the water | W | `heating` |
    ///
    /// # Source
    /// Balance of energy; recovery efficiency by
    /// [`USUAL_FACTORS`](crate::sources::water_heater::USUAL_FACTORS).
    ///
    /// # Valid for
    /// No draw.
    ///
    /// # Leaves out
    /// What is lost to the room meanwhile: a hundredth.
    ///
    /// # Examples
    /// ```
    /// use uom::si::f64::{Power, ThermalConductance, Volume};
    /// use uom::si::{power::watt, thermal_conductance::watt_per_kelvin, time::minute, volume::gallon};
    /// use winterseam::{hot_water::tank::Tank, units::fahrenheit};
    ///
    /// let tank = Tank {
    ///     volume: Volume::new::<gallon>(50.0),
    ///     loss: ThermalConductance::new::<watt_per_kelvin>(1.4),
    ///     heating: Power::new::<watt>(4_500.0 * 0.98),
    /// };
    /// let time = tank.recovery_time(fahrenheit(58.0), fahrenheit(120.0));
    /// assert!((time.get::<minute>() - 102.0).abs() < 1.0);
    /// ```
    #[must_use]
    pub fn recovery_time(
        &self,
        from: ThermodynamicTemperature,
        to: ThermodynamicTemperature,
    ) -> Time {
        self.heat_capacity() * warmer_by(to, from) / self.heating
    }

    /// Heat that the tank gives off.
    #[must_use]
    pub fn heat_given_off(
        &self,
        water: ThermodynamicTemperature,
        room: ThermodynamicTemperature,
    ) -> Power {
        conducted(self.loss, warmer_by(water, room))
    }
}

fn share(of: TemperatureInterval, over: TemperatureInterval) -> f64 {
    of.get::<kelvin>() / over.get::<kelvin>()
}
