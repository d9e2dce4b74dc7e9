//! Every field of a request: kind, range, words. The names carry their unit.

use crate::bounds::walk;
use crate::home::Spoken;
use crate::home::{
    AirOpenings, Alarm, Belly, CableControl, Cooling, Crossover, DuctGapPlace, FanEnd, FilterKind,
    FilterLook, Fuel, GapPlace, GroundBelow, HeaterKind, HeaterPlace, LeadsTo, LeakAir, Panes,
    PriceUnit, Relief, Sections, Shelter, SkirtingVents, Tenure, WarmAir, WetWindows, WidthClass,
    WindowKind,
};
use crate::repairs;
use crate::wire::shape::{Field, Shape};

use Shape::{Date, Flag, List, Map, Number, Text, Whole, Word, Zip};

/// More gaps than a person measures in a day.
const MOST_GAPS: usize = 200;
/// More kinds of window than a home has.
const MOST_WINDOWS: usize = 60;
/// More gaps than ducts have joints.
const MOST_DUCT_GAPS: usize = 60;
/// More turns than a dial has marks.
const MOST_TURNS: usize = 30;
/// A name that fits one line on a small screen, twice over.
const MOST_LABEL: usize = 80;

/// A request.
pub const REQUEST: Shape = Map(&[
    Field::needed("today", Date, "Day of the walk; there is no clock inside."),
    Field::seen("home", Map(HOME), "The building and where it stands."),
    Field::seen("people", Map(PEOPLE), "Who lives there, as far as it changes the advice."),
    Field::seen("first_look", Map(FIRST_LOOK), "What is looked for before anything is touched."),
    Field::seen("heating", Map(HEATING), "The main heating."),
    Field::seen(
        "electricity_usd_per_kwh",
        Number(&walk::PRICE_KWH),
        "Price of electricity, as the bill says.",
    )
    .called("electricity_price"),
    Field::seen("furnace_filter", Map(FILTER), "The furnace filter."),
    Field::seen("ducts", Map(DUCTS), "Registers, furnace and ducts."),
    Field::seen("water_heater", Map(WATER_HEATER), "The water heater and its tap."),
    Field::seen("bath_fan", Map(BATH_FAN), "The bath fan and the bag held over it."),
    Field::seen(
        "gaps",
        List { of: &Map(GAP), max: MOST_GAPS, each: "gap" },
        "Gaps measured with a tape.",
    ),
    Field::seen(
        "windows",
        List { of: &Map(WINDOW), max: MOST_WINDOWS, each: "window" },
        "All windows; absent is what such homes have.",
    ),
    Field::seen("leak_test", Map(LEAK_TEST), "What a blower in the door found."),
    Field::seen("heat_cable", Map(HEAT_CABLE), "The heat cable on the water pipe."),
    Field::seen(
        "own_costs",
        List { of: &Map(OWN_COST), max: repairs::IDS.len(), each: "own_cost" },
        "What somebody was told of repairs.",
    ),
]);

const OWN_COST: &[Field] = &[
    Field::needed("repair", Word(&repairs::IDS), "Its name, as in a plan.").called("repair"),
    Field::seen("usd", Number(&walk::OWN_COST), "All of it, work and materials.")
        .called("own_cost"),
    Field::seen("life_years", Number(&walk::OWN_LIFE), "How long it lasts.").called("own_life"),
];

const HOME: &[Field] = &[
    Field::seen("zip", Zip, "Five digits."),
    Field::seen("weather_zip", Zip, "Of another place whose weather is more like here.")
        .called("weather_zip"),
    Field::seen("elevation_ft", Number(&walk::ELEVATION), "Height of the home above the sea.")
        .called("elevation"),
    Field::seen("sections", Word(Sections::WORDS), "How many sections it came in."),
    Field::seen("width_ft", Number(&walk::HOME_WIDTH), "Width of the whole home."),
    Field::seen("length_ft", Number(&walk::HOME_LENGTH), "Length without the hitch."),
    Field::seen("year_built", Whole(&walk::YEAR_BUILT), "Year on the data plate."),
    Field::seen("bedrooms_count", Whole(&walk::BEDROOMS), "Rooms meant for sleeping."),
    Field::seen("shelter", Word(Shelter::WORDS), "What breaks the wind, from open to close."),
    Field::seen("setpoint_f", Number(&walk::SETPOINT), "What the thermostat is set to in winter."),
    Field::seen("indoors_f", Number(&walk::INDOORS), "What the thermometer indoors shows today."),
    Field::seen("cooling", Word(Cooling::WORDS), "How it is cooled."),
    Field::seen("ground_below", Word(GroundBelow::WORDS), "What lies on the ground below it."),
    Field::seen("skirting_open", Flag, "Skirting is missing: wind blows under the home."),
    Field::seen(
        "skirting_open_ft",
        Number(&walk::SKIRTING_GAP),
        "Length of it that is missing; 0 is none.",
    ),
    Field::seen("skirting_insulated", Flag, "Boards of insulation stand behind the skirting."),
    Field::seen("skirting_vents", Word(SkirtingVents::WORDS), "The vents in the skirting."),
    Field::seen("hay_bales", Flag, "Bales of hay or straw stand against the skirting."),
    Field::seen("belly", Word(Belly::WORDS), "Board or fabric that holds the floor's insulation."),
    Field::seen("belly_hole_in2", Number(&walk::BELLY_HOLE), "Area of its holes together."),
    Field::seen("wet_windows", Word(WetWindows::WORDS), "Windows wet inside on cold mornings."),
    Field::seen("tenure", Word(Tenure::WORDS), "Who owns home and lot."),
];

