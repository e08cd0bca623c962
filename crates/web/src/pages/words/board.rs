//! Where the buttons are. Words an animal knows stay where they are unless a person says so twice.

use super::layout_form::{field, lists, read};
use super::places;
use crate::error::Error;
use crate::fields::{select, summary, tick};
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::pages::people::{StepName, along, onward};
use crate::typed::{Typed, again};
use axum::extract::Query;
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use sayso_model::{BoardLayout, Language, Placed, WordCard};
use sayso_wording::say;
use serde::Deserialize;

/// Places in a row or column at most.
const MOST: u16 = 20;

#[derive(Deserialize)]
pub struct Size {
    #[serde(default)]
    rows: String,
    #[serde(default)]
    columns: String,
    #[serde(default)]
    propose: String,
}

fn words(page: &AnimalPage) -> Vec<&WordCard> {
    let mut words: Vec<_> = page.story.words().into_values().filter(|w| w.active).collect();
    words.sort_by(|a, b| a.says.cmp(&b.says).then(a.word.cmp(&b.word)));
    words
}

pub async fn show(page: AnimalPage, Query(asked): Query<Size>) -> Markup {
    let before = page.story.board();
    let mut typed = Typed::default()
        .with_some("rows", (!asked.rows.is_empty()).then_some(asked.rows))
        .with_some("columns", (!asked.columns.is_empty()).then_some(asked.columns))
        .with("rows", before.map_or(2, |b| b.rows))
        .with("columns", before.map_or(3, |b| b.columns))
        .with("language", language(&page).tag());
    let size = size(&mut typed);
    let cards = words(&page);
    let inside = |p: &&Placed| p.row < size.0 && p.column < size.1 && cards.iter().any(|w| w.word == p.word);
    let placed: Vec<Placed> = before.map_or(&[][..], |b| &b.words).iter().filter(inside).copied().collect();
    // On a board never drawn nothing is moved by a proposal.
    if (!asked.propose.is_empty() || (before.is_none() && !cards.is_empty())) && typed.right() {
        return proposal(&page, size, placed, &cards, language(&page));
    }
    for p in placed {
        typed = typed.with(&field(p.row, p.column), p.word);
    }
    form(&page, &typed, size, &[])
}

/// The language of the board: a board never drawn begins with the reader's, one drawn before the choice is read as English.
fn language(page: &AnimalPage) -> Language {
    if page.story.board().is_some() { page.story.language_of_words() } else { page.label_language() }
}

fn size(typed: &mut Typed) -> (u8, u8) {
    let mut of = |name| typed.whole(name, 1, MOST).and_then(|n| u8::try_from(n).ok());
    let (rows, columns) = (of("rows"), of("columns"));
    (rows.unwrap_or(1), columns.unwrap_or(1))
}

/// Keeps the board, or shows what was picked so far in another size or with places proposed; nothing picked is lost.
pub async fn save(page: AnimalPage, typed: Typed) -> Result<Response, Error> {
    let mut typed = typed;
    let (rows, columns) = size(&mut typed);
    for name in ["rows", "columns"] {
        if typed.text(name).is_empty() {
            typed.wrong(name, say!(&page.locale, words::size_missing));
        }
    }
    if !typed.right() {
        return Ok(again(form(&page, &typed, (rows, columns), &[])));
    }
    // Places beyond the size may still be picked in a form that was drawn larger.
    let most = u8::try_from(MOST).unwrap_or(u8::MAX);
    let names: Vec<String> = (0..most).flat_map(|r| (0..most).map(move |c| field(r, c))).collect();
    let fields: Vec<&str> =
        names.iter().map(String::as_str).chain(["rows", "columns", "language", "move", "step"]).collect();
    let mut typed = typed.only(&fields)?;
    // A form from before the choice leaves it as it is.
    let said_in =
        typed.one_of("language", &Language::ALL, Language::tag).or_else(|| page.story.board().and_then(|b| b.language));
    let cards = words(&page);
    let outside = |n: &&String| !(0..rows).any(|r| (0..columns).any(|c| **n == field(r, c)));
    if typed.text("step") != "size" && names.iter().filter(outside).any(|n| !typed.text(n).is_empty()) {
        typed.wrong("rows", say!(&page.locale, words::size_leaves_out));
    }
    let placed = read(&page.locale, &mut typed, rows, columns, &cards);
    match typed.text("step") {
        "size" => return Ok(form(&page, &typed, (rows, columns), &[]).into_response()),
        "propose" if typed.right() => {
            return Ok(
                proposal(&page, (rows, columns), placed, &cards, said_in.unwrap_or(Language::En)).into_response()
            );
        }
        _ => {}
    }
    let moved = moved(&page, &placed);
    if !moved.is_empty() && !typed.ticked("move") && typed.right() {
        typed.wrong("move", say!(&page.locale, words::move_unticked));
    }
    if typed.right() {
        let first = page.story.board().is_none() && !placed.is_empty();
        let board = BoardLayout { rows, columns, words: placed, language: said_in };
        if typed.kept(page.keep(vec![page.about_home(board)]).await)? {
            let to =
                if first { onward(&page, &page.card, StepName::Places) } else { format!("/a/{}/words#where", page.id) };
            return Ok(Redirect::to(&to).into_response());
        }
    }
    Ok(again(form(&page, &typed, (rows, columns), &moved)))
}

