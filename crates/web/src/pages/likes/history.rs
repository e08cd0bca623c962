//! Tests held so far.

use super::begin::address;
use super::noted::{seen, trials};
use crate::page::AnimalPage;
use maud::{Markup, html};
use sayso_advisor::likes::{Setup, next_setup};
use sayso_model::{LikeOutcome, LikesTest, RewardId};
use sayso_people::Capability;
use sayso_wording::say;

/// All tests, newest first.
pub fn history(page: &AnimalPage) -> Markup {
    let tests: Vec<_> = page.story.of::<LikesTest>(page.id).rev().collect();
    let (people, l) = (page.story.people(), &page.locale);
    html! {
        section {
            h2 { (say!(l, likes::tests_so_far)) " " span.quiet { (tests.len()) } }
            @if tests.is_empty() { p.quiet { (say!(l, likes::none_yet)) } }
            ul.plain {
                @for t in tests {
                    @let n = trials(page, t.part.assessment).len();
                    @let open = matches!(next_setup(&page.story, page.id, t.part.assessment), Some(Setup::Offer { .. }));
                    li.line {
                        span { strong { (l.date(t.at().day(&page.zone))) } " " (say!(l, likes::format, format = t.part.format.name()))
                            span.hint { (say!(l, likes::test_line, things = t.part.rewards.len(), trials = n))
                                @if let Some(who) = t.person().and_then(|id| people.get(&id)) { " · " (say!(l, likes::begun_by, name = &who.name)) } } }
                        @if page.may(Capability::Record) { a.button href=(address(page, t.part.assessment)) { @if open { (say!(l, likes::go_on)) } @else { (say!(l, likes::see)) } } }
                    }
                }
            }
        }
    }
}

/// How often each thing was offered and chosen in one test, of what whoever asks may see.
pub fn counts(page: &AnimalPage, test: &LikesTest) -> Markup {
    let trials = seen(page, test.assessment);
    let (cards, l) = (page.story.rewards(), &page.locale);
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
        div.scroll tabindex="0" role="region" aria-label=(say!(l, likes::this_test)) {
            table {
                caption { (say!(l, likes::this_test)) " " span.quiet { (say!(l, likes::this_n, trials = trials.len(), none = none)) } }
                thead { tr { th scope="col" { (say!(l, likes::thing)) } th.num scope="col" { (say!(l, likes::offered)) } @if timed { th.num scope="col" { (say!(l, likes::in_seconds)) } } @else { th.num scope="col" { (say!(l, likes::taken)) } } } }
                tbody { @for r in &test.rewards {
                    tr { th scope="row" { (cards.get(r).map_or("?", |c| c.name.as_str())) } td.num { (offered(*r)) }
                        td.num { @if timed { (l.in_seconds(seconds(*r))) } @else { (chosen(*r)) } } }
                } }
            }
        }
    }
}
