//! Timings; see README.md.
