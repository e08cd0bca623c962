//! The experiments by name, and the page each run writes.

/// Adds a line to a text. Writing to a String cannot fail.
macro_rules! line {
    ($out:expr, $($part:tt)*) => {{
        use std::fmt::Write as _;
        let _ = writeln!($out, $($part)*);
    }};
}

pub(crate) use line;

mod adaptive_likes;
mod advice;
mod batteries;
mod coverage;
mod coverage_curve;
mod coverage_likes;
mod coverage_rates;
mod desk;
mod false_claims;
mod learning;
mod learning_bands;
mod likes_intervals;
mod likes_standout;
mod patterns;
mod permutation_speed;
mod power;
mod rehearsal;
mod stages;
mod stuck;

use crate::error::{LabError, at, told};
use crate::report::chart::Chart;
use crate::report::figure::{Finding, table};
use crate::work::Work;
use sayso_model::Moment;
use std::path::PathBuf;
use std::time::Instant;

/// One experiment.
#[derive(Clone, Copy)]
pub struct Experiment {
    /// Its name.
    pub name: &'static str,
    /// The question it asks.
    pub asks: &'static str,
    /// Whether it belongs to `all`. Those that do not write their tables for a page of their own, or look at a clock.
    pub in_all: bool,
    run: fn(&Work) -> Result<Section, LabError>,
}

/// Every experiment, in the order they are run.
pub const EXPERIMENTS: &[Experiment] = &[
    of_all(
        "coverage",
        "Do intervals hold the truth as often as they say: shares, rates, middles, waits?",
        coverage::run,
    ),
    of_all("likes", "Do the strengths of likes?", coverage_likes::run),
    of_all("band", "Does the band of the learning curve?", coverage_curve::run),
    of_all("false-claims", "How often is anything claimed of animals that mean nothing?", false_claims::run),
    of_all("power", "How soon is meaning found where it is?", power::run),
    of_all("learning", "Is learning declared where it is, and its rate right?", learning::run),
    of_all("stages", "Is the stage of teaching right?", stages::run),
    of_all("patterns", "What is told of patterns where there are none?", patterns::run),
    of_all("stuck", "Is a stuck word called so, and its cause named?", stuck::run),
    alone("advice", "Is the advice of one mind (advice.md)?", advice::run),
    alone(
        "likes-intervals",
        "Intervals of likes by items, rounds and spread (likes-coverage.md).",
        likes_intervals::run,
    ),
    alone("likes-standout", "The same where one item stands out or tires (likes-coverage.md).", likes_standout::run),
    alone("adaptive-likes", "Trials saved by choosing pairs (adaptive-likes.md).", adaptive_likes::run),
    alone("learning-bands", "Bands and intervals about learning (learning.md).", learning_bands::run),
    alone("desk", "Does a coach's desk find the troubled homes, in order (desk.md)?", desk::run),
    alone("rehearsal", "Do those who follow a rehearsal's feedback teach faster (rehearsal.md)?", rehearsal::run),
    alone("batteries", "Is the button whose battery runs down named, and no other?", batteries::run),
    alone("permutation-speed", "How long rearrangements take; looks at the clock.", permutation_speed::run),
];

type Run = fn(&Work) -> Result<Section, LabError>;

const fn of_all(name: &'static str, asks: &'static str, run: Run) -> Experiment {
    Experiment { name, asks, in_all: true, run }
}

const fn alone(name: &'static str, asks: &'static str, run: Run) -> Experiment {
    Experiment { name, asks, in_all: false, run }
}

/// How experiments are to be run.
#[derive(Clone, Debug)]
pub struct Order {
    /// A small run that shows whether the machinery works.
    pub quick: bool,
    /// Folder for the tables and plots.
    pub out: PathBuf,
    /// Seed every other seed follows from.
    pub seed: u64,
    /// One experiment by its name; those of `all` if none.
    pub only: Option<String>,
}

/// The moment at which every simulated home ends: the laboratory has no clock.
fn end() -> Result<Moment, LabError> {
    "2026-06-01T20:00:00Z".parse().map_err(told)
}

/// What one experiment found.
#[derive(Clone, Debug)]
pub(crate) struct Section {
    title: &'static str,
    text: String,
    findings: Vec<Finding>,
    tables: Vec<String>,
    charts: Vec<Chart>,
    seconds: f64,
}

impl Section {
    fn new(title: &'static str) -> Self {
        Self { title, text: String::new(), findings: Vec::new(), tables: Vec::new(), charts: Vec::new(), seconds: 0.0 }
    }

    fn add(&mut self, finding: Finding) {
        self.findings.push(finding);
    }

    fn text(&mut self, text: impl Into<String>) {
        self.text = text.into();
    }
}

/// Head of the table of figures.
const HEAD: [&str; 5] = ["figure", "wanted", "found (95 % interval)", "n", "as wanted?"];

