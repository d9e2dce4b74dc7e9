//! The pipes of homes by nominal size, and what is wrapped around them.

use crate::physics::pipe::Pipe;
use crate::sources::freeze::PIPE_FOAM;
use crate::sources::pipes::{POLYSTYRENE_INSULATION, WET_INSULATION};
use crate::sources::{Confidence, Figure};
use uom::si::f64::{Length, Ratio, ThermalConductivity, VolumetricHeatCapacity};
use uom::si::length::inch;
use uom::si::thermal_conductivity::watt_per_meter_kelvin;
use uom::si::volumetric_heat_capacity::joule_per_cubic_meter_kelvin;

/// What a water pipe is made of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum PipeKind {
    /// Copper tube, the thicker of the usual two.
    CopperL,
    /// Copper tube, the thinner of the usual two.
    CopperM,
    /// Cross-linked polyethylene tube.
    Pex,
    /// Chlorinated vinyl tube.
    Cpvc,
    /// Steel pipe, schedule 40.
    Steel,
    /// The grey tube of homes of 1978 to 1995.
    Polybutylene,
}

/// The nominal size of a water pipe. Tube of ½ in is ⅝ in wide outside, steel pipe 0.84 in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum PipeSize {
    /// ½ in.
    Half,
    /// ¾ in.
    ThreeQuarters,
    /// 1 in.
    One,
}

/// What is wrapped around a pipe.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum InsulationKind {
    /// Black rubber foam.
    Rubber,
    /// Grey polyethylene foam.
    Foam,
    /// Glass fibre.
    GlassFibre,
    /// Extruded polystyrene shells.
    Polystyrene,
    /// Any of them, wet or pressed flat.
    Wet,
}

/// Outside diameters of tube, in, by size.
const TUBE: [f64; 3] = [0.625, 0.875, 1.125];
/// Outside diameters of steel pipe, in, by size.
const STEEL: [f64; 3] = [0.840, 1.050, 1.315];

/// What a wall is like.
struct Wall {
    /// in, by size.
    inside: [f64; 3],
    /// W/(m·K).
    conducts: f64,
    /// J/(m³·K).
    stores: f64,
    emissivity: f64,
}

impl PipeKind {
    /// All of them.
    pub const ALL: [Self; 6] =
        [Self::CopperL, Self::CopperM, Self::Pex, Self::Cpvc, Self::Steel, Self::Polybutylene];

    /// The bare pipe of a size: [`COPPER_TUBE`], [`PEX_TUBE`], [`CPVC_TUBE`], [`STEEL_PIPE`],
    /// [`PIPE_WALLS`]. Copper is taken as oxidised.
    ///
    /// ```
    /// use winterseam::freeze::{PipeKind, PipeSize};
    /// use uom::si::length::inch;
    ///
    /// let pipe = PipeKind::Steel.bare(PipeSize::One);
    /// assert!((pipe.outside.get::<inch>() - 1.315).abs() < 1e-12);
    /// ```
    ///
    /// [`COPPER_TUBE`]: crate::sources::pipes::COPPER_TUBE
    /// [`PEX_TUBE`]: crate::sources::pipes::PEX_TUBE
    /// [`CPVC_TUBE`]: crate::sources::pipes::CPVC_TUBE
    /// [`STEEL_PIPE`]: crate::sources::pipes::STEEL_PIPE
    /// [`PIPE_WALLS`]: crate::sources::pipes::PIPE_WALLS
    #[must_use]
    pub fn bare(self, size: PipeSize) -> Pipe {
        let outside = if self == Self::Steel { STEEL } else { TUBE };
        let wall = self.wall();
        Pipe {
            inside: Length::new::<inch>(wall.inside[size as usize]),
            wall: ThermalConductivity::new::<watt_per_meter_kelvin>(wall.conducts),
            ..Pipe::thin(Length::new::<inch>(outside[size as usize]), Ratio::from(wall.emissivity))
        }
    }

    /// Heat that its wall stores for each volume and kelvin.
    #[must_use]
    pub fn wall_heat(self) -> VolumetricHeatCapacity {
        VolumetricHeatCapacity::new::<joule_per_cubic_meter_kelvin>(self.wall().stores)
    }

    fn wall(self) -> Wall {
        let wall =
            |inside, conducts, stores, emissivity| Wall { inside, conducts, stores, emissivity };
        match self {
            Self::CopperL => wall([0.545, 0.785, 1.025], 390.0, 3.44e6, 0.6),
            Self::CopperM => wall([0.569, 0.811, 1.055], 390.0, 3.44e6, 0.6),
            Self::Pex => wall([0.485, 0.681, 0.875], 0.41, 2.16e6, 0.9),
            Self::Cpvc => wall([0.489, 0.695, 0.921], 0.137, 1.40e6, 0.9),
            Self::Steel => wall([0.622, 0.824, 1.049], 50.0, 3.61e6, 0.9),
            Self::Polybutylene => wall([0.485, 0.681, 0.875], 0.22, 1.75e6, 0.9),
        }
    }
}

impl InsulationKind {
    /// All of them.
    pub const ALL: [Self; 5] =
        [Self::Rubber, Self::Foam, Self::GlassFibre, Self::Polystyrene, Self::Wet];

    /// How it conducts near the temperatures of a cold pipe.
    ///
    /// ```
    /// use winterseam::freeze::InsulationKind;
    ///
    /// let (dry, wet) = (InsulationKind::Foam.conductivity(), InsulationKind::Wet.conductivity());
    /// assert!(dry.high < wet.low);
    /// ```
    #[must_use]
    pub fn conductivity(self) -> Figure<ThermalConductivity> {
        let (best, low, high, source) = match self {
            Self::Rubber => (0.036, 0.033, 0.0404, &PIPE_FOAM),
            Self::Foam => (0.036, 0.034, 0.040, &PIPE_FOAM),
            Self::GlassFibre => (0.036, 0.033, 0.036, &PIPE_FOAM),
            Self::Polystyrene => (0.029, 0.029, 0.031, &POLYSTYRENE_INSULATION),
            Self::Wet => (0.1, 0.1, 0.5, &WET_INSULATION),
        };
        let k = ThermalConductivity::new::<watt_per_meter_kelvin>;
        Figure::exact(k(best), Confidence::Seen, &[source]).between(k(low), k(high))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_pipe_has_a_wall_and_larger_sizes_hold_more() {
        for kind in PipeKind::ALL {
            let [half, three_quarters, one] =
                [PipeSize::Half, PipeSize::ThreeQuarters, PipeSize::One].map(|s| kind.bare(s));
            assert!(half.inside < half.outside && one.inside < one.outside, "{kind:?}");
            assert!(half.inside < three_quarters.inside && three_quarters.inside < one.inside);
        }
    }
}
