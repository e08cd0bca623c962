//! First words: proposed with reasons, taken over as cards.

use super::card::label;
use crate::cautions::for_animal;
use crate::error::Error;
use crate::page::AnimalPage;
use crate::pages::people::{StepName, instead, onward};
use crate::typed::Typed;
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use sayso_advisor::first_words::{
    Basis, Bound, Choice, FirstWords, Given, Liked, Part, Proposed, Reason, Why, first_words,
};
use sayso_advisor::ration::forbidden;
use sayso_methods::words::FirstWordsError;
use sayso_model::{Label, Note, RewardCard, RewardId, WordCard, WordId};
use sayso_wording::figures::finding;
use sayso_wording::hazards::foods;
use sayso_wording::on_card;
use sayso_wording::sounds::likeness;
use sayso_wording::{Locale, say};
use uuid::Uuid;

/// Words in the first set at most.
const MOST: usize = 3;

/// Name of the field with what a button says.
fn field(reward: RewardId) -> String {
    format!("says-{reward}")
}

/// Makes a card for each of the rewards that were ticked, with the label that stands beside it.
pub async fn accept(page: AnimalPage, typed: Typed) -> Result<Response, Error> {
    let open: Vec<&RewardCard> = open(&page);
    let names: Vec<String> = open.iter().map(|r| field(r.reward)).collect();
    let fields: Vec<&str> = names.iter().map(String::as_str).chain(["rewards"]).collect();
    let mut typed = typed.only(&fields)?;
    let l = page.locale;
    let rewards = typed.ids("rewards", |r: &RewardId| open.iter().any(|o| o.reward == *r));
    if typed.right() && !(1..=MOST).contains(&rewards.len()) {
        typed.wrong("rewards", say!(&l, words::how_many, most = MOST, ticked = rewards.len()));
    }
    let mut cards: Vec<WordCard> = Vec::new();
    for reward in open.iter().filter(|o| rewards.contains(&o.reward)) {
        if let Some(why) = forbidden(page.card.species, reward) {
            typed.wrong("rewards", say!(&l, words::must_not, why = foods(&l, &why)));
        }
        let says = match typed.text(&field(reward.reward)) {
            "" => None,
            _ => typed.label(&field(reward.reward)),
        };
        let card = card(&page, reward, says)?;
        let same = |w: &WordCard| w.says.as_str().eq_ignore_ascii_case(card.says.as_str());
        if cards.iter().any(same) || page.story.words().into_values().any(|w| w.active && same(w)) {
            typed.wrong(&field(reward.reward), say!(&l, words::twice, says = &card.says));
        }
        cards.push(card);
    }
    if !typed.right() {
        return Err(Error::Refused(crate::error::Refusal(typed.problems().to_vec())));
    }
    let to = match cards.as_slice() {
        // On the way to the first session the next step follows.
        _ if page.story.words_of(page.id).is_empty() => onward(&page, &page.card, StepName::Words),
        [one] => format!("/a/{}/words/card/{}", page.id, one.word),
        _ => format!("/a/{}/words", page.id),
    };
    page.keep(cards.into_iter().map(|c| page.about_home(c)).collect()).await?;
    Ok(Redirect::to(&to).into_response())
}

/// Rewards of this animal that have no word yet.
fn open(page: &AnimalPage) -> Vec<&RewardCard> {
    let taken: Vec<RewardId> = page.story.words_of(page.id).iter().filter_map(|w| w.reward).collect();
    page.story.rewards_of(page.id).into_iter().filter(|r| !taken.contains(&r.reward)).collect()
}

fn card(page: &AnimalPage, reward: &RewardCard, says: Option<Label>) -> Result<WordCard, Error> {
    let says = says.map_or_else(|| Label::new(&label(page, reward)).map_err(Error::internal), Ok)?;
    let on_card = on_card::proposed(&page.locale, Some(reward), says.as_str());
    let note = |text: &Option<String>| text.as_deref().map(Note::new).transpose().map_err(Error::internal);
    Ok(WordCard {
        word: WordId(Uuid::now_v7()),
        says,
        means: note(&on_card.means)?,
        answer: note(&on_card.answer)?,
        not_now: note(&on_card.not_now)?,
        reward: Some(reward.reward),
        closing: false,
        animals: if page.animals().len() > 1 { vec![page.id] } else { Vec::new() },
        active: true,
    })
}

/// The proposal; folded up once there are words.
pub fn section(page: &AnimalPage, begun: bool) -> Markup {
    let l = &page.locale;
    let found = first_words(&page.case(), page.label_language());
    html! {
        @if begun { details { summary { (say!(l, words::further)) } (body(page, &found)) } }
        @else { section { h2 { (say!(l, words::first)) } (body(page, &found)) } }
    }
}

