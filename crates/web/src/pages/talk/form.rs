//! Markup of the coach's form: first what, then its fields.

use super::about::{read_about, said_about};
use super::change::fields as change;
use super::chosen::{KINDS, animal, is_resting, kind};
use super::plan::{fields as plan, words};
use super::practice::fields as practice;
use super::{open_now, passed_on};
use crate::fields::{area, day, line, number, select, summary, time};
use crate::layout::{Tab, layout};
use crate::leave::Leave;
use crate::page::Page;
use crate::typed::Typed;
use maud::{Markup, html};
use sayso_model::talks::{in_place, talks};
use sayso_model::{AnimalCard, AnimalId, Coach, FigurePage, ShortNote, Stage, TalkAbout};
use sayso_wording::events::stage;
use sayso_wording::say;
use sayso_wording::talk::about;

/// Sessions that a note can be about, newest first.
const SESSIONS: usize = 5;
/// What an address carries on from one step to the next.
const CARRIED: [&str; 3] = ["word", "about", "takes_up"];

/// The page: the choice, or the form of what was chosen.
pub fn page(page: &Page, leave: &Leave, typed: &Typed) -> Markup {
    let (l, animal) = (&page.locale, animal(page, typed));
    layout(
        page,
        Tab::None,
        &say!(l, talk::write),
        html! {
            (summary(typed))
            p { (say!(l, talk::write_intro, name = leave.name.as_str())) }
            p.note { (say!(l, talk::not_a_vet)) }
            @if leave.writes_for().is_some() { p.quiet data-test="club-reads" { (say!(l, talk::club_reads)) } }
            @for of in stands_in(page, leave) { p.quiet data-test="cover-reads" { (say!(l, talk::cover_reads, name = of)) } }
            @if let Some(animal) = &animal { (whose(page, typed, animal)) }
            @match kind(typed) {
                None => (choice(page, typed, animal.as_ref())),
                Some(kind) => (fields(page, typed, kind, animal.as_ref())),
            }
            p { a href=(page.of_home("/talk")) { (say!(l, talk::title)) } }
        },
    )
}

/// For whom whoever writes stands in now, of those to whom the home is open: they read it.
fn stands_in(page: &Page, leave: &Leave) -> Vec<String> {
    let (passed, open) = (passed_on(page, &talks(&page.story, page.now)), open_now(page));
    let away = in_place(&passed, (leave.who.account, page.now), &page.zone);
    let away = away.filter(|of| open.any_to(Coach::Account { account: of.from.account }));
    away.map(|of| of.from.name.to_string()).collect()
}

/// The address of a step, for an animal.
fn step(page: &Page, typed: &Typed, animal: Option<AnimalId>, what: Option<&str>) -> String {
    let mut more: Vec<(&str, String)> = Vec::new();
    more.extend(animal.map(|id| ("animal", id.to_string())));
    more.extend(what.map(|kind| ("what", kind.to_owned())));
    // What is taken up again says what it is: something else is something new.
    let carried = CARRIED.into_iter().filter(|name| what.is_some() || *name != "takes_up");
    let carried = carried.map(|name| (name, typed.text(name).to_owned()));
    more.extend(carried.filter(|(_, value)| !value.is_empty() && value.chars().all(is_plain)));
    page.of_home_with("/talk/write", &more)
}

/// Ids and names, which need no escape in an address.
const fn is_plain(c: char) -> bool {
    c.is_ascii_alphanumeric() || matches!(c, '-' | ':' | '_')
}

/// For which animal, where there are several.
fn whose(page: &Page, typed: &Typed, animal: &AnimalCard) -> Markup {
    let (l, all) = (&page.locale, page.animals());
    html! {
        @if all.len() > 1 {
            div.row data-test="whose" {
                strong { (say!(l, talk::with, name = animal.name.as_str())) }
                @for other in all.iter().filter(|a| a.animal != animal.animal) {
                    a.link href=(page.of_home_with("/talk/write", &[("animal", other.animal.to_string()), ("what", typed.text("what").to_owned())])) {
                        (say!(l, talk::instead, name = other.name.as_str()))
                    }
                }
            }
        }
    }
}

fn choice(page: &Page, typed: &Typed, animal: Option<&AnimalCard>) -> Markup {
    let l = &page.locale;
    let rests = animal.filter(|_| is_resting(page, "plan", animal));
    html! {
        @if let Some(animal) = rests { p.stop data-test="rests" { (say!(l, talk::rests, name = animal.name.as_str())) } }
        h2 { (say!(l, talk::which)) }
        ul.links {
            @for kind in KINDS.into_iter().filter(|kind| !is_resting(page, kind, animal)) {
                li { a href=(step(page, typed, animal.map(|a| a.animal), Some(kind))) data-test=(format!("write-{kind}")) { (say!(l, talk::kind, kind = kind)) } }
            }
        }
    }
}

