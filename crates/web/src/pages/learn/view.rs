//! Markup of the list of lessons and of one lesson. The self-check unfolds in the browser: it needs no script and no answer
//! of the notebook.

use super::drawings::drawing;
use super::{address, marks};
use crate::layout::{Tab, layout};
use crate::page::Page;
use crate::pages::rehearse;
use crate::pages::talk::handed_over;
use maud::{Markup, html};
use sayso_model::facts::{self, Lesson};
use sayso_model::{AnimalCard, AnimalId, PersonId, Stage};
use sayso_people::Capability;
use sayso_wording::lessons::{Asked, Told, title, told};
use sayso_wording::{Locale, say};

/// Whom the lessons are about: the animal of the address, else the only one that lives here.
pub struct About {
    /// Its name, where it is known.
    pub name: Option<String>,
    /// The animal of the address.
    pub animal: Option<AnimalId>,
}

impl About {
    /// As the address asks; an animal that is not of this home counts as not asked.
    pub fn asked(page: &Page, animal: &str) -> Self {
        let all = page.animals();
        let of_address = animal.parse::<AnimalId>().ok().filter(|id| all.iter().any(|a| a.animal == *id));
        let named = |id: AnimalId| all.iter().find(|a| a.animal == id);
        let only = || if let [one] = all.as_slice() { Some(one) } else { None };
        let card: Option<&AnimalCard> = of_address.and_then(named).or_else(only);
        Self { name: card.map(|c| c.name.to_string()), animal: of_address }
    }
}

/// All lessons, by the stage of the work.
pub fn list(page: &Page, about: &About) -> Markup {
    let l = &page.locale;
    layout(
        page,
        Tab::Learn,
        &say!(l, lessons::title),
        html! {
            p { (say!(l, lessons::intro)) }
            p { a.button href=(page.of_home(rehearse::REHEARSE)) data-test="rehearse" { (say!(l, rehearse::title)) } span.hint { (say!(l, rehearse::intro)) } }
            @for stage in Stage::ALL {
                section {
                    h2 { (say!(l, lessons::stage, stage = stage.name())) }
                    ul.plain { @for lesson in facts::lessons().iter().filter(|lesson| lesson.stage == stage) { (line(page, about, lesson)) } }
                }
            }
            (say_who(page))
            p { (say!(l, lessons::booklet_what)) " " (say!(l, lessons::booklet_file)) }
            p { a.button href=(address::about(page, address::BOOKLET, about.animal)) data-test="booklet" { (say!(l, lessons::booklet)) } }
        },
    )
}

fn line(page: &Page, about: &About, lesson: &Lesson) -> Markup {
    let l = &page.locale;
    let Told { title, short, .. } = told(l, lesson, about.name.as_deref());
    html! {
        li.line data-test=(format!("lesson-{}", lesson.id)) {
            div {
                a.link href=(address::about(page, &address::lesson(&lesson.id), about.animal)) { (title) }
                span.hint { (short) }
                (readers(page, lesson))
            }
        }
    }
}

/// Who has read it, for people of the home; for others only whether they have.
fn readers(page: &Page, lesson: &Lesson) -> Markup {
    let marks = marks::of(&page.story, &lesson.id);
    let seen = |person: &PersonId| page.may(Capability::SeePeople) || Some(*person) == page.person;
    let people = page.people();
    let names: Vec<&str> =
        people.iter().filter(|p| marks.contains_key(&p.person) && seen(&p.person)).map(|p| p.name.as_str()).collect();
    html! { @if !names.is_empty() { span.hint data-test="read-by" { (say!(&page.locale, lessons::read_by, names = page.locale.and(&names))) } } }
}

/// Whose marks they would be is asked where this device does not know it.
fn say_who(page: &Page) -> Markup {
    html! {
        @if page.person.is_none() && !page.is_of_no_home() && page.may(Capability::RecordForOthers) {
            p { a.link href=(format!("/who?back={}", page.path)) { (say!(&page.locale, lessons::say_who)) } }
        }
    }
}

/// One lesson.
pub fn lesson(page: &Page, about: &About, lesson: &'static Lesson) -> Markup {
    let l = &page.locale;
    let told = told(l, lesson, about.name.as_deref());
    layout(
        page,
        Tab::Learn,
        &told.title,
        html! {
            (body(l, lesson, &told))
            h2 { (say!(l, lessons::two_questions)) }
            p.hint { (say!(l, lessons::how)) }
            @for (i, asked) in told.questions.iter().enumerate() { (question(i + 1, asked)) }
            (practised(page, lesson))
            (rests_on(l, &told))
            (mark(page, about, lesson))
            (around(page, about, lesson))
        },
    )
}

