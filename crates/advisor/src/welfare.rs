//! Welfare rules. They come first and outrank every other advice. They name what was seen and whom to ask; they never diagnose.

use crate::advice::{Advice, Reason, Sure, Topic};
use crate::case::Case;
use crate::estimate::{Estimate, Unit};
use crate::rate::{clumping, rate};
use sayso_methods::stats::{Count, clumped_p};
use sayso_model::{Fact, Moment, PressedBy, Session, Sign, SignLevel};

/// No session for the rest of the day after a strong sign (our own rule, on the side of caution).
const WEEK: i32 = 7;
/// Sessions looked back on for leaving.
const RECENT_SESSIONS: usize = 8;
/// A change in pressing this unlikely by chance is worth a look at the animal's health.
const SUDDEN: f64 = 0.001;

const ASK: &str = "Ask a veterinarian and a qualified behaviour professional; follow local law on animals that bite.";

/// Advice on welfare, most pressing first; empty where nothing speaks against a session.
#[must_use]
pub fn welfare(case: &Case<'_>) -> Vec<Advice> {
    let mut found = Vec::new();
    found.extend(strong_signs(case));
    found.extend(leaving(case));
    found.extend(mild_signs(case));
    found.extend(sudden_change(case));
    found
}

/// Whether sessions should rest today: a strong sign was seen today or on two days of the week.
#[must_use]
pub fn rest_today(case: &Case<'_>) -> bool {
    strong_signs(case).is_some()
}

fn signs_since<'a>(case: &Case<'a>, level: SignLevel, from: Moment) -> Vec<Fact<'a, Sign>> {
    let all = case.story().between::<Sign>(case.animal(), from, case.now());
    all.filter(|s| s.part.level == level).collect()
}

/// Words that tell of a growl, snap or bite, in the facts' own terms.
fn is_threat(sign: &str) -> bool {
    let sign = sign.to_lowercase();
    ["growl", "snap", "bite", "bit ", "hiss", "swat", "lunge"].iter().any(|w| sign.contains(w))
}

fn strong_signs(case: &Case<'_>) -> Option<Advice> {
    let zone = case.zone();
    let week = signs_since(case, SignLevel::Strong, case.since(WEEK));
    let today = week.iter().filter(|s| s.at().day(zone) == case.now().day(zone)).count();
    let mut days: Vec<_> = week.iter().map(|s| s.at().day(zone)).collect();
    days.dedup();
    if today == 0 && days.len() < 2 {
        return None;
    }
    let threat = week.iter().any(|s| is_threat(s.part.sign.as_str()));
    let last = week.last().map_or("", |s| s.part.sign.as_str());
    let reason = Reason::said(format!(
        "Strong signs of stress: {today} today, {} in {WEEK} days (on {} of them); the last: \u{201c}{last}\u{201d}.",
        week.len(),
        days.len()
    ))
    .from_events(week.iter().map(Fact::id));
    let act = if threat {
        "Hold no session. Keep distance, give space, do not lure back."
    } else if days.len() >= 2 {
        "Pause showing and inviting for a few days; go on answering presses. Do not lure back."
    } else {
        "No more sessions today. Give space and do not lure back; go on answering presses."
    };
    let caution = if threat {
        ASK.to_owned()
    } else {
        "If such signs come back, or come with no cause you can see, ask a veterinarian and a qualified behaviour professional."
            .to_owned()
    };
    let change = if days.len() >= 2 {
        "Seven days with at most one day of strong signs."
    } else {
        "A calm start tomorrow: the animal comes to the board of its own accord."
    };
    Some(Advice::new(Topic::Welfare, act, vec![reason], Sure::Very, change).caution(caution))
}

fn leaving(case: &Case<'_>) -> Option<Advice> {
    let joined = case.sessions().iter().filter(|s| s.joined());
    let recent: Vec<&Session<'_>> = joined.rev().take(RECENT_SESSIONS).collect();
    let left = recent.iter().filter(|s| s.left()).count();
    if left < 3 || left * 2 < recent.len() {
        return None;
    }
    let figure = Estimate::share(left, recent.len());
    let reason =
        Reason::figure(format!("The animal left {left} of the last {} sessions it had joined.", recent.len()), figure)
            .from_events(recent.iter().rev().map(|s| s.start.id()));
    let sure = if figure.surely_above(0.3) { Sure::Fairly } else { Sure::Little };
    Some(
        Advice::new(
            Topic::Welfare,
            "Make sessions much shorter and end them before it wants to go; let it leave; try another reward.",
            vec![reason],
            sure,
            "Fewer than half of the next eight sessions left.",
        )
        .caution("Leaving is an answer. Do not call or lure it back to the board."),
    )
}

fn mild_signs(case: &Case<'_>) -> Option<Advice> {
    let from = case.since(WEEK);
    let mild = signs_since(case, SignLevel::Mild, from);
    let sessions = case.sessions_since(from).len();
    let with: std::collections::BTreeSet<_> = mild.iter().filter_map(|s| s.part.session).collect();
    let figure = Estimate::share(with.len().min(sessions), sessions);
    if sessions < 4 || !figure.surely_above(0.25) {
        return None;
    }
    let reason = Reason::figure("Share of this week's sessions with a mild sign of stress.", figure)
        .from_events(mild.iter().map(Fact::id));
    Some(
        Advice::new(
            Topic::Welfare,
            "Change something before the next session: a quieter time or place, fewer words, more distance.",
            vec![reason],
            Sure::Fairly,
            "A week in which mild signs come in clearly fewer than a quarter of sessions.",
        )
        .caution("A single sign means little; read the whole body and the situation."),
    )
}

/// A sharp change in the animal's own pressing over the last two days against the four weeks before.
fn sudden_change(case: &Case<'_>) -> Option<Advice> {
    let (now, recent_from, from) = (case.now(), case.since(2), case.since(30));
    let pressed = case.presses_between(from, now).filter(|p| p.part.by == PressedBy::Animal);
    let own: Vec<Moment> = pressed.map(|p| p.at()).collect();
    let first = *own.first()?;
    let days_before = recent_from.seconds_since(first.max(from)) / 86_400.0;
    let days_recent = now.seconds_since(recent_from) / 86_400.0;
    if days_before < 10.0 || days_recent < 1.0 {
        return None;
    }
    let recent = own.iter().filter(|&&at| at >= recent_from).count();
    let before = own.len() - recent;
    let recent = Count::new(recent as u64, days_recent).ok()?;
    let earlier = Count::new(before as u64, days_before).ok()?;
    let bursts = clumping(own.iter().copied(), first.max(from), now, case.zone());
    let p = clumped_p(recent, earlier, bursts).ok()?;
    let ratio = recent.rate() / earlier.rate().max(f64::MIN_POSITIVE);
    // A change may be sure and small: ask also for a fall or rise to a quarter or fourfold.
    if p > SUDDEN || earlier.events() < 20 || (0.25..=4.0).contains(&ratio) {
        return None;
    }
    let estimate = |count: Count| rate(count, bursts, Unit::PerDay);
    Some(
        Advice::new(
            Topic::Welfare,
            "Look at the animal first, not at the training: eating, drinking, toileting, sleep, movement.",
            vec![
                Reason::figure("Own presses over the last two days.", estimate(recent)),
                Reason::figure("Own presses over the four weeks before.", estimate(earlier)),
            ],
            Sure::Fairly,
            "Pressing back in its usual range, or a plain cause (visitors, travel, a dead battery, nobody logging).",
        )
        .caution("A sudden change may be illness, not training: see a veterinarian."),
    )
}
