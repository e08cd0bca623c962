//! When each word was last heard, and how surely, so that a button that falls silent shows within minutes.

use crate::page::AnimalPage;
use axum::Json;
use axum::response::{IntoResponse, Response};
use maud::{Markup, html};
use sayso_model::{Moment, WordId};
use sayso_wording::say;
use serde::Serialize;
use std::collections::{BTreeMap, BTreeSet};

/// Surest that is shown: a sound is never as certain as a tap.
const MOST_SURE: f64 = 0.99;

/// A word that is listened for.
#[derive(Serialize)]
pub struct Last<'a> {
    says: &'a str,
    /// When, by whichever device; none where it was not heard yet.
    at: Option<Moment>,
    /// The same with how surely, in words.
    said: String,
}

/// Words with a recording in use.
pub fn recorded(page: &AnimalPage) -> BTreeSet<WordId> {
    page.story.clips().into_values().filter(|c| c.active).map(|c| c.word).collect()
}

fn last(page: &AnimalPage) -> Vec<Last<'_>> {
    let mut newest: BTreeMap<WordId, (Moment, f64)> = BTreeMap::new();
    for heard in page.state.kept.sums(page.home).heard(&page.story) {
        let known = newest.entry(heard.word).or_insert((heard.at, heard.certainty));
        if heard.at >= known.0 {
            *known = (heard.at, heard.certainty);
        }
    }
    let (words, recorded) = (page.story.words_of(page.id), recorded(page));
    words
        .into_iter()
        .filter(|w| recorded.contains(&w.word))
        .map(|w| {
            let found = newest.get(&w.word);
            let said = found.map_or_else(|| say!(&page.locale, listen::last_never), |f| said(page, *f));
            Last { says: w.says.as_str(), at: found.map(|f| f.0), said }
        })
        .collect()
}

fn said(page: &AnimalPage, (at, certainty): (Moment, f64)) -> String {
    let (l, zone) = (&page.locale, &page.zone);
    let when = match at.day(zone) == page.now.day(zone) {
        true => l.time_seconds(at, zone),
        false => l.weekday_date_time(at, zone),
    };
    say!(l, listen::last_at, when = when, sure = l.percent(certainty.min(MOST_SURE)))
}

/// The list as JSON, for a page that stays open.
pub async fn json(page: AnimalPage) -> Response {
    Json(last(&page)).into_response()
}

/// The list; `client/last.js` keeps it fresh.
pub fn list(page: &AnimalPage) -> Markup {
    let l = &page.locale;
    html! {
        h3 { (say!(l, listen::last)) }
        ul.plain.num data-ear="last" data-last=(format!("/a/{}/ear/last", page.id)) data-test="last-heard" {
            @for word in last(page) {
                li data-says=(word.says) data-at=[word.at.map(|at| at.millis())] { strong { (word.says) } " " span.quiet data-last-said { (word.said) } }
            }
        }
        p.hint { (say!(l, listen::last_hint)) }
    }
}
