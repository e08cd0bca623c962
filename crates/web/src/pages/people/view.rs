use super::{animal, person, reward, steps};
use crate::cautions::for_each_animal;
use crate::layout::{Tab, layout};
use crate::page::Page;
use crate::picture;
use maud::{Markup, html};
use sayso_advisor::ration::{Ration, ration};
use sayso_model::{AnimalCard, HouseRule, LifeStage, PictureOf, RewardCard, RewardKind};

pub fn view(page: &Page) -> Markup {
    let home = page.story.home();
    layout(
        page,
        Tab::People,
        "People",
        html! {
            @for l in page.animals() { (steps(page, &l)) }
            section {
                h2 { "Animals" }
                div.grid { @for l in page.animals() { (animal(page, &l)) } }
                p { a.button href="/people/animal/new" { "Add an animal" } }
            }
            section #people {
                h2 { "People" }
                ul.plain {
                    @for t in page.people() {
                        li.line { span { strong { (t.name.as_str()) } " " span.quiet { (person::role_words(t.role)) } }
                            a.button href=(format!("/people/person/{}", t.person)) aria-label={ "Change " (t.name.as_str()) } { "Change" } }
                    }
                }
                p { a.button href="/people/person/new" { "Add a person" } }
            }
            (rewards(page))
            (rules(page))
            section {
                h2 { "Home" }
                dl.facts {
                    dt { "Name" } dd { @match home { Some(h) => (h.name.as_str()), None => "not named yet" } }
                    dt { "Time zone" } dd { (page.zone.name()) }
                }
                p { a.button href="/people/home" { "Change" } " " a.button href="/exchange" { "Files in and out" } " " a.button href="/devices" { "Devices that may read this" } }
            }
            (put_away(page))
        },
    )
}

fn animal(page: &Page, l: &AnimalCard) -> Markup {
    let today = ration(&page.story, l, page.now);
    html! {
        section.card id=(format!("animal-{}", l.animal)) {
            h3.pictured { (picture::of(&page.story, PictureOf::Animal { animal: l.animal })) span { (l.name.as_str()) " " span.quiet {
                (l.species.name())
                @if let Some(born) = l.born { ", " @if l.born_estimated { "about " } (animal::age(born, page.now.day(&page.zone))) }
            } } }
            @if let Some(text) = &l.cautions { p.caution { strong { "Health: " } (text.as_str()) } }
            dl.facts {
                @if let Some(kg) = l.weight_kg { dt { "Weight" } dd.num { (kg) " kg" } }
                @if let Some(kg) = l.adult_weight_kg.filter(|_| l.life_stage.is_some_and(|s| s.today() == LifeStage::Puppy)) { dt { "Expected grown" } dd.num { (kg) " kg" } }
                @if let Some(stage) = l.life_stage { dt { "Stage" } dd { (animal::stage_words(stage)) } }
                @if let Some(text) = &l.limits { dt { "Limits" } dd { (text.as_str()) } }
            }
            (food(page, l, &today))
            a.button.wide href=(format!("/people/animal/{}", l.animal)) aria-label={ "Change " (l.name.as_str()) } { "Change" }
        }
    }
}

fn food(page: &Page, l: &AnimalCard, today: &Ration) -> Markup {
    html! {
        h4 { "Food today" }
        @match (today.day_kcal, today.budget_kcal, &today.refusal) {
            (Some(day), Some(budget), _) => {
                p { span.figure { (format!("{budget:.0}")) " kcal" } " for rewards, of about " (format!("{day:.0}")) " kcal a day"
                    @if let Some((low, high)) = today.range_kcal { " (animals like it: " (format!("{low:.0}")) " to " (format!("{high:.0}")) " kcal)" } "." }
                p { "Given " (format!("{:.0}", today.given_kcal)) " kcal in " (today.feeds) @if today.feeds == 1 { " feed" } @else { " feeds" }
                    ", left " (format!("{:.0}", today.left_kcal.unwrap_or(0.0))) " kcal." }
                @if today.by_person.len() > 1 {
                    ul.quiet { @for (who, kcal) in &today.by_person {
                        li { (page.story.people().iter().find(|(t, _)| Some(**t) == *who).map_or("nobody named", |(_, c)| c.name.as_str())) ": " (format!("{kcal:.0}")) " kcal" }
                    } }
                }
                p.quiet { "Basis: " (today.basis) "." }
            }
            (_, _, Some(why)) => {
                p.caution { "Nothing is computed: " (why) ". " a href=(format!("/people/animal/{}#day_kcal", l.animal)) { "Type it in" } }
            }
            _ => {}
        }
        @for c in today.cautions.iter().filter(|c| l.cautions.as_ref().is_none_or(|own| own.as_str() != c.as_str())) { p.quiet { (c) } }
    }
}

