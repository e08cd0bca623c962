//! The API for people: the same document as a page.

use super::openapi::document;
use crate::layout::bare;
use crate::reading::Reads;
use maud::{Markup, html};
use serde_json::Value;

/// A plain page of the paths.
pub async fn show(Reads(locale): Reads) -> Markup {
    let empty = serde_json::Map::new();
    let paths = document()["paths"].as_object().unwrap_or(&empty);
    let schemas = document()["components"]["schemas"].as_object().unwrap_or(&empty);
    bare(
        &locale,
        "The notebook over HTTP",
        html! {
            p { (text(&document()["info"]["description"])) }
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
        },
    )
}

fn text(value: &Value) -> &str {
    value.as_str().unwrap_or("")
}
