//! The JavaScript door of winterseam.
