//! The year of a home: the only place that joins models.
//!
//! The furnace gives what the home loses through its shell and by the air of its leaks, less what
//! sun and people give; what it gives falls on the paths as their losses do. Beside it stand the
//! heat cable, hot water, and the water that gaps bring into the roof. A saving is never computed
//! here: it is one year less another.

mod air_year;
mod cable;
mod ducts;
mod fan;
mod fuel;
mod gaps;
mod heating;
mod hot_water;
mod inputs;
mod months;
mod pipe;
mod roof;
mod shell;
mod windows;

pub use air_year::AirYear;
pub use ducts::DuctYear;
pub use fuel::{heat_content, heater_fuel};
pub use heating::{Heating, Loss};
pub use hot_water::settles;
pub use inputs::{Inputs, cable_inputs, duct_inputs, gap_inputs, heater_inputs, use_inputs};
pub use months::Months;
pub use pipe::{power_needed_on_coldest_night, time_to_plug};
pub use roof::wet_roof;
pub use shell::ShellYear;
pub use windows::wet_window_humidity;

use crate::climate::{Place, Year};
use crate::home::Home;
use crate::money::Dollars;
use uom::si::f64::{Area, Energy, Power, Time};

/// Where a home stands and the hours of its year.
#[derive(Debug, Clone, Copy)]
pub struct Weather<'a> {
    /// The place.
    pub place: &'a Place,
    /// Its hours.
    pub year: &'a Year,
}

/// What takes energy.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum UseKey {
    /// Air through the gap with this index.
    Gap(usize),
    /// Air through all leaks that nobody found.
    OtherLeaks,
    /// The heat cable.
    HeatCable,
    /// Outside air that a steady fan brings.
    SteadyFan,
    /// Hot water that is used.
    HotWater,
    /// Keeping tank and pipe hot.
    HotTank,
    /// What ducts lose.
    Ducts,
    /// Heat that a heat pump for water takes from the rooms about it.
    DrawnByHeater,
    /// Heat through the walls.
    Walls,
    /// Heat through the roof.
    Roof,
    /// Heat through floor and belly.
    Floor,
    /// Heat through glass and frames.
    Windows,
    /// Heat through the doors.
    Doors,
}

/// What one use takes in a year.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Use {
    /// What takes it.
    pub key: UseKey,
    /// Energy bought for it.
    pub bought: Energy,
    /// What that costs, where the price is known.
    pub cost: Option<Dollars>,
}

/// The year of one home.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Assessment {
    /// What takes energy.
    pub uses: Vec<Use>,
    /// What the furnace has to give, where the air of the place is known.
    pub heating: Option<Heating>,
    /// What ducts lose, where heat comes out of registers.
    pub ducts: Option<DuctYear>,
    /// Time in which a pipe with a heat cable may freeze.
    pub freeze_risk: Option<Time>,
    /// All leaks of the home together, where enough is known of it.
    pub leakage: Option<Area>,
    /// What the weather drives through each unit of it.
    pub air: Option<AirYear>,
    /// The year of the shell.
    pub shell: Option<ShellYear>,
}

impl Assessment {
    /// Energy bought for all uses.
    #[must_use]
    pub fn bought(&self) -> Energy {
        self.uses.iter().map(|one| one.bought).sum()
    }
}

/// The year of a home at a place.
#[must_use]
pub fn assess(home: &Home, weather: &Weather<'_>) -> Assessment {
    assess_again(home, weather, &Assessment::default())
}

/// The year of a home after a change: what the change left alone is taken over from the year before.
#[must_use]
pub fn assess_again(home: &Home, weather: &Weather<'_>, before: &Assessment) -> Assessment {
    let air = before.air.filter(|air| air.holds_for(home));
    let shell = before.shell.as_ref().filter(|shell| shell.holds_for(home)).cloned();
    let mut year = Assessment {
        air: air.or_else(|| AirYear::of(home, weather)),
        shell: shell.or_else(|| Some(ShellYear::of(home, weather))),
        ..Assessment::default()
    };
    let hot_water = hot_water::hot_water(home, weather);
    year.heat_rooms(home, weather, hot_water.warms);
    if let Some(cable) = cable::year(home, weather) {
        year.uses.push(cable.used);
        year.freeze_risk = Some(cable.freeze_risk);
    }
    year.uses.extend(hot_water.uses);
    year
}

impl Assessment {
    /// Counts what the furnace gives; a tank may spare it some. Nothing where the air of the place
    /// is not known.
    fn heat_rooms(&mut self, home: &Home, weather: &Weather<'_>, tank: Power) -> Option<()> {
        let (air, shell) = (self.air.as_ref()?, self.shell.as_ref()?);
        let leaks = gaps::leaks_of(home, weather)?;
        let mut losses: Vec<Loss> = gaps::losses(&leaks, air).collect();
        losses.extend(fan::loss(home, weather, leaks.total()));
        losses.extend(shell.losses);
        // A heat pump for water takes heat: a path like the others, and no gain below nothing.
        let drawn = Months::steady(-tank.min(Power::default()));
        let takes = tank < Power::default();
        losses.extend(takes.then_some(Loss { key: UseKey::DrawnByHeater, heat: drawn }));
        let gained = shell.gained + Months::steady(tank.max(Power::default()));
        let keeps = shell::keeps(home, air.conducts(leaks.total()));
        let heating = Heating::of(losses, gained, keeps);
        self.ducts = ducts::ducts(home, weather, (air, shell), &heating, leaks.total());
        self.uses = heating.uses(home, self.ducts.as_ref());
        self.heating = Some(heating);
        self.leakage = leaks.all();
        Some(())
    }
}
