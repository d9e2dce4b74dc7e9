//! Air that a home lets through, and the fresh air it needs.
