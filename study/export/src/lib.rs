//! From homes' records to the anonymous tables: Parquet by bucket of households, sorted by household and time.
//!
//! A home is among them only while its consent to research is open. What it is called here is a number; which home that is can
//! only be worked out by who holds the key, and the key never lies with the tables.

mod approval;
mod aside;
mod dataset;
mod error;
mod household;
mod logs;
mod manifest;
mod parquet;
mod pseudonym;
mod server;
mod simulated;

pub use approval::{Approval, NoApproval};
pub use dataset::{Bucket, Dataset, Source, check, write};
pub use error::ExportError;
pub use household::{Household, household};
pub use logs::Logs;
pub use manifest::{Entry, Manifest};
pub use pseudonym::{Key, KeyFault, StudyId};
pub use server::OnServer;
pub use simulated::Simulated;
