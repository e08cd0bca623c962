//! The week's view: what changed since coach and home last spoke, else since a week ago; each animal in a few lines.

use super::asked::{Asked, ON_A_PAGE, Tab};
use super::open::{Key, Opened};
use super::row::{Of, figures, says, spoken, whose};
use super::view::{around, called, paging};
use crate::asker::Asker;
use crate::desk::Kept;
use crate::fault::told;
use maud::{Markup, html};
use sayso_advisor::desk::{Changed, Line, changes};
use sayso_model::{HomeId, Moment};
use sayso_web::Error;
use sayso_wording::desk::{Names, changed};
use sayso_wording::say;
use std::collections::BTreeMap;

/// Animals on one page: a line or two each.
const MOST: usize = 2 * ON_A_PAGE;

/// An animal with what changed.
struct News {
    key: Key,
    /// Whether coach and home spoke since when it is told; else it is since a week ago.
    spoken: bool,
    since: Moment,
    what: Vec<Changed>,
}

pub async fn show(asker: &Asker, opened: &Opened, asked: Asked) -> Result<Markup, Error> {
    let (l, people) = (&asker.locale(), &asker.host.people);
    let homes: Vec<HomeId> = opened.found.kept.keys().copied().collect();
    let marks = people.marks(asker.signed.account.id).await.map_err(told)?;
    let then = people.spoken(asker.signed.account.id, &homes).await.map_err(told)?;
    // What was kept in a form of before tells nothing any more; then it is since a week ago.
    let then: BTreeMap<HomeId, (Moment, Kept)> =
        then.into_iter().filter_map(|(home, s)| Some((home, (s.at, Kept::read(s.form, &s.bytes)?)))).collect();
    let news = opened.rows.iter().filter_map(|row| {
        let animal = opened.animal(row.key)?;
        let known = then.get(&row.key.0).and_then(|(at, kept)| Some((*at, &kept.animals.get(&row.key.1)?.line)));
        let before: &Line = known.map_or(&animal.week_ago, |(_, line)| line);
        let what = changes(before, &animal.line);
        let spoken = known.map(|(at, _)| at);
        Some(News { key: row.key, spoken: spoken.is_some(), since: spoken.unwrap_or(before.at), what })
    });
    // How many days something was written on is no news by itself.
    let is_new = |news: &News| news.what.iter().any(|c| !matches!(c, Changed::Written { .. }));
    let (new, same): (Vec<News>, Vec<News>) = news.partition(is_new);
    let pages = new.len().div_ceil(MOST).max(1);
    let at = asked.page.clamp(1, pages);
    let one = |news: &News| -> Markup {
        let Some(animal) = opened.animal(news.key) else { return html! {} };
        let says = says(l, animal);
        let names = Names { animal: &animal.name, says: &says };
        let home = called(l, &opened.found, news.key.0);
        let of = Of {
            l,
            now: asker.now,
            asked: &Asked::default(),
            key: news.key,
            animal,
            home,
            goes_on: &opened.goes_on,
            mark: marks.get(&news.key.0),
            norms: None,
        };
        let day = l.weekday_date(news.since.day(&animal.line.zone));
        html! {
            li.desk-row data-test="news" {
                div.who-is {
                    (whose(&of))
                    p.quiet data-test="since" {
                        @if news.spoken { (say!(l, desk_page::since_spoken, day = day)) }
                        @else { (say!(l, desk_page::since_week, day = day)) }
                    }
                }
                ul.need { @for what in &news.what { li data-test="changed" { (changed(l, &names, what)) } } }
                (figures(l, animal, asker.now, &says))
                div.does { (spoken(&of, "week")) }
            }
        }
    };
    Ok(asker.wide_with(
        &["client/desk.js"],
        &say!(l, desk_page::week_title),
        html! {
            (around(l, &opened.found, Tab::Week, &Asked::default()))
            p.quiet { (say!(l, desk_page::week_how)) }
            @if new.is_empty() { p data-test="no-news" { (say!(l, desk_page::no_news)) } }
            @else {
                p.quiet.keys { (say!(l, desk_page::keys_week)) }
                ul.desk.close data-test="desk" { @for news in new.iter().skip((at - 1) * MOST).take(MOST) { (one(news)) } }
            }
            (paging(l, (at, pages), |page| format!("{}?page={page}", Tab::Week.path())))
            @if !same.is_empty() && at == pages {
                details {
                    summary data-test="same" { (say!(l, desk_page::same, count = same.len())) }
                    ul.desk.close { @for news in same.iter().take(MOST) { (one(news)) } }
                    @if same.len() > MOST { p.quiet { (say!(l, desk_page::same_more, count = same.len() - MOST)) } }
                }
            }
        },
    ))
}
