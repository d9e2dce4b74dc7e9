//! What a furnace filter holds back.

use super::blower::over_standard;
use crate::home::{Filter, FilterKind, FilterLook};
use crate::math::pow;
use crate::sources::ducts::PRESSURE_DROPS;
use crate::sources::{Confidence, Figure};
use crate::units::pressure::inch_of_water;
use uom::si::area::square_inch;
use uom::si::f64::{Area, MassDensity, Pressure, Velocity, VolumeRate};
use uom::si::time::day;
use uom::si::velocity::foot_per_minute;

/// Speed through its face that drops are told at, ft/min.
const TOLD_AT: f64 = 300.0;
/// How drops rise with speed: between felt (1) and a hole (2).
const RISES: f64 = 1.3;
/// Face of a filter that nobody measured, in²: 20 by 20.
const USUAL_FACE_IN2: f64 = 400.0;

/// A filter in its slot, ready to be asked for its drop.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FilterInPlace {
    /// Drop at [`TOLD_AT`].
    told: Pressure,
    face: Area,
}

/// Drop of a clean one-inch filter by what it is made of, inches of water: least, usual, most.
fn clean(filter: &Filter) -> [f64; 3] {
    match filter.kind {
        Some(FilterKind::Fiberglass) => [0.05, 0.08, 0.10],
        Some(FilterKind::Pleated) => [0.10, 0.14, 0.20],
        Some(FilterKind::Dense) => [0.20, 0.27, 0.31],
        None => [0.05, 0.12, 0.27],
    }
}

/// What dirt adds, inches of water: least, usual, most. By its looks, and where nobody looked by its
/// age: due at three months ([`FILTER_CHANGE`](crate::sources::trade::FILTER_CHANGE)).
fn dirt(filter: &Filter) -> [f64; 3] {
    match (filter.look, filter.in_use.map(|age| age.get::<day>())) {
        (Some(FilterLook::Bright), _) => [0.0, 0.0, 0.05],
        (Some(FilterLook::Grey), _) | (None, Some(..30.0)) => [0.0, 0.05, 0.15],
        (Some(FilterLook::Dim), _) => [0.10, 0.20, 0.30],
        (Some(FilterLook::Blocked), _) => [0.30, 0.50, 1.00],
        (None, Some(90.0..)) => [0.05, 0.20, 0.50],
        (None, _) => [0.0, 0.10, 0.50],
    }
}

/// What a filter holds back at 300 feet a minute: by what it is made of, and its looks or its age.
#[must_use]
pub(crate) fn drop_of(filter: &Filter) -> Figure<Pressure> {
    let inches = |at: usize| Pressure::new::<inch_of_water>(clean(filter)[at] + dirt(filter)[at]);
    let confidence = if filter.look.is_some() { Confidence::Seen } else { Confidence::Guessed };
    Figure::exact(inches(1), confidence, &[&PRESSURE_DROPS])
        .between(inches(0), inches(2))
        .from_inputs(["look", "in_use_days", "kind"].map(|field| format!("furnace_filter.{field}")))
}

impl FilterInPlace {
    /// A filter of this drop at 300 ft/min, with the face of the usual size.
    #[must_use]
    pub fn usual_size(told: Pressure) -> Self {
        Self { told, face: Area::new::<square_inch>(USUAL_FACE_IN2) }
    }

    /// A filter of this drop at 300 ft/min, with its face as it was measured or as is usual.
    #[must_use]
    pub(crate) fn of(filter: &Filter, told: Pressure) -> Self {
        let measured = filter.face.map(|(width, height)| Self { told, face: width * height });
        measured.unwrap_or(Self::usual_size(told))
    }

    /// Speed of the air through its face.
    ///
    /// ```
    /// use uom::si::f64::{Pressure, VolumeRate};
    /// use uom::si::{pressure::pascal, velocity::foot_per_minute};
    /// use winterseam::ducts::FilterInPlace;
    /// use winterseam::units::volume_rate::cfm;
    ///
    /// let filter = FilterInPlace::usual_size(Pressure::new::<pascal>(30.0));
    /// let speed = filter.face_velocity(VolumeRate::new::<cfm>(800.0));
    /// assert!((speed.get::<foot_per_minute>() - 288.0).abs() < 1e-6);
    /// ```
    #[must_use]
    pub fn face_velocity(&self, flow: VolumeRate) -> Velocity {
        flow / self.face
    }

    /// What it holds back at a flow.
    ///
    /// # Equation
    /// ```text
    /// Δp = Δp₀ · (v ÷ v₀)^1.3 · (ρ ÷ ρ₀)^0.3
    /// ```
    ///
    /// # Symbols
    /// | symbol | meaning | unit | name |
    /// |---|---|---|---|
    /// | `Δp` | drop | Pa | returned |
    /// | `Δp₀` | drop at 300 ft/min | Pa | `told` |
    /// | `v`, `v₀` | speed through the face, and 300 ft/min | m/s | `face_velocity`, `TOLD_AT` |
    /// | `ρ`, `ρ₀` | density of the air, and that of the tables: with the power by which the drop is not viscous | kg/m³ | `density` |
    ///
    /// # Source
    /// [`PRESSURE_DROPS`]
    ///
    /// # Valid for
    /// One-inch filters; an order of magnitude, as the sources are.
    ///
    /// # Leaves out
    /// Air that passes beside the frame; a filter that is sucked out of it.
    ///
    /// # Examples
    /// ```
    /// use uom::si::f64::{MassDensity, Pressure, VolumeRate};
    /// use uom::si::mass_density::kilogram_per_cubic_meter;
    /// use winterseam::ducts::FilterInPlace;
    /// use winterseam::units::{pressure::inch_of_water, volume_rate::cfm};
    ///
    /// let filter = FilterInPlace::usual_size(Pressure::new::<inch_of_water>(0.14));
    /// let sea = MassDensity::new::<kilogram_per_cubic_meter>(1.2014);
    /// let at_500_ft_min = filter.drop(VolumeRate::new::<cfm>(500.0 * 400.0 / 144.0), sea);
    /// assert!((at_500_ft_min.get::<inch_of_water>() - 0.272).abs() < 0.001);
    /// ```
    #[must_use]
    pub fn drop(&self, flow: VolumeRate, density: MassDensity) -> Pressure {
        let speed = self.face_velocity(flow).get::<foot_per_minute>();
        let thin = pow(over_standard(density), RISES - 1.0);
        self.told * pow((speed / TOLD_AT).max(0.0), RISES) * thin
    }
}
