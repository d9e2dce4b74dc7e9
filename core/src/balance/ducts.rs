//! What the furnace gives through its ducts: the need of the rooms, and what ducts lose on the way
//! less what comes back through a warmer floor.

use super::air_year::AirYear;
use super::gaps::{indoor_air, setpoint};
use super::heating::Heating;
use super::shell::ShellYear;
use super::{Months, Weather};
use crate::climate::DAYS_IN;
use crate::ducts::{
    AirMoved, Asked, Belly, Does, Ducts, LeaksAt, Side, air_moved, at_flow, capacity, cycle, walls,
    warm_air_share,
};
use crate::envelope::shell;
use crate::home::{Fuel, Home};
use crate::physics::joined_flows::{Joining, joined};
use crate::properties::air::{Air, heat_capacity};
use crate::units::{carried, warmer_by};
use uom::si::f64::{
    Area, Energy, Power, Ratio, ThermalConductance, ThermodynamicTemperature, Time, VolumeRate,
};
use uom::si::ratio::ratio;
use uom::si::time::day;

/// Share of the air from leaks into the belly that warms it before it is gone: nobody knows; all of
/// it makes sealing save least.
const KEPT_WARM: f64 = 0.5;

/// A year of furnace and ducts.
#[derive(Debug, Clone, PartialEq)]
pub struct DuctYear {
    /// What the furnace gives beyond what the rooms need.
    pub lost: Months,
    /// How warm the ducts keep the belly, on the mean of each month.
    pub belly: [ThermodynamicTemperature; 12],
    /// Efficiency of a heat pump over that with all its air; one for anything else.
    pub machine: Ratio,
}

/// What a year is worked out from.
struct Year<'a> {
    home: &'a Home,
    air: Air,
    moved: AirMoved,
    shell: &'a ShellYear,
    leaks: VolumeRate,
    /// Heat of the usual furnace, or of the one whose label was read.
    capacity: Power,
    /// The furnace over one of the usual size, which its fan follows.
    size: Ratio,
}

/// A furnace gives this much more than the mean need of the coldest month, as makers size them
/// (common practice).
const SIZED: f64 = 1.6;

/// The year of the ducts; `None` where no heat comes out of registers, or no air is known.
pub(super) fn ducts(
    home: &Home,
    weather: &Weather<'_>,
    (air_year, shell): (&AirYear, &ShellYear),
    heating: &Heating,
    leakage: Area,
) -> Option<DuctYear> {
    let share = warm_air_share(home);
    let air = indoor_air(home, weather).filter(|_| share > Ratio::default())?;
    let moved = air_moved(home, air.density());
    let leaks = leakage * air_year.speed();
    let capacity = capacity(home, weather.place.station.elevation);
    let size = size(home, heating, share, capacity);
    let year = Year { home, air, moved, shell, leaks, capacity, size };
    let mut belly = [setpoint(home); 12];
    let mut lost = Months::default();
    for month in 0..12 {
        let time = Time::new::<day>(f64::from(DAYS_IN[month]));
        let need: Power = heating.need[month] * share / time;
        let hour = year.month(month, need);
        belly[month] = hour.belly;
        lost[month] = ((hour.given - need) * time).max(Energy::default());
    }
    Some(DuctYear { lost, belly, machine: machine(home, moved.of_clean) })
}

/// How large a furnace is over the usual one: as its label says, or large enough for its home.
fn size(home: &Home, heating: &Heating, share: Ratio, usual: Power) -> Ratio {
    let one = Ratio::new::<ratio>(1.0);
    if home.heating.output.is_some() {
        return one;
    }
    let month = |month: usize| -> Power {
        heating.need[month] * share / Time::new::<day>(f64::from(DAYS_IN[month]))
    };
    let coldest = (0..12).map(month).fold(Power::default(), Power::max);
    (coldest * SIZED / usual).max(one)
}

impl Year<'_> {
    /// The mean of a month in which the ducts bring this much of the rooms' need.
    fn month(&self, month: usize, need: Power) -> crate::ducts::Cycle {
        let below = self.shell.below[month];
        let indoor = setpoint(self.home);
        let apart = warmer_by(indoor, below.outdoor);
        let drawn = self.moved.running.flow * self.size * self.moved.lost;
        let more = joined(self.leaks, drawn, Joining::Squares) - self.leaks;
        let drawn_in = carried(more, self.air.density(), heat_capacity(), apart);
        let asked = Asked {
            capacity: self.capacity * self.size,
            need,
            drawn_in: drawn_in.max(Power::default()),
            indoor,
        };
        cycle(&self.ducts(below.temperature), &self.belly(below.joined, below.temperature), &asked)
    }

    fn ducts(&self, beyond: ThermodynamicTemperature) -> Ducts {
        let side = |conducts, lost| Side { conducts, lost, zone: beyond };
        Ducts {
            fan: self.moved.running.flow * self.size,
            density: self.air.density(),
            supply: side(walls(self.home), self.moved.lost),
            supply_leaks: LeaksAt::Registers,
            // The furnace door is the return: no duct.
            back: side(ThermalConductance::default(), Ratio::default()),
        }
    }

    fn belly(&self, joined: ThermalConductance, beyond: ThermodynamicTemperature) -> Belly {
        let shell = shell(self.home);
        let off = self.home.building.shell_off.map_or(0.0, |off| off.get::<ratio>());
        let through = in_a_row(shell.floor, shell.deck());
        let into_belly = Ratio::new::<ratio>(1.0) - self.moved.straight_out;
        Belly {
            to_rooms: shell.deck(),
            beyond: 1.0 / (1.0 / through + 1.0 / joined),
            beyond_is: beyond,
            kept_warm: into_belly * (KEPT_WARM * (1.0 - off)),
        }
    }
}

/// What lies behind the deck when both together conduct so much.
fn in_a_row(both: ThermalConductance, deck: ThermalConductance) -> ThermalConductance {
    /// A belly that is open all over joins the ducts to the air below as well as this times the deck.
    const WIDE_OPEN: f64 = 10.0;
    let left = 1.0 / both - 1.0 / deck;
    (1.0 / left.max(1.0 / (deck * WIDE_OPEN))).max(ThermalConductance::default())
}

/// A heat pump short of air gives less for its power.
fn machine(home: &Home, of_clean: Ratio) -> Ratio {
    let pump = home.heating.fuel == Some(Fuel::HeatPump);
    let full = Ratio::new::<ratio>(1.0);
    if pump { at_flow(Does::Heating, of_clean.min(full)).efficiency } else { full }
}
