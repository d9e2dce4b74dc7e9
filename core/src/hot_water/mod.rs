//! How fast hot water burns.
