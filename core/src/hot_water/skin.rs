//! Layers of skin, and how the basal layer warms in water.
//!
//! Heat spreads by Pennes' law: blood at core temperature flows through all but the epidermis. The
//! law is linear, so one [`StepResponse`] serves every water temperature: each kelvin of water above
//! the skin's surface at rest raises the basal layer by the same share.

use crate::math;
use crate::physics::conduction::{Back, Layer, StepResponse, Wall};
use uom::si::f64::{Frequency, Length, ThermalConductivity, Time, VolumetricHeatCapacity};
use uom::si::{
    frequency::hertz, length::meter, ratio::ratio, thermal_conductivity::watt_per_meter_kelvin,
    time::second, volumetric_heat_capacity::joule_per_cubic_meter_kelvin,
};

/// Surface of skin at rest, °C; from [`SKIN_LAYERS`](crate::sources::hot_water::SKIN_LAYERS).
pub const SURFACE_C: f64 = 34.0;
/// Blood and the body's core, °C; from the same source.
pub const CORE_C: f64 = 37.0;

/// Density times specific heat of blood, J/(m³ K); from the same source.
const BLOOD_J_M3_K: f64 = 1060.0 * 3770.0;
/// Volume of blood that flows through a volume of tissue in a second, 1/s; from the same source.
const PERFUSION_HZ: f64 = 0.001_25;

/// One row of the table of layers.
struct Tissue {
    thickness_m: f64,
    conductivity_w_m_k: f64,
    density_kg_m3: f64,
    specific_heat_j_kg_k: f64,
    perfusion_hz: f64,
}

/// Below the epidermis: dermis, fat, inner tissue; from the same source.
const DEEP_TISSUES: [Tissue; 3] = [
    Tissue {
        thickness_m: 0.002,
        conductivity_w_m_k: 0.45,
        density_kg_m3: 1200.0,
        specific_heat_j_kg_k: 3300.0,
        perfusion_hz: PERFUSION_HZ,
    },
    Tissue {
        thickness_m: 0.010,
        conductivity_w_m_k: 0.19,
        density_kg_m3: 1000.0,
        specific_heat_j_kg_k: 2500.0,
        perfusion_hz: PERFUSION_HZ,
    },
    Tissue {
        thickness_m: 0.030,
        conductivity_w_m_k: 0.50,
        density_kg_m3: 1000.0,
        specific_heat_j_kg_k: 4000.0,
        perfusion_hz: PERFUSION_HZ,
    },
];

/// The epidermis, whose thickness is the depth of the basal layer; from the same source.
fn epidermis(basal_depth: Length) -> Tissue {
    Tissue {
        thickness_m: basal_depth.get::<meter>(),
        conductivity_w_m_k: 0.24,
        density_kg_m3: 1200.0,
        specific_heat_j_kg_k: 3590.0,
        perfusion_hz: 0.0,
    }
}

impl Tissue {
    fn layer(&self) -> Layer {
        let capacity = self.density_kg_m3 * self.specific_heat_j_kg_k;
        let sink = self.perfusion_hz * BLOOD_J_M3_K / capacity;
        Layer {
            thickness: Length::new::<meter>(self.thickness_m),
            conductivity: ThermalConductivity::new::<watt_per_meter_kelvin>(
                self.conductivity_w_m_k,
            ),
            heat_capacity: VolumetricHeatCapacity::new::<joule_per_cubic_meter_kelvin>(capacity),
            sink: Frequency::new::<hertz>(sink),
        }
    }
}

/// Skin over a body at core temperature, its face held at the temperature of the water.
///
/// Fast water holds the face like that; slower water would burn later, and that relief is not
/// counted on. Layers: [`SKIN_LAYERS`](crate::sources::hot_water::SKIN_LAYERS).
#[must_use]
pub fn skin(basal_depth: Length) -> Wall {
    let tissues = [epidermis(basal_depth)].into_iter().chain(DEEP_TISSUES);
    let layers = tissues.map(|tissue| tissue.layer()).collect();
    Wall { layers, back: Back::Held, film: None }
}

/// Temperature at rest, °C, where this share of a step at the surface arrives in the end.
///
/// # Equation
///
/// T = Tc + (Ts − Tc) · s
///
/// # Symbols
///
/// | symbol | meaning                                | unit | in code        |
/// |--------|----------------------------------------|------|----------------|
/// | T      | temperature before the water comes     | °C   | return value   |
/// | Tc     | body core                              | °C   | [`CORE_C`]     |
/// | Ts     | surface at rest                        | °C   | [`SURFACE_C`]  |
/// | s      | share of a lasting step that arrives   | –    | `settled`      |
///
/// # Source
///
/// The law is linear, see above; the two temperatures:
/// [`SKIN_LAYERS`](crate::sources::hot_water::SKIN_LAYERS)
///
/// # Valid for
///
/// The layers of [`skin`], from the surface (s = 1) to the core (s = 0).
///
/// # Leaves out
///
/// Cold hands, which would burn a little later.
///
/// # Examples
///
/// ```
/// use winterseam::hot_water::skin::{SURFACE_C, at_rest_c};
/// assert_eq!(at_rest_c(1.0), SURFACE_C);
/// ```
#[must_use]
pub fn at_rest_c(settled: f64) -> f64 {
    CORE_C + (SURFACE_C - CORE_C) * settled
}

/// How the basal layer follows the water, from before heat arrives to the longest time asked for.
#[derive(Debug, Clone)]
pub struct Warming {
    response: StepResponse,
    start_c: f64,
    moments: Vec<Moment>,
}

/// The basal layer at one moment.
#[derive(Debug, Clone, Copy)]
pub(super) struct Moment {
    /// Natural logarithm of the seconds in the water.
    pub(super) ln_s: f64,
    /// Share of the step that has arrived.
    pub(super) share: f64,
}

/// Moments for each factor e of time; four times as many change no burn time by 0.1 %.
const PER_E_FOLD: f64 = 10.0;
/// The first moment, as a share of the time that heat takes through the epidermis: by then less
/// than a millionth of the step has arrived.
const FIRST: f64 = 0.02;

impl Warming {
    /// Warming of the basal layer at a depth, up to `longest`.
    #[must_use]
    pub fn new(basal_depth: Length, longest: Time) -> Self {
        Self::with_moments(basal_depth, longest, PER_E_FOLD)
    }

    pub(super) fn with_moments(basal_depth: Length, longest: Time, per_e_fold: f64) -> Self {
        let wall = skin(basal_depth);
        let response = wall.at(basal_depth);
        let outer = wall.layers[0];
        let crossing = basal_depth * basal_depth * outer.heat_capacity / outer.conductivity;
        let from = math::ln(FIRST * crossing.get::<second>());
        let to = math::ln(longest.get::<second>());
        let count = ((to - from) * per_e_fold).ceil().max(1.0);
        let moment = |i: u32| {
            let ln_s = from + (to - from) * f64::from(i) / count;
            let share = response.after(Time::new::<second>(math::exp(ln_s))).get::<ratio>();
            Moment { ln_s, share }
        };
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // a few hundred
        let moments = (0..=count as u32).map(moment).collect();
        Self { start_c: at_rest_c(response.settled().get::<ratio>()), response, moments }
    }

    /// The basal layer at rest, °C.
    pub(super) fn start_c(&self) -> f64 {
        self.start_c
    }

    /// The moments, in order.
    pub(super) fn moments(&self) -> &[Moment] {
        &self.moments
    }

    /// Share of the step that has arrived after any time.
    pub(super) fn share_after(&self, time: Time) -> f64 {
        self.response.after(time).get::<ratio>()
    }
}
