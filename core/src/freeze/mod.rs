//! Pipes in the cold, and the cable that keeps them alive.
