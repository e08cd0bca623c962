//! The opening picture of Evidence: a row a word.

use crate::chart::{Axis, Whisker, steps, weeks, whiskers};
use crate::page::AnimalPage;
use crate::rich;
use maud::{Markup, html};
use sayso_advisor::Estimate;
use sayso_advisor::overview::WordRow;
use sayso_advisor::stages::Standing;
use sayso_methods::understanding::UnderstandingError;
use sayso_people::Capability;
use sayso_wording::evidence::{STEPS, rung, step};
use sayso_wording::{Message, say};

/// Every word in one picture, what its steps mean, and where to go on.
pub fn overview(page: &AnimalPage, rows: &Result<Vec<WordRow>, UnderstandingError>, words: &[Standing]) -> Markup {
    let (locale, animal) = (&page.locale, page.id);
    html! {
        @match rows {
            Err(why) => p.caution { (why.say(locale)) },
            Ok(rows) if rows.is_empty() => {
                @let link = html! { a href=(format!("/a/{animal}/words")) { (say!(locale, evidence::choose_words)) } };
                p { (rich!(locale, evidence::no_words, link = link)) }
            },
            Ok(rows) => (picture(page, rows)),
        }
        p { a.link href=(format!("/a/{animal}/checks")) { (say!(locale, evidence::checks)) } }
        p { a.link href=(format!("/a/{animal}/others")) { (say!(locale, others::link)) } }
        p { a.link href=(format!("/a/{animal}/designs")) { (say!(locale, evidence::trials)) } }
        @if page.may(Capability::SeeLog) { p { a.link href="/agreement" { (say!(locale, evidence::two_people)) } } }
        @if !words.is_empty() { (compared(page, words)) }
    }
}

fn picture(page: &AnimalPage, rows: &[WordRow]) -> Markup {
    let (locale, name) = (&page.locale, page.card.name.as_str());
    let claimed = rows.iter().filter(|r| step(r.rung) > 1).count();
    html! {
        figure.rungs data-test="overview" {
            figcaption { (say!(locale, evidence::picture, name = name)) }
            p.quiet { (say!(locale, evidence::picture_told, claimed = claimed)) }
            ul { @for row in rows { li { (line(page, row)) } } }
            details {
                summary { (say!(locale, evidence::how_to_climb)) }
                p { (say!(locale, evidence::legend)) }
                ol.plain {
                    li { (say!(locale, evidence::step_1)) }
                    li { (say!(locale, evidence::step_2)) }
                    li { (say!(locale, evidence::step_3, name = name)) }
                    li { (say!(locale, evidence::step_4)) }
                }
                p { (say!(locale, evidence::climb_round)) " " (say!(locale, evidence::step_rule)) }
            }
        }
    }
}

/// One word: a link to its page that says all of the row.
fn line(page: &AnimalPage, row: &WordRow) -> Markup {
    let locale = &page.locale;
    let told = |week: &Option<usize>| week.map_or_else(|| say!(locale, evidence::trend_before), |n| n.to_string());
    let list: Vec<String> = row.weeks.iter().map(told).collect();
    let behind = if step(row.rung) == 0 {
        say!(locale, evidence::behind_nothing, shown = row.showings)
    } else {
        say!(locale, evidence::behind, n = row.n)
    };
    let now = row.weeks.last().copied().flatten().unwrap_or(0);
    html! {
        a href=(format!("/a/{}/evidence/{}", page.id, row.word)) data-test="overview-word" {
            span.says { (row.says) }
            (weeks(&row.weeks))
            span.rung {
                (steps(step(row.rung), STEPS))
                span {
                    span.unseen { (say!(locale, evidence::step, step = step(row.rung), steps = STEPS)) " " }
                    (rung(locale, row.rung))
                }
            }
            span.week {
                span.unseen { (say!(locale, evidence::trend, list = list.join(", "))) " " }
                (say!(locale, evidence::this_week, n = now))
            }
            span.behind.quiet { (behind) }
        }
    }
}

/// The two figures of invitations, word beside word, from as many trials on as say something.
fn compared(page: &AnimalPage, words: &[Standing]) -> Markup {
    let (locale, even) = (&page.locale, words.len().max(2));
    let rows = |figure: fn(&Standing) -> Estimate| -> Vec<Whisker> {
        let row = |w: &Standing| Whisker::of(w.says.clone(), &figure(w));
        words.iter().map(row).filter(|row| row.n >= sayso_advisor::estimate::TOO_EARLY).collect()
    };
    let (pressed, right) = (rows(|w| w.response), rows(|w| w.right));
    #[allow(clippy::cast_precision_loss)]
    let chance = 1.0 / even as f64;
    html! {
        @if !(pressed.is_empty() && right.is_empty()) {
            details {
                summary { (say!(locale, evidence::compared)) }
                @if !pressed.is_empty() {
                    (whiskers(
                        locale,
                        &say!(locale, evidence::pressed_of_wanted, name = &page.card.name),
                        &say!(locale, evidence::pressed_told, name = &page.card.name),
                        &Axis::share(locale, &say!(locale, evidence::share_pressed)),
                        None,
                        &pressed,
                    ))
                }
                @if !right.is_empty() {
                    (whiskers(
                        locale,
                        &say!(locale, evidence::right_of_presses),
                        &say!(locale, evidence::right_told),
                        &Axis::share(locale, &say!(locale, evidence::share_right)),
                        Some(chance),
                        &right,
                    ))
                }
                p.quiet { (say!(locale, evidence::chance_line, words = even)) }
            }
        }
    }
}
