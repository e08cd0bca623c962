use super::{animal, person, steps};
use crate::cautions::for_each_animal;
use crate::layout::{Tab, layout};
use crate::page::Page;
use crate::picture;
use crate::rich;
use maud::{Markup, html};
use sayso_advisor::ration::{DayCaution, Ration, ration};
use sayso_model::{AnimalCard, HouseRule, LifeStage, PersonId, PictureOf, RewardCard, RewardKind};
use sayso_people::Capability;
use sayso_wording::ration::{basis, caution, refusal};
use sayso_wording::say;

pub fn view(page: &Page) -> Markup {
    let (home, l) = (page.story.home(), &page.locale);
    layout(
        page,
        Tab::People,
        &say!(l, card::people),
        html! {
            @for a in page.animals() { (steps(page, &a)) }
            section {
                h2 { (say!(l, card::animals)) }
                div.grid { @for a in page.animals() { (animal(page, &a)) } }
                @if page.may(Capability::ChangeCards) { p { a.button href="/people/animal/new" { (say!(l, card::add_animal)) } } }
            }
            section #people {
                h2 { (say!(l, card::people)) }
                ul.plain {
                    @for t in page.people() {
                        li.line { span { strong { (t.name.as_str()) } " " span.quiet { (say!(l, card::role, role = person::role_name(t.role))) } }
                            @if page.may(Capability::ChangeCards) { a.button href=(format!("/people/person/{}", t.person)) aria-label=(say!(l, card::edit_it, what = &t.name)) { (say!(l, card::edit)) } } }
                    }
                }
                @if page.may(Capability::ChangeCards) { p { a.button href="/people/person/new" { (say!(l, card::add_person)) } } }
            }
            (rewards(page))
            (rules(page))
            section {
                h2 { (say!(l, card::home)) }
                dl.facts {
                    dt { (say!(l, card::name)) } dd { @match home { Some(h) => (h.name.as_str()), None => (say!(l, card::not_named)) } }
                    dt { (say!(l, start::zone_field)) } dd { (page.zone.name()) }
                }
                p.row {
                    @if page.may(Capability::SettleHome) { a.button href="/people/home" { (say!(l, card::edit)) } }
                    @if page.may(Capability::Export) || page.may(Capability::Import) { a.button href="/exchange" { (say!(l, card::files)) } }
                    @if page.leave.is_none() { a.button href="/devices" { (say!(l, card::devices)) } }
                    @if page.leave.is_none() { a.button href="/linked" data-test="linked" { (say!(l, linked::title)) } }
                }
            }
            (put_away(page))
        },
    )
}

fn animal(page: &Page, a: &AnimalCard) -> Markup {
    let (today, l) = (ration(&page.story, a, page.now), &page.locale);
    html! {
        section.card id=(format!("animal-{}", a.animal)) {
            h3.pictured { (picture::of(&page.story, PictureOf::Animal { animal: a.animal })) span { (a.name.as_str()) " " span.quiet {
                (say!(l, start::species_name, species = a.species.name()))
                @if let Some(born) = a.born {
                    @let age = animal::age(l, born, page.now.day(&page.zone));
                    ", " @if a.born_estimated { (say!(l, card::about_age, age = age)) } @else { (age) }
                }
            } } }
            @if let Some(text) = &a.cautions { p.caution { strong { (say!(l, ideas::health)) } " " (text.as_str()) } }
            dl.facts {
                @if let Some(kg) = a.weight_kg { dt { (say!(l, card::weight)) } dd.num { (l.weight(kg.get())) } }
                @if let Some(kg) = a.adult_weight_kg.filter(|_| a.life_stage.is_some_and(|s| s.today() == LifeStage::Puppy)) { dt { (say!(l, card::grown)) } dd.num { (l.weight(kg.get())) } }
                @if let Some(stage) = a.life_stage { dt { (say!(l, card::stage_title)) } dd { (animal::stage_words(l, stage)) } }
                @if let Some(text) = &a.limits { dt { (say!(l, card::limits)) } dd { (text.as_str()) } }
            }
            (food(page, a, &today))
            @if page.may(Capability::ChangeCards) { a.button.wide href=(format!("/people/animal/{}", a.animal)) aria-label=(say!(l, card::edit_it, what = &a.name)) { (say!(l, card::edit)) } }
        }
    }
}

fn food(page: &Page, a: &AnimalCard, today: &Ration) -> Markup {
    let (l, people) = (&page.locale, page.story.people());
    let named = |who: &Option<PersonId>| {
        who.and_then(|w| people.get(&w)).map_or_else(|| say!(l, card::nobody), |c| c.name.to_string())
    };
    html! {
        h4 { (say!(l, card::food_today)) }
        @match (today.day_kcal, today.budget_kcal, &today.refusal) {
            (Some(day), Some(budget), _) => {
                p { (rich!(l, card::budget, budget = html! { span.figure { (say!(l, unit::kcal, value = l.number(budget, 0))) } }, day = l.number(day, 0)))
                    @if let Some((low, high)) = today.range_kcal { " " (say!(l, card::range, low = l.number(low, 0), high = l.number(high, 0))) } }
                p { (say!(l, card::given, given = l.number(today.given_kcal, 0), feeds = today.feeds, left = l.number(today.left_kcal.unwrap_or(0.0), 0))) }
                @if today.by_person.len() > 1 {
                    ul.quiet { @for (who, kcal) in &today.by_person {
                        li { (named(who)) ": " (say!(l, unit::kcal, value = l.number(*kcal, 0))) }
                    } }
                }
                p.quiet { (say!(l, card::basis, basis = today.basis.map(|b| basis(l, &b)).unwrap_or_default())) }
            }
            (_, _, Some(why)) => {
                p.caution { (rich!(l, card::not_computed, why = refusal(l, a.name.as_str(), why), link = html! { a href=(super::food_of(a.animal)) { (say!(l, card::type_in)) } })) }
            }
            _ => {}
        }
        @for c in today.cautions.iter().filter(|c| !matches!(c, DayCaution::Card(_))) { p.quiet { (caution(l, c)) } }
    }
}

