//! Which capabilities it takes to write an event into a home's log.

// A new kind of event must be decided on here.
#![deny(clippy::wildcard_enum_match_arm)]

use crate::capability::Capability;
use crate::may::{Allowed, Denied, HomeNow, may};
use crate::membership::Who;
use crate::role::Role;
use crate::table::notebook_brings;
use sayso_model::talks::reaches;
use sayso_model::{
    AccountId, Body, ClubId, Event, EventId, HomeId, Moment, PersonId, Proposal, ProposalAnswer, Reply, Source,
};
use std::collections::BTreeSet;
use uuid::Uuid;

/// What writing a body takes; none for amendments, which take what they amend takes ([`needs`]).
#[must_use]
pub const fn needs_of(body: &Body) -> Option<Capability> {
    match body {
        Body::HomeCard(_) => Some(Capability::SettleHome),
        Body::PersonCard(_)
        | Body::AnimalCard(_)
        | Body::RewardCard(_)
        | Body::WordCard(_)
        | Body::ClipCard(_)
        | Body::PictureCard(_)
        | Body::BoardLayout(_)
        | Body::HouseRule(_)
        | Body::StageChoice(_) => Some(Capability::ChangeCards),
        Body::LikesTest(_) | Body::ProbePlan(_) | Body::SwapPlan(_) | Body::DesignPlan(_) | Body::OwnPlan(_) => {
            Some(Capability::Plan)
        }
        // Whoever is with the animal may stop what does it no good.
        Body::SwapStop(_) | Body::DesignStop(_) => Some(Capability::Record),
        Body::SessionStart(_)
        | Body::Joining(_)
        | Body::Leaving(_)
        | Body::SessionEnd(_)
        | Body::Press(_)
        | Body::Delivery(_)
        | Body::Look(_)
        | Body::Brush(_)
        | Body::Invitation(_)
        | Body::Catch(_)
        | Body::Sign(_)
        | Body::Feed(_)
        | Body::LikeTrial(_)
        | Body::ProbeTrial(_)
        | Body::Round(_)
        | Body::SwapDraw(_)
        | Body::DesignNote(_)
        | Body::Remark(_)
        | Body::LessonRead(_) => Some(Capability::Record),
        Body::ConsentGiven(_) => Some(Capability::Consent),
        // To close is never the danger: it waits for nothing.
        Body::ConsentTakenBack(_) => Some(Capability::TakeBack),
        Body::Proposal(_) => Some(Capability::Advise),
        Body::ProposalAnswer(_) | Body::AimDone(_) => Some(Capability::Agree),
        Body::Correction(_) | Body::Withdrawal(_) => None,
    }
}

/// Whether an event may come into a home's log from a file. Consent may not: what a file says opens nothing anyway
/// ([`sayso_model::consents`]), so whoever reads it in should be told rather than wonder.
#[must_use]
pub fn may_be_read_in(body: &Body) -> bool {
    !is_consent(body.stands_as())
}

fn is_consent(body: &Body) -> bool {
    matches!(body, Body::ConsentGiven(_) | Body::ConsentTakenBack(_))
}

/// Whoever writes.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Me {
    /// The account.
    pub account: AccountId,
    /// Who it is in the home's log, if anyone.
    pub person: Option<PersonId>,
}

impl Me {
    /// Whether a proposal names this account as the one whose words it holds.
    fn wrote(self, proposal: &Proposal) -> bool {
        proposal.from.account == self.account
    }
}

/// What it takes to put a body right, or to make another one of it. Consent is touched so by whoever may give it alone.
fn needs_amended(body: &Body) -> Option<Capability> {
    let needs = needs_of(body);
    if needs == Some(Capability::TakeBack) { Some(Capability::Consent) } else { needs }
}

/// The event of the home by which alone it can be told what writing a body takes, if there is one: what it amends, what it agrees to, or
/// what it declines in the name of an account.
#[must_use]
pub fn goes_by(body: &Body) -> Option<EventId> {
    if let Body::ProposalAnswer(ProposalAnswer { to, reply, by, .. }) = body
        && (*reply == Reply::Accepted || (*reply == Reply::Declined && by.is_some()))
    {
        Some(*to)
    } else {
        body.amends()
    }
}

