//! What a server of many homes is measured with.

pub mod fill;
mod pattern;

use crate::error::{LabError, told};

/// What to do for a server of many homes.
#[derive(clap::Subcommand, Debug)]
pub enum Cli {
    /// Put invented homes into a database, in bulk.
    Fill(fill::Order),
}

/// Does it.
///
/// # Errors
/// As the parts.
pub fn run(cli: &Cli) -> Result<(), LabError> {
    let runtime = tokio::runtime::Runtime::new().map_err(told)?;
    match cli {
        Cli::Fill(order) => {
            let filled = runtime.block_on(fill::fill(order, &|homes| println!("{homes} homes are in ...")))?;
            println!("{} homes of {} records each", filled.len(), order.events);
            Ok(())
        }
    }
}
