//! How skin warms in hot water and when it is injured.

use super::{Obtained, Source};

/// Exposures of human skin to running hot water, and what came of each.
pub const EXPOSURES: Source = Source {
    key: "moritz-henriques-1947",
    cite: "Moritz AR, Henriques FC, Studies of Thermal Injury II, American Journal of Pathology \
           23, 1947, 695-720",
    place: "human exposures: healed, or the epidermis lost",
    obtained: Obtained::Quoted,
};

/// The damage integral with its pair of constants.
pub const DAMAGE_INTEGRAL: Source = Source {
    key: "henriques-1947",
    cite: "Henriques FC, Studies of Thermal Injury V, Archives of Pathology 43, 1947, 489-502",
    place: "P 3.1e98 1/s with 150 000 cal/mol over R 2 cal/(mol K), as carried in public source \
            codes of fire safety",
    obtained: Obtained::Quoted,
};

/// What the damage integral means at the basal layer.
pub const DEGREES: Source = Source {
    key: "lecture-burn-degrees",
    cite: "A university lecture on thermal damage of tissue",
    place: "0.53 first degree, 1 second degree, at the basal layer",
    obtained: Obtained::Quoted,
};

/// Heat that blood carries through tissue.
pub const BLOOD_FLOW: Source = Source {
    key: "pennes-1948",
    cite: "Pennes HH, Analysis of tissue and arterial blood temperatures in the resting human \
           forearm, Journal of Applied Physiology 1, 1948, 93-122",
    place: "the bioheat equation",
    obtained: Obtained::FromMemory,
};

/// Layers of skin: thickness, conductivity, density, heat capacity, blood flow, start.
pub const SKIN_LAYERS: Source = Source {
    key: "jiang-2002",
    cite: "Jiang SC, Ma N, Li HJ, Zhang XX, Effects of thermal properties and geometrical \
           dimensions on skin burn injuries, Burns 28, 2002, 713-717",
    place: "values as carried in a published bioheat example",
    obtained: Obtained::Quoted,
};

/// Depth and threshold that stand for a small child.
pub const CHILD_SKIN: Source = Source {
    key: "child-skin-fit",
    cite: "Depth and threshold picked so that the model comes near the three times of a trade \
           campaign for a baby (140 °F 1 s, 120 °F 4 min, 150 °F 0.5 s): a calibration, not a \
           measured dose",
    place: "scan of 8 depths and 4 thresholds",
    obtained: Obtained::Computed("numpy 2.4.6, scipy 1.17.1"),
};

/// Thinner skin of an older adult.
pub const OLDER_SKIN: Source = Source {
    key: "older-skin",
    cite: "Epidermis about 20 % thinner than at 35 years; with the threshold of first injury a \
           protective estimate, since no list of times for older adults was found",
    place: "reviews of ageing skin",
    obtained: Obtained::FromMemory,
};

/// How far a kitchen thermometer may be off.
pub const THERMOMETER: Source = Source {
    key: "kitchen-thermometer",
    cite: "Advice on kitchen thermometers: keep one that shows ice water within 2 °F; one that \
           was not checked may be off by twice that",
    place: "ice-water check",
    obtained: Obtained::CommonPractice,
};