/// Whether what passed on from one coach to another ([`HomeNow::with_talk`]) decides who may write a body: a no in an account's name.
#[must_use]
pub fn asks_passed(body: &Body) -> bool {
    matches!(body, Body::ProposalAnswer(ProposalAnswer { reply: Reply::Declined, by: Some(_), rehearsed: None, .. }))
}

/// Everything that writing an event takes. `first` finds an event of the home as first recorded and is asked for the one
/// that [`goes_by`] names, `me` is who writes.
///
/// A coach is nobody in the home's log: what one proposes, and takes back of it, stands under the account that it names.
///
/// An amendment takes what it puts right takes, and what it turns that into takes: a zone is not changed, and consent not
/// touched, by way of an Undo. What amends an event that is not there yet could turn out to be either, so it takes both.
pub fn needs<'a>(event: &Event, first: impl Fn(EventId) -> Option<&'a Event>, me: Me) -> BTreeSet<Capability> {
    let mut all: BTreeSet<Capability> = needs_of(&event.body).into_iter().collect();
    if let Body::Correction(correction) = &event.body {
        all.extend(needs_amended(&correction.body));
    }
    // To accept what opens the home to somebody is no agreeing among others. What is not there yet could turn out to be that.
    if let Body::ProposalAnswer(ProposalAnswer { to, reply: Reply::Accepted, .. }) = &event.body
        && first(*to).is_none_or(opens)
    {
        all.insert(Capability::Consent);
    }
    let mut by_account = matches!(event.body, Body::Proposal(_));
    if let Some(of) = event.body.amends() {
        match first(of) {
            Some(Event { body: Body::Proposal(proposal), .. })
                if me.wrote(proposal) && matches!(event.body, Body::Withdrawal(_)) =>
            {
                by_account = true;
                all.insert(Capability::Advise);
            }
            None => all.extend([Capability::Mend, Capability::Consent, Capability::SettleHome]),
            Some(target) => {
                let own = me.person.is_some() && target.person == me.person;
                all.insert(if own { Capability::MendOwn } else { Capability::Mend });
                all.extend(needs_amended(&target.body));
            }
        }
    }
    // A microphone hears presses of nobody in particular.
    let heard = event.source == Source::Heard && event.person.is_none();
    let under_own_name = event.person == me.person && (me.person.is_some() || by_account);
    if !heard && !under_own_name {
        all.insert(Capability::RecordForOthers);
    }
    if event.source == Source::Import {
        all.insert(Capability::Import);
    }
    all
}

/// Moments of which an event says that something happened then: its own, and that to which it moves another one.
pub fn dated(event: &Event) -> impl Iterator<Item = Moment> {
    let moved = if let Body::Correction(correction) = &event.body { correction.happened_at } else { None };
    std::iter::once(event.happened_at).chain(moved)
}

/// How far clocks of phones and notebooks may be ahead, seconds.
pub const CLOCKS_AHEAD_S: f64 = 86_400.0;

/// Whether it is a proposal that opens the home to somebody once it is accepted.
fn opens(event: &Event) -> bool {
    matches!(&event.body, Body::Proposal(proposal) if proposal.proposes.opens_to().is_some())
}

/// Why a linked notebook may not bring an event.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum NotBrought {
    /// It is another home's.
    OtherHome,
    /// It gives consent or takes it back, or touches what does.
    Consent,
    /// It is a coach's, touches what is, or answers in the name of an account.
    Coach,
    /// It amends, or agrees to, what is not there.
    Lacks,
    /// It takes something else that a notebook does not bring.
    Other,
}

/// Whether a notebook that is linked to a home may bring an event into that home's log. It has no account there and nobody vouches for
/// who held it: so it brings what people at home write down, and nothing that takes being seen to be somebody. `first` finds an event of
/// the home as first recorded.
///
/// # Errors
/// [`NotBrought`].
pub fn notebook_may_append<'a>(
    home: HomeId,
    event: &Event,
    first: impl Fn(EventId) -> Option<&'a Event>,
) -> Result<(), NotBrought> {
    if event.home != home {
        return Err(NotBrought::OtherHome);
    }
    let stands = event.body.stands_as();
    if let Body::ProposalAnswer(ProposalAnswer { by: Some(_), .. }) = stands {
        return Err(NotBrought::Coach);
    }
    let target = goes_by(&event.body);
    // Nobody's account: no proposal names it as the one that wrote.
    let nobody = Me { account: AccountId(Uuid::nil()), person: None };
    if needs(event, &first, nobody).into_iter().all(notebook_brings) {
        return Ok(());
    }
    Err(match target.map(&first) {
        _ if is_consent(stands) => NotBrought::Consent,
        _ if matches!(stands, Body::Proposal(_)) => NotBrought::Coach,
        Some(None) => NotBrought::Lacks,
        Some(Some(of)) if is_consent(&of.body) || opens(of) && event.body.amends().is_none() => NotBrought::Consent,
        Some(Some(of)) if matches!(of.body, Body::Proposal(_)) => NotBrought::Coach,
        _ => NotBrought::Other,
    })
}

