//! How much of a furnace's heat its ducts bring to the rooms.

use crate::math::exp;
use crate::properties::air::heat_capacity;
use crate::units::{celsius, in_celsius};
use uom::si::f64::{
    MassDensity, Power, Ratio, ThermalConductance, ThermodynamicTemperature, VolumeRate,
};
use uom::si::power::watt;
use uom::si::ratio::ratio;
use uom::si::specific_heat_capacity::joule_per_kilogram_kelvin;
use uom::si::thermal_conductance::watt_per_kelvin;
use uom::si::{mass_density::kilogram_per_cubic_meter, volume_rate::cubic_meter_per_second};

/// The ducts of one side, all together.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Side {
    /// Heat through their walls for each degree.
    pub conducts: ThermalConductance,
    /// Share of the fan's air that leaks: out of supply ducts, or into return ducts. Texts write
    /// the share that is kept, one less this.
    pub lost: Ratio,
    /// The air round them.
    pub zone: ThermodynamicTemperature,
}

/// Where supply ducts leak.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LeaksAt {
    /// At the far ends: all the air passes all the walls.
    Registers,
    /// Next to the furnace: what leaks there never sees the ducts.
    Plenum,
}

/// Ducts and the fan that drives air through them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ducts {
    /// Air through the furnace.
    pub fan: VolumeRate,
    /// Its density.
    pub density: MassDensity,
    /// From the furnace to the rooms.
    pub supply: Side,
    /// Where those leak.
    pub supply_leaks: LeaksAt,
    /// From the rooms to the furnace; they leak next to it.
    pub back: Side,
}

/// What arrives.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Delivery {
    /// Heat to the rooms over heat of the furnace. Below zero where ducts cool the rooms.
    pub effectiveness: Ratio,
    /// Air that leaves the furnace.
    pub plenum: ThermodynamicTemperature,
    /// Air that arrives at the registers.
    pub register: ThermodynamicTemperature,
}

impl Ducts {
    /// Heat that the fan's air carries for each degree, W/K.
    pub(super) fn carries(&self) -> f64 {
        self.fan.get::<cubic_meter_per_second>()
            * self.density.get::<kilogram_per_cubic_meter>()
            * heat_capacity().get::<joule_per_kilogram_kelvin>()
    }

    /// Share of its excess over the zone that air keeps on its way through the supply ducts.
    pub(super) fn keeps_on_the_way(&self) -> f64 {
        let passes = match self.supply_leaks {
            LeaksAt::Registers => 1.0,
            LeaksAt::Plenum => 1.0 - self.supply.lost.get::<ratio>(),
        };
        kept(&self.supply, self.carries() * passes)
    }

    /// Air that enters the furnace, °C: from the rooms through the return ducts, with what leaks in.
    pub(super) fn entering(&self, indoor_c: f64) -> f64 {
        let zone = in_celsius(self.back.zone);
        let from_rooms = 1.0 - self.back.lost.get::<ratio>();
        zone + from_rooms * kept(&self.back, self.carries()) * (indoor_c - zone)
    }
}

/// What is kept of a difference to the zone, by the conductance over what the air carries.
fn kept(side: &Side, carries: f64) -> f64 {
    if carries > 0.0 { exp(-side.conducts.get::<watt_per_kelvin>() / carries) } else { 0.0 }
}

/// Heat that ducts bring to the rooms while the furnace runs.
///
/// # Equation
/// ```text
/// T_e = T_r + (1 − l_r) · B_r · (T_i − T_r), T_p = T_e + P ÷ C, T_g = T_s + B_s · (T_p − T_s),
/// E = (1 − l_s) · C · (T_g − T_i) ÷ P, B = exp(−K ÷ C), C = ρ · c · V
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `E` | heat to the rooms over heat of the furnace | – | `effectiveness` |
/// | `T_p`, `T_g` | air at the plenum, at the registers | °C | `plenum`, `register` |
/// | `T_e`, `T_i` | air into the furnace, rooms | °C | `entering`, `indoor` |
/// | `T_s`, `T_r` | round supply and return ducts | °C | `supply.zone`, `back.zone` |
/// | `l_s`, `l_r` | shares that leak | – | `supply.lost`, `back.lost` |
/// | `K` | heat through the walls of ducts | W/K | `conducts` |
/// | `C` | what the fan's air carries | W/K | `carries` |
/// | `P` | heat of the furnace | W | `capacity` |
///
/// # Source
/// [`DELIVERY`](crate::sources::ducts::DELIVERY)
///
/// # Valid for
/// A furnace that has run long enough for its ducts to be warm; `capacity` above zero.
///
/// # Leaves out
/// Heat that metal and belly store while it goes on and off; leaks halfway along.
///
/// # Examples
/// ```
/// use uom::si::f64::{MassDensity, Power, Ratio, ThermalConductance, VolumeRate};
/// use uom::si::{mass_density::kilogram_per_cubic_meter, power::kilowatt, ratio::percent};
/// use uom::si::{thermal_conductance::watt_per_kelvin, volume_rate::liter_per_second};
/// use winterseam::ducts::{Ducts, LeaksAt, Side, heating};
/// use winterseam::units::celsius;
///
/// let side = |w_k, lost, c| Side {
///     conducts: ThermalConductance::new::<watt_per_kelvin>(w_k),
///     lost: Ratio::new::<percent>(lost),
///     zone: celsius(c),
/// };
/// let ducts = Ducts {
///     fan: VolumeRate::new::<liter_per_second>(380.0),
///     density: MassDensity::new::<kilogram_per_cubic_meter>(1.2),
///     supply: side(22.0, 12.0, 2.0),
///     supply_leaks: LeaksAt::Registers,
///     back: side(0.0, 0.0, 2.0),
/// };
/// let air = heating(&ducts, Power::new::<kilowatt>(14.0), celsius(21.0));
/// assert!((air.effectiveness.get::<percent>() - 81.0).abs() < 1.0);
/// ```
#[must_use]
pub fn heating(ducts: &Ducts, capacity: Power, indoor: ThermodynamicTemperature) -> Delivery {
    let (room, zone) = (in_celsius(indoor), in_celsius(ducts.supply.zone));
    let (carries, capacity) = (ducts.carries(), capacity.get::<watt>());
    let plenum = ducts.entering(room) + capacity / carries;
    let register = zone + ducts.keeps_on_the_way() * (plenum - zone);
    let arrives = (1.0 - ducts.supply.lost.get::<ratio>()) * carries * (register - room);
    Delivery {
        effectiveness: Ratio::new::<ratio>(arrives / capacity),
        plenum: celsius(plenum),
        register: celsius(register),
    }
}
