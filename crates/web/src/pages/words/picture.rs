//! A picture of a recording: its waveform above, its spectrogram below.

use maud::{Markup, PreEscaped, html};
use sayso_listen::{Clip, picture};
use sayso_wording::{Locale, say};
use std::fmt::Write;

const COLUMNS: usize = 120;
/// Width of the picture; a column is four wide.
const WIDE: usize = 4 * COLUMNS;
/// Height of the waveform.
const WAVE: usize = 60;
/// Height of a band.
const BAND: usize = 3;
/// Highest frequency shown: what a button's small loudspeaker and most voices need.
const TOP_HZ: f64 = 8000.0;
/// Bands up to it.
const BANDS: usize = 48;
/// Level under the loudest cell, dB, and how dark it is drawn.
const SHADES: [(f32, &str); 5] = [(-10.0, ".95"), (-20.0, ".7"), (-30.0, ".48"), (-40.0, ".28"), (-50.0, ".12")];

/// Draws it.
pub fn drawn(l: &Locale, clip: &Clip) -> Markup {
    let nyquist = f64::from(clip.rate()) / 2.0;
    let p = picture(clip, COLUMNS, (BANDS as f64 * nyquist / TOP_HZ).round().max(8.0) as usize);
    let all = p.levels.first().map_or(1, Vec::len).max(1);
    let bands = ((all as f64 * TOP_HZ / p.top_hz).round() as usize).clamp(1, all);
    let top = p.top_hz * bands as f64 / all as f64;
    let high = WAVE + 10 + bands * BAND;
    let mut out = outline(&p.outline);
    for (i, (floor, dark)) in SHADES.iter().enumerate() {
        let ceiling = if i == 0 { f32::INFINITY } else { SHADES[i - 1].0 };
        let cells = cells(&p.levels, bands, *floor, ceiling);
        let _ = write!(out, r#"<path class="bar" fill-opacity="{dark}" d="{cells}"/>"#);
    }
    let _ = write!(
        out,
        r#"<text class="tick" x="2" y="{:.0}">{:.0} kHz</text><text class="tick" x="{WIDE}" y="{}" text-anchor="end">{} s</text>"#,
        WAVE + 20,
        top / 1000.0,
        high + 12,
        l.number(p.seconds, 2)
    );
    html! {
        figure.chart {
            figcaption { (say!(l, words::picture_told)) }
            svg viewBox=(format!("0 0 {WIDE} {}", high + 16)) role="img" aria-label=(say!(l, words::picture_label, seconds = l.number(p.seconds, 2))) { (PreEscaped(out)) }
        }
    }
}

/// The outline as one closed path, full scale at the edges.
fn outline(columns: &[(f32, f32)]) -> String {
    let middle = WAVE as f32 / 2.0;
    let y = |v: f32| middle - v.clamp(-1.0, 1.0) * middle;
    let step = WIDE as f32 / columns.len().max(1) as f32;
    let mut d = String::new();
    for (i, (low, high)) in columns.iter().enumerate() {
        let (x, top, bottom) = (i as f32 * step, y(*high), y(*low));
        let _ = write!(d, "M{x:.0} {top:.1}h{step:.0}v{:.1}h-{step:.0}z", (bottom - top).max(0.4));
    }
    format!(r#"<path class="bar" d="{d}"/>"#)
}

/// Cells whose level lies between, as one path; runs along time are one piece.
fn cells(levels: &[Vec<f32>], bands: usize, floor: f32, ceiling: f32) -> String {
    let step = WIDE / levels.len().max(1);
    let mut d = String::new();
    for band in 0..bands {
        let y = WAVE + 10 + (bands - 1 - band) * BAND;
        let mut begun = None;
        for column in 0..=levels.len() {
            let inside = levels.get(column).and_then(|c| c.get(band)).is_some_and(|l| *l > floor && *l <= ceiling);
            match (begun, inside) {
                (None, true) => begun = Some(column),
                (Some(from), false) => {
                    let w = (column - from) * step;
                    let _ = write!(d, "M{} {y}h{w}v{BAND}h-{w}z", from * step);
                    begun = None;
                }
                _ => {}
            }
        }
    }
    d
}
