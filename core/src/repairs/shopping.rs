//! What to buy, how much of it, and about what it costs.

/// What a quantity is counted in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Unit {
    /// Pieces.
    Piece,
    /// Kits.
    Kit,
    /// Tubes.
    Tube,
    /// Rolls.
    Roll,
}

impl Unit {
    /// Stable word for programs and words.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Piece => "piece",
            Self::Kit => "kit",
            Self::Tube => "tube",
            Self::Roll => "roll",
        }
    }
}

/// Something to buy.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Material {
    /// Stable name; its words stand under `material.<item>`.
    pub item: &'static str,
    /// How much, rounded up to what a shop sells.
    pub quantity: f64,
    /// What that is counted in.
    pub unit: Unit,
    /// Low and high price of one, in dollars.
    pub price_usd: (f64, f64),
}

impl Material {
    /// One material by its name in the price table; the quantity is rounded up.
    pub(super) fn new(item: &'static str, quantity: f64) -> Self {
        let (_, unit, price_usd) = *PRICES
            .iter()
            .find(|(name, ..)| *name == item)
            .expect("each material stands in the price table");
        Self { item, quantity: quantity.ceil(), unit, price_usd }
    }

    /// Low and high cost of the whole quantity, in dollars.
    #[must_use]
    pub fn cost_usd(&self) -> (f64, f64) {
        (self.price_usd.0 * self.quantity, self.price_usd.1 * self.quantity)
    }
}

/// Retail prices, low and high: [`crate::sources::trade::RETAIL_PRICES`].
const PRICES: &[(&str, Unit, (f64, f64))] = &[
    ("bath_fan_damper", Unit::Piece, (10.0, 25.0)),
    ("dryer_vent_hood", Unit::Piece, (12.0, 30.0)),
    ("range_hood_damper", Unit::Piece, (15.0, 40.0)),
    ("fan_timer", Unit::Piece, (20.0, 45.0)),
    ("ventilation_fan", Unit::Piece, (80.0, 250.0)),
    ("backer_rod_20ft", Unit::Roll, (4.0, 8.0)),
    ("belly_patch_kit", Unit::Kit, (25.0, 60.0)),
    ("bath_fan_duct_kit", Unit::Kit, (25.0, 60.0)),
    ("caulk", Unit::Tube, (3.0, 5.0)),
    ("co_alarm", Unit::Piece, (20.0, 45.0)),
    ("cooler_cover", Unit::Piece, (15.0, 40.0)),
    ("door_strip_kit_17ft", Unit::Kit, (10.0, 25.0)),
    ("door_sweep_36in", Unit::Piece, (8.0, 20.0)),
    ("duct_mastic", Unit::Piece, (10.0, 25.0)),
    ("duct_strap", Unit::Piece, (5.0, 12.0)),
    ("foil_tape_roll", Unit::Roll, (10.0, 25.0)),
    ("furnace_filter", Unit::Piece, (4.0, 15.0)),
    ("gasket_tape_17ft", Unit::Roll, (4.0, 10.0)),
    ("heat_cable_thermostat", Unit::Piece, (25.0, 60.0)),
    ("hardware_cloth_piece", Unit::Piece, (5.0, 12.0)),
    ("mixing_valve", Unit::Piece, (60.0, 150.0)),
    ("outlet_gasket", Unit::Piece, (0.3, 0.6)),
    ("patch_board", Unit::Piece, (5.0, 15.0)),
    ("pipe_sleeve_6ft", Unit::Piece, (3.0, 8.0)),
    ("sealant_listed", Unit::Tube, (7.0, 18.0)),
    ("sheet_metal_piece", Unit::Piece, (10.0, 25.0)),
    ("shower_head", Unit::Piece, (10.0, 30.0)),
    ("skirting_panel_4ft", Unit::Piece, (15.0, 35.0)),
    ("storm_insert", Unit::Piece, (60.0, 150.0)),
    ("smoke_alarm", Unit::Piece, (10.0, 30.0)),
    ("tank_jacket", Unit::Piece, (25.0, 50.0)),
    ("thermometer", Unit::Piece, (8.0, 15.0)),
    ("window_film_3", Unit::Kit, (8.0, 20.0)),
    ("window_strip_17ft", Unit::Roll, (5.0, 12.0)),
];
