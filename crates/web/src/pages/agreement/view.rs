//! Markup of the agreement page.

use super::picked::{Picked, all, name};
use crate::fields::{select, summary, tick};
use crate::layout::{Tab, layout};
use crate::page::Page;
use crate::rich;
use crate::typed::Typed;
use maud::{Markup, html};
use sayso_advisor::agreement::{Agreement, WITHIN_S};
use sayso_wording::agreement::{figure, sentence};
use sayso_wording::figures::finding;
use sayso_wording::{Locale, say};

/// What both noted, the form for scores, and, once there is something to compare, what it says.
pub fn page(page: &Page, typed: &Typed, picked: Option<&Picked>, found: Option<&Agreement>) -> Markup {
    let locale = &page.locale;
    let pasted = found.is_some() || !typed.right();
    let body = html! {
        (summary(typed))
        @if let Some(a) = found.or(picked.map(|p| &p.found)) { div data-part="figures" { (result(locale, a)) } }
        @if let Some(p) = picked { (groups(page, p)) }
        p { (say!(locale, agreement::intro)) }
        (records(page, picked))
        details open[pasted] {
            summary data-test="paste" { (say!(locale, agreement::paste)) }
            (paste(locale, typed))
        }
    };
    layout(page, Tab::None, &say!(locale, agreement::title), body)
}

/// Pairs of people to pick from.
fn records(page: &Page, picked: Option<&Picked>) -> Markup {
    let (locale, pairs) = (&page.locale, all(page));
    html! {
        h2 { (say!(locale, agreement::records)) }
        @if pairs.is_empty() { p { (say!(locale, agreement::no_records)) } }
        @else {
            ul.links {
                @for p in &pairs {
                    @let [first, second] = p.people;
                    @let shown = picked.is_some_and(|x| (x.animal, x.noted, x.people) == (p.animal.animal, p.noted, p.people));
                    li {
                        a href=(format!("/agreement?animal={}&noted={}&first={first}&second={second}", p.animal.animal, p.noted.name()))
                            data-test="pair" aria-current=[shown.then_some("true")] {
                            (say!(locale, agreement::pair, first = name(page, first), second = name(page, second), animal = &p.animal.name, kind = p.noted.name(), n = p.n))
                        }
                    }
                }
            }
        }
    }
}

/// Which sessions or checks are compared, to be chosen from.
fn groups(page: &Page, p: &Picked) -> Markup {
    let (locale, today) = (&page.locale, page.now.day(&page.zone));
    let seconds = locale.set_seconds(WITHIN_S);
    let none = say!(locale, agreement::not_noted);
    html! {
        p.quiet { (say!(locale, agreement::paired, kind = p.noted.name(), seconds = seconds, none = none)) }
        @if p.groups.len() > 1 {
            details {
                summary { (say!(locale, agreement::which)) }
                form.stack method="get" action="/agreement" {
                    @for (field, value) in [("animal", p.animal.to_string()), ("noted", p.noted.name().to_owned()), ("first", p.people[0].to_string()), ("second", p.people[1].to_string())] {
                        input type="hidden" name=(field) value=(value);
                    }
                    fieldset {
                        legend { (say!(locale, agreement::which)) }
                        @for (b, taken) in &p.groups {
                            @let when = say!(locale, log::when, day = locale.day_near(b.at.day(&page.zone), today), time = locale.time(b.at, &page.zone));
                            label { input type="checkbox" name="of" value=(b.id) checked[*taken];
                                span { (say!(locale, agreement::group, kind = p.noted.name(), when = when, n = b.marks.len())) } }
                        }
                    }
                    button.wide { (say!(locale, agreement::compare_these)) }
                }
            }
        }
    }
}

fn paste(locale: &Locale, typed: &Typed) -> Markup {
    let scales = [
        ("names", say!(locale, agreement::scale_names)),
        ("steps", say!(locale, agreement::scale_steps)),
        ("numbers", say!(locale, agreement::scale_numbers)),
    ]
    .map(|(v, t)| (v.to_owned(), t));
    let wrong = typed.problem("scores");
    let link = html! { a href="/methods/agreement" { (say!(locale, agreement::how_computed)) } };
    html! {
        p { (say!(locale, agreement::paste_intro)) }
        form.stack method="post" action="/agreement" {
            div.field {
                label for="scores" { (say!(locale, agreement::scores)) }
                span #scores-hint .hint { (say!(locale, agreement::scores_hint)) }
                @if let Some(what) = &wrong { span #scores-wrong .wrong { (say!(locale, agreement::scores_wrong, what = what)) } }
                textarea #scores name="scores" rows="10" required spellcheck="false" autocapitalize="off"
                    aria-invalid=[wrong.as_ref().map(|_| "true")] aria-describedby="scores-hint" { (typed.text("scores")) }
            }
            (select(typed, "scale", &say!(locale, agreement::scale), "", &scales))
            (tick(typed, "headed", &say!(locale, agreement::headed)))
            button.primary.wide { (say!(locale, agreement::compare)) }
        }
        p.quiet { (rich!(locale, agreement::not_stored, link = link)) }
    }
}

fn result(locale: &Locale, a: &Agreement) -> Markup {
    html! {
        section.card aria-label=(say!(locale, agreement::what_scores_say)) data-test="agreement" {
            p { strong { (sentence(locale, a)) } }
            dl.facts {
                @if let Some(alike) = &a.alike { dt { (say!(locale, agreement::scored_alike)) } dd { (finding(locale, alike)) } }
                @if let Some(kappa) = &a.kappa { dt { (say!(locale, agreement::kappa)) } dd { (figure(locale, kappa)) } }
                dt { (say!(locale, agreement::alpha)) } dd { (figure(locale, &a.alpha)) }
                dt { (say!(locale, agreement::shared, people = a.people.len())) } dd { (a.shared) }
            }
            @if let ([one, two, ..], false) = (a.people.as_slice(), a.differing.is_empty()) {
                p { (say!(locale, agreement::differing)) }
                ul { @for d in &a.differing {
                    li { (say!(locale, agreement::differs, one = one, first = &d.first, two = two, second = &d.second, n = d.n)) }
                } }
            }
            p.quiet { (say!(locale, agreement::would_change)) }
        }
    }
}
