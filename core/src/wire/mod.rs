//! The door: requests in, answers out.