const PEOPLE: &[Field] = &[
    Field::seen("child_under_5", Flag, "A child under five."),
    Field::seen("age_65_or_more", Flag, "Someone of 65 or more."),
    Field::seen("cannot_feel_or_move", Flag, "Someone who cannot pull away from hot water."),
    Field::seen("lung_or_immune", Flag, "Chronic lung disease or a weak immune system."),
    Field::seen("oxygen", Flag, "Oxygen in use."),
    Field::seen("medical_machine", Flag, "Another medical machine that needs power."),
    Field::seen("residents_count", Whole(&walk::RESIDENTS), "How many live there."),
];

const FIRST_LOOK: &[Field] = &[
    Field::seen("gas_smell", Flag, "Smell of gas."),
    Field::seen("symptoms", Flag, "Headache, dizziness or sickness that lifts outdoors."),
    Field::seen("co_alarm", Word(Alarm::WORDS), "The carbon monoxide alarm."),
    Field::seen("smoke_alarm", Word(Alarm::WORDS), "The smoke alarm that works best."),
    Field::seen("flame_indoors", Flag, "A grill, stove, generator or heater for outdoors, inside."),
    Field::seen("oven_for_heat", Flag, "The oven used for warmth."),
    Field::seen("hot_wiring", Flag, "A hot, buzzing or scorched outlet, plug or cord."),
    Field::seen("metal_tingles", Flag, "Metal or taps that tingle."),
    Field::seen("water_below", Flag, "Water below the home where cords or cables are live."),
    Field::seen("ways_out", Flag, "Each sleeping room has a second way out."),
    Field::seen("tap_dry", Flag, "A tap that is dry now."),
    Field::seen("heat_holds", Flag, "The main heat can hold the home warm."),
    Field::seen("other_burner", Flag, "A gas stove or dryer, a fireplace, another heater."),
];

const HEATING: &[Field] = &[
    Field::seen("fuel", Word(Fuel::WORDS), "What it burns or draws."),
    Field::seen("price_usd", Number(&walk::PRICE), "Price of one unit; goes with price_per."),
    Field::seen("price_per", Word(PriceUnit::WORDS), "The unit on the bill; goes with price_usd."),
    Field::seen("warm_air", Word(WarmAir::WORDS), "How much of the heat comes out of registers."),
    Field::seen("output_btu_h", Number(&walk::OUTPUT), "Heat it gives, as its label says."),
    Field::seen("label_rise_min_f", Number(&walk::RISE), "Least rise of the air on its label."),
    Field::seen("label_rise_max_f", Number(&walk::RISE), "Most; goes with label_rise_min_f."),
    Field::seen("sealed_label_seen", Flag, "The label that says sealed combustion was seen."),
    Field::seen("soot", Flag, "Soot, scorch, roll-out, a loose flue or a yellow flame.")
        .called("heating_soot"),
    Field::seen("stove_clear", Flag, "A wood stove stands clear, its chimney was looked at."),
];

const FILTER: &[Field] = &[
    Field::seen("in_use_days", Number(&walk::FILTER_IN_USE), "Time since it was put in."),
    Field::seen("look", Word(FilterLook::WORDS), "How it looks against a flashlight.")
        .called("filter_look"),
    Field::seen("kind", Word(FilterKind::WORDS), "What it is made of.").called("filter_kind"),
    Field::seen("width_in", Number(&walk::FILTER_SIDE), "Across its face; goes with height_in."),
    Field::seen("height_in", Number(&walk::FILTER_SIDE), "Up its face; goes with width_in."),
];

