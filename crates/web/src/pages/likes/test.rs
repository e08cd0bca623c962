//! A test in progress, held on the phone: what to put where, and one tap for each answer.

use super::begin::address;
use super::noted::{known, trials};
use super::{format_words, history};
use crate::cautions::for_animal;
use crate::error::Error;
use crate::fields::summary;
use crate::layout::{Tab, layout_with};
use crate::page::AnimalPage;
use crate::picture;
use crate::typed::Typed;
use axum::extract::{Path, Query};
use axum::response::Response;
use maud::{Markup, html};
use sayso_advisor::likes::{Setup, next_setup};
use sayso_advisor::ration::{Ration, ration};
use sayso_advisor::welfare::rest_today;
use sayso_model::{AssessmentId, LikeOutcome, LikesFormat, LikesTest, PictureOf, RewardCard, RewardId, RewardKind};
use serde::Deserialize;
use std::collections::BTreeMap;

#[derive(Deserialize)]
pub struct Asked {
    #[serde(default)]
    twice: String,
}

pub async fn show(
    page: AnimalPage,
    Path((_, id)): Path<(String, String)>,
    Query(asked): Query<Asked>,
) -> Result<Markup, Error> {
    let test = known(&page, &id)?;
    Ok(view(&page, test.part, &Typed::default(), !asked.twice.is_empty()))
}

/// The page again with what was typed.
pub fn again(page: &AnimalPage, test: &LikesTest, typed: &Typed) -> Response {
    crate::typed::again(view(page, test, typed, false))
}

fn view(page: &AnimalPage, test: &LikesTest, typed: &Typed, twice: bool) -> Markup {
    let setup = next_setup(&page.story, page.id, test.assessment).unwrap_or(Setup::Done);
    let modules: &[&str] = if test.format == LikesFormat::FreeAccess { &["client/stopwatch.js"] } else { &[] };
    layout_with(
        page,
        Tab::Likes,
        &format!("Likes test: {}", format_words(test.format)),
        modules,
        html! {
            (summary(typed))
            @if twice { p.caution role="status" { "That was noted already; nothing was changed. Use Undo if the last answer is wrong." } }
            @if rest_today(&page.case()) {
                p.stop role="alert" { "Stop here: strong signs of stress were noted. Give space and do not lure back. The test can go on another day." }
            }
            (last(page, test.assessment))
            @match setup {
                Setup::Offer { round, number, of, offered } => {
                    p.num { strong { "Trial " (number) " of " (of) } span.quiet { " · round " (round) " of " (test.rounds) } }
                    (offer(page, test, number, &offered, typed))
                }
                Setup::Done => {
                    p { strong { "All trials are done." } " Thank you, " (page.card.name.as_str()) "." }
                    a.button.primary.wide href=(Tab::Likes.href(Some(page.id))) { "See the ranking" }
                    (history::counts(page, test))
                }
            }
            p { a href=(Tab::Likes.href(Some(page.id))) { "Stop for now" } span.quiet { " \u{2013} what was noted is kept; the test can go on later." } }
        },
    )
}

/// The last answer, with undo.
fn last(page: &AnimalPage, test: AssessmentId) -> Markup {
    let trials = trials(page, test);
    let cards = page.story.rewards();
    let name = |r: RewardId| cards.get(&r).map_or("?", |c| c.name.as_str());
    html! {
        @if let Some(t) = trials.last() {
            form.last method="post" action={ (address(page, test)) "/undo" } {
                input type="hidden" name="trial" value=(t.id());
                span { span.quiet { "Last: " } @match &t.part.result {
                    LikeOutcome::Chose { reward } => (name(*reward)),
                    LikeOutcome::ChoseNone => "chose none",
                    LikeOutcome::WalkedAway => "walked away",
                    LikeOutcome::Observed { observed_s, .. } => { "watched " (format!("{:.0}", observed_s.get())) " s" }
                } }
                button { "Undo" }
            }
            @if t.part.result == LikeOutcome::WalkedAway {
                p.caution { "It walked away, and that is an answer. Let it go; go on when it comes back of its own accord, or another day." }
            }
        }
    }
}

fn offer(page: &AnimalPage, test: &LikesTest, number: usize, offered: &[RewardId], typed: &Typed) -> Markup {
    let cards = page.story.rewards();
    let shown: Vec<&RewardCard> = offered.iter().filter_map(|r| cards.get(r).copied()).collect();
    let today = ration(&page.story, &page.card, page.now);
    html! {
        @if let Some(text) = &page.card.cautions { p.caution { strong { "Health: " } (text.as_str()) } }
        @for r in &shown { (for_animal(&page.card, r)) }
        (left(&today, &shown))
        @if test.format == LikesFormat::FreeAccess { (free(page, test, number, &shown, typed)) }
        @else { (choice(page, test, number, &shown)) }
    }
}

