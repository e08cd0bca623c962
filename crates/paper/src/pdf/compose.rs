//! Blocks made into strips, with the structure they have for screen readers.

use super::MM;
use super::chart::{self, Means};
use super::face::{Faces, Span, Weight};
use super::picture::Pictures;
use super::strip::{BLACK, Grey, Ink, RULE, SOFT, Strip, height, stacked};
use super::tree::{Branch, Kind, Leaf};
use crate::sheet::{Block, Chart, LabelSize, LabelText, Look, Paragraph, Sheet};
use sayso_wording::Locale;
use std::num::NonZeroU16;

/// Sizes of type at scale 1, points.
const TITLE: f32 = 18.0;
const HEADING: f32 = 12.0;
const BIG: f32 = 12.5;
pub const TEXT: f32 = 10.0;
pub const SMALL: f32 = 8.5;

/// From one baseline to the next, and from the upper edge of a line to its baseline, in parts of the size.
pub const LEADING: f32 = 1.3;
pub const ASCENT: f32 = 1.0;

/// Smallest type, points; where text is made smaller to fit one page.
const LEAST: f32 = 7.5;

/// Smallest scale of type.
const LEAST_SCALE: f32 = 0.8;

/// Part of the width that text takes beside charts, and the gap between them, points.
const BESIDE: f32 = 0.57;
const GUTTER: f32 = 16.0;

/// Inside a frame, points.
const PAD: f32 = 6.0;

/// Between labels.
const GAP: f32 = 2.0 * MM;

/// Strips and their structure.
pub type Composed = (Vec<Strip>, Vec<Branch>);

/// Makes strips of one scale; counts the leaves of the structure.
pub struct Compose<'a> {
    pub faces: &'a Faces,
    pub pictures: &'a Pictures,
    pub locale: &'a Locale,
    pub scale: f32,
    leaves: usize,
}

impl<'a> Compose<'a> {
    pub const fn new(faces: &'a Faces, pictures: &'a Pictures, locale: &'a Locale, scale: f32) -> Self {
        Self { faces, pictures, locale, scale, leaves: 0 }
    }

    /// The whole sheet for pages with this room.
    pub fn sheet(mut self, sheet: &Sheet, room: (f32, f32)) -> Composed {
        let (mut strips, mut tree) = self.heading(&sheet.title, NonZeroU16::MIN, TITLE, room.0);
        for block in &sheet.blocks {
            let (more, branches) = self.block(block, room);
            strips.extend(more);
            tree.extend(branches);
        }
        (strips, tree)
    }

    pub fn leaf(&mut self) -> Leaf {
        self.leaves += 1;
        Leaf(self.leaves - 1)
    }

    /// A size of type at this scale.
    pub fn size(&self, size: f32) -> f32 {
        // Below this only gaps and charts go on shrinking: type stays as large.
        (size * self.scale.max(LEAST_SCALE)).max(LEAST.min(size))
    }

    fn gap(&self, points: f32) -> Strip {
        Strip::space(points * self.scale)
    }

    fn block(&mut self, block: &Block, room: (f32, f32)) -> Composed {
        let width = room.0;
        match block {
            Block::Heading(text) => self.heading(text, NonZeroU16::MIN.saturating_add(1), HEADING, width),
            Block::Paragraph(p) => self.paragraph(p, width),
            Block::More { text, .. } => {
                let (lead, text) = (String::new(), text.clone());
                self.paragraph(&Paragraph { lead, text, look: Look::Quiet }, width)
            }
            Block::ToWrite(text) => self.line_to_write_on(text, width),
            Block::List { items, big } => self.list(items, if *big { BIG } else { TEXT }, width),
            Block::Facts(facts) => self.facts(facts, width),
            Block::Table(table) => self.table(table, width),
            Block::Beside { text, charts } => self.beside(text, charts, room),
            Block::Labels { size, labels } => self.labels(*size, labels, width),
        }
    }

