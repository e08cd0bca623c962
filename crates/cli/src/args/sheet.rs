//! The flags of `sheet`.

use super::Data;
use super::values::{WrongValue, by_name, typed};
use clap::{Args, ValueEnum};
use sayso_model::{Day, ProbeId};
use sayso_paper::{LENGTHS, LabelSize, Paper};
use std::path::PathBuf;

/// Sheets there are.
#[derive(ValueEnum, Clone, Copy, PartialEq, Eq, Debug)]
pub enum Kind {
    // One animal's progress, for the family, a veterinarian or a behaviour professional.
    Progress,
    // What each word means, how everyone answers it, and the rules of the house.
    Rules,
    // What one animal likes.
    Likes,
    // One page before a meeting with a coach.
    Meeting,
    // Labels for the buttons.
    Labels,
    // The order of a check, for whoever sets it up.
    Setter,
    // A check, for whoever scores it.
    Scorer,
    // How to record real buttons.
    Kit,
    // Lessons for whoever teaches.
    Lessons,
}

/// A sheet to print.
#[derive(Args, Debug, Clone)]
pub struct Printing {
    #[arg(value_enum)]
    pub kind: Kind,
    #[command(flatten)]
    pub data: Data,
    #[arg(long)]
    pub animal: Option<String>,
    #[arg(long, default_value_t = 28, value_parser = days)]
    pub days: u16,
    #[arg(long, value_name = "DAY", value_parser = typed::<Day>)]
    pub since: Option<Day>,
    #[arg(long, value_name = "CHECK", value_parser = typed::<ProbeId>)]
    pub check: Option<ProbeId>,
    #[arg(long, default_value = LabelSize::Middle.name(), value_parser = by_name(&LabelSize::ALL, LabelSize::name))]
    pub size: LabelSize,
    #[arg(long, default_value = Paper::A4.name(), value_parser = by_name(&Paper::ALL, Paper::name))]
    pub paper: Paper,
    #[arg(long, value_name = "FILE")]
    pub to: PathBuf,
}

fn days(text: &str) -> Result<u16, WrongValue> {
    let found = text.parse().ok().filter(|d| LENGTHS.contains(d));
    found.ok_or_else(|| WrongValue::OneOf(LENGTHS.map(|d| d.to_string()).to_vec()))
}
