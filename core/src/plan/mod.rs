//! What to do first.
