//! Setting up a likes test. Orders and sides come from a seed drawn by the machine, so that nobody chooses them.

use crate::cautions::for_animal;
use crate::error::Error;
use crate::fields::{number, radios, summary, tick, ticks};
use crate::form::Form;
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::typed::{Typed, again};
use axum::extract::Query;
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use sayso_advisor::later::tests_rest;
use sayso_advisor::ration::forbidden;
use sayso_methods::likes::schedule;
use sayso_model::facts::held_up;
use sayso_model::{AssessmentId, LikesFormat, LikesTest, RewardCard, RewardId};
use sayso_people::Capability;
use sayso_wording::say;
use serde::Deserialize;
use uuid::Uuid;

/// Things in one test at most, on a page that still fits a phone.
const MOST: usize = 12;
/// Things ticked from the start where there are more (usual: 5 to 8; DeLeon & Iwata 1996).
const USUAL: usize = 8;

/// Whether a test of this form can show it: by itself, by what stands for it, or where it lies.
fn shown(format: LikesFormat, reward: &RewardCard) -> bool {
    format == LikesFormat::FreeAccess || held_up(reward) || reward.stand_in.is_some()
}

/// Rewards of this animal that may be offered at all.
fn allowed(page: &AnimalPage) -> Vec<&RewardCard> {
    page.story.rewards_of(page.id).into_iter().filter(|r| forbidden(page.card.species, r).is_none()).collect()
}

#[derive(Deserialize)]
pub struct Asked {
    #[serde(default)]
    format: String,
}

pub async fn ask(page: AnimalPage, Query(asked): Query<Asked>) -> Markup {
    let format = LikesFormat::ALL.iter().find(|f| f.name() == asked.format).unwrap_or(&LikesFormat::Paired);
    let mut typed = Typed::default().with("format", format.name()).with("rounds", 1);
    for reward in allowed(&page).iter().filter(|r| shown(*format, r)).take(USUAL) {
        typed = typed.with("rewards", reward.reward);
    }
    form(&page, &typed)
}

pub async fn begin(page: AnimalPage, typed: Typed) -> Result<Response, Error> {
    let mut typed = typed.only(&["format", "rewards", "rounds", "stands"])?;
    let format = typed.one_of("format", LikesFormat::ALL, LikesFormat::name);
    if typed.text("format").is_empty() {
        typed.wrong("format", say!(&page.locale, likes::format_missing));
    }
    let known: Vec<RewardId> = allowed(&page).iter().map(|r| r.reward).collect();
    let rewards = typed.ids("rewards", |r| known.contains(r));
    let least = if format == Some(LikesFormat::Single) { 1 } else { 2 };
    if !(least..=MOST).contains(&rewards.len()) && typed.problem("rewards").is_none() {
        typed.wrong("rewards", say!(&page.locale, likes::how_many, least = least, most = MOST, ticked = rewards.len()));
    }
    let bare: Vec<String> = allowed(&page)
        .into_iter()
        .filter(|r| rewards.contains(&r.reward) && format.is_some_and(|format| !shown(format, r)))
        .map(|r| r.name.to_string())
        .collect();
    if !bare.is_empty() && !typed.ticked("stands") {
        typed.wrong("stands", say!(&page.locale, likes::stands_wrong, things = page.locale.names(&bare)));
    }
    let rounds = typed.whole("rounds", 1, 20);
    if typed.text("rounds").is_empty() {
        typed.wrong("rounds", say!(&page.locale, likes::rounds_missing));
    }
    if typed.right()
        && let (Some(format), Some(rounds)) = (format, rounds)
    {
        let seed = getrandom::u32().map_err(Error::internal)?;
        let test = LikesTest { assessment: AssessmentId(Uuid::now_v7()), format, rewards, rounds, seed };
        let to = address(&page, test.assessment);
        if typed.kept(page.keep(vec![page.event(test)]).await)? {
            return Ok(Redirect::to(&to).into_response());
        }
    }
    Ok(again(form(&page, &typed)))
}

