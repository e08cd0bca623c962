//! Planning a check: words, design, choices and the rate worth finding give the number of trials. The order comes from a
//! seed drawn by the machine, so that nobody chooses it.

use super::{address, health, kindly};
use crate::cautions::for_animal;
use crate::error::Error;
use crate::fields::{number, radios, summary, ticks};
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::rich;
use crate::typed::{Typed, again};
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use sayso_advisor::checks::{PER_SITTING, Size, report, size};
use sayso_advisor::ration::forbidden;
use sayso_advisor::welfare::rest_today;
use sayso_model::{ProbeDesign, ProbeId, ProbePlan, RewardCard, WordCard, WordId};
use sayso_wording::checks::design;
use sayso_wording::{Locale, Message, say, words};
use uuid::Uuid;

/// Words in one check at most: more make it too long for any animal.
const MOST: u16 = 8;
const DESIGNS: [ProbeDesign; 3] = [ProbeDesign::PickForWord, ProbeDesign::PressUnderCovers, ProbeDesign::PressForThing];

fn words(page: &AnimalPage) -> Vec<&WordCard> {
    page.story.words_of(page.id).into_iter().filter(|w| !w.closing).collect()
}

fn reward_of<'a>(page: &'a AnimalPage, word: &WordCard) -> Option<&'a RewardCard> {
    word.reward.and_then(|r| page.story.rewards().get(&r).copied())
}

/// The form; `words` in the address ticks words.
pub async fn ask(page: AnimalPage, typed: Typed) -> Result<Markup, Error> {
    let typed = typed
        .only(&["words"])?
        .with("design", ProbeDesign::PickForWord.name())
        .with("choices", 2)
        .with("rate", 90)
        .with("who", "two");
    Ok(form(&page, &typed, None))
}

struct Asked {
    design: ProbeDesign,
    words: Vec<WordId>,
    choices: u16,
    blind: bool,
    size: Size,
}

pub async fn begin(page: AnimalPage, typed: Typed) -> Result<Response, Error> {
    let mut typed = typed.only(&["design", "words", "choices", "rate", "who", "step"])?;
    let asked = read(&page, &mut typed);
    let Some(asked) = asked.filter(|_| typed.right()) else {
        return Ok(again(form(&page, &typed, None)));
    };
    match typed.text("step") {
        "count" => return Ok(form(&page, &typed, Some(&asked)).into_response()),
        "plan" => {}
        _ => return Err(Error::refused("step", words!(faults::one_of, names = "count, plan"))),
    }
    let Ok(trials) = u16::try_from(asked.size.trials) else {
        typed.wrong("words", words!(faults::check_long));
        return Ok(again(form(&page, &typed, None)));
    };
    let Asked { design, words, choices, blind, .. } = asked;
    let seed = getrandom::u32().map_err(Error::internal)?;
    let plan = ProbePlan { probe: ProbeId(Uuid::now_v7()), design, words, choices, trials, seed, blind };
    let to = address(&page, plan.probe);
    if typed.kept(page.keep(vec![page.event(plan)]).await)? {
        return Ok(Redirect::to(&to).into_response());
    }
    Ok(again(form(&page, &typed, None)))
}

fn read(page: &AnimalPage, typed: &mut Typed) -> Option<Asked> {
    let design = typed.one_needed("design", &DESIGNS, ProbeDesign::name);
    let cards = words(page);
    let mut words = typed.ids("words", |w: &WordId| cards.iter().any(|c| c.word == *w));
    let mut seen = Vec::new();
    words.retain(|w| {
        !seen.contains(w) && {
            seen.push(*w);
            true
        }
    });
    if !(2..=usize::from(MOST)).contains(&words.len()) && typed.problem("words").is_none() {
        typed.wrong("words", words!(faults::tick, most = MOST, found = words.len()));
    }
    let choices = if design.is_some_and(ProbeDesign::places_drawn) {
        if typed.text("choices").is_empty() {
            typed.wrong("choices", words!(faults::easiest));
        }
        let choices = typed.whole("choices", 2, MOST)?;
        if usize::from(choices) > words.len() && typed.problem("words").is_none() {
            typed.wrong("choices", words!(faults::at_most_ticked, ticked = words.len()));
        }
        choices
    } else {
        u16::try_from(words.len()).ok()?
    };
    for (at, word) in words.iter().enumerate() {
        let card = |w: &WordId| cards.iter().find(|c| c.word == *w).copied();
        let Some(reward) = card(word).and_then(|c| reward_of(page, c)) else { continue };
        if forbidden(page.card.species, reward).is_some() {
            typed.wrong("words", words!(faults::never_given, name = reward.name.to_string()));
        }
        let twin = words[..at].iter().filter_map(card).find(|c| c.reward == Some(reward.reward));
        if let Some(twin) = twin {
            typed.wrong(
                "words",
                words!(faults::same_thing, first = twin.says.to_string(), second = reward.name.to_string()),
            );
        }
    }
    let blind = match typed.text("who") {
        "two" => Some(true),
        "one" => Some(false),
        _ => {
            typed.wrong("who", words!(faults::who));
            None
        }
    };
    let rate = typed.number("rate");
    if rate.is_none() && typed.problem("rate").is_none() {
        typed.wrong("rate", words!(faults::missing_usual, usual = 90_u8));
    }
    let rate = rate?;
    let chance = 100.0 / f64::from(choices.max(1));
    if !(rate > chance && rate <= 99.0) {
        typed.wrong("rate", words!(faults::above_chance, chance = format!("{chance:.0}")));
        return None;
    }
    match size(words.len(), choices, rate / 100.0) {
        Ok(size) => Some(Asked { design: design?, words, choices, blind: blind?, size }),
        Err(why) => {
            if typed.right() {
                typed.wrong("rate", words!(faults::near_chance, why = why.say(&page.locale)));
            }
            None
        }
    }
}