fn body(page: &AnimalPage, found: &FirstWords) -> Markup {
    let (l, name) = (&page.locale, &page.card.name);
    html! {
        @if let Some(why) = &found.none_because {
            p { (none_because(l, why)) }
            p { a.button.primary href=(format!("/a/{}/ideas", page.id)) { (say!(l, ideas::title, name = name)) } }
        }
        @if let Some(best) = &found.best { (choice(page, best, true)) }
        @if found.likes_trials == 0 {
            p.quiet { (say!(l, words::untested, name = name)) " " a href=(format!("/a/{}/likes/new", page.id)) { (say!(l, words::test_first)) } }
        } @else { p.quiet { (say!(l, words::tested, trials = found.likes_trials)) } }
        @if !found.alternatives.is_empty() {
            details {
                summary { (say!(l, words::other_sets, sets = found.alternatives.len())) }
                @for c in &found.alternatives { (choice(page, c, false)) }
            }
        }
        @if !found.left_out.is_empty() {
            details open[found.best.is_none()] {
                summary { (say!(l, words::left_out, things = found.left_out.len())) }
                ul { @for out in &found.left_out {
                    li { strong { (say!(l, words::says, says = &out.says)) } " " (left_out(l, name, &out.why))
                        @if disliked(&out.why) && let Some(reward) = page.story.rewards().get(&out.reward) { (instead(page, reward)) } }
                } }
            }
        }
    }
}

const fn disliked(why: &Why) -> bool {
    matches!(why, Why::Choice(Reason::Outscored { by: Part::Liking, .. })) || matches!(why, Why::Never(_))
}

fn choice(page: &AnimalPage, c: &Choice, best: bool) -> Markup {
    let l = &page.locale;
    html! {
        form.card method="post" action=(format!("/a/{}/words/first", page.id)) {
            @for w in &c.words { (word(page, w, best)) }
            button.wide.primary[best] { (say!(l, words::take)) }
            details {
                summary { (say!(l, words::why_these)) }
                p.quiet { (say!(l, words::score,
                    total = l.number(c.score.total, 2),
                    liked = l.number(c.score.total - c.score.spread - c.score.apart - c.score.said, 2),
                    kinds = l.number(c.score.spread, 2), apart = l.number(c.score.apart, 2), said = l.number(c.score.said, 2))) }
                p.quiet { (say!(l, words::best_in, share = l.percent(c.best_in), draws = c.draws)) }
            }
        }
    }
}

fn word(page: &AnimalPage, w: &Proposed, best: bool) -> Markup {
    let l = &page.locale;
    let rewards = page.story.rewards();
    let reward = rewards.get(&w.reward).copied();
    let thing = reward.map_or("", |r| r.name.as_str());
    let name = field(w.reward);
    // Other sets may hold the same thing: an id stands once on a page.
    let id = best.then(|| name.clone());
    html! {
        div.proposal {
            label { input type="checkbox" name="rewards" value=(w.reward) checked;
                span { strong { (thing) } " " span.quiet { (say!(l, ideas::kind, kind = w.kind.name())) } } }
            div.field {
                label for=[id.as_deref()] { (say!(l, words::button_says)) span.unseen { " (" (thing) ")" } }
                input id=[id.as_deref()] name=(name) value=(w.says) maxlength=(Label::MOST) autocomplete="off"
                    aria-label=[(!best).then(|| say!(l, words::button_says))];
            }
            @if let Some(other) = &w.sounds_like { p.caution { (say!(l, words::sounds_like_one, other = other)) } }
            details {
                summary { (how_much(l, w)) }
                ul { @for b in reasons(page, w) { li { (b) } } }
            }
            @if let Some(reward) = reward { (for_animal(&page.locale, &page.card, reward)) }
        }
    }
}

/// What limits how often a day it can be given, and whether that is a guess; none where it was measured.
fn bound(w: &Proposed) -> Option<(&'static str, bool)> {
    let measured =
        matches!(w.given.per_day_from, Basis::Measured { .. }) && w.per_day.round() == f64::from(w.given.per_day);
    let guessed = matches!(w.given.seconds_from, Basis::Usual | Basis::MeasuredKind { .. });
    match (w.bound, w.given.per_day_from) {
        _ if measured => None,
        (Bound::Time, _) => Some(("time", guessed)),
        (Bound::Ration, _) => Some(("food", false)),
        (Bound::Most, Basis::Card) => Some(("card", false)),
        (Bound::Most, Basis::Usual | Basis::MeasuredKind { .. }) => Some(("usual", true)),
        (Bound::Most, Basis::Measured { .. }) => None,
    }
}

