//! What of an event can be put right by a form: its time, and the parts a person mistakes.

// A new kind of event must be decided on here.
#![deny(clippy::wildcard_enum_match_arm)]

use super::line::clock;
use crate::page::AnimalPage;
use crate::typed::Typed;
use sayso_model::{
    Accident, Answer, Body, Brush, Catch, Day, Delivery, Event, Invitation, InvitationResult, Look, Moment, Press,
    PressedBy, Sign, SignLevel, Then, WordId, Zone,
};
use sayso_wording::say;

/// Names of all fields of the form.
pub const FIELDS: [&str; 9] = ["day", "time", "word", "by", "accident", "answer", "then", "level", "took"];

/// What a form can put right beside the time, by kind.
#[derive(Clone, Copy, Debug)]
pub enum Fixable<'a> {
    Press(&'a Press),
    Delivery(&'a Delivery),
    Invitation(&'a Invitation),
    Brush(&'a Brush),
    Catch(&'a Catch),
    Look(&'a Look),
    Sign(&'a Sign),
    /// What was planned or drawn stands, cards have pages of their own, and of the rest only the time is mistaken.
    TimeOnly,
}

impl<'a> Fixable<'a> {
    pub const fn of(body: &'a Body) -> Self {
        match body {
            Body::Press(p) => Self::Press(p),
            Body::Delivery(d) => Self::Delivery(d),
            Body::Invitation(i) => Self::Invitation(i),
            Body::Brush(b) => Self::Brush(b),
            Body::Catch(c) => Self::Catch(c),
            Body::Look(l) => Self::Look(l),
            Body::Sign(s) => Self::Sign(s),
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
            | Body::SessionStart(_)
            | Body::Joining(_)
            | Body::Leaving(_)
            | Body::SessionEnd(_)
            | Body::Feed(_)
            | Body::LikesTest(_)
            | Body::LikeTrial(_)
            | Body::ProbePlan(_)
            | Body::ProbeTrial(_)
            | Body::Round(_)
            | Body::SwapPlan(_)
            | Body::SwapDraw(_)
            | Body::SwapStop(_)
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
            | Body::Withdrawal(_) => Self::TimeOnly,
        }
    }

    /// The word, where that can be put right.
    pub const fn word(self) -> Option<WordId> {
        match self {
            Self::Press(Press { word, .. })
            | Self::Delivery(Delivery { word, .. })
            | Self::Invitation(Invitation { word, .. })
            | Self::Brush(Brush { word, .. })
            | Self::Catch(Catch { word, .. }) => Some(*word),
            Self::Look(Look { word, .. }) => *word,
            Self::Sign(_) | Self::TimeOnly => None,
        }
    }
}

/// The form as the event stands.
pub fn filled(page: &AnimalPage, event: &Event) -> Typed {
    let (at, fixable) = (event.happened_at, Fixable::of(&event.body));
    let typed = Typed::default().with("day", at.day(&page.zone)).with("time", clock(at, &page.zone));
    let typed = typed.with_some("word", fixable.word());
    match fixable {
        Fixable::Press(p) => typed.with("by", p.by.name()).with("accident", p.accident.name()),
        Fixable::Delivery(d) => typed.with("answer", d.answer.name()).with_some("then", d.then.map(Then::name)),
        Fixable::Sign(s) => typed.with("level", s.level.name()),
        Fixable::Invitation(i) => typed.with("took", i.took.map_or("", |t| if t { "yes" } else { "no" })),
        Fixable::Brush(_) | Fixable::Catch(_) | Fixable::Look(_) | Fixable::TimeOnly => typed,
    }
}

/// Reads the form; none where something is wrong, which is then noted in it.
pub fn read(page: &AnimalPage, event: &Event, typed: &mut Typed) -> Option<(Moment, Body)> {
    let at = time(page, event, typed);
    let body = body(page, event, typed);
    typed.right().then_some((at?, body?))
}

fn time(page: &AnimalPage, event: &Event, typed: &mut Typed) -> Option<Moment> {
    let (day, time) = (typed.text("day").to_owned(), typed.text("time").to_owned());
    let was = filled(page, event);
    // Untouched, it keeps its milliseconds.
    if (day.as_str(), time.as_str()) == (was.text("day"), was.text("time")) {
        return Some(event.happened_at);
    }
    let day = typed.checked("day", day.parse::<Day>());
    let parts: Option<Vec<u32>> = time.split(':').map(|p| p.parse().ok()).collect();
    let seconds = match parts.as_deref() {
        Some([h @ 0..=23, m @ 0..=59]) => Some(h * 3600 + m * 60),
        Some([h @ 0..=23, m @ 0..=59, s @ 0..=59]) => Some(h * 3600 + m * 60 + s),
        _ => {
            typed.wrong("time", say!(&page.locale, log::time_form));
            None
        }
    };
    let at = on_the_clock(day?, seconds?, &page.zone);
    if at > page.now {
        typed.wrong("time", say!(&page.locale, log::time_ahead));
        return None;
    }
    Some(at)
}

/// The moment a clock of the zone shows this time of the day; where clocks skip it, the moment after the gap.
fn on_the_clock(day: Day, seconds: u32, zone: &Zone) -> Moment {
    let guess = day.start(zone).plus_seconds(f64::from(seconds));
    let local = guess.local(zone);
    let shown = i32::from(local.hour()) * 3600 + i32::from(local.minute()) * 60 + i32::from(local.second());
    let days = guess.day(zone).days_since(day) * 86_400;
    let off = i32::try_from(seconds).unwrap_or(0) - shown - days;
    guess.plus_seconds(f64::from(off))
}

fn body(page: &AnimalPage, event: &Event, typed: &mut Typed) -> Option<Body> {
    let fixable = Fixable::of(&event.body);
    let chosen = if fixable.word().is_some() && !typed.text("word").is_empty() {
        typed.id::<WordId>("word", |id| page.story.words().contains_key(id))
    } else {
        None
    };
    let word = |was: WordId| chosen.unwrap_or(was);
    Some(match fixable {
        Fixable::Press(p) => Press {
            word: word(p.word),
            by: typed.one_of("by", PressedBy::ALL, PressedBy::name)?,
            accident: typed.one_of("accident", Accident::ALL, Accident::name)?,
            ..p.clone()
        }
        .into(),
        Fixable::Delivery(d) => {
            let answer = typed.one_of("answer", Answer::ALL, Answer::name)?;
            let then =
                if typed.text("then").is_empty() { None } else { Some(typed.one_of("then", Then::ALL, Then::name)?) };
            // What goes only with another answer goes with it.
            let alternative = d.alternative.filter(|_| answer == Answer::Alternative);
            let then_word = d.then_word.filter(|_| then == Some(Then::PressedAgain));
            Delivery { word: word(d.word), answer, then, alternative, then_word, ..d.clone() }.into()
        }
        Fixable::Invitation(i) => {
            let mut result = i.result.clone();
            // A press of the invited word stays a press of it.
            if let InvitationResult::Pressed { word: pressed, .. } = &mut result
                && *pressed == i.word
            {
                *pressed = word(i.word);
            }
            let took = match typed.text("took") {
                "yes" => Some(true),
                "no" => Some(false),
                "" => None,
                _ => {
                    typed.wrong("took", say!(&page.locale, log::took_choice));
                    return None;
                }
            };
            Invitation { word: word(i.word), result, took, ..i.clone() }.into()
        }
        Fixable::Brush(b) => Brush { word: word(b.word), ..b.clone() }.into(),
        Fixable::Catch(c) => Catch { word: word(c.word), ..c.clone() }.into(),
        Fixable::Look(l) => Look { word: chosen.or(l.word), ..l.clone() }.into(),
        Fixable::Sign(s) => Sign { level: typed.one_of("level", SignLevel::ALL, SignLevel::name)?, ..s.clone() }.into(),
        Fixable::TimeOnly => event.body.clone(),
    })
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn a_time_on_the_clock_is_found_also_on_days_when_clocks_change() {
        let zone = Zone::new("Europe/Berlin").unwrap();
        let at = |day: &str, h: u32| on_the_clock(day.parse().unwrap(), h * 3600, &zone).to_string();
        assert_eq!(at("2026-06-01", 12), "2026-06-01T10:00:00.000Z");
        assert_eq!(at("2026-03-29", 1), "2026-03-29T00:00:00.000Z");
        assert_eq!(at("2026-03-29", 12), "2026-03-29T10:00:00.000Z");
        assert_eq!(at("2026-10-25", 12), "2026-10-25T11:00:00.000Z");
        assert_eq!(at("2026-10-25", 23), "2026-10-25T22:00:00.000Z");
    }
}
