//! Charts as vectors: the same data as the page's, the same marks, in black and grey.

use super::face::{Faces, Weight};
use super::strip::{BLACK, FILL, Grey, Ink, RULE, SOFT, Strip};
use super::tree::Leaf;
use crate::sheet::{Bar, Drawn, Whisker};
use sayso_wording::figures::none;
use sayso_wording::{Locale, say};

/// Type in charts, points.
const TICK: f32 = 7.5;
const NAME: f32 = 8.0;

/// Height of the plot of bars, and of a row of whiskers, points.
const BARS: f32 = 92.0;
const ROW: f32 = 22.0;
/// Of a row, what its name takes above the whisker; no line runs through it.
const NAMED: f32 = 11.5;
/// The least of a row that leaves room for both.
const LEAST_ROW: f32 = 18.0;

/// Where text hangs on its place.
#[derive(Clone, Copy)]
enum Anchor {
    Start,
    Middle,
    End,
}

/// What a chart is drawn with.
#[derive(Clone, Copy)]
pub struct Means<'a> {
    pub faces: &'a Faces,
    pub locale: &'a Locale,
    /// Of the sheet, 1 where it has its usual size.
    pub scale: f32,
}

struct Pen<'a> {
    means: Means<'a>,
    strip: Strip,
    leaf: Leaf,
}

impl Pen<'_> {
    fn text(&mut self, text: &str, size: f32, weight: Weight, (x, y): (f32, f32), anchor: Anchor) -> f32 {
        // A space after it: words of a chart are apart for whoever reads the text alone.
        let run = self.means.faces.run(weight, size, &format!("{text} "));
        let wide = self.means.faces.width(weight, size, text);
        let x = match anchor {
            Anchor::Start => x,
            Anchor::Middle => x - wide / 2.0,
            Anchor::End => x - wide,
        };
        self.strip.draw(Some(self.leaf), Ink::Text { x, y, run, grey: if size < NAME { SOFT } else { BLACK } });
        x + wide
    }

    fn line(&mut self, from: (f32, f32), to: (f32, f32), width: f32, grey: Grey, dashed: bool) {
        self.strip.draw(Some(self.leaf), Ink::Line { from, to, width, grey, dashed });
    }
}

/// Draws a chart of this width.
pub fn draw(means: Means<'_>, drawn: &Drawn, leaf: Leaf, width: f32) -> Strip {
    let mut pen = Pen { means, strip: Strip::default(), leaf };
    match drawn {
        Drawn::Bars { x, y, bars } => self::bars(&mut pen, x, y, bars, width),
        Drawn::Whiskers { x, level, rows } => whiskers(&mut pen, x, *level, rows, width),
    }
    pen.strip
}

/// Steps of an axis of counts: about four, of 1, 2 or 5 times a power of ten.
fn step(most: usize) -> usize {
    let mut power = 1;
    loop {
        for m in [1, 2, 5] {
            if m * power * 4 >= most {
                return m * power;
            }
        }
        power *= 10;
    }
}

#[allow(clippy::cast_precision_loss)]
fn bars(pen: &mut Pen<'_>, x_label: &str, y_label: &str, bars: &[Bar], width: f32) {
    let most = bars.iter().map(|b| b.count).max().unwrap_or(0).max(1);
    let step = step(most);
    let top_count = most.div_ceil(step) * step;
    let (left, right, top) = (26.0, width - 2.0, 16.0);
    let bottom = top + BARS * pen.means.scale;
    let y_of = |count: usize| bottom - (bottom - top) * count as f32 / top_count as f32;
    pen.text(y_label, TICK, Weight::Regular, (0.0, 8.0), Anchor::Start);
    for count in (0..=top_count).step_by(step) {
        let y = y_of(count);
        pen.line((left, y), (right, y), 0.4, RULE, false);
        let written = pen.means.locale.number(count as f64, 0);
        pen.text(&written, TICK, Weight::Regular, (left - 4.0, y + 2.6), Anchor::End);
    }
    let slot = (right - left) / bars.len().max(1) as f32;
    // Every so many bars get a tick, so that ticks stand apart.
    let widest = bars.iter().map(|b| pen.means.faces.width(Weight::Regular, TICK, &b.tick)).fold(1.0, f32::max);
    let mut every = 1;
    while slot * (every as f32) < widest + 4.0 {
        every += 1;
    }
    for (i, bar) in bars.iter().enumerate() {
        let x = left + slot * i as f32;
        let y = y_of(bar.count);
        let ink = Ink::Bar { x: x + slot * 0.14, y, width: slot * 0.72, height: bottom - y, grey: FILL };
        pen.strip.draw(Some(pen.leaf), ink);
        if i % every == 0 {
            pen.text(&bar.tick, TICK, Weight::Regular, (x + slot / 2.0, bottom + 9.0), Anchor::Middle);
        }
    }
    pen.text(x_label, TICK, Weight::Regular, (right, bottom + 18.0), Anchor::End);
    pen.strip.height = bottom + 22.0;
}

