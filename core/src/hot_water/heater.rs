//! A water heater as the year sees it: what standing by buys, and what the tank gives off.

use super::rating::{Rating, Test};
use super::tank::Tank;
use crate::home::HeaterKind;
use crate::math;
use crate::units::power::btu_per_hour;
use std::f64::consts::PI;
use uom::si::f64::{Power, Ratio, TemperatureInterval, ThermalConductance, Volume};
use uom::si::power::watt;
use uom::si::ratio::ratio;
use uom::si::thermal_conductance::watt_per_kelvin;
use uom::si::volume::{cubic_meter, gallon};

/// A water heater; [`USUAL_FACTORS`](crate::sources::water_heater::USUAL_FACTORS).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Heater {
    /// Bought for standing by, for each kelvin between tank and place.
    pub bought_loss: ThermalConductance,
    /// Heat into the water over what is bought.
    pub recovery: Ratio,
    /// Burner or element.
    pub input: Power,
    /// The tank; without volume and loss where there is none.
    pub tank: Tank,
    /// Share of the tank's loss that warms the place; the rest leaves by the flue.
    pub stays: Ratio,
}

/// Recovery efficiency of elements in a tank.
const ELEMENT: f64 = 0.98;
/// Recovery efficiency of a gas burner under a tank.
const BURNER: f64 = 0.76;
/// Elements of a usual electric tank, W.
const ELEMENT_W: f64 = 4_500.0;
/// Factor of an electric tank whose loss stands for that of a heat-pump tank.
const PLAIN_ELECTRIC: f64 = 0.92;
/// Share of a gas tank's loss that goes through its shell: the flue in its middle takes the rest
/// (judgement).
const SHELL_OF_GAS: f64 = 0.4;
/// Share of an electric tank's loss that goes through its shell and not its fittings (judgement).
const SHELL_OF_ELECTRIC: f64 = 0.8;
/// A tank is so much higher than wide (common practice).
const SLENDER: f64 = 2.7;
/// A jacket as sold, R-10 in m² K/W.
const JACKET: f64 = 1.76;

impl Heater {
    /// A heater of a kind. The factor is the energy factor of a tank, the seasonal one of a heat
    /// pump, the efficiency of a heater without tank.
    ///
    /// ```
    /// use uom::si::{f64::Volume, thermal_conductance::watt_per_kelvin, volume::gallon};
    /// use winterseam::home::HeaterKind;
    /// use winterseam::hot_water::heater::Heater;
    ///
    /// let gas = Heater::new(HeaterKind::DraftHood, 0.59.into(), Volume::new::<gallon>(40.0));
    /// assert!(gas.bought_loss > gas.tank.loss, "the burner's waste is bought as well");
    /// ```
    #[must_use]
    pub fn new(kind: HeaterKind, factor: Ratio, volume: Volume) -> Self {
        match kind {
            HeaterKind::Electric => Self::rated(electric(factor), volume, Ratio::new::<ratio>(1.0)),
            HeaterKind::SealedCombustion | HeaterKind::DraftHood => {
                let input = gas_input(volume);
                let rating = Rating { factor, recovery: Ratio::new::<ratio>(BURNER), input };
                Self::rated(rating, volume, Ratio::new::<ratio>(SHELL_OF_GAS))
            }
            HeaterKind::HeatPump => {
                let like = electric(Ratio::new::<ratio>(PLAIN_ELECTRIC));
                let plain = Self::rated(like, volume, Ratio::new::<ratio>(1.0));
                Self { bought_loss: plain.tank.loss / factor, recovery: factor, ..plain }
            }
            HeaterKind::TanklessElectric | HeaterKind::TanklessGas => Self::without_tank(factor),
        }
    }

    fn rated(rating: Rating, volume: Volume, stays: Ratio) -> Self {
        let test = Test::energy_factor();
        let heating = rating.input * rating.recovery;
        Self {
            bought_loss: rating.bought_loss(&test),
            recovery: rating.recovery,
            input: rating.input,
            tank: Tank { volume, loss: rating.cooling_loss(&test), heating },
            stays,
        }
    }

