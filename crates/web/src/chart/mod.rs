//! Small accessible charts as SVG: drawn by the server, coloured by the page's own variables (so light, dark and print
//! work), each with a sentence for those who listen and its figures as a table one tap further.

mod bars;
mod lines;
mod phases;
mod scale;
mod small;
mod spark;
mod whiskers;

pub use bars::{Bar, bars};
pub use lines::{Lines, Mark, Point, Series, lines};
pub use phases::{Panel, PhasePoint, Phases, phases};
pub use scale::{Axis, nice_axis};
pub use small::{small_bars, steps, weeks};
pub use spark::{spark, spark_of, tallest};
pub use whiskers::{whiskers, whiskers_of};

pub use sayso_paper::Whisker;

use maud::{Markup, PreEscaped, html};
use sayso_wording::{Locale, say};

/// Width of every chart in its own units; near the width of a phone, so that text is about its written size there.
const WIDTH: f64 = 360.0;

/// The figure around a drawing: caption, drawing with its text alternative, and the figures as a table.
fn figure(
    locale: &Locale,
    title: &str,
    told: &str,
    height: f64,
    drawing: &str,
    head: &[&str],
    rows: &[Vec<String>],
) -> Markup {
    html! {
        figure.chart {
            figcaption { (title) }
            svg viewBox=(format!("0 0 {WIDTH} {height}")) role="img" aria-label=(told) { (PreEscaped(drawing)) }
            details {
                summary { (say!(locale, chart::figures)) }
                div.scroll tabindex="0" role="region" aria-label=(say!(locale, chart::figures_of, title = title)) {
                    table {
                        thead { tr { @for h in head { th scope="col" { (h) } } } }
                        tbody { @for row in rows { tr { @for cell in row { td { (cell) } } } } }
                    }
                }
            }
        }
    }
}

/// Text safe inside SVG.
fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}

/// A number for a table or tick: short, without needless zeros.
#[must_use]
pub fn short(locale: &Locale, x: f64) -> String {
    let hundredths = (100.0 * x).round();
    let decimals = if x.abs() >= 100.0 || hundredths % 100.0 == 0.0 {
        0
    } else if hundredths % 10.0 == 0.0 {
        1
    } else {
        2
    };
    locale.number(x, decimals)
}
