//! The OpenAPI 3.1 document: schemas from the model, so that they cannot drift from what is accepted; paths by hand.

use super::events::MOST_EVENTS;
use crate::pages::board::now::Now;
use axum::{Extension, Json};
use sayso_model::Event;
use schemars::generate::SchemaSettings;
use serde_json::{Value, json};
use std::borrow::Cow;
use std::sync::OnceLock;

/// Name of the cookie of a session, on a server of many homes: stands beside each request there.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct SessionCookie(pub String);

/// What whoever asks is told: of the notebook, or of the server where there are sessions.
pub fn told(session: Option<Extension<SessionCookie>>) -> Cow<'static, Value> {
    match session {
        Some(Extension(cookie)) => Cow::Owned(on_server(&cookie)),
        None => Cow::Borrowed(document()),
    }
}

/// The document, as whoever asks finds it.
pub async fn show(session: Option<Extension<SessionCookie>>) -> Json<Cow<'static, Value>> {
    Json(told(session))
}

/// What is so on a server.
const ON_SERVER: &str = "A home's HTTP interface on a server of many homes. Every write is an event; sending an event twice is the same as sending it once. Requests carry the cookie of a signed-in browser, and whatever writes comes from a page of the server (Origin or Sec-Fetch-Site says so). ?home= names one of the account's homes, else it is the one chosen in that browser (the cookie sayso_home) or the first. What is open goes by the account's role in the home and by its consents. POST /api/events takes events of any of the account's homes, each answered for itself; a consent is refused there, for it is given on its page.";

/// The document of a server: its own way in, and without what it does not have.
fn on_server(cookie: &SessionCookie) -> Value {
    let mut all = document().clone();
    all["info"]["description"] = ON_SERVER.into();
    all["components"]["securitySchemes"] = json!({ "session": {
        "type": "apiKey", "in": "cookie", "name": cookie.0,
        "description": "Kept by a browser in which somebody signed in.",
    } });
    all["security"] = json!([{ "session": [] }]);
    if let Some(paths) = all["paths"].as_object_mut() {
        // Phones of a server's homes listen by themselves.
        paths.remove("/api/listen/{animal}");
        for what in paths.values_mut().filter_map(Value::as_object_mut).flat_map(|path| path.values_mut()) {
            what["responses"]["401"] = failed("Nobody is signed in, or not any more.");
            what["responses"]["403"] = failed(
                "The account's role or the home's consents do not open it, or it was sent from another site's page.",
            );
        }
    }
    all
}

/// The document of a notebook.
pub fn document() -> &'static Value {
    static DOCUMENT: OnceLock<Value> = OnceLock::new();
    DOCUMENT.get_or_init(|| {
        let mut settings = SchemaSettings::draft2020_12();
        settings.definitions_path = "/components/schemas".into();
        let mut generator = settings.into_generator();
        // Puts these and all they hold among the definitions.
        let _ = generator.subschema_for::<Event>();
        let _ = generator.subschema_for::<Now>();
        let mut schemas = Value::Object(generator.take_definitions(true));
        if let (Some(all), Value::Object(own)) = (schemas.as_object_mut(), own_schemas()) {
            all.extend(own);
        }
        json!({
            "openapi": "3.1.0",
            "info": {
                "title": "Sayso",
                "version": env!("CARGO_PKG_VERSION"),
                "description": "The notebook's HTTP interface. Every write is an event; sending an event twice is the same as sending it once. Where the notebook serves the home network, requests carry the cookie of a paired device.",
            },
            "paths": paths(),
            "components": {
                "schemas": schemas,
                "securitySchemes": {
                    "paired": {
                        "type": "apiKey", "in": "cookie", "name": "sayso_paired",
                        "description": "Given by POST /pair in exchange for the code on the terminal. Not needed where the notebook serves this machine only.",
                    }
                }
            },
            "security": [{}, { "paired": [] }],
        })
    })
}

