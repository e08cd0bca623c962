//! Patterns in presses and choices, in sentences. Each says how sure it is; what it does not show is a message beside it.

use crate::figures::{finding, told};
use crate::locale::Locale;
use crate::message::Message;
use crate::say;
use sayso_advisor::estimate::TOO_EARLY;
use sayso_advisor::patterns::{
    Change, Follows, HOURS_LOOK_BACK_DAYS, Hours, LEAST_DAYS, LEAST_PRESSES, Order, Pace, PhaseLine, Slips, WITHIN_S,
};

/// How fast presses of one word, or of all, multiply.
#[must_use]
pub fn pace(locale: &Locale, name: &str, p: &Pace) -> String {
    let word = p.word.map_or("none", |_| p.says.as_str());
    let two = |x: f64| locale.number(x, 2);
    let Some(factor) = p.factor.value else {
        return say!(
            locale,
            patterns::paced_few,
            name = name,
            word = word,
            days = p.days,
            n = p.presses,
            least_days = LEAST_DAYS,
            least = LEAST_PRESSES
        );
    };
    let (turn, by) = if factor >= 1.0 { ("times", factor) } else { ("divided", 1.0 / factor) };
    let end = |x: Option<f64>| x.map_or_else(|| "none".to_owned(), two);
    say!(
        locale,
        patterns::paced,
        name = name,
        word = word,
        turn = turn,
        by = two(by),
        factor = two(factor),
        low = end(p.factor.low),
        high = end(p.factor.high),
        weeks = p.days / 7,
        n = p.presses
    )
}

/// What changed on a day.
#[must_use]
pub fn changes(locale: &Locale, all: &[Change]) -> String {
    let told: Vec<String> = all
        .iter()
        .map(|change| match change {
            Change::Moved => say!(locale, patterns::change_moved),
            Change::Word(says) => say!(locale, patterns::change_word, word = says),
            Change::Rule => say!(locale, patterns::change_rule),
        })
        .collect();
    locale.and(&told)
}

/// Own presses before and after a change.
#[must_use]
pub fn line(locale: &Locale, name: &str, l: &PhaseLine) -> String {
    let (more, p) = &l.more_after;
    let percent = |x: Option<f64>| locale.percent(x.unwrap_or(f64::NAN));
    say!(
        locale,
        patterns::line,
        what = changes(locale, &l.what),
        day = locale.date(l.day),
        name = name,
        before = told(locale, &l.before),
        after = told(locale, &l.after),
        share = percent(more.value),
        low = percent(more.low),
        high = percent(more.high),
        n_before = l.points.iter().filter(|p| p.0 < 0).count(),
        n_after = l.points.iter().filter(|p| p.0 > 0).count(),
        p = locale.p(*p)
    )
}

/// Whether one word follows another.
#[must_use]
pub fn order(locale: &Locale, name: &str, o: &Order) -> String {
    if o.since.is_none() {
        return say!(locale, patterns::order_no_board);
    }
    if let Some(why) = &o.lacking {
        return say!(locale, patterns::since_why, why = why.say(locale));
    }
    let told = |p: &&Follows| p.stands_out() && p.times >= TOO_EARLY as u64;
    let found: Vec<String> = o.pairs.iter().filter(told).map(|p| pair(locale, p)).collect();
    if o.n == 0 {
        say!(locale, patterns::order_never, name = name, n = o.presses)
    } else if found.is_empty() {
        say!(locale, patterns::order_none, name = name, n = o.n)
    } else {
        say!(locale, patterns::order_found, pairs = locale.apart(&found), n = o.n)
    }
}

fn pair(locale: &Locale, p: &Follows) -> String {
    say!(
        locale,
        patterns::pair,
        first = &p.first,
        second = &p.second,
        times = p.times,
        expected = locale.number(p.expected, 1),
        p = locale.p(p.adjusted_p),
        beside = if p.side_by_side { "yes" } else { "no" }
    )
}

/// Which presses look like slips.
#[must_use]
pub fn slips(locale: &Locale, name: &str, s: &Slips) -> String {
    if s.since.is_none() {
        return say!(locale, patterns::slips_no_board);
    }
    if let Some(why) = &s.lacking {
        return say!(locale, patterns::since_why, why = why.say(locale));
    }
    let seconds = locale.set_seconds(WITHIN_S);
    if s.quick == 0 {
        return say!(locale, patterns::slips_none, name = name, seconds = seconds, n = s.presses);
    }
    let share = finding(locale, &s.share);
    say!(locale, patterns::slips_found, share = share, name = name, quick = s.quick, seconds = seconds)
}

/// Whether likes depend on the hour.
#[must_use]
pub fn hours(locale: &Locale, name: &str, h: &Hours) -> String {
    let Some(p) = h.p else {
        let why = h.lacking.as_ref().map_or_else(String::new, |why| why.say(locale));
        let days = HOURS_LOOK_BACK_DAYS;
        return say!(
            locale,
            patterns::hours_cannot,
            name = name,
            why = why,
            n = h.n,
            sittings = h.sittings,
            days = days
        );
    };
    let best: Vec<String> =
        h.at.iter()
            .filter_map(|at| {
                let (what, _) = at.things.first()?;
                Some(say!(locale, patterns::best_at, what = what, hour = locale.hour(at.hour)))
            })
            .collect();
    if best.is_empty() {
        return say!(locale, patterns::hours_no_sign, name = name, p = locale.p(p), n = h.n, sittings = h.sittings);
    }
    let (p, best) = (locale.p(p), locale.and(&best));
    say!(locale, patterns::hours_matter, name = name, p = p, n = h.n, sittings = h.sittings, best = best)
}
