//! Lines and steps with bands.

use super::scale::{Axis, Plot};
use super::{escaped, figure};
use maud::Markup;
use sayso_wording::{Locale, say};
use std::fmt::Write;

/// A point of a line: x, y, and the band's low and high where there is one.
pub type Point = (f64, f64, Option<(f64, f64)>);

/// One line with its band.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Series {
    /// Its name; shown where there are several.
    pub name: String,
    /// Its points, from left to right.
    pub points: Vec<Point>,
    /// Drawn as steps (each value holds until the next point).
    pub steps: bool,
    /// Dots at the points.
    pub dots: bool,
}

/// A place along the axis, and what is there.
#[derive(Clone, PartialEq, Debug)]
pub struct Mark {
    /// Where.
    pub at: f64,
    /// What it is called.
    pub name: String,
    /// Whether it goes on from there: drawn with an arrow.
    pub open: bool,
}

/// A chart of lines.
#[derive(Clone, PartialEq, Debug)]
pub struct Lines {
    /// Caption.
    pub title: String,
    /// What the picture shows, in a sentence.
    pub told: String,
    /// Axis along.
    pub x: Axis,
    /// Axis up.
    pub y: Axis,
    /// The lines, at most three.
    pub series: Vec<Series>,
    /// A level drawn across, and its name.
    pub level: Option<(f64, String)>,
    /// A place along, marked from bottom to top.
    pub mark: Option<Mark>,
    /// What the band is, such as `95% interval`.
    pub band: String,
}

const HEIGHT: f64 = 220.0;

/// Draws it.
#[must_use]
pub fn lines(locale: &Locale, chart: &Lines) -> Markup {
    let plot = Plot::usual(HEIGHT);
    let mut out = String::new();
    plot.y_axis(&mut out, &chart.y);
    plot.x_axis(&mut out, &chart.x);
    if let Some((level, name)) = &chart.level {
        let y = plot.y(&chart.y, *level);
        let _ = write!(
            out,
            r#"<line class="level" x1="{:.1}" x2="{:.1}" y1="{y:.1}" y2="{y:.1}"/><text class="tick" x="{:.1}" y="{:.1}" text-anchor="end">{}</text>"#,
            plot.left,
            plot.right,
            plot.right,
            y - 4.0,
            escaped(name)
        );
    }
    for (i, series) in chart.series.iter().enumerate() {
        draw(&mut out, &plot, chart, series, i);
    }
    if let Some(mark) = &chart.mark {
        draw_mark(&mut out, &plot, &chart.x, mark);
    }
    let (head, rows) = table(locale, chart);
    let head: Vec<&str> = head.iter().map(String::as_str).collect();
    figure(locale, &chart.title, &chart.told, HEIGHT, &out, &head, &rows)
}

/// The points as a table: names of series and their bands have a column only where there are any, for a column has a name.
fn table(locale: &Locale, chart: &Lines) -> (Vec<String>, Vec<Vec<String>>) {
    let named = chart.series.iter().any(|series| !series.name.is_empty());
    let banded = chart.series.iter().any(|series| series.points.iter().any(|(.., band)| band.is_some()));
    let of = |name: String, [x, y]: [String; 2], band: String| -> Vec<String> {
        named.then_some(name).into_iter().chain([x, y]).chain(banded.then_some(band)).collect()
    };
    let head = of(say!(locale, chart::what), [chart.x.label.clone(), chart.y.label.clone()], chart.band.clone());
    let rows = chart.series.iter().flat_map(|series| {
        series.points.iter().map(|(x, y, band)| {
            let band = band.map_or_else(String::new, |b| chart.y.ends(locale, b));
            of(series.name.clone(), [chart.x.value(locale, *x), chart.y.value(locale, *y)], band)
        })
    });
    let rows = rows.collect();
    (head, rows)
}

/// An upright line with its name on the side that has room.
fn draw_mark(out: &mut String, plot: &Plot, axis: &Axis, mark: &Mark) {
    let x = plot.x(axis, mark.at);
    let (beside, anchor) = if x > (plot.left + plot.right) / 2.0 { (x - 5.0, "end") } else { (x + 5.0, "start") };
    let _ = write!(
        out,
        r#"<line class="level" x1="{x:.1}" x2="{x:.1}" y1="{:.1}" y2="{:.1}"/><text class="tick" x="{beside:.1}" y="{:.1}" text-anchor="{anchor}">{}</text>"#,
        plot.top,
        plot.bottom,
        plot.bottom - 6.0,
        escaped(&mark.name)
    );
    if mark.open {
        let _ = write!(out, r#"<path class="line" d="M{x:.1} {y:.1}h9m-4 -4l4 4l-4 4"/>"#, y = plot.top + 6.0);
    } else {
        let _ = write!(out, r#"<circle class="dot s0" cx="{x:.1}" cy="{:.1}" r="3.5"/>"#, plot.bottom);
    }
}

fn draw(out: &mut String, plot: &Plot, chart: &Lines, series: &Series, i: usize) {
    let at = |x: f64, y: f64| (plot.x(&chart.x, x), plot.y(&chart.y, y));
    let path = |points: &[(f64, f64)]| {
        let mut d = String::new();
        for (k, (x, y)) in points.iter().enumerate() {
            let _ = match (k, series.steps) {
                (0, _) => write!(d, "M{x:.1} {y:.1}"),
                (_, true) => write!(d, "H{x:.1}V{y:.1}"),
                (_, false) => write!(d, "L{x:.1} {y:.1}"),
            };
        }
        d
    };
    let banded: Vec<_> = series.points.iter().filter_map(|(x, _, b)| b.map(|(l, h)| (*x, l, h))).collect();
    if banded.len() > 1 {
        let upper: Vec<_> = stepped(&banded, series.steps, |b| b.2).into_iter().map(|(x, y)| at(x, y)).collect();
        let lower: Vec<_> = stepped(&banded, series.steps, |b| b.1).into_iter().map(|(x, y)| at(x, y)).collect();
        let mut d = String::new();
        for (k, (x, y)) in upper.iter().chain(lower.iter().rev()).enumerate() {
            let _ = write!(d, "{}{x:.1} {y:.1}", if k == 0 { "M" } else { "L" });
        }
        let _ = write!(out, r#"<path class="band" d="{d}Z"/>"#);
    }
    let points: Vec<_> = series.points.iter().map(|(x, y, _)| at(*x, *y)).collect();
    let _ = write!(out, r#"<path class="line s{i}" d="{}"/>"#, path(&points));
    if series.dots || points.len() == 1 {
        for (x, y) in &points {
            let _ = write!(out, r#"<circle class="dot s{i}" cx="{x:.1}" cy="{y:.1}" r="3"/>"#);
        }
    }
    if chart.series.len() > 1
        && let Some((_, y)) = points.last()
    {
        let _ = write!(
            out,
            r#"<text class="tick s{i}" x="{:.1}" y="{:.1}" text-anchor="end">{}</text>"#,
            plot.right,
            (y - 6.0).max(10.0),
            escaped(&series.name)
        );
    }
}

/// The outline of one side of a band; with steps each value holds until the next.
fn stepped(band: &[(f64, f64, f64)], steps: bool, side: impl Fn(&(f64, f64, f64)) -> f64) -> Vec<(f64, f64)> {
    let mut outline = Vec::new();
    for (k, b) in band.iter().enumerate() {
        if steps && k > 0 {
            outline.push((b.0, side(&band[k - 1])));
        }
        outline.push((b.0, side(b)));
    }
    outline
}
