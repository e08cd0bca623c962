//! Tables: columns as wide as what they hold asks for, a row a strip.

use super::compose::{Compose, Composed, LEADING, SMALL, TEXT};
use super::face::{Span, Weight};
use super::strip::{BLACK, Ink, RULE, SOFT, Strip};
use super::tree::{Branch, Kind};
use crate::sheet::{Cell, Row, Table};
use sayso_model::WordId;

/// Between two columns, points.
const BETWEEN: f32 = 8.0;

/// Side of a row's picture, and the gap after it, points.
const PICTURE: f32 = 26.0;
const PICTURE_GAP: f32 = 5.0;

/// Share of the paper that a column takes in which all is to be written by hand.
const TO_WRITE: f32 = 0.3;

/// Above and below a row's text, points.
const AIR: f32 = 2.5;

impl Compose<'_> {
    pub(super) fn table(&mut self, table: &Table, width: f32) -> Composed {
        let (mut strips, mut parts) = (Vec::new(), Vec::new());
        if !table.caption.is_empty() {
            let leaf = self.leaf();
            let mut strip = Strip::default();
            let spans: [Span<'_>; 1] = [(Weight::Regular, &table.caption)];
            strip.height = self.text(&mut strip, leaf, &spans, SMALL, SOFT, (0.0, 0.0, width));
            strip.with_next = true;
            strips.push(strip);
            parts.push(Branch::around(Kind::Caption, leaf));
        }
        let columns = self.columns(table, width);
        let names: Vec<Cell> = table.head.iter().map(|h| Cell::from(h.clone())).collect();
        let (mut head, named) = self.row((&names, None), &columns, width, true);
        head.with_next = true;
        strips.push(head);
        parts.push(Branch::Element(Kind::Head, vec![named]));
        let mut rows = Vec::new();
        for (i, row) in table.rows.iter().enumerate() {
            let (mut strip, branch) = self.row((&row.cells, row.word), &columns, width, false);
            strip.with_next = table.whole && i + 1 < table.rows.len();
            strips.push(strip);
            rows.push(branch);
        }
        parts.push(Branch::Element(Kind::Rows, rows));
        strips.push(Strip::space(5.0 * self.scale));
        (strips, vec![Branch::Element(Kind::Table, parts)])
    }

    /// Widths of the columns: no narrower than the longest word, the rest shared by what each would take in one line.
    fn columns(&self, table: &Table, width: f32) -> Vec<f32> {
        let size = self.size(TEXT);
        let mut least = vec![24.0_f32; table.head.len()];
        let mut most = vec![24.0_f32; table.head.len()];
        let mut see = |column: usize, weight: Weight, size: f32, text: &str| {
            let words = text.split_whitespace().map(|w| self.faces.width(weight, size, w)).fold(0.0, f32::max);
            if let (Some(least), Some(most)) = (least.get_mut(column), most.get_mut(column)) {
                *least = least.max(words);
                *most = most.max(self.faces.width(weight, size, text));
            }
        };
        let mut beside = 0.0_f32;
        for (i, name) in table.head.iter().enumerate() {
            see(i, Weight::Bold, self.size(SMALL), name);
        }
        for row in &table.rows {
            if let Some((wide, _)) = self.picture(row.word) {
                beside = beside.max(wide);
            }
            for (i, cell) in row.cells.iter().enumerate() {
                let weight = if i == 0 || cell.strong { Weight::Bold } else { Weight::Regular };
                see(i, weight, size, &cell.text);
                cell.more.iter().for_each(|text| see(i, Weight::Regular, size, text));
                cell.hints.iter().for_each(|text| see(i, Weight::Regular, self.size(SMALL), text));
            }
        }
        // What is to be filled in by hand takes a hand's room.
        for (i, most) in most.iter_mut().enumerate() {
            let is_to_write = |row: &Row| row.cells.get(i).is_some_and(|cell| *cell == Cell::default());
            if !table.rows.is_empty() && table.rows.iter().all(is_to_write) {
                *most = most.max(TO_WRITE * width);
            }
        }
        // Pictures stand beside the names of rows.
        for first in [least.first_mut(), most.first_mut()].into_iter().flatten() {
            *first += beside;
        }
        let gaps = BETWEEN * f32::from(u16::try_from(table.head.len().saturating_sub(1)).unwrap_or(0));
        // A column that is wide for one long text alone does not starve the others.
        let most: Vec<f32> = most.iter().map(|m| m.min(0.4 * width)).collect();
        let least: Vec<f32> = least.iter().zip(&most).map(|(l, m)| l.min(*m)).collect();
        let room = width - gaps;
        let taken: f32 = least.iter().sum();
        if taken >= room {
            return least.iter().map(|l| l * room / taken).collect();
        }
        let wants: Vec<f32> = least.iter().zip(&most).map(|(l, m)| (m - l).max(1.0)).collect();
        let all: f32 = wants.iter().sum();
        least.iter().zip(wants).map(|(l, want)| l + (room - taken) * want / all).collect()
    }

    /// Room of a row's picture, with the gap after it: width and height, points.
    fn picture(&self, word: Option<WordId>) -> Option<(f32, f32)> {
        let side = PICTURE * self.scale;
        let (width, height) = self.pictures.inside(word?, (side, side))?;
        Some((width + PICTURE_GAP, height))
    }

    fn row(
        &mut self,
        (cells, word): (&[Cell], Option<WordId>),
        columns: &[f32],
        width: f32,
        head: bool,
    ) -> (Strip, Branch) {
        let mut strip = Strip::default();
        let mut branches = Vec::new();
        let (mut at, mut tall) = (0.0, 0.0_f32);
        let air = AIR * self.scale;
        let mut blank = Vec::new();
        let mut beside = 0.0;
        if let (Some(word), Some((room, high))) = (word, self.picture(word)) {
            strip.draw(None, Ink::Picture { x: 0.0, y: air, width: room - PICTURE_GAP, height: high, word });
            (beside, tall) = (room, air + high);
        }
        for (i, (cell, column)) in cells.iter().zip(columns).enumerate() {
            let (x, column) = if i == 0 { (at + beside, column - beside) } else { (at, *column) };
            let leaf = self.leaf();
            let (weight, size) = match (head, i == 0 || cell.strong) {
                (true, _) => (Weight::Bold, SMALL),
                (false, true) => (Weight::Bold, TEXT),
                (false, false) => (Weight::Regular, TEXT),
            };
            let mut y = air;
            if cell.crossed {
                let side = self.size(TEXT);
                strip.draw(None, Ink::Frame { x, y: y + 1.0, width: side, height: side, line: 0.75 });
                y += LEADING * side;
            } else if cell.text.is_empty() {
                // Room to write by hand, on a line.
                let line = LEADING * self.size(TEXT) * 1.2;
                blank.push((x, y + line - 2.0, column));
                y += line;
            } else {
                let ended = format!("{} ", cell.text);
                y += self.text(&mut strip, leaf, &[(weight, &ended)], size, BLACK, (x, y, column));
            }
            for (text, size, grey) in cell
                .hints
                .iter()
                .map(|text| (text, SMALL, SOFT))
                .chain(cell.more.iter().map(|text| (text, TEXT, BLACK)))
            {
                let ended = format!("{text} ");
                y += self.text(&mut strip, leaf, &[(Weight::Regular, &ended)], size, grey, (x, y, column));
            }
            tall = tall.max(y);
            let kind = match (head, i) {
                (true, _) => Kind::ColumnName,
                (false, 0) => Kind::RowName,
                _ => Kind::Cell,
            };
            branches.push(Branch::around(kind, leaf));
            at += columns[i] + BETWEEN;
        }
        for (x, y, wide) in blank {
            let (from, to) = ((x, y), (x + wide, y));
            strip.draw(None, Ink::Line { from, to, width: 0.5, grey: RULE, dashed: true });
        }
        strip.height = tall + air;
        let y = strip.height;
        let (thick, grey) = if head { (0.9, BLACK) } else { (0.4, RULE) };
        strip.draw(None, Ink::Line { from: (0.0, y), to: (width, y), width: thick, grey, dashed: false });
        (strip, Branch::Element(Kind::Row, branches))
    }
}
