//! General statistics the other modules share: exact tests, intervals, counts, false discovery control.
