//! What the pad needs to know at a moment: words, what was done today, the ration, signs to choose from.

// A new kind of event must be decided on here.
#![deny(clippy::wildcard_enum_match_arm)]

use super::drawn::{RoundNow, SwapNow, round, swap};
use crate::page::AnimalPage;
use crate::pages::learn::{FirstLesson, firsts};
use crate::picture;
use sayso_advisor::Case;
use sayso_advisor::ration::{cautions, forbidden, ration};
use sayso_advisor::rest::{rests_until, strong_of_week};
use sayso_advisor::stages::standings;
use sayso_advisor::today::{Next, Today};
use sayso_model::{
    AnimalId, Body, Event, EventId, HomeId, Moment, PersonId, PictureOf, RewardCard, RewardId, RewardKind,
    SAME_PRESS_S, Session, SessionId, SignLevel, Stage, Story, WordId, Zone, facts, session::OPEN_FOR_S,
};
use sayso_people::Capability;
use sayso_wording::hazards::{briefly, food, foods};
use sayso_wording::on_card;
use sayso_wording::ration::refusal;
use sayso_wording::{say, signs};
use serde::Serialize;
use std::collections::BTreeMap;

/// All of it, as JSON for the client.
#[derive(Clone, PartialEq, Debug, Serialize, schemars::JsonSchema)]
pub struct Now {
    /// Whose notebook.
    pub home: HomeId,
    /// Which animal.
    pub animal: AnimalId,
    /// Its name.
    pub name: String,
    /// Who holds the device.
    pub person: Option<PersonId>,
    /// The home's zone: days are counted in it, and a device that cannot tell its own writes it.
    pub zone: Zone,
    /// When this was so.
    pub at: Moment,
    /// A heard press and a tapped one of the same word this close are one, seconds.
    pub same_press_s: f64,
    /// Wait after an offer, seconds.
    pub wait_s: f64,
    /// Words on the board of this animal.
    pub words: Vec<WordNow>,
    /// What the next session is planned to show, as Today says it.
    pub plan: Vec<PlannedNow>,
    /// How long it is planned at most, in minutes, as Today says it.
    pub minutes: Option<f64>,
    /// That today's sessions are enough for now, as Today says it; none where another may begin.
    pub pause: Option<PauseNow>,
    /// What could be given instead.
    pub rewards: Vec<RewardNow>,
    /// Energy for rewards of the day and what is left of it.
    pub ration: RationNow,
    /// Signs to choose from.
    pub signs: Vec<SignNow>,
    /// What a battery in a mouth calls for.
    pub battery: String,
    /// Events, as they stand, that the pad counts or may put right: today's, and of a day that is just over those that a session
    /// or its sum may still need ([`STILL_NEEDED_S`]).
    pub today: Vec<Event>,
    /// When events of `today` were last changed by a clock ahead of the notebook's; a later change is dated after that.
    pub changed_ahead: BTreeMap<EventId, Moment>,
    /// When sessions may be held again after strong signs; none where they may be held now.
    pub rest_until: Option<Moment>,
    /// Strong signs of the last seven days that are not among `today`: another one may mean a longer rest.
    pub strong: Vec<Moment>,
    /// Whether `strong` and the strong signs among `today` are all there are: whoever scores without seeing what others scored gets their own.
    pub all_signs: bool,
    /// A session that was begun, here or on another device, and is not ended.
    pub open: Option<SessionId>,
    /// The last round begun, while it is not too old.
    pub round: Option<RoundNow>,
    /// Swaps that are running.
    pub swap: Option<SwapNow>,
    /// Lessons that open by themselves, of first times that lie ahead of whoever holds the device.
    pub lessons: Vec<FirstLesson>,
}

/// A word.
#[derive(Clone, PartialEq, Debug, Serialize, schemars::JsonSchema)]
pub struct WordNow {
    /// Which.
    pub id: WordId,
    /// What the button says.
    pub says: String,
    /// How everyone answers it.
    pub answer: Option<String>,
    /// What everyone says for "not now".
    pub not_now: Option<String>,
    /// Whether it ends sessions.
    pub closing: bool,
    /// Its stage.
    pub stage: Stage,
    /// Whether it may be invited today: nothing speaks against it.
    pub may_invite: bool,
    /// Whether a round of invitations draws it where nobody says otherwise.
    pub draws: bool,
    /// What is delivered.
    pub reward: Option<RewardId>,
    /// Where its picture is served, or that of what is delivered.
    pub picture: Option<String>,
}

/// A word of the next session's plan.
#[derive(Clone, PartialEq, Debug, Serialize, schemars::JsonSchema)]
pub struct PlannedNow {
    /// Which.
    pub word: WordId,
    /// Showings to aim for in that session.
    pub showings: usize,
    /// Of those, times to offer it first and wait.
    pub invitations: usize,
}

