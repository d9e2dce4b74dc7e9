//! What is said, as data.
