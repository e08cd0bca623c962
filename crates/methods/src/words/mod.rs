//! Which words first, and which sound alike.
