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
use sayso_model::{Moment, ProbeTrial, Sign, SignLevel, Stage};
use sayso_wording::advice::{act, because, caution, known};
use sayso_wording::{Locale, say};

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
            h2 { (say!(l, sheets::in_short)) }
            ul {
                li { (say!(l, sheets::days_noted, days = noted, all = all.days.len())) }
                li { (say!(l, sheets::joined, name = name, share = l.estimate(&Estimate::share(joined, begun)))) }
                li { (say!(l, sheets::presses, showings = showings, presses = presses)) }
            }
            @for a in &advice {
                p.box { strong { (say!(l, sheets::welfare)) } " " (act(l, name, &a.act)) @for r in &a.because { " " (because(l, name, &r.fact)) } @for c in &a.cautions { " " (caution(l, name, *c)) } }
            }
        }
    }
}

fn stage(l: &Locale, stage: Stage) -> String {
    say!(l, words::stage, stage = stage.name())
}

pub fn words(page: &AnimalPage, all: &[Standing]) -> Markup {
    let l = &page.locale;
    let heads = [
        say!(l, sheets::stage),
        say!(l, sheets::shown),
        say!(l, sheets::press_to_giving),
        say!(l, sheets::pressed),
        say!(l, sheets::own_presses),
    ];
    let [of_stage, shown, delay, pressed, own] = &heads;
    html! {
        section {
            h2 { (say!(l, sheets::words)) }
            @if all.is_empty() { p { (say!(l, sheets::none_taught)) } }
            @else {
                table.stacks {
                    caption { span.quiet { (say!(l, sheets::words_caption)) } }
                    thead { tr { th scope="col" { (say!(l, sheets::word)) } @for head in &heads { th scope="col" { (head) } } } }
                    tbody { @for s in all { tr {
                        th scope="row" { (s.says) }
                        td data-label=(of_stage) { (stage(l, s.stage)) @if s.stage != s.figures_say { span.hint { (say!(l, sheets::figures_say, stage = stage(l, s.figures_say))) } } }
                        td data-label=(shown) { (say!(l, sheets::times, times = s.showings)) }
                        td data-label=(delay) { (l.estimate(&s.delay)) }
                        td data-label=(pressed) { (l.estimate(&s.response)) }
                        td data-label=(own) { (say!(l, sheets::times, times = s.own_presses)) }
                    } } }
                }
                p.quiet { (say!(l, sheets::stages, name = &page.card.name)) }
            }
        }
    }
}

pub fn pictures(l: &Locale, all: &Days, words: &[Standing]) -> Markup {
    let week = |w: &Week| say!(l, sheets::week_of, day = l.date(w.first));
    #[allow(clippy::cast_precision_loss)]
    let showings: Vec<Bar> = all
        .weeks
        .iter()
        .map(|w| Bar {
            tick: w.first.to_string().get(5..).unwrap_or_default().to_owned(),
            name: l.date(w.first),
            value: w.showings as f64,
            interval: None,
            n: None,
        })
        .collect();
    let whisker = |name: String, e: &Estimate| Whisker { name, value: e.value, interval: e.low.zip(e.high), n: e.n };
    let joining: Vec<Whisker> = all.weeks.iter().map(|w| whisker(week(w), &w.joining)).collect();
    let response: Vec<Whisker> =
        words.iter().filter(|s| s.response.n > 0).map(|s| whisker(s.says.clone(), &s.response)).collect();
    let told = |all: Vec<(String, String)>| {
        all.into_iter().map(|(name, value)| format!("{name}: {value}")).collect::<Vec<_>>().join("; ")
    };
    let shown = told(all.weeks.iter().map(|w| (week(w), w.showings.to_string())).collect());
    let joined = told(all.weeks.iter().map(|w| (week(w), l.estimate(&w.joining))).collect());
    let pressed = told(words.iter().map(|s| (s.says.clone(), l.estimate(&s.response))).collect());
    html! {
        section.pictures {
            @if all.weeks.iter().any(|w| w.showings > 0) {
                (bars(l, &say!(l, sheets::showings_a_week), &shown, &say!(l, sheets::week_from), &say!(l, sheets::showings), &showings))
            }
            @if joining.iter().any(|w| w.n > 0) {
                (whiskers(l, &say!(l, sheets::joined_by_week), &joined, &Axis::share(l, &say!(l, sheets::axis_joined)), None, &joining))
            }
            @if !response.is_empty() {
                (whiskers(l, &say!(l, sheets::pressed), &pressed, &Axis::share(l, &say!(l, sheets::axis_pressed)), None, &response))
            }
        }
    }
}

