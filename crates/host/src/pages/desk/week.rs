//! The week's view: what changed since coach and home last spoke, else since a week ago; each animal in one row, so that a caseload of
//! ten stands on one screen.

use super::asked::{Asked, ON_A_PAGE, Tab};
use super::begun::news_of_homes;
use super::figures::{figures, heads, key};
use super::open::{Key, Opened, Unheard};
use super::row::{Of, called, says, spoken, unheard, whose};
use super::view::{around, keys, paging};
use crate::asker::Asker;
use crate::desk::Kept;
use crate::fault::told;
use crate::pages::homes::restored_told;
use maud::{Markup, html};
use sayso_advisor::desk::{Changed, Line, changes};
use sayso_model::{HomeId, Moment, WordId};
use sayso_web::Error;
use sayso_wording::desk::{Names, changed};
use sayso_wording::say;
use std::collections::BTreeMap;

/// Animals on one page: a row each.
const MOST: usize = 2 * ON_A_PAGE;
/// Words whose presses are drawn in a row.
const WORDS: usize = 1;
/// Lines of a row for what changed, and letters of about one line, beside the figures. What is longer is unfolded.
const LINES: usize = 3;
const LETTERS: usize = 50;

/// An animal with what changed.
struct News<'a> {
    key: Key,
    /// What the home answered, and what another coach wrote in this one's place.
    unheard: Option<&'a Unheard>,
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
        let since = spoken.unwrap_or(before.at);
        Some(News {
            key: row.key,
            unheard: opened.unheard_of((row.key.0, Some(row.key.1))),
            spoken: spoken.is_some(),
            since,
            what,
        })
    });
    let (new, same): (Vec<News<'_>>, Vec<News<'_>>) =
        news.partition(|news| !news.what.is_empty() || news.unheard.is_some());
    let pages = new.len().div_ceil(MOST).max(1);
    let at = asked.page.clamp(1, pages);
    let one = |news: &News<'_>| -> Markup {
        let Some(animal) = opened.animal(news.key) else { return html! {} };
        let words = opened.found.words(news.key.0);
        let says = says(l, words);
        let home = called(l, &opened.found, news.key.0);
        let of = Of {
            l,
            now: asker.now,
            asked: &Asked::default(),
            key: news.key,
            animal,
            home,
            words,
            goes_on: &opened.goes_on,
            mark: marks.get(&news.key.0),
            unheard: news.unheard,
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
                // In the order in which they are seen, which is that of the keys.
                div.does { (spoken(&of, "week")) }
                (figures(l, &animal.line, asker.now, &says, WORDS))
                (new_things(&of, &news.what, &says))
            }
        }
    };
    Ok(asker.wide_with(
        &["client/desk.js"],
        &say!(l, desk_page::week),
        html! {
            (around(l, &opened.found, Tab::Week, &Asked::default()))
            (restored_told(l, opened.restored))
            @let of_homes = if at == pages { news_of_homes(l, opened, &marks) } else { None };
            @if new.is_empty() && of_homes.is_none() { p data-test="no-news" { (say!(l, desk_page::no_news)) } }
            @if !new.is_empty() {
                (heads(l))
                ul.desk.close data-test="desk" { @for news in new.iter().skip((at - 1) * MOST).take(MOST) { (one(news)) } }
                // Below the rows, of which as many as can be stand on one screen.
                (key(l))
                (keys(l, &say!(l, desk_page::keys_week)))
            }
            @if let Some(of_homes) = of_homes { (of_homes) }
            p.quiet { (say!(l, desk_page::week_how)) }
            (paging(l, (at, pages), |page| format!("{}?page={page}", Tab::Week.path())))
            @if !same.is_empty() && at == pages {
                details {
                    summary data-test="same" { (say!(l, desk_page::same, count = same.len())) }
                    (heads(l))
                    ul.desk.close { @for news in same.iter().take(MOST) { (one(news)) } }
                    @if same.len() > MOST { p.quiet { (say!(l, desk_page::same_more, count = same.len() - MOST)) } }
                }
            }
        },
    ))
}

/// What is new of an animal: signs first, then what the home answered, then the rest; as much as fits the row, the others unfolded.
fn new_things(of: &Of<'_>, what: &[Changed], says: &dyn Fn(WordId) -> String) -> Markup {
    let names = Names { animal: &of.animal.name, says };
    let (signs, others): (Vec<&Changed>, Vec<&Changed>) =
        what.iter().partition(|changed| matches!(changed, Changed::Signs { .. }));
    let told = |all: Vec<&Changed>| -> Vec<String> { all.into_iter().map(|c| changed(of.l, &names, c)).collect() };
    let (signs, others) = (told(signs), told(others));
    let beside = lines_of(&signs) + of.unheard.map_or(0, |new| new.answers.len() + new.stood_in.len());
    let (shown, more) = others.split_at(shown(&others, beside));
    html! {
        div.news {
            ul {
                @for one in &signs { li.sign data-test="changed" { (one) } }
                @if let Some(new) = of.unheard { (unheard(of.l, (of.key.0, &of.animal.line.zone), new, says)) }
                @for one in shown { li data-test="changed" { (one) } }
            }
            @if !more.is_empty() {
                details {
                    summary { @if signs.is_empty() && shown.is_empty() { (say!(of.l, desk_page::changes_folded, count = more.len())) } @else { (say!(of.l, desk_page::changes_more, count = more.len())) } }
                    ul { @for one in more { li data-test="changed" { (one) } } }
                }
            }
        }
    }
}

fn lines_of(told: &[String]) -> usize {
    told.iter().map(|one| one.chars().count().div_ceil(LETTERS)).sum()
}

/// How many sentences stand in a row beside lines of something else. A row that only said how many more there are would tell nothing.
fn shown(told: &[String], beside: usize) -> usize {
    let least = usize::from(beside == 0 && !told.is_empty());
    fitting(told, LINES.saturating_sub(beside)).max(least)
}

/// How many of some sentences fit into so many lines; where not all do, one line is kept to unfold the rest.
fn fitting(told: &[String], lines: usize) -> usize {
    if lines_of(told) <= lines {
        return told.len();
    }
    (0..told.len()).rev().find(|n| lines_of(told.get(..*n).unwrap_or_default()) < lines).unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_does_not_fit_leaves_a_line_to_unfold_it() {
        let told = ["short", &"long ".repeat(16), "short"].map(str::to_owned);
        assert_eq!(fitting(&told, 4), 3);
        assert_eq!(fitting(&told, 3), 1, "two lines would fit, and the third is for the rest");
        assert_eq!((fitting(&told, 1), fitting(&told, 0), fitting(&[], 0)), (0, 0, 0));
    }

    #[test]
    fn a_row_tells_one_thing_at_least() {
        let long = vec!["long ".repeat(60); 3];
        assert_eq!((fitting(&long, LINES), shown(&long, 0), shown(&long, 1), shown(&[], 0)), (0, 1, 0, 0));
    }
}
