//! Heard presses that nobody has judged yet: did the word sound, and who pressed? One tap each.

use crate::error::Error;
use crate::layout::{Tab, layout_with};
use crate::page::AnimalPage;
use crate::pages::today::advice::advice as advised;
use crate::rich;
use crate::state::AppState;
use crate::typed::{Typed, named};
use axum::Router;
use axum::extract::Path;
use axum::http::header::CONTENT_TYPE;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::{get, post};
use maud::{Markup, html};
use sayso_advisor::buttons;
use sayso_advisor::heard::Heard;
use sayso_model::event::Part;
use sayso_model::{Body, Correction, Event, EventId, Press, PressedBy, Probability, Withdrawal};
use sayso_notebook::UNSURE;
use sayso_wording::{say, words};
use std::collections::BTreeSet;

/// Presses shown in each part.
const MOST: usize = 40;

/// What a person says of a heard press.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Judged {
    /// The word sounded; who pressed is not known.
    Yes,
    /// It did not sound.
    No,
    /// It sounded, and the animal pressed.
    Animal,
    /// It sounded, and a person pressed.
    Person,
}

impl Judged {
    const ALL: [Self; 4] = [Self::Animal, Self::Person, Self::Yes, Self::No];

    const fn name(self) -> &'static str {
        match self {
            Self::Yes => "yes",
            Self::No => "no",
            Self::Animal => "animal",
            Self::Person => "person",
        }
    }
}

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/a/{animal}/heard", get(show))
        .route("/a/{animal}/heard/{event}", post(judge))
        .route("/a/{animal}/heard/{event}/sound", get(sound))
}

/// Heard presses of this animal, or of none where the word is taught to this one, that nobody has judged or tapped; newest first.
fn waiting(page: &AnimalPage) -> Vec<Heard> {
    let words = page.story.words();
    let taught = |h: &Heard| words.get(&h.word).is_none_or(|w| w.is_for(page.id));
    let ours = |h: &Heard| h.waits && h.animal.map_or_else(|| taught(h), |animal| animal == page.id);
    let mut all: Vec<Heard> = page.state.kept.sums(page.home).heard(&page.story);
    all.retain(ours);
    all.sort_by_key(|h| std::cmp::Reverse((h.at, h.id)));
    all
}

async fn show(page: AnimalPage) -> Result<Markup, Error> {
    let l = &page.locale;
    let kept: BTreeSet<EventId> = page.state.store.snippets(page.now).await?.into_iter().collect();
    let (unsure, sure): (Vec<_>, Vec<_>) = waiting(&page).into_iter().partition(|h| h.certainty < UNSURE);
    let nothing = unsure.is_empty() && sure.is_empty();
    Ok(layout_with(
        &page,
        Tab::None,
        &say!(l, heard::title),
        &["client/heard.js"],
        html! {
            @if nothing { p { (say!(l, heard::nothing)) } }
            @else { p { (say!(l, heard::intro)) } }
            p.quiet role="status" data-heard-said data-test="heard-said" {}
            div data-heard-list {
                (part(&page, &say!(l, heard::did_it_sound), &say!(l, heard::did_it_sound_hint), &unsure, &kept))
                (part(&page, &say!(l, heard::who_pressed), "", &sure, &kept))
            }
            @for advice in buttons::advice(&page.story, Some(page.id), page.now, page.case().sums()) { (advised(&page, &advice)) }
            p { a.link href=(format!("/a/{}/listen", page.id)) { (say!(l, heard::listen)) } }
            p { a.link href=(Tab::Log.href(Some(page.id))) { (say!(l, heard::log)) } }
        },
    ))
}

fn part(page: &AnimalPage, title: &str, hint: &str, presses: &[Heard], kept: &BTreeSet<EventId>) -> Markup {
    let l = &page.locale;
    let words = page.story.words();
    let unknown = say!(l, heard::a_word);
    let more = presses.len().saturating_sub(MOST);
    html! {
        @if !presses.is_empty() {
            section data-more=(more) {
                h2 { (rich!(l, heard::count, title = title, count = html! { span data-n { (presses.len()) } })) }
                @if !hint.is_empty() { p.quiet { (hint) } }
                @for press in presses.iter().take(MOST) {
                    @let says = words.get(&press.word).map_or(unknown.as_str(), |w| w.says.as_str());
                    (card(page, press, says, kept.contains(&press.id)))
                }
                @if more > 0 { p.quiet { (say!(l, heard::older, count = more)) } }
            }
        }
    }
}

