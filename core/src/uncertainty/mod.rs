//! A range is many homes.
