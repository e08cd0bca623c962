//! What an event says, in a few words, for lists.

// A new kind of event must be decided on here.
#![deny(clippy::wildcard_enum_match_arm)]

use sayso_advisor::designs::question_words;
use sayso_model::{
    Accident, Answer, Body, EndReason, InvitationKind, InvitationResult, LikeOutcome, LikesFormat, PictureCard,
    PictureOf, PressedBy, ProbeResponse, Purpose, RewardId, SignLevel, Story, SwapEnd, Then, WordId,
};
use sayso_wording::{Locale, say};

fn word(story: &Story, id: WordId) -> String {
    story.words().get(&id).map_or_else(|| "a word not on any card".into(), |w| w.says.to_string())
}

fn words(story: &Story, ids: &[WordId]) -> String {
    ids.iter().map(|id| word(story, *id)).collect::<Vec<_>>().join(", ")
}

fn reward(story: &Story, id: RewardId) -> String {
    story.rewards().get(&id).map_or_else(|| "something not on any card".into(), |r| r.name.to_string())
}

fn picture(story: &Story, card: &PictureCard) -> String {
    let what = match card.shows {
        PictureOf::Animal { animal } => {
            story.animals().get(&animal).map_or_else(|| "an animal not on any card".into(), |a| a.name.to_string())
        }
        PictureOf::Reward { reward: id } => reward(story, id),
        PictureOf::Word { word: id } => word(story, id),
    };
    match card.picture {
        Some(_) => say!(&Locale::ENGLISH, pictures::logged, what = what),
        None => say!(&Locale::ENGLISH, pictures::logged_removed, what = what),
    }
}

/// How a press was answered.
#[must_use]
pub const fn answer(answer: Answer) -> &'static str {
    match answer {
        Answer::Given => "given",
        Answer::Partly => "partly given",
        Answer::Declined => "not now",
        Answer::Alternative => "not now, something else",
        Answer::Missed => "missed",
    }
}

/// What the animal did then.
#[must_use]
pub const fn then(then: Then) -> &'static str {
    match then {
        Then::Took => "took it",
        Then::Ignored => "ignored it",
        Then::Left => "left",
        Then::PressedAgain => "pressed again",
    }
}

/// Why a session ended.
#[must_use]
pub const fn end(reason: EndReason) -> &'static str {
    match reason {
        EndReason::Done => "the plan was done",
        EndReason::AnimalLeft => "the animal left",
        EndReason::StrongSign => "a strong sign",
        EndReason::ClosingWord => "closing word",
        EndReason::Interrupted => "something came up",
    }
}

/// How strong a sign is.
#[must_use]
pub const fn level(level: SignLevel) -> &'static str {
    match level {
        SignLevel::Joining => "taking part",
        SignLevel::Mild => "mild",
        SignLevel::Strong => "strong",
    }
}

