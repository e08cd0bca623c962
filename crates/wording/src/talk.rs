//! What a coach proposes, notes and asks, in words.

use crate::advice::{brief, step_because};
use crate::locale::Locale;
use crate::say;
use sayso_advisor::agreed::{Kept, Stands, stands};
use sayso_advisor::steps::{Step, WordStep};
use sayso_model::{
    CaseQuestion, DaysChart, FigurePage, Label, PlanLine, PlanWay, Proposed, SessionId, SessionStart, Story, TalkAbout,
    WordChart, WordId,
};

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

/// In which way, how long and how often.
#[must_use]
pub fn way_and_dose(locale: &Locale, line: &PlanLine) -> String {
    let dose = dose(locale, line);
    match line.way {
        None => dose,
        Some(way) => format!("{}, {dose}", say!(locale, talk::way, way = way.name())),
    }
}

/// A line of a plan.
#[must_use]
pub fn line(locale: &Locale, story: &Story, line: &PlanLine) -> String {
    let word = word(locale, story, line.word);
    say!(locale, talk::line, way = way_name(line.way), word = word, dose = dose(locale, line))
}

/// That a word's step comes before what is planned for it, with its reason; nothing where what is planned may be done, nor in a rest, which
/// is said once for all words.
#[must_use]
pub fn first(l: &Locale, name: &str, step: &WordStep, line: &PlanLine) -> Option<String> {
    let word = &step.word.says;
    match stands(step, line) {
        Stands::Beside | Stands::Instead { .. } => None,
        Stands::Never => Some(say!(l, talk::first_ends, word = word)),
        Stands::Waits if step.step == Step::Rest => None,
        Stands::Waits => {
            let (brief, why) = (brief(l, name, &step.advice.act), step_because(l, name, &step.advice));
            Some(say!(l, talk::first, word = word, step = brief, why = why.trim_end_matches('.')))
        }
    }
}

/// Of lines of a plan, where a word's step comes before them.
pub fn firsts<'a>(
    l: &'a Locale,
    name: &'a str,
    steps: &'a [WordStep],
    lines: impl Iterator<Item = &'a PlanLine> + 'a,
) -> impl Iterator<Item = String> + 'a {
    lines.filter_map(move |line| first(l, name, steps.iter().find(|step| step.word.word == line.word)?, line))
}

/// A line of a plan that was agreed, and what the log has of it after so many days.
#[must_use]
pub fn kept(locale: &Locale, days: usize, kept: &Kept) -> String {
    let (word, dose) = (&kept.word.says, way_and_dose(locale, &kept.line));
    if days == 0 {
        return say!(locale, talk::not_begun, word = word, dose = dose);
    }
    let way = match kept.line.way {
        None => ANY,
        Some(PlanWay::Show) => "show",
        Some(PlanWay::OfferInView | PlanWay::AskAndPoint | PlanWay::AskBetweenTwo) => "invite",
    };
    let told = say!(
        locale,
        talk::kept,
        way = way,
        word = word,
        on = kept.on_days,
        days = days,
        times = kept.times,
        dose = dose
    );
    if kept.sessions == 0 {
        return told;
    }
    // Minutes of some of the sessions would look like those of all.
    let sessions = if kept.timed == kept.sessions {
        let minutes = locale.number((kept.seconds / 60.0).round(), 0);
        say!(locale, talk::sessions_timed, sessions = kept.sessions, minutes = minutes)
    } else {
        say!(locale, talk::sessions, sessions = kept.sessions)
    };
    format!("{told} {sessions}")
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
        TalkAbout::WordChart { word: id, chart } => {
            let chart = match chart {
                WordChart::Curve => say!(locale, evidence::curve),
                WordChart::Showings => say!(locale, evidence::showings_a_day),
                WordChart::Presses => say!(locale, evidence::presses_a_day),
            };
            say!(locale, talk::about_word_chart, chart = chart, word = word(locale, story, *id))
        }
        TalkAbout::DaysChart { chart } => say!(locale, talk::about_chart, chart = days_chart(locale, *chart)),
    }
}

/// What a chart of Days is called there.
fn days_chart(locale: &Locale, chart: DaysChart) -> String {
    match chart {
        DaysChart::Hours => say!(locale, days::figures_hours),
        DaysChart::Weekdays => say!(locale, days::figures_weekdays),
        DaysChart::Joining => say!(locale, days::sessions_joined),
        DaysChart::Delay => say!(locale, days::delay),
    }
}

/// When a session was.
fn session(locale: &Locale, story: &Story, id: SessionId) -> String {
    let start = story.everyones::<SessionStart>().find(|start| start.part.session == id);
    start.map_or_else(|| "?".to_owned(), |start| locale.weekday_date_time(start.at(), &story.zone()))
}

/// A change, by its own words where it has some.
#[must_use]
pub fn change(locale: &Locale, question: CaseQuestion, label: Option<&Label>) -> String {
    let kind = say!(locale, designs::change, question = question.name());
    match label {
        Some(label) if question == CaseQuestion::Other => label.to_string(),
        Some(label) => format!("{kind} ({label})"),
        None => kind,
    }
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
        Proposed::Meeting { starts_at, minutes } => {
            say!(
                locale,
                talk::meeting,
                when = locale.weekday_date_time(*starts_at, &story.zone()),
                minutes = usize::from(*minutes)
            )
        }
        Proposed::Change { question, label, words, .. } => {
            let what = change(locale, *question, label.as_ref());
            let names: Vec<String> = words.iter().map(|id| say!(locale, talk::about_word, word = named(*id))).collect();
            match names.as_slice() {
                [] => say!(locale, talk::change, change = what),
                names => say!(locale, talk::change_words, change = what, words = locale.and(names)),
            }
        }
        Proposed::Programme { course, first } => {
            let (name, first, weeks) = (&course.name, locale.date(*first), course.weeks.len());
            say!(locale, programme::proposed, name = name, first = first, weeks = weeks)
        }
        Proposed::Practice { .. } => say!(locale, talk::practice),
        Proposed::HandOver { to } => say!(locale, talk::hand_over, name = &to.name),
        Proposed::Cover { by, first, last } => {
            say!(locale, talk::cover, name = &by.name, first = locale.date(*first), last = locale.date(*last))
        }
        Proposed::Question { about: None } => say!(locale, talk::question),
        Proposed::Question { about: Some(of) } => say!(locale, talk::question_on, about = about(locale, story, of)),
    }
}