    fn heading(&mut self, text: &str, level: NonZeroU16, size: f32, width: f32) -> Composed {
        let leaf = self.leaf();
        let first = level == NonZeroU16::MIN;
        let above = if first { 0.0 } else { 8.0 * self.scale };
        let mut strip = Strip::space(above);
        strip.height += self.text(&mut strip, leaf, &[(Weight::Bold, text)], size, BLACK, (0.0, above, width));
        strip.height += if first { 4.0 } else { 2.0 } * self.scale;
        strip.with_next = true;
        strip.heading = Some(text.to_owned());
        (vec![strip], vec![Branch::around(Kind::Heading(level, text.to_owned()), leaf)])
    }

    /// Draws text into a strip at x, y and within a width; gives its height.
    pub fn text(
        &self,
        strip: &mut Strip,
        leaf: Leaf,
        spans: &[Span<'_>],
        size: f32,
        grey: Grey,
        (x, y, width): (f32, f32, f32),
    ) -> f32 {
        let size = self.size(size);
        let mut baseline = y + ASCENT * size;
        let mut lines = 0_u16;
        for line in self.faces.lines(spans, size, width) {
            let mut at = x;
            for run in line {
                let wide = run.width();
                strip.draw(Some(leaf), Ink::Text { x: at, y: baseline, run, grey });
                at += wide;
            }
            baseline += LEADING * size;
            lines += 1;
        }
        f32::from(lines) * LEADING * size
    }

    /// Text a line a strip, so that it can go on on the next page.
    fn flowing(&self, leaf: Leaf, spans: &[Span<'_>], size: f32, grey: Grey, x: f32, width: f32) -> Vec<Strip> {
        let size = self.size(size);
        let strip = |line: Vec<super::face::Run>| {
            let mut strip = Strip::space(LEADING * size);
            let mut at = x;
            for run in line {
                let wide = run.width();
                strip.draw(Some(leaf), Ink::Text { x: at, y: ASCENT * size, run, grey });
                at += wide;
            }
            strip
        };
        self.faces.lines(spans, size, width - x).into_iter().map(strip).collect()
    }

    fn paragraph(&mut self, p: &Paragraph, width: f32) -> Composed {
        let leaf = self.leaf();
        let lead = if p.text.is_empty() { p.lead.clone() } else { format!("{} ", p.lead) };
        let mut spans: Vec<Span<'_>> = vec![(Weight::Bold, lead.as_str()), (Weight::Regular, p.text.as_str())];
        spans.retain(|s| !s.1.trim().is_empty());
        let tree = vec![Branch::around(Kind::P, leaf)];
        let (size, grey) = if p.look == Look::Quiet { (SMALL, SOFT) } else { (TEXT, BLACK) };
        let line = match p.look {
            Look::Plain | Look::Quiet => {
                let mut strips = self.flowing(leaf, &spans, size, grey, 0.0, width);
                strips.push(self.gap(4.0));
                return (strips, tree);
            }
            Look::Boxed => 0.75,
            Look::Stop => 2.5,
        };
        let mut strip = Strip::default();
        let pad = PAD * self.scale;
        let tall = self.text(&mut strip, leaf, &spans, size, grey, (pad, pad, width - 2.0 * pad));
        let high = tall + 2.0 * pad;
        strip.draw(None, Ink::Frame { x: 0.0, y: 0.0, width, height: high, line });
        strip.height = high;
        (vec![strip, self.gap(6.0)], tree)
    }

    /// A label, and the rest of its line to write on.
    fn line_to_write_on(&mut self, text: &str, width: f32) -> Composed {
        let leaf = self.leaf();
        let mut strip = Strip::default();
        let room = LEADING * self.size(TEXT) * 1.2;
        let named = self.faces.width(Weight::Regular, self.size(SMALL), text).min(0.6 * width);
        let spans: [Span<'_>; 1] = [(Weight::Regular, text)];
        let tall =
            self.text(&mut strip, leaf, &spans, SMALL, SOFT, (0.0, room - LEADING * self.size(SMALL), named + 1.0));
        let line = ((named + PAD, room - 2.0), (width, room - 2.0));
        strip.draw(None, Ink::Line { from: line.0, to: line.1, width: 0.5, grey: RULE, dashed: true });
        strip.height = room.max(tall) + 3.0 * self.scale;
        strip.with_next = true;
        (vec![strip], vec![Branch::around(Kind::P, leaf)])
    }

    fn list(&mut self, items: &[String], size: f32, width: f32) -> Composed {
        let (mut strips, mut branches) = (Vec::new(), Vec::new());
        let indent = 1.1 * self.size(size);
        for item in items {
            let (label, body) = (self.leaf(), self.leaf());
            let mut lines = self.flowing(body, &[(Weight::Regular, item)], size, BLACK, indent, width);
            if let Some(first) = lines.first_mut() {
                let run = self.faces.run(Weight::Regular, self.size(size), "\u{2022}");
                let y = ASCENT * self.size(size);
                first.inks.insert(0, (Some(label), Ink::Text { x: 0.25 * indent, y, run, grey: BLACK }));
            }
            strips.append(&mut lines);
            strips.push(self.gap(1.5));
            let parts = vec![Branch::around(Kind::Label, label), Branch::around(Kind::Body, body)];
            branches.push(Branch::Element(Kind::Item, parts));
        }
        strips.push(self.gap(3.0));
        (strips, vec![Branch::Element(Kind::List, branches)])
    }

    fn facts(&mut self, facts: &[(String, String)], width: f32) -> Composed {
        let size = self.size(TEXT);
        let names = facts.iter().map(|f| self.faces.width(Weight::Regular, size, &f.0)).fold(0.0, f32::max);
        let indent = (names + 8.0).min(0.45 * width);
        let (mut strips, mut branches) = (Vec::new(), Vec::new());
        for (name, text) in facts {
            let (label, body) = (self.leaf(), self.leaf());
            let mut strip = Strip::default();
            let named = format!("{name} ");
            let spans: [Span<'_>; 1] = [(Weight::Regular, &named)];
            let left = self.text(&mut strip, label, &spans, TEXT, SOFT, (0.0, 0.0, indent - 4.0));
            let spans: [Span<'_>; 1] = [(Weight::Regular, text)];
            let right = self.text(&mut strip, body, &spans, TEXT, BLACK, (indent, 0.0, width - indent));
            strip.height = left.max(right);
            strips.push(strip);
            let parts = vec![Branch::around(Kind::Label, label), Branch::around(Kind::Body, body)];
            branches.push(Branch::Element(Kind::Item, parts));
        }
        strips.push(self.gap(3.0));
        (strips, vec![Branch::Element(Kind::List, branches)])
    }

    /// Text on the left, charts on the right; one under the other where no page holds them side by side.
    fn beside(&mut self, text: &[Block], charts: &[Chart], room: (f32, f32)) -> Composed {
        let before = self.leaves;
        let left = BESIDE * room.0;
        let right = room.0 - left - GUTTER;
        let (strips, mut tree) = self.blocks(text, (left, room.1));
        let (drawn, pictures) = self.charts(charts, right);
        let tall = height(&strips).max(height(&drawn));
        if tall <= room.1 {
            let mut whole = Strip::space(tall);
            whole.heading = strips.iter().find_map(|s| s.heading.clone());
            stacked(strips, &mut whole, 0.0, 0.0);
            stacked(drawn, &mut whole, left + GUTTER, 0.0);
            tree.extend(pictures);
            return (vec![whole], tree);
        }
        self.leaves = before;
        let (mut strips, mut tree) = self.blocks(text, room);
        let (drawn, pictures) = self.charts(charts, right.max(0.5 * room.0));
        strips.extend(drawn);
        tree.extend(pictures);
        (strips, tree)
    }

    fn blocks(&mut self, blocks: &[Block], room: (f32, f32)) -> Composed {
        let (mut strips, mut tree) = (Vec::new(), Vec::new());
        for block in blocks {
            let (more, branches) = self.block(block, room);
            strips.extend(more);
            tree.extend(branches);
        }
        (strips, tree)
    }

    fn charts(&mut self, charts: &[Chart], width: f32) -> Composed {
        let (mut strips, mut tree) = (Vec::new(), Vec::new());
        let means = Means { faces: self.faces, locale: self.locale, scale: self.scale };
        for one in charts {
            let (caption, drawing) = (self.leaf(), self.leaf());
            let mut strip = Strip::default();
            let spans: [Span<'_>; 1] = [(Weight::Bold, &one.title)];
            let named = self.text(&mut strip, caption, &spans, SMALL + 0.5, BLACK, (0.0, 2.0, width));
            let picture = chart::draw(means, &one.drawn, drawing, width);
            strip.height = named + picture.height + 8.0 * self.scale;
            strip.take(picture, 0.0, named + 2.0);
            strips.push(strip);
            let parts = vec![Branch::around(Kind::Caption, caption), Branch::Leaf(drawing)];
            tree.push(Branch::Element(Kind::Figure(one.told.clone()), parts));
        }
        (strips, tree)
    }

    fn labels(&mut self, size: LabelSize, labels: &[LabelText], width: f32) -> Composed {
        let (wide, high) = size.mm();
        let (wide, high) = (f32::from(wide) * MM, f32::from(high) * MM);
        let mut in_row = 1_u16;
        while f32::from(in_row) * GAP + f32::from(in_row + 1) * wide <= width {
            in_row += 1;
        }
        let (mut strips, mut branches) = (Vec::new(), Vec::new());
        for row in labels.chunks(usize::from(in_row)) {
            let mut strip = Strip::space(high + GAP);
            let mut x = 0.0;
            for label in row {
                let leaf = self.leaf();
                strip.draw(None, Ink::Frame { x, y: 0.0, width: wide, height: high, line: 0.75 });
                self.label(&mut strip, leaf, label, (x, wide, high));
                branches.push(Branch::Element(Kind::Item, vec![Branch::around(Kind::Body, leaf)]));
                x += wide + GAP;
            }
            strips.push(strip);
        }
        (strips, vec![Branch::Element(Kind::List, branches)])
    }

    /// A word in the middle of its label, as large as its longest part and the label allow, under its picture if it has one.
    fn label(&self, strip: &mut Strip, leaf: Leaf, label: &LabelText, (x, wide, high): (f32, f32, f32)) {
        let says = label.says.as_str();
        let mut inside = (wide - 4.0 * MM, high - 4.0 * MM);
        let mut size = high / 4.5;
        let mut above = 0.0;
        if let Some((width, height)) = self.pictures.inside(label.word, (inside.0, 0.6 * inside.1)) {
            let ink = Ink::Picture { x: x + (wide - width) / 2.0, y: 2.0 * MM, width, height, word: label.word };
            strip.draw(None, ink);
            above = height + MM;
            inside.1 -= above;
        }
        let longest =
            |size: f32| says.split_whitespace().map(|w| self.faces.width(Weight::Bold, size, w)).fold(0.0, f32::max);
        let tall = |size: f32| {
            let lines = self.faces.lines(&[(Weight::Bold, says)], size, inside.0).len();
            f32::from(u16::try_from(lines).unwrap_or(u16::MAX)) * LEADING * size
        };
        while size > LEAST && (longest(size) > inside.0 || tall(size) > inside.1) {
            size *= 0.95;
        }
        let mut baseline = above + (high - above - tall(size)) / 2.0 + ASCENT * size;
        for line in self.faces.lines(&[(Weight::Bold, says)], size, inside.0) {
            for run in line {
                let shown = self.faces.width(run.weight, size, run.text.trim_end());
                let at = x + (wide - shown) / 2.0;
                strip.draw(Some(leaf), Ink::Text { x: at, y: baseline, run, grey: BLACK });
            }
            baseline += LEADING * size;
        }
    }
}
