//! Bars, with whiskers where there is an interval.

use super::scale::Plot;
use super::{ends, escaped, figure, nice_axis, short};
use maud::Markup;
use sayso_wording::{Locale, say};
use std::fmt::Write;

/// One bar.
#[derive(Clone, PartialEq, Debug)]
pub struct Bar {
    /// What is written under it; empty for none.
    pub tick: String,
    /// Its full name, for the table.
    pub name: String,
    /// Its height.
    pub value: f64,
    /// Its interval, if it has one.
    pub interval: Option<(f64, f64)>,
    /// Observations behind it, if that is not the value itself.
    pub n: Option<usize>,
}

const HEIGHT: f64 = 200.0;

/// Bars side by side. `told` says in a sentence what the picture shows.
#[must_use]
pub fn bars(locale: &Locale, title: &str, told: &str, x_label: &str, y_label: &str, all: &[Bar]) -> Markup {
    let top = all.iter().map(|b| b.interval.map_or(b.value, |i| i.1.max(b.value))).filter(|v| v.is_finite());
    let axis = nice_axis(locale, y_label, 0.0, top.fold(1.0, f64::max));
    let plot = Plot::usual(HEIGHT);
    let mut out = String::new();
    plot.y_axis(&mut out, &axis);
    #[allow(clippy::cast_precision_loss)]
    let slot = (plot.right - plot.left) / all.len().max(1) as f64;
    for (i, bar) in all.iter().enumerate() {
        #[allow(clippy::cast_precision_loss)]
        let x = plot.left + slot * i as f64;
        let y = plot.y(&axis, bar.value);
        let _ = write!(
            out,
            r#"<rect class="bar" x="{:.1}" y="{y:.1}" width="{:.1}" height="{:.1}"/>"#,
            x + slot * 0.1,
            slot * 0.8,
            plot.bottom - y
        );
        if let Some((low, high)) = bar.interval {
            let _ = write!(
                out,
                r#"<line class="whisker" x1="{0:.1}" x2="{0:.1}" y1="{1:.1}" y2="{2:.1}"/>"#,
                x + slot / 2.0,
                plot.y(&axis, low),
                plot.y(&axis, high)
            );
        }
        if !bar.tick.is_empty() {
            let _ = write!(
                out,
                r#"<text class="tick" x="{:.1}" y="{:.1}" text-anchor="middle">{}</text>"#,
                x + slot / 2.0,
                plot.bottom + 15.0,
                escaped(&bar.tick)
            );
        }
    }
    let _ = write!(
        out,
        r#"<text class="name" x="{:.1}" y="{:.1}" text-anchor="end">{}</text>"#,
        plot.right,
        plot.bottom + 31.0,
        escaped(x_label)
    );
    let rows: Vec<Vec<String>> = all
        .iter()
        .map(|b| {
            let interval = b.interval.map_or_else(String::new, |i| ends(locale, i));
            vec![b.name.clone(), short(locale, b.value), interval, b.n.map_or_else(String::new, |n| n.to_string())]
        })
        .collect();
    figure(locale, title, told, HEIGHT, &out, &[x_label, y_label, &say!(locale, chart::interval), "n"], &rows)
}