/// What is left of the day's food where food is on offer.
fn left(today: &Ration, shown: &[&RewardCard]) -> Markup {
    let foods: BTreeMap<RewardId, &RewardCard> =
        shown.iter().filter(|r| r.kind == RewardKind::Food).map(|r| (r.reward, *r)).collect();
    html! {
        @if !foods.is_empty() {
            @match today.left_kcal {
                Some(left) => {
                    p.quiet { "Food rewards left today: " (format!("{left:.0}")) " kcal"
                        @for r in today.rewards.iter().filter(|r| foods.contains_key(&r.reward)) {
                            @if let Some(n) = r.pieces { ", or " (n) " × " (r.name) }
                        } ". A piece it takes is counted." }
                    @if foods.values().any(|r| r.kcal_per_piece.is_some_and(|k| k.get() > left)) {
                        p.caution { "Not enough is left for one piece of everything here. Stop for today, or cut smaller pieces and change the card." }
                    }
                }
                None => p.caution { "How much food it may have today is not known. " (today.refusal.as_deref().unwrap_or_default()) ". A piece it takes is counted all the same." }
            }
        }
    }
}

fn choice(page: &AnimalPage, test: &LikesTest, number: usize, shown: &[&RewardCard]) -> Markup {
    let place = |i: usize| match (shown.len(), i) {
        (1, _) => "in front of it".to_owned(),
        (2, 0) => "its left".to_owned(),
        (2, _) => "its right".to_owned(),
        (_, 0) => "1, its far left".to_owned(),
        (n, i) if i + 1 == n => format!("{n}, its far right"),
        (_, i) => format!("{}", i + 1),
    };
    let two = if shown.len() == 2 { "offer two" } else { "offer" };
    html! {
        form method="post" action={ (address(page, test.assessment)) "/trial" } {
            input type="hidden" name="number" value=(number);
            h2 #lay {
                @if shown.len() == 1 { "Put this out; tap it if it comes to it" }
                @else { "Put these out, as " (page.card.name.as_str()) " sees them; tap what it takes" }
            }
            div class=(two) role="group" aria-labelledby="lay" {
                @for (i, r) in shown.iter().enumerate() {
                    button.pick name="answer" value=(r.reward) { span.quiet { (place(i)) } (picture::of(&page.story, PictureOf::Reward { reward: r.reward })) strong { (r.name.as_str()) } }
                }
            }
            div.row.even {
                button name="answer" value="none" { @if shown.len() == 1 { "Did not come" } @else { "Chose none" } }
                button name="answer" value="away" { "Walked away" }
            }
        }
        p.quiet { "Stand behind the middle, hold both alike, look at neither. Let it have what it took; take the others away. "
            @if shown.len() > 1 { "If it takes two at once, note nothing and offer them again. " } "No choice within about half a minute is \u{201c}none\u{201d}." }
    }
}

fn free(page: &AnimalPage, test: &LikesTest, number: usize, shown: &[&RewardCard], typed: &Typed) -> Markup {
    let field = |name: String, label: String, value: &str| {
        html! {
            div.field {
                label for=(name) { (label) }
                @if let Some(what) = typed.problem(&name) { span.wrong { (what) "." } }
                input id=(name) name=(name) value=(value) inputmode="decimal" autocomplete="off" aria-invalid=[typed.problem(&name).map(|_| "true")];
            }
        }
    };
    html! {
        form method="post" action={ (address(page, test.assessment)) "/trial" } data-stopwatch {
            input type="hidden" name="number" value=(number);
            h2 { "Put all of these out, in this order from its left" }
            ol { @for r in shown { li { strong { (r.name.as_str()) } } } }
            p.quiet { "Let it move freely; five minutes are usual. Time what it is busy with, one thing at a time." }
            // Only with the stopwatch running in the browser; the fields below do without it.
            div data-clock hidden {
                div.clock {
                    p.figure aria-live="off" data-time="observed_s" { "0:00" }
                    button type="button" .primary data-begin { "Begin" }
                }
                div.offer.two {
                    @for r in shown {
                        @let name = format!("seconds-{}", r.reward);
                        button.pick type="button" data-toggle=(name) aria-pressed="false" { (picture::of(&page.story, PictureOf::Reward { reward: r.reward })) strong { (r.name.as_str()) } span.num data-time=(name) { "0:00" } }
                    }
                }
            }
            details open data-numbers {
                summary { "Times in seconds" }
                (field("observed_s".into(), "Seconds the things were there".into(), typed.text("observed_s")))
                @for r in shown {
                    @let name = format!("seconds-{}", r.reward);
                    (field(name.clone(), format!("{}: seconds busy with it", r.name), typed.text(&name)))
                }
            }
            @for r in shown.iter().filter(|r| r.kind == RewardKind::Food) {
                @let name = format!("pieces-{}", r.reward);
                (field(name.clone(), format!("{}: pieces eaten", r.name), typed.text(&name)))
            }
            div.stack.after {
                button.primary.wide name="answer" value="observed" { "Note these times" }
                button.wide name="answer" value="away" formnovalidate { "It walked away at once" }
            }
        }
    }
}
