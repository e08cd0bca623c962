//! Things to print: rules of the house, labels, how to record real buttons, likes, and a report of an animal's progress; as pages and as PDF. What a
//! sheet says comes from [`sayso_paper`].

mod html;
mod meeting;

pub use meeting::link as to_meeting;

use crate::error::Error;
use crate::layout::{Tab, layout, layout_with};
use crate::page::{AnimalPage, Page};
use crate::state::AppState;
use axum::Router;
use axum::extract::Query;
use axum::http::header::{CONTENT_DISPOSITION, CONTENT_TYPE};
use axum::response::{IntoResponse, Response};
use axum::routing::get;
use maud::{Markup, html};
use sayso_notebook::word_pictures;
use sayso_paper::{LENGTHS, LabelSize, Paper, Sheet, pdf};
use sayso_people::Capability;
use sayso_wording::{say, words};
use serde::Deserialize;

/// Routes of the pages.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/sheets", get(show))
        .route("/sheets/rules", get(rules))
        .route("/sheets/rules.pdf", get(rules_pdf))
        .route("/sheets/labels", get(labels))
        .route("/sheets/labels.pdf", get(labels_pdf))
        .route("/sheets/kit", get(kit))
        .route("/sheets/kit.pdf", get(kit_pdf))
        .route("/sheets/{animal}/progress", get(progress))
        .route("/sheets/{animal}/progress.pdf", get(progress_pdf))
        .route("/sheets/{animal}/meeting", get(meeting::show))
        .route("/sheets/{animal}/meeting.pdf", get(meeting::file))
        .route("/sheets/{animal}/likes", get(likes))
        .route("/sheets/{animal}/likes.pdf", get(likes_pdf))
}

/// What is asked of a sheet; what is not understood counts as not asked.
#[derive(Deserialize)]
pub struct Asked {
    #[serde(default)]
    days: String,
    #[serde(default)]
    size: String,
    #[serde(default)]
    paper: String,
    #[serde(default)]
    since: String,
}

impl Asked {
    fn length(&self) -> u16 {
        self.days.parse().ok().filter(|d| LENGTHS.contains(d)).unwrap_or(28)
    }

    fn size(&self) -> LabelSize {
        LabelSize::named(&self.size).unwrap_or_default()
    }

    fn paper(&self) -> Paper {
        Paper::named(&self.paper).unwrap_or_default()
    }
}

async fn show(page: Page) -> Markup {
    let l = &page.locale;
    layout(
        &page,
        Tab::Sheets,
        &say!(l, sheets::title),
        html! {
            p { (say!(l, sheets::intro)) }
            div.grid {
                @if page.may(Capability::SeeRules) { section.card {
                    h2 { (say!(l, sheets::fridge)) }
                    p { (say!(l, sheets::fridge_what)) }
                    p { a.button.primary href="/sheets/rules" { (say!(l, sheets::rules)) } }
                } }
                @if page.may(Capability::SeeFigures) { section.card {
                    h2 { (say!(l, sheets::buttons)) }
                    p { (say!(l, sheets::buttons_what)) }
                    p { a.button href="/sheets/labels" { (say!(l, sheets::labels)) } }
                } }
                @if page.may(Capability::ChangeCards) { section.card {
                    h2 { (say!(l, kit::title)) }
                    p { (say!(l, kit::why)) }
                    p { a.button href="/sheets/kit" { (say!(l, kit::print)) } }
                } }
                @for a in page.animals().into_iter().filter(|_| page.may(Capability::SeeFigures)) {
                    section.card {
                        h2 { (a.name.as_str()) }
                        p { (say!(l, sheets::animal_what)) }
                        p.row { a.button href=(format!("/sheets/{}/progress", a.animal)) { (say!(l, sheets::progress)) }
                            a.button href=(format!("/sheets/{}/meeting", a.animal)) { (say!(l, meeting::link)) }
                            a.button href=(format!("/sheets/{}/likes", a.animal)) { (say!(l, sheets::likes_of, name = &a.name)) } }
                    }
                }
            }
        },
    )
}

async fn rules(page: Page) -> Markup {
    view(&page, &rules_of(&page), Framed::among_all("", html! {}))
}

async fn rules_pdf(page: Page, Query(asked): Query<Asked>) -> Result<Response, Error> {
    printed(&page, &rules_of(&page), &asked, RULES).await
}

fn rules_of(page: &Page) -> Sheet {
    sayso_paper::rules(&page.story, page.now, page.locale)
}

async fn labels(page: Page, Query(asked): Query<Asked>) -> Markup {
    let (l, size) = (&page.locale, asked.size());
    let choice = html! {
        div.row.noprint role="group" aria-label=(say!(l, sheets::size)) {
            @for s in LabelSize::ALL {
                @let (width, height) = s.mm();
                a.button href=(format!("?size={}", s.name())) aria-current=[(s == size).then_some("true")] {
                    (say!(l, sheets::size_of, size = s.name(), width = width, height = height))
                }
            }
        }
    };
    view(&page, &labels_of(&page, size), Framed::among_all(&format!("size={}", size.name()), choice))
}

async fn labels_pdf(page: Page, Query(asked): Query<Asked>) -> Result<Response, Error> {
    printed(&page, &labels_of(&page, asked.size()), &asked, LABELS).await
}

