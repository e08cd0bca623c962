//! A coach writes: what was typed, read.

use super::about::{read_about, said_about};
use super::change;
use super::chosen::{animal, is_resting, kind};
use super::plan::{self, near_day, taken_up as lines_again};
use super::practice;
use super::{case, form, no_such, seen, writer};
use crate::error::Error;
use crate::leave::NewProposal;
use crate::page::Page;
use crate::pages::words::saying;
use crate::typed::{Typed, again};
use axum::response::{IntoResponse, Redirect, Response};
use maud::Markup;
use sayso_advisor::designs::Try;
use sayso_model::talks::{Talk, stage_of_closing};
use sayso_model::{AnimalCard, Event, EventId, Proposal, Proposed, Stage, TalkAbout, WordId};
use sayso_wording::words;

/// The usual length of a meeting, in minutes.
const MEETING: u16 = 30;
/// Fields beside those of a plan.
const FIELDS: [&str; 13] =
    ["home", "what", "animal", "takes_up", "begin", "word", "stage", "says", "about", "text", "day", "time", "minutes"];

fn only(typed: Typed) -> Result<Typed, Error> {
    typed.only(
        &[FIELDS.as_slice(), plan::FIELDS.as_slice(), change::FIELDS.as_slice(), practice::FIELDS.as_slice()].concat(),
    )
}

pub async fn ask(page: Page, typed: Typed) -> Result<Markup, Error> {
    let leave = writer(&page).ok_or_else(no_such)?;
    let typed = only(typed)?;
    let all = seen(&page);
    let earlier = all.iter().find(|t| t.id().to_string() == typed.text("takes_up"));
    Ok(form::page(&page, leave, &begun(&page, typed, earlier)))
}

/// The form as it is first shown: with what the address says, what is taken up again, and what is usual.
fn begun(page: &Page, typed: Typed, earlier: Option<&Talk<'_>>) -> Typed {
    let mut typed = typed;
    if let Some(talk) = earlier {
        typed = typed.with("what", talk.part.proposes.name()).with_some("animal", talk.event.animal);
        typed = typed.with_some("text", talk.part.text.as_ref());
        typed = taken_up(typed, &talk.part.proposes);
    }
    if let Ok(word) = typed.text("word").parse::<WordId>() {
        typed = typed.with("word_1", word).with("about", said_about(&TalkAbout::Word { word }));
    }
    // After a meeting: the last plan, else the steps that Today chose.
    if typed.text("begin") == "next"
        && let Some(animal) = animal(page, &typed)
    {
        let is_plan =
            |t: &&Talk<'_>| t.event.animal == Some(animal.animal) && matches!(t.part.proposes, Proposed::Plan { .. });
        typed = match seen(page).iter().find(is_plan) {
            Some(last) => taken_up(typed.with("what", "plan").with("takes_up", last.id()), &last.part.proposes)
                .with("filled", "plan"),
            None => plan::from_steps(page, &case(page, animal.animal), typed.with("what", "plan")),
        };
    }
    change::usual(plan::usual(page, typed)).with("minutes", MEETING)
}

fn taken_up(typed: Typed, earlier: &Proposed) -> Typed {
    match earlier {
        Proposed::Plan { lines, .. } => lines_again(typed, lines),
        Proposed::Meeting { minutes, .. } => typed.with("minutes", minutes),
        Proposed::Stage { word, stage } => typed.with("word", word).with("stage", stage.name()),
        Proposed::Word { says } => typed.with("says", says),
        // A programme, and who takes a coach's place, are chosen on the desk.
        Proposed::Likes | Proposed::Programme { .. } | Proposed::HandOver { .. } | Proposed::Cover { .. } => typed,
        Proposed::Change { .. } => match Try::of(earlier) {
            Some(tries) => change::taken_up(typed, &tries),
            None => typed,
        },
        Proposed::Check { word } => typed.with("word", word),
        Proposed::Practice { practice } => practice::taken_up(typed, practice),
        Proposed::Note { about } | Proposed::Question { about } => {
            typed.with_some("about", about.as_ref().map(said_about))
        }
    }
}

