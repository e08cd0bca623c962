//! What people do during a trial: note that another condition was in force, or stop.

use super::{address, known};
use crate::error::Error;
use crate::page::AnimalPage;
use crate::typed::{Typed, again};
use axum::extract::Path;
use axum::response::{IntoResponse, Redirect, Response};
use sayso_model::{CaseCondition, CaseDesign, CaseStop, DesignNote, DesignStop};
use sayso_wording::words;

/// Notes what was in force at a point.
pub async fn note(page: AnimalPage, Path((_, id)): Path<(String, String)>, typed: Typed) -> Result<Response, Error> {
    let trial = known(&page, &id)?;
    let plan = trial.plan.part;
    let mut typed = typed.only(&["lane", "point", "in_force", "because"])?;
    let lane = typed.text("lane").parse::<usize>().ok().filter(|l| *l < trial.lanes.len());
    let lane = lane.ok_or_else(|| Error::refused("lane", words!(faults::unknown_id)))?;
    let now = trial.point_now(&page.story, lane, page.now).unwrap_or(plan.points);
    let point = typed.whole_needed("point", 1, now);
    let in_force = typed.one_needed("in_force", CaseCondition::ALL, CaseCondition::name);
    let because = typed.note_or_none("because");
    let (Some(point), Some(in_force), true) = (point, in_force, typed.right()) else {
        return Ok(again(super::view::page_of(&page, &trial, &typed)));
    };
    let over_words = plan.design == CaseDesign::MultipleBaseline && plan.animals.is_empty();
    let word = trial.lanes[lane].words.first().copied().filter(|_| over_words);
    let mut event = page.event(DesignNote { trial: plan.trial, point, word, in_force, because });
    event.animal = Some(trial.lanes[lane].animal);
    page.keep(vec![event]).await?;
    Ok(Redirect::to(&address(&page, plan.trial)).into_response())
}

/// Stops a trial.
pub async fn stop(page: AnimalPage, Path((_, id)): Path<(String, String)>, typed: Typed) -> Result<Response, Error> {
    let trial = known(&page, &id)?;
    let mut typed = typed.only(&["reason", "why"])?;
    let reason = typed.one_of("reason", CaseStop::ALL, CaseStop::name);
    let because = typed.note_or_none("why");
    let (Some(reason), true) = (reason, typed.right()) else {
        if typed.right() {
            typed.wrong("reason", words!(faults::missing_choose));
        }
        return Ok(again(super::view::page_of(&page, &trial, &typed)));
    };
    let to = trial.plan.part.trial;
    page.keep(vec![page.event(DesignStop { trial: to, reason, because })]).await?;
    Ok(Redirect::to(&address(&page, to)).into_response())
}