const DUCTS: &[Field] = &[
    Field::seen("registers_count", Whole(&walk::REGISTERS), "Registers that blow warm air."),
    Field::seen("registers_closed_count", Whole(&walk::CLOSED), "Those closed or covered."),
    Field::seen("return_blocked", Flag, "Something stands in front of the return."),
    Field::seen("return_f", Number(&walk::DUCT_AIR), "Air at the return, after ten minutes."),
    Field::seen("supply_f", Number(&walk::DUCT_AIR), "Air at the nearest register."),
    Field::seen("far_f", Number(&walk::DUCT_AIR), "Air at the farthest register."),
    Field::seen("near_bag_s", Number(&walk::BAG), "Time until the nearest register fills the bag."),
    Field::seen("far_bag_s", Number(&walk::BAG), "Time until the farthest fills it."),
    Field::seen("blower_dirty", Flag, "Dust lies thick on the blades of the blower."),
    Field::seen("short_cycles", Flag, "The furnace goes on and off within minutes."),
    Field::seen("crossover", Word(Crossover::WORDS), "The duct that joins two sections."),
    Field::seen(
        "gaps",
        List { of: &Map(DUCT_GAP), max: MOST_DUCT_GAPS, each: "gap" },
        "Gaps in ducts and cabinet.",
    )
    .called("duct_gaps"),
];

const DUCT_GAP: &[Field] = &[
    Field::needed("place", Word(DuctGapPlace::WORDS), "Where it is.").called("duct_gap_place"),
    Field::seen("label", Text { max: MOST_LABEL }, "What the person calls it.").called("gap_label"),
    Field::needed("length_in", Number(&walk::GAP_LENGTH), "Along the gap."),
    Field::needed("width_in", Number(&walk::GAP_WIDTH), "The opening seen."),
    Field::seen("air", Word(LeakAir::WORDS), "What its air does with the fan on.")
        .called("duct_gap_air"),
];

const WATER_HEATER: &[Field] = &[
    Field::seen("kind", Word(HeaterKind::WORDS), "What makes the hot water.")
        .called("water_heater_kind"),
    Field::seen("place", Word(HeaterPlace::WORDS), "Where the tank stands.")
        .called("water_heater_place"),
    Field::seen("tap_f", Number(&walk::TAP), "The hottest reading at a tap, the dial as found."),
    Field::seen(
        "turns",
        List { of: &Map(TURN), max: MOST_TURNS, each: "turn" },
        "Each later place of the dial, with its reading.",
    ),
    Field::seen("thermometer_checked", Flag, "The thermometer showed 32 °F in ice water."),
    Field::seen("mixing_valve", Flag, "A mixing valve sits behind the tank."),
    Field::seen("openings", Word(AirOpenings::WORDS), "Openings that bring air to its burner."),
    Field::seen("soot", Flag, "Soot, scorch or melted plastic at the top.")
        .called("water_heater_soot"),
    Field::seen("steam_or_rumbling", Flag, "Steam at the tap, or rumbling."),
    Field::seen("relief", Word(Relief::WORDS), "The relief valve and its pipe."),
    Field::seen("shares_closet", Flag, "Another burner, as the furnace, stands in its closet."),
    Field::seen("old_flue_open", Flag, "A flue that nothing is joined to any more is open."),
    Field::seen("checked_by_technician", Flag, "Burner, flue and air: looked at, nothing wrong."),
    Field::seen(
        "input_btu_h",
        Number(&walk::BURNER_INPUT),
        "Input of all burners in its closet together, as their labels say.",
    ),
    Field::seen("volume_gal", Number(&walk::TANK), "Water in the tank, as its label says."),
    Field::seen("jacket", Flag, "A jacket is round the tank."),
    Field::seen("sleeve", Flag, "The first feet of the hot pipe wear a sleeve."),
    Field::seen("shower_gallon_s", Number(&walk::GALLON), "Time until a shower fills a gallon."),
];

const TURN: &[Field] = &[
    Field::needed("marks_down", Number(&walk::MARKS), "Marks below where the dial was found."),
    Field::needed("tap_f", Number(&walk::TAP), "The hottest reading there."),
];

const BATH_FAN: &[Field] = &[
    Field::seen("bag_emptied_s", Number(&walk::BAG), "Time in which the fan emptied the bag."),
    Field::seen("ends", Word(FanEnd::WORDS), "Where its air goes.").called("fan_ends"),
    Field::seen("runs_steadily", Flag, "It, or another fan, runs hours a day for fresh air.")
        .called("fan_runs_steadily"),
];

