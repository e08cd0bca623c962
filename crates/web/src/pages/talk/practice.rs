//! What a coach hands a home to practise, an exercise and lessons; and what the home shares of a rehearsal: its figures, by a tap of
//! its own. Nothing of a rehearsal reaches the log by itself.

use super::{back_to, ended, is_home, no_such, open_now, passed_on, seen};
use crate::error::Error;
use crate::fields::{select, ticks};
use crate::leave::Leave;
use crate::page::Page;
use crate::typed::{Typed, named};
use axum::response::Redirect;
use maud::{Markup, html};
use sayso_advisor::programme::{Marks, course, is_read};
use sayso_advisor::{Estimate, Unit};
use sayso_model::facts::{lesson, lessons};
use sayso_model::talks::Talk;
use sayso_model::{
    Aim, Event, EventId, Label, Practice, ProposalAnswer, Proposed, RehearsalMeasure, Rehearsed, RehearsedFigure,
    Reply, Withdrawal,
};
use sayso_people::Capability;
use sayso_rehearse::{Conduct, conduct, figures, is_worth_sharing};
use sayso_sim::rehearsal::{Act, Character, Exercise, Setup, play, read as read_acts, written};
use sayso_wording::figures::{counted, finding};
use sayso_wording::lessons::title;
use sayso_wording::{Locale, say, words};
use std::collections::BTreeMap;

/// Fields of the coach's form.
pub const FIELDS: [&str; 3] = ["exercise", "character", "lessons"];

/// The coach's form: an exercise, with whom, and lessons.
pub fn fields(page: &Page, typed: &Typed) -> Markup {
    let l = &page.locale;
    let none = || vec![(String::new(), say!(l, talk::practice_none))];
    let exercises =
        Exercise::ALL.into_iter().map(|e| (e.name().to_owned(), say!(l, rehearse::exercise, which = e.name())));
    let who = Character::ALL.into_iter().map(|c| (c.name().to_owned(), say!(l, rehearse::who, who = c.name())));
    let all: Vec<(String, Markup)> =
        lessons().iter().map(|of| (of.id.clone(), html! { (title(l, of, None)) })).collect();
    html! {
        (select(typed, "exercise", &say!(l, talk::field_exercise), "", &none().into_iter().chain(exercises).collect::<Vec<_>>()))
        (select(typed, "character", &say!(l, talk::field_character), "", &who.collect::<Vec<_>>()))
        (ticks(typed, "lessons", &say!(l, talk::field_lessons), "", &all))
    }
}

/// What was typed.
pub fn read(typed: &mut Typed) -> Option<Proposed> {
    let short = |name: &str| Label::new(name).ok();
    let exercise = Exercise::named(typed.text("exercise")).and_then(|e| short(e.name()));
    let character = exercise.as_ref().and(Character::named(typed.text("character"))).and_then(|c| short(c.name()));
    let chosen: Vec<String> = typed.all("lessons").map(str::to_owned).collect();
    let lessons: Vec<Label> =
        lessons().iter().filter(|of| chosen.contains(&of.id)).filter_map(|of| short(&of.id)).collect();
    if exercise.is_none() && lessons.is_empty() {
        typed.wrong("exercise", words!(talk::practice_nothing));
        return None;
    }
    Some(Proposed::Practice { practice: Practice { exercise, character, lessons } })
}

/// What was handed over, taken up again.
pub fn taken_up(typed: Typed, practice: &Practice) -> Typed {
    let typed =
        typed.with_some("exercise", practice.exercise.as_ref()).with_some("character", practice.character.as_ref());
    practice.lessons.iter().fold(typed, |typed, lesson| typed.with("lessons", lesson))
}

