//! Laws of heat conduction.

use super::{Obtained, Source};

/// Layers as matrices in the Laplace domain.
pub const CONDUCTION_MATRIX: Source = Source {
    key: "carslaw-jaeger-1959-ch3",
    cite: "Carslaw HS, Jaeger JC, Conduction of Heat in Solids, 2nd ed., 1959",
    place: "composite walls by matrices, section 3.7",
    obtained: Obtained::FromMemory,
};

/// The contour of the inverse transform, its nodes and weights.
pub const TALBOT: Source = Source {
    key: "abate-valko-2004",
    cite: "Abate J, Valko PP, Multi-precision Laplace transform inversion, International Journal \
           for Numerical Methods in Engineering 60, 2004, 979-993",
    place: "fixed Talbot method",
    obtained: Obtained::FromMemory,
};
