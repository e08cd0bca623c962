//! One answer of a likes test: one tap. Food it takes is counted against the day.

use super::begin::address;
use super::noted::{known, trials};
use crate::error::Error;
use crate::page::AnimalPage;
use crate::typed::Typed;
use axum::extract::Path;
use axum::response::{IntoResponse, Redirect, Response};
use sayso_advisor::likes::{Setup, next_setup};
use sayso_model::{
    Body, Engaged, Event, Feed, Kcal, LikeOutcome, LikeTrial, LikesFormat, RewardId, RewardKind, Seconds, Withdrawal,
};
use sayso_wording::say;

/// Notes an answer. An answer to a trial that was answered already (a double tap, a page gone back to) changes nothing.
pub async fn note(page: AnimalPage, Path((_, id)): Path<(String, String)>, typed: Typed) -> Result<Response, Error> {
    let test = known(&page, &id)?.part.clone();
    let to = address(&page, test.assessment);
    let Some(Setup::Offer { round, number, offered, .. }) = next_setup(&page.story, page.id, test.assessment) else {
        return Ok(Redirect::to(&to).into_response());
    };
    if typed.text("number") != number.to_string() {
        return Ok(Redirect::to(&format!("{to}?twice=yes")).into_response());
    }
    let mut typed = typed;
    let (result, eaten) = if test.format == LikesFormat::FreeAccess {
        match observed(&page, &offered, &mut typed) {
            Some(observed) => observed,
            None => return Ok(super::test::again(&page, &test, &typed)),
        }
    } else {
        let typed = typed.clone().only(&["number", "answer"])?;
        let result = answer(&page, typed.text("answer"), &offered)?;
        let eaten = match result {
            LikeOutcome::Chose { reward } => vec![(reward, 1)],
            _ => Vec::new(),
        };
        (result, eaten)
    };
    let trial = LikeTrial { assessment: test.assessment, format: test.format, round, offered, result };
    let mut events = vec![page.event(trial)];
    events.extend(eaten.into_iter().filter_map(|(reward, pieces)| fed(&page, reward, pieces)));
    page.keep(events).await?;
    Ok(Redirect::to(&to).into_response())
}

fn answer(page: &AnimalPage, text: &str, offered: &[RewardId]) -> Result<LikeOutcome, Error> {
    match text {
        "none" => Ok(LikeOutcome::ChoseNone),
        "away" => Ok(LikeOutcome::WalkedAway),
        id => match id.parse().ok().filter(|r| offered.contains(r)) {
            Some(reward) => Ok(LikeOutcome::Chose { reward }),
            None => Err(Error::refused("answer", say!(&page.locale, likes::answer_wrong))),
        },
    }
}

/// Seconds with each thing, and pieces eaten, as typed or timed.
fn observed(page: &AnimalPage, offered: &[RewardId], typed: &mut Typed) -> Option<(LikeOutcome, Vec<(RewardId, u16)>)> {
    if typed.text("answer") == "away" {
        return Some((LikeOutcome::WalkedAway, Vec::new()));
    }
    let observed_s = typed.quantity("observed_s", Seconds::new);
    if typed.text("observed_s").is_empty() {
        typed.wrong("observed_s", say!(&page.locale, likes::seconds_missing));
    } else if observed_s.is_some_and(|s| s.get() <= 0.0) {
        typed.wrong("observed_s", say!(&page.locale, likes::more_than_none));
    }
    let (mut engaged, mut eaten) = (Vec::new(), Vec::new());
    for &reward in offered {
        let field = format!("seconds-{reward}");
        let seconds = typed.quantity(&field, Seconds::new).unwrap_or(Seconds::clamped(0.0));
        if observed_s.is_some_and(|all| seconds.get() > all.get()) {
            typed.wrong(&field, say!(&page.locale, likes::longer_than_there));
        }
        engaged.push(Engaged { reward, seconds });
        if page.story.rewards().get(&reward).is_some_and(|r| r.kind == RewardKind::Food)
            && let Some(pieces) = typed.whole(&format!("pieces-{reward}"), 0, 1000).filter(|n| *n > 0)
        {
            eaten.push((reward, pieces));
        }
    }
    let observed_s = observed_s.filter(|_| typed.right())?;
    Some((LikeOutcome::Observed { observed_s, engaged }, eaten))
}

/// Pieces of food the animal took; nothing for other rewards.
fn fed(page: &AnimalPage, reward: RewardId, pieces: u16) -> Option<Event> {
    let rewards = page.story.rewards();
    let card = rewards.get(&reward).filter(|r| r.kind == RewardKind::Food)?;
    let kcal = Kcal::clamped(card.kcal_per_piece?.get() * f64::from(pieces));
    let grams = card.grams_per_piece.map(|g| sayso_model::Grams::clamped(g.get() * f64::from(pieces)));
    Some(page.event(Feed { reward: Some(reward), food: None, pieces: Some(pieces), grams, kcal, session: None }))
}

/// Takes back the last answer, and the food that was counted with it. Both stay in the log.
pub async fn undo(page: AnimalPage, Path((_, id)): Path<(String, String)>, typed: Typed) -> Result<Redirect, Error> {
    let test = known(&page, &id)?.part.assessment;
    let typed = typed.only(&["trial"])?;
    let to = address(&page, test);
    // The page names the trial, so that undoing twice by accident takes back one answer.
    let trials = trials(&page, test);
    let Some(last) = trials.last().filter(|t| t.id().to_string() == typed.text("trial")) else {
        return Ok(Redirect::to(&format!("{to}?twice=yes")));
    };
    let chosen: Vec<RewardId> = match &last.part.result {
        LikeOutcome::Chose { reward } => vec![*reward],
        LikeOutcome::Observed { engaged, .. } => engaged.iter().map(|e| e.reward).collect(),
        _ => Vec::new(),
    };
    let feeds = page.story.between::<Feed>(page.id, last.at(), last.at()).filter(|f| {
        f.event.recorded_at == last.event.recorded_at && f.part.reward.is_some_and(|r| chosen.contains(&r))
    });
    let withdrawn = std::iter::once(last.id()).chain(feeds.map(|f| f.id()));
    let events = withdrawn.map(|of| page.event(Body::from(Withdrawal { of, because: None }))).collect();
    page.keep(events).await?;
    Ok(Redirect::to(&to))
}
