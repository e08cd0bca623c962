//! A series over phases: points joined within a phase, dashed lines where the phase changes. Hollow points: as always;
//! filled points: with the change.

use super::scale::{Axis, Plot};
use super::{escaped, figure};
use maud::Markup;
use sayso_wording::{Locale, say};
use std::fmt::Write;

/// One point.
#[derive(Clone, PartialEq, Debug)]
pub struct PhasePoint {
    /// Place along.
    pub x: f64,
    /// Value; none where it is missing.
    pub y: Option<f64>,
    /// Observations behind it.
    pub n: usize,
    /// Whether the change was in force.
    pub changed: bool,
    /// Name of the phase, for the table.
    pub phase: String,
}

/// A phase drawn as a panel.
#[derive(Clone, PartialEq, Debug)]
pub struct Panel {
    /// Where it begins.
    pub from: f64,
    /// A short name.
    pub name: String,
}

/// A chart over phases.
#[derive(Clone, PartialEq, Debug)]
pub struct Phases {
    /// Caption.
    pub title: String,
    /// What the picture shows, in a sentence.
    pub told: String,
    /// Axis along.
    pub x: Axis,
    /// Axis up.
    pub y: Axis,
    /// Points from left to right.
    pub points: Vec<PhasePoint>,
    /// Panels from left to right; none where conditions alternate, and then points of one condition are joined.
    pub panels: Vec<Panel>,
}

const HEIGHT: f64 = 220.0;

/// Draws it.
#[must_use]
pub fn phases(locale: &Locale, chart: &Phases) -> Markup {
    let plot = Plot::usual(HEIGHT);
    let mut out = String::new();
    plot.y_axis(&mut out, &chart.y);
    plot.x_axis(&mut out, &chart.x);
    for (i, panel) in chart.panels.iter().enumerate() {
        let x = plot.x(&chart.x, panel.from);
        if i > 0 {
            // Writing to a string cannot fail.
            let _ = write!(
                out,
                r#"<line class="phase" x1="{x:.1}" x2="{x:.1}" y1="{:.1}" y2="{:.1}"/>"#,
                plot.top, plot.bottom
            );
        }
        let _ = write!(
            out,
            r#"<text class="tick" x="{:.1}" y="{:.1}">{}</text>"#,
            x + 3.0,
            plot.top + 10.0,
            escaped(&panel.name)
        );
    }
    let panel_of = |x: f64| chart.panels.iter().rposition(|p| p.from <= x);
    let shown: Vec<(f64, f64, &PhasePoint)> =
        chart.points.iter().filter_map(|p| Some((plot.x(&chart.x, p.x), plot.y(&chart.y, p.y?), p))).collect();
    for (i, (x, y, point)) in shown.iter().enumerate() {
        let same = |other: &&(f64, f64, &PhasePoint)| other.2.changed == point.changed;
        let before = if chart.panels.is_empty() {
            shown[..i].iter().rfind(same)
        } else {
            shown[..i].last().filter(|b| panel_of(b.2.x) == panel_of(point.x))
        };
        if let Some((from_x, from_y, _)) = before {
            let s = usize::from(point.changed && chart.panels.is_empty());
            let _ = write!(out, r#"<path class="line s{s}" d="M{from_x:.1} {from_y:.1}L{x:.1} {y:.1}"/>"#);
        }
    }
    for (x, y, point) in &shown {
        let hollow = if point.changed { "" } else { " hollow" };
        let _ = write!(out, r#"<circle class="dot{hollow}" cx="{x:.1}" cy="{y:.1}" r="3.5"/>"#);
    }
    let rows: Vec<Vec<String>> = chart
        .points
        .iter()
        .map(|p| {
            let y = p.y.map_or_else(|| say!(locale, chart::missing), |y| chart.y.value(locale, y));
            vec![p.phase.clone(), chart.x.value(locale, p.x), y, p.n.to_string()]
        })
        .collect();
    figure(
        locale,
        &chart.title,
        &chart.told,
        HEIGHT,
        &out,
        &[&say!(locale, chart::phase), &chart.x.label, &chart.y.label, "n"],
        &rows,
    )
}