pub fn answered(page: &AnimalPage, all: &Days) -> Markup {
    let (l, a) = (&page.locale, &all.answers);
    let n = a.given + a.partly + a.declined + a.alternative + a.missed;
    let share = |k: usize| l.estimate(&Estimate::share(k, n));
    html! {
        @if n > 0 {
            section {
                h2 { (say!(l, sheets::answered, name = &page.card.name)) }
                ul {
                    li { @if a.partly > 0 { (say!(l, sheets::given_partly, share = share(a.given), partly = share(a.partly))) }
                        @else { (say!(l, sheets::given, share = share(a.given))) } }
                    li { (say!(l, sheets::declined, share = share(a.declined), other = share(a.alternative))) }
                    li { (say!(l, sheets::missed, share = share(a.missed))) }
                }
            }
        }
    }
}

pub fn signs(page: &AnimalPage, from: Moment) -> Markup {
    let l = &page.locale;
    let all: Vec<_> = page.story.between::<Sign>(page.id, from, page.now).collect();
    let count = |level: SignLevel| all.iter().filter(|s| s.part.level == level).count();
    let [joining, mild, strong] = [SignLevel::Joining, SignLevel::Mild, SignLevel::Strong].map(count);
    html! {
        section {
            h2 { (say!(l, sheets::signs)) }
            p { (say!(l, sheets::signs_counts, joining = joining, mild = mild, strong = strong)) }
            @if strong > 0 {
                ul { @for s in all.iter().filter(|s| s.part.level == SignLevel::Strong) {
                    li { (say!(l, sheets::sign_of, day = l.date(s.at().day(&page.zone)), sign = &s.part.sign)) } } }
            }
            p.quiet { (say!(l, sheets::signs_note)) }
        }
    }
}

pub fn food(l: &Locale, today: &Ration) -> Markup {
    let kcal = |x: f64| say!(l, unit::kcal, value = l.number(x, 0));
    let said = match (today.day_kcal, today.budget_kcal, today.range_kcal) {
        (Some(day), Some(budget), Some((low, high))) => say!(
            l,
            sheets::food_budget_range,
            day = kcal(day),
            low = kcal(low),
            high = kcal(high),
            budget = kcal(budget),
            basis = &today.basis
        ),
        (Some(day), Some(budget), None) => {
            say!(l, sheets::food_budget, day = kcal(day), budget = kcal(budget), basis = &today.basis)
        }
        _ => {
            let why = today.refusal.clone().unwrap_or_else(|| say!(l, sheets::food_unknown));
            say!(l, sheets::food_none, why = why)
        }
    };
    html! { section { h2 { (say!(l, sheets::food)) } p { (said) } } }
}

pub fn likes_in_short(page: &AnimalPage) -> Markup {
    let (l, report) = (&page.locale, likes(&page.case()));
    html! {
        section {
            h2 { (say!(l, sheets::likes_heading)) }
            @match &report.known {
                Some(k) => p { (known(l, k)) @if let Some(last) = report.last { " " (say!(l, sheets::last_tested, day = l.date(last.day(&page.zone)))) } }
                None => p { (say!(l, sheets::not_tested_enough, trials = report.trials)) }
            }
        }
    }
}

/// What the records leave open, named one by one.
pub fn not_known(page: &AnimalPage, all: &Days, words: &[Standing], tests: usize, checks: usize) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    let mut open: Vec<String> = vec![match checks {
        0 => say!(l, sheets::no_check, name = name),
        _ => say!(l, sheets::check_elsewhere, name = name, trials = checks),
    }];
    open.extend(words.iter().filter(|s| s.response.n == 0).map(|s| say!(l, sheets::not_invited, word = &s.says)));
    open.extend(
        words
            .iter()
            .filter(|s| s.response.n > 0 && s.response.n < 10)
            .map(|s| say!(l, sheets::little_invited, word = &s.says, times = s.response.n)),
    );
    if all.days.iter().all(|d| d.sessions == 0) {
        open.push(say!(l, sheets::no_session, name = name));
    }
    if tests == 0 {
        open.push(say!(l, sheets::no_likes_test, name = name));
    }
    html! {
        section {
            h2 { (say!(l, sheets::not_known)) }
            ul { @for o in &open { li { (o) } } }
        }
    }
}