/// The address of a likes test.
#[must_use]
pub fn address(page: &AnimalPage, test: AssessmentId) -> String {
    format!("/a/{}/likes/test/{test}", page.id)
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Two {
    left: RewardId,
    right: RewardId,
}

/// One pair, laid out as the ranking asks for it.
pub async fn pair(page: AnimalPage, Form(two): Form<Two>) -> Result<Redirect, Error> {
    let known: Vec<RewardId> = allowed(&page).iter().map(|r| r.reward).collect();
    for (field, reward) in [("left", two.left), ("right", two.right)] {
        if !known.contains(&reward) {
            return Err(Error::refused(field, say!(&page.locale, likes::not_offered, name = &page.card.name)));
        }
    }
    if two.left == two.right {
        return Err(Error::refused("right", say!(&page.locale, likes::same_twice)));
    }
    let mut test = LikesTest {
        assessment: AssessmentId(Uuid::now_v7()),
        format: LikesFormat::Paired,
        rewards: vec![two.left, two.right],
        rounds: 1,
        seed: getrandom::u32().map_err(Error::internal)?,
    };
    // A plan's sides follow from its seed; the order in which the two are named turns them round.
    if schedule::paired(2, 1, u64::from(test.seed)).first().is_some_and(|p| p.left == 1) {
        test.rewards.reverse();
    }
    let to = address(&page, test.assessment);
    page.keep(vec![page.event(test)]).await?;
    Ok(Redirect::to(&to))
}

fn form(page: &AnimalPage, typed: &Typed) -> Markup {
    let (rewards, l) = (allowed(page), &page.locale);
    let options: Vec<(String, Markup)> = rewards
        .iter()
        .map(|r| {
            let text = html! {
                (r.name.as_str()) " " span.quiet { (say!(l, ideas::kind, kind = r.kind.name())) }
                @if !held_up(r) {
                    span.hint { @match &r.stand_in {
                        Some(stand_in) => (say!(l, likes::shown_as, stand_in = stand_in)),
                        None => {
                            (say!(l, likes::needs_stand_in))
                            @if page.may(Capability::ChangeCards) { ". " a href=(format!("/people/reward/{}", r.reward)) { (say!(l, likes::to_card)) } }
                        }
                    } }
                }
                (for_animal(&page.locale, &page.card, r))
            };
            (r.reward.to_string(), text)
        })
        .collect();
    let formats: Vec<(String, Markup)> =
        [LikesFormat::Paired, LikesFormat::Multiple, LikesFormat::Single, LikesFormat::FreeAccess]
            .into_iter()
            .map(|f| {
                (f.name().to_owned(), html! { (say!(l, likes::format, format = f.name())) span.hint { (say!(l, likes::about, format = f.name(), name = &page.card.name)) } })
            })
            .collect();
    let refused: Vec<&RewardCard> =
        page.story.rewards_of(page.id).into_iter().filter(|r| forbidden(page.card.species, r).is_some()).collect();
    layout(
        page,
        Tab::Likes,
        &say!(l, likes::new_title),
        html! {
            (summary(typed))
            @if tests_rest(&page.case()) {
                p.stop { (say!(l, likes::not_today, name = &page.card.name)) }
                p { a href=(Tab::Likes.href(Some(page.id))) { (say!(l, likes::back)) } }
            } @else if rewards.is_empty() {
                p { (say!(l, likes::nothing_listed, name = &page.card.name)) }
                p { a.button.primary href=(format!("/a/{}/ideas", page.id)) { (say!(l, ideas::title, name = &page.card.name)) } }
            } @else {
                @if let Some(text) = &page.card.cautions { p.caution { strong { (say!(l, ideas::health)) } " " (text.as_str()) } }
                @for r in refused { (for_animal(&page.locale, &page.card, r)) }
                form method="post" action=(format!("/a/{}/likes/new", page.id)) .stack {
                    (radios(typed, "format", &say!(l, likes::how_to_offer), "", &formats))
                    (ticks(typed, "rewards", &say!(l, likes::compare), &say!(l, likes::compare_hint), &options))
                    @if typed.problem("stands").is_some() || typed.ticked("stands") {
                        fieldset #stands { legend { (say!(l, likes::stands)) } (tick(typed, "stands", &say!(l, likes::stands_tick))) }
                    }
                    (number(typed, "rounds", &say!(l, likes::rounds), &say!(l, likes::rounds_hint)))
                    button.primary.wide { (say!(l, likes::begin)) }
                }
                p.quiet { (say!(l, likes::where_to_test, name = &page.card.name)) }
                p.quiet { (say!(l, hazards::note)) }
            }
        },
    )
}
