//! All lessons on one page, to print or to keep: what speaks for or against the answers stands at the end.

use super::address;
use super::view::{About, body, sources};
use crate::layout::{Tab, layout_with};
use crate::page::Page;
use crate::pages::sheets::files;
use maud::{Markup, html};
use sayso_model::facts;
use sayso_wording::lessons::{Told, told};
use sayso_wording::{Locale, say};

/// The booklet.
pub fn view(page: &Page, about: &About) -> Markup {
    let l = &page.locale;
    let all: Vec<_> = facts::lessons().iter().map(|lesson| (lesson, told(l, lesson, about.name.as_deref()))).collect();
    layout_with(
        page,
        Tab::Learn,
        &say!(l, lessons::booklet),
        &["client/print.js"],
        html! {
            (files(page, address::BOOKLET, "", &html! { a.button href=(address::about(page, address::LEARN, about.animal)) { (say!(l, lessons::all)) } }))
            p.hint.noprint data-test="file-without" { (say!(l, lessons::booklet_file)) }
            @for (lesson, told) in &all {
                article.booklet id=(lesson.id) {
                    h2.title { (told.title) }
                    (body(l, lesson, told))
                    h2 { (say!(l, lessons::two_questions)) }
                    @for (i, asked) in told.questions.iter().enumerate() {
                        p { strong { (say!(l, lessons::question, number = i + 1)) } " " (asked.question) }
                        ol type="a" { @for answer in &asked.answers { li { (answer.says) } } }
                    }
                    h2 { (say!(l, lessons::rests_on)) }
                    div.quiet { (sources(l, told)) }
                }
            }
            section.booklet #answers {
                h2.title { (say!(l, lessons::answers)) }
                @for (_, told) in &all { (answers(l, told)) }
            }
        },
    )
}

fn answers(l: &Locale, told: &Told) -> Markup {
    html! {
        h3 { (told.title) }
        @for (i, asked) in told.questions.iter().enumerate() {
            p { (say!(l, lessons::question, number = i + 1)) }
            ol type="a" { @for answer in &asked.answers { li { (answer.why) } } }
        }
    }
}
