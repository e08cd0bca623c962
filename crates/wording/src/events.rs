//! What an event says, in a few words, for lists.

// A new kind of event must be decided on here.
#![deny(clippy::wildcard_enum_match_arm)]

use crate::lessons;
use crate::locale::Locale;
use crate::say;
use sayso_model::{
    Accident, Answer, Body, CaseCondition, CaseQuestion, Coach, Consent, Delivery, DesignPlan, EndReason, Feed,
    Invitation, InvitationKind, InvitationResult, LikeOutcome, LikeTrial, LikesFormat, PictureCard, PictureOf, Press,
    PressedBy, ProbeResponse, Purpose, RewardId, SignLevel, Stage, Story, SwapEnd, Then, WordId,
};

/// Chooses the branch of a message that says nothing of an argument.
const NONE: &str = "none";

/// How a press was answered.
#[must_use]
pub fn answer(locale: &Locale, answer: Answer) -> String {
    match answer {
        Answer::Given => say!(locale, client_events::given),
        Answer::Partly => say!(locale, client_events::partly),
        Answer::Declined => say!(locale, client_events::declined),
        Answer::Alternative => say!(locale, client_events::alternative),
        Answer::Missed => say!(locale, client_events::missed),
    }
}

/// What the animal did then.
#[must_use]
pub fn then(locale: &Locale, then: Then) -> String {
    match then {
        Then::Took => say!(locale, client_events::took),
        Then::Ignored => say!(locale, client_events::ignored),
        Then::Left => say!(locale, client_events::left),
        Then::PressedAgain => say!(locale, client_events::pressed_again),
    }
}

/// Why a session ended.
#[must_use]
pub fn end(locale: &Locale, name: &str, reason: EndReason) -> String {
    match reason {
        EndReason::Done => say!(locale, client_events::end_done),
        EndReason::AnimalLeft => say!(locale, client_events::end_left, name = name),
        EndReason::StrongSign => say!(locale, client_events::end_strong_sign),
        EndReason::ClosingWord => say!(locale, client_events::end_closing_word),
        EndReason::Interrupted => say!(locale, client_events::end_interrupted),
    }
}

/// How strong a sign is.
#[must_use]
pub fn level(locale: &Locale, level: SignLevel) -> String {
    match level {
        SignLevel::Joining => say!(locale, client_events::level_joining),
        SignLevel::Mild => say!(locale, client_events::level_mild),
        SignLevel::Strong => say!(locale, client_events::level_strong),
    }
}

/// What a stage is called.
#[must_use]
pub fn stage(locale: &Locale, stage: Stage) -> String {
    say!(locale, events::stage_name, stage = stage.name())
}

/// The question of a trial of a change.
#[must_use]
pub fn question(locale: &Locale, plan: &DesignPlan) -> String {
    let kind = match plan.question {
        CaseQuestion::QuieterButton => "quieter",
        CaseQuestion::NewPlace => "place",
        CaseQuestion::FasterDelivery => "faster",
        CaseQuestion::AnotherWord => "word",
        CaseQuestion::Other => "other",
    };
    let label = plan.label.as_ref().map_or_else(|| say!(locale, events::a_change), ToString::to_string);
    say!(locale, events::question, kind = kind, label = label)
}

/// What a consent is for, in a few words.
#[must_use]
pub fn consent(locale: &Locale, consent: Consent) -> String {
    let who = match consent.coach() {
        Some(Coach::Club { .. }) => "club",
        Some(Coach::Account { .. }) | None => "coach",
    };
    say!(locale, events::consent, purpose = consent.purpose().name(), who = who)
}

/// What a home is called.
#[must_use]
pub fn home_name(locale: &Locale, story: &Story) -> String {
    story.home().map_or_else(|| say!(locale, events::home_without_name), |card| card.name.to_string())
}

/// Tells events of one animal, named by `name`.
#[derive(Clone, Copy, Debug)]
pub struct Teller<'a> {
    /// How the reader reads.
    pub locale: &'a Locale,
    /// All that is known of the home.
    pub story: &'a Story,
    /// The animal's name.
    pub name: &'a str,
}

