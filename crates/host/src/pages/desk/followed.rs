//! Over all homes of a coach: which kinds of change were followed by more presses, and how trials drawn by lot came out; with why the
//! first shows less than it seems to.

use super::asked::{Asked, Tab};
use super::open;
use super::row::called;
use super::view::around;
use crate::asker::Asker;
use crate::desk::Found;
use crate::fault::told;
use maud::{Markup, html};
use sayso_advisor::desk::{DAYS, Overall, TrialLine, overall};
use sayso_model::{AnimalId, HomeId};
use sayso_web::Error;
use sayso_wording::followed::{kind, outcome, outcomes, share};
use sayso_wording::talk::change;
use sayso_wording::{Locale, say};

/// Trials listed one by one, newest first.
const MOST: usize = 60;

pub async fn show(asker: Asker) -> Result<Markup, Error> {
    let who = asker.coach().await?;
    let found = open::found(&asker, &who).await?;
    // What was only read from a file in this account's name is nobody's.
    let wrote = asker.host.people.proposed_by(who.account).await.map_err(told)?;
    let lines =
        found.kept.iter().flat_map(|(home, kept)| kept.animals.values().map(move |animal| (*home, &animal.line)));
    let overall = overall(lines, |change| change.by == who.account && wrote.contains(&change.proposal));
    let l = &asker.locale();
    Ok(asker.wide_with(
        &[],
        &say!(l, followed::title),
        html! {
            (around(l, &found, Tab::Changes, &Asked::default()))
            p { (say!(l, followed::how, days = DAYS)) }
            p.caution data-test="nobody-drew" { (say!(l, followed::caution)) }
            (table(l, &overall))
            @if overall.nothing.n > 0 {
                p.quiet data-test="nothing-agreed" { (say!(l, followed::nothing, share = share(l, &overall.nothing))) }
            }
            h2 { (say!(l, followed::drawn_title)) }
            p { (say!(l, followed::drawn_how)) }
            (drawn(l, &overall))
            (each(l, &found))
        },
    ))
}

fn table(l: &Locale, overall: &Overall) -> Markup {
    html! {
        @if overall.followed.is_empty() { p data-test="none" { (say!(l, followed::none)) } }
        @else {
            div.scroll tabindex="0" role="region" aria-label=(say!(l, followed::title)) { table data-test="followed" {
                thead { tr {
                    th scope="col" { (say!(l, followed::change)) }
                    th scope="col" { (say!(l, followed::more)) }
                    th scope="col" { (say!(l, followed::early)) }
                } }
                tbody { @for of in &overall.followed {
                    tr data-test="kind" {
                        th scope="row" { (kind(l, of.kind)) }
                        td { (share(l, &of.more)) }
                        td { (say!(l, followed::homes, homes = of.early)) }
                    }
                } }
            } }
        }
    }
}

fn drawn(l: &Locale, overall: &Overall) -> Markup {
    html! {
        @if overall.drawn.is_empty() { p data-test="no-drawn" { (say!(l, followed::no_drawn)) } }
        @else {
            div.scroll tabindex="0" role="region" aria-label=(say!(l, followed::drawn_title)) { table data-test="drawn" {
                thead { tr {
                    th scope="col" { (say!(l, followed::drawn)) }
                    th scope="col" { (say!(l, followed::came_out)) }
                } }
                tbody { @for of in &overall.drawn {
                    tr {
                        th scope="row" { (change(l, of.question, None)) " " span.quiet { (say!(l, followed::homes, homes = of.homes)) } }
                        td {
                            (outcomes(l, &of.outcomes))
                            @if !of.beside.is_empty() {
                                p.quiet data-test="beside" {
                                    (say!(l, followed::beside, count = of.beside.values().sum::<usize>(), outcomes = outcomes(l, &of.beside)))
                                }
                            }
                        }
                    }
                } }
            } }
        }
    }
}

/// Every trial, with the way to its page.
fn each(l: &Locale, found: &Found) -> Markup {
    let mut all: Vec<(HomeId, AnimalId, &str, &TrialLine)> = Vec::new();
    for (home, kept) in &found.kept {
        for (animal, kept) in &kept.animals {
            all.extend(kept.line.trials.iter().map(|trial| (*home, *animal, kept.name.as_str(), trial)));
        }
    }
    all.sort_by_key(|(.., trial)| std::cmp::Reverse((trial.first, trial.trial)));
    html! {
        @if !all.is_empty() {
            details {
                summary { (say!(l, followed::each)) }
                ul { @for (home, animal, name, trial) in all.into_iter().take(MOST) {
                    li data-test="trial" {
                        a.link href=(format!("/a/{animal}/designs/{}?home={home}", trial.trial)) {
                            (say!(l, followed::in_home, animal = name, home = called(l, found, home)))
                        }
                        ": " (change(l, trial.question, None)) " · " (l.date(trial.first)) " · " (outcome(l, trial.outcome, 1))
                        @if trial.beside { " · " (say!(l, followed::was_beside)) }
                    }
                } }
            }
        }
    }
}
