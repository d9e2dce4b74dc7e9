//! Blower, filter, coil, ducts and registers together: how much air moves, and what presses on each
//! leak.

use super::blower::{Blower, moved, over_standard};
use super::filter::FilterInPlace;
use crate::math::{pow, sqrt};
use uom::si::f64::{MassDensity, Pressure, Ratio, VolumeRate};
use uom::si::pressure::pascal;
use uom::si::ratio::ratio;

/// A furnace and its ducts: each part by the pressure that it holds back at the design flow of air of
/// 0.075 lb/ft³.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct System {
    /// The blower.
    pub blower: Blower,
    /// Share of its air that dust on the blades leaves: one where they are clean.
    pub dust: Ratio,
    /// The filter; `None` where there is none.
    pub filter: Option<FilterInPlace>,
    /// Flow that the pressures below are told at.
    pub design: VolumeRate,
    /// Return grille and closet, at the design flow.
    pub back: Pressure,
    /// Share of the return that is open.
    pub back_open: Ratio,
    /// Coil between blower and ducts, at the design flow; zero without one.
    pub coil: Pressure,
    /// Trunk, branches and registers, at the design flow with all registers open.
    pub outlets: Pressure,
    /// Share of the registers that is open.
    pub outlets_open: Ratio,
    /// Share of the design flow that leaks out of the ducts at the design flow.
    pub leak: Ratio,
    /// Density of the air.
    pub density: MassDensity,
}

/// Air and pressures of a system that runs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Running {
    /// Air through the furnace.
    pub flow: VolumeRate,
    /// Of that, what ducts leak.
    pub leaked: VolumeRate,
    /// Between blower and coil.
    pub cabinet: Pressure,
    /// In the trunk below the furnace.
    pub trunk: Pressure,
    /// In the closet or return before the filter, below that of the rooms.
    pub back: Pressure,
}

/// Steps of halving: what is left is below rounding.
const HALVINGS: u8 = 60;
/// No blower of a home presses more, Pa.
const MOST_PA: f64 = 600.0;
/// Least share of an opening that is open: registers and grilles never close wholly.
const NEVER_CLOSED: f64 = 0.02;
/// Power of the pressure that duct leaks go with.
const LEAK_POWER: f64 = 0.6;

