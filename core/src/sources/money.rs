//! Sources of what a spending is worth over its life.

use super::{Obtained, Source};

/// Present value, savings-to-investment ratio, adjusted internal rate of return.
pub const NIST_HANDBOOK_135: Source = Source {
    key: "nist-handbook-135",
    cite: "NIST Handbook 135: Life-cycle costing manual for the Federal Energy Management Program",
    place: "supplementary measures of economic performance",
    obtained: Obtained::FromMemory,
};

/// The factors of present value.
pub const ASTM_E917: Source = Source {
    key: "astm-e917",
    cite: "ASTM E917: measuring life-cycle costs of buildings and building systems, with its adjunct \
           of discount factor tables",
    place: "uniform present value",
    obtained: Obtained::FromMemory,
};

/// The real discount rate of federal energy projects.
pub const CFR_10_436: Source = Source {
    key: "10-cfr-436-14",
    cite: "10 CFR 436.14: methodological assumptions",
    place: "(a): real rate, not below 3 % and not above 10 %",
    obtained: Obtained::Read,
};