fn rewards(page: &Page) -> Markup {
    let mut all: Vec<&RewardCard> = page.story.rewards().into_values().filter(|r| r.active).collect();
    all.sort_by(|a, b| a.kind.cmp(&b.kind).then(a.name.cmp(&b.name)).then(a.reward.cmp(&b.reward)));
    let l = &page.locale;
    html! {
        section #rewards {
            h2 { (say!(l, card::wants)) }
            @if all.is_empty() { p { (say!(l, card::wants_none)) } }
            @for a in page.animals() { p { a.button href=(format!("/a/{}/ideas", a.animal)) { (say!(l, ideas::title, name = &a.name)) } } }
            @for kind in RewardKind::ALL {
                @let of_kind: Vec<_> = all.iter().filter(|r| r.kind == kind).collect();
                @if !of_kind.is_empty() {
                    h3 { (say!(l, ideas::kind, kind = kind.name())) " " span.quiet { (say!(l, card::examples, kind = kind.name())) } }
                    ul.plain { @for r in of_kind { li.line { (one(page, r))
                        @if page.may(Capability::ChangeCards) { a.button href=(format!("/people/reward/{}", r.reward)) aria-label=(say!(l, card::edit_it, what = &r.name)) { (say!(l, card::edit)) } }
                        (for_each_animal(page, r)) } } }
                }
            }
            @if page.may(Capability::ChangeCards) { p { a.button href="/people/reward/new" { (say!(l, card::add_want)) } } }
        }
    }
}

fn one(page: &Page, r: &RewardCard) -> Markup {
    let l = &page.locale;
    let names: Vec<String> =
        page.animals().iter().filter(|a| r.animals.contains(&a.animal)).map(|a| a.name.to_string()).collect();
    let mut facts: Vec<String> = Vec::new();
    facts.extend(r.kcal_per_piece.map(|k| say!(l, card::kcal_piece, kcal = l.number(k.get(), 1))));
    facts.extend(r.seconds_to_deliver.map(|s| say!(l, card::s_to_give, seconds = l.number(s.get(), 0))));
    facts.extend(r.at_board.map(|yes| say!(l, card::at_board, at_board = if yes { "yes" } else { "no" })));
    facts.extend(r.stand_in.as_ref().map(|s| say!(l, card::stands_for, stand_in = s)));
    facts.extend(r.most_per_day.map(|m| say!(l, card::at_most, times = m)));
    facts.extend(r.says.as_ref().map(|s| say!(l, card::says, says = s)));
    if r.already_said {
        facts.push(say!(l, card::said_often));
    }
    if !names.is_empty() {
        facts.push(say!(l, card::for_whom, names = l.and(&names)));
    }
    html! {
        div.pictured { (picture::of(&page.story, PictureOf::Reward { reward: r.reward })) div { strong { (r.name.as_str()) } @if !facts.is_empty() { span.hint { (facts.join(" · ")) } } } }
    }
}

fn rules(page: &Page) -> Markup {
    let mut all: Vec<&HouseRule> = page.story.rules().into_values().filter(|r| r.active).collect();
    all.sort_by_key(|r| (r.word.is_some(), r.rule));
    let (words, l) = (page.story.words(), &page.locale);
    html! {
        section #rules {
            h2 { (say!(l, card::rules)) }
            @if all.is_empty() { p { (say!(l, card::rules_none)) } }
            ul.plain { @for r in all { li.line {
                span { @if let Some(w) = r.word.and_then(|w| words.get(&w)) { strong { (say!(l, words::says, says = &w.says)) } " " } (r.text.as_str()) }
                @if page.may(Capability::ChangeCards) { a.button href=(format!("/people/rule/{}", r.rule)) aria-label=(say!(l, card::edit_rule, rule = &r.text)) { (say!(l, card::edit)) } }
            } } }
            p.row { @if page.may(Capability::ChangeCards) { a.button href="/people/rule/new" { (say!(l, card::add_rule)) } } a.button href="/sheets/rules" { (say!(l, card::fridge)) } }
        }
    }
}

/// Cards no longer in use can be brought back.
fn put_away(page: &Page) -> Markup {
    let (animals, people, rewards) = (page.story.animals(), page.story.people(), page.story.rewards());
    let animals: Vec<_> = animals.into_values().filter(|l| !l.active).collect();
    let people: Vec<_> = people.into_values().filter(|t| !t.active).collect();
    let rewards: Vec<_> = rewards.into_values().filter(|r| !r.active).collect();
    let l = &page.locale;
    html! {
        @if !(animals.is_empty() && people.is_empty() && rewards.is_empty()) {
            details {
                summary { (say!(l, card::put_away, things = animals.len() + people.len() + rewards.len())) }
                ul.plain {
                    @for a in animals { li { a href=(format!("/people/animal/{}", a.animal)) { (a.name.as_str()) } " " span.quiet { (say!(l, start::species_name, species = a.species.name())) } } }
                    @for t in people { li { a href=(format!("/people/person/{}", t.person)) { (t.name.as_str()) } " " span.quiet { (say!(l, card::role, role = person::role_name(t.role))) } } }
                    @for r in rewards { li { a href=(format!("/people/reward/{}", r.reward)) { (r.name.as_str()) } " " span.quiet { (say!(l, ideas::kind, kind = r.kind.name())) } } }
                }
            }
        }
    }
}