/// How the web socket is spoken to; OpenAPI has no words for it.
const LISTENING: &str = "Text messages are JSON, binary ones are sound. \
    First {\"begin\": {\"stream\": UUID, \"began\": time of the first frame, \"rate\": frames a second, \"only\": whether only this animal uses the board, \"keep_unsure\": whether the sound around unsure presses is kept, \"take\": whether to take the board from another page}}. \
    Answer: {\"go\": {\"from\", \"words\", \"left_out\"}}, or {\"busy\": since}, or {\"wrong\": why}. \
    Then binary messages: position of the first frame since the stream began (unsigned 64 bits, little-endian), and signed 16-bit little-endian samples of one channel. Missing positions count as silence, known ones are passed over. \
    Told meanwhile: {\"heard\": {\"id\", \"says\", \"at\", \"confidence\", \"state\", \"kept\"}}, where state is new, known or tapped; {\"upto\": position} before which nothing need be sent again; {\"trouble\": why, or null once it is over} while presses cannot be stored; \"taken\" when another page took the board. \
    After a lost connection the same stream may begin again within a minute and goes on from `from`; where that is null, all that is still there should be sent. {\"keep_unsure\": boolean} may be sent at any time, \"end\" at the end, answered by the last presses and \"ended\".";

fn schema(name: &str) -> Value {
    json!({ "$ref": format!("#/components/schemas/{name}") })
}

fn answer(description: &str, schema: Value) -> Value {
    json!({ "description": description, "content": { "application/json": { "schema": schema } } })
}

fn query(name: &str, description: &str, schema: Value, required: bool) -> Value {
    json!({ "name": name, "in": "query", "required": required, "description": description, "schema": schema })
}

fn failed(description: &str) -> Value {
    answer(description, schema("Failure"))
}

fn import(summary: &str, success: Value) -> Value {
    json!({ "post": {
        "summary": summary,
        "parameters": [
            query("format", "Form of the file.", json!({ "enum": ["jsonl", "csv"] }), true),
            query("home", "Home of rows that name none; the notebook's own where left out.", json!({ "type": "string", "format": "uuid" }), false),
            query("skip_bad_rows", "Import the sound rows and leave the others. Only for commit.", json!({ "type": "boolean", "default": false }), false),
            query("take_in_other_home", "Take in events of a home that this notebook does not hold, or begin an empty one with several; it then holds several, for good. Only for commit.", json!({ "type": "boolean", "default": false }), false),
        ],
        "requestBody": { "required": true, "description": "The file, at most 64 MiB.", "content": {
            "application/x-ndjson": { "schema": { "type": "string" } }, "text/csv": { "schema": { "type": "string" } } } },
        "responses": { "200": success, "400": failed("The query cannot be read."), "413": failed("The file is too large."), "422": failed("The file has problems; nothing was stored.") },
    }})
}

fn paths() -> Value {
    let text = |description: &str, kind: &str| json!({ "description": description, "content": { kind: { "schema": { "type": "string" } } } });
    json!({
        "/api/events": {
            "post": {
                "summary": "Add events. Each is answered for itself, in order; one bad event stops no other. An event of a home that the notebook does not hold is refused.",
                "requestBody": { "required": true, "content": { "application/json": { "schema": {
                    "type": "array", "maxItems": MOST_EVENTS, "items": schema("Event") } } } },
                "responses": {
                    "200": answer("What came of each event.", json!({ "type": "array", "items": schema("Outcome") })),
                    "400": failed("No JSON array of events; says the line and column."),
                    "401": failed("This device is not paired."),
                    "403": failed("Sent from another site's page, or to a name the notebook does not answer to."),
                    "413": failed("More than 1 MiB."),
                    "503": failed("The notebook is busy; nothing was stored."),
                    "507": failed("The disk is full; nothing was stored."),
                },
            },
            "get": {
                "summary": "List events as first recorded, in order of arrival, corrections and withdrawals among them.",
                "parameters": [
                    query("after", "Only events that arrived after this place.", json!({ "type": "integer", "minimum": 0, "default": 0 }), false),
                    query("limit", "At most so many.", json!({ "type": "integer", "minimum": 1, "maximum": 1000, "default": 1000 }), false),
                ],
                "responses": { "200": answer("Events.", schema("Listing")), "400": failed("The query cannot be read.") },
            },
        },
        "/api/board/{animal}": { "get": {
            "summary": "What the pad of one animal shows: words, rewards, ration, signs, and the day's events.",
            "parameters": [{ "name": "animal", "in": "path", "required": true, "schema": schema("AnimalId") }],
            "responses": { "200": answer("The pad.", schema("Now")), "404": failed("No such animal.") },
        }},
        "/api/evidence/{animal}": { "get": {
            "summary": "What may be said of one animal's words: pressed, of wanted; right, of presses, against chance; the rungs of both ladders, with counts and since when. The figures of the Evidence page.",
            "parameters": [{ "name": "animal", "in": "path", "required": true, "schema": schema("AnimalId") }],
            "responses": { "200": answer("By word, and of the animal.", json!({ "type": "object" })), "404": failed("No such animal.") },
        }},
        "/api/listen/{animal}": { "get": {
            "summary": "A web socket: sound of a microphone in, presses out as they are heard, each put into the log.",
            "description": LISTENING,
            "parameters": [{ "name": "animal", "in": "path", "required": true, "schema": schema("AnimalId") }],
            "responses": {
                "101": { "description": "Open. Begin with a text message." },
                "400": failed("No web socket was asked for."),
                "401": failed("This device is not paired."),
                "403": failed("Opened by another site's page, or at a name the notebook does not answer to."),
                "404": failed("No such animal."),
            },
        }},
        "/api/export.jsonl": { "get": { "summary": "The whole log, one event a line.", "responses": { "200": text("The file.", "application/x-ndjson") } } },
        "/api/export.csv": { "get": { "summary": "The whole log as a table.", "responses": { "200": text("The file.", "text/csv") } } },
        "/api/import/preview": import("Say what importing a file would do. Stores nothing.", answer("What would be done, with every problem by line and field.", schema("Preview"))),
        "/api/import/commit": import("Import a file: all of it or nothing.", answer("What was done.", schema("Imported"))),
        "/api/openapi.json": { "get": { "summary": "This document.", "responses": { "200": answer("OpenAPI 3.1.", json!({ "type": "object" })) } } },
    })
}

