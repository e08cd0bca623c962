//! The curve of times to a press under a fixed wait.

use super::{Axis, Lines, Series, lines, nice_axis, short};
use maud::{Markup, html};
use sayso_advisor::latency::Waiting;
use sayso_methods::learning::latency::SurvivalPoint;

/// The curve with its band and its sentence; `whose` are the invitations, as in "these invitations".
#[must_use]
pub fn waiting(title: &str, whose: &str, waiting: &Waiting) -> Markup {
    let curve = match &waiting.curve {
        Ok(curve) if curve.n > 0 => curve,
        Ok(_) => return html! {},
        Err(why) => return html! { p.quiet { (title) ": " (why) "." } },
    };
    let band = |p: &SurvivalPoint| {
        let still = curve.interval_at(p.time).unwrap_or(p.interval);
        (1.0 - still.high, 1.0 - still.low)
    };
    let points = curve.points.iter().map(|p| (p.time, 1.0 - p.survival, Some(band(p)))).collect();
    let told = match (waiting.median.value, curve.points.last()) {
        (None, Some(end)) => format!(
            "Of {whose}, {:.0} % ({:.0} % to {:.0} %, n = {}) were answered by a press within {} s; when half would be is not seen.",
            100.0 * (1.0 - end.survival),
            100.0 * band(end).0,
            100.0 * band(end).1,
            curve.n,
            short(curve.watched_to()),
        ),
        (None, None) => format!("None of {whose} was answered by a press (n = {}).", curve.n),
        (Some(_), _) => format!("Half of {whose} were answered by a press within: {}.", waiting.median),
    };
    html! {
        (lines(&Lines {
            title: title.into(),
            told: told.clone(),
            x: nice_axis("seconds from the offer", 0.0, curve.watched_to().max(1.0)),
            y: Axis::share("pressed by then"),
            series: vec![Series { name: "share".into(), points, steps: true, dots: false }],
            level: None,
            band: "95 % interval".into(),
        }))
        p { (told) " Those without a press count up to the end of the wait (Kaplan\u{2013}Meier)." }
    }
}