fn rewards(page: &Page) -> Markup {
    let mut all: Vec<&RewardCard> = page.story.rewards().into_values().filter(|r| r.active).collect();
    all.sort_by(|a, b| a.kind.cmp(&b.kind).then(a.name.cmp(&b.name)).then(a.reward.cmp(&b.reward)));
    html! {
        section #rewards {
            h2 { "What they may want" }
            @if all.is_empty() { p { "Nothing listed yet. Four or more things of several kinds make a good likes test." } }
            @for kind in RewardKind::ALL {
                @let of_kind: Vec<_> = all.iter().filter(|r| r.kind == kind).collect();
                @if !of_kind.is_empty() {
                    h3 { (crate::fields::label_of(kind.name())) " " span.quiet { (reward::examples(kind)) } }
                    ul.plain { @for r in of_kind { li.line { (one(page, r))
                        a.button href=(format!("/people/reward/{}", r.reward)) aria-label={ "Change " (r.name.as_str()) } { "Change" }
                        (for_each_animal(page, r)) } } }
                }
            }
            p { a.button href="/people/reward/new" { "Add something" } }
        }
    }
}

fn one(page: &Page, r: &RewardCard) -> Markup {
    let names: Vec<String> =
        page.animals().iter().filter(|l| r.animals.contains(&l.animal)).map(|l| l.name.to_string()).collect();
    let mut facts: Vec<String> = Vec::new();
    facts.extend(r.kcal_per_piece.map(|k| format!("{k} kcal a piece")));
    facts.extend(r.seconds_to_deliver.map(|s| format!("{s} s to deliver")));
    facts.extend(r.most_per_day.map(|m| format!("at most {m} a day")));
    facts.extend(r.says.as_ref().map(|s| format!("says \u{201c}{s}\u{201d}")));
    if r.already_said {
        facts.push("said often already".to_owned());
    }
    if !names.is_empty() {
        facts.push(format!("for {}", names.join(", ")));
    }
    html! {
        div.pictured { (picture::of(&page.story, PictureOf::Reward { reward: r.reward })) div { strong { (r.name.as_str()) } @if !facts.is_empty() { span.hint { (facts.join(" · ")) } } } }
    }
}

fn rules(page: &Page) -> Markup {
    let mut all: Vec<&HouseRule> = page.story.rules().into_values().filter(|r| r.active).collect();
    all.sort_by_key(|r| (r.word.is_some(), r.rule));
    let words = page.story.words();
    html! {
        section #rules {
            h2 { "Rules of the house" }
            @if all.is_empty() { p { "None yet. What does everyone do when a button sounds and there is no time?" } }
            ul.plain { @for r in all { li.line {
                span { @if let Some(w) = r.word.and_then(|w| words.get(&w)) { strong { "\u{201c}" (w.says.as_str()) "\u{201d}: " } } (r.text.as_str()) }
                a.button href=(format!("/people/rule/{}", r.rule)) aria-label={ "Change the rule: " (r.text.as_str()) } { "Change" }
            } } }
            p.row { a.button href="/people/rule/new" { "Add a rule" } a.button href="/sheets/rules" { "Sheet for the fridge" } }
        }
    }
}

/// Cards no longer in use can be brought back.
fn put_away(page: &Page) -> Markup {
    let (animals, people, rewards) = (page.story.animals(), page.story.people(), page.story.rewards());
    let animals: Vec<_> = animals.into_values().filter(|l| !l.active).collect();
    let people: Vec<_> = people.into_values().filter(|t| !t.active).collect();
    let rewards: Vec<_> = rewards.into_values().filter(|r| !r.active).collect();
    html! {
        @if !(animals.is_empty() && people.is_empty() && rewards.is_empty()) {
            details {
                summary { "No longer in use (" (animals.len() + people.len() + rewards.len()) ")" }
                ul.plain {
                    @for l in animals { li { a href=(format!("/people/animal/{}", l.animal)) { (l.name.as_str()) } " " span.quiet { (l.species.name()) } } }
                    @for t in people { li { a href=(format!("/people/person/{}", t.person)) { (t.name.as_str()) } " " span.quiet { (person::role_name(t.role)) } } }
                    @for r in rewards { li { a href=(format!("/people/reward/{}", r.reward)) { (r.name.as_str()) } " " span.quiet { (r.kind.name()) } } }
                }
            }
        }
    }
}