fn own_schemas() -> Value {
    let count = json!({ "type": "integer", "minimum": 0 });
    let time = json!({ "type": ["string", "null"], "format": "date-time" });
    let problem = json!({ "type": "object", "required": ["field", "kind", "what"], "properties": {
        "field": { "type": "string", "description": "Path of the field, such as body.word." },
        "kind": { "type": "string", "description": "Which problem it is, the same in every language." },
        "what": { "type": "string", "description": "What was found and what would be right, in the language of Accept-Language." } } });
    json!({
        "Problem": problem,
        "Failure": { "type": "object", "required": ["error", "kind"], "properties": {
            "error": { "type": "string", "description": "In the language of Accept-Language." },
            "kind": { "type": "string", "description": "Which failure it is, the same in every language; refused where problems says more." }, "problems": { "type": "array", "items": schema("Problem") } } },
        "Outcome": { "type": "object", "required": ["id", "result"], "properties": {
            "id": { "type": ["string", "null"], "description": "The event's id, where it could be read." },
            "result": { "enum": ["new", "duplicate", "conflict", "refused"] },
            "problems": { "type": "array", "items": schema("Problem") } } },
        "Listing": { "type": "object", "required": ["events", "next"], "properties": {
            "events": { "type": "array", "items": { "type": "object", "required": ["seq", "event"], "properties": {
                "seq": { "type": "integer" }, "event": schema("Event") } } },
            "next": { "type": ["integer", "null"], "description": "Pass as `after` to go on; null where this is the end for now." } } },
        "Preview": { "type": "object", "properties": {
            "rows": count, "new": count, "duplicates": count, "bad_rows": count, "problem_count": count,
            "kinds": { "type": "object", "additionalProperties": count }, "first": time, "last": time,
            "not_understood": { "type": "object", "additionalProperties": count, "description": "Lines of an export by a later version, by kind; kept as they are, not shown." },
            "homes": { "type": "array", "items": { "type": "object", "properties": {
                "id": { "type": "string", "format": "uuid" }, "name": { "type": ["string", "null"] }, "new": count,
                "other": { "type": "boolean", "description": "The notebook does not hold it yet." } } } },
            "problems": { "type": "array", "items": { "type": "object", "properties": {
                "line": count, "field": { "type": "string" }, "found": { "type": "string" }, "kind": { "type": "string", "description": "Which problem it is, the same in every language." }, "wanted": { "type": "string" } } } } } },
        "Imported": { "type": "object", "required": ["new", "duplicates"], "properties": { "new": count, "duplicates": count } },
    })
}
