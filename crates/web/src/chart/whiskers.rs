//! One row a thing: a dot for the estimate, a line for its interval.

use super::scale::{Axis, Plot};
use super::{WIDTH, ends, escaped, figure, short};
use maud::Markup;
use sayso_paper::Whisker;
use sayso_wording::{Locale, say};
use std::fmt::Write;

const ROW: f64 = 40.0;

/// Rows in the order given; `level` is a value drawn through all of them.
#[must_use]
pub fn whiskers(locale: &Locale, title: &str, told: &str, axis: &Axis, level: Option<f64>, rows: &[Whisker]) -> Markup {
    #[allow(clippy::cast_precision_loss)]
    let height = 46.0 + ROW * rows.len() as f64;
    let plot = Plot { left: 12.0, top: 4.0, right: WIDTH - 22.0, bottom: height - 36.0 };
    let mut out = String::new();
    for (at, _) in &axis.ticks {
        let x = plot.x(axis, *at);
        let _ =
            write!(out, r#"<line class="rule" x1="{x:.1}" x2="{x:.1}" y1="{:.1}" y2="{:.1}"/>"#, plot.top, plot.bottom);
    }
    plot.x_axis(&mut out, axis);
    if let Some(level) = level {
        let x = plot.x(axis, level);
        let _ = write!(
            out,
            r#"<line class="level" x1="{x:.1}" x2="{x:.1}" y1="{:.1}" y2="{:.1}"/>"#,
            plot.top, plot.bottom
        );
    }
    for (i, row) in rows.iter().enumerate() {
        #[allow(clippy::cast_precision_loss)]
        let y = plot.top + ROW * i as f64 + 14.0;
        let _ = write!(
            out,
            r#"<text class="row" x="{:.1}" y="{y:.1}">{} <tspan class="tick">({})</tspan></text>"#,
            plot.left,
            escaped(&row.name),
            escaped(&say!(locale, chart::times, n = row.n))
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
                r.value.map_or_else(|| say!(locale, chart::nothing), |v| short(locale, v)),
                r.interval.map_or_else(String::new, |i| ends(locale, i)),
                r.n.to_string(),
            ]
        })
        .collect();
    figure(locale, title, told, height, &out, &["", &axis.label, &say!(locale, chart::interval), "n"], &table)
}
