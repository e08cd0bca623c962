//! The whole of a rehearsal in one drawing: what the animal did, its signs, what the person did.

use super::captions::{captions, name};
use maud::{Markup, PreEscaped, html};
use sayso_model::SignLevel;
use sayso_sim::rehearsal::{Does, Run, Told, What};
use sayso_wording::{Locale, say};
use std::fmt::Write as _;

const WIDTH: f64 = 360.0;
const HEIGHT: f64 = 128.0;
/// Left and right end of the line of time.
const ENDS: (f64, f64) = (8.0, 352.0);
/// Where the three lanes lie.
const LANES: [(&str, f64); 3] = [("animal", 30.0), ("signs", 66.0), ("you", 102.0)];

/// The drawing, what its marks mean, and every moment as a list.
pub fn line(l: &Locale, run: &Run) -> Markup {
    let name = name(l, run.setup.character);
    let seconds = f64::from(run.over.0) / 1000.0;
    let told =
        say!(l, rehearse::line_what, moments = run.told.len(), seconds = l.seconds(seconds), name = name.as_str());
    html! {
        figure.chart data-test="line" {
            figcaption { (say!(l, rehearse::line)) }
            svg viewBox=(format!("0 0 {WIDTH} {HEIGHT}")) role="img" aria-label=(told) {
                @for (lane, y) in LANES {
                    text.name x=(ENDS.0) y=(y - 12.0) { (say!(l, rehearse::lane, lane = lane, name = name.as_str())) }
                    line.rule x1=(ENDS.0) x2=(ENDS.1) y1=(y) y2=(y) {}
                }
                (PreEscaped(marks(run)))
                line.level data-part="moment" x1=(ENDS.0) x2=(ENDS.0) y1="10" y2=(HEIGHT - 12.0) visibility="hidden" {}
            }
            p.quiet { (say!(l, rehearse::marks)) }
            (list(l, run))
        }
    }
}

fn marks(run: &Run) -> String {
    let length = f64::from(run.over.0.max(1));
    let mut out = String::new();
    for told in &run.told {
        let x = ENDS.0 + (ENDS.1 - ENDS.0) * (f64::from(told.at_ms) / length).min(1.0);
        // Writing to a String cannot fail.
        let _ = match mark(told) {
            Some((lane, Mark::Dot)) => write!(out, r#"<circle class="dot" cx="{x:.1}" cy="{}" r="4"/>"#, LANES[lane].1),
            Some((lane, Mark::Ring)) => {
                write!(out, r#"<circle class="dot hollow" cx="{x:.1}" cy="{}" r="4"/>"#, LANES[lane].1)
            }
            Some((lane, Mark::Square)) => {
                write!(
                    out,
                    r#"<rect class="bar" x="{:.1}" y="{:.1}" width="6" height="6"/>"#,
                    x - 3.0,
                    LANES[lane].1 - 3.0
                )
            }
            Some((lane, Mark::Cross)) => {
                let y = LANES[lane].1;
                let (left, right, top, bottom) = (x - 4.0, x + 4.0, y - 4.0, y + 4.0);
                write!(
                    out,
                    r#"<path class="whisker" d="M{left:.1} {top}L{right:.1} {bottom}M{left:.1} {bottom}L{right:.1} {top}"/>"#
                )
            }
            Some((lane, Mark::Sign(strong))) => {
                let (y, more) = (LANES[lane].1, if strong { "" } else { " hollow" });
                write!(
                    out,
                    r#"<path class="dot{more}" d="M{x:.1} {}L{:.1} {}L{:.1} {}Z"/>"#,
                    y - 6.0,
                    x + 6.0,
                    y + 5.0,
                    x - 6.0,
                    y + 5.0
                )
            }
            None => Ok(()),
        };
    }
    out
}

enum Mark {
    Dot,
    Ring,
    Square,
    Cross,
    Sign(bool),
}

/// In which lane, and how, a moment is drawn.
const fn mark(told: &Told) -> Option<(usize, Mark)> {
    Some(match told.what {
        What::Joined => (0, Mark::Ring),
        What::Pressed(_) => (0, Mark::Dot),
        What::Took(_) | What::Chose(_) => (0, Mark::Square),
        What::Leaves | What::Barred => (0, Mark::Cross),
        What::Sign(sign) => (1, Mark::Sign(matches!(sign.level, SignLevel::Strong))),
        What::Person(Does::Show(_)) => (2, Mark::Dot),
        What::Person(Does::Offer(_) | Does::Two | Does::Back | Does::NotNow) => (2, Mark::Ring),
        What::Person(Does::Give(_) | Does::Instead(_)) => (2, Mark::Square),
        What::Person(Does::Call | Does::Block | Does::Again) => (2, Mark::Cross),
        _ => return None,
    })
}

fn list(l: &Locale, run: &Run) -> Markup {
    let title = say!(l, rehearse::list);
    html! {
        details data-test="list" {
            summary { (title) }
            div.scroll tabindex="0" role="region" aria-label=(title) {
                table {
                    thead { tr { th scope="col" { (say!(l, rehearse::when)) } th scope="col" { (say!(l, rehearse::what)) } } }
                    tbody {
                        @for (told, says) in run.told.iter().zip(captions(l, run)) {
                            tr { td.num { (l.seconds(f64::from(told.at_ms) / 1000.0)) } td { (says) } }
                        }
                    }
                }
            }
        }
    }
}
