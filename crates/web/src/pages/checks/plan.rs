//! Planning a check: words, design, choices and the rate worth finding give the number of trials. The order comes from a
//! seed drawn by the machine, so that nobody chooses it.

use super::{address, kindly};
use crate::cautions::for_animal;
use crate::error::Error;
use crate::fields::{label_of, number, radios, summary, ticks};
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::typed::{Typed, again};
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use sayso_advisor::checks::{PER_SITTING, Size, report, size};
use sayso_advisor::ration::forbidden;
use sayso_advisor::welfare::rest_today;
use sayso_model::{ProbeDesign, ProbeId, ProbePlan, RewardCard, WordCard, WordId};
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
        _ => return Err(Error::refused("step", "must be count or plan")),
    }
    let Ok(trials) = u16::try_from(asked.size.trials) else {
        typed.wrong("words", "make a check too long; choose fewer words");
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
    let design = typed.one_of("design", &DESIGNS, ProbeDesign::name);
    if typed.text("design").is_empty() {
        typed.wrong("design", "is missing; choose one");
    }
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
        typed.wrong("words", format!("must be 2 to {MOST}, not {}; tick more or fewer", words.len()));
    }
    let choices = if design.is_some_and(ProbeDesign::places_drawn) {
        if typed.text("choices").is_empty() {
            typed.wrong("choices", "are missing; 2 is easiest for the animal");
        }
        let choices = typed.whole("choices", 2, MOST)?;
        if usize::from(choices) > words.len() && typed.problem("words").is_none() {
            typed.wrong("choices", format!("must be at most the number of words ticked, {}", words.len()));
        }
        choices
    } else {
        u16::try_from(words.len()).ok()?
    };
    for (at, word) in words.iter().enumerate() {
        let card = |w: &WordId| cards.iter().find(|c| c.word == *w).copied();
        let Some(reward) = card(word).and_then(|c| reward_of(page, c)) else { continue };
        if forbidden(page.card.species, reward).is_some() {
            typed.wrong("words", format!("include {}, which this animal must never be given", reward.name));
        }
        let twin = words[..at].iter().filter_map(card).find(|c| c.reward == Some(reward.reward));
        if let Some(twin) = twin {
            typed.wrong("words", format!("include two for the same thing ({}, {})", twin.says, reward.name));
        }
    }
    let blind = match typed.text("who") {
        "two" => Some(true),
        "one" => Some(false),
        _ => {
            typed.wrong("who", "is missing; say who will be there");
            None
        }
    };
    let rate = typed.number("rate");
    if rate.is_none() && typed.problem("rate").is_none() {
        typed.wrong("rate", "is missing; 90 is usual");
    }
    let rate = rate?;
    let chance = 100.0 / f64::from(choices.max(1));
    if !(rate > chance && rate <= 99.0) {
        typed.wrong("rate", format!("must be above chance ({chance:.0} %) and at most 99 %"));
        return None;
    }
    match size(words.len(), choices, rate / 100.0) {
        Ok(size) => Some(Asked { design: design?, words, choices, blind: blind?, size }),
        Err(why) => {
            if typed.right() {
                typed.wrong("rate", format!("is too close to chance for a check of bearable length ({why})"));
            }
            None
        }
    }
}

fn counted(asked: &Asked) -> Markup {
    let Size { per_word, trials, critical, chance, false_alarm, power, .. } = asked.size;
    let percent = |x: f64| if x < 0.0995 { format!("{:.2} %", 100.0 * x) } else { format!("{:.0} %", 100.0 * x) };
    html! {
        section.card #counted {
            h2 { (trials) " trials" }
            p { (per_word) " for each of " (asked.words.len()) " words, in about " (trials.div_ceil(PER_SITTING as u64)) " sittings of " (PER_SITTING) " on different days or hours." }
            ul {
                li { "By chance it would be right in " (percent(chance)) "." }
                li { "Chance alone gets a word to the top in " (percent(false_alarm)) " of checks (1 % shared by the words)." }
                li { "An animal as good as you hope gets there in " (percent(power)) " of checks." }
                li { "A word is at the top from " strong { (critical) " right of " (per_word) } "; fewer are enough if they come early. Exact binomial counts." }
                @if !asked.design.places_drawn() { li { (SUGGESTS) } }
            }
            button.primary.wide name="step" value="plan" { "Plan these " (trials) " trials" }
        }
    }
}

