//! Every event has what it takes to write it.

use crate::made::*;
use sayso_model::*;
use sayso_people::Role;
use sayso_people::capability::Capability as C;
use sayso_people::needs::{Me, may_append, may_be_read_in, needs, needs_of};
use sayso_people::*;
use std::collections::BTreeSet;

const ME: PersonId = PersonId(id(50));
const NOBODY: Me = Me { account: account(1), person: None };

/// Samples with answers that carry the person's name alone: whose account it is, another rule says.
fn samples() -> Vec<Event> {
    let mut all = sayso_sim::samples();
    for event in &mut all {
        if let Body::ProposalAnswer(answer) = &mut event.body {
            answer.by = None;
        }
    }
    all
}

fn nothing<'a>(_: EventId) -> Option<&'a Event> {
    None
}

#[test]
fn every_kind_of_event_takes_a_capability_of_homes() {
    let samples = samples();
    assert_eq!(samples.len(), Kind::ALL.len());
    for event in &samples {
        let me = Me { account: account(1), person: event.person };
        let all = needs(event, |of| samples.iter().find(|e| e.id == of), me);
        assert!(!all.is_empty(), "{:?} takes nothing", event.body.kind());
        assert!(all.iter().all(|c| c.scope() == sayso_people::role::ScopeKind::Home));
        let keeper = who(account(1), &[part(Role::Keeper)]);
        let stranger = who(account(2), &[Part::new(Scope::Home(home(2)), Role::Keeper, None, None).unwrap()]);
        let event = Event { home: home(1), ..event.clone() };
        let known = home_now(home(1), Vec::new(), at(0));
        let first = |of| samples.iter().find(|e| e.id == of);
        if event.body.kind() == Kind::Proposal {
            let told = may_append(&keeper, &event, Some(&known), first, at(0), true);
            assert_eq!(told, Err(Denied::NotByRole(C::Advise)), "a coach's alone");
            continue;
        }
        assert!(may_append(&keeper, &event, Some(&known), first, at(0), true).is_ok(), "{:?}", event.body.kind());
        let told = may_append(&stranger, &event, Some(&known), first, at(0), true);
        assert_eq!(told, Err(Denied::NothingHere));
    }
}

/// Which kinds a role may write first hand, under its own name.
fn writes(role: Role) -> BTreeSet<Kind> {
    let known = home_now(home(1), Vec::new(), at(0));
    let asker = who(account(1), &[part(role)]);
    let may = |e: &Event| {
        let event = Event { home: home(1), person: Some(ME), happened_at: at(0), ..e.clone() };
        may_append(&asker, &event, Some(&known), nothing, at(0), true).is_ok()
    };
    samples().iter().filter(|e| may(e)).map(|e| e.body.kind()).collect()
}

#[test]
fn sitters_and_observers_write_what_happens_and_nothing_that_is_set() {
    let set = |kind: &Kind| {
        let sample = sayso_sim::samples().into_iter().find(|e| e.body.kind() == *kind).unwrap();
        !matches!(sample.body.about().does, sayso_model::event::Does::Tells)
    };
    for role in [Role::Sitter, Role::Observer] {
        let all = writes(role);
        assert!(all.contains(&Kind::Press) && all.contains(&Kind::Sign) && all.contains(&Kind::SwapStop));
        assert!(!all.iter().any(set), "{role:?}: no cards, no amendments of what is not there");
        for never in [
            Kind::ConsentGiven,
            Kind::ConsentTakenBack,
            Kind::StageChoice,
            Kind::ProbePlan,
            Kind::HomeCard,
            Kind::Proposal,
            Kind::ProposalAnswer,
        ] {
            assert!(!all.contains(&never), "{role:?} {never:?}");
        }
    }
    let member = writes(Role::Member);
    assert!(member.contains(&Kind::WordCard) && member.contains(&Kind::ProbePlan));
    assert!(member.contains(&Kind::ProposalAnswer) && !member.contains(&Kind::Proposal));
    assert!([Kind::HomeCard, Kind::ConsentGiven, Kind::ConsentTakenBack].iter().all(|k| !member.contains(k)));
    assert!(writes(Role::Coach).is_empty() && writes(Role::ServerKeeper).is_empty());
}

