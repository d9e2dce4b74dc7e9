//! From the factor on a label to the heat that a tank loses.
//!
//! Two losses hide in one factor. What is *bought* for standing by counts the burner's waste as
//! well; what the tank *gives off* while it cools does not. Dividing the first by the recovery
//! efficiency once more, or cooling a tank by it, would count that waste twice.

use crate::units::fahrenheit;
use crate::units::warmer_by;
use uom::si::f64::{
    Energy, Power, Ratio, TemperatureInterval, ThermalConductance, Time, Volume,
    VolumetricHeatCapacity,
};
use uom::si::ratio::ratio;
use uom::si::thermal_conductance::watt_per_kelvin;
use uom::si::time::hour;
use uom::si::volume::gallon;
use uom::si::volumetric_heat_capacity::joule_per_cubic_meter_kelvin;

/// Btu/(gal °F) in J/(m³ K): the units of the test procedure.
const BTU_PER_GALLON_F: f64 = crate::units::BTU_IT_J * 1.8 / 3.785_411_784e-3;

/// The day of a test: so much water drawn, from the inlet's temperature to the set one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Test {
    /// Water drawn in the day.
    pub drawn: Volume,
    /// Heat of a volume of it, as the procedure reckons.
    pub heat_capacity: VolumetricHeatCapacity,
    /// From the inlet up to the set temperature.
    pub rise: TemperatureInterval,
    /// From the room up to the set temperature.
    pub apart: TemperatureInterval,
}

/// A heater's label, and its burner or element.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rating {
    /// Heat in the water of a test day over what was bought.
    pub factor: Ratio,
    /// Heat into the water over what is bought while it heats.
    pub recovery: Ratio,
    /// What burner or element takes.
    pub input: Power,
}

impl Test {
    /// The energy factor of 1998: [`FACTOR_TEST`](crate::sources::water_heater::FACTOR_TEST).
    #[must_use]
    pub fn energy_factor() -> Self {
        Self::between(64.3, 8.293_752 * 1.000_743, 135.0)
    }

    /// The uniform factor with so many gallons drawn:
    /// [`FACTOR_TEST`](crate::sources::water_heater::FACTOR_TEST).
    #[must_use]
    pub fn uniform(gallons: f64) -> Self {
        Self::between(gallons, 8.24 * 0.998, 125.0)
    }

    fn between(gallons: f64, btu_per_gallon_f: f64, set_f: f64) -> Self {
        let heat = btu_per_gallon_f * BTU_PER_GALLON_F;
        Self {
            drawn: Volume::new::<gallon>(gallons),
            heat_capacity: VolumetricHeatCapacity::new::<joule_per_cubic_meter_kelvin>(heat),
            rise: warmer_by(fahrenheit(set_f), fahrenheit(58.0)),
            apart: warmer_by(fahrenheit(set_f), fahrenheit(67.5)),
        }
    }

    /// Heat in the water that was drawn.
    #[must_use]
    pub fn heat_drawn(&self) -> Energy {
        self.drawn * self.heat_capacity * self.rise
    }
}

impl Rating {
    /// What is bought for standing by, for each kelvin between tank and room.
    ///
    /// # Equation
    /// `U = (1/F − 1/R) / [ΔT·(t/Q − 1/(R·P))]`
    ///
    /// # Symbols
    /// | symbol | meaning | unit | name |
    /// |---|---|---|---|
    /// | U | bought for standing by | W/K | return value |
    /// | F, R | factor, recovery efficiency | – | `factor`, `recovery` |
    /// | P | burner or element | W | `input` |
    /// | Q | heat in the water drawn in the test | J | [`Test::heat_drawn`] |
    /// | t | a day | s | |
    /// | ΔT | tank above the room | K | `test.apart` |
    ///
    /// # Source
    /// [`FACTOR_ALGEBRA`](crate::sources::water_heater::FACTOR_ALGEBRA)
    ///
    /// # Valid for
    /// Tanks with a burner or elements; a factor below the recovery efficiency.
    ///
    /// # Leaves out
    /// The tank's own swing between draws. An electric tank's loss is the small difference of two
    /// large numbers, so it is known no better than its recovery efficiency.
    ///
    /// # Examples
    /// ```
    /// use uom::si::f64::Power;
    /// use uom::si::thermal_conductance::watt_per_kelvin;
    /// use winterseam::hot_water::rating::{Rating, Test};
    /// use winterseam::units::power::btu_per_hour;
    ///
    /// let input = Power::new::<btu_per_hour>(40_000.0);
    /// let gas = Rating { factor: 0.59.into(), recovery: 0.76.into(), input };
    /// let bought = gas.bought_loss(&Test::energy_factor()).get::<watt_per_kelvin>();
    /// let given_off = gas.cooling_loss(&Test::energy_factor()).get::<watt_per_kelvin>();
    /// assert!((bought - 5.38).abs() < 0.01 && (given_off - 4.16).abs() < 0.01);
    /// ```
    #[must_use]
    pub fn bought_loss(&self, test: &Test) -> ThermalConductance {
        let recovery = self.recovery.get::<ratio>();
        self.solved(1.0 / self.factor.get::<ratio>() - 1.0 / recovery, recovery, test)
    }