/// One press: what was heard, its sound if kept, and one tap to say what it was.
fn card(page: &AnimalPage, press: &Heard, says: &str, kept: bool) -> Markup {
    let l = &page.locale;
    html! {
        form method="post" action=(format!("/a/{}/heard/{}", page.id, press.id)) #{ "e" (press.id) } .card.judge data-says=(says) data-test="heard-press" {
            div.what {
                p {
                    strong { "\u{201c}" (says) "\u{201d}" }
                    span.hint { (l.weekday_date(press.at.day(&page.zone))) ", " (l.time_seconds(press.at, &page.zone)) }
                    span.hint { (say!(l, heard::chance, share = l.percent(press.certainty.min(0.99)))) }
                }
                @if kept {
                    button type="button" data-play=(format!("/a/{}/heard/{}/sound", page.id, press.id)) data-test="heard-play" aria-pressed="false" hidden {
                        (say!(l, heard::play)) span.unseen { " " (say!(l, heard::play_of, word = says)) }
                    }
                }
            }
            div.answers {
                @for j in Judged::ALL {
                    button name="was" value=(j.name()) data-label=(label(page, j)) data-test=(format!("heard-{}", j.name())) { (label(page, j)) span.unseen { (page.locale.colon("", says)) } }
                }
            }
        }
    }
}

/// The sound around a press that waits to be judged, if it is kept.
async fn sound(page: AnimalPage, Path((_, id)): Path<(String, String)>) -> Result<Response, Error> {
    let id: EventId = named(&id, "press")?;
    let missing = || Error::NotFound(words!(heard::not_kept));
    if !waiting(&page).iter().any(|h| h.id == id) {
        return Err(missing());
    }
    let wav = page.state.store.snippet(id).await?.ok_or_else(missing)?;
    Ok(([(CONTENT_TYPE, "audio/wav")], wav).into_response())
}

fn label(page: &AnimalPage, judged: Judged) -> String {
    let l = &page.locale;
    match judged {
        Judged::Yes => say!(l, heard::yes),
        Judged::No => say!(l, heard::no),
        Judged::Animal => say!(l, heard::animal, name = page.card.name.as_str()),
        Judged::Person => say!(l, heard::person),
    }
}

async fn judge(page: AnimalPage, Path((_, id)): Path<(String, String)>, typed: Typed) -> Result<Redirect, Error> {
    let id: EventId = named(&id, "press")?;
    let typed = typed.only(&["was"])?;
    let judged = Judged::ALL.into_iter().find(|j| j.name() == typed.text("was"));
    let judged =
        judged.ok_or_else(|| Error::refused("was", words!(faults::one_of, names = "yes, no, animal, person")))?;
    let none = || Error::NotFound(words!(heard::gone));
    let waits = waiting(&page).iter().any(|h| h.id == id);
    let event = page.story.ledger().standing(id).filter(|_| waits).ok_or_else(none)?;
    let press = Press::of(&event.body).ok_or_else(none)?.clone();
    let body: Body = match judged {
        Judged::No => Withdrawal { of: id, because: None }.into(),
        Judged::Yes => corrected(id, press, PressedBy::Unknown, None),
        Judged::Animal => corrected(id, press, PressedBy::Animal, Some(page.id)),
        Judged::Person => corrected(id, press, PressedBy::Person, Some(page.id)),
    };
    page.keep(vec![Event { animal: event.animal, ..page.event(body) }]).await?;
    page.state.store.drop_snippet(id).await?;
    Ok(Redirect::to(&format!("/a/{}/heard", page.id)))
}

fn corrected(of: EventId, press: Press, by: PressedBy, animal: Option<sayso_model::AnimalId>) -> Body {
    let body = Press { by, certainty: Probability::clamped(1.0), ..press }.into();
    Correction { of, happened_at: None, animal, body: Box::new(body) }.into()
}
