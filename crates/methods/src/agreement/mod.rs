//! Agreement between people who score the same thing.
