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
