//! Style sheets and client modules, embedded. Addresses carry a hash of them all, so that browsers may keep them
//! for ever and modules that import each other by relative path always fit together.

use crate::error::Error;
use axum::Router;
use axum::extract::Path;
use axum::http::header::{CACHE_CONTROL, CONTENT_TYPE};
use axum::response::{IntoResponse, Response};
use axum::routing::get;
use sayso_model::Language;
use sayso_wording::{Locale, client, words};
use sha2::{Digest, Sha256};
use std::sync::{LazyLock, OnceLock};

const CSS: &str = "text/css; charset=utf-8";
const JS: &str = "text/javascript; charset=utf-8";
const SVG: &str = "image/svg+xml";
const PNG: &str = "image/png";
const WASM: &str = "application/wasm";

/// Name, content type, content.
type Asset = (&'static str, &'static str, &'static str);

/// Every asset; a new file is one line here.
static FILES: &[Asset] = &[
    ("assets/base.css", CSS, include_str!("base.css")),
    ("assets/board.css", CSS, include_str!("board.css")),
    ("assets/pages.css", CSS, include_str!("pages.css")),
    ("assets/icon.svg", SVG, include_str!("icon.svg")),
    ("client/ear.js", JS, include_str!("../client/ear.js")),
    ("client/ear-worker.js", JS, include_str!("../client/ear-worker.js")),
    ("client/engine.js", JS, include_str!("../client/engine.js")),
    ("client/capture.js", JS, include_str!("../client/capture.js")),
    ("client/heard.js", JS, include_str!("../client/heard.js")),
    ("client/last.js", JS, include_str!("../client/last.js")),
    ("client/kit.js", JS, include_str!("../client/kit.js")),
    ("client/tallest.js", JS, include_str!("../client/tallest.js")),
    ("client/take.js", JS, include_str!("../client/take.js")),
    ("client/tar.js", JS, include_str!("../client/tar.js")),
    ("client/listen.js", JS, include_str!("../client/listen.js")),
    ("client/meter.js", JS, include_str!("../client/meter.js")),
    ("client/microphone.js", JS, include_str!("../client/microphone.js")),
    ("client/recorder.js", JS, include_str!("../client/recorder.js")),
    ("client/buttons.js", JS, include_str!("../client/buttons.js")),
    ("client/judge.js", JS, include_str!("../client/judge.js")),
    ("client/naming.js", JS, include_str!("../client/naming.js")),
    ("client/proof.js", JS, include_str!("../client/proof.js")),
    ("client/sound.js", JS, include_str!("../client/sound.js")),
    ("client/wave.js", JS, include_str!("../client/wave.js")),
    ("client/stream.js", JS, include_str!("../client/stream.js")),
    ("client/board.js", JS, include_str!("../client/board.js")),
    ("client/offering.js", JS, include_str!("../client/offering.js")),
    ("client/choose.js", JS, include_str!("../client/choose.js")),
    ("client/catch.js", JS, include_str!("../client/catch.js")),
    ("client/say.js", JS, include_str!("../client/say.js")),
    ("client/day.js", JS, include_str!("../client/day.js")),
    ("client/copy.js", JS, include_str!("../client/copy.js")),
    ("client/desk.js", JS, include_str!("../client/desk.js")),
    ("client/db.js", JS, include_str!("../client/db.js")),
    ("client/brings.js", JS, include_str!("../client/brings.js")),
    ("client/draft.js", JS, include_str!("../client/draft.js")),
    ("client/again.js", JS, include_str!("../client/again.js")),
    ("client/typed.js", JS, include_str!("../client/typed.js")),
    ("client/draw.js", JS, include_str!("../client/draw.js")),
    ("client/due.js", JS, include_str!("../client/due.js")),
    ("client/dom.js", JS, include_str!("../client/dom.js")),
    ("client/forgotten.js", JS, include_str!("../client/forgotten.js")),
    ("client/left.js", JS, include_str!("../client/left.js")),
    ("client/offer.js", JS, include_str!("../client/offer.js")),
    ("client/frame.js", JS, include_str!("../client/frame.js")),
    ("client/homeday.js", JS, include_str!("../client/homeday.js")),
    ("client/hand-on.js", JS, include_str!("../client/hand-on.js")),
    ("client/invitation.js", JS, include_str!("../client/invitation.js")),
    ("client/inviting.js", JS, include_str!("../client/inviting.js")),
    ("client/kept.js", JS, include_str!("../client/kept.js")),
    ("client/passkey.js", JS, include_str!("../client/passkey.js")),
    ("client/picture.js", JS, include_str!("../client/picture.js")),
    ("client/pad.js", JS, include_str!("../client/pad.js")),
    ("client/recent.js", JS, include_str!("../client/recent.js")),
    ("client/round.js", JS, include_str!("../client/round.js")),
    ("client/swaps.js", JS, include_str!("../client/swaps.js")),
    ("client/whose.js", JS, include_str!("../client/whose.js")),
    ("client/first.js", JS, include_str!("../client/first.js")),
    ("client/settle.js", JS, include_str!("../client/settle.js")),
    ("client/signs.js", JS, include_str!("../client/signs.js")),
    ("client/showing.js", JS, include_str!("../client/showing.js")),
    ("client/sitting.js", JS, include_str!("../client/sitting.js")),
    ("client/starting.js", JS, include_str!("../client/starting.js")),
    ("client/unsent.js", JS, include_str!("../client/unsent.js")),
    ("client/uuid.js", JS, include_str!("../client/uuid.js")),
    ("client/offline.js", JS, include_str!("../client/offline.js")),
    ("client/rest.js", JS, include_str!("../client/rest.js")),
    ("client/outbox.js", JS, include_str!("../client/outbox.js")),
    ("client/print.js", JS, include_str!("../client/print.js")),
    ("client/stop.js", JS, include_str!("../client/stop.js")),
    ("client/stopwatch.js", JS, include_str!("../client/stopwatch.js")),
    ("client/words.js", JS, include_str!("../client/words.js")),
    ("client/attend.js", JS, include_str!("../client/attend.js")),
    ("client/care.js", JS, include_str!("../client/care.js")),
    ("client/ending.js", JS, include_str!("../client/ending.js")),
    ("client/hand.js", JS, include_str!("../client/hand.js")),
    ("client/keys.js", JS, include_str!("../client/keys.js")),
    ("client/mat.js", JS, include_str!("../client/mat.js")),
    ("client/zone.js", JS, include_str!("../client/zone.js")),
    ("client/rehearsal.js", JS, include_str!("../client/rehearsal.js")),
    ("client/rehearse.js", JS, include_str!("../client/rehearse.js")),
    ("client/replay.js", JS, include_str!("../client/replay.js")),
    ("client/resting.js", JS, include_str!("../client/resting.js")),
    ("client/room.js", JS, include_str!("../client/room.js")),
];

/// The icon as home screens want it: as it is, and to the edge for those that cut a shape out of it.
static ICONS: &[(&str, &[u8])] = &[
    ("assets/icon-192.png", include_bytes!("icon-192.png")),
    ("assets/icon-512.png", include_bytes!("icon-512.png")),
    ("assets/maskable-192.png", include_bytes!("maskable-192.png")),
    ("assets/maskable-512.png", include_bytes!("maskable-512.png")),
    ("assets/touch-180.png", include_bytes!("touch-180.png")),
];

/// The engine for pages, where it was built.
pub const EAR: &str = "client/ear.wasm";

/// What the scripts say, a file a language, made from the catalogues.
static TEXTS: LazyLock<[(&str, String); 6]> = LazyLock::new(|| {
    let text = |locale: Locale| format!("globalThis.saysoText = {};\n", client(&locale));
    [
        ("text/en.js", text(Locale::of(Language::En))),
        ("text/es.js", text(Locale::of(Language::Es))),
        ("text/de.js", text(Locale::of(Language::De))),
        ("text/fr.js", text(Locale::of(Language::Fr))),
        ("text/pt.js", text(Locale::of(Language::Pt))),
        ("text/pseudo.js", text(Locale::PSEUDO)),
    ]
});

/// The name of the file with what the scripts say.
#[must_use]
pub const fn text(locale: &Locale) -> &'static str {
    if locale.pseudo {
        return "text/pseudo.js";
    }
    match locale.language {
        Language::En => "text/en.js",
        Language::Es => "text/es.js",
        Language::De => "text/de.js",
        Language::Fr => "text/fr.js",
        Language::Pt => "text/pt.js",
    }
}