#[allow(clippy::cast_precision_loss, clippy::cast_possible_truncation)]
fn whiskers(pen: &mut Pen<'_>, x_label: &str, level: Option<f64>, rows: &[Whisker], width: f32) {
    let (left, right, top) = (4.0, width - 12.0, 2.0);
    let row = (ROW * pen.means.scale).max(LEAST_ROW);
    let bottom = top + row * rows.len() as f32;
    let x_of = |share: f64| left + (right - left) * share.clamp(0.0, 1.0) as f32;
    for share in [0.0, 0.25, 0.5, 0.75, 1.0] {
        let (x, text) = (x_of(share), pen.means.locale.percent(share));
        for i in 0..rows.len() {
            let y = top + row * i as f32;
            pen.line((x, y + NAMED), (x, y + row), 0.4, RULE, false);
        }
        let anchor = match share {
            0.0 => Anchor::Start,
            1.0 => Anchor::End,
            _ => Anchor::Middle,
        };
        let x = if share > 0.0 { x } else { 0.0 };
        let x = if share < 1.0 { x } else { width };
        pen.text(&text, TICK, Weight::Regular, (x, bottom + 9.0), anchor);
    }
    for (i, one) in rows.iter().enumerate() {
        let y = top + row * i as f32;
        let counted = match one.n {
            0 => format!("({})", none(pen.means.locale)),
            n => say!(pen.means.locale, sheets::n_of, n = n),
        };
        if let Some(level) = level {
            pen.line((x_of(level), y + NAMED), (x_of(level), y + row), 0.9, BLACK, true);
        }
        let end = pen.text(&one.name, NAME, Weight::Regular, (left, y + 9.0), Anchor::Start);
        pen.text(&counted, TICK, Weight::Regular, (end + 3.0, y + 9.0), Anchor::Start);
        let y = y + f32::midpoint(NAMED, row);
        if let Some((low, high)) = one.interval {
            pen.line((x_of(low), y), (x_of(high), y), 1.6, BLACK, false);
        }
        if let Some(value) = one.value {
            pen.strip.draw(Some(pen.leaf), Ink::Dot { x: x_of(value), y, radius: 2.8 });
        }
    }
    pen.text(x_label, TICK, Weight::Regular, (right, bottom + 18.0), Anchor::End);
    pen.strip.height = bottom + 22.0;
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn no_line_of_whiskers_runs_through_words() {
        let faces = Faces::new().unwrap();
        let row = |name: &str, low, high| Whisker {
            name: name.to_owned(),
            value: Some(f64::midpoint(low, high)),
            interval: Some((low, high)),
            n: 40,
        };
        let rows = vec![row("gather, a long name that goes on and on", 0.0, 1.0), row("b", 0.2, 0.9)];
        for scale in [0.6, 0.8, 1.0] {
            let means = Means { faces: &faces, locale: &Locale::ENGLISH, scale };
            let drawn = Drawn::Whiskers { x: "pressed".to_owned(), level: Some(0.5), rows: rows.clone() };
            let strip = draw(means, &drawn, Leaf(0), 200.0);
            let mut lines = 0;
            for (_, line) in &strip.inks {
                let Ink::Line { from, to, .. } = line else { continue };
                lines += 1;
                for (_, ink) in &strip.inks {
                    let Ink::Text { x, y, run, .. } = ink else { continue };
                    // From the tallest letter to the tail of the lowest one.
                    let (top, bottom) = (y - 0.75 * run.size, y + 0.25 * run.size);
                    let aside = to.0 < *x || from.0 > x + run.width() || to.1 <= top || from.1 >= bottom;
                    assert!(aside, "{from:?} to {to:?} runs through {:?} at {x}, {y}", run.text);
                }
            }
            // Five rules and the level in each row, and a whisker.
            assert_eq!(lines, rows.len() * 7);
        }
    }

    #[test]
    fn an_axis_has_few_round_steps() {
        for (most, expected) in [(1, 1), (4, 1), (5, 2), (9, 5), (20, 5), (37, 10), (90, 50), (1000, 500)] {
            assert_eq!(step(most), expected, "{most}");
        }
    }
}