/// The event's content in a few words.
#[must_use]
pub fn in_words(story: &Story, body: &Body) -> String {
    match body {
        Body::HomeCard(c) => format!("Home: {}, {}", c.name, c.zone.name()),
        Body::PersonCard(c) => format!("Person: {}", c.name),
        Body::AnimalCard(c) => format!("Animal: {}", c.name),
        Body::RewardCard(c) => format!("Reward: {}", c.name),
        Body::WordCard(c) => format!("Word: {}", c.says),
        Body::ClipCard(c) => format!("Recording of {}", word(story, c.word)),
        Body::PictureCard(c) => picture(story, c),
        Body::BoardLayout(b) => format!("Board of {} by {}, {} words", b.rows, b.columns, b.words.len()),
        Body::HouseRule(r) => format!("House rule: {}", r.text),
        Body::StageChoice(s) => format!("{}: stage {}", word(story, s.word), s.stage.name()),
        Body::SessionStart(s) => {
            let room = s.room.as_ref().map_or_else(String::new, |r| format!(", {r}"));
            format!("Session began: {}{room}", purpose(s.purpose))
        }
        Body::Joining(j) => j.after_s.map_or_else(|| "Joined".into(), |s| format!("Joined after {s} s")),
        Body::Leaving(_) => "Left".into(),
        Body::SessionEnd(e) => format!("Session ended: {}", end(e.reason)),
        Body::Press(p) => {
            let by = match p.by {
                PressedBy::Animal => "The animal pressed",
                PressedBy::Person => "Shown: pressed",
                PressedBy::Unknown => "Someone pressed",
            };
            let sure = if p.certainty.get() < 1.0 {
                format!(" ({:.0} % sure)", 100.0 * p.certainty.get())
            } else {
                String::new()
            };
            let stumble = if p.accident == Accident::Likely { " (looked like a stumble)" } else { "" };
            format!("{by} {}{sure}{stumble}", word(story, p.word))
        }
        Body::Delivery(d) => {
            let mut text = format!("{}: {}", word(story, d.word), answer(d.answer));
            if let Some(r) = d.alternative {
                text = format!("{text} ({})", reward(story, r));
            }
            if let Some(s) = d.delay_s {
                text = format!("{text} after {s} s");
            }
            match (d.then, d.then_word) {
                (Some(Then::PressedAgain), Some(w)) => format!("{text}; then it pressed {}", word(story, w)),
                (Some(t), _) => format!("{text}; then it {}", then(t)),
                (None, _) => text,
            }
        }
        Body::Look(l) => {
            l.word.map_or_else(|| "Looked at the board".into(), |w| format!("Looked at {}", word(story, w)))
        }
        Body::Brush(b) => format!("Brushed {} without sounding it", word(story, b.word)),
        Body::Round(r) => format!("Round of {} begun: {}", r.calls, words(story, &r.words)),
        Body::SwapPlan(p) => {
            format!("Swaps agreed for {} days, one answer in {}: {}", p.days, p.one_in, words(story, &p.words))
        }
        Body::SwapDraw(d) if d.give == d.word => format!("Drawn for {}: give it", word(story, d.word)),
        Body::SwapDraw(d) => format!("Drawn for {}: give {} instead", word(story, d.word), word(story, d.give)),
        Body::SwapStop(s) => match s.reason {
            SwapEnd::Home => "Swaps stopped".into(),
            SwapEnd::Signs => "Swaps stopped because of signs of stress".into(),
        },
        Body::Invitation(i) => {
            let way = match i.way {
                InvitationKind::OfferInView => "in view",
                InvitationKind::AskAndPoint => "asked, pointed",
                InvitationKind::AskBetweenTwo => "this or that",
            };
            let drawn = i.call.map_or_else(String::new, |c| format!(", drawn, call {}", c.number));
            format!(
                "Invited {} ({way}{drawn}, wait {} s): {}",
                word(story, i.word),
                i.wait_s,
                invited(story, &i.result)
            )
        }
        Body::Catch(c) => {
            let how = c.how.as_ref().map_or_else(String::new, |h| format!(" ({h})"));
            format!("Asked for {} without a button{how}{}", word(story, c.word), if c.shown { "; shown" } else { "" })
        }
        Body::Sign(s) => format!("Sign ({}): {}", level(s.level), s.sign),
        Body::Feed(f) => {
            let what = match (f.reward, &f.food) {
                (Some(r), _) => reward(story, r),
                (None, Some(food)) => food.to_string(),
                (None, None) => "food".into(),
            };
            let pieces = f.pieces.map_or_else(String::new, |p| format!("{p} \u{d7} "));
            format!("Fed {pieces}{what}, {:.1} kcal", f.kcal.get())
        }
        Body::LikesTest(t) => format!("Likes test of {} things: {}", t.rewards.len(), format_name(t.format)),
        Body::LikeTrial(t) => {
            let offered: Vec<String> = t.offered.iter().map(|r| reward(story, *r)).collect();
            let came = match &t.result {
                LikeOutcome::Chose { reward: r } => format!("chose {}", reward(story, *r)),
                LikeOutcome::ChoseNone => "chose none".into(),
                LikeOutcome::WalkedAway => "walked away".into(),
                LikeOutcome::Observed { observed_s, .. } => format!("watched for {observed_s} s"),
            };
            format!("Offered {}: {came}", offered.join(", "))
        }
        Body::ProbePlan(p) => format!("Check of understanding planned: {} trials", p.trials),
        Body::ProbeTrial(t) => {
            let came = match t.response {
                ProbeResponse::Chose { word: w, .. } => format!("chose {}", word(story, w)),
                ProbeResponse::Nothing => "nothing".into(),
                ProbeResponse::Left => "left".into(),
            };
            format!("Check, trial {} for {}: {came}", t.trial, word(story, t.target))
        }
        Body::DesignPlan(p) => format!("Trial of a change planned: {} ({} points)", question_words(p), p.points),
        Body::DesignNote(n) => format!("Trial of a change, point {}: in fact {}", n.point, n.in_force.name()),
        Body::DesignStop(_) => "Trial of a change stopped".into(),
        Body::Remark(r) => format!("Remark: {}", r.text),
        Body::Correction(c) => format!("Correction: {}", in_words(story, &c.body)),
        Body::Withdrawal(w) => w.because.as_ref().map_or_else(|| "Taken back".into(), |b| format!("Taken back: {b}")),
    }
}

fn invited(story: &Story, result: &InvitationResult) -> String {
    match result {
        InvitationResult::Pressed { word: w, after_s } => format!("pressed {} at {after_s} s", word(story, *w)),
        InvitationResult::WithoutButton { .. } => "answered without a button".into(),
        InvitationResult::NothingByWait => "nothing by the wait".into(),
        InvitationResult::Left { .. } => "left".into(),
    }
}

const fn purpose(purpose: Purpose) -> &'static str {
    match purpose {
        Purpose::Showing => "showing",
        Purpose::Inviting => "inviting",
        Purpose::Likes => "likes test",
        Purpose::Probe => "check of understanding",
    }
}

const fn format_name(format: LikesFormat) -> &'static str {
    match format {
        LikesFormat::Single => "one at a time",
        LikesFormat::Paired => "two at a time",
        LikesFormat::Multiple => "all at once, without replacement",
        LikesFormat::FreeAccess => "free access",
    }
}

/// What a household is called.
#[must_use]
pub fn home_name(story: &Story) -> &str {
    story.home().map_or("A home without a name", |card| card.name.as_str())
}