/// Name, content type and content of every file.
fn all() -> impl Iterator<Item = (&'static str, &'static str, &'static [u8])> {
    let files = FILES.iter().map(|(name, kind, content)| (*name, *kind, content.as_bytes()));
    let icons = ICONS.iter().map(|(name, content)| (*name, PNG, *content));
    let ear = sayso_ear::MODULE.map(|content| (EAR, WASM, content));
    files.chain(icons).chain(ear).chain(TEXTS.iter().map(|(name, content)| (*name, JS, content.as_bytes())))
}

/// Content type and content of a file.
fn find(name: &str) -> Option<(&'static str, &'static [u8])> {
    all().find(|f| f.0 == name).map(|f| (f.1, f.2))
}

/// The hash in addresses, 16 hexadecimal digits.
pub fn version() -> &'static str {
    static HASH: OnceLock<String> = OnceLock::new();
    HASH.get_or_init(|| {
        let mut hasher = Sha256::new();
        for (name, _, content) in all() {
            hasher.update(name.as_bytes());
            hasher.update([0]);
            hasher.update(content);
            hasher.update([0]);
        }
        hasher.finalize().iter().take(8).map(|b| format!("{b:02x}")).collect()
    })
}

/// The address of an asset by its name in the list.
#[must_use]
pub fn asset(name: &str) -> String {
    debug_assert!(find(name).is_some(), "no asset {name}");
    format!("/assets/{}/{name}", version())
}

/// Address of the ear's module, where this build has one.
pub fn ear() -> Option<String> {
    sayso_ear::MODULE.map(|_| asset(EAR))
}

/// Names of all assets.
pub fn names() -> impl Iterator<Item = &'static str> {
    all().map(|(name, ..)| name)
}

/// The route of the assets.
pub fn router<S: Clone + Send + Sync + 'static>() -> Router<S> {
    Router::new().route("/assets/{version}/{*name}", get(serve)).route("/sw.js", get(worker))
}

/// The worker that keeps the pad's page for when there is no answer; its place decides which pages it may see.
async fn worker() -> Response {
    let script = include_str!("../client/worker.js");
    ([(CONTENT_TYPE, JS), (CACHE_CONTROL, "no-cache")], script).into_response()
}

async fn serve(Path((asked, name)): Path<(String, String)>) -> Result<Response, Error> {
    let (kind, content) = find(&name).ok_or_else(|| Error::NotFound(words!(errors::no_such_file)))?;
    // An address from before an update gets today's file, but may not be kept under the old hash.
    let keep = if asked == version() { "public, max-age=31536000, immutable" } else { "no-store" };
    Ok(([(CONTENT_TYPE, kind), (CACHE_CONTROL, keep)], content).into_response())
}