/// The one line in sight: how often a day it was given, or can be at most, and whether that is a guess. No aim either way; by
/// which of its limits, and the others, stand behind the tap.
fn how_much(l: &Locale, w: &Proposed) -> String {
    let bound = bound(w);
    let (basis, guess) =
        (if bound.is_none() { "measured" } else { "most" }, yes(bound.is_some_and(|(_, guess)| guess)));
    say!(l, words::how_much, basis = basis, times = w.per_day.round(), guess = guess)
}

const fn yes(whether: bool) -> &'static str {
    if whether { "yes" } else { "no" }
}

fn reasons(page: &AnimalPage, w: &Proposed) -> Vec<String> {
    let (l, name) = (&page.locale, &page.card.name);
    let mut all = match &w.liked {
        Liked::Untested => vec![say!(l, words::not_tested, name = name)],
        Liked::Chosen(e) => vec![say!(l, words::picked, name = name, figure = finding(l, e))],
        Liked::Scored(scores) => {
            scores.iter().map(|(format, e)| say!(l, words::scored, format = *format, figure = finding(l, e))).collect()
        }
    };
    all.extend(bound(w).map(|(by, guess)| say!(l, words::how_much_by, by = by, guess = yes(guess))));
    all.push(seconds(l, w.seconds, &w.given));
    all.push(match w.given.per_day_from {
        Basis::Measured { n } => say!(l, words::a_day_measured, times = w.given.per_day, days = n),
        Basis::Card => say!(l, words::a_day_card, times = w.given.per_day),
        Basis::MeasuredKind { .. } | Basis::Usual => say!(l, words::a_day_usual, times = w.given.per_day),
    });
    all.extend(w.pieces.map(|n| say!(l, words::pieces, pieces = n)));
    if w.already_said {
        all.push(say!(l, words::already_said));
    }
    all
}

/// How long one giving takes, and where the figure comes from.
fn seconds(l: &Locale, seconds: f64, given: &Given) -> String {
    let seconds = l.number(seconds, 0);
    match given.seconds_from {
        Basis::Measured { n } => say!(l, words::seconds_measured, seconds = seconds, n = n),
        Basis::MeasuredKind { n } => say!(l, words::seconds_kind, seconds = seconds, n = n),
        Basis::Card => say!(l, words::seconds_card, seconds = seconds),
        Basis::Usual => say!(l, words::seconds_usual, seconds = seconds),
    }
}

fn none_because(l: &Locale, why: &FirstWordsError) -> String {
    match why {
        FirstWordsError::NoSet { needed, usable, .. } => say!(l, words::no_set, usable = *usable, needed = *needed),
        _ => say!(l, words::too_many),
    }
}

fn left_out(l: &Locale, name: &Label, why: &Why) -> String {
    match why {
        Why::Never(why) => say!(l, words::must_not, why = foods(l, why)),
        Why::NoAllowance => say!(l, words::no_allowance, name = name),
        Why::SoundsLike(other) => say!(l, words::sounds_like_one, other = other),
        Why::Choice(reason) => match reason {
            // Told by `Why::Never`.
            Reason::Barred => say!(l, words::must_not, why = ""),
            Reason::BadFigure(_) => say!(l, words::bad_figure),
            Reason::NotAtBoard => say!(l, words::not_at_board),
            Reason::NoRation => say!(l, words::no_piece),
            Reason::TooSlow { seconds, slowest } => {
                say!(l, words::too_slow, seconds = l.number(*seconds, 0), slowest = l.number(*slowest, 0))
            }
            Reason::TooSeldom { per_day, fewest } => {
                say!(l, words::too_seldom, times = l.number(*per_day, 1), fewest = l.number(*fewest, 0))
            }
            Reason::SoundsLike { how, .. } => likeness(l, how),
            Reason::NoCompany { needed, .. } => say!(l, words::no_company, needed = *needed),
            Reason::AsGood { cautioned } => {
                say!(l, words::as_good, cautioned = yes(*cautioned))
            }
            Reason::Outscored { by, behind, .. } => {
                say!(l, words::outscored, by = part(*by), behind = l.number(*behind, 2))
            }
        },
    }
}

const fn part(part: Part) -> &'static str {
    match part {
        Part::Liking => "liking",
        Part::Uncertainty => "uncertainty",
        Part::Deliveries => "deliveries",
        Part::Spread => "spread",
        Part::Apart => "apart",
        Part::Said => "said",
    }
}
