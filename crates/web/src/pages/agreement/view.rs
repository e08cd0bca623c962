//! Markup of the agreement page.

use crate::fields::{select, summary, tick};
use crate::layout::{Tab, layout};
use crate::page::Page;
use crate::typed::Typed;
use maud::{Markup, html};
use sayso_advisor::agreement::Agreement;

/// Form and, once there are scores, what they say.
pub fn page(page: &Page, typed: &Typed, found: Option<&Agreement>) -> Markup {
    let scales = [
        ("names", "names, such as press and brush"),
        ("steps", "numbers of which only the order counts, such as 1 calm to 3 tense"),
        ("numbers", "numbers whose differences count, such as seconds"),
    ]
    .map(|(v, t)| (v.to_owned(), t.to_owned()));
    let wrong = typed.problem("scores");
    let body = html! {
        (summary(typed))
        @if let Some(a) = found { (result(a)) }
        p { "Two people watch the same film, each alone, and write down what they see. What they write tells whether the "
            "figures of this notebook would come out alike whoever taps." }
        form.stack method="post" action="/agreement" {
            div.field {
                label for="scores" { "Scores" }
                span #scores-hint .hint { "A line for each thing scored, a column for each person, parted by commas: press,brush. Leave a column empty where somebody gave no score." }
                @if let Some(what) = wrong { span #scores-wrong .wrong { "Scores: " (what) "." } }
                textarea #scores name="scores" rows="10" required spellcheck="false" autocapitalize="off"
                    aria-invalid=[wrong.map(|_| "true")] aria-describedby="scores-hint" { (typed.text("scores")) }
            }
            (select(typed, "scale", "What the scores are", "", &scales))
            (tick(typed, "headed", "The first line holds the people's names"))
            button.primary.wide { "Compare" }
        }
        p.quiet { "Nothing of this is stored. " a href="/methods/agreement" { "How it is computed" } "." }
    };
    layout(page, Tab::None, "Do we see the same?", body)
}

fn result(a: &Agreement) -> Markup {
    html! {
        section.card aria-label="What the scores say" data-test="agreement" {
            p { strong { (a.sentence) } }
            dl {
                @if let Some(alike) = &a.alike { dt { "Scored alike" } dd { (alike) } }
                @if let Some(kappa) = &a.kappa { dt { "Cohen's kappa" } dd { (kappa) } }
                dt { "Krippendorff's alpha" } dd { (a.alpha) }
                dt { "Scored by at least two of " (a.people.len()) " people" } dd { (a.shared) }
            }
            @if !a.differing.is_empty() {
                p { "Most often taken differently:" }
                ul { @for d in &a.differing {
                    li { (a.people[0]) " " q { (d.first) } ", " (a.people[1]) " " q { (d.second) } ": " (d.n) " times" }
                } }
            }
            p.quiet { "What would change it: " (a.would_change) "." }
        }
    }
}