    /// What the tank gives off, for each kelvin between tank and room: the loss that cools it.
    ///
    /// # Equation
    /// `U = (R/F − 1) / [ΔT·(t/Q − 1/(P·F))]`
    ///
    /// # Symbols
    /// As in [`Self::bought_loss`].
    ///
    /// | symbol | meaning | unit | name |
    /// |---|---|---|---|
    /// | U | heat given off | W/K | return value |
    ///
    /// # Source
    /// [`FACTOR_ALGEBRA`](crate::sources::water_heater::FACTOR_ALGEBRA)
    ///
    /// # Valid for
    /// As [`Self::bought_loss`].
    ///
    /// # Leaves out
    /// A pilot flame, which warms the water all the time.
    ///
    /// # Examples
    /// See [`Self::bought_loss`].
    ///
    /// ```
    /// use winterseam::hot_water::rating::Test;
    /// use winterseam::units::energy::btu;
    ///
    /// let day = Test::energy_factor().heat_drawn().get::<btu>();
    /// assert!((day - 41_093.7).abs() < 1.0);
    /// ```
    #[must_use]
    pub fn cooling_loss(&self, test: &Test) -> ThermalConductance {
        let factor = self.factor.get::<ratio>();
        self.solved(self.recovery.get::<ratio>() / factor - 1.0, factor, test)
    }

    /// The factor that a heater with this bought loss would be given: the way back.
    ///
    /// # Equation
    /// `F = 1 / [(1 − U·ΔT/P)/R + U·ΔT·t/Q]`
    ///
    /// # Symbols
    /// As in [`Self::bought_loss`].
    ///
    /// | symbol | meaning | unit | name |
    /// |---|---|---|---|
    /// | U | bought for standing by | W/K | `bought_loss` |
    ///
    /// # Source
    /// [`FACTOR_ALGEBRA`](crate::sources::water_heater::FACTOR_ALGEBRA)
    ///
    /// # Valid for
    /// As [`Self::bought_loss`].
    ///
    /// # Leaves out
    /// As [`Self::bought_loss`].
    ///
    /// # Examples
    /// ```
    /// use uom::si::f64::Power;
    /// use winterseam::hot_water::rating::{Rating, Test};
    /// use winterseam::units::power::btu_per_hour;
    ///
    /// let input = Power::new::<btu_per_hour>(40_000.0);
    /// let gas = Rating { factor: 0.59.into(), recovery: 0.76.into(), input };
    /// let test = Test::energy_factor();
    /// let back = gas.factor_with(gas.bought_loss(&test), &test);
    /// assert!((back.value - 0.59).abs() < 1e-9);
    /// ```
    #[must_use]
    pub fn factor_with(&self, bought_loss: ThermalConductance, test: &Test) -> Ratio {
        let standing = bought_loss * test.apart;
        let busy: Ratio = standing / self.input;
        let stood: Ratio = standing * Time::new::<hour>(24.0) / test.heat_drawn();
        let drawn = (Ratio::new::<ratio>(1.0) - busy) / self.recovery;
        Ratio::new::<ratio>(1.0) / (drawn + stood)
    }

    /// `over / [ΔT·(t/Q − 1/(of_input·P))]`; nothing where a label promises more than the burner
    /// gives.
    fn solved(&self, over: f64, of_input: f64, test: &Test) -> ThermalConductance {
        let day_s = 86_400.0;
        let of_day = day_s / test.heat_drawn().value - 1.0 / (of_input * self.input.value);
        let loss = over / (test.apart.value * of_day);
        ThermalConductance::new::<watt_per_kelvin>(loss.max(0.0))
    }
}
