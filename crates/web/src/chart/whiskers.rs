//! One row a thing: a dot for the estimate, a line for its interval.

use super::scale::{Axis, Plot};
use super::{WIDTH, escaped, figure};
use maud::Markup;
use sayso_paper::Whisker;
use sayso_wording::figures::none;
use sayso_wording::{Locale, say};
use std::fmt::Write;

const ROW: f64 = 40.0;
/// Of a row, what its name takes above the whisker; no line runs through it.
const NAMED: f64 = 19.0;

/// Rows in the order given, with intervals of 95 %; `level` is a value drawn through all of them.
#[must_use]
pub fn whiskers(locale: &Locale, title: &str, told: &str, axis: &Axis, level: Option<f64>, rows: &[Whisker]) -> Markup {
    whiskers_of(locale, title, told, axis, level, (&say!(locale, chart::interval), rows))
}

/// The same with intervals of another kind, which is named.
#[must_use]
pub fn whiskers_of(
    locale: &Locale,
    title: &str,
    told: &str,
    axis: &Axis,
    level: Option<f64>,
    (interval, rows): (&str, &[Whisker]),
) -> Markup {
    #[allow(clippy::cast_precision_loss)]
    let height = 46.0 + ROW * rows.len() as f64;
    let plot = Plot { left: 12.0, top: 4.0, right: WIDTH - 22.0, bottom: height - 36.0 };
    let mut out = String::new();
    plot.x_axis(&mut out, axis);
    #[allow(clippy::cast_precision_loss)]
    for top in (0..rows.len()).map(|i| plot.top + ROW * i as f64) {
        let mut upright = |class: &str, at: f64| {
            let x = plot.x(axis, at);
            let (from, to) = (top + NAMED, top + ROW);
            let _ = write!(out, r#"<line class="{class}" x1="{x:.1}" x2="{x:.1}" y1="{from:.1}" y2="{to:.1}"/>"#);
        };
        axis.ticks.iter().for_each(|(at, _)| upright("rule", *at));
        level.into_iter().for_each(|at| upright("level", at));
    }
    for (i, row) in rows.iter().enumerate() {
        #[allow(clippy::cast_precision_loss)]
        let y = plot.top + ROW * i as f64 + 14.0;
        let _ = write!(
            out,
            r#"<text class="row" x="{:.1}" y="{y:.1}">{} <tspan class="tick">({})</tspan></text>"#,
            plot.left,
            escaped(&row.name),
            escaped(&if row.n == 0 { none(locale) } else { say!(locale, chart::times, n = row.n) })
        );
        let y = y + 13.0;
        if let Some((low, high)) = row.interval {
            let _ = write!(
                out,
                r#"<line class="whisker" x1="{:.1}" x2="{:.1}" y1="{y:.1}" y2="{y:.1}"/>"#,
                plot.x(axis, low),
                plot.x(axis, high)
            );
        }
        if let Some(value) = row.value {
            let _ = write!(out, r#"<circle class="dot s0" cx="{:.1}" cy="{y:.1}" r="5"/>"#, plot.x(axis, value));
        }
    }
    let table: Vec<Vec<String>> = rows
        .iter()
        .map(|r| {
            vec![
                r.name.clone(),
                r.value.map_or_else(|| say!(locale, chart::nothing), |v| axis.value(locale, v)),
                r.interval.map_or_else(String::new, |i| axis.ends(locale, i)),
                r.n.to_string(),
            ]
        })
        .collect();
    figure(locale, title, told, height, &out, &[&say!(locale, chart::what), &axis.label, interval, "n"], &table)
}
