//! The laboratory: the estimators run on thousands of simulated learners whose truth is known.
//!
//! It tells whether intervals hold the truth as often as they say, how often something is claimed that is not so, and how
//! much it takes to find what is. It says nothing about real animals.

mod chart;
mod coverage;
mod coverage_curve;
mod coverage_likes;
mod coverage_rates;
mod false_claims;
mod figure;
mod learning;
mod patterns;
mod power;
mod stages;
mod stuck;
mod work;

use chart::Chart;
use figure::{Finding, table};
use sayso_model::Moment;
use std::path::{Path, PathBuf};
use std::time::Instant;
use work::Work;

/// How the laboratory is to be run.
#[derive(Clone, Debug)]
pub struct LabArgs {
    /// A small run that shows whether the machinery works.
    pub quick: bool,
    /// Folder for the tables and plots.
    pub out: PathBuf,
    /// Seed every other seed follows from.
    pub seed: u64,
    /// One experiment alone, by name.
    pub only: Option<String>,
}

/// Why the laboratory stopped.
#[derive(Debug, thiserror::Error)]
pub enum LabError {
    /// An estimator or the simulator refused.
    #[error("{0}")]
    Refused(String),
    /// A file.
    #[error("{}: {source}", path.display())]
    File {
        /// Which file.
        path: PathBuf,
        /// What is wrong.
        source: std::io::Error,
    },
}

/// An estimator's error, in its words.
fn told(why: impl std::fmt::Display) -> LabError {
    LabError::Refused(why.to_string())
}

/// The moment at which every simulated household ends: the laboratory has no clock.
fn end() -> Result<Moment, LabError> {
    "2026-06-01T20:00:00Z".parse().map_err(told)
}

/// What one experiment found.
#[derive(Clone, Debug)]
pub struct Section {
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

type Experiment = fn(&Work) -> Result<Section, LabError>;
const EXPERIMENTS: [(&str, Experiment); 9] = [
    ("coverage", coverage::run),
    ("likes", coverage_likes::run),
    ("band", coverage_curve::run),
    ("false-claims", false_claims::run),
    ("power", power::run),
    ("learning", learning::run),
    ("patterns", patterns::run),
    ("stages", stages::run),
    ("stuck", stuck::run),
];

/// Head of the table of figures.
const HEAD: [&str; 5] = ["figure", "wanted", "found (95 % interval)", "n", "as wanted?"];

/// Runs the experiments asked for and gives what each found.
fn sections(work: &Work, only: Option<&str>) -> Result<Vec<Section>, LabError> {
    let asked: Vec<_> = EXPERIMENTS.iter().filter(|e| only.is_none_or(|only| only == e.0)).collect();
    if asked.is_empty() {
        let names: Vec<&str> = EXPERIMENTS.iter().map(|e| e.0).collect();
        return Err(told(format!("no such experiment; there are: {}", names.join(", "))));
    }
    asked
        .iter()
        .enumerate()
        .map(|(at, (name, experiment))| {
            let begun = Instant::now();
            eprintln!("experiment {} of {}: {name}", at + 1, asked.len());
            let mut section = experiment(work)?;
            section.seconds = begun.elapsed().as_secs_f64();
            eprintln!("{}: {:.0} s", section.title, section.seconds);
            Ok(section)
        })
        .collect()
}

/// Runs the laboratory and writes `results.md` (`results-NAME.md` for one experiment) and the plots into the folder.
///
/// # Errors
/// [`LabError`] where an estimator refuses simulated data or a file cannot be written.
pub fn run(args: &LabArgs) -> Result<(), LabError> {
    let begun = Instant::now();
    let sections = sections(&Work { seed: args.seed, quick: args.quick }, args.only.as_deref())?;
    let file = |path: &Path, content: &str| {
        std::fs::write(path, content).map_err(|source| LabError::File { path: path.to_owned(), source })
    };
    std::fs::create_dir_all(&args.out).map_err(|source| LabError::File { path: args.out.clone(), source })?;
    for chart in sections.iter().flat_map(|s| &s.charts) {
        file(&args.out.join(&chart.file), &chart.svg())?;
    }
    let name = args.only.as_ref().map_or_else(|| "results.md".to_owned(), |only| format!("results-{only}.md"));
    file(&args.out.join(&name), &page(args, &sections, begun.elapsed().as_secs_f64()))?;
    let short: Vec<&Finding> =
        sections.iter().flat_map(|s| &s.findings).filter(|f| f.verdict() == "falls short").collect();
    println!("{} figures, {} fall short:", sections.iter().map(|s| s.findings.len()).sum::<usize>(), short.len());
    short.iter().for_each(|f| println!("  {}", f.row()[..3].join(" | ")));
    println!("Written to {}", args.out.join(&name).display());
    Ok(())
}

fn page(args: &LabArgs, sections: &[Section], seconds: f64) -> String {
    let mut size = if args.quick { " --quick".to_owned() } else { String::new() };
    if let Some(only) = &args.only {
        size += &format!(" --only {only}");
    }
    let mut out = format!(
        "# Results of the laboratory\n\nWritten by `sayso lab{size} --seed {}`; do not edit. {seconds:.0} s in all. What it means: [README](README.md).\nAll animals are simulated: a method that fails here cannot be trusted anywhere; one that does well here works on data made the way we imagined.\n",
        args.seed
    );
    for section in sections {
        out += &format!("\n## {}\n\n{}\n\n", section.title, section.text);
        out += &table(&HEAD, &section.findings.iter().map(Finding::row).collect::<Vec<_>>());
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

    /// The machinery, not the statistics: a quick run writes every table and plot, and figures with a bound that chance breaks
    /// less than once in ten thousand keep it.
    #[test]
    fn a_quick_run_writes_its_page_and_plots() {
        let dir = tempfile::tempdir().unwrap();
        run(&LabArgs { quick: true, out: dir.path().to_owned(), seed: 5, only: None }).unwrap();
        let page = std::fs::read_to_string(dir.path().join("results.md")).unwrap();
        assert!(!page.contains("NaN"), "{page}");
        assert_eq!(page.matches("\n## ").count(), EXPERIMENTS.len());
        for picture in page.split("](").skip(1).filter_map(|s| s.split(')').next()).filter(|s| s.ends_with(".svg")) {
            assert!(std::fs::read_to_string(dir.path().join(picture)).unwrap().starts_with("<svg"), "{picture}");
        }
    }
}