#[test]
fn a_sitter_writes_under_the_own_name_and_mends_only_what_it_wrote() {
    let press = sayso_sim::samples().into_iter().find(|e| e.body.kind() == Kind::Press).unwrap().body;
    let own = Event { person: Some(ME), ..event(1, home(1), 0, press) };
    let others = Event { id: EventId(id(2)), person: Some(PersonId(id(51))), ..own.clone() };
    let known = home_now(home(1), Vec::new(), at(0));
    let log = [own.clone(), others.clone()];
    let first = |of| log.iter().find(|e| e.id == of);
    let may =
        |role, event: &Event| may_append(&who(account(1), &[part(role)]), event, Some(&known), first, at(0), true);
    let undo = |of: &Event| Event { person: Some(ME), ..event(9, home(1), 1, Withdrawal { of: of.id, because: None }) };
    for role in [Role::Sitter, Role::Observer] {
        assert!(may(role, &own).is_ok());
        assert_eq!(may(role, &others), Err(Denied::NotByRole(C::RecordForOthers)));
        assert_eq!(may(role, &Event { person: None, ..own.clone() }), Err(Denied::NotByRole(C::RecordForOthers)));
        let heard = Event { person: None, source: Source::Heard, ..own.clone() };
        assert!(may(role, &heard).is_ok(), "a microphone hears for nobody");
        assert!(may(role, &undo(&own)).is_ok());
        assert_eq!(may(role, &undo(&others)), Err(Denied::NotByRole(C::Mend)));
    }
    assert!(may(Role::Member, &others).is_ok() && may(Role::Member, &undo(&others)).is_ok());
}

#[test]
fn no_amendment_reaches_further_than_what_it_amends() {
    let log = [
        event(1, home(1), 0, HomeCard { name: Label::new("Home").unwrap(), zone: Zone::utc() }),
        event(2, home(1), 0, given(Consent::Norms)),
        event(3, home(1), 0, ConsentTakenBack { consent: Consent::Norms, given: EventId(id(2)) }),
        event(4, home(1), 0, Remark { text: Note::new("x").unwrap() }),
    ];
    let first = |of| log.iter().find(|e| e.id == of);
    let undo = |n| event(20, home(1), 1, Withdrawal { of: EventId(id(n)), because: None });
    let turn = |n, into: Body| {
        let of = EventId(id(n));
        event(20, home(1), 1, Correction { of, happened_at: None, animal: None, body: Box::new(into) })
    };
    for (amendment, takes) in [
        (undo(1), C::SettleHome),
        (undo(2), C::Consent),
        (undo(3), C::Consent),
        (turn(4, given(Consent::Norms).into()), C::Consent),
        (turn(4, log[0].body.clone()), C::SettleHome),
        (turn(2, log[3].body.clone()), C::Consent),
        // What it amends has not arrived: it could be anything.
        (undo(77), C::Consent),
        (undo(77), C::SettleHome),
    ] {
        assert!(needs(&amendment, first, NOBODY).contains(&takes), "{amendment:?}");
        let known = home_now(home(1), Vec::new(), at(0));
        let member = who(account(1), &[part(Role::Member)]);
        assert!(may_append(&member, &amendment, Some(&known), first, at(0), true).is_err());
    }
}

#[test]
fn consent_needs_a_fresh_sign_in_and_what_was_read_in_takes_leave_to_import() {
    let known = home_now(home(1), Vec::new(), at(0));
    let keeper = who(account(1), &[part(Role::Keeper)]);
    let give = event(1, home(1), 0, given(Consent::Norms));
    let old = may_append(&keeper, &give, Some(&known), nothing, at(0), false);
    assert_eq!(old, Err(Denied::NotFresh(C::Consent)));
    assert_eq!(needs_of(&give.body), Some(C::Consent));
    let back = event(3, home(1), 0, ConsentTakenBack { consent: Consent::Norms, given: EventId(id(1)) });
    assert!(may_append(&keeper, &back, Some(&known), nothing, at(0), false).is_ok(), "closing waits for nothing");
    let undo = event(4, home(1), 0, Withdrawal { of: back.id, because: None });
    let first = |of| (of == back.id).then_some(&back);
    assert_eq!(may_append(&keeper, &undo, Some(&known), first, at(0), false), Err(Denied::NotFresh(C::Consent)));
    let read_in = Event { source: Source::Import, ..event(2, home(1), 0, Remark { text: Note::new("x").unwrap() }) };
    assert!(needs(&read_in, nothing, NOBODY).contains(&C::Import));
}