const GAP: &[Field] = &[
    Field::needed("place", Word(GapPlace::WORDS), "Where it is.").called("gap_place"),
    Field::seen("label", Text { max: MOST_LABEL }, "What the person calls it.").called("gap_label"),
    Field::seen("count", Whole(&walk::GAP_COUNT), "How many there are like it; 1 where absent."),
    Field::seen("length_in", Number(&walk::GAP_LENGTH), "Along the gap."),
    Field::seen("width_in", Number(&walk::GAP_WIDTH), "The opening seen; absent is not measured."),
    Field::seen("width_error_in", Number(&walk::GAP_ERROR), "Error of that; absent is a tape's."),
    Field::seen("width_class", Word(WidthClass::WORDS), "Instead: the thickest that slips in."),
    Field::seen("sealed", Flag, "A strip, sweep, gasket, damper or caulk is there already.")
        .called("gap_sealed"),
    Field::seen("window", Word(WindowKind::WORDS), "How a window opens.").called("window_kind"),
    Field::seen("depth_in", Number(&walk::GAP_DEPTH), "The way the air travels through it."),
    Field::seen("bends_count", Whole(&walk::BENDS), "Corners on that way."),
    Field::seen("leads_to", Word(LeadsTo::WORDS), "What lies behind it."),
];

const WINDOW: &[Field] = &[
    Field::seen("label", Text { max: MOST_LABEL }, "What the person calls it.")
        .called("window_label"),
    Field::seen("count", Whole(&walk::WINDOW_COUNT), "How many are like it; 1 where absent."),
    Field::seen("width_in", Number(&walk::WINDOW_SIDE), "Across; goes with height_in."),
    Field::seen("height_in", Number(&walk::WINDOW_SIDE), "Up and down; goes with width_in."),
    Field::seen("glazing", Word(Panes::WORDS), "Its panes."),
    Field::seen("film", Flag, "A film is stretched over it inside.").called("window_film"),
    Field::seen("escape", Flag, "The way out of a sleeping room.").called("window_escape"),
];

const LEAK_TEST: &[Field] = &[
    Field::seen("flow_50_cfm", Number(&walk::FLOW_50), "Flow at 50 Pa."),
    Field::seen("exponent", Number(&walk::EXPONENT), "Flow exponent; goes with flow_50_cfm."),
    Field::seen("area_4pa_in2", Number(&walk::LEAKAGE), "Instead: effective area at 4 Pa."),
    Field::seen("area_10pa_in2", Number(&walk::LEAKAGE), "Instead: equivalent area at 10 Pa."),
];

const HEAT_CABLE: &[Field] = &[
    Field::seen("present", Flag, "Someone looked, and there is one. Goes with the rest.")
        .called("cable_present"),
    Field::seen("length_ft", Number(&walk::CABLE_LENGTH), "Its length."),
    Field::seen("power_w_per_ft", Number(&walk::CABLE_POWER), "Heat, as its tag says."),
    Field::seen("control", Word(CableControl::WORDS), "What switches it.").called("cable_control"),
    Field::seen("on_day", Whole(&walk::DAY), "First day with power; goes with off_day.")
        .called("cable_on_day"),
    Field::seen("off_day", Whole(&walk::DAY), "Last day with power; goes with on_day.")
        .called("cable_off_day"),
    Field::seen("pipe_outside_in", Number(&walk::PIPE_OUTSIDE), "Outside diameter of the pipe."),
    Field::seen("insulation_in", Number(&walk::INSULATION), "Insulation on the pipe; 0 is bare."),
    Field::seen("damaged", Flag, "Cracked, charred, bare or melted; a hot plug or sparks.")
        .called("cable_damaged"),
    Field::seen("wet", Flag, "Cable or plug is wet.").called("cable_wet"),
    Field::seen("uncertified", Flag, "No mark of a test laboratory.").called("cable_uncertified"),
    Field::seen("under_foam", Flag, "Under foam or vinyl.").called("cable_under_foam"),
    Field::seen("lapped", Flag, "Laid over itself.").called("cable_lapped"),
    Field::seen("ground_fault_outlet", Flag, "Plugged into an outlet with a ground-fault switch."),
    Field::seen("thermostat_proved", Flag, "Its thermostat was seen to switch with an ice pack."),
    Field::seen("someone_plugs_in", Flag, "Somebody is sure to plug it in in autumn."),
];

/// Whether a field is one that says something of a heat cable.
pub(super) fn is_of_cable(key: &str) -> bool {
    HEAT_CABLE.iter().any(|field| field.key == key)
}
