//! Sections of the progress report. Every figure stands with its interval and its count.

use crate::chart::{Axis, Bar, Whisker, bars, whiskers};
use crate::page::AnimalPage;
use maud::{Markup, html};
use sayso_advisor::days::{DayRow, Days, Week};
use sayso_advisor::estimate::Estimate;
use sayso_advisor::likes::likes;
use sayso_advisor::ration::Ration;
use sayso_advisor::stages::Standing;
use sayso_advisor::welfare::welfare;
use sayso_model::{Moment, ProbeTrial, Sign, SignLevel};
use sayso_wording::Locale;
use sayso_wording::advice::{act, because, caution, known};

/// Planned checks of understanding held: trials.
pub fn checks(page: &AnimalPage) -> usize {
    page.story.of::<ProbeTrial>(page.id).count()
}

pub fn in_short(page: &AnimalPage, all: &Days) -> Markup {
    let begun: usize = all.days.iter().map(|d| d.sessions).sum();
    let joined: usize = all.days.iter().map(|d| d.joined).sum();
    let showings: usize = all.days.iter().map(DayRow::all_showings).sum();
    let presses: usize = all.days.iter().map(DayRow::all_presses).sum();
    let noted = all.days.iter().filter(|d| d.sessions + d.all_showings() + d.all_presses() > 0).count();
    let advice = welfare(&page.case());
    let (l, name) = (&page.locale, page.card.name.as_str());
    html! {
        section {
            h2 { "In short" }
            ul {
                li { "Days with anything noted: " (noted) " of " (all.days.len()) ". What nobody noted is not in here." }
                li { "Sessions it joined: " (Estimate::share(joined, begun)) "." }
                li { "Showings by people: n = " (showings) ". Its own presses: n = " (presses) "." }
            }
            @for a in &advice {
                p.box { strong { "Welfare: " } (act(l, name, &a.act)) @for r in &a.because { " " (because(l, name, &r.fact)) } @for c in &a.cautions { " " (caution(l, name, *c)) } }
            }
        }
    }
}

pub fn words(all: &[Standing]) -> Markup {
    html! {
        section {
            h2 { "Words" }
            @if all.is_empty() { p { "No word is taught yet." } }
            @else {
                table.stacks {
                    caption { span.quiet { "since the beginning; own presses in the last 28 days" } }
                    thead { tr { th scope="col" { "Word" } th scope="col" { "Stage" } th scope="col" { "Shown" } th scope="col" { "Press to giving" } th scope="col" { "Pressed when invited and wanting it" } th scope="col" { "Own presses" } } }
                    tbody { @for s in all { tr {
                        th scope="row" { (s.says) }
                        td data-label="Stage" { (s.stage.name()) @if s.stage != s.figures_say { span.hint { "figures: " (s.figures_say.name()) } } }
                        td data-label="Shown" { "n = " (s.showings) }
                        td data-label="Press to giving" { (s.delay) }
                        td data-label="Pressed when invited and wanting it" { (s.response) }
                        td data-label="Own presses" { "n = " (s.own_presses) }
                    } } }
                }
                p.quiet { "Stages: prepare, show (people press and give), invite (an offer, a wait, and the thing in any case), converse (it presses by itself). No press is never counted as no understanding." }
            }
        }
    }
}

pub fn pictures(locale: &Locale, all: &Days, words: &[Standing]) -> Markup {
    let week = |w: &Week| format!("{}", w.first);
    #[allow(clippy::cast_precision_loss)]
    let showings: Vec<Bar> = all
        .weeks
        .iter()
        .map(|w| Bar {
            tick: week(w).get(5..).unwrap_or_default().to_owned(),
            name: week(w),
            value: w.showings as f64,
            interval: None,
            n: None,
        })
        .collect();
    let whisker = |name: String, e: &Estimate| Whisker { name, value: e.value, interval: e.low.zip(e.high), n: e.n };
    let joining: Vec<Whisker> =
        all.weeks.iter().map(|w| whisker(format!("week from {}", w.first), &w.joining)).collect();
    let response: Vec<Whisker> =
        words.iter().filter(|s| s.response.n > 0).map(|s| whisker(s.says.clone(), &s.response)).collect();
    let told = |rows: &[Whisker], all: Vec<String>| if rows.is_empty() { String::new() } else { all.join("; ") };
    html! {
        section.pictures {
            @if all.weeks.iter().any(|w| w.showings > 0) {
                (bars(locale, "Showings a week", &all.weeks.iter().map(|w| format!("week from {}: {}", w.first, w.showings)).collect::<Vec<_>>().join("; "), "week from", "showings", &showings))
            }
            @if joining.iter().any(|w| w.n > 0) {
                (whiskers(locale, "Sessions joined, by week", &told(&joining, all.weeks.iter().map(|w| format!("week from {}: {}", w.first, w.joining)).collect()), &Axis::share(locale, "joined"), None, &joining))
            }
            @if !response.is_empty() {
                (whiskers(locale, "Pressed when invited and wanting it", &told(&response, words.iter().map(|s| format!("{}: {}", s.says, s.response)).collect()), &Axis::share(locale, "pressed"), None, &response))
            }
        }
    }
}

