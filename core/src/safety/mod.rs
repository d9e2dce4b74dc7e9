//! What must not wait.
