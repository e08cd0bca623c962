//! Fields of forms: label, hint, what was typed, and what is wrong with it, tied together for screen readers.

use crate::typed::Typed;
use maud::{Markup, html};
use sayso_model::{Label, Note};
use sayso_wording::{Locale, faults, say};

fn described(typed: &Typed, name: &str, hint: &str) -> Option<String> {
    let mut ids = Vec::new();
    if typed.problem(name).is_some() {
        ids.push(format!("{name}-wrong"));
    }
    if !hint.is_empty() {
        ids.push(format!("{name}-hint"));
    }
    (!ids.is_empty()).then(|| ids.join(" "))
}

fn head(typed: &Typed, name: &str, label: &str, hint: &str) -> Markup {
    html! {
        label for=(name) { (label) }
        (below(typed, name, hint))
    }
}

fn below(typed: &Typed, name: &str, hint: &str) -> Markup {
    html! {
        @if !hint.is_empty() { span.hint id=(format!("{name}-hint")) { (hint) } }
        @if let Some(what) = typed.sentence(name) { span.wrong id=(format!("{name}-wrong")) { (what) } }
    }
}

/// A field's name as words.
#[must_use]
pub fn label_of(name: &str) -> String {
    let mut words = name.replace('_', " ");
    if let Some(first) = words.get_mut(0..1) {
        first.make_ascii_uppercase();
    }
    words
}

/// A needed or optional line of text.
#[must_use]
pub fn line(typed: &Typed, name: &str, label: &str, hint: &str, required: bool) -> Markup {
    text(typed, name, label, hint, (required, false))
}

/// A needed line that has the focus once the page is there: for a form that is asked for again and again.
#[must_use]
pub fn first_line(typed: &Typed, name: &str, label: &str, hint: &str) -> Markup {
    text(typed, name, label, hint, (true, true))
}

fn text(typed: &Typed, name: &str, label: &str, hint: &str, (required, focused): (bool, bool)) -> Markup {
    html! {
        div.field {
            (head(typed, name, label, hint))
            input id=(name) name=(name) value=(typed.text(name)) maxlength=(Label::MOST) autocomplete="off"
                required[required] autofocus[focused] aria-invalid=[typed.problem(name).map(|_| "true")] aria-describedby=[described(typed, name, hint)];
        }
    }
}

/// A number: the number pad opens on a phone; commas and points are both read.
#[must_use]
pub fn number(typed: &Typed, name: &str, label: &str, hint: &str) -> Markup {
    html! {
        div.field {
            (head(typed, name, label, hint))
            input id=(name) name=(name) value=(typed.text(name)) inputmode="decimal" maxlength="12" autocomplete="off"
                aria-invalid=[typed.problem(name).map(|_| "true")] aria-describedby=[described(typed, name, hint)];
        }
    }
}

/// A calendar day.
#[must_use]
pub fn day(typed: &Typed, name: &str, label: &str, hint: &str) -> Markup {
    picked(typed, "date", name, label, hint)
}

/// A time of day.
#[must_use]
pub fn time(typed: &Typed, name: &str, label: &str, hint: &str) -> Markup {
    picked(typed, "time", name, label, hint)
}

/// What the browser has its own way to pick.
fn picked(typed: &Typed, kind: &str, name: &str, label: &str, hint: &str) -> Markup {
    html! {
        div.field {
            (head(typed, name, label, hint))
            input id=(name) name=(name) type=(kind) value=(typed.text(name))
                aria-invalid=[typed.problem(name).map(|_| "true")] aria-describedby=[described(typed, name, hint)];
        }
    }
}

/// Several lines.
#[must_use]
pub fn area(typed: &Typed, name: &str, label: &str, hint: &str) -> Markup {
    html! {
        div.field {
            (head(typed, name, label, hint))
            textarea id=(name) name=(name) rows="3" maxlength=(Note::MOST)
                aria-invalid=[typed.problem(name).map(|_| "true")] aria-describedby=[described(typed, name, hint)] { (typed.text(name)) }
        }
    }
}

/// One of several; options are value and text.
#[must_use]
pub fn select(typed: &Typed, name: &str, label: &str, hint: &str, options: &[(String, String)]) -> Markup {
    html! {
        div.field {
            (head(typed, name, label, hint))
            select id=(name) name=(name) aria-invalid=[typed.problem(name).map(|_| "true")] aria-describedby=[described(typed, name, hint)] {
                @for (value, text) in options { option value=(value) selected[typed.text(name) == value] { (text) } }
            }
        }
    }
}

/// A box to tick.
#[must_use]
pub fn tick(typed: &Typed, name: &str, label: &str) -> Markup {
    html! {
        label { input type="checkbox" name=(name) value="yes" checked[typed.ticked(name)]; span { (label) } }
        (below(typed, name, ""))
    }
}

/// Several boxes under one name.
#[must_use]
pub fn ticks(typed: &Typed, name: &str, legend: &str, hint: &str, options: &[(String, Markup)]) -> Markup {
    html! {
        fieldset id=(name) aria-describedby=[described(typed, name, hint)] {
            legend { (legend) }
            (below(typed, name, hint))
            @for (value, text) in options {
                label { input type="checkbox" name=(name) value=(value) checked[typed.all(name).any(|v| v == value)]; span { (text) } }
            }
        }
    }
}

/// One of several, all in sight.
#[must_use]
pub fn radios(typed: &Typed, name: &str, legend: &str, hint: &str, options: &[(String, Markup)]) -> Markup {
    html! {
        fieldset id=(name) aria-describedby=[described(typed, name, hint)] {
            legend { (legend) }
            (below(typed, name, hint))
            @for (value, text) in options {
                label { input type="radio" name=(name) value=(value) required checked[typed.text(name) == value]; span { (text) } }
            }
        }
    }
}

/// The script by which a form that had to wait for its sender to show who they are stands there again as it was sent.
pub const AGAIN: &str = "client/again.js";

/// What that script shows then.
#[must_use]
pub fn sent_again(l: &Locale) -> Markup {
    html! { p.caution role="status" data-again data-test="again" hidden { (say!(l, faults::sent_again)) } }
}

/// Everything wrong, at the top of a form shown again, each leading to its field.
#[must_use]
pub fn summary(typed: &Typed) -> Markup {
    html! {
        @if !typed.right() {
            div.caution role="alert" tabindex="-1" {
                strong { (say!(typed.reader(), faults::not_kept)) } " " (say!(typed.reader(), faults::put_right))
                ul { @for p in typed.problems() { li { a href=(format!("#{}", p.field)) { (faults::at(typed.reader(), &p.field, &p.what)) } } } }
            }
        }
    }
}
