//! First words: proposed with reasons, taken over as cards.

use super::card::proposed;
use crate::cautions::for_animal;
use crate::error::Error;
use crate::page::AnimalPage;
use crate::typed::Typed;
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use sayso_advisor::first_words::{Choice, FirstWords, first_words};
use sayso_advisor::ration::forbidden;
use sayso_model::{Label, Note, RewardCard, RewardId, WordCard, WordId};
use uuid::Uuid;

/// Words in the first set at most.
const MOST: usize = 3;

/// Makes a card for each of the rewards that were ticked.
pub async fn accept(page: AnimalPage, typed: Typed) -> Result<Response, Error> {
    let mut typed = typed.only(&["rewards"])?;
    let open: Vec<&RewardCard> = open(&page);
    let rewards = typed.ids("rewards", |r: &RewardId| open.iter().any(|o| o.reward == *r));
    if typed.right() && !(1..=MOST).contains(&rewards.len()) {
        typed.wrong("rewards", format!("must be 1 to {MOST} words to begin with, not {}", rewards.len()));
    }
    let mut cards = Vec::new();
    for reward in open.iter().filter(|o| rewards.contains(&o.reward)) {
        if let Some(why) = forbidden(page.card.species, reward) {
            typed.wrong("rewards", format!("hold something it must not have: {why}"));
        }
        cards.push(card(&page, reward)?);
    }
    if !typed.right() {
        return Err(Error::Refused(sayso_model::Problems(typed.problems().to_vec())));
    }
    let to = match cards.as_slice() {
        [one] => format!("/l/{}/words/card/{}", page.id, one.word),
        _ => format!("/l/{}/words", page.id),
    };
    page.keep(cards.into_iter().map(|c| page.about_home(c)).collect()).await?;
    Ok(Redirect::to(&to).into_response())
}

/// Rewards of this animal that have no word yet.
fn open(page: &AnimalPage) -> Vec<&RewardCard> {
    let taken: Vec<RewardId> = page.story.words_of(page.id).iter().filter_map(|w| w.reward).collect();
    page.story.rewards_of(page.id).into_iter().filter(|r| !taken.contains(&r.reward)).collect()
}

fn card(page: &AnimalPage, reward: &RewardCard) -> Result<WordCard, Error> {
    let (says, means, answer, not_now) = proposed(reward);
    let note = |text: &str| Note::new(text).map(Some).map_err(Error::internal);
    Ok(WordCard {
        word: WordId(Uuid::now_v7()),
        says: Label::new(&says).map_err(Error::internal)?,
        means: note(&means)?,
        answer: note(&answer)?,
        not_now: note(not_now)?,
        reward: Some(reward.reward),
        closing: false,
        animals: if page.animals().len() > 1 { vec![page.id] } else { Vec::new() },
        active: true,
    })
}

/// The proposal; folded up once there are words.
pub fn section(page: &AnimalPage, begun: bool) -> Markup {
    let found = first_words(&page.case());
    html! {
        @if begun { details { summary { "Propose further words" } (body(page, &found)) } }
        @else { section { h2 { "First words" } (body(page, &found)) } }
    }
}

fn body(page: &AnimalPage, found: &FirstWords) -> Markup {
    html! {
        @if found.likes_trials == 0 {
            p.caution { "No likes test was held yet (n = 0), so this goes by what is on the cards alone. "
                a href=(format!("/l/{}/likes", page.id)) { "Hold one first" } " if you can." }
        } @else { p.quiet { "From n = " (found.likes_trials) " trials of likes tests, the day\u{2019}s food, the seconds a delivery takes, and how the words sound. Two or three words to begin with: common practice, no source." } }
        @if let Some(why) = &found.none_because { p { strong { "No proposal: " } (why) "." } p { a.button href="/people/reward/new" { "List something it may want" } } }
        @if let Some(best) = &found.best { (choice(page, best, true)) }
        @if !found.alternatives.is_empty() {
            details {
                summary { "Other sets (" (found.alternatives.len()) ")" }
                @for c in &found.alternatives { (choice(page, c, false)) }
            }
        }
        @if !found.left_out.is_empty() {
            details open[found.best.is_none()] {
                summary { "Left out, and why (" (found.left_out.len()) ")" }
                ul { @for l in &found.left_out { li { strong { "\u{201c}" (l.says) "\u{201d}" } ": " (l.why) "." } } }
            }
        }
    }
}

fn choice(page: &AnimalPage, c: &Choice, best: bool) -> Markup {
    html! {
        form.card method="post" action=(format!("/l/{}/words/first", page.id)) {
            @for w in &c.words {
                label { input type="checkbox" name="rewards" value=(w.reward) checked; span { strong { "\u{201c}" (w.says) "\u{201d}" } " " span.quiet { (w.kind.name()) } } }
                ul { @for b in &w.because { li { (b) } } }
                @if let Some(reward) = page.story.rewards().get(&w.reward) { (for_animal(&page.card, reward)) }
            }
            p.quiet { (c.score) ". Best of all sets in " (format!("{:.0} %", 100.0 * c.best_in)) " of n = " (c.draws) " draws from what the likes tests leave open." }
            button.wide.primary[best] { "Make cards for the ticked words" }
        }
    }
}
