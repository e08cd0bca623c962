//! What follows from what coach and home agreed: a calendar, and the page before a meeting.
#![allow(clippy::unwrap_used, clippy::panic, missing_docs)]

mod calendar;
mod kit;
mod meeting;
