//! A test in progress, held on the phone: what to put where, and one tap for each answer.

use super::begin::address;
use super::history;
use super::noted::{known, seen, trials};
use crate::cautions::for_animal;
use crate::error::Error;
use crate::fields::summary;
use crate::layout::{Tab, layout_with};
use crate::page::AnimalPage;
use crate::pages::people::food_of;
use crate::picture;
use crate::typed::Typed;
use axum::extract::{Path, Query};
use axum::response::Response;
use maud::{Markup, html};
use sayso_advisor::likes::{Setup, next_setup};
use sayso_advisor::ration::{Ration, ration};
use sayso_advisor::welfare::rest_today;
use sayso_model::facts::held_up;
use sayso_model::{
    AssessmentId, LikeOutcome, LikeTrial, LikesFormat, LikesTest, PictureOf, RewardCard, RewardId, RewardKind,
};
use sayso_people::Capability;
use sayso_wording::Locale;
use sayso_wording::say;
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
    let l = &page.locale;
    // Where there is a choice to tap, undo has its place right below it.
    let undone_beside = test.format != LikesFormat::FreeAccess && matches!(setup, Setup::Offer { .. });
    layout_with(
        page,
        Tab::Likes,
        &say!(l, likes::test_title, format = test.format.name()),
        modules,
        html! {
            @if rest_today(&page.case()) {
                p.stop role="alert" { (say!(l, likes::stop_here)) }
            }
            @match setup {
                Setup::Offer { round, number, of, offered } => {
                    (offer(page, test, number, &offered, typed))
                    p.num.trial { (say!(l, likes::trial, number = number, of = of, round = round, rounds = test.rounds)) }
                }
                Setup::Done => {
                    p { strong { (say!(l, likes::done, name = &page.card.name)) } }
                    @if page.may(Capability::SeeFigures) { a.button.primary.wide href=(Tab::Likes.href(Some(page.id))) { (say!(l, likes::see_ranking)) } }
                    @if !seen(page, test.assessment).is_empty() { (history::counts(page, test)) }
                }
            }
            // Below the choice, so that no answer moves it.
            @if twice { p.caution role="status" { (say!(l, likes::noted_already)) } }
            @if !undone_beside { (last(page, test.assessment)) }
            @let away = if page.may(Capability::SeeFigures) { Tab::Likes } else { Tab::Board };
            p { a href=(away.href(Some(page.id))) { (say!(l, likes::stop_for_now)) } " " span.quiet { (say!(l, likes::goes_on_later)) } }
        },
    )
}

/// What an answer was, in a few words.
pub fn answered(l: &Locale, trial: &LikeTrial, name: impl Fn(RewardId) -> String) -> String {
    match &trial.result {
        LikeOutcome::Chose { reward } => say!(l, likes::last_chose, thing = name(*reward)),
        LikeOutcome::ChoseNone => say!(l, likes::last_none),
        LikeOutcome::WalkedAway => say!(l, likes::last_away),
        LikeOutcome::Observed { observed_s, .. } => {
            say!(l, likes::last_watched, seconds = l.in_seconds(observed_s.get()))
        }
    }
}

/// The last answer, with undo: where it is for whoever asks to see. Its place is kept before there is one.
fn last(page: &AnimalPage, test: AssessmentId) -> Markup {
    let (trials, l) = (trials(page, test), &page.locale);
    let cards = page.story.rewards();
    let name = |r: RewardId| cards.get(&r).map_or_else(|| "?".to_owned(), |c| c.name.to_string());
    html! {
        @if let Some(t) = trials.last().filter(|t| page.may_see_score(t.person())) {
            form.last method="post" action={ (address(page, test)) "/undo" } {
                input type="hidden" name="trial" value=(t.id());
                @let what = answered(l, t.part, name);
                span { (what) }
                button aria-label=(say!(l, likes::undo_this, what = &what)) { (say!(l, likes::undo)) }
            }
        } @else {
            div.last aria-hidden="true" {}
        }
        @if let Some(t) = trials.last().filter(|t| page.may_see_score(t.person())) {
            @if t.part.result == LikeOutcome::WalkedAway {
                p.caution { (say!(l, likes::away_is_an_answer, name = &page.card.name)) }
            }
        }
    }
}

