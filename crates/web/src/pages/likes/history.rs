//! Tests held so far.

use super::begin::address;
use super::format_words;
use super::noted::trials;
use crate::page::AnimalPage;
use maud::{Markup, html};
use sayso_advisor::likes::{Setup, next_setup};
use sayso_model::{LikeOutcome, LikesTest, RewardId};

/// All tests, newest first.
pub fn history(page: &AnimalPage) -> Markup {
    let tests: Vec<_> = page.story.of::<LikesTest>(page.id).rev().collect();
    let people = page.story.people();
    html! {
        section {
            h2 { "Tests so far " span.quiet { "n = " (tests.len()) } }
            @if tests.is_empty() { p.quiet { "None yet." } }
            ul.plain {
                @for t in tests {
                    @let n = trials(page, t.part.assessment).len();
                    @let open = matches!(next_setup(&page.story, page.id, t.part.assessment), Some(Setup::Offer { .. }));
                    li.line {
                        span { strong { (t.at().day(&page.zone)) } " " (format_words(t.part.format))
                            span.hint { (t.part.rewards.len()) " things · n = " (n) @if n == 1 { " trial" } @else { " trials" }
                                @if let Some(who) = t.person().and_then(|id| people.get(&id)) { " · begun by " (who.name.as_str()) } } }
                        a.button href=(address(page, t.part.assessment)) { @if open { "Go on" } @else { "See" } }
                    }
                }
            }
        }
    }
}

/// How often each thing was offered and chosen in one test.
pub fn counts(page: &AnimalPage, test: &LikesTest) -> Markup {
    let trials = trials(page, test.assessment);
    let cards = page.story.rewards();
    let none =
        trials.iter().filter(|t| matches!(t.part.result, LikeOutcome::ChoseNone | LikeOutcome::WalkedAway)).count();
    let offered = |r: RewardId| trials.iter().filter(|t| t.part.offered.contains(&r)).count();
    let chosen = |r: RewardId| {
        trials.iter().filter(|t| matches!(t.part.result, LikeOutcome::Chose { reward } if reward == r)).count()
    };
    let seconds = |r: RewardId| -> f64 {
        trials
            .iter()
            .filter_map(|t| match &t.part.result {
                LikeOutcome::Observed { engaged, .. } => {
                    engaged.iter().find(|e| e.reward == r).map(|e| e.seconds.get())
                }
                _ => None,
            })
            .sum()
    };
    let timed = test.format == sayso_model::LikesFormat::FreeAccess;
    html! {
        div.scroll tabindex="0" role="region" aria-label="This test" {
            table {
                caption { "This test " span.quiet { "n = " (trials.len()) ", of these without a choice: " (none) } }
                thead { tr { th scope="col" { "Thing" } th.num scope="col" { "offered" } @if timed { th.num scope="col" { "seconds" } } @else { th.num scope="col" { "taken" } } } }
                tbody { @for r in &test.rewards {
                    tr { th scope="row" { (cards.get(r).map_or("?", |c| c.name.as_str())) } td.num { (offered(*r)) }
                        td.num { @if timed { (format!("{:.0}", seconds(*r))) } @else { (chosen(*r)) } } }
                } }
            }
        }
    }
}
