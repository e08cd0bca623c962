//! The curve of times to a press under a fixed wait.

use super::{Axis, Lines, Series, lines, nice_axis, short};
use maud::{Markup, html};
use sayso_advisor::latency::Waiting;
use sayso_methods::learning::latency::SurvivalPoint;
use sayso_wording::{Locale, Message, figures, say};

/// The curve with its band and its sentence; `whose` are the invitations, as in "these invitations".
#[must_use]
pub fn waiting(locale: &Locale, title: &str, whose: &str, waiting: &Waiting) -> Markup {
    let curve = match &waiting.curve {
        Ok(curve) if curve.n == 0 => return html! {},
        Ok(curve) if curve.n < sayso_advisor::estimate::TOO_EARLY => {
            return html! { p.quiet { (say!(locale, chart::waiting_few, title = title, n = curve.n)) } };
        }
        Ok(curve) => curve,
        Err(why) => {
            return html! { p.quiet { (say!(locale, chart::waiting_not, title = title, why = why.say(locale))) } };
        }
    };
    let band = |p: &SurvivalPoint| {
        let still = curve.interval_at(p.time).unwrap_or(p.interval);
        (1.0 - still.high, 1.0 - still.low)
    };
    let points = curve.points.iter().map(|p| (p.time, 1.0 - p.survival, Some(band(p)))).collect();
    let told = match (waiting.median.value, curve.points.last()) {
        (None, Some(end)) => {
            let (share, (low, high)) = (1.0 - end.survival, band(end));
            // Less than half only where the whole interval is.
            let under_half = high < 0.5;
            let [percent, low, high] = [share, low, high].map(|x| locale.percent(x));
            let seconds = say!(locale, unit::seconds, value = short(locale, curve.watched_to()));
            if under_half {
                say!(
                    locale,
                    chart::waiting_less,
                    whose = whose,
                    share = percent,
                    low = low,
                    high = high,
                    n = curve.n,
                    seconds = seconds
                )
            } else {
                say!(
                    locale,
                    chart::waiting_part,
                    whose = whose,
                    share = percent,
                    low = low,
                    high = high,
                    n = curve.n,
                    seconds = seconds
                )
            }
        }
        (None, None) => say!(locale, chart::waiting_none, whose = whose, n = curve.n),
        (Some(_), _) => {
            say!(locale, chart::waiting_half, whose = whose, median = figures::finding(locale, &waiting.median))
        }
    };
    html! {
        (lines(locale, &Lines {
            title: title.into(),
            told: told.clone(),
            x: nice_axis(locale, &say!(locale, chart::seconds_from_offer), 0.0, curve.watched_to().max(1.0)),
            y: Axis::share(locale, &say!(locale, chart::pressed_by_then)),
            series: vec![Series { points, steps: true, ..Series::default() }],
            level: None,
            band: say!(locale, chart::interval),
        }))
        p { (told) " " (say!(locale, chart::waiting_censored)) }
    }
}