fn fields(page: &Page, typed: &Typed, kind: &'static str, with: Option<&AnimalCard>) -> Markup {
    let l = &page.locale;
    let needs_word = matches!(kind, "plan" | "stage" | "check");
    let wordless = with.filter(|a| needs_word && page.story.words_of(a.animal).is_empty());
    let rests = with.filter(|_| is_resting(page, kind, with));
    html! {
        h2 { (say!(l, talk::kind, kind = kind)) }
        @if let Some(animal) = rests { p.stop data-test="rests" { (say!(l, talk::rests, name = animal.name.as_str())) } }
        @else if let Some(animal) = wordless { p { (say!(l, talk::no_words, name = animal.name.as_str())) } }
        @else {
            form method="post" action=(page.of_home("/talk/write")) .stack {
                input type="hidden" name="home" value=(page.home);
                input type="hidden" name="what" value=(kind);
                @if let Some(animal) = with { input type="hidden" name="animal" value=(animal.animal); }
                @if !typed.text("takes_up").is_empty() { input type="hidden" name="takes_up" value=(typed.text("takes_up")); }
                @if !typed.text("filled").is_empty() { p.hint data-test="filled" { (say!(l, talk::filled, by = typed.text("filled"))) } }
                (of_kind(page, typed, kind, with))
                @let hint = if matches!(kind, "note" | "question") { say!(l, talk::most, most = ShortNote::MOST) } else { say!(l, talk::if_you_like, most = ShortNote::MOST) };
                (area(typed, "text", &say!(l, talk::field_text), &hint))
                button.primary.wide data-test="send" { (say!(l, talk::send)) }
            }
        }
        p { a href=(step(page, typed, with.map(|a| a.animal), None)) { (say!(l, talk::something_else)) } }
    }
}

fn of_kind(page: &Page, typed: &Typed, kind: &str, with: Option<&AnimalCard>) -> Markup {
    let l = &page.locale;
    let word = || select(typed, "word", &say!(l, talk::field_word), "", &words(page, with));
    match kind {
        "plan" => plan(page, typed, with),
        "change" => change(page, typed, with),
        "stage" => {
            let mut stages = vec![(String::new(), String::new())];
            stages.extend(Stage::ALL.iter().map(|s| (s.name().to_owned(), stage(l, *s))));
            html! { (word()) (select(typed, "stage", &say!(l, talk::field_stage), "", &stages)) }
        }
        "word" => html! {
            (line(typed, "says", &say!(l, talk::field_says), &there(page, with), true))
            p { a.link href=(step(page, typed, with.map(|a| a.animal), Some("change"))) { (say!(l, talk::word_by_lot)) } }
        },
        "check" => word(),
        "practice" => practice(page, typed),
        "meeting" => html! {
            (day(typed, "day", &say!(l, talk::field_day), ""))
            (time(typed, "time", &say!(l, talk::field_time), &say!(l, talk::time_zone, zone = page.zone.name())))
            (number(typed, "minutes", &say!(l, talk::field_minutes), ""))
        },
        "note" | "question" => select(typed, "about", &say!(l, talk::field_about), "", &abouts(page, typed, with)),
        _ => html! {},
    }
}

/// What a word to add is, and which are there.
fn there(page: &Page, with: Option<&AnimalCard>) -> String {
    let own = with.map(|a| page.story.words_of(a.animal)).unwrap_or_default();
    let says: Vec<&str> = own.iter().map(|word| word.says.as_str()).collect();
    let l = &page.locale;
    if says.is_empty() { say!(l, talk::word_how_none) } else { say!(l, talk::word_how, words = l.names(&says)) }
}

/// What a note can be about.
fn abouts(page: &Page, typed: &Typed, with: Option<&AnimalCard>) -> Vec<(String, String)> {
    let l = &page.locale;
    // A chart is chosen where it is looked at.
    let charts = read_about(&page.story, typed.text("about"));
    let charts = charts.filter(|a| matches!(a, TalkAbout::WordChart { .. } | TalkAbout::DaysChart { .. }));
    let mut all: Vec<TalkAbout> = charts.into_iter().collect();
    if let Some(animal) = with {
        all.extend(page.story.words_of(animal.animal).iter().map(|w| TalkAbout::Word { word: w.word }));
        all.extend(FigurePage::ALL.iter().map(|page| TalkAbout::Page { page: *page }));
        let sessions = page.story.sessions(animal.animal);
        all.extend(sessions.iter().rev().take(SESSIONS).map(|s| TalkAbout::Session { session: s.id() }));
    }
    let mut options = vec![(String::new(), say!(l, talk::about_all))];
    options.extend(all.iter().map(|of| (said_about(of), about(l, &page.story, of))));
    options
}
