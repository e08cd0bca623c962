//! Pictures as small as a word in a line. Both are told in words beside them, so a screen reader passes them by.

use maud::{Markup, PreEscaped, html};
use std::fmt::Write;

/// Rising steps, those reached filled, the others only outlined.
#[must_use]
pub fn steps(reached: u8, of: u8) -> Markup {
    let mut out = String::new();
    for i in 0..of {
        let (class, height) = (if i < reached { "on" } else { "off" }, 6 + 5 * u32::from(i));
        // Writing to a string cannot fail.
        let _ = write!(
            out,
            r#"<rect class="{class}" x="{}" y="{}" width="8" height="{height}" rx="1"/>"#,
            1 + 11 * u32::from(i),
            23 - height
        );
    }
    let width = 11 * u32::from(of);
    html! {
        svg.small.steps viewBox=(format!("0 0 {width} 24")) width=(width) height="24" aria-hidden="true" { (PreEscaped(out)) }
    }
}

/// Counts of weeks as bars on their own scale: a dot for none, nothing for a week that is not told of.
#[must_use]
#[allow(clippy::cast_precision_loss)]
pub fn weeks(counts: &[Option<usize>]) -> Markup {
    let values: Vec<Option<f64>> = counts.iter().map(|n| n.map(|n| n as f64)).collect();
    bars(&values, None, 10.0 * counts.len() as f64, 28.0, "weeks")
}

/// Bars as wide as half a phone, up to `top` where it is fixed, else up to the highest: a dot for none, nothing where
/// there is nothing to tell.
#[must_use]
pub fn small_bars(values: &[Option<f64>], top: Option<f64>) -> Markup {
    bars(values, top, 160.0, 56.0, "bars")
}

#[allow(clippy::cast_precision_loss)]
fn bars(values: &[Option<f64>], top: Option<f64>, width: f64, height: f64, class: &str) -> Markup {
    let finite = values.iter().flatten().copied().filter(|v| v.is_finite());
    let top = top.unwrap_or_else(|| finite.fold(0.0, f64::max));
    let top = if top > 0.0 { top } else { 1.0 };
    let (slot, floor) = (width / values.len().max(1) as f64, height - 2.0);
    let mut out = String::new();
    for (i, value) in values.iter().enumerate() {
        let x = slot * i as f64;
        let kind = if i + 1 == values.len() { "now" } else { "on" };
        let _ = match value {
            None => Ok(()),
            Some(v) if *v <= 0.0 => {
                write!(out, r#"<circle class="none" cx="{:.1}" cy="{:.1}" r="1"/>"#, x + slot / 2.0, floor - 1.5)
            }
            Some(v) => {
                let tall = ((floor - 2.0) * v / top).clamp(2.0, floor - 2.0);
                let (x, wide, y) = (x + slot * 0.1, slot * 0.8, floor - tall);
                write!(out, r#"<rect class="{kind}" x="{x:.1}" y="{y:.1}" width="{wide:.1}" height="{tall:.1}"/>"#)
            }
        };
    }
    html! {
        svg.small.(class) viewBox=(format!("0 0 {width} {height}")) width=(width) height=(height) aria-hidden="true" {
            line.rule x1="0" x2=(width) y1=(floor + 0.5) y2=(floor + 0.5) {}
            (PreEscaped(out))
        }
    }
}
