//! A plan of the home's own: kept where there is no coach to propose one, or beside one.

use super::chosen::animal;
use super::first;
use super::going::going_of;
use super::{case, no_such, plan, rests};
use crate::error::Error;
use crate::fields::summary;
use crate::layout::{Tab, layout};
use crate::page::Page;
use crate::typed::{Typed, again, named};
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use sayso_model::talks::{holds, own_plans};
use sayso_model::{AnimalCard, Event, EventId, Fact, OwnPlan, Withdrawal};
use sayso_people::Capability;
use sayso_wording::talk::line;
use sayso_wording::{say, words};

fn only(typed: Typed) -> Result<Typed, Error> {
    let mut fields = vec!["home", "animal", "begin"];
    fields.extend(plan::FIELDS);
    typed.only(&fields)
}

pub async fn ask(page: Page, typed: Typed) -> Result<Markup, Error> {
    let mut typed = only(typed)?;
    let card = animal(&page, &typed).ok_or_else(no_such)?;
    let last = own_plans(&page.story, card.animal, page.now).last();
    typed = match last {
        Some(last) => plan::taken_up(typed, &last.part.lines).with("filled", "plan"),
        None => plan::from_steps(&page, &case(&page, card.animal), typed),
    };
    let typed = plan::usual(&page, typed);
    Ok(form(&page, &card, &typed))
}

pub async fn keep(page: Page, typed: Typed) -> Result<Response, Error> {
    let mut typed = only(typed)?;
    if typed.text("home") != page.home.to_string() {
        typed.wrong("home", words!(sharing::other_home));
    }
    let card = animal(&page, &typed).ok_or_else(no_such)?;
    if rests(&page, card.animal) {
        typed.wrong("word_1", words!(talk::rests_still, name = card.name.to_string()));
    }
    let read = plan::read(&page, &card, &mut typed);
    if typed.right()
        && let Some((lines, last_day)) = read
    {
        let event = page.event(OwnPlan { lines, last_day });
        let event = Event { animal: Some(card.animal), ..event };
        if typed.kept(page.keep(vec![event]).await)? {
            return Ok(Redirect::to(&page.of_home("/talk")).into_response());
        }
    }
    Ok(again(form(&page, &card, &typed)))
}

/// The home ends a plan of its own.
pub async fn stop(page: Page, typed: Typed) -> Result<Redirect, Error> {
    let typed = typed.only(&["of"])?;
    let of: EventId = named(typed.text("of"), "plan")?;
    let mut all = page
        .animals()
        .into_iter()
        .filter_map(|a| own_plans(&page.story, a.animal, page.now).find(|plan| plan.id() == of).map(|_| a.animal));
    let animal = all.next().ok_or_else(no_such)?;
    let event = page.event(Withdrawal { of, because: None });
    page.keep(vec![Event { animal: Some(animal), ..event }]).await?;
    Ok(Redirect::to(&page.of_home("/talk")))
}

fn form(page: &Page, animal: &AnimalCard, typed: &Typed) -> Markup {
    let l = &page.locale;
    layout(
        page,
        Tab::None,
        &say!(l, talk::own),
        html! {
            (summary(typed))
            p { (say!(l, talk::own_intro, name = animal.name.as_str())) }
            p.note { (say!(l, talk::not_a_vet)) }
            @if rests(page, animal.animal) { p.stop data-test="rests" { (say!(l, talk::rest, name = animal.name.as_str())) } }
            @else if page.story.words_of(animal.animal).is_empty() { p { (say!(l, talk::no_words, name = animal.name.as_str())) } }
            @else {
                form method="post" action=(page.of_home("/talk/own")) .stack {
                    input type="hidden" name="home" value=(page.home);
                    input type="hidden" name="animal" value=(animal.animal);
                    @if !typed.text("filled").is_empty() { p.hint data-test="filled" { (say!(l, talk::filled, by = typed.text("filled"))) } }
                    (plan::fields(page, typed, Some(animal)))
                    button.primary.wide data-test="keep" { (say!(l, talk::own_keep)) }
                }
            }
            p { a href=(page.of_home("/talk")) { (say!(l, talk::title)) } }
        },
    )
}

fn holding<'a>(page: &'a Page, animal: &AnimalCard) -> impl Iterator<Item = Fact<'a, OwnPlan>> {
    own_plans(&page.story, animal.animal, page.now).filter(|plan| holds(plan.part, &page.story, page.now))
}

/// Whether a plan of the home's own holds for an animal.
pub fn any(page: &Page, animal: &AnimalCard) -> bool {
    holding(page, animal).next().is_some()
}

/// Plans of the home's own that hold, with how they go; and the way to another.
pub fn cards(page: &Page) -> Markup {
    let l = &page.locale;
    let animals = page.animals();
    let all: Vec<_> = animals.iter().map(|animal| (animal, holding(page, animal).collect::<Vec<_>>())).collect();
    let any = all.iter().any(|(_, plans)| !plans.is_empty());
    let may = page.may(Capability::Plan);
    html! {
        @if any || may { section data-test="own" {
            h2 { @if super::is_home(page) { (say!(l, talk::own_title)) } @else { (say!(l, talk::own_of_home)) } }
            @for (animal, plans) in &all { @for plan in plans { (card(page, animal, plan, animals.len() > 1)) } }
            @if may { @for animal in &animals {
                p { a.button href=(page.of_home_with("/talk/own", &[("animal", animal.animal.to_string())])) data-test="own-plan" {
                    (say!(l, talk::own_make, name = animal.name.as_str()))
                } }
            } }
        } }
    }
}

fn card(page: &Page, animal: &AnimalCard, plan: &Fact<'_, OwnPlan>, several: bool) -> Markup {
    let l = &page.locale;
    let who = plan.event.person.and_then(|id| page.story.people().get(&id).copied());
    let who = who.map_or_else(|| say!(l, talk::someone), |card| card.name.to_string());
    let at = l.weekday_date_time(plan.at(), &page.zone);
    html! {
        section.card id=(format!("t-{}", plan.id())) data-test="own-card" {
            p.topic.quiet { (who) " · " (at) @if several { " · " (animal.name.as_str()) } }
            ul.short { @for one in &plan.part.lines { li { (line(l, &page.story, one)) } } }
            (first::of_lines(page, animal.animal, &plan.part.lines))
            (going_of(page, animal.animal, (&plan.part.lines, plan.at(), plan.part.last_day), true))
            @if page.may(Capability::Plan) {
                form method="post" action=(page.of_home("/talk/own/stop")) {
                    button name="of" value=(plan.id()) data-test="own-stop" { (say!(l, talk::own_stop)) }
                }
            }
        }
    }
}
