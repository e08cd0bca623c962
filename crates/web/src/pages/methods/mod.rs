//! How each figure is computed: every method in use, and the pages of `docs/methods`, carried in the binary.

mod list;
mod method;
mod titles;

pub use list::METHODS;
pub use method::Method;

use crate::error::Error;
use crate::layout::{Tab, layout};
use crate::page::Page;
use crate::state::AppState;
use axum::Router;
use axum::extract::Path;
use axum::routing::get;
use maud::{Markup, PreEscaped, html};
use pulldown_cmark::{Event, Options, Parser, Tag, html as to_html};
use rust_embed::RustEmbed;
use sayso_methods::words::DICTIONARY_LICENCE;
use sayso_model::Language;
use sayso_wording::{Locale, say, words};
use std::borrow::Cow;
use titles::TITLES;

#[derive(RustEmbed)]
#[folder = "../../docs/methods"]
#[include = "*.md"]
struct Docs;

/// Routes of the pages.
pub fn router() -> Router<AppState> {
    Router::new().route("/methods", get(list)).route("/methods/{page}", get(show))
}

fn text(name: &str) -> Option<String> {
    Docs::get(name).map(|file| String::from_utf8_lossy(&file.data).into_owned())
}

/// A page's title as the reader has it; a page without one is called by its name.
fn title(l: &Locale, page: &str) -> String {
    TITLES.iter().find(|(name, _)| *name == page).map_or_else(|| page.replace('-', " "), |(_, title)| title(l))
}

/// Its English heading.
fn heading(text: &str) -> Option<&str> {
    text.trim_start().lines().next()?.strip_prefix("# ")
}

async fn list(page: Page) -> Markup {
    let l = &page.locale;
    let named = |file: Cow<'static, str>| {
        let page = file.trim_end_matches(".md");
        (title(l, page), format!("/methods/{page}"))
    };
    let mut pages: Vec<(String, String)> = Docs::iter().map(named).collect();
    pages.sort();
    let body = html! {
        p { (say!(l, methods::intro)) }
        @for (about, methods) in METHODS {
            h2 { (about(l)) }
            dl.facts {
                @for m in *methods { dt { ((m.answers)(l)) } dd { (one(l, m)) } }
            }
        }
        h2 { (say!(l, methods::in_full)) }
        @if l.language != Language::En { p.quiet { (say!(l, methods::full_english)) } }
        ul.links { @for (title, page) in &pages { li { a href=(page) { (title) } } } }
        p.quiet { (say!(l, methods::sounds, licence = DICTIONARY_LICENCE)) }
    };
    layout(&page, Tab::None, &say!(l, frame::methods), body)
}

/// How a question is answered, where that is shown, and whose method it is.
fn one(l: &Locale, method: &Method) -> Markup {
    let mut shown: Vec<String> =
        method.pages.iter().map(|p| say!(l, methods::on_page, page = page_name(l, p))).collect();
    shown.extend(method.commands.iter().map(|c| say!(l, methods::by_command, command = *c)));
    let note = method.note.map(|note| note(l));
    let source: Vec<&str> =
        [method.source, note.as_deref().unwrap_or_default()].into_iter().filter(|s| !s.is_empty()).collect();
    html! {
        a href=(format!("/methods/{}", method.page)) { ((method.name)(l)) } " "
        (say!(l, methods::source, source = l.apart(&source), shown = shown.join(", ")))
    }
}

/// What a page is called, by the last part of its address.
fn page_name(l: &Locale, page: &str) -> String {
    match page {
        "today" => say!(l, frame::today),
        "likes" => say!(l, frame::likes),
        "words" => say!(l, frame::words),
        "evidence" => say!(l, frame::evidence),
        "days" => say!(l, frame::days),
        "people" => say!(l, frame::people),
        "checks" => say!(l, checks::title),
        "designs" => say!(l, designs::title),
        "agreement" => say!(l, agreement::title),
        "patterns" => say!(l, methods::page_patterns),
        other => other.to_owned(),
    }
}

async fn show(page: Page, Path(name): Path<String>) -> Result<Markup, Error> {
    let file = format!("{name}.md");
    let text = text(&file).ok_or_else(|| Error::NotFound(words!(methods::no_such_page)))?;
    Ok(layout(&page, Tab::None, &title(&page.locale, &name), in_english(&page.locale, &text, "")))
}

/// A page of the documentation below its own heading, whoever reads it. Its links to pages about methods, which begin with `near`,
/// lead there.
pub fn in_english(l: &Locale, text: &str, near: &str) -> Markup {
    let rest = heading(text).map_or(text, |heading| text.trim_start()["# ".len() + heading.len()..].trim_start());
    let english = l.language == Language::En;
    html! {
        @if !english { p.quiet { (say!(l, methods::page_english)) } }
        div.prose lang=[(!english).then_some("en")] { (PreEscaped(rendered(rest, near))) }
    }
}

/// Where a link of a page leads: within the page, elsewhere, or to a page about methods. None to other files of the repository.
fn leads(to: &str, near: &str) -> Option<String> {
    if ["#", "https://", "http://"].iter().any(|far| to.starts_with(far)) {
        return Some(to.to_owned());
    }
    let name = to.strip_prefix(near)?.strip_suffix(".md")?;
    Docs::get(&format!("{name}.md")).map(|_| format!("/methods/{name}"))
}

/// The page as HTML. Raw HTML in it is shown as text; links to other files of the repository become their names.
fn rendered(text: &str, near: &str) -> String {
    let mut depth = 0_usize;
    let parser = Parser::new_ext(text, Options::ENABLE_TABLES).filter_map(|event| match event {
        Event::Html(raw) | Event::InlineHtml(raw) => Some(Event::Text(raw)),
        Event::End(pulldown_cmark::TagEnd::Link) if depth > 0 => {
            depth -= 1;
            None
        }
        Event::Start(Tag::Link { link_type, dest_url, title, id }) => match leads(&dest_url, near) {
            Some(to) => Some(Event::Start(Tag::Link { link_type, dest_url: to.into(), title, id })),
            None => {
                depth += 1;
                None
            }
        },
        other => Some(other),
    });
    let mut out = String::new();
    to_html::push_html(&mut out, parser);
    // Wide tables scroll inside their own box, never the page.
    out.replace("<table>", r#"<div class="scroll" tabindex="0" role="region" aria-label="Table"><table>"#)
        .replace("</table>", "</table></div>")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_page_has_a_heading_and_raw_html_stays_text() {
        assert_eq!(Docs::iter().count(), TITLES.len());
        for name in Docs::iter() {
            let text = text(&name).unwrap_or_default();
            let english = title(&Locale::ENGLISH, name.trim_end_matches(".md")).replace('’', "'");
            assert_eq!(heading(&text), Some(english.as_str()), "{name} begins with the title that the catalogue has");
        }
        let html = rendered("a <script>x</script> b [c](likes.md) [d](../decisions/x.md) [e](no-such.md)", "");
        assert!(!html.contains("<script>") && html.contains(r#"href="/methods/likes""#) && !html.contains("decisions"));
        assert!(!html.contains("no-such"), "{html}");
        let html =
            rendered("[c](methods/likes.md) [d](decisions/x.md) [e](likes.md) [f](https://example.org/)", "methods/");
        assert!(
            html.contains(r#"href="/methods/likes">c"#) && html.contains(r#"href="https://example.org/">f"#),
            "{html}"
        );
        assert_eq!(html.matches("href").count(), 2, "{html}");
    }
}
