//! The hearing: scenes with known truth, the weights learned from them, and how well presses are heard, in scenes and in
//! recordings of real buttons.

pub mod boards;
pub mod fit;
mod hear;
pub mod kit;
pub mod logistic;
pub mod quiet;
pub mod real;
pub mod scenes;
pub mod score;
pub mod speeds;
pub mod truth;

use crate::error::LabError;

/// What to do for the hearing.
#[derive(clap::Subcommand, Debug)]
pub enum Cli {
    /// Make sound scenes with known truth from a seed.
    Scenes(scenes::Order),
    /// Learn the detector's weights from corpora.
    Fit(fit::Order),
    /// Match what is heard in corpora with the truth.
    Score(score::Order),
    /// Check recordings of real buttons, and match what is heard in them with what was marked.
    Kit(kit::Order),
    /// False presses in many hours without a press, made block by block; goes on where it was stopped.
    Quiet(quiet::Order),
    /// False presses in sound files of others in which no button of ours was pressed: speech, music, animals.
    Real(real::Order),
    /// Presses heard at speeds slow and fast.
    Speeds(speeds::Order),
}

/// Does it.
///
/// # Errors
/// As the parts.
pub fn run(cli: &Cli) -> Result<(), LabError> {
    match cli {
        Cli::Scenes(order) => scenes::make(order).map(drop),
        Cli::Fit(order) => {
            fit::fit(order)?;
            println!("Written to {}", order.out.display());
            Ok(())
        }
        Cli::Score(order) => {
            print!("{}", score::score(order)?.tables());
            Ok(())
        }
        Cli::Kit(order) => {
            print!("{}", kit::kit(order)?.tables());
            Ok(())
        }
        Cli::Quiet(order) => {
            print!("{}", quiet::hours(order)?);
            Ok(())
        }
        Cli::Real(order) => {
            print!("{}", real::hours(order)?);
            Ok(())
        }
        Cli::Speeds(order) => {
            print!("{}", speeds::speeds(order)?);
            Ok(())
        }
    }
}