fn offer(page: &AnimalPage, test: &LikesTest, number: usize, offered: &[RewardId], typed: &Typed) -> Markup {
    let cards = page.story.rewards();
    let shown: Vec<&RewardCard> = offered.iter().filter_map(|r| cards.get(r).copied()).collect();
    let today = ration(&page.story, &page.card, page.now);
    let free_access = test.format == LikesFormat::FreeAccess;
    html! {
        @if free_access { (summary(typed)) } @else { (choice(page, test, number, &shown)) (stand_ins(page, &shown)) }
        @if let Some(text) = &page.card.cautions { p.caution { strong { (say!(&page.locale, ideas::health)) } " " (text.as_str()) } }
        @for r in &shown { (for_animal(&page.locale, &page.card, r)) }
        (left(page, &today, &shown))
        @if free_access { (free(page, test, number, &shown, typed)) }
    }
}

/// What cannot be held up beside another thing is offered by what stands for it, or timed freely.
fn stand_ins(page: &AnimalPage, shown: &[&RewardCard]) -> Markup {
    let (l, name) = (&page.locale, &page.card.name);
    html! {
        @for r in shown.iter().filter(|r| !held_up(r)) {
            p.box { (match &r.stand_in {
                Some(stand_in) => say!(l, likes::stand_in, thing = &r.name, stand_in = stand_in, name = name, kind = r.kind.name()),
                None => say!(l, likes::no_stand_in, thing = &r.name, kind = r.kind.name()),
            }) " "
                @if r.stand_in.is_none() && page.may(Capability::Plan) {
                    a href=(format!("/people/reward/{}", r.reward)) { (say!(l, likes::name_stand_in)) } " · "
                    a href=(format!("/a/{}/likes/new?format={}", page.id, LikesFormat::FreeAccess.name())) { (say!(l, likes::time_freely)) }
                } }
        }
    }
}

/// What is left of the day's food where food is on offer.
fn left(page: &AnimalPage, today: &Ration, shown: &[&RewardCard]) -> Markup {
    let l = &page.locale;
    let foods: BTreeMap<RewardId, &RewardCard> =
        shown.iter().filter(|r| r.kind == RewardKind::Food).map(|r| (r.reward, *r)).collect();
    let pieces: Vec<String> = today
        .rewards
        .iter()
        .filter(|r| foods.contains_key(&r.reward))
        .filter_map(|r| r.pieces.map(|n| say!(l, likes::pieces, pieces = n, thing = &r.name)))
        .collect();
    html! {
        @if !foods.is_empty() {
            @match today.left_kcal {
                Some(left) => {
                    // How much is left tells what others gave.
                    @if page.may(Capability::SeeToday) { p.quiet { (say!(l, likes::food_left, kcal = l.number(left, 0), pieces = l.or(&pieces))) } }
                    @if foods.values().any(|r| r.kcal_per_piece.is_some_and(|k| k.get() > left)) {
                        p.caution { (say!(l, likes::food_short)) }
                    }
                }
                None => p.caution { (say!(l, likes::food_unknown, name = &page.card.name)) " " @if page.may(Capability::ChangeCards) { a href=(food_of(page.id)) { (say!(l, setup::what, step = "food", name = &page.card.name)) } } }
            }
        }
    }
}

