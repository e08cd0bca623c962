//! What a coach proposes, notes and asks, in words.

use crate::locale::Locale;
use crate::say;
use sayso_model::{FigurePage, PlanLine, PlanWay, Proposed, SessionId, SessionStart, Story, TalkAbout, WordId};

/// Chooses the branch of a message for no way in particular.
const ANY: &str = "any";

fn word(locale: &Locale, story: &Story, id: WordId) -> String {
    let card = story.words().get(&id).copied();
    card.map_or_else(|| say!(locale, events::word_without_card), |card| card.says.to_string())
}

/// The name of a way, for messages.
#[must_use]
pub fn way_name(way: Option<PlanWay>) -> &'static str {
    way.map_or(ANY, PlanWay::name)
}

/// How long and how often.
#[must_use]
pub fn dose(locale: &Locale, line: &PlanLine) -> String {
    say!(locale, talk::dose, minutes = line.minutes, times = line.times)
}

/// A line of a plan.
#[must_use]
pub fn line(locale: &Locale, story: &Story, line: &PlanLine) -> String {
    let word = word(locale, story, line.word);
    say!(locale, talk::line, way = way_name(line.way), word = word, dose = dose(locale, line))
}

/// A page of figures.
#[must_use]
pub fn page(locale: &Locale, page: FigurePage) -> String {
    match page {
        FigurePage::Evidence => say!(locale, frame::evidence),
        FigurePage::Days => say!(locale, frame::days),
        FigurePage::Patterns => say!(locale, methods::page_patterns),
        FigurePage::Likes => say!(locale, frame::likes),
    }
}

/// What a note or question is about.
#[must_use]
pub fn about(locale: &Locale, story: &Story, about: &TalkAbout) -> String {
    match about {
        TalkAbout::Word { word: id } => say!(locale, talk::about_word, word = word(locale, story, *id)),
        TalkAbout::Session { session: id } => say!(locale, talk::about_session, when = session(locale, story, *id)),
        TalkAbout::Page { page: id } => say!(locale, talk::about_page, page = page(locale, *id)),
    }
}

/// When a session was.
fn session(locale: &Locale, story: &Story, id: SessionId) -> String {
    let start = story.everyones::<SessionStart>().find(|start| start.part.session == id);
    start.map_or_else(|| "?".to_owned(), |start| locale.weekday_date_time(start.at(), &story.zone()))
}

/// What is proposed, noted or asked, in a line.
#[must_use]
pub fn proposed(locale: &Locale, story: &Story, what: &Proposed) -> String {
    let named = |id: WordId| word(locale, story, id);
    match what {
        Proposed::Plan { lines, last_day } => {
            let words: Vec<String> = lines.iter().map(|line| named(line.word)).collect();
            say!(locale, talk::plan, words = locale.and(&words), day = locale.date(*last_day))
        }
        Proposed::Stage { word, stage: to } => {
            let stage = say!(locale, events::stage_name, stage = to.name());
            say!(locale, talk::stage, stage = stage, word = named(*word))
        }
        Proposed::Word { says } => say!(locale, talk::word, word = says),
        Proposed::Likes => say!(locale, talk::likes),
        Proposed::Check { word } => say!(locale, talk::check, word = named(*word)),
        Proposed::Note { about: None } => say!(locale, talk::note),
        Proposed::Note { about: Some(of) } => say!(locale, talk::note_on, about = about(locale, story, of)),
        Proposed::Question { about: None } => say!(locale, talk::question),
        Proposed::Question { about: Some(of) } => say!(locale, talk::question_on, about = about(locale, story, of)),
    }
}