/// A pause after a session.
#[derive(Clone, PartialEq, Debug, Serialize, schemars::JsonSchema)]
pub struct PauseNow {
    /// When the next session may begin; none where that was all for today.
    pub until: Option<Moment>,
}

/// A reward.
#[derive(Clone, PartialEq, Debug, Serialize, schemars::JsonSchema)]
pub struct RewardNow {
    /// Which.
    pub id: RewardId,
    /// Its name.
    pub name: String,
    /// Its kind.
    pub kind: RewardKind,
    /// Energy of a piece of food.
    pub kcal: Option<f64>,
    /// How often it is given in a day at most, if its card says so.
    pub most_per_day: Option<u16>,
    /// Why it must not be given, if so.
    pub never: Option<String>,
    /// What to bear in mind, in a line to stand where it is given; none where the list says nothing.
    pub care: Option<String>,
    /// The same whole.
    pub cautions: Vec<String>,
}

/// The day's rewards.
#[derive(Clone, PartialEq, Debug, Serialize, schemars::JsonSchema)]
pub struct RationNow {
    /// Energy for rewards, kcal; none where nothing can be computed.
    pub budget_kcal: Option<f64>,
    /// Why not, if so.
    pub refusal: Option<String>,
}

/// A sign of body language.
#[derive(Clone, PartialEq, Debug, Serialize, schemars::JsonSchema)]
pub struct SignNow {
    /// The sign as the log holds it, in English.
    pub sign: &'static str,
    /// What is seen, in the reader's language.
    pub said: String,
    /// How strong.
    pub level: SignLevel,
    /// What to do.
    pub act: String,
}

/// The board of an animal as it is now.
#[must_use]
pub fn now(page: &AnimalPage) -> Now {
    let (story, animal, at, l) = (&*page.story, page.id, page.now, &page.locale);
    let day = at.day(&page.zone);
    let rewards = story.rewards_of(animal);
    let ration = ration(story, &page.card, at);
    let from = day.start(&page.zone).min(at.plus_seconds(-STILL_NEEDED_S));
    let (case, mut today) = (page.case(), events(story, animal, from, day.plus(1).start(&page.zone)));
    // Whoever scores without seeing what others scored gets nobody else's taps, and no session of theirs.
    let sees_others = page.may(Capability::SeeToday) || page.may(Capability::SeeLog);
    if !sees_others {
        today.retain(|event| page.person.is_some() && event.person == page.person);
    }
    let kept = page.state.kept.today(page.home, &case);
    let advised = (*kept).as_ref();
    Now {
        home: page.home,
        animal,
        name: page.card.name.to_string(),
        person: page.person,
        zone: page.zone.clone(),
        at,
        wait_s: facts::WAIT.get(),
        same_press_s: SAME_PRESS_S,
        words: words(page, &case, advised),
        plan: planned(advised),
        minutes: advised.and_then(Today::plan).map(|plan| plan.minutes),
        pause: advised.and_then(|today| {
            let Next::Pause { until, .. } = &today.next else { return None };
            Some(PauseNow { until: *until })
        }),
        rewards: rewards
            .iter()
            .map(|r: &&RewardCard| {
                let found = cautions(page.card.species, r);
                RewardNow {
                    id: r.reward,
                    name: r.name.to_string(),
                    kind: r.kind,
                    kcal: r.kcal_per_piece.map(|k| k.get()),
                    most_per_day: r.most_per_day,
                    never: forbidden(page.card.species, r).map(|why| foods(l, &why)),
                    care: (!found.is_empty()).then(|| format!("{}.", briefly(l, r.name.as_str(), &found))),
                    cautions: found.iter().map(|c| food(l, c)).collect(),
                }
            })
            .collect(),
        ration: RationNow {
            budget_kcal: ration.budget_kcal,
            refusal: ration.refusal.map(|why| refusal(l, page.card.name.as_str(), &why)),
        },
        signs: signs(page),
        battery: say!(l, hazards::battery),
        changed_ahead: changed_ahead(story, &today, at),
        today,
        rest_until: rests_until(&case),
        strong: strong_of_week(&case).into_iter().filter(|seen| sees_others && *seen < from).collect(),
        all_signs: sees_others,
        open: case.sessions().iter().rev().find(|s| s.open(at)).map(Session::id).filter(|_| sees_others),
        round: round(page).filter(|_| sees_others),
        swap: swap(page),
        lessons: firsts(page),
    }
}