/// Whether an account may write an event into a home's log. The sign-in must be fresh where one of the capabilities asks for
/// it: `fresh` says whether it is.
///
/// # Errors
/// [`Denied`] for the first thing it takes that the account has not; [`Denied::NotYourName`] for a proposal in another
/// account's name.
pub fn may_append<'a>(
    who: &Who,
    event: &Event,
    known: Option<&HomeNow>,
    first: impl Fn(EventId) -> Option<&'a Event>,
    at: Moment,
    fresh: bool,
) -> Result<Allowed, Denied> {
    // Days agreed are those of what happened: a phone without a network sends the last evening's taps the day after. What is
    // dated ahead goes by the day of sending; no further than a clock may be ahead: what is dated later goes by its own day, too.
    let when = event.happened_at.min(at);
    let far = |day: Moment| (day.plus_seconds(-CLOCKS_AHEAD_S) > at).then_some(day);
    let days: Vec<Moment> = dated(event).flat_map(|day| std::iter::once(day.min(at)).chain(far(day))).collect();
    // Any leave to write at all comes first: to others the home does not exist.
    let leave = may(who, Capability::Record, event.home, known, when);
    let leave = leave.or_else(|why| may(who, Capability::Advise, event.home, known, when).map_err(|_| why))?;
    let me = Me { account: who.account, person: leave.person };
    let closes = known.is_some_and(|known| closes(who, event, known, &first, at));
    let all = if closes { BTreeSet::from([Capability::Advise]) } else { needs(event, first, me) };
    for capability in &all {
        for day in &days {
            may(who, *capability, event.home, known, *day)?;
        }
        if capability.needs_fresh() && !fresh {
            return Err(Denied::NotFresh(*capability));
        }
    }
    if let Body::Proposal(proposal) = &event.body
        && !(me.wrote(proposal) && proposal.club.is_none_or(|club| coaches_in(who, club)))
    {
        return Err(Denied::NotYourName);
    }
    if let Body::ProposalAnswer(ProposalAnswer { by: Some(by), .. }) = &event.body
        && by.account != who.account
    {
        return Err(Denied::NotYourName);
    }
    Ok(leave)
}

/// Whether a coach closes what another one wrote that has passed on to them: in the own name, and nothing but that. To close is never
/// the danger; to agree is the home's.
fn closes<'a>(
    who: &Who,
    event: &Event,
    known: &HomeNow,
    first: &impl Fn(EventId) -> Option<&'a Event>,
    at: Moment,
) -> bool {
    let Body::ProposalAnswer(ProposalAnswer { to, reply: Reply::Declined, by: Some(by), rehearsed: None, .. }) =
        &event.body
    else {
        return false;
    };
    let Some(Event { body: Body::Proposal(of), happened_at, .. }) = first(*to) else { return false };
    let own = by.account == who.account && event.person.is_none() && event.source == Source::Tap;
    let wrote = (of.from.account, *happened_at);
    own && of.proposes.opens_to().is_none()
        && reaches(&known.passed, wrote, who.account, (at.day(&known.zone), &known.zone))
}

/// Whether an account is a coach of a club.
#[must_use]
pub fn coaches_in(who: &Who, club: ClubId) -> bool {
    clubs_coached(who).any(|of| of == club)
}

/// Clubs in which an account is a coach.
pub fn clubs_coached(who: &Who) -> impl Iterator<Item = ClubId> {
    let coach = who.memberships.iter().filter(|m| m.part.role() == Role::Coach && m.account == who.account);
    coach.filter_map(|m| m.part.scope().club())
}
