//! How often words are asked for, and what answers do to that.