/// On its card: links to the exercise and the lessons, what was read, how often something was shared; what a coach sees of it, while one
/// does.
pub fn card(page: &Page, talk: &Talk<'_>, is_seen: bool) -> Markup {
    let l = &page.locale;
    let Proposed::Practice { practice } = &talk.part.proposes else { return html! {} };
    let read = |of: &Label| is_read(&page.story, of.as_str(), page.now, marks(page));
    let tells = is_seen && is_home(page) && talk.is_live();
    let shared = talk.answers.iter().filter(|a| a.part.rehearsed.is_some()).count();
    html! {
        div data-test="practice" {
            @if let Some(exercise) = practice.exercise.as_ref().and_then(|name| Exercise::named(name.as_str())) {
                @let which = say!(l, rehearse::exercise, which = exercise.name());
                @let with = practice.character.as_ref().map(|who| ("character", who.to_string()));
                p { a.button href=(page.of_home_with(&format!("/rehearse/{}", exercise.name()), with.as_slice())) data-test="to-exercise" { (say!(l, talk::rehearse_it, exercise = which)) } }
            }
            @if !practice.lessons.is_empty() {
                ul.short {
                    @for of in &practice.lessons {
                        @if let Some(known) = lesson(of.as_str()) {
                            li data-test="to-lesson" data-read=(read(of)) { a href=(page.of_home(&format!("/learn/{}", known.id))) { (title(l, known, None)) } @if read(of) { " · " (say!(l, talk::is_read)) } }
                        }
                    }
                }
                @let (times, of) = (practice.lessons.iter().filter(|of| read(of)).count(), practice.lessons.len());
                p.quiet data-test="lessons-read" {
                    @if is_home(page) { (say!(l, talk::lessons_read, read = times, of = of)) }
                    @else { (say!(l, talk::lessons_shown, read = times, of = of)) }
                }
            }
            @if !practice.lessons.is_empty() && tells {
                p.quiet data-test="lessons-seen" { (say!(l, talk::lessons_seen, name = &talk.part.from.name, club = club(page, talk))) }
            }
            @if shared > 0 { p.quiet data-test="shared-count" { (say!(l, talk::shared_count, count = shared)) } }
            @else if tells { p.quiet { (say!(l, talk::may_share, name = &talk.part.from.name)) } }
        }
    }
}

/// What was shared of a rehearsal.
pub fn shared(page: &Page, answer: &Event, of: &Rehearsed) -> Markup {
    let l = &page.locale;
    // What another version wrote is told by its own name.
    let exercise = Exercise::named(of.exercise.as_str())
        .map_or_else(|| of.exercise.to_string(), |e| say!(l, rehearse::exercise, which = e.name()));
    let name = Character::named(of.character.as_str())
        .map_or_else(|| of.character.to_string(), |c| say!(l, rehearse::name, who = c.name()));
    html! {
        div data-test="rehearsed" {
            p { (say!(l, talk::shared, exercise = exercise, name = name.as_str())) }
            dl.facts.num {
                @for figure in &of.figures {
                    dt { (say!(l, rehearse::row, which = row(figure.of()), name = name.as_str())) }
                    dd { (told(l, figure)) }
                }
            }
            @if may_take_back(page, answer) {
                form method="post" action=(page.of_home("/talk/unshared")) {
                    button name="of" value=(answer.id) data-test="unshare" { (say!(l, talk::take_back)) }
                }
            }
        }
    }
}

/// Whether whoever asks may take back what was shared: their own, or anybody's for whom they may mend.
fn may_take_back(page: &Page, answer: &Event) -> bool {
    let own = answer.person.is_some() && answer.person == page.person;
    is_home(page) && page.may(if own { Capability::MendOwn } else { Capability::Mend })
}

/// What was shared is taken back: from then on no coach reads it.
pub async fn take_back(page: Page, typed: Typed) -> Result<Redirect, Error> {
    let typed = typed.only(&["of"])?;
    let of: EventId = named(typed.text("of"), "answer")?;
    let all = seen(&page);
    let (talk, answer) = all
        .iter()
        .flat_map(|talk| talk.answers.iter().map(move |answer| (talk, answer)))
        .find(|(_, answer)| answer.event.id == of && answer.part.rehearsed.is_some())
        .filter(|(_, answer)| may_take_back(&page, answer.event))
        .ok_or_else(no_such)?;
    let event = page.event(Withdrawal { of: answer.event.id, because: None });
    page.keep(vec![Event { animal: talk.event.animal, ..event }]).await?;
    Ok(back_to(&page, talk.id()))
}

/// How a figure is chosen by in messages.
const fn row(of: RehearsalMeasure) -> &'static str {
    match of {
        RehearsalMeasure::AnswerDelay => "answer-delay",
        other => other.name(),
    }
}

/// A figure with its interval, as it is told after the rehearsal itself: that of a share follows from its counts.
fn told(l: &Locale, figure: &RehearsedFigure) -> String {
    match figure {
        RehearsedFigure::Times { times, among, .. } => {
            counted(l, &Estimate::share(usize::from(*times), usize::from(*among)))
        }
        RehearsedFigure::Middle { seconds, between, among, .. } => {
            let middle = Estimate {
                value: Some(seconds.get()),
                low: between.map(|b| b.low.get()),
                high: between.map(|b| b.high.get()),
                ..Estimate { n: usize::from(*among), ..Estimate::unknown(Unit::Seconds) }
            };
            finding(l, &middle)
        }
    }
}

/// Whether the other coaches of a club read it too.
fn club_reads(page: &Page, talk: &Talk<'_>) -> bool {
    talk.part.club.is_some_and(|club| open_now(page).club_reads(club))
}