/// One tap for each answer. Every place has its size whatever stands in it, and the answers without a choice have theirs
/// below all places a trial of this test can have: nothing moves between trials.
fn choice(page: &AnimalPage, test: &LikesTest, number: usize, shown: &[&RewardCard]) -> Markup {
    let (l, name) = (&page.locale, &page.card.name);
    let place = |i: usize| match (shown.len(), i) {
        (1, _) => say!(l, likes::in_front, name = name),
        (2, 0) if test.format == LikesFormat::Paired => say!(l, checks::left, name = name),
        (2, _) if test.format == LikesFormat::Paired => say!(l, checks::right, name = name),
        (_, 0) => say!(l, likes::far_left, name = name),
        (n, i) if i + 1 == n => say!(l, likes::far_right, place = n, name = name),
        (_, i) => format!("{}", i + 1),
    };
    let places = match test.format {
        LikesFormat::Multiple => test.rewards.len(),
        _ => shown.len(),
    };
    let two = test.format == LikesFormat::Paired;
    let cards = page.story.rewards();
    let face = |place: String, r: &RewardCard| {
        html! {
            span.quiet { (place) }
            (picture::of(&page.story, PictureOf::Reward { reward: r.reward }))
            strong { (r.name.as_str()) }
            span.shows { @if let Some(stand_in) = r.stand_in.as_ref().filter(|_| !held_up(r)) { (say!(l, likes::shown_as, stand_in = stand_in)) } }
        }
    };
    html! {
        form.choosing method="post" action={ (address(page, test.assessment)) "/trial" } {
            input type="hidden" name="number" value=(number);
            h2 #lay { @if test.format == LikesFormat::Single { (say!(l, likes::lay_one, name = name)) } @else { (say!(l, likes::lay, name = name)) } }
            div.offer.two[two] role="group" aria-labelledby="lay" {
                @for (i, r) in shown.iter().enumerate() {
                    div.place {
                        button.pick name="answer" value=(r.reward) { (face(place(i), r)) }
                        // Every place is as tall as the tallest thing of the test needs, in letters of any size.
                        @for r in test.rewards.iter().filter(|_| i == 0).filter_map(|r| cards.get(r)) { div.pick.as-tall aria-hidden="true" { (face(place(0), r)) } }
                    }
                }
                @for _ in shown.len()..places { div.pick.taken aria-hidden="true" {} }
            }
            div.row.even {
                button name="answer" value="none" { @if test.format == LikesFormat::Single { (say!(l, likes::did_not_come)) } @else { (say!(l, likes::chose_none)) } }
                button name="answer" value="away" { (say!(l, likes::walked_away)) }
            }
        }
        (last(page, test.assessment))
        @let held = if shown.iter().all(|r| held_up(r)) { "all" } else { "some" };
        // Said as long as more than one is put out in this test, so that nothing below moves as they become fewer.
        @if places > 1 { p data-test="whose-left" { (say!(l, likes::whose_left, name = name)) } }
        p.quiet { (say!(l, likes::how_to_hold, held = held)) " "
            @if test.format != LikesFormat::Single { (say!(l, likes::two_at_once)) " " } (say!(l, likes::half_a_minute)) }
    }
}

fn free(page: &AnimalPage, test: &LikesTest, number: usize, shown: &[&RewardCard], typed: &Typed) -> Markup {
    let l = &page.locale;
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
            h2 { (say!(l, likes::lay_all, name = &page.card.name)) }
            ol { @for r in shown { li { strong { (r.name.as_str()) } } } }
            p.quiet { (say!(l, likes::move_freely, name = &page.card.name)) }
            // Only with the stopwatch running in the browser; the fields below do without it.
            div data-clock hidden {
                div.clock {
                    p.figure aria-live="off" data-time="observed_s" { "0:00" }
                    button type="button" .primary data-begin { (say!(l, likes::begin)) }
                }
                div.offer.two {
                    @for r in shown {
                        @let name = format!("seconds-{}", r.reward);
                        button.pick type="button" data-toggle=(name) aria-pressed="false" { (picture::of(&page.story, PictureOf::Reward { reward: r.reward })) strong { (r.name.as_str()) } span.num data-time=(name) { "0:00" } }
                    }
                }
            }
            details open data-numbers {
                summary { (say!(l, likes::times)) }
                (field("observed_s".into(), say!(l, likes::seconds_there), typed.text("observed_s")))
                @for r in shown {
                    @let name = format!("seconds-{}", r.reward);
                    (field(name.clone(), say!(l, likes::seconds_busy, thing = &r.name), typed.text(&name)))
                }
            }
            @for r in shown.iter().filter(|r| r.kind == RewardKind::Food) {
                @let name = format!("pieces-{}", r.reward);
                (field(name.clone(), say!(l, likes::pieces_eaten, thing = &r.name), typed.text(&name)))
            }
            div.stack.after {
                button.primary.wide name="answer" value="observed" { (say!(l, likes::note_times)) }
                button.wide name="answer" value="away" formnovalidate { (say!(l, likes::away_at_once)) }
            }
        }
    }
}
