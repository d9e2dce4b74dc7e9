//! Repairs: each a function from one home to another.
