//! Sources of ducts and what they bring.

use super::{Obtained, Source};

/// Heat along a duct, from room to furnace to room.
pub const DELIVERY: Source = Source {
    key: "palmiter-francisco-1997",
    cite: "L. Palmiter, P. Francisco, Development of a practical method for estimating the thermal \
           efficiency of residential forced-air distribution systems, 1997; also the standard of \
           2004 for such systems",
    place: "delivery effectiveness for heating and for cooling; derived anew from the balance of \
            heat along the duct, as the texts were not read",
    obtained: Obtained::FromMemory,
};

/// The furnace that goes on and off above a belly.
pub const CYCLING: Source = Source {
    key: "belly-and-ducts-balance",
    cite: "A steady balance of rooms, belly and what lies below it, with a furnace that is on for \
           part of the time",
    place: "each flow is its conductance times its difference; air that leaves by supply leaks is \
            made good through the envelope while the fan runs",
    obtained: Obtained::CommonPractice,
};

/// How large ducts are, how well wrapped, and how much they leak, where nobody measured.
pub const USUAL_DUCTS: Source = Source {
    key: "usual-belly-ducts",
    cite: "Ducts of manufactured homes in field studies of the northwest and the southeast, and the \
           default sizes of a standard for duct systems",
    place: "supply ducts 0.27 of the floor; 5 to 20 % of the fan's air to outside, 10 % most often; \
            R-4 (2 to 6) between duct and belly; no return ducts; a furnace fan of 850 cfm (650 to \
            1,000)",
    obtained: Obtained::FromMemory,
};

/// How much air blowers move against a pressure.
pub const BLOWER_TABLES: Source = Source {
    key: "furnace-manual-blowers",
    cite: "Installation manuals of furnaces of 40 to 120 kBtu/h with constant-speed, constant-torque \
           and constant-flow blowers",
    place: "tables of flow against external static pressure, 0.1 to 1.0 in w.c.",
    obtained: Obtained::Read,
};

/// How much air of another density a fan moves.
pub const FAN_LAWS: Source = Source {
    key: "fan-laws",
    cite: "Fan laws: flow goes with the speed, pressure with its square and with the density",
    place: "ASHRAE Handbook: HVAC Systems and Equipment, fans",
    obtained: Obtained::FromMemory,
};

/// What filters, coils and registers hold back.
pub const PRESSURE_DROPS: Source = Source {
    key: "furnace-pressure-drops",
    cite: "Pressure drops of one-inch filters in pages of the trade, and of coils and registers in \
           its design practice",
    place: "at 300 ft/min clean glass fibre 0.1, pleated MERV 8 0.14, MERV 13 0.27 in w.c., rising \
            with the power 1.0 to 1.5 of the speed; dirt adds 0.1 to 0.3, more than 0.5 when \
            plugged; dry coil 0.2; register 0.03",
    obtained: Obtained::FromMemory,
};

/// Pressures in the ducts of such homes.
pub const DUCT_PRESSURES: Source = Source {
    key: "manufactured-home-duct-pressures",
    cite: "24 CFR 3280.715 and the labels of furnaces for manufactured homes",
    place: "external static 0.2 to 0.3 in w.c., at most 90 % of the label in the casing; boots near \
            the furnace 20 to 30 Pa and at the far ends 5 to 15 Pa are an engineer's estimate",
    obtained: Obtained::Quoted,
};

/// What a duct leak does with pressure.
pub const DUCT_LEAK_EXPONENT: Source = Source {
    key: "duct-leak-exponent",
    cite: "ASHRAE Standard 152 for distribution systems, 2004",
    place: "duct leaks go with the power 0.6 of the pressure",
    obtained: Obtained::FromMemory,
};

/// Rise of air through a furnace, and its label.
pub const RISE_TABLES: Source = Source {
    key: "furnace-manual-rise",
    cite: "Installation manuals of furnaces with constant-speed blowers and of furnaces for \
           manufactured homes",
    place: "tables of temperature rise by flow; label range of the rise, as 45 to 75 °F",
    obtained: Obtained::Read,
};

/// Furnaces that burn gas on high ground.
pub const FURNACE_ALTITUDE: Source = Source {
    key: "furnace-manual-altitude",
    cite: "Installation manual of a furnace for manufactured homes, table of output by altitude; \
           another maker's 2 % for each 1,000 ft, and the fuel gas code's 4 % above 2,000 ft",
    place: "output times 0.96 for each 1,000 ft",
    obtained: Obtained::Read,
};

/// Cooling and heat pumps at other flows and temperatures.
pub const EQUIPMENT_CURVES: Source = Source {
    key: "cutler-2013-equipment-curves",
    cite: "D. Cutler et al., Improved modeling of residential air conditioners and heat pumps for \
           energy calculations, NREL/TP-5500-56354, 2013",
    place: "capacity and energy input over flow and over outdoor temperature, as carried in public \
            code; normalised at the rating point",
    obtained: Obtained::Quoted,
};

/// Air short at the registers, or lost on the way.
pub const AIRFLOW_DIAGNOSIS: Source = Source {
    key: "trade-airflow-diagnosis",
    cite: "How energy coaches tell a furnace that is short of air from ducts that lose it",
    place: "a rise above the label, or a bag that fills slowly everywhere, is a furnace short of \
            air; a far register 15 °F colder than the near one, or one that fills the bag half as \
            fast, is air lost on the way; one home in three has each",
    obtained: Obtained::CommonPractice,
};
