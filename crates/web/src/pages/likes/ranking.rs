//! The ranking as a picture: a dot for each thing, a line for what is still possible.

use crate::chart::{Axis, Whisker, whiskers};
use crate::page::AnimalPage;
use maud::{Markup, html};
use sayso_advisor::likes::{LikesReport, RankedReward};
use sayso_model::LikesFormat;
use sayso_wording::advice::lean;
use sayso_wording::figures::finding;
use sayso_wording::{Locale, say};

/// What is known of an animal's likes: picture, scores, consistency, sides.
#[must_use]
pub fn ranking(page: &AnimalPage, report: &LikesReport) -> Markup {
    let (l, name) = (&page.locale, &page.card.name);
    let ranked = report.ranked();
    html! {
        @if !ranked.is_empty() { (picture(l, &ranked)) }
        @if let Some(c) = &report.consistency {
            p { (say!(l, sheets::consistency, zeta = l.number(c.zeta, 2), circular = c.circular, most = c.most, items = c.items)) }
        }
        @if let Some(s) = &report.side {
            p { (lean(l, name.as_str(), s.lean)) }
            details { summary { (say!(l, likes::sides)) } p { (say!(l, likes::side, name = name, share = finding(l, &s.left), p = l.p(s.p))) } }
        }
        (scores(l, report))
    }
}

fn picture(l: &Locale, ranked: &[&RankedReward]) -> Markup {
    let rows: Vec<Whisker> = ranked.iter().map(|r| Whisker::of(r.name.clone(), &r.over_average)).collect();
    let told: Vec<String> = ranked.iter().map(|r| l.colon(&r.name, &finding(l, &r.over_average))).collect();
    whiskers(
        l,
        &say!(l, likes::over_middling),
        &l.apart(&told),
        &Axis::share(l, &say!(l, likes::chance)),
        Some(0.5),
        &rows,
    )
}

/// Published scores, by the format they were found in.
fn scores(l: &Locale, report: &LikesReport) -> Markup {
    let formats = report.formats();
    let title = |f: LikesFormat| say!(l, likes::scores, format = say!(l, likes::format, format = f.name()));
    html! {
        @for format in formats {
            details open[report.ranking.iter().all(|r| r.over_average.value.is_none())] {
                summary { (title(format)) }
                div.scroll tabindex="0" role="region" aria-label=(title(format)) {
                    table {
                        thead { tr { th scope="col" { (say!(l, likes::thing)) } th scope="col" { (say!(l, likes::score_of, format = format.name())) } } }
                        tbody { @for r in &report.ranking { @if let Some(e) = r.scores.get(format.name()) {
                            tr { th scope="row" { (r.name) } td.num { (finding(l, e)) } }
                        } } }
                    }
                }
            }
        }
    }
}