fn labels_of(page: &Page, size: LabelSize) -> Sheet {
    sayso_paper::labels(&page.story, page.now, page.locale, size)
}

async fn kit(page: Page) -> Markup {
    view(&page, &kit_of(&page), Framed::among_all("", html! {}))
}

async fn kit_pdf(page: Page, Query(asked): Query<Asked>) -> Result<Response, Error> {
    printed(&page, &kit_of(&page), &asked, KIT).await
}

fn kit_of(page: &Page) -> Sheet {
    sayso_paper::kit(&page.story, page.now, page.locale)
}

async fn progress(page: AnimalPage, Query(asked): Query<Asked>) -> Result<Markup, Error> {
    let (l, length) = (&page.locale, asked.length());
    let choice = html! {
        div.row.noprint role="group" aria-label=(say!(l, sheets::period)) {
            @for days in LENGTHS {
                a.button href=(format!("?days={days}")) aria-current=[(days == length).then_some("true")] { (say!(l, sheets::days, days = days)) }
            }
        }
    };
    Ok(view(&page, &progress_of(&page, length)?, Framed::among_all(&format!("days={length}"), choice)))
}

async fn progress_pdf(page: AnimalPage, Query(asked): Query<Asked>) -> Result<Response, Error> {
    printed(&page, &progress_of(&page, asked.length())?, &asked, PROGRESS).await
}

fn progress_of(page: &AnimalPage, length: u16) -> Result<Sheet, Error> {
    let sheet = sayso_paper::progress(&page.case(), page.locale, length, page.person_card().as_ref());
    sheet.ok_or_else(|| Error::NotFound(words!(errors::no_such_animal)))
}

async fn likes(page: AnimalPage) -> Result<Markup, Error> {
    Ok(view(&page, &likes_of(&page)?, Framed::among_all("", html! {})))
}

async fn likes_pdf(page: AnimalPage, Query(asked): Query<Asked>) -> Result<Response, Error> {
    printed(&page, &likes_of(&page)?, &asked, LIKES).await
}

fn likes_of(page: &AnimalPage) -> Result<Sheet, Error> {
    let sheet = sayso_paper::likes(&page.case(), page.locale);
    sheet.ok_or_else(|| Error::NotFound(words!(errors::no_such_animal)))
}

/// Names of the files, as the command's kinds of sheet.
const RULES: &str = "rules";
const LABELS: &str = "labels";
const PROGRESS: &str = "progress";
const LIKES: &str = "likes";
const KIT: &str = "kit";

/// A sheet as PDF, shown by the browser where it can.
pub async fn printed(page: &Page, sheet: &Sheet, asked: &Asked, name: &str) -> Result<Response, Error> {
    let pictures = word_pictures(&page.state.store, &page.story, &sheet.words()).await?;
    let file = pdf(sheet, asked.paper(), &pictures).map_err(Error::internal)?;
    for word in &file.unread {
        tracing::warn!("The picture of the word {word} cannot be read; the sheet goes without it.");
    }
    let shown = format!("inline; filename=\"{name}.pdf\"");
    Ok(([(CONTENT_TYPE, "application/pdf".to_owned()), (CONTENT_DISPOSITION, shown)], file.bytes).into_response())
}

/// What stands around a sheet on its page.
pub struct Framed {
    /// The menu's entry that it belongs to.
    pub tab: Tab,
    /// What the PDF is asked for besides the paper.
    pub asked: String,
    /// What can be chosen.
    pub choice: Markup,
    /// The way back from it; none for that to all sheets.
    pub back: Option<Markup>,
}

impl Framed {
    /// One of the page of all sheets.
    fn among_all(asked: &str, choice: Markup) -> Self {
        Self { tab: Tab::Sheets, asked: asked.to_owned(), choice, back: None }
    }
}

/// A sheet in the page's frame, with its PDF and a button that prints it where the browser can.
pub fn view(page: &Page, sheet: &Sheet, framed: Framed) -> Markup {
    let l = &page.locale;
    let Framed { tab, asked, choice, back } = framed;
    let back = back.unwrap_or_else(|| html! { a.button href="/sheets" { (say!(l, sheets::all)) } });
    layout_with(
        page,
        tab,
        &sheet.title,
        &["client/print.js"],
        html! {
            (files(page, &page.path, &asked, &back))
            (choice)
            // Paper has no tap: a sheet is all figures.
            article.print-sheet data-part="figures" {
                (html::blocks(page, &sheet.blocks))
                footer.quiet { (say!(l, sheets::foot, home = &sheet.foot.home, day = &sheet.foot.day)) }
            }
        },
    )
}

/// What leads to paper: printing by the browser, and the PDF of what stands at an address.
pub fn files(page: &Page, path: &str, asked: &str, back: &Markup) -> Markup {
    let l = &page.locale;
    let file = |paper: Paper| {
        let asked = if asked.is_empty() { String::new() } else { format!("&{asked}") };
        format!("{path}.pdf?paper={}{asked}", paper.name())
    };
    html! {
        div.row.noprint {
            button type="button" .primary data-print hidden { (say!(l, sheets::print)) }
            a.button href=(file(Paper::A4)) { (say!(l, sheets::pdf_a4)) }
            a.button href=(file(Paper::Letter)) { (say!(l, sheets::pdf_letter)) }
            span.quiet { (say!(l, sheets::print_menu)) }
            (back)
        }
    }
}