#[test]
fn consent_does_not_come_in_by_a_file() {
    let refused: Vec<Kind> =
        sayso_sim::samples().iter().filter(|e| !may_be_read_in(&e.body)).map(|e| e.body.kind()).collect();
    assert_eq!(refused, [Kind::ConsentGiven, Kind::ConsentTakenBack]);
    let of = EventId(id(1));
    let hidden = Correction { of, happened_at: None, animal: None, body: Box::new(given(Consent::Norms).into()) };
    assert!(!may_be_read_in(&hidden.into()));
}

#[test]
fn a_sitters_days_are_those_of_what_happened_not_of_the_sending() {
    let known = home_now(home(1), Vec::new(), at(0));
    let today = at(0).day(&known.zone);
    let scope = Scope::Home(home(1));
    let agreed = Part::new(scope, Role::Sitter, Some(ME), Some(Days::every(today, today))).unwrap();
    let asker = who(account(1), &[agreed]);
    let press = sayso_sim::samples().into_iter().find(|e| e.body.kind() == Kind::Press).unwrap();
    let sent = |happened: Moment, now: Moment| {
        let event = Event { home: home(1), person: Some(ME), happened_at: happened, ..press.clone() };
        may_append(&asker, &event, Some(&known), nothing, now, true)
    };
    let days = |n: f64| at(0).plus_seconds(n * 86_400.0);
    assert!(sent(at(0), at(0)).is_ok());
    assert!(sent(at(0), days(1.0)).is_ok(), "a phone that was offline sends it the day after");
    assert_eq!(sent(days(-1.0), at(0)), Err(Denied::NotToday), "dated before the days agreed");
    assert!(sent(days(1.0), at(0)).is_ok(), "a clock that is ahead, on a day agreed");
    assert_eq!(sent(days(0.0), days(-1.0)), Err(Denied::NotToday), "dated into a day that has not come");
    assert_eq!(sent(days(1.0), days(1.0)), Err(Denied::NotToday));
    assert_eq!(sent(days(60.0), at(0)), Err(Denied::NotToday), "dated further ahead than any clock is");
}

#[test]
fn a_sitter_cannot_move_a_press_out_of_the_days_agreed_by_correcting_it() {
    let known = home_now(home(1), Vec::new(), at(0));
    let today = at(0).day(&known.zone);
    let agreed = Part::new(Scope::Home(home(1)), Role::Sitter, Some(ME), Some(Days::every(today, today))).unwrap();
    let asker = who(account(1), &[agreed]);
    let days = |n: f64| at(0).plus_seconds(n * 86_400.0);
    let press = sayso_sim::samples().into_iter().find(|e| e.body.kind() == Kind::Press).unwrap();
    let press = Event { home: home(1), person: Some(ME), happened_at: at(0), ..press };
    let moved = |to: Moment| {
        let correction =
            Correction { of: press.id, happened_at: Some(to), animal: None, body: Box::new(press.body.clone()) };
        let event = Event { id: EventId(id(77)), body: correction.into(), ..press.clone() };
        let first = |of| (of == press.id).then_some(&press);
        may_append(&asker, &event, Some(&known), first, at(0), true).map(|_| ())
    };
    assert_eq!(moved(at(0).plus_seconds(-60.0)), Ok(()), "within the day agreed");
    assert_eq!(moved(days(-1.0)), Err(Denied::NotToday));
    assert_eq!(moved(days(60.0)), Err(Denied::NotToday));
}