/// What a lesson says, without its questions.
pub fn body(l: &Locale, lesson: &Lesson, told: &Told) -> Markup {
    html! {
        p.lead { (told.short) }
        (drawing(&lesson.id, &told.drawing))
        h2 { (say!(l, lessons::what_to_do)) }
        ol { @for step in &told.steps { li { (step) } } }
        @if !told.signs.is_empty() {
            h2 { (say!(l, lessons::signs)) }
            ul data-test="signs" { @for signs in &told.signs { li { (signs) } } }
        }
        p.caution { strong { (say!(l, lessons::take_care)) } " " (told.care) }
        h2 { (say!(l, lessons::mistake)) }
        p { (told.mistake) }
        @if let Some(unknown) = &told.unknown {
            h2 { (say!(l, lessons::not_known)) }
            p { (unknown) }
        }
    }
}

fn question(number: usize, asked: &Asked) -> Markup {
    html! {
        section.check data-test=(format!("question-{number}")) {
            h3 { (asked.question) }
            @for answer in &asked.answers {
                details.answer name=(format!("question-{number}")) data-right=(yes(answer.right)) {
                    summary { (answer.says) }
                    p { (answer.why) }
                }
            }
        }
    }
}

/// The way to where it is practised on a simulated animal.
fn practised(page: &Page, lesson: &Lesson) -> Markup {
    let l = &page.locale;
    html! {
        @if let Some(exercise) = rehearse::for_lesson(&lesson.id) {
            p { a.link href=(rehearse::link(page, exercise)) data-test="practise" { (say!(l, rehearse::practise, title = say!(l, rehearse::exercise, which = exercise.name()))) } }
        }
    }
}

fn rests_on(l: &Locale, told: &Told) -> Markup {
    html! {
        details.after data-test="rests-on" {
            summary { (say!(l, lessons::rests_on)) }
            (sources(l, told))
        }
    }
}

/// What it rests on, and that the rest has no source.
pub fn sources(l: &Locale, told: &Told) -> Markup {
    html! {
        ul { @for fact in &told.rests_on { li { (fact) } } }
        p { (say!(l, lessons::rest)) }
    }
}

fn mark(page: &Page, about: &About, lesson: &Lesson) -> Markup {
    let l = &page.locale;
    let Some(me) = page.person else { return say_who(page) };
    let to = address::about(page, &address::lesson(&lesson.id), about.animal);
    let read = marks::of(&page.story, &lesson.id).remove(&me);
    html! {
        @if page.may(Capability::Record) {
            @let coach = handed_over(page, &lesson.id);
            form method="post" action=(to) data-test="mark" {
                @match &read {
                    Some(mark) => {
                        p.row {
                            span data-test="read" { (say!(l, lessons::read_on, day = l.date(mark.at.day(&page.zone)))) }
                            button name="read" value="no" data-test="unmark" { (say!(l, lessons::unmark)) }
                        }
                        @if let Some((names, club)) = &coach { (shows(l, mark.shown, names, *club)) }
                    }
                    None => {
                        @if let Some((names, club)) = &coach {
                            label.tick { input type="checkbox" name="show" value="yes" data-test="show-coach" autocomplete="off"; span { (say!(l, lessons::show_coach, name = names, club = yes(*club))) } }
                        }
                        button.primary.wide name="read" value="yes" data-test="mark-read" { (say!(l, lessons::mark)) }
                    }
                }
                @if coach.is_some() { p.hint data-test="shows-what" { (say!(l, lessons::shows_what)) } }
            }
        }
    }
}

const fn yes(is: bool) -> &'static str {
    if is { "yes" } else { "no" }
}

/// Whether coaches see a mark, and the tap that changes it.
fn shows(l: &Locale, shown: bool, name: &str, club: bool) -> Markup {
    html! {
        p.row data-test="shown" data-shown=(yes(shown)) {
            @if shown {
                span { (say!(l, lessons::coach_sees, name = name, club = yes(club))) }
                button name="show" value="no" data-test="hide-coach" { (say!(l, lessons::hide_coach)) }
            } @else {
                button name="show" value="yes" data-test="show-coach" { (say!(l, lessons::show_coach, name = name, club = yes(club))) }
            }
        }
    }
}

/// The lessons before and after it.
fn around(page: &Page, about: &About, lesson: &'static Lesson) -> Markup {
    let (l, all) = (&page.locale, facts::lessons());
    let place = all.iter().position(|other| other.id == lesson.id).unwrap_or(0);
    let (before, after) = (place.checked_sub(1).and_then(|i| all.get(i)), all.get(place + 1));
    let named = |lesson: &Lesson| title(l, lesson, about.name.as_deref());
    let to = |lesson: &Lesson| address::about(page, &address::lesson(&lesson.id), about.animal);
    html! {
        nav.stack.after aria-label=(say!(l, lessons::all)) {
            @if let Some(next) = after { a.link href=(to(next)) rel="next" data-test="next-lesson" { (say!(l, lessons::next, title = named(next))) } }
            @if let Some(previous) = before { a.link href=(to(previous)) rel="prev" { (say!(l, lessons::previous, title = named(previous))) } }
            a.link href=(address::about(page, address::LEARN, about.animal)) { (say!(l, lessons::all)) }
        }
    }
}