fn counted(l: &Locale, name: &str, asked: &Asked) -> Markup {
    let Size { per_word, trials, critical, chance, false_alarm, power, alpha } = asked.size;
    // Rare chances keep two decimals.
    let percent = |x: f64| {
        if x < 0.0995 { say!(l, unit::percent, value = l.number(100.0 * x, 2)) } else { l.percent(x) }
    };
    let sittings = trials.div_ceil(PER_SITTING as u64);
    let right = html! { strong { (say!(l, checks::count_right, right = critical, each = per_word)) } };
    html! {
        section.card #counted tabindex="-1" {
            h2 { (say!(l, checks::trials, trials = trials)) }
            p { (say!(l, checks::count_each, each = per_word, words = asked.words.len(), sittings = sittings, most = PER_SITTING)) }
            ul {
                li { (say!(l, checks::count_chance, name = name, share = l.percent(chance))) }
                li { (say!(l, checks::count_false_alarm, share = percent(false_alarm), alpha = l.percent(alpha))) }
                li { (say!(l, checks::count_power, name = name, share = percent(power))) }
                li { (rich!(l, checks::count_top, right = right)) }
                li { (say!(l, checks::count_by_lot, each = per_word)) }
                @if !asked.design.places_drawn() { li { (say!(l, checks::suggests)) } }
            }
            button.primary.wide name="step" value="plan" { (say!(l, checks::plan_these, trials = trials)) }
        }
    }
}

fn form(page: &AnimalPage, typed: &Typed, asked: Option<&Asked>) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    let cards = words(page);
    let options: Vec<(String, Markup)> = cards
        .iter()
        .map(|w| {
            let reward = reward_of(page, w);
            let text = html! { (w.says.as_str()) @if let Some(r) = reward { " " span.quiet { (r.name.as_str()) } (for_animal(&page.locale, &page.card, r)) } };
            (w.word.to_string(), text)
        })
        .collect();
    let designs: Vec<(String, Markup)> = DESIGNS
        .into_iter()
        .map(|d| (d.name().to_owned(), html! { (design(l, d)) span.hint { (about(l, name, d)) } }))
        .collect();
    let who = [
        (
            "two".to_owned(),
            html! { (say!(l, checks::who_two)) span.hint { (say!(l, checks::who_two_hint, name = name)) } },
        ),
        ("one".to_owned(), html! { (say!(l, checks::who_one)) span.hint { (say!(l, checks::who_one_hint)) } }),
    ];
    layout(
        page,
        Tab::Evidence,
        &say!(l, checks::plan),
        html! {
            (summary(typed))
            @if rest_today(&page.case()) {
                p.stop { (say!(l, checks::not_today, name = name)) }
                p { a href=(format!("/a/{}/checks", page.id)) { (say!(l, checks::back_to_all)) } }
            } @else if cards.len() < 2 {
                p { (say!(l, checks::too_few_words, name = name, words = cards.len())) }
                p { a.button.primary href=(Tab::Words.href(Some(page.id))) { (say!(l, checks::to_words)) } }
            } @else {
                p { (say!(l, checks::why)) }
                (health(page))
                (kindly(page))
                (unfinished(page))
                form method="post" action=(format!("/a/{}/checks/new", page.id)) .stack {
                    (radios(typed, "design", &say!(l, checks::field_design, name = name), "", &designs))
                    (ticks(typed, "words", &say!(l, checks::field_words), &say!(l, checks::field_words_hint), &options))
                    (number(typed, "choices", &say!(l, checks::field_choices), &say!(l, checks::field_choices_hint)))
                    (number(typed, "rate", &say!(l, checks::field_rate), &say!(l, checks::field_rate_hint, name = name)))
                    (radios(typed, "who", &say!(l, checks::field_who), "", &who))
                    button.wide .primary[asked.is_none()] name="step" value="count" formaction=(format!("/a/{}/checks/new#counted", page.id)) { (say!(l, checks::count)) }
                    @if let Some(asked) = asked { (counted(l, name, asked)) }
                }
            }
        },
    )
}

/// Checks begun and not finished: they count whatever is planned next.
fn unfinished(page: &AnimalPage) -> Markup {
    let case = page.case();
    let begun: Vec<_> = page
        .story
        .of::<ProbePlan>(page.id)
        .filter(|p| p.part.design.places_drawn())
        .filter_map(|p| Some((p, report(&case, p.part.probe)?.ok()?)))
        .filter(|(_, r)| !r.finished())
        .collect();
    let l = &page.locale;
    html! {
        @if !begun.is_empty() {
            div.caution {
                strong { (say!(l, checks::unfinished)) }
                ul { @for (p, r) in &begun {
                    li { a href=(address(page, p.part.probe)) { (l.date(p.at().day(&page.zone))) } " · " (design(l, p.part.design))
                        " · " (say!(l, checks::going, done = r.carried_out, trials = r.planned)) }
                } }
                (say!(l, checks::unfinished_count))
            }
        }
    }
}

fn about(l: &Locale, name: &str, design: ProbeDesign) -> String {
    match design {
        ProbeDesign::PressForThing => say!(l, checks::suggests),
        ProbeDesign::PressUnderCovers => say!(l, checks::about_covers),
        ProbeDesign::PickForWord | ProbeDesign::WrongDelivery => say!(l, checks::about_picks, name = name),
    }
}