/// The form with places proposed for the words that have none.
fn proposal(
    page: &AnimalPage,
    size: (u8, u8),
    mut placed: Vec<Placed>,
    cards: &[&WordCard],
    said_in: Language,
) -> Markup {
    let mut typed = Typed::default()
        .read_by(page.locale)
        .with("rows", size.0)
        .with("columns", size.1)
        .with("language", said_in.tag());
    match places::proposed(page, size, &placed, cards, said_in) {
        Ok(proposed) => placed = proposed,
        Err(why) => typed.wrong("places", say!(&page.locale, words::no_places, why = why)),
    }
    for p in placed {
        typed = typed.with(&field(p.row, p.column), p.word);
    }
    form(page, &typed, size, &[])
}

/// Words in use that would stand elsewhere, or nowhere.
fn moved(page: &AnimalPage, placed: &[Placed]) -> Vec<String> {
    let (cards, l) = (page.story.words(), &page.locale);
    let Some(before) = page.story.board() else { return Vec::new() };
    before
        .words
        .iter()
        .filter(|old| cards.get(&old.word).is_some_and(|w| w.active) && !placed.contains(old))
        .filter_map(|old| {
            cards.get(&old.word).map(|w| match placed.iter().find(|p| p.word == old.word) {
                Some(new) => say!(l, words::to_place, says = &w.says, row = new.row + 1, place = new.column + 1),
                None => say!(l, words::off_board, says = &w.says),
            })
        })
        .collect()
}

fn form(page: &AnimalPage, typed: &Typed, (rows, columns): (u8, u8), moved: &[String]) -> Markup {
    let (words, l) = (words(page), &page.locale);
    let free: Vec<&&WordCard> = words
        .iter()
        .filter(|w| !(0..rows).any(|r| (0..columns).any(|c| typed.text(&field(r, c)) == w.word.to_string())))
        .collect();
    let to = format!("/a/{}/words/board", page.id);
    let languages = Language::ALL.map(|language| (language.tag().to_owned(), language.own_name().to_owned()));
    let sized = |name: &str, label: &str, now: u8| {
        html! {
            div.field {
                label for=(name) { (label) }
                select id=(name) name=(name) { @for n in 1..=MOST { option value=(n) selected[u16::from(now) == n] { (n) } } }
            }
        }
    };
    layout(
        page,
        Tab::Words,
        &say!(l, words::board_title),
        html! {
            @if page.story.board().is_none() { (along(page, &page.card, StepName::Places)) }
            (summary(typed))
            @if !moved.is_empty() {
                div.caution { p { (say!(l, words::would_move)) }
                    ul { @for m in moved { li { (m) } } } }
            }
            form method="post" action=(to) .stack {
                div.row.even {
                    (sized("rows", &say!(l, words::rows), rows))
                    (sized("columns", &say!(l, words::columns), columns))
                    button name="step" value="size" formaction=(format!("{to}#board")) { (say!(l, words::change_size)) }
                }
                (select(typed, "language", &say!(l, words::board_language), &say!(l, words::board_language_hint), &languages))
                (lists(l, typed, rows, columns, &words))
                @if !free.is_empty() {
                    p #places { (say!(l, words::not_on_it, words = l.names(&free.iter().map(|w| w.says.as_str()).collect::<Vec<_>>()))) " "
                        button name="step" value="propose" formaction=(format!("{to}#board")) { (say!(l, words::propose_places)) }
                        span.hint { (say!(l, words::places_stay)) } }
                }
                @if !moved.is_empty() { (tick(typed, "move", &say!(l, words::yes_move))) }
                button.primary.wide name="step" value="keep" { @if page.story.board().is_none() { (say!(l, setup::next)) } @else { (say!(l, setup::keep)) } }
            }
            p.quiet { (say!(l, words::mat)) " " (say!(l, hazards::battery)) }
            p { a href=(Tab::Words.href(Some(page.id))) { (say!(l, words::back)) } }
        },
    )
}
