//! From a ZIP code to the hours of a year.