pub fn answered(all: &Days) -> Markup {
    let a = &all.answers;
    let n = a.given + a.partly + a.declined + a.alternative + a.missed;
    html! {
        @if n > 0 {
            section {
                h2 { "How its own presses were answered" }
                ul {
                    li { "Given: " (Estimate::share(a.given, n)) @if a.partly > 0 { ", partly: " (Estimate::share(a.partly, n)) } "." }
                    li { "Not now: " (Estimate::share(a.declined, n)) ", another thing: " (Estimate::share(a.alternative, n)) "." }
                    li { "Missed, or no answer noted: " (Estimate::share(a.missed, n)) "." }
                }
            }
        }
    }
}

pub fn signs(page: &AnimalPage, from: Moment) -> Markup {
    let all: Vec<_> = page.story.between::<Sign>(page.id, from, page.now).collect();
    let count = |level: SignLevel| all.iter().filter(|s| s.part.level == level).count();
    html! {
        section {
            h2 { "Body language noted" }
            p { "Taking part: n = " (count(SignLevel::Joining)) ". Mild signs of stress: n = " (count(SignLevel::Mild)) ". Strong signs: n = " (count(SignLevel::Strong)) "." }
            @if count(SignLevel::Strong) > 0 {
                ul { @for s in all.iter().filter(|s| s.part.level == SignLevel::Strong) { li { (s.at().day(&page.zone)) ": " (s.part.sign.as_str()) } } }
            }
            p.quiet { "As seen by the people there. A single sign means little; read the whole body and the situation." }
        }
    }
}

pub fn food(today: &Ration) -> Markup {
    html! {
        section {
            h2 { "Food rewards" }
            @match (today.day_kcal, today.budget_kcal) {
                (Some(day), Some(budget)) => p { "Reckoned with " (format!("{day:.0}")) " kcal a day" @if let Some((low, high)) = today.range_kcal { " (individuals: " (format!("{low:.0}")) " to " (format!("{high:.0}")) ")" } ", of which rewards at most " (format!("{budget:.0}")) " kcal. Basis: " (today.basis) "." }
                _ => p { "No allowance is computed: " (today.refusal.as_deref().unwrap_or("it is not known")) "." }
            }
        }
    }
}

pub fn likes_in_short(page: &AnimalPage) -> Markup {
    let report = likes(&page.case());
    html! {
        section {
            h2 { "Likes" }
            @match &report.known {
                Some(k) => p { (known(&page.locale, k)) @if let Some(last) = report.last { " Last tested on " (last.day(&page.zone)) "." } }
                None => p { "Not tested enough to say anything (n = " (report.trials) " trials)." }
            }
        }
    }
}

/// What the records leave open, named one by one.
pub fn not_known(all: &Days, words: &[Standing], tests: usize, checks: usize) -> Markup {
    let mut open: Vec<String> = Vec::new();
    if checks == 0 {
        open.push("Whether it understands any word: no planned check was held (n = 0). Pressing can also come from habit of place, from cues people give without knowing, or from what paid off before.".to_owned());
    } else {
        open.push(format!("Whether it understands a word is not settled by this sheet: n = {checks} trials of planned checks, told on the Evidence page."));
    }
    for s in words.iter().filter(|s| s.response.n == 0) {
        open.push(format!("How \u{201c}{}\u{201d} is answered when invited (n = 0).", s.says));
    }
    for s in words.iter().filter(|s| s.response.n > 0 && s.response.n < 10) {
        open.push(format!("Little about \u{201c}{}\u{201d} when invited (n = {}).", s.says, s.response.n));
    }
    let begun: usize = all.days.iter().map(|d| d.sessions).sum();
    if begun == 0 {
        open.push("How gladly it joins: no session was noted in this period (n = 0).".to_owned());
    }
    if tests == 0 {
        open.push("What it likes best: no likes test was held (n = 0).".to_owned());
    }
    html! {
        section {
            h2 { "What is not known" }
            ul { @for o in &open { li { (o) } } }
        }
    }
}
