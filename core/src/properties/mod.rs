//! What air and water are like.