/// In the order of the board.
fn words(page: &AnimalPage, case: &Case<'_>, advised: Option<&Today>) -> Vec<WordNow> {
    let (story, animal) = (&*page.story, page.id);
    let draws = advised.map(Today::draws).unwrap_or_default();
    let stages: BTreeMap<WordId, Stage> = standings(case).iter().map(|s| (s.word, s.stage)).collect();
    story
        .words_by_place(animal)
        .into_iter()
        .map(|w| {
            let on_card = on_card::read(&page.locale, story, w);
            WordNow {
                id: w.word,
                says: w.says.to_string(),
                answer: on_card.answer,
                not_now: on_card.not_now,
                closing: w.closing,
                stage: stages.get(&w.word).copied().unwrap_or(Stage::Prepare),
                may_invite: advised.is_some_and(|t| t.may_invite(w.word)),
                draws: draws.contains(&w.word),
                reward: w.reward,
                picture: picture::address(story, PictureOf::Word { word: w.word }),
            }
        })
        .collect()
}

/// The words of the next session with the showings to aim for, as Today says them; none while sessions rest.
fn planned(advised: Option<&Today>) -> Vec<PlannedNow> {
    let words = advised.and_then(Today::plan).into_iter().flat_map(|p| &p.words);
    words.map(|p| PlannedNow { word: p.word.word, showings: p.showings, invitations: p.invitations }).collect()
}

fn signs(page: &AnimalPage) -> Vec<SignNow> {
    facts::signs(page.card.species)
        .into_iter()
        .map(|s| SignNow {
            sign: &s.sign,
            said: signs::seen(&page.locale, s),
            level: match (s.kind.as_str(), s.level.as_str()) {
                ("joining", _) => SignLevel::Joining,
                (_, "strong") => SignLevel::Strong,
                _ => SignLevel::Mild,
            },
            act: signs::act(&page.locale, s),
        })
        .collect()
}

/// Standing events of a stretch that the pad counts or may put right.
fn events(story: &Story, animal: AnimalId, from: Moment, to: Moment) -> Vec<Event> {
    let of_today = story.all_between(animal, from, to);
    // Of a press told twice, the telling that counts.
    let once = |e: &&Event| story.same_press(e.id).is_none();
    let mut today: Vec<Event> = of_today.filter(|e| on_the_pad(&e.body)).filter(once).cloned().collect();
    today.drain(..today.len().saturating_sub(MOST_TODAY));
    today
}

/// Whether the pad counts events of this kind, or may put them right.
const fn on_the_pad(body: &Body) -> bool {
    match body {
        Body::SessionStart(_)
        | Body::SessionEnd(_)
        | Body::Joining(_)
        | Body::Leaving(_)
        | Body::Press(_)
        | Body::Delivery(_)
        | Body::Look(_)
        | Body::Brush(_)
        | Body::Invitation(_)
        | Body::Catch(_)
        | Body::Sign(_)
        | Body::Feed(_)
        | Body::SwapDraw(_)
        | Body::SwapStop(_) => true,
        Body::HomeCard(_)
        | Body::PersonCard(_)
        | Body::AnimalCard(_)
        | Body::RewardCard(_)
        | Body::WordCard(_)
        | Body::ClipCard(_)
        | Body::PictureCard(_)
        | Body::BoardLayout(_)
        | Body::HouseRule(_)
        | Body::StageChoice(_)
        | Body::LikesTest(_)
        | Body::LikeTrial(_)
        | Body::ProbePlan(_)
        | Body::ProbeTrial(_)
        | Body::Round(_)
        | Body::SwapPlan(_)
        | Body::DesignPlan(_)
        | Body::DesignNote(_)
        | Body::DesignStop(_)
        | Body::Remark(_)
        | Body::LessonRead(_)
        | Body::ConsentGiven(_)
        | Body::ConsentTakenBack(_)
        | Body::Proposal(_)
        | Body::ProposalAnswer(_)
        | Body::OwnPlan(_)
        | Body::AimDone(_)
        | Body::Correction(_)
        | Body::Withdrawal(_) => false,
    }
}

fn changed_ahead(story: &Story, events: &[Event], now: Moment) -> BTreeMap<EventId, Moment> {
    let changed = |e: &Event| story.ledger().last_amendment(e.id).map(|a| (e.id, a.recorded_at));
    events.iter().filter_map(changed).filter(|(_, at)| *at > now).collect()
}

/// A session and its sum are over this long after it was begun, in seconds: those begun later are told also after midnight.
pub const STILL_NEEDED_S: f64 = OPEN_FOR_S + SUM_S;
/// So long what a session came to is told on the pad, in seconds.
const SUM_S: f64 = 1_800.0;
/// More than anyone notes in a day by hand; bounds the size of the answer.
const MOST_TODAY: usize = 2_000;
