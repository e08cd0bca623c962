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
use sayso_wording::say;

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
    let l = &page.locale;
    layout(
        &page,
        Tab::Sheets,
        &say!(l, sheets::title),
        html! {
            p { (say!(l, sheets::intro)) }
            section.card {
                h2 { (say!(l, sheets::fridge)) }
                p { (say!(l, sheets::fridge_what)) }
                p { a.button.primary href="/sheets/rules" { (say!(l, sheets::rules)) } }
            }
            section.card {
                h2 { (say!(l, sheets::buttons)) }
                p { (say!(l, sheets::buttons_what)) }
                p { a.button href="/sheets/labels" { (say!(l, sheets::labels)) } }
            }
            @for a in page.animals() {
                section.card {
                    h2 { (a.name.as_str()) }
                    p { (say!(l, sheets::report_for)) }
                    p.row { a.button href=(format!("/sheets/{}/progress", a.animal)) { (say!(l, sheets::report)) }
                        a.button href=(format!("/sheets/{}/likes", a.animal)) { (say!(l, sheets::likes, name = &a.name)) } }
                }
            }
        },
    )
}

/// A sheet in the page's frame, with a button that prints it where the browser can.
fn sheet(page: &Page, title: &str, body: Markup) -> Markup {
    let l = &page.locale;
    layout_with(
        page,
        Tab::Sheets,
        title,
        &["client/print.js"],
        html! {
            div.row.noprint {
                button type="button" .primary data-print hidden { (say!(l, sheets::print)) }
                span.quiet { (say!(l, sheets::print_menu)) }
                a.button href="/sheets" { (say!(l, sheets::all)) }
            }
            article.print-sheet {
                (body)
                footer.quiet { "Sayso · " (page.story.home().map_or("", |h| h.name.as_str())) " · " (l.date(page.now.day(&page.zone))) }
            }
        },
    )
}
