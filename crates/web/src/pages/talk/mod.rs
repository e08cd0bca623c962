//! Agreed: what coach and home say to each other through the work. For the home what is to be answered, what holds and how it goes,
//! and plans of its own; for the coach the same of what they wrote, and a form to write. A change that was agreed becomes a trial by
//! one more tap.

mod about;
mod card;
mod change;
mod chosen;
mod ended;
mod first;
mod form;
mod going;
mod own;
mod plan;
mod practice;
mod programme;
mod reads;
mod tried;
mod view;
mod write;

pub use ended::ended;
pub use practice::{handed_over, share};

use self::about::said_about;
use crate::error::Error;
use crate::leave::Leave;
use crate::page::{AnimalPage, Page};
use crate::state::AppState;
use crate::typed::{Typed, again, named};
use axum::Router;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::{get, post};
use maud::{Markup, html};
use sayso_advisor::Case;
use sayso_advisor::welfare::rest_today;
use sayso_model::consents::{Consents, consents};
use sayso_model::talks::{Passed, Standing, Talk, passed, talks};
use sayso_model::{AnimalId, Coach, Event, EventId, ProposalAnswer, Reply, TalkAbout, Withdrawal, WordId};
use sayso_people::Capability;
use sayso_wording::{say, words};
use std::collections::BTreeSet;

/// Routes of the pages.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/talk", get(show))
        .route("/talk/answer", post(answer))
        .route("/talk/write", get(write::ask).post(write::send))
        .route("/talk/back", post(take_back))
        .route("/talk/end", post(end))
        .route("/talk/try", post(tried::draw))
        .route("/talk/aim", post(programme::note))
        .route("/talk/rehearsed", post(practice::note))
        .route("/talk/unshared", post(practice::take_back))
        .route("/talk/own", get(own::ask).post(own::keep))
        .route("/talk/own/stop", post(own::stop))
}

/// Who may write to the home as a coach: on a server alone, for elsewhere nobody has an account.
pub fn writer(page: &Page) -> Option<&Leave> {
    page.leave.as_ref().filter(|_| page.may(Capability::Advise))
}

/// Whether the page is read for the home, not for a coach.
fn is_home(page: &Page) -> bool {
    page.may(Capability::Agree)
}

/// The talk as far as it is for whoever asks: of a coach's see `reads`.
pub fn seen(page: &Page) -> Vec<Talk<'_>> {
    let mut all = talks(&page.story, page.now);
    if !is_home(page) {
        let Some(leave) = &page.leave else { return Vec::new() };
        let passed = passed_on(page, &all);
        let shown: BTreeSet<EventId> =
            all.iter().filter(|t| reads::may(page, leave, &passed, t)).map(Talk::id).collect();
        all.retain(|t| shown.contains(&t.id()));
    }
    all
}

/// Consents that are open at this moment.
pub fn open_now(page: &Page) -> Consents {
    match &page.leave {
        Some(leave) => leave.known.consents.clone(),
        None => consents(&page.story, page.now),
    }
}

/// Whether this server saw it being written by whom it names; at home, the one that the notebook is linked to.
pub fn is_witnessed(page: &Page, id: EventId) -> bool {
    match &page.leave {
        Some(leave) => leave.known.witnessed.contains(&id),
        None => page.state.linked.has(page.state.store.dir(), id),
    }
}

/// Hand-overs and covers to which the home agreed, of those that were seen being proposed.
pub fn passed_on(page: &Page, all: &[Talk<'_>]) -> Vec<Passed> {
    passed(all).into_iter().filter(|passed| is_witnessed(page, passed.agreement)).collect()
}

/// Whether the home is open to whom it was passed on.
pub fn is_open_to(open: &Consents, of: &Passed) -> bool {
    open.any_to(Coach::Account { account: of.to.account })
}

/// The way to write about a word whose figures one looks at, for a coach.
pub fn write_about(page: &AnimalPage, word: WordId) -> Markup {
    let more = [("animal", page.id.to_string()), ("word", word.to_string())];
    html! {
        @if writer(page).is_some() {
            p { a.button href=(page.of_home_with("/talk/write", &more)) data-test="write-about" { (say!(&page.locale, talk::write_about)) } }
        }
    }
}

/// The same about one chart, below it; the place of the chart, to which a note leads back.
pub fn write_about_chart(page: &AnimalPage, chart: &TalkAbout) -> Markup {
    let mut more = vec![("animal", page.id.to_string()), ("about", said_about(chart))];
    more.extend(chart.word().map(|word| ("word", word.to_string())));
    html! {
        @if writer(page).is_some() {
            p { a.link href=(page.of_home_with("/talk/write", &more)) data-test="write-about-chart" { (say!(&page.locale, talk::write_about_chart)) } }
        }
    }
}

/// The animal that a proposal is done with: its own, else the home's first.
fn animal_of(page: &Page, talk: &Talk<'_>) -> Option<AnimalId> {
    talk.event.animal.or_else(|| page.animals().first().map(|a| a.animal))
}

/// Whether an animal's sessions rest because of a strong sign.
fn rests(page: &Page, animal: AnimalId) -> bool {
    rest_today(&case(page, animal))
}

fn case(page: &Page, animal: AnimalId) -> Case<'_> {
    Case::new(&page.story, animal, page.now).with(page.state.kept.sums(page.home))
}

