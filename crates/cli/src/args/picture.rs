//! The arguments of `picture`.

use super::Data;
use clap::Args;
use std::path::PathBuf;

/// What a picture is to show.
#[derive(Args, Debug)]
#[group(required = true, multiple = false)]
pub struct Shown {
    #[arg(long)]
    pub animal: Option<String>,
    #[arg(long)]
    pub reward: Option<String>,
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
    #[arg(long, conflicts_with = "file")]
    pub remove: bool,
    #[arg(required_unless_present = "remove")]
    pub file: Option<PathBuf>,
}
