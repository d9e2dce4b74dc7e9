//! Sources of glass, the air between panes, and film over them.

use super::{Obtained, Source};

/// Heat through glazing.
pub const EN_673: Source = Source {
    key: "en-673-2011",
    cite: "EN 673:2011: Glass in building, determination of thermal transmittance (U value), \
           calculation method",
    place: "clauses 5 to 8: gaps, films 7.7 and 25 W/(m²·K), 15 K at 283 K, emissivity 0.837",
    obtained: Obtained::FromMemory,
};

/// A film stretched over a window counts as one more pane.
pub const FILM_AS_PANE: Source = Source {
    key: "window-film-as-pane",
    cite: "Shrink film taken as a pane without thickness that heat radiation does not pass",
    place: "an upper estimate: thin film lets some of it through",
    obtained: Obtained::CommonPractice,
};
