//! A furnace that goes on and off above a belly: what it must give, and how warm the belly gets.

use super::delivery::{Ducts, LeaksAt};
use crate::math::sqrt;
use crate::units::{celsius, in_celsius};
use uom::si::f64::{Power, Ratio, ThermalConductance, ThermodynamicTemperature};
use uom::si::power::watt;
use uom::si::ratio::ratio;
use uom::si::thermal_conductance::watt_per_kelvin;

/// The space that supply ducts run in, between the rooms and what lies beyond it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Belly {
    /// To the rooms above.
    pub to_rooms: ThermalConductance,
    /// To what lies beyond.
    pub beyond: ThermalConductance,
    /// Temperature there.
    pub beyond_is: ThermodynamicTemperature,
    /// Share of the air from leaks that gives its heat to the belly before it is gone; the rest goes
    /// straight out through holes.
    pub kept_warm: Ratio,
}

/// What is asked of a furnace in a steady hour.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Asked {
    /// What it gives while it runs.
    pub capacity: Power,
    /// What the rooms need with a belly that no duct warms.
    pub need: Power,
    /// What more they need while the fan runs, for the air that its leaks draw in.
    pub drawn_in: Power,
    /// The rooms.
    pub indoor: ThermodynamicTemperature,
}

/// A steady hour of a furnace.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cycle {
    /// Share of the time that it runs; all of it where it is too small, and the rooms get colder.
    pub on: Ratio,
    /// What it gives on the mean.
    pub given: Power,
    /// Mean temperature of the belly.
    pub belly: ThermodynamicTemperature,
}

/// How long a furnace must run, with what its ducts lose partly found again in a warmer floor.
///
/// # Equation
/// ```text
/// N − K_r·(T_b − T_0) + f·X = f·(1 − l)·C·(T_g − T_i),  K_r·(T_i − T_b) + f·G·(T_p − T_b) = K_x·(T_b − T_x),
/// T_g = T_b + B·(T_p − T_b),  T_0 = (K_r·T_i + K_x·T_x) ÷ (K_r + K_x),
/// G = (1 − B)·C + w·l·B·C;  for leaks at the plenum G = (1 − B)·(1 − l)·C + w·l·C
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `f` | share of the time that it runs: the positive root, at most 1 | – | `on` |
/// | `T_b`, `T_0` | belly, and belly without ducts | °C | `belly` |
/// | `N`, `X` | need of the rooms, and what the fan's leaks draw in | W | `need`, `drawn_in` |
/// | `K_r`, `K_x`, `T_x` | belly to rooms, beyond it, temperature there | W/K, °C | `belly` |
/// | `w` | share of leaked air that warms the belly | – | `kept_warm` |
/// | `l`, `B`, `C`, `T_p`, `T_i` | as for [`heating`](super::heating) | | `ducts`, `indoor` |
///
/// # Source
/// [`CYCLING`](crate::sources::ducts::CYCLING)
///
/// # Valid for
/// Cold steady enough for belly and rooms to settle, as on the mean of a month. The zone of the
/// supply ducts is the belly, whatever `ducts.supply.zone` says.
///
/// # Leaves out
/// Warm-up of metal at every start; cold air that falls back through ducts at every stop.
///
/// # Examples
/// ```
/// use uom::si::f64::{MassDensity, Power, Ratio, ThermalConductance, VolumeRate};
/// use uom::si::{mass_density::kilogram_per_cubic_meter, power::kilowatt, ratio::percent};
/// use uom::si::{thermal_conductance::watt_per_kelvin, volume_rate::liter_per_second};
/// use winterseam::ducts::{Asked, Belly, Ducts, LeaksAt, Side, cycle};
/// use winterseam::units::celsius;
///
/// let conducts = |w_k| ThermalConductance::new::<watt_per_kelvin>(w_k);
/// let ducts = |leaks| Ducts {
///     fan: VolumeRate::new::<liter_per_second>(380.0),
///     density: MassDensity::new::<kilogram_per_cubic_meter>(1.2),
///     supply: Side { conducts: conducts(22.0), lost: Ratio::new::<percent>(leaks), zone: celsius(0.0) },
///     supply_leaks: LeaksAt::Registers,
///     back: Side { conducts: conducts(0.0), lost: Ratio::default(), zone: celsius(0.0) },
/// };
/// let belly = Belly {
///     to_rooms: conducts(195.0),
///     beyond: conducts(41.0),
///     beyond_is: celsius(-5.0),
///     kept_warm: Ratio::default(),
/// };
/// let asked = Asked {
///     capacity: Power::new::<kilowatt>(14.0),
///     need: Power::new::<kilowatt>(5.0),
///     drawn_in: Power::default(),
///     indoor: celsius(21.0),
/// };
/// let (leaky, sealed) = (cycle(&ducts(12.0), &belly, &asked), cycle(&ducts(3.0), &belly, &asked));
/// // Sealed ducts burn less, and leave the belly and its pipes colder.
/// assert!(sealed.given < leaky.given && sealed.belly < leaky.belly);
/// ```
#[must_use]
pub fn cycle(ducts: &Ducts, belly: &Belly, asked: &Asked) -> Cycle {
    let (room, beyond) = (in_celsius(asked.indoor), in_celsius(belly.beyond_is));
    let to_rooms = belly.to_rooms.get::<watt_per_kelvin>();
    let both = to_rooms + belly.beyond.get::<watt_per_kelvin>();
    let unwarmed = if both > 0.0 { beyond + to_rooms / both * (room - beyond) } else { room };
    let capacity = asked.capacity.get::<watt>();
    let plenum = ducts.entering(room) + capacity / ducts.carries();
    let above = plenum - unwarmed;
    let (warms, reaches) = (warms(ducts, belly), reaches(ducts));
    // What arrives while the belly is not warmed, less what the fan draws in, and what each degree
    // of the belly adds to it.
    let each = reaches * (1.0 - ducts.keeps_on_the_way());
    let arrives = reaches * (plenum - room) - each * above - asked.drawn_in.get::<watt>();
    let need = asked.need.get::<watt>();
    // Belly and rooms together are a quadratic equation for the time on.
    let curved = warms * (arrives + each * above);
    let straight = both * arrives + to_rooms * warms * above - need * warms;
    let root = sqrt((straight * straight + 4.0 * curved * need * both).max(0.0));
    let on = if both > 0.0 { 2.0 * need * both / (straight + root) } else { need / arrives };
    // Where even all of the time is not enough, no root lies below one.
    let on = if on.is_finite() && on >= 0.0 { on.min(1.0) } else { 1.0 };
    let warmed = if both > 0.0 { on * warms * above / (both + on * warms) } else { 0.0 };
    Cycle {
        on: Ratio::new::<ratio>(on),
        given: asked.capacity * on,
        belly: celsius(unwarmed + warmed),
    }
}

/// Heat that the running furnace gives the belly for each degree of its plenum over it, W/K.
fn warms(ducts: &Ducts, belly: &Belly) -> f64 {
    let (carries, keeps) = (ducts.carries(), ducts.keeps_on_the_way());
    let lost = ducts.supply.lost.get::<ratio>();
    let leaked = belly.kept_warm.get::<ratio>() * lost * carries;
    match ducts.supply_leaks {
        LeaksAt::Registers => (1.0 - keeps) * carries + leaked * keeps,
        LeaksAt::Plenum => (1.0 - keeps) * (1.0 - lost) * carries + leaked,
    }
}

/// What the air that reaches the rooms carries for each degree, W/K.
fn reaches(ducts: &Ducts) -> f64 {
    (1.0 - ducts.supply.lost.get::<ratio>()) * ducts.carries()
}
