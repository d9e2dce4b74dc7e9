//! The word of each choice, written once: for reading, for messages, for the schema, for answers.

use super::{
    AirOpenings, Alarm, Belly, CableControl, Cooling, Crossover, DuctGapPlace, FanEnd, FilterKind,
    FilterLook, Fuel, GapPlace, GroundBelow, HeaterKind, HeaterPlace, LeadsTo, LeakAir, Panes,
    PriceUnit, Relief, Sections, Shelter, SkirtingVents, Tenure, WarmAir, WetWindows, WidthClass,
    WindowKind,
};

/// A choice that has a word in requests and answers.
pub(crate) trait Spoken: Copy + 'static {
    /// The words, in the order of the choices.
    const WORDS: &'static [&'static str];
    /// The choices, in the order of the words.
    const CHOICES: &'static [Self];

    /// The word of this choice.
    fn word(self) -> &'static str;

    /// The choice of a word.
    fn of_word(word: &str) -> Option<Self> {
        let at = Self::WORDS.iter().position(|known| *known == word)?;
        Some(Self::CHOICES[at])
    }
}

/// Gives choices their words; also for choices of other rooms.
macro_rules! spoken {
    ($($choice:ident { $($word:literal = $variant:ident),+ $(,)? })+) => {$(
        impl $crate::home::Spoken for $choice {
            const WORDS: &'static [&'static str] = &[$($word),+];
            const CHOICES: &'static [Self] = &[$(Self::$variant),+];

            fn word(self) -> &'static str {
                match self {
                    $(Self::$variant => $word),+
                }
            }
        }
    )+};
}

pub(crate) use spoken;

spoken! {
    Sections { "single" = Single, "double" = Double, "triple" = Triple }
    Shelter {
        "open_ground" = OpenGround,
        "lone_home" = LoneHome,
        "homes_across_road" = HomesAcrossRoad,
        "neighbours_apart" = NeighboursApart,
        "neighbours_close" = NeighboursClose,
    }
    Cooling { "none" = None, "evaporative" = Evaporative, "air_conditioner" = AirConditioner }
    GroundBelow { "bare" = Bare, "covered" = Covered }
    SkirtingVents { "open" = Open, "blocked" = Blocked, "none" = None }
    Belly { "sound" = Sound, "torn" = Torn, "missing" = Missing }
    Panes { "single" = Single, "single_storm" = SingleStorm, "double" = Double }
    WetWindows { "often" = Often, "sometimes" = Sometimes, "never" = Never }
    Tenure {
        "owns_home_and_lot" = OwnsHomeAndLot,
        "owns_home_rents_lot" = OwnsHomeRentsLot,
        "rents_home" = RentsHome,
    }
    Alarm {
        "working" = Working,
        "missing" = Missing,
        "expired" = Expired,
        "chirping" = Chirping,
        "sounding" = Sounding,
    }
    Fuel {
        "electricity" = Electricity,
        "heat_pump" = HeatPump,
        "natural_gas" = NaturalGas,
        "propane" = Propane,
        "fuel_oil" = FuelOil,
        "kerosene" = Kerosene,
        "wood" = Wood,
        "pellets" = Pellets,
    }
    PriceUnit {
        "kwh" = KilowattHour,
        "therm" = Therm,
        "ccf" = Ccf,
        "gal" = Gallon,
        "cord" = Cord,
        "bag" = Bag,
    }
    FilterKind { "fiberglass" = Fiberglass, "pleated" = Pleated, "dense" = Dense }
    FilterLook { "bright" = Bright, "grey" = Grey, "dim" = Dim, "blocked" = Blocked }
    HeaterKind {
        "electric" = Electric,
        "heat_pump" = HeatPump,
        "sealed_combustion" = SealedCombustion,
        "draft_hood" = DraftHood,
        "tankless_electric" = TanklessElectric,
        "tankless_gas" = TanklessGas,
    }
    HeaterPlace {
        "room" = Room,
        "closet_inner_door" = ClosetInnerDoor,
        "closet_outer_door" = ClosetOuterDoor,
    }
    WarmAir {
        "all" = All,
        "most" = Most,
        "half" = Half,
        "little" = Little,
        "none" = None,
    }
    Crossover { "sound" = Sound, "loose" = Loose, "fallen" = Fallen }
    DuctGapPlace {
        "coil_cabinet" = CoilCabinet,
        "plenum" = Plenum,
        "boot" = Boot,
        "crossover" = Crossover,
        "end_cap" = EndCap,
        "return_side" = ReturnSide,
    }
    LeakAir {
        "blown_into_closet" = BlownIntoCloset,
        "blown_down" = BlownDown,
        "sucked_in" = SuckedIn,
    }
    AirOpenings { "open" = Open, "partly" = Partly, "blocked" = Blocked }
    Relief { "sound" = Sound, "running" = Running, "missing" = Missing, "plugged" = Plugged }
    FanEnd { "outdoors" = Outdoors, "roof_cavity" = RoofCavity, "under_home" = UnderHome }
    GapPlace {
        "door_bottom" = DoorBottom,
        "door_side" = DoorSide,
        "window_sash" = WindowSash,
        "casing" = Casing,
        "ceiling_joint" = CeilingJoint,
        "marriage_line" = MarriageLine,
        "pipe_hole" = PipeHole,
        "bath_fan_housing" = BathFanHousing,
        "fan_damper" = FanDamper,
        "dryer_vent" = DryerVent,
        "range_hood" = RangeHood,
        "access_panel" = AccessPanel,
        "outlet_plate" = OutletPlate,
        "cooler_grille" = CoolerGrille,
        "water_heater_closet" = WaterHeaterCloset,
        "closet_inner_panel" = ClosetInnerPanel,
        "closet_outer_door" = ClosetOuterDoor,
        "furnace_closet" = FurnaceCloset,
        "coil_cabinet" = CoilCabinet,
        "elsewhere" = Elsewhere,
    }
    WindowKind {
        "hung" = Hung,
        "sliding" = Sliding,
        "awning" = Awning,
        "jalousie" = Jalousie,
    }
    WidthClass {
        "card" = Card,
        "dime" = Dime,
        "two_coins" = TwoCoins,
        "pencil" = Pencil,
        "not_measured" = NotMeasured,
    }
    LeadsTo {
        "outdoors" = Outdoors,
        "belly" = Belly,
        "roof_cavity" = RoofCavity,
        "closet_with_outside_air" = ClosetWithOutsideAir,
        "wall" = Wall,
        "room_or_return" = RoomOrReturn,
    }
    CableControl {
        "always_on" = AlwaysOn,
        "thermostat" = Thermostat,
        "self_regulating" = SelfRegulating,
        "seasonal" = Seasonal,
    }
}