fn about(page: &Page, typed: &mut Typed) -> Option<TalkAbout> {
    let text = typed.text("about").to_owned();
    if text.is_empty() {
        return None;
    }
    let read = read_about(&page.story, &text);
    if read.is_none() {
        typed.wrong("about", words!(faults::unknown_id));
    }
    read
}

pub async fn send(page: Page, typed: Typed) -> Result<Response, Error> {
    let leave = writer(&page).ok_or_else(no_such)?;
    let mut typed = only(typed)?;
    // Another tab may be about another home since.
    if typed.text("home") != page.home.to_string() {
        typed.wrong("home", words!(sharing::other_home));
    }
    let animal = animal(&page, &typed);
    let proposes = read(&page, animal.as_ref(), &mut typed);
    let text = typed.short_or_none("text");
    if proposes.as_ref().is_some_and(Proposed::is_words) && typed.text("text").is_empty() {
        typed.wrong("text", words!(faults::missing));
    }
    let all = seen(&page);
    let takes_up: Option<EventId> = typed.id("takes_up", |id| all.iter().any(|t| t.id() == *id));
    if typed.right()
        && let Some(proposes) = proposes
    {
        let event = page.event(Proposal { from: leave.author(), proposes, text, takes_up, club: leave.writes_for() });
        // A coach is nobody in the home's log.
        let event = Event { animal: animal.map(|a| a.animal), person: None, ..event };
        if typed.kept(page.keep(vec![event.clone()]).await)? {
            let mut response = Redirect::to(&page.of_home("/talk")).into_response();
            response.extensions_mut().insert(NewProposal(event));
            return Ok(response);
        }
    }
    Ok(again(form::page(&page, leave, &typed)))
}

fn read(page: &Page, animal: Option<&AnimalCard>, typed: &mut Typed) -> Option<Proposed> {
    let Some(kind) = kind(typed) else {
        typed.wrong("what", words!(faults::missing_choose));
        return None;
    };
    if let Some(animal) = animal.filter(|_| is_resting(page, kind, animal)) {
        typed.wrong("what", words!(talk::rests_still, name = animal.name.to_string()));
        return None;
    }
    match kind {
        "plan" => {
            let (lines, last_day) = plan::read(page, animal?, typed)?;
            Some(Proposed::Plan { lines, last_day })
        }
        "change" => change::read(page, animal?, typed),
        "meeting" => meeting(page, typed),
        "stage" => {
            let stage = typed.one_needed("stage", &Stage::ALL, Stage::name);
            let proposed = Proposed::Stage { word: plan::word(page, animal?, typed, "word")?, stage: stage? };
            if stage_of_closing(&page.story, &proposed).is_some() {
                typed.wrong("stage", words!(talk::stage_of_closing));
            }
            Some(proposed)
        }
        "word" => {
            let says = typed.label("says")?;
            if saying(&page.story, says.as_str()).is_some() {
                typed.wrong("says", words!(talk::word_there));
            }
            Some(Proposed::Word { says })
        }
        "likes" => Some(Proposed::Likes),
        "check" => Some(Proposed::Check { word: plan::word(page, animal?, typed, "word")? }),
        "practice" => practice::read(typed),
        "note" => Some(Proposed::Note { about: about(page, typed) }),
        _ => Some(Proposed::Question { about: about(page, typed) }),
    }
}

/// A time to come, as the home's clocks show it.
fn meeting(page: &Page, typed: &mut Typed) -> Option<Proposed> {
    let day = near_day(page, typed, "day");
    let clock = typed.text("time").split_once(':').and_then(|(h, m)| Some((h.parse().ok()?, m.parse().ok()?)));
    let (shortest, longest) = Proposed::MEETING_MINUTES;
    let minutes = typed.whole_needed("minutes", shortest, longest);
    let starts_at = day.zip(clock).and_then(|(day, clock)| day.at(clock, &page.zone));
    let starts_at = starts_at.filter(|at| *at > page.now);
    if starts_at.is_none() && day.is_some() {
        typed.wrong("time", words!(talk::time_wrong));
    }
    Some(Proposed::Meeting { starts_at: starts_at?, minutes: minutes? })
}