/// Runs the experiments asked for and gives what each found.
fn sections(work: &Work, only: Option<&str>) -> Result<Vec<Section>, LabError> {
    let asked: Vec<_> = EXPERIMENTS.iter().filter(|e| only.map_or(e.in_all, |only| only == e.name)).collect();
    if asked.is_empty() {
        let names: Vec<&str> = EXPERIMENTS.iter().map(|e| e.name).collect();
        return Err(told(format!("no such experiment; there are: {}", names.join(", "))));
    }
    asked
        .iter()
        .enumerate()
        .map(|(at, experiment)| {
            let begun = Instant::now();
            eprintln!("experiment {} of {}: {}", at + 1, asked.len(), experiment.name);
            let mut section = (experiment.run)(work)?;
            section.seconds = begun.elapsed().as_secs_f64();
            eprintln!("{}: {:.0} s", section.title, section.seconds);
            Ok(section)
        })
        .collect()
}

/// Runs experiments and writes `results.md` (`results-NAME.md` for one of them) and the plots into the folder. Answers
/// what falls short, and the page written.
///
/// # Errors
/// [`LabError`] where a method refuses simulated data or a file cannot be written.
pub fn run(order: &Order) -> Result<(Vec<String>, PathBuf), LabError> {
    let begun = Instant::now();
    let sections = sections(&Work { seed: order.seed, quick: order.quick }, order.only.as_deref())?;
    std::fs::create_dir_all(&order.out).map_err(at(&order.out))?;
    for chart in sections.iter().flat_map(|s| &s.charts) {
        let path = order.out.join(&chart.file);
        std::fs::write(&path, chart.svg()).map_err(at(&path))?;
    }
    let name = order.only.as_ref().map_or_else(|| "results.md".to_owned(), |only| format!("results-{only}.md"));
    let path = order.out.join(name);
    std::fs::write(&path, page(order, &sections, begun.elapsed().as_secs_f64())).map_err(at(&path))?;
    let figures = sections.iter().flat_map(|s| &s.findings);
    let short = figures.filter(|f| f.verdict() == "falls short").map(|f| f.row()[..3].join(" | "));
    Ok((short.collect(), path))
}

fn page(order: &Order, sections: &[Section], seconds: f64) -> String {
    let name = order.only.as_deref().unwrap_or("all");
    let quick = if order.quick { " --quick" } else { "" };
    let mut out = format!(
        "# Results of the laboratory\n\nWritten by `lab {name}{quick} --seed {}`; do not edit. {seconds:.0} s in all. What it means: [README](README.md).\nAll animals are simulated: a method that fails here cannot be trusted anywhere; one that does well here works on data made the way we imagined.\n",
        order.seed
    );
    for section in sections {
        out += &format!("\n## {}\n\n{}\n\n", section.title, section.text);
        if !section.findings.is_empty() {
            out += &table(&HEAD, &section.findings.iter().map(Finding::row).collect::<Vec<_>>());
        }
        section.tables.iter().for_each(|t| out += &format!("\n{t}"));
        section.charts.iter().for_each(|c| out += &format!("\n![{}]({})\n", c.title, c.file));
        out += &format!("\n{:.0} s.\n", section.seconds);
    }
    out
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    #[test]
    fn an_unknown_experiment_is_refused_with_the_names_there_are() {
        let why = sections(&Work { seed: 1, quick: true }, Some("luck")).unwrap_err().to_string();
        assert!(why.contains("stuck") && why.contains("coverage"), "{why}");
    }

    #[test]
    fn every_experiment_beside_all_runs_by_its_name() {
        let dir = tempfile::tempdir().unwrap();
        for experiment in EXPERIMENTS.iter().filter(|e| !e.in_all) {
            let only = Some(experiment.name.to_owned());
            let (_, page) = run(&Order { quick: true, out: dir.path().to_owned(), seed: 1, only }).unwrap();
            let text = std::fs::read_to_string(page).unwrap();
            assert!(text.contains(&format!("lab {} --quick --seed 1", experiment.name)) && text.len() > 500, "{text}");
        }
    }

    /// The machinery, not the statistics: a quick run writes every table and plot, and figures with a bound that chance breaks
    /// less than once in ten thousand keep it.
    #[test]
    fn a_quick_run_writes_its_page_and_plots() {
        let dir = tempfile::tempdir().unwrap();
        run(&Order { quick: true, out: dir.path().to_owned(), seed: 5, only: None }).unwrap();
        let page = std::fs::read_to_string(dir.path().join("results.md")).unwrap();
        assert!(!page.contains("NaN"), "{page}");
        assert_eq!(page.matches("\n## ").count(), EXPERIMENTS.iter().filter(|e| e.in_all).count());
        for picture in page.split("](").skip(1).filter_map(|s| s.split(')').next()).filter(|s| s.ends_with(".svg")) {
            assert!(std::fs::read_to_string(dir.path().join(picture)).unwrap().starts_with("<svg"), "{picture}");
        }
    }
}
