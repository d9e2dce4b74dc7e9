//! The year of a home: the only place that joins models.
