//! Bars, with whiskers where there is an interval.

use super::scale::Plot;
use super::{escaped, figure, nice_axis};
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
/// About the width of a letter of a tick.
const LETTER: f64 = 5.5;

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
    // Where the last tick ends: one that would run into it is left out.
    let mut free = 0.0;
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
        #[allow(clippy::cast_precision_loss)]
        let half = LETTER * bar.tick.chars().count() as f64 / 2.0;
        if !bar.tick.is_empty() && x + slot / 2.0 - half >= free {
            free = x + slot / 2.0 + half + LETTER;
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
            let interval = b.interval.map_or_else(String::new, |i| axis.ends(locale, i));
            vec![b.name.clone(), axis.value(locale, b.value), interval, b.n.map_or_else(String::new, |n| n.to_string())]
        })
        .collect();
    figure(locale, title, told, HEIGHT, &out, &[x_label, y_label, &say!(locale, chart::interval), "n"], &rows)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ticks_do_not_run_into_each_other() {
        let bar = |tick: &str| Bar { tick: tick.into(), name: String::new(), value: 1.0, interval: None, n: None };
        let ticks = |tick: &str| {
            let drawn = bars(&Locale::ENGLISH, "", "", "", "", &vec![bar(tick); 12]).0;
            drawn.matches(&format!(">{tick}</text>")).count()
        };
        assert_eq!((ticks("x"), ticks("26 de nov.")), (12, 4));
    }
}