fn form(page: &AnimalPage, typed: &Typed, asked: Option<&Asked>) -> Markup {
    let cards = words(page);
    let options: Vec<(String, Markup)> = cards
        .iter()
        .map(|w| {
            let reward = reward_of(page, w);
            let text = html! { (w.says.as_str()) @if let Some(r) = reward { " " span.quiet { (r.kind.name()) } (for_animal(&page.card, r)) } };
            (w.word.to_string(), text)
        })
        .collect();
    let designs: Vec<(String, Markup)> = DESIGNS
        .into_iter()
        .map(|d| (d.name().to_owned(), html! { (label_of(super::design_words(d))) span.hint { (about(d)) } }))
        .collect();
    let who = [
        (
            "two".to_owned(),
            html! { "Two people or more" span.hint { "One sets up, the other is with the animal and does not know the answer: a blind check." } },
        ),
        (
            "one".to_owned(),
            html! { "I am alone" span.hint { "You know the answer, so cues stay a possible explanation, whatever comes out." } },
        ),
    ];
    layout(
        page,
        Tab::Evidence,
        "Plan a check",
        html! {
            (summary(typed))
            @if rest_today(&page.case()) {
                p.stop { "Not today: strong signs of stress were noted. Give " (page.card.name.as_str()) " space, and check on a calm day." }
                p { a href=(format!("/l/{}/checks", page.id)) { "Back to checks" } }
            } @else if cards.len() < 2 {
                p { "A check needs two words or more; this animal has " (cards.len()) "." }
                p { a.button.primary href=(Tab::Words.href(Some(page.id))) { "To the words" } }
            } @else {
                p { "Everyday presses leave room for other explanations: a glance, a favourite place, a favourite thing. A check closes that room, if it is planned first and then carried out as planned." }
                @if let Some(text) = &page.card.cautions { p.caution { strong { "Health: " } (text.as_str()) } }
                (kindly())
                (unfinished(page))
                form method="post" action=(format!("/l/{}/checks/new", page.id)) .stack {
                    (radios(typed, "design", "What the animal does", "", &designs))
                    (ticks(typed, "words", "Words", "two to four are usual; each with a thing of its own", &options))
                    (number(typed, "choices", "Things or covered buttons at a time", "2 is easiest, more need fewer trials. Where buttons keep their places, all ticked count"))
                    (number(typed, "rate", "Share right worth finding, in %", "how good it must be for you to care; lower takes many more trials"))
                    (radios(typed, "who", "Who is there", "", &who))
                    button.wide .primary[asked.is_none()] name="step" value="count" formaction=(format!("/l/{}/checks/new#counted", page.id)) { "How many trials?" }
                    @if let Some(asked) = asked { (counted(asked)) }
                }
            }
        },
    )
}

/// What buttons that keep their places can show.
pub const SUGGESTS: &str = "Buttons keep their places, so a habit of place looks the same: it may suggest and no more. Swapped under covers, it could show it.";

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
    html! {
        @if !begun.is_empty() {
            div.caution {
                strong { "Not finished: " }
                @for (i, (p, r)) in begun.iter().enumerate() {
                    @if i > 0 { "; " }
                    a href=(address(page, p.part.probe)) { (p.at().day(&page.zone)) } ", " (super::design_words(p.part.design)) ", " (r.carried_out) " of " (r.planned)
                }
                ". What was begun stays in the pool. Plan another of its kind, and one wrong is charged for the answer not recorded."
            }
        }
    }
}

const fn about(design: ProbeDesign) -> &'static str {
    match design {
        ProbeDesign::PressForThing => SUGGESTS,
        ProbeDesign::PressUnderCovers => {
            "For asking: the buttons are swapped under covers as drawn before each trial, the thing is out of sight; who answers does not know which button lies where."
        }
        _ => {
            "For hearing: things lie in random places; a word sounds; which thing does it go to? Random order and places rule most other explanations out."
        }
    }
}
