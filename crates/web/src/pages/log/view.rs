use super::fix::Fixable;
use super::line::{how, when, who};
use super::{address, ahead};
use crate::fields;
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::typed::Typed;
use crate::wording::{self, in_words};
use maud::{Markup, html};
use sayso_model::{Accident, Answer, Event, EventId, Key, PressedBy, SignLevel, Then};

/// Which part of the log a page shows.
pub struct Part {
    /// Whether there are newer events.
    pub newer: bool,
    /// Before which place older ones stand, if there are any.
    pub more: Option<Key>,
    /// The event asked for.
    pub shown: Option<EventId>,
}

/// The page.
pub fn view(page: &AnimalPage, events: &[&Event], part: &Part) -> Markup {
    layout(
        page,
        Tab::Log,
        "Log",
        html! {
            p { a.link href=(format!("/l/{}/heard", page.id)) { "Judge presses a microphone heard" } }
            p { "Everything noted for " (page.card.name.as_str()) ", newest first. Nothing is ever erased: what is taken back or put right keeps its first record." }
            (ahead(page))
            @if part.newer { p { a.button href=(format!("/l/{}/log", page.id)) { "Newest" } } }
            @if events.is_empty() { p { "Nothing is noted yet." } }
            ol.log {
                @for e in events { (entry(page, e, part.shown == Some(e.id))) }
            }
            @if let Some((before, id)) = part.more {
                p { a.button href=(format!("/l/{}/log?before={before}&id={id}", page.id)) { "Older" } }
            }
        },
    )
}

fn entry(page: &AnimalPage, first: &Event, shown: bool) -> Markup {
    let story = &page.story;
    let now = story.ledger().standing(first.id);
    let now = now.as_deref();
    let changed = now.is_some_and(|n| n.body != first.body || n.happened_at != first.happened_at);
    // Each control says of which entry it is: heard one after the other they would else all be the same.
    let of = html! { span.unseen { ": " (in_words(story, &now.unwrap_or(first).body)) ", " (when(page, now.unwrap_or(first).happened_at)) } };
    html! {
        li #(format!("e{}", first.id)) aria-current=[shown.then_some("true")] data-test="log-entry" data-state=(if now.is_none() { "withdrawn" } else if changed { "corrected" } else { "standing" }) {
            div.what {
                @match now {
                    None => { p { strong { "Taken back: " } s { (in_words(story, &first.body)) } } }
                    Some(n) if changed => {
                        p { (in_words(story, &n.body)) }
                        p.quiet { "Put right. First noted: " (in_words(story, &first.body)) ", " (when(page, first.happened_at)) }
                    }
                    Some(n) => { p { (in_words(story, &n.body)) } }
                }
                p.quiet { (when(page, now.unwrap_or(first).happened_at)) (who(page, first)) (how(first.source)) @if story.same_press(first.id).is_some() { "; tapped too, so it counts once" } }
            }
            div.row.noprint {
                @if now.is_some() {
                    a.button href=(format!("/l/{}/log/{}", page.id, first.id)) data-test="log-fix" { "Put right" (of) }
                    form method="post" action=(format!("/l/{}/log/withdraw", page.id)) {
                        button name="of" value=(first.id) data-test="log-withdraw" { "Take back" (of) }
                    }
                } @else {
                    form method="post" action=(format!("/l/{}/log/bring-back", page.id)) {
                        button name="of" value=(first.id) data-test="log-bring-back" { "Bring back" (of) }
                    }
                }
            }
        }
    }
}

fn options<T: Copy>(
    all: &[T],
    named: impl Fn(T) -> &'static str,
    words: impl Fn(T) -> &'static str,
) -> Vec<(String, String)> {
    all.iter().map(|v| (named(*v).to_owned(), words(*v).to_owned())).collect()
}

/// The form for one event.
pub fn edit(page: &AnimalPage, event: &Event, typed: &Typed) -> Markup {
    let fixable = Fixable::of(&event.body);
    let select =
        |name: &str, label: &str, options: &[(String, String)]| fields::select(typed, name, label, "", options);
    layout(
        page,
        Tab::Log,
        "Put right",
        html! {
            p { (in_words(&page.story, &event.body)) }
            (fields::summary(typed))
            form method="post" action=(format!("/l/{}/log/{}", page.id, event.id)) .stack {
                (fields::day(typed, "day", "Day", ""))
                div.field {
                    label for="time" { "Time" span.hint { "in " (page.zone.name()) } }
                    input #time name="time" type="time" step="1" value=(typed.text("time")) required;
                    @if let Some(what) = typed.problem("time") { span.wrong { "Time " (what) "." } }
                }
                @if fixable.word().is_some() { (select("word", "Word", &words(page))) }
                @match fixable {
                    Fixable::Press(_) => {
                        (select("by", "Who pressed", &options(PressedBy::ALL, PressedBy::name, by)))
                        (select("accident", "Did it look meant?", &options(Accident::ALL, Accident::name, accident)))
                    }
                    Fixable::Delivery(_) => {
                        (select("answer", "How it was answered", &options(Answer::ALL, Answer::name, wording::answer)))
                        (select("then", "What it did then", &with_open(options(Then::ALL, Then::name, wording::then))))
                    }
                    Fixable::Sign(_) => (select("level", "How strong", &options(SignLevel::ALL, SignLevel::name, wording::level))),
                    Fixable::Invitation(_) => (select("took", "Did it take the thing?", &with_open(vec![("yes".into(), "yes".into()), ("no".into(), "no".into())]))),
                    Fixable::Brush(_) | Fixable::Catch(_) | Fixable::Look(_) | Fixable::TimeOnly => {}
                }
                button.primary.wide data-test="log-save" { "Put right" }
            }
            p { a href=(address(page.id, event.id)) { "Back to the log" } }
        },
    )
}

fn with_open(mut options: Vec<(String, String)>) -> Vec<(String, String)> {
    options.insert(0, (String::new(), "not seen".into()));
    options
}

fn words(page: &AnimalPage) -> Vec<(String, String)> {
    page.story.words().into_values().map(|w| (w.word.to_string(), w.says.to_string())).collect()
}

const fn by(by: PressedBy) -> &'static str {
    match by {
        PressedBy::Animal => "the animal",
        PressedBy::Person => "a person, to show",
        PressedBy::Unknown => "nobody saw",
    }
}

const fn accident(accident: Accident) -> &'static str {
    match accident {
        Accident::No => "it looked meant",
        Accident::Likely => "it looked like a stumble",
        Accident::Unsure => "cannot tell",
    }
}
