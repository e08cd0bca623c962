//! The API for people: the same document as a page.

use super::openapi::{SessionCookie, told};
use crate::layout::{Tab, bare, layout};
use crate::visitor::Visitor;
use axum::Extension;
use maud::{Markup, html};
use sayso_model::Language;
use serde_json::Value;

/// A plain page of the paths.
pub async fn show(visitor: Visitor, session: Option<Extension<SessionCookie>>) -> Markup {
    let document = told(session);
    let empty = serde_json::Map::new();
    let paths = document["paths"].as_object().unwrap_or(&empty);
    let schemas = document["components"]["schemas"].as_object().unwrap_or(&empty);
    let (title, other) = ("The notebook over HTTP", visitor.locale.language != Language::En);
    let body = html! {
        div lang=[other.then_some("en")] {
            p { (text(&document["info"]["description"])) }
            p { "The whole description, for programs: " a href="/api/openapi.json" { "OpenAPI 3.1" } "." }
            @for (path, methods) in paths {
                @for (method, what) in methods.as_object().unwrap_or(&empty) {
                    section.card {
                        h2 { (method.to_uppercase()) " " code { (path) } }
                        p { (text(&what["summary"])) }
                        @if let Some(more) = what["description"].as_str() { p { (more) } }
                        @if let Some(all) = what["parameters"].as_array() {
                            dl.facts {
                                @for p in all { dt { code { (text(&p["name"])) } } dd { (text(&p["description"])) } }
                            }
                        }
                        dl.facts {
                            @for (status, answer) in what["responses"].as_object().unwrap_or(&empty) {
                                dt { (status) } dd { (text(&answer["description"])) }
                            }
                        }
                    }
                }
            }
            h2 { "An event" }
            div.scroll tabindex="0" role="region" aria-label="Schema of an event" { pre { (serde_json::to_string_pretty(&schemas.get("Event")).unwrap_or_default()) } }
        }
    };
    match visitor.page.as_deref() {
        Some(page) => layout(page, Tab::None, title, body),
        None => bare(&visitor.locale, title, body),
    }
}

fn text(value: &Value) -> &str {
    value.as_str().unwrap_or("")
}