impl Teller<'_> {
    fn word(&self, id: WordId) -> String {
        let card = self.story.words().get(&id).copied();
        card.map_or_else(|| say!(self.locale, events::word_without_card), |w| w.says.to_string())
    }

    fn words(&self, ids: &[WordId]) -> String {
        self.locale.names(&ids.iter().map(|id| self.word(*id)).collect::<Vec<_>>())
    }

    fn reward(&self, id: RewardId) -> String {
        let card = self.story.rewards().get(&id).copied();
        card.map_or_else(|| say!(self.locale, events::reward_without_card), |r| r.name.to_string())
    }

    fn picture(&self, card: &PictureCard) -> String {
        let what = match card.shows {
            PictureOf::Animal { animal } => {
                self.story.animals().get(&animal).map_or(self.name, |a| a.name.as_str()).to_owned()
            }
            PictureOf::Reward { reward } => self.reward(reward),
            PictureOf::Word { word } => self.word(word),
        };
        match card.picture {
            Some(_) => say!(self.locale, pictures::logged, what = what),
            None => say!(self.locale, pictures::logged_removed, what = what),
        }
    }

    /// The event's content in a few words.
    #[must_use]
    pub fn tell(&self, body: &Body) -> String {
        let locale = self.locale;
        match body {
            Body::HomeCard(c) => say!(locale, events::home, name = &c.name, zone = c.zone.name()),
            Body::PersonCard(c) => say!(locale, events::person, name = &c.name),
            Body::AnimalCard(c) => say!(locale, events::animal, name = &c.name),
            Body::RewardCard(c) => say!(locale, events::reward, name = &c.name),
            Body::WordCard(c) => say!(locale, events::word, word = &c.says),
            Body::ClipCard(c) => say!(locale, events::clip, word = self.word(c.word)),
            Body::PictureCard(c) => self.picture(c),
            Body::BoardLayout(b) => {
                say!(locale, events::board, rows = b.rows, columns = b.columns, words = b.words.len())
            }
            Body::HouseRule(r) => say!(locale, events::rule, text = &r.text),
            Body::StageChoice(s) => {
                say!(locale, events::stage, word = self.word(s.word), stage = stage(locale, s.stage))
            }
            Body::SessionStart(s) => {
                let room = s.room.as_ref().map_or(NONE, |r| r.as_str());
                say!(locale, events::session_began, purpose = self.purpose(s.purpose), room = room)
            }
            Body::Joining(j) => match j.after_s {
                Some(s) => say!(locale, events::joined_after, seconds = self.locale.seconds(s.get())),
                None => say!(locale, events::joined),
            },
            Body::Leaving(_) => say!(locale, events::left),
            Body::SessionEnd(e) => say!(locale, events::session_ended, reason = end(locale, self.name, e.reason)),
            Body::Press(p) => self.press(p),
            Body::Delivery(d) => self.delivery(d),
            Body::Look(l) => match l.word {
                Some(w) => say!(locale, events::looked_at, word = self.word(w)),
                None => say!(locale, events::looked),
            },
            Body::Brush(b) => say!(locale, events::brushed, word = self.word(b.word)),
            Body::Round(r) => say!(locale, events::round, calls = r.calls, words = self.words(&r.words)),
            Body::SwapPlan(p) => {
                say!(locale, events::swaps_agreed, days = p.days, one_in = p.one_in, words = self.words(&p.words))
            }
            Body::SwapDraw(d) if d.give == d.word => say!(locale, events::drawn_give_it, word = self.word(d.word)),
            Body::SwapDraw(d) => {
                say!(locale, events::drawn_give_other, word = self.word(d.word), other = self.word(d.give))
            }
            Body::SwapStop(s) => match s.reason {
                SwapEnd::Home => say!(locale, events::swaps_stopped),
                SwapEnd::Signs => say!(locale, events::swaps_stopped_signs),
            },
            Body::Invitation(i) => self.invitation(i),
            Body::Catch(c) => {
                let how = c.how.as_ref().map_or(NONE, |h| h.as_str());
                let shown = if c.shown { "yes" } else { "no" };
                say!(locale, events::asked_without_button, word = self.word(c.word), how = how, shown = shown)
            }
            Body::Sign(s) => say!(
                locale,
                events::sign,
                level = level(locale, s.level),
                sign = crate::signs::noted(locale, s.sign.as_str())
            ),
            Body::Feed(f) => self.feed(f),
            Body::LikesTest(t) => {
                say!(locale, events::likes_test_of, n = t.rewards.len(), format = self.format(t.format))
            }
            Body::LikeTrial(t) => self.like_trial(t),
            Body::ProbePlan(p) => say!(locale, events::check_planned, trials = p.trials),
            Body::ProbeTrial(t) => {
                let came = match t.response {
                    ProbeResponse::Chose { word: w, .. } => say!(locale, events::chose, what = self.word(w)),
                    ProbeResponse::Nothing => say!(locale, events::nothing),
                    ProbeResponse::Left => say!(locale, events::result_left),
                };
                say!(locale, events::check_trial, trial = t.trial, word = self.word(t.target), came = came)
            }
            Body::DesignPlan(p) => {
                say!(locale, events::trial_planned, question = question(locale, p), points = p.points)
            }
            Body::DesignNote(n) => {
                let force = match n.in_force {
                    CaseCondition::Usual => "usual",
                    CaseCondition::Changed => "changed",
                };
                let force = say!(locale, events::in_force, force = force);
                say!(locale, events::trial_point, point = n.point, force = force)
            }
            Body::DesignStop(_) => say!(locale, events::trial_stopped),
            Body::Remark(r) => say!(locale, events::remark, text = &r.text),
            Body::LessonRead(r) => {
                say!(locale, events::lesson_read, lesson = lessons::named(locale, r.lesson.as_str()))
            }
            Body::ConsentGiven(c) => say!(locale, events::consent_given, what = consent(locale, c.consent)),
            Body::ConsentTakenBack(c) => say!(locale, events::consent_taken_back, what = consent(locale, c.consent)),
            Body::Proposal(p) => {
                let what = crate::talk::proposed(locale, self.story, &p.proposes);
                let what = p.text.as_ref().map_or_else(|| what.clone(), |text| format!("{what}: {text}"));
                say!(locale, events::proposal, name = &p.from.name, what = what)
            }
            Body::ProposalAnswer(a) => {
                let text = a.text.as_ref().map_or(NONE, |text| text.as_str());
                say!(locale, events::proposal_answer, reply = a.reply.name(), text = text)
            }
            Body::OwnPlan(p) => {
                let lines: Vec<String> =
                    p.lines.iter().map(|line| crate::talk::line(locale, self.story, line)).collect();
                say!(locale, events::own_plan, day = locale.date(p.last_day), lines = locale.and(&lines))
            }
            Body::AimDone(a) => {
                say!(locale, programme::done_noted, week = usize::from(a.week), aim = usize::from(a.aim))
            }
            Body::Correction(c) => say!(locale, events::correction, text = self.tell(&c.body)),
            Body::Withdrawal(w) => {
                say!(locale, events::undone, because = w.because.as_ref().map_or(NONE, |b| b.as_str()))
            }
        }
    }

    fn press(&self, p: &Press) -> String {
        let (locale, word) = (self.locale, self.word(p.word));
        let sure = if p.certainty.get() < 1.0 { locale.percent(p.certainty.get()) } else { NONE.to_owned() };
        let stumble = if p.accident == Accident::Likely { "yes" } else { "no" };
        match p.by {
            PressedBy::Animal => {
                say!(locale, events::pressed_itself, name = self.name, word = word, sure = sure, stumble = stumble)
            }
            PressedBy::Person => say!(locale, events::pressed_to_show, word = word, sure = sure),
            PressedBy::Unknown => say!(locale, events::pressed_by_someone, word = word, sure = sure, stumble = stumble),
        }
    }

    fn delivery(&self, d: &Delivery) -> String {
        let locale = self.locale;
        let then = match (d.then, d.then_word) {
            (Some(Then::PressedAgain), Some(w)) => say!(locale, events::pressed_then, word = self.word(w)),
            (Some(t), _) => then(locale, t),
            (None, _) => NONE.to_owned(),
        };
        say!(
            locale,
            events::answered,
            word = self.word(d.word),
            name = self.name,
            answer = answer(locale, d.answer),
            other = d.alternative.map_or_else(|| NONE.to_owned(), |r| self.reward(r)),
            after = d.delay_s.map_or_else(|| NONE.to_owned(), |s| self.locale.seconds(s.get())),
            then = then
        )
    }

    fn invitation(&self, i: &Invitation) -> String {
        let locale = self.locale;
        let way = match i.way {
            InvitationKind::OfferInView => say!(locale, events::in_view),
            InvitationKind::AskAndPoint => say!(locale, events::asked_pointed),
            InvitationKind::AskBetweenTwo => say!(locale, events::this_or_that),
        };
        let result = match &i.result {
            InvitationResult::Pressed { word: w, after_s } => {
                say!(locale, events::pressed_at, word = self.word(*w), seconds = self.locale.seconds(after_s.get()))
            }
            InvitationResult::WithoutButton { .. } => say!(locale, events::answered_without_button),
            InvitationResult::NothingByWait => say!(locale, events::nothing_by_wait),
            InvitationResult::Left { .. } => say!(locale, events::result_left),
        };
        say!(
            locale,
            events::invited,
            word = self.word(i.word),
            way = way,
            call = i.call.map_or_else(|| NONE.to_owned(), |c| c.number.to_string()),
            wait = self.locale.set_seconds(i.wait_s.get()),
            result = result
        )
    }

    fn feed(&self, f: &Feed) -> String {
        let locale = self.locale;
        let what = match (f.reward, &f.food) {
            (Some(r), _) => self.reward(r),
            (None, Some(food)) => food.to_string(),
            (None, None) => say!(locale, events::food),
        };
        let pieces = f.pieces.map_or_else(|| NONE.to_owned(), |p| p.to_string());
        let kcal = say!(locale, unit::kcal, value = locale.number(f.kcal.get(), 1));
        say!(locale, events::fed, what = what, pieces = pieces, kcal = kcal)
    }

    fn like_trial(&self, t: &LikeTrial) -> String {
        let locale = self.locale;
        let last = t.offered.len().saturating_sub(1);
        // From the animal's left to its right, as the test's page names the places.
        let beside = |(at, reward): (usize, &RewardId)| match at {
            _ if last == 0 => self.reward(*reward),
            0 => format!("{} ({})", self.reward(*reward), say!(locale, checks::left, name = self.name)),
            at if at == last => format!("{} ({})", self.reward(*reward), say!(locale, checks::right, name = self.name)),
            _ => self.reward(*reward),
        };
        let offered: Vec<String> = t.offered.iter().enumerate().map(beside).collect();
        let came = match &t.result {
            LikeOutcome::Chose { reward: r } => say!(locale, events::chose, what = self.reward(*r)),
            LikeOutcome::ChoseNone => say!(locale, events::chose_none),
            LikeOutcome::WalkedAway => say!(locale, events::walked_away),
            LikeOutcome::Observed { observed_s, .. } => {
                say!(locale, events::watched, seconds = self.locale.seconds(observed_s.get()))
            }
        };
        say!(locale, events::offered, things = locale.names(&offered), came = came)
    }

    fn purpose(&self, purpose: Purpose) -> String {
        match purpose {
            Purpose::Showing => say!(self.locale, events::showing),
            Purpose::Inviting => say!(self.locale, events::inviting),
            Purpose::Likes => say!(self.locale, events::likes_test),
            Purpose::Probe => say!(self.locale, events::check),
        }
    }

    fn format(&self, format: LikesFormat) -> String {
        match format {
            LikesFormat::Single => say!(self.locale, events::one_at_a_time),
            LikesFormat::Paired => say!(self.locale, events::two_at_a_time),
            LikesFormat::Multiple => say!(self.locale, events::all_at_once),
            LikesFormat::FreeAccess => say!(self.locale, events::free_access),
        }
    }
}
