//! A release as one table, a figure a row, and what its columns mean.

use sayso_norms::{Answer, Cell, Curve, Quantile, Quantiles, Release};
use std::fmt::Write;

/// A figure of a release.
#[derive(Clone, PartialEq, Debug)]
pub struct Figure {
    /// What it answers.
    pub question: &'static str,
    /// Of which species.
    pub species: &'static str,
    /// Age at the first showing; none: all.
    pub age_band: Option<&'static str>,
    /// What the word brings; none: all kinds.
    pub word_kind: Option<&'static str>,
    /// Households counted.
    pub households: u32,
    /// What kind of figure: `share_by`, `quantile`, `part`, `hours`, `week_some` or `week_daily`.
    pub figure: &'static str,
    /// Showings or days by which (`share_by`), share below which (`quantile`), the how-manieth word (`part`), the hour at which three begin (`hours`),
    /// the first week of a stretch (`week_some`, `week_daily`).
    pub at: f64,
    /// What the so-manieth word brought (`part`).
    pub brought: Option<&'static str>,
    /// The figure; none: not reached.
    pub value: Option<f64>,
    /// Lower end of its interval; none: not reached.
    pub low: Option<f64>,
    /// Upper end; none: not reached.
    pub high: Option<f64>,
}

/// Columns with what they mean, in the order of [`Figure`].
pub const COLUMNS: [(&str, &str); 11] = [
    (
        "question",
        "what is answered: showings_to_first_press, days_to_first_press, joined (share of invitations), words (what first words brought), hours (of one press of a learner's own accord, drawn by lot), days_in_show and days_in_invite (days of a word in a stage until people chose a later one), presses_by_week (how often a word was pressed of a learner's own accord in one week since its first showing, drawn by lot beforehand; words that end a session left out)",
    ),
    ("species", "species of the learner"),
    ("age_band", "its age at its first showing of any word; empty: all ages"),
    ("word_kind", "what the word brings; empty: all kinds"),
    ("households", "households counted, of a stretch of weeks those that tell of it; with noise, the noisy count"),
    (
        "figure",
        "share_by: share pressed by that many showings or days, or moved on by that many days in the stage; quantile: where a share of households lies; part: share of a kind of word; hours: share of three hours of the day; week_some, week_daily: share of words pressed at all, and seven times or more, in one week of a stretch (weeks 1, 2 to 4, 5 to 12, 13 to 26), of the households that tell of it",
    ),
    (
        "at",
        "share_by: showings or days; quantile: the share, from 0 to 1; part: the how-manieth word, from 1; hours: the hour at which they begin, from 0; week_some, week_daily: the first week of the stretch, from 1",
    ),
    ("brought", "part: what that word brought; else empty"),
    ("value", "the estimate; empty: not reached, beyond what was watched"),
    ("low", "lower end of its interval, which holds noise and the choice of households; empty: not reached"),
    ("high", "upper end; empty: not reached"),
];

/// Every figure of a release, cell by cell.
#[must_use]
pub fn figures(release: &Release) -> Vec<Figure> {
    release.cells.iter().flat_map(of_cell).collect()
}

fn of_cell(cell: &Cell) -> Vec<Figure> {
    let figure = |figure: &'static str, at: f64, value: Quantile| Figure {
        question: cell.question.name(),
        species: cell.species.name(),
        age_band: cell.age_band.map(|age| age.name()),
        word_kind: cell.word_kind.map(|kind| kind.name()),
        households: cell.households,
        figure,
        at,
        brought: None,
        value: value.value,
        low: value.low,
        high: value.high,
    };
    let told = |value: f64, low: f64, high: f64| Quantile { value: Some(value), low: Some(low), high: Some(high) };
    let shares = |Quantiles { p05, p25, p50, p75, p95 }: &Quantiles| {
        [(0.05, *p05), (0.25, *p25), (0.5, *p50), (0.75, *p75), (0.95, *p95)]
            .map(|(at, one)| figure("quantile", at, one))
    };
    match &cell.answer {
        Answer::Curve(Curve { points, quantiles }) => {
            let points =
                points.iter().map(|point| figure("share_by", point.at, told(point.share, point.low, point.high)));
            points.chain(shares(quantiles)).collect()
        }
        Answer::Spread(spread) => shares(&spread.quantiles).to_vec(),
        Answer::Parts(parts) => {
            let part = |part: &sayso_norms::Part| Figure {
                brought: Some(part.kind.name()),
                ..figure("part", f64::from(part.word), told(part.share, part.low, part.high))
            };
            parts.parts.iter().map(part).collect()
        }
        Answer::Hours(hours) => {
            let part = |one: &sayso_norms::HourShare| {
                figure("hours", f64::from(one.part.begins()), told(one.share, one.low, one.high))
            };
            hours.hours.iter().map(part).collect()
        }
        Answer::Weeks(weeks) => {
            let both = |one: &sayso_norms::WeekShare| {
                let at = f64::from(one.from.from());
                [("week_some", one.some), ("week_daily", one.daily)].map(|(name, value)| Figure {
                    households: one.households,
                    ..figure(name, at, told(value.share, value.low, value.high))
                })
            };
            weeks.weeks.iter().flat_map(both).collect()
        }
    }
}

/// What goes along with the table: what it is of, how it was made, and what its columns mean, in Markdown.
#[must_use]
pub fn codebook(release: &Release, sha256: &str) -> String {
    let mut text = format!("# {}\n\n", release.name);
    let noise = match release.noise {
        Some(noise) => format!("noise of epsilon = {} in all", noise.epsilon),
        None => "no noise".to_owned(),
    };
    let people = match release.people {
        sayso_norms::People::SelfChosen => {
            "households that chose to keep records and to give them: no sample of all animals"
        }
        sayso_norms::People::Invented => "nobody: invented households",
    };
    let made_by = &release.made_by;
    let lines = [
        ("made", release.made.to_string()),
        ("of", people.to_owned()),
        ("club", release.club.clone().unwrap_or_else(|| "none".to_owned())),
        (
            "rule",
            format!(
                "{noise}; no cell under {} households, {} word(s) of each",
                release.least(),
                release.rule.words_per_household
            ),
        ),
        ("intervals", format!("{} of them should hold the truth, each by itself", release.level)),
        ("command", made_by.command.clone()),
        ("program", format!("{}, SHA-256 {}", made_by.program, made_by.program_sha256)),
        ("release file", format!("SHA-256 {sha256}")),
    ];
    // Writing into a string does not fail.
    for (name, value) in lines {
        let _ = writeln!(text, "- {name}: {value}");
    }
    text.push_str("\nA first press is a button pressed by the animal. It is no sign that the word means anything to it: animals to which no word\nmeans a thing press too. Not pressed is \"not yet\".\n\n| column | what |\n| --- | --- |\n");
    for (name, what) in COLUMNS {
        let _ = writeln!(text, "| {name} | {what} |");
    }
    text
}
