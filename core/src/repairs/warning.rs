//! Codes of the core warnings. Nobody who embeds the page can switch one off.

/// Code of a warning; its words stand under `warning.<code>`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Warning(pub &'static str);

macro_rules! warnings {
    ($($name:ident = $code:literal;)*) => {
        #[allow(missing_docs, reason = "the words of each code stand in core/words")]
        impl Warning {
            $(pub const $name: Self = Self($code);)*
            /// Every warning of the core.
            pub const ALL: &'static [Self] = &[$(Self::$name),*];
        }
    };
}

warnings! {
    ALARM_SOUNDS = "W-ALARM-SOUNDS";
    BELLY_FREEZE = "W-BELLY-FREEZE";
    BREAKER = "W-BREAKER";
    BURN_FIRST_AID = "W-BURN-FIRST-AID";
    CLOSET_FREEZE = "W-CLOSET-FREEZE";
    CO = "W-CO";
    CO_EMERGENCY = "W-CO-EMERGENCY";
    CRAWL_COLD_RODENT = "W-CRAWL-COLD-RODENT";
    DO_NOT_SEAL_COMBUSTION_AIR = "W-DO-NOT-SEAL-COMBUSTION-AIR";
    EGRESS_WINDOW = "W-EGRESS-WINDOW";
    ELECTRIC_OFF_UNDER = "W-ELECTRIC-OFF-UNDER";
    EXIT = "W-EXIT";
    FAN_DRAFT = "W-FAN-DRAFT";
    FLAME_INDOORS = "W-FLAME-INDOORS";
    FREEZE_BEFORE_UNPLUG = "W-FREEZE-BEFORE-UNPLUG";
    GAS_PRO = "W-GAS-PRO";
    GAS_SMELL = "W-GAS-SMELL";
    HAY_BALES = "W-HAY-BALES";
    HEATCABLE_FIRE = "W-HEATCABLE-FIRE";
    HOT_WIRE = "W-HOT-WIRE";
    LEGIONELLA = "W-LEGIONELLA";
    LEAD_PAINT = "W-LEAD-PAINT";
    MOISTURE_FIRST = "W-MOISTURE-FIRST";
    NO_COOLING = "W-NO-COOLING";
    NO_PLASTIC_INSIDE = "W-NO-INTERIOR-VAPOR-BARRIER-HOT-HUMID";
    NO_HEAT = "W-NO-HEAT";
    OVEN_HEAT = "W-OVEN-HEAT";
    OVERHEAT_LIMIT = "W-OVERHEAT-LIMIT";
    OXYGEN = "W-OXYGEN";
    POWER_OFF_FURNACE = "W-POWER-OFF-FURNACE";
    RENTER_WRITTEN_NOTICE = "W-RENTER-WRITTEN-NOTICE";
    REOPEN_COOLER = "W-REOPEN-COOLER-IN-SPRING";
    SCALD = "W-SCALD";
    SCALD_CHILD = "W-SCALD-CHILD";
    SMALL_POTENTIAL = "W-SMALL-POTENTIAL";
    SMOKE_ALARM = "W-SMOKE-ALARM";
    SOLID_FUEL_CLEARANCE = "W-SOLID-FUEL-CLEARANCE";
    SPACE_HEATER = "W-SPACE-HEATER";
    TANK_DANGER = "W-TANK-DANGER";
    THAW = "W-THAW";
    TINGLE = "W-TINGLE";
    UNMEASURED_FUEL = "W-UNMEASURED-FUEL";
    VENT_AFTER_TIGHT = "W-VENT-AFTER-TIGHT";
    WET_CRAWL = "W-ELECTROCUTION-WET-CRAWL";
}
