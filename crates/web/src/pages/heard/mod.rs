//! Heard presses that nobody has judged yet: did the word sound, and who pressed? One tap each.

use crate::error::Error;
use crate::layout::{Tab, layout};
use crate::page::LearnerPage;
use crate::state::AppState;
use crate::typed::{Typed, named};
use axum::Router;
use axum::extract::Path;
use axum::response::Redirect;
use axum::routing::{get, post};
use maud::{Markup, html};
use sayso_model::{Body, Correction, Event, EventId, Press, PressedBy, Probability, Source, Withdrawal};

/// Certainty under which a press is asked about first.
const UNSURE: f64 = 0.9;
/// Presses shown in each part.
const MOST: usize = 40;

/// What a person says of a heard press.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Judged {
    /// The word sounded; who pressed is not known.
    Yes,
    /// It did not sound.
    No,
    /// It sounded, and the learner pressed.
    Learner,
    /// It sounded, and a teacher pressed.
    Teacher,
}

impl Judged {
    const ALL: [Self; 4] = [Self::Learner, Self::Teacher, Self::Yes, Self::No];

    const fn name(self) -> &'static str {
        match self {
            Self::Yes => "yes",
            Self::No => "no",
            Self::Learner => "learner",
            Self::Teacher => "teacher",
        }
    }
}

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/l/{learner}/heard", get(show)).route("/l/{learner}/heard/{event}", post(judge))
}

/// Heard presses of this animal, or of none, that nobody has judged; newest first.
fn waiting(page: &LearnerPage) -> Vec<(Event, Press)> {
    let of = page.story.of::<Press>(page.id).chain(page.story.unassigned::<Press>());
    let mut all: Vec<(Event, Press)> = of
        .filter(|f| f.event.source == Source::Heard && f.part.by == PressedBy::Unknown && f.part.certainty.get() < 1.0)
        .map(|f| (f.event.clone(), f.part.clone()))
        .collect();
    all.sort_by_key(|(e, _)| std::cmp::Reverse((e.happened_at, e.id)));
    all
}

async fn show(page: LearnerPage) -> Markup {
    let (unsure, sure): (Vec<_>, Vec<_>) = waiting(&page).into_iter().partition(|(_, p)| p.certainty.get() < UNSURE);
    layout(
        &page,
        Tab::None,
        "Heard presses",
        html! {
            p { "A microphone tells which button sounded, not who pressed it. Say what you saw; leave what nobody saw as it is." }
            @if unsure.is_empty() && sure.is_empty() { p { "Nothing waits here." } }
            (part(&page, "Unsure whether it sounded", &unsure))
            (part(&page, "By whom?", &sure))
            p { a href=(Tab::Log.href(Some(page.id))) { "What was taken back stays in the log" } }
        },
    )
}

fn part(page: &LearnerPage, title: &str, presses: &[(Event, Press)]) -> Markup {
    let words = page.story.words();
    html! {
        @if !presses.is_empty() {
            section {
                h2 { (title) " (n = " (presses.len()) ")" }
                @for (event, press) in presses.iter().take(MOST) {
                    @let says = words.get(&press.word).map_or("a word", |w| w.says.as_str());
                    form method="post" action=(format!("/l/{}/heard/{}", page.id, event.id)) #{ "e" (event.id) } .card {
                        p { strong { "\u{201c}" (says) "\u{201d}" } " " (event.happened_at.local(&page.zone).strftime("%a %d %b, %H:%M:%S"))
                            span.hint { "chance that it sounded: " (format!("{:.0} %", 100.0 * press.certainty.get())) } }
                        div.row {
                            @for j in Judged::ALL {
                                button name="was" value=(j.name()) { (label(page, j)) span.unseen { ": " (says) } }
                            }
                        }
                    }
                }
                @if presses.len() > MOST { p.quiet { (presses.len() - MOST) " older ones follow once these are judged." } }
            }
        }
    }
}

fn label(page: &LearnerPage, judged: Judged) -> String {
    match judged {
        Judged::Yes => "It sounded".to_owned(),
        Judged::No => "No such press".to_owned(),
        Judged::Learner => page.card.name.to_string(),
        Judged::Teacher => "A person".to_owned(),
    }
}

async fn judge(page: LearnerPage, Path((_, id)): Path<(String, String)>, typed: Typed) -> Result<Redirect, Error> {
    let id: EventId = named(&id, "press")?;
    let typed = typed.only(&["was"])?;
    let judged = Judged::ALL.into_iter().find(|j| j.name() == typed.text("was"));
    let judged = judged.ok_or_else(|| Error::refused("was", "must be yes, no, learner or teacher"))?;
    let none = || Error::NotFound("No such press waits here; it may have been judged meanwhile.".into());
    let (event, press) = waiting(&page).into_iter().find(|(e, _)| e.id == id).ok_or_else(none)?;
    let body: Body = match judged {
        Judged::No => Withdrawal { of: id, because: None }.into(),
        Judged::Yes => corrected(id, press, PressedBy::Unknown, None),
        Judged::Learner => corrected(id, press, PressedBy::Learner, Some(page.id)),
        Judged::Teacher => corrected(id, press, PressedBy::Teacher, Some(page.id)),
    };
    page.keep(vec![Event { learner: event.learner, ..page.event(body) }]).await?;
    Ok(Redirect::to(&format!("/l/{}/heard", page.id)))
}

fn corrected(of: EventId, press: Press, by: PressedBy, learner: Option<sayso_model::LearnerId>) -> Body {
    let body = Press { by, certainty: Probability::clamped(1.0), ..press }.into();
    Correction { of, happened_at: None, learner, body: Box::new(body) }.into()
}