fn no_such() -> Error {
    Error::NotFound(words!(talk::no_such))
}

async fn show(page: Page) -> Markup {
    view::page(&page, &seen(&page), &Typed::default())
}

fn back_to(page: &Page, talk: EventId) -> Redirect {
    Redirect::to(&format!("{}#t-{talk}", page.of_home("/talk")))
}

async fn answer(page: Page, typed: Typed) -> Result<Response, Error> {
    let mut typed = typed.only(&["to", "reply", "text"])?;
    let to: EventId = named(typed.text("to"), "proposal")?;
    let all = seen(&page);
    let talk = all.iter().find(|t| t.id() == to).ok_or_else(no_such)?;
    let reply = typed.one_needed("reply", Reply::ALL, Reply::name);
    let text = typed.short_or_none("text");
    if reply == Some(Reply::Said) && typed.text("text").is_empty() {
        typed.wrong("text", words!(faults::missing));
    }
    if matches!(reply, Some(Reply::Accepted | Reply::Declined)) && !talk.may_be_settled() {
        typed.wrong("reply", words!(talk::over));
    }
    // What opens the home is accepted on a page that says to whom and what, and is ended there.
    if talk.part.proposes.opens_to().is_some()
        && (reply == Some(Reply::Accepted) || (reply == Some(Reply::Declined) && talk.standing != Standing::Open))
    {
        typed.wrong("reply", words!(talk::opens));
    }
    if typed.right()
        && let Some(reply) = reply
    {
        let by = page.leave.as_ref().and_then(Leave::answers_as);
        let event = page.event(ProposalAnswer { to, reply, text, by, rehearsed: None });
        if typed.kept(page.keep(vec![Event { animal: talk.event.animal, ..event }]).await)? {
            return Ok(back_to(&page, to).into_response());
        }
    }
    Ok(again(view::page(&page, &all, &typed)))
}

/// A coach ends what another one wrote that has passed on to them.
async fn end(page: Page, typed: Typed) -> Result<Redirect, Error> {
    let typed = typed.only(&["of"])?;
    let of: EventId = named(typed.text("of"), "proposal")?;
    let leave = writer(&page).ok_or_else(no_such)?;
    let all = talks(&page.story, page.now);
    let passed = passed_on(&page, &all);
    let talk = all.iter().find(|t| t.id() == of && reads::goes_on(&page, leave, &passed, t)).ok_or_else(no_such)?;
    if talk.is_live() {
        let (reply, by) = (Reply::Declined, Some(leave.author()));
        let event = page.event(ProposalAnswer { to: of, reply, text: None, by, rehearsed: None });
        page.keep(vec![Event { animal: talk.event.animal, person: None, ..event }]).await?;
    }
    Ok(back_to(&page, of))
}

/// A coach takes back what they wrote.
async fn take_back(page: Page, typed: Typed) -> Result<Redirect, Error> {
    let typed = typed.only(&["of"])?;
    let of: EventId = named(typed.text("of"), "proposal")?;
    let me = writer(&page).ok_or_else(no_such)?.who.account;
    let all = talks(&page.story, page.now);
    let talk = all.iter().find(|t| t.id() == of && t.part.from.account == me).ok_or_else(no_such)?;
    if talk.standing != Standing::Withdrawn {
        let event = page.event(Withdrawal { of, because: None });
        page.keep(vec![Event { animal: talk.event.animal, person: None, ..event }]).await?;
    }
    Ok(back_to(&page, of))
}
