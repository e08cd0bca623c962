//! Invented households whose truth is known: our laboratory, not evidence about animals.
//!
//! Everything follows from a configuration, a seed and an end moment; there is no clock and no hidden randomness.
//! Knows nothing of estimates: what it makes are events, written as in real use, and the truth behind them.

mod agreed;
mod animal;
mod answer;
mod chance;
mod clock;
mod club;
mod demo;
mod drawn;
mod fixed;
mod held_up;
mod home;
mod life;
mod mind;
mod pen;
mod plan;
pub mod rehearsal;
mod run;
mod samples;
mod scale;
mod setup;
mod sitting;
mod stuck;
mod trials;
mod troubled;
mod truth;
mod world;

pub use animal::{AnimalTruth, Liking, Noise, Presser, Style, Temper};
pub use chance::{Chance, logistic};
pub use club::{ClubHome, Lot, called, club, club_home};
pub use demo::{demo, demo_home};
pub use drawn::{DrawnCheck, DrawnHome, DrawnLife, Habit, Trick, drawn_life};
pub use held_up::{Cause, Stuck};
pub use home::*;
pub use plan::*;
pub use run::{Simulated, Simulation, simulate};
pub use samples::samples;
pub use scale::scale;
pub use stuck::{any_home, plain_home, stuck, stuck_home};
pub use troubled::{
    Keeps, Trouble, Troubled, TroubledHome, troubled_called, troubled_club, troubled_home, troubled_one,
};
pub use truth::*;
