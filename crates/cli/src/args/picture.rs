use super::Data;
use clap::Args;
use std::path::PathBuf;

/// What a picture is to show.
#[derive(Args, Debug)]
#[group(required = true, multiple = false)]
pub struct Shown {
    /// Name or id of the animal it shows.
    #[arg(long)]
    pub animal: Option<String>,
    /// Name or id of the reward it shows.
    #[arg(long)]
    pub reward: Option<String>,
    /// What the button says, or the id of the word it shows.
    #[arg(long)]
    pub word: Option<String>,
}

/// A picture to keep or to remove.
#[derive(Args, Debug)]
pub struct Picturing {
    #[command(flatten)]
    pub data: Data,
    #[command(flatten)]
    pub shown: Shown,
    /// Remove the picture there is.
    #[arg(long, conflicts_with = "file")]
    pub remove: bool,
    /// The picture's file.
    #[arg(required_unless_present = "remove")]
    pub file: Option<PathBuf>,
}