impl System {
    /// Solves for the flow at which the blower gives as much pressure as all parts take.
    ///
    /// # Equation
    /// ```text
    /// Q = s·√(p ÷ p₀)·Q₀·(1 − l) + l·Q₀·(p ÷ p₀)^0.6,  Q = d·B(p + c·(Q÷Q₀)² + F(Q) + r·(Q÷Q₀)²÷o²)
    /// ```
    ///
    /// # Symbols
    /// | symbol | meaning | unit | name |
    /// |---|---|---|---|
    /// | `Q`, `Q₀` | air moved, design flow | m³/s | `flow`, `design` |
    /// | `p`, `p₀` | pressure in the trunk, at the design flow; `p₀`, `c` and `r` go with the density | Pa | `trunk`, `outlets` |
    /// | `s`, `o` | share of registers, of the return open | – | `outlets_open`, `back_open` |
    /// | `l` | share that leaks at the design flow | – | `leak` |
    /// | `c`, `r` | coil, return at the design flow | Pa | `coil`, `back` |
    /// | `B`, `d` | blower and what dust leaves of it | m³/s, – | `blower`, `dust` |
    /// | `F` | filter | Pa | `filter` |
    ///
    /// # Source
    /// [`BLOWER_TABLES`](crate::sources::ducts::BLOWER_TABLES),
    /// [`FAN_LAWS`](crate::sources::ducts::FAN_LAWS),
    /// [`PRESSURE_DROPS`](crate::sources::ducts::PRESSURE_DROPS),
    /// [`DUCT_LEAK_EXPONENT`](crate::sources::ducts::DUCT_LEAK_EXPONENT)
    ///
    /// # Valid for
    /// Registers alike one another. Those that are closed are taken to close well.
    ///
    /// # Leaves out
    /// Which register lies near; crushed ducts.
    ///
    /// # Examples
    /// ```
    /// use uom::si::f64::{MassDensity, Pressure, Ratio};
    /// use uom::si::{mass_density::kilogram_per_cubic_meter, pressure::pascal, ratio::percent};
    /// use winterseam::ducts::{Blower, System, Tap};
    /// use winterseam::units::volume_rate::cfm;
    /// use uom::si::f64::VolumeRate;
    ///
    /// let all = System {
    ///     blower: Blower::ConstantSpeed(Tap::Medium),
    ///     dust: Ratio::new::<percent>(100.0),
    ///     filter: None,
    ///     design: VolumeRate::new::<cfm>(1000.0),
    ///     back: Pressure::new::<pascal>(10.0),
    ///     back_open: Ratio::new::<percent>(100.0),
    ///     coil: Pressure::new::<pascal>(40.0),
    ///     outlets: Pressure::new::<pascal>(45.0),
    ///     outlets_open: Ratio::new::<percent>(100.0),
    ///     leak: Ratio::new::<percent>(8.0),
    ///     density: MassDensity::new::<kilogram_per_cubic_meter>(1.2),
    /// };
    /// let some_closed = System { outlets_open: Ratio::new::<percent>(60.0), ..all };
    /// let (all, some) = (all.running(), some_closed.running());
    /// // Closing registers moves less air, presses harder on the ducts, and leaks more.
    /// assert!(some.flow < all.flow && some.trunk > all.trunk && some.leaked > all.leaked);
    /// ```
    #[must_use]
    pub fn running(&self) -> Running {
        let (mut least, mut most) = (0.0, MOST_PA);
        for _ in 0..HALVINGS {
            let middle = f64::midpoint(least, most);
            // More pressure lets out more air than the blower then gives.
            if self.let_out(middle) > self.blown(middle) { most = middle } else { least = middle }
        }
        let trunk = f64::midpoint(least, most);
        let flow = self.let_out(trunk);
        let pressure = Pressure::new::<pascal>;
        Running {
            flow,
            leaked: self.leaks(trunk),
            cabinet: pressure(trunk) + self.coil_drop(flow),
            trunk: pressure(trunk),
            back: self.back_drop(flow),
        }
    }

    /// Air out of registers and leaks at a pressure in the trunk.
    fn let_out(&self, trunk_pa: f64) -> VolumeRate {
        let open = self.outlets_open.get::<ratio>().max(NEVER_CLOSED);
        let registers = self.design * (1.0 - self.leak.get::<ratio>());
        registers * open * sqrt(self.over_outlets(trunk_pa)) + self.leaks(trunk_pa)
    }

    fn leaks(&self, trunk_pa: f64) -> VolumeRate {
        self.design * self.leak * pow(self.over_outlets(trunk_pa), LEAK_POWER)
    }

    /// What the blower gives when the trunk has this pressure and all that it lets out has passed
    /// the other parts.
    fn blown(&self, trunk_pa: f64) -> VolumeRate {
        let flow = self.let_out(trunk_pa);
        let filter = self.filter.map_or(Pressure::default(), |it| it.drop(flow, self.density));
        let others = self.coil_drop(flow) + self.back_drop(flow) + filter;
        let against = Pressure::new::<pascal>(trunk_pa) + others;
        moved(self.blower, against, self.density) * self.dust
    }

    fn coil_drop(&self, flow: VolumeRate) -> Pressure {
        self.held(self.coil) * self.over_design(flow)
    }

    fn back_drop(&self, flow: VolumeRate) -> Pressure {
        let open = self.back_open.get::<ratio>().max(NEVER_CLOSED);
        self.held(self.back) * self.over_design(flow) / (open * open)
    }

    /// What a part holds back at the design flow of this air.
    fn held(&self, part: Pressure) -> Pressure {
        part * over_standard(self.density)
    }

    /// Square of a flow over the design flow.
    fn over_design(&self, flow: VolumeRate) -> f64 {
        let share: Ratio = flow / self.design;
        share.get::<ratio>() * share.get::<ratio>()
    }

    fn over_outlets(&self, trunk_pa: f64) -> f64 {
        trunk_pa.max(0.0) / self.held(self.outlets).get::<pascal>()
    }
}