/// The same, as messages choose by.
fn club(page: &Page, talk: &Talk<'_>) -> &'static str {
    if club_reads(page, talk) { "yes" } else { "no" }
}

/// Which marks on lessons whoever asks sees: a coach those that are shown.
pub fn marks(page: &Page) -> Marks {
    if is_home(page) { Marks::All } else { Marks::Shown }
}

/// What of the talk a coach still reads.
fn still_read<'a>(page: &Page, all: Vec<Talk<'a>>) -> Vec<Talk<'a>> {
    let (passed, open) = (passed_on(page, &all), open_now(page));
    all.into_iter().filter(|talk| ended(page, (&passed, &open), talk).is_none()).collect()
}

/// Who handed a lesson over to practise or as an aim, one of each coach, and whether other coaches of a club read it, too: they
/// would see that it was read, where the reader shows it. Nobody where whoever asks is not of the home, nor
/// whose sharing ended.
pub fn handed_over(page: &Page, lesson: &str) -> Option<(String, bool)> {
    if !is_home(page) {
        return None;
    }
    let all = still_read(page, seen(page));
    let practised =
        |talk: &Talk<'_>| talk.practice().is_some_and(|of| of.lessons.iter().any(|id| id.as_str() == lesson));
    let aimed = |talk: &Talk<'_>| {
        course(talk).is_some_and(|(course, _)| {
            course
                .weeks
                .iter()
                .flat_map(|week| &week.aims)
                .any(|aim| matches!(aim, Aim::Lesson { lesson: of } if of.as_str() == lesson))
        })
    };
    let by: Vec<&Talk<'_>> = all.iter().filter(|talk| practised(talk) || aimed(talk)).collect();
    let names: BTreeMap<_, String> =
        by.iter().map(|talk| (talk.part.from.account, talk.part.from.name.to_string())).collect();
    let names: Vec<String> = names.into_values().collect();
    (!names.is_empty()).then(|| (page.locale.and(&names), by.iter().any(|talk| club_reads(page, talk))))
}

/// After a rehearsal: one tap for each coach who handed something over to practise. Without it nobody sees anything.
pub fn share(page: &Page, setup: Setup, conduct: &Conduct, acts: &[Act]) -> Markup {
    let l = &page.locale;
    if !is_home(page) || !is_worth_sharing(conduct) {
        return html! {};
    }
    let all = still_read(page, seen(page));
    let mut open: BTreeMap<_, &Talk<'_>> = BTreeMap::new();
    // The newest of each coach stands for what was handed over before it.
    for talk in all.iter().filter(|t| t.practice().is_some()) {
        open.entry(talk.part.from.account).or_insert(talk);
    }
    html! {
        @for talk in open.values() {
            @let (name, club) = (&talk.part.from.name, club(page, talk));
            form.after method="post" action=(page.of_home("/talk/rehearsed")) data-test="share" {
                @for (field, value) in [("to", talk.id().to_string()), ("exercise", setup.exercise.name().to_owned()), ("character", setup.character.name().to_owned()), ("seed", setup.seed.to_string()), ("acts", written(acts))] {
                    input type="hidden" name=(field) value=(value);
                }
                p.hint { (say!(l, rehearse::share_what, name = name, club = club)) }
                button data-test="share-it" { (say!(l, rehearse::share, name = name, club = club)) }
            }
        }
    }
}

/// A home shares the figures of a rehearsal, worked out here from what was done: nobody can write in what was not.
pub async fn note(page: Page, typed: Typed) -> Result<Redirect, Error> {
    let typed = typed.only(&["to", "exercise", "character", "seed", "acts"])?;
    let to: EventId = named(typed.text("to"), "proposal")?;
    let all = seen(&page);
    let talk = all.iter().find(|t| t.id() == to && t.practice().is_some()).ok_or_else(no_such)?;
    let exercise = Exercise::named(typed.text("exercise")).ok_or_else(no_such)?;
    let character = Character::named(typed.text("character")).ok_or_else(no_such)?;
    let seed: u32 = typed.text("seed").parse().map_err(|_| no_such())?;
    let acts = read_acts(typed.text("acts"), exercise.most_ms()).map_err(|_| no_such())?;
    let run = play(Setup { seed: u64::from(seed), character, exercise }, &acts);
    let conduct = conduct(&run);
    if !is_worth_sharing(&conduct) {
        return Err(Error::refused("acts", words!(talk::nothing_to_share)));
    }
    let short = |name: &str| Label::new(name).map_err(|_| no_such());
    let rehearsed = Rehearsed {
        exercise: short(exercise.name())?,
        character: short(character.name())?,
        figures: figures(&conduct),
    };
    let by = page.leave.as_ref().and_then(Leave::answers_as);
    let answer = ProposalAnswer { to, reply: Reply::Said, text: None, by, rehearsed: Some(Box::new(rehearsed)) };
    let event = page.event(answer);
    page.keep(vec![Event { animal: talk.event.animal, ..event }]).await?;
    Ok(back_to(&page, to))
}
