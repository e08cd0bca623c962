//! The day's food allowance and what is dangerous to eat.
