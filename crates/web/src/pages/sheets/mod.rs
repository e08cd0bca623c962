//! Things to print: rules of the house, labels, likes, and a report of an animal's progress.

mod labels;
mod likes;
mod progress;
mod report;
mod rules;

use crate::layout::{Tab, layout, layout_with};
use crate::page::Page;
use crate::state::AppState;
use axum::Router;
use axum::routing::get;
use maud::{Markup, html};

/// Routes of the pages.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/sheets", get(show))
        .route("/sheets/rules", get(rules::show))
        .route("/sheets/labels", get(labels::show))
        .route("/sheets/{animal}/progress", get(progress::show))
        .route("/sheets/{animal}/likes", get(likes::show))
}

async fn show(page: Page) -> Markup {
    layout(
        &page,
        Tab::Sheets,
        "Sheets",
        html! {
            p { "Each prints on A4 or Letter, without the menus." }
            section.card {
                h2 { "For the fridge" }
                p { "What each word means, how everyone answers it, what everyone says for \u{201c}not now\u{201d}, and the rules of the house." }
                p { a.button.primary href="/sheets/rules" { "House rules" } }
            }
            section.card {
                h2 { "For the buttons" }
                p { "Plain labels with the word." }
                p { a.button href="/sheets/labels" { "Labels" } }
            }
            @for l in page.animals() {
                section.card {
                    h2 { (l.name.as_str()) }
                    p { "For the family, a veterinarian or a behaviour professional." }
                    p.row { a.button href=(format!("/sheets/{}/progress", l.animal)) { "Progress report" }
                        a.button href=(format!("/sheets/{}/likes", l.animal)) { "What it likes" } }
                }
            }
        },
    )
}

/// A sheet in the page's frame, with a button that prints it where the browser can.
fn sheet(page: &Page, title: &str, body: Markup) -> Markup {
    layout_with(
        page,
        Tab::Sheets,
        title,
        &["client/print.js"],
        html! {
            div.row.noprint {
                button type="button" .primary data-print hidden { "Print" }
                span.quiet { "or print from the browser\u{2019}s menu" }
                a.button href="/sheets" { "All sheets" }
            }
            article.print-sheet {
                (body)
                footer.quiet { "Sayso · " (page.story.home().map_or("", |h| h.name.as_str())) " · " (page.now.day(&page.zone)) }
            }
        },
    )
}
