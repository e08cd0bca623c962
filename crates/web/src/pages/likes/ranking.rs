//! The ranking as a picture: a dot for each thing, a line for what is still possible.

use super::format_words;
use crate::chart::{Axis, Whisker, whiskers};
use maud::{Markup, html};
use sayso_advisor::likes::{LikesReport, RankedReward};
use sayso_model::LikesFormat;
use sayso_wording::Locale;

/// What is known of an animal's likes: picture, scores, consistency, sides.
#[must_use]
pub fn ranking(report: &LikesReport) -> Markup {
    let ranked: Vec<&RankedReward> = report.ranking.iter().filter(|r| r.over_average.value.is_some()).collect();
    html! {
        @if !ranked.is_empty() { (picture(&ranked)) }
        @if let Some(c) = &report.consistency {
            p { "Consistency of paired choices: " strong.num { (format!("{:.2}", c.zeta)) } " (1 is without a circle such as A over B, B over C, C over A; 0 is none; "
                (c.circular) " of at most " (c.most) " circles, n = " (c.items) " things compared)." }
        }
        @if let Some(s) = &report.side { p { "Taken from its left: " (s.left) ", p = " (format!("{:.2}", s.p)) ". " (s.words) } }
        (scores(report))
    }
}

fn picture(ranked: &[&RankedReward]) -> Markup {
    let rows: Vec<Whisker> = ranked
        .iter()
        .map(|r| Whisker {
            name: r.name.clone(),
            value: r.over_average.value,
            interval: r.over_average.low.zip(r.over_average.high),
            n: r.over_average.n,
        })
        .collect();
    let told: Vec<String> = ranked.iter().map(|r| format!("{}: {}", r.name, r.over_average)).collect();
    whiskers(
        &Locale::ENGLISH,
        "Chance of being taken over a thing of average liking",
        &told.join("; "),
        &Axis::share(&Locale::ENGLISH, "chance"),
        Some(0.5),
        &rows,
    )
}

/// Published scores, by the format they were found in.
fn scores(report: &LikesReport) -> Markup {
    let formats: Vec<LikesFormat> = LikesFormat::ALL
        .iter()
        .copied()
        .filter(|f| report.ranking.iter().any(|r| r.scores.contains_key(f.name())))
        .collect();
    html! {
        @for format in formats {
            details open[report.ranking.iter().all(|r| r.over_average.value.is_none())] {
                summary { "Scores, " (format_words(format)) }
                div.scroll tabindex="0" role="region" aria-label={ "Scores, " (format_words(format)) } {
                    table {
                        thead { tr { th scope="col" { "Thing" } th scope="col" { (scored(format)) } } }
                        tbody { @for r in &report.ranking { @if let Some(e) = r.scores.get(format.name()) {
                            tr { th scope="row" { (r.name) } td.num { (e) } }
                        } } }
                    }
                }
            }
        }
    }
}

const fn scored(format: LikesFormat) -> &'static str {
    match format {
        LikesFormat::Single => "share of offers it came to",
        LikesFormat::Paired | LikesFormat::Multiple => "share of offers in which it was taken",
        LikesFormat::FreeAccess => "share of the time busy with it",
    }
}
