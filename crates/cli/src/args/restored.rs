//! The arguments of `closings` and `restored`.

use super::host::AtDatabase;
use clap::Args;
use std::path::PathBuf;

/// A list of what was closed on a server.
#[derive(Args, Debug, Clone)]
pub struct Listing {
    #[command(flatten)]
    pub at: AtDatabase,
    #[arg(long, value_name = "FILE")]
    pub to: PathBuf,
}

/// What a server's database is, that stands elsewhere now.
#[derive(Args, Debug, Clone)]
pub struct BroughtBack {
    #[command(flatten)]
    pub at: AtDatabase,
    #[command(flatten)]
    pub what: Known,
    #[arg(long, conflicts_with = "nothing_lost")]
    pub yes: bool,
}

/// What is known of what was closed since.
#[derive(Args, Debug, Clone)]
#[group(required = true, multiple = false)]
pub struct Known {
    #[arg(long, value_name = "FILE")]
    pub closings: Option<PathBuf>,
    #[arg(long)]
    pub no_closings: bool,
    #[arg(long)]
    pub nothing_lost: bool,
}
