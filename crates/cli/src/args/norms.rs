//! The arguments of `norms`.

use super::values::typed;
use clap::{Args, Subcommand};
use sayso_norms::StudyName;
use std::path::PathBuf;

/// What other homes did: rows out, a release in.
#[derive(Subcommand, Debug)]
pub enum Norming {
    Rows(Box<Rows>),
    Import {
        #[arg(long, value_name = "DIR")]
        data: PathBuf,
        file: PathBuf,
    },
}

/// Whose rows, and where to.
#[derive(Args, Debug)]
pub struct Rows {
    #[arg(long, value_name = "DIR", required_unless_present = "key_file")]
    pub data: Option<PathBuf>,
    #[arg(long, value_name = "NAME", default_value = "home", conflicts_with = "key_file", value_parser = typed::<StudyName>)]
    pub name: StudyName,
    #[arg(long, value_name = "URL", requires = "key_file")]
    pub database: Option<String>,
    #[arg(long, value_name = "FILE", requires = "to", conflicts_with = "data")]
    pub key_file: Option<PathBuf>,
    #[arg(long, value_name = "FILE", requires = "key_file")]
    pub to: Option<PathBuf>,
    #[arg(long, requires = "key_file")]
    pub only_names: bool,
}