    fn without_tank(efficiency: Ratio) -> Self {
        let none = ThermalConductance::new::<watt_per_kelvin>(0.0);
        // Strong enough for any draw, so that nothing is taken off for standing by.
        let input = Power::new::<watt>(30_000.0);
        let tank = Tank {
            volume: Volume::new::<cubic_meter>(0.0),
            loss: none,
            heating: input * efficiency,
        };
        Self { bought_loss: none, recovery: efficiency, input, tank, stays: efficiency }
    }

    /// The same heater in a jacket round its sides.
    ///
    /// # Equation
    /// ```text
    /// U' = U − G + 1/(1/G + R/A), G = s·U·A/A_all
    /// A = π·D·H, A_all = A + π·D²/2, H = 2.7·D, π·D²·H/4 = V
    /// ```
    ///
    /// # Symbols
    /// | symbol | meaning | unit | name |
    /// |---|---|---|---|
    /// | U, U' | heat given off before and after | W/K | [`Tank::loss`] |
    /// | G | what goes through the sides | W/K | |
    /// | s | share of the loss that goes through the shell | – | |
    /// | A, `A_all` | sides, whole surface | m² | |
    /// | R | the jacket | m² K/W | |
    /// | V | water in the tank | m³ | [`Tank::volume`] |
    ///
    /// # Source
    /// Conductances in series; [`JACKET`](crate::sources::water_heater::JACKET).
    ///
    /// # Valid for
    /// Jackets as sold, round the sides only.
    ///
    /// # Leaves out
    /// A jacket that is torn, pressed or wet. What a burner tank's jacket must keep clear of is no
    /// matter of heat: none is advised there.
    ///
    /// # Examples
    /// ```
    /// use uom::si::{f64::Volume, volume::gallon};
    /// use winterseam::home::HeaterKind;
    /// use winterseam::hot_water::heater::Heater;
    ///
    /// let old = Heater::new(HeaterKind::Electric, 0.86.into(), Volume::new::<gallon>(40.0));
    /// let left = old.in_jacket().bought_loss / old.bought_loss;
    /// assert!((0.55..=0.75).contains(&left.value), "a utility says a quarter to nearly half less");
    /// ```
    #[must_use]
    pub fn in_jacket(self) -> Self {
        let volume = self.tank.volume.get::<cubic_meter>();
        if volume <= 0.0 {
            return self;
        }
        let diameter = math::pow(4.0 * volume / (PI * SLENDER), 1.0 / 3.0);
        let sides = PI * diameter * SLENDER * diameter;
        let ends = PI * diameter * diameter / 2.0;
        let shell = if self.stays.get::<ratio>() < 1.0 { SHELL_OF_GAS } else { SHELL_OF_ELECTRIC };
        let through = self.tank.loss.get::<watt_per_kelvin>() * shell * sides / (sides + ends);
        let jacketed = 1.0 / (1.0 / through + JACKET / sides);
        let spared = ThermalConductance::new::<watt_per_kelvin>(through - jacketed);
        let left: Ratio = (self.tank.loss - spared) / self.tank.loss;
        Self {
            bought_loss: self.bought_loss * left,
            tank: Tank { loss: self.tank.loss * left, ..self.tank },
            ..self
        }
    }

    /// What is bought for standing by.
    #[must_use]
    pub fn standby(&self, apart: TemperatureInterval) -> Power {
        self.bought_loss * apart
    }
}

fn electric(factor: Ratio) -> Rating {
    let input = Power::new::<watt>(ELEMENT_W);
    Rating { factor, recovery: Ratio::new::<ratio>(ELEMENT), input }
}

/// Burner of a gas tank: small tanks have the smaller one.
fn gas_input(volume: Volume) -> Power {
    let small = volume < Volume::new::<gallon>(35.0);
    Power::new::<btu_per_hour>(if small { 30_000.0 } else { 40_000.0 })
}
