//! A sheet's blocks as a page.

use crate::chart::{self, Axis, bars, whiskers};
use crate::page::Page;
use crate::picture;
use maud::{Markup, html};
use sayso_model::{PictureOf, WordId};
use sayso_paper::{Block, Cell, Chart, Drawn, LabelSize, LabelText, Look, Paragraph, Rest, Table};
use sayso_wording::Locale;

pub fn blocks(page: &Page, all: &[Block]) -> Markup {
    html! { @for block in all { (one(page, block)) } }
}

fn one(page: &Page, block: &Block) -> Markup {
    match block {
        Block::Heading(text) => html! { h2 { (text) } },
        Block::Paragraph(p) => paragraph(p),
        Block::More { text, at } => html! { p.quiet { a href=(rest(page, *at)) data-test="more" { (text) } } },
        Block::ToWrite(text) => html! { p.quiet.to-write { span { (text) } " " span.write {} } },
        Block::List { items, big } => html! { ul.big[*big] { @for item in items { li { (item) } } } },
        Block::Facts(facts) => html! { dl.facts { @for (name, text) in facts { dt { (name) } dd { (text) } } } },
        Block::Table(table) => self::table(page, table),
        Block::Beside { text, charts } => html! {
            div.beside {
                div { (blocks(page, text)) }
                div { @for c in charts { (drawing(&page.locale, c)) } }
            }
        },
        Block::Labels { size, labels } => self::labels(page, *size, labels),
    }
}

/// The address at which the rest of something stands.
fn rest(page: &Page, at: Rest) -> String {
    match (at, page.animal) {
        (Rest::Evidence, Some(animal)) => format!("/a/{animal}/evidence"),
        (Rest::Evidence, None) => "/".to_owned(),
        (Rest::Talk, _) => page.of_home_with("/talk", &[]),
    }
}

fn of_word(page: &Page, word: WordId) -> Markup {
    picture::of(&page.story, PictureOf::Word { word })
}

fn paragraph(p: &Paragraph) -> Markup {
    let class = match p.look {
        Look::Plain => None,
        Look::Quiet => Some("quiet"),
        Look::Boxed => Some("box"),
        Look::Stop => Some("stop"),
    };
    html! { p class=[class] { @if !p.lead.is_empty() { strong { (p.lead) } " " } (p.text) } }
}

fn table(page: &Page, table: &Table) -> Markup {
    // What is to be read by rows and columns stays so, and moves sideways on a small screen.
    if table.whole {
        return html! { div.scroll tabindex="0" role="region" aria-label=(table.head.join(", ")) { (rows(page, table, false)) } };
    }
    rows(page, table, true)
}

fn rows(page: &Page, table: &Table, stacks: bool) -> Markup {
    html! {
        table.stacks[stacks] {
            @if !table.caption.is_empty() { caption { span.quiet { (table.caption) } } }
            thead { tr { @for name in &table.head { th scope="col" { (name) } } } }
            tbody { @for row in &table.rows { tr { @for (i, (cell, name)) in row.cells.iter().zip(&table.head).enumerate() {
                @if i == 0 { th scope="row" { (row.word.map(|word| of_word(page, word)).unwrap_or_default()) (self::cell(cell)) } } @else { td data-label=(name) { (self::cell(cell)) } }
            } } } }
        }
    }
}

fn cell(cell: &Cell) -> Markup {
    html! {
        @if cell.crossed { span.cross {} } @else if cell.text.is_empty() { span.write {} }
        @else if cell.strong { strong { (cell.text) } } @else { (cell.text) }
        @for hint in &cell.hints { span.hint { (hint) } }
        @for text in &cell.more { p.own { (text) } }
    }
}

fn labels(page: &Page, size: LabelSize, labels: &[LabelText]) -> Markup {
    html! {
        ul class={ "labels " (size.name()) } {
            @for label in labels { li class=[(label.says.chars().count() > 12).then_some("long")] { (of_word(page, label.word)) span { (label.says) } } }
        }
    }
}

fn drawing(l: &Locale, chart: &Chart) -> Markup {
    match &chart.drawn {
        #[allow(clippy::cast_precision_loss)]
        Drawn::Bars { x, y, bars: all } => {
            let all: Vec<chart::Bar> = all
                .iter()
                .map(|b| chart::Bar {
                    tick: b.tick.clone(),
                    name: b.name.clone(),
                    value: b.count as f64,
                    interval: None,
                    n: None,
                })
                .collect();
            bars(l, &chart.title, &chart.told, x, y, &all)
        }
        Drawn::Whiskers { x, level, rows } => whiskers(l, &chart.title, &chart.told, &Axis::share(l, x), *level, rows),
    }
}
