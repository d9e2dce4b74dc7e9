//! The one door to transcendental functions: the same bits on every machine and in wasm.

/// x to the power y.
#[must_use]
pub fn pow(x: f64, y: f64) -> f64 {
    libm::pow(x, y)
}

/// e to the power x.
#[must_use]
pub fn exp(x: f64) -> f64 {
    libm::exp(x)
}

/// Natural logarithm.
#[must_use]
pub fn ln(x: f64) -> f64 {
    libm::log(x)
}

/// Sine of an angle in radians.
#[must_use]
pub fn sin(x: f64) -> f64 {
    libm::sin(x)
}

/// Cosine of an angle in radians.
#[must_use]
pub fn cos(x: f64) -> f64 {
    libm::cos(x)
}

/// Angle in radians of a cosine.
#[must_use]
pub fn acos(x: f64) -> f64 {
    libm::acos(x)
}

/// Square root; exact in every implementation of IEEE 754.
#[must_use]
pub fn sqrt(x: f64) -> f64 {
    x.sqrt()
}

/// Straight line through two points, at x.
#[must_use]
pub fn line(x: f64, (x0, y0): (f64, f64), (x1, y1): (f64, f64)) -> f64 {
    y0 + (y1 - y0) * (x - x0) / (x1 - x0)
}
