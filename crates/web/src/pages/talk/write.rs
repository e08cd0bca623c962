//! A coach writes: what was typed, read.

use super::chosen::{LINES, animal, is_resting, kind, said_about};
use super::{form, no_such, seen, short, writer};
use crate::error::Error;
use crate::leave::NewProposal;
use crate::page::Page;
use crate::typed::{Typed, again};
use axum::response::{IntoResponse, Redirect, Response};
use maud::Markup;
use sayso_model::talks::Talk;
use sayso_model::{
    AnimalCard, Author, Day, Event, EventId, FigurePage, PlanLine, PlanWay, Proposal, Proposed, SessionId,
    SessionStart, Stage, TalkAbout, WordId,
};
use sayso_wording::words;

/// Farthest last day of a plan, in days from today.
pub const MOST_DAYS: i32 = 56;
/// The usual last day of a plan, and what a line begins with.
const USUAL: (i32, u8, u8) = (6, 3, 3);
const FIELDS: [&str; 22] = [
    "home",
    "what",
    "animal",
    "takes_up",
    "word",
    "stage",
    "says",
    "about",
    "text",
    "last_day",
    "word_1",
    "way_1",
    "minutes_1",
    "times_1",
    "word_2",
    "way_2",
    "minutes_2",
    "times_2",
    "word_3",
    "way_3",
    "minutes_3",
    "times_3",
];

pub async fn ask(page: Page, typed: Typed) -> Result<Markup, Error> {
    let leave = writer(&page).ok_or_else(no_such)?;
    let typed = typed.only(&FIELDS)?;
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
    let (days, minutes, times) = USUAL;
    for n in 1..=LINES {
        typed = typed.with(&format!("minutes_{n}"), minutes).with(&format!("times_{n}"), times);
    }
    typed.with("last_day", page.now.day(&page.zone).plus(days))
}

fn taken_up(typed: Typed, earlier: &Proposed) -> Typed {
    match earlier {
        Proposed::Plan { lines, .. } => {
            let mut typed = typed;
            for (line, n) in lines.iter().zip(1..=LINES) {
                typed = typed.with(&format!("word_{n}"), line.word).with(&format!("minutes_{n}"), line.minutes);
                typed = typed.with(&format!("times_{n}"), line.times);
                typed = typed.with_some(&format!("way_{n}"), line.way.map(PlanWay::name));
            }
            typed
        }
        Proposed::Stage { word, stage } => typed.with("word", word).with("stage", stage.name()),
        Proposed::Word { says } => typed.with("says", says),
        Proposed::Likes => typed,
        Proposed::Check { word } => typed.with("word", word),
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
    let read = match text.split_once(':') {
        Some(("word", id)) => id
            .parse::<WordId>()
            .ok()
            .filter(|word| page.story.words().contains_key(word))
            .map(|word| TalkAbout::Word { word }),
        Some(("session", id)) => id
            .parse::<SessionId>()
            .ok()
            .filter(|id| page.story.everyones::<SessionStart>().any(|s| s.part.session == *id))
            .map(|session| TalkAbout::Session { session }),
        Some(("page", name)) => {
            FigurePage::ALL.iter().find(|p| p.name() == name).map(|page| TalkAbout::Page { page: *page })
        }
        _ => None,
    };
    if read.is_none() {
        typed.wrong("about", words!(faults::unknown_id));
    }
    read
}

pub async fn send(page: Page, typed: Typed) -> Result<Response, Error> {
    let leave = writer(&page).ok_or_else(no_such)?;
    let mut typed = typed.only(&FIELDS)?;
    // Another tab may be about another home since.
    if typed.text("home") != page.home.to_string() {
        typed.wrong("home", words!(sharing::other_home));
    }
    let animal = animal(&page, &typed);
    let proposes = read(&page, animal.as_ref(), &mut typed);
    let text = short(&mut typed, "text");
    if proposes.as_ref().is_some_and(Proposed::is_words) && typed.text("text").is_empty() {
        typed.wrong("text", words!(faults::missing));
    }
    let all = seen(&page);
    let takes_up: Option<EventId> = typed.id("takes_up", |id| all.iter().any(|t| t.id() == *id));
    if typed.right()
        && let Some(proposes) = proposes
    {
        let from = Author { account: leave.who.account, name: leave.name.clone() };
        let event = page.event(Proposal { from, proposes, text, takes_up });
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
        "plan" => plan(page, animal?, typed),
        "stage" => {
            let stage = typed.one_of("stage", &Stage::ALL, Stage::name);
            if typed.text("stage").is_empty() {
                typed.wrong("stage", words!(faults::missing_choose));
            }
            Some(Proposed::Stage { word: word(page, animal?, typed, "word")?, stage: stage? })
        }
        "word" => Some(Proposed::Word { says: typed.label("says")? }),
        "likes" => Some(Proposed::Likes),
        "check" => Some(Proposed::Check { word: word(page, animal?, typed, "word")? }),
        "note" => Some(Proposed::Note { about: about(page, typed) }),
        _ => Some(Proposed::Question { about: about(page, typed) }),
    }
}

/// A word of the animal.
fn word(page: &Page, animal: &AnimalCard, typed: &mut Typed, name: &str) -> Option<WordId> {
    let own = page.story.words_of(animal.animal);
    if typed.text(name).is_empty() {
        typed.wrong(name, words!(faults::missing_choose));
    }
    typed.id(name, |id| own.iter().any(|w| w.word == *id))
}

fn plan(page: &Page, animal: &AnimalCard, typed: &mut Typed) -> Option<Proposed> {
    let mut lines: Vec<PlanLine> = Vec::new();
    for n in 1..=LINES {
        let name = |field: &str| format!("{field}_{n}");
        if typed.text(&name("word")).is_empty() {
            continue;
        }
        let word = word(page, animal, typed, &name("word"));
        let way = typed.one_of(&name("way"), PlanWay::ALL, PlanWay::name);
        let mut number = |field: &str, most: u8| {
            let name = name(field);
            let read = typed.whole(&name, 1, u16::from(most)).and_then(|n| u8::try_from(n).ok());
            if typed.text(&name).is_empty() {
                typed.wrong(&name, words!(faults::missing));
            }
            read
        };
        let (minutes, times) = (number("minutes", PlanLine::MOST_MINUTES), number("times", PlanLine::MOST_TIMES));
        if let (Some(word), Some(minutes), Some(times)) = (word, minutes, times) {
            if lines.iter().any(|l| (l.word, l.way) == (word, way)) {
                typed.wrong(&name("word"), words!(faults::same_word));
            }
            lines.push(PlanLine { word, way, minutes, times });
        }
    }
    if lines.is_empty() && (1..=LINES).all(|n| typed.text(&format!("word_{n}")).is_empty()) {
        typed.wrong("word_1", words!(talk::no_line));
    }
    let (today, text) = (page.now.day(&page.zone), typed.text("last_day").to_owned());
    let last_day = text.parse::<Day>().ok().filter(|day| (0..=MOST_DAYS).contains(&day.days_since(today)));
    if last_day.is_none() {
        let last = page.locale.date(today.plus(MOST_DAYS));
        typed.wrong("last_day", words!(talk::last_day_wrong, last = last));
    }
    Some(Proposed::Plan { lines, last_day: last_day? })
}
