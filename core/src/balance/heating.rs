//! What the furnace has to give: what a home loses, less what sun and people give it.

use super::{DuctYear, Months, Use, UseKey, fuel};
use crate::envelope::utilisation;
use crate::home::Home;
use uom::si::f64::{Energy, Ratio};

/// Heat that leaves a home by one path.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Loss {
    /// The path.
    pub key: UseKey,
    /// What it takes; a month warmer outdoors than the rooms gives some back.
    pub heat: Months,
}

/// The year of the rooms.
#[derive(Debug, Clone, PartialEq)]
pub struct Heating {
    /// What each path takes.
    pub losses: Vec<Loss>,
    /// What sun, people and machines give.
    pub gained: Months,
    /// What the furnace has to give.
    pub need: Months,
}

impl Heating {
    /// The need of each month: losses, less as much of the gains as a home can use that keeps heat
    /// so well.
    pub(super) fn of(losses: Vec<Loss>, gained: Months, keeps: Ratio) -> Self {
        let lost: Months = losses.iter().map(|loss| loss.heat).sum();
        let need = |month: usize| {
            let used = gained[month] * utilisation(gained[month] / lost[month], keeps);
            (lost[month] - used).max(Energy::default())
        };
        let cold = |month: usize| lost[month] > Energy::default();
        let need = Months::each(|month| if cold(month) { need(month) } else { Energy::default() });
        Self { losses, gained, need }
    }

    /// What all paths together take.
    #[must_use]
    pub fn lost(&self) -> Months {
        self.losses.iter().map(|loss| loss.heat).sum()
    }

    /// What the furnace buys for each path: the need of a month falls on the paths as their losses
    /// do, so that they add up to it; then what ducts lose.
    pub(super) fn uses(&self, home: &Home, ducts: Option<&DuctYear>) -> Vec<Use> {
        let lost = self.lost();
        let share = |month: usize| {
            let any = lost[month] > Energy::default();
            if any { self.need[month] / lost[month] } else { Ratio::default() }
        };
        let used = |key, heat: Months| {
            let heat = heat.total();
            let heat = ducts.map_or(heat, |ducts| heat / ducts.machine);
            let bought = fuel::bought(home, heat);
            Use { key, bought, cost: fuel::heating_cost(home, bought) }
        };
        let path =
            |loss: &Loss| used(loss.key, Months::each(|month| loss.heat[month] * share(month)));
        let lost = ducts.map(|ducts| used(UseKey::Ducts, ducts.lost));
        self.losses.iter().map(path).chain(lost).collect()
    }
}
