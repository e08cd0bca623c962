//! A coach writes proposals, under their own name alone, as long as the home's consent stands; the home answers.

use crate::made::*;
use sayso_model::*;
use sayso_people::Role;
use sayso_people::capability::Capability as C;
use sayso_people::needs::may_append;
use sayso_people::*;

const COACH: AccountId = account(7);
const OTHER: AccountId = account(8);

fn figures() -> Consent {
    Consent::CoachFigures { to: Coach::Club { club: club(1) } }
}

fn open() -> HomeNow {
    home_now(home(1), vec![event(1, home(1), -10, given(figures()))], at(0))
}

fn proposal(n: u128, of: AccountId) -> Event {
    let from = Author { account: of, name: Label::new("Brook").unwrap() };
    let text = ShortNote::new("How was the week?").ok();
    event(
        n,
        home(1),
        0,
        Proposal { from, proposes: Proposed::Question { about: None }, text, takes_up: None, club: None },
    )
}

#[test]
fn a_coach_writes_under_the_own_name_and_nothing_else() {
    let (coach, known) = (who(COACH, &[part(Role::Coach)]), open());
    let may = |event: &Event| may_append(&coach, event, Some(&known), |_| None, at(0), true).map(|a| a.capability);
    assert_eq!(may(&proposal(9, COACH)), Ok(C::Advise));
    assert_eq!(may(&proposal(9, OTHER)), Err(Denied::NotYourName), "another account's name");
    let person = PersonId(id(50));
    let as_person = Event { person: Some(person), ..proposal(9, COACH) };
    assert_eq!(may(&as_person), Err(Denied::NotByRole(C::RecordForOthers)), "nor in a person's of the home");
    let read_in = Event { source: Source::Import, ..proposal(9, COACH) };
    assert_eq!(may(&read_in), Err(Denied::NotByRole(C::Import)));
    for sample in sayso_sim::samples().into_iter().filter(|e| e.body.kind() != Kind::Proposal) {
        for person in [None, Some(person)] {
            let event = Event { home: home(1), person, happened_at: at(0), ..sample.clone() };
            assert!(may(&event).is_err(), "{:?}", event.body.kind());
        }
    }
}

#[test]
fn it_ends_with_the_consent_or_the_role() {
    let (coach, write) = (who(COACH, &[part(Role::Coach)]), proposal(9, COACH));
    let closed = home_now(home(1), Vec::new(), at(0));
    let told = may_append(&coach, &write, Some(&closed), |_| None, at(0), true);
    assert_eq!(told, Err(Denied::NothingHere));
    let log = Consent::CoachLog { to: Coach::Club { club: club(1) } };
    let log_only = home_now(home(1), vec![event(1, home(1), -10, given(log))], at(0));
    let told = may_append(&coach, &write, Some(&log_only), |_| None, at(0), true);
    assert!(matches!(told, Err(Denied::NotByRole(_))), "{told:?}");
    let gone = who(COACH, &[]);
    assert_eq!(may_append(&gone, &write, Some(&open()), |_| None, at(0), true), Err(Denied::NothingHere));
    let elsewhere = Part::new(Scope::Club(club(2)), Role::Coach, None, None).unwrap();
    let stranger = who(COACH, &[elsewhere]);
    assert_eq!(may_append(&stranger, &write, Some(&open()), |_| None, at(0), true), Err(Denied::NothingHere));
}

#[test]
fn its_author_alone_takes_it_back_and_nobody_changes_it() {
    let (known, written) = (open(), proposal(9, COACH));
    let first = |of| (of == written.id).then_some(&written);
    let back = event(10, home(1), 1, Withdrawal { of: written.id, because: None });
    let body = Box::new(Body::from(Remark { text: Note::new("x").unwrap() }));
    let turn = event(10, home(1), 1, Correction { of: written.id, happened_at: None, animal: None, body });
    let body = Box::new(written.body.clone());
    let into = event(10, home(1), 1, Correction { of: EventId(id(70)), happened_at: None, animal: None, body });
    let may = |of: &Who, event: &Event| may_append(of, event, Some(&known), first, at(1), true);
    assert!(may(&who(COACH, &[part(Role::Coach)]), &back).is_ok());
    assert!(may(&who(OTHER, &[part(Role::Coach)]), &back).is_err(), "another coach");
    for role in [Role::Keeper, Role::Member, Role::Sitter, Role::Observer] {
        assert!(may(&who(account(1), &[part(role)]), &back).is_err(), "{role:?}");
    }
    for amendment in [&turn, &into] {
        assert!(may(&who(COACH, &[part(Role::Coach)]), amendment).is_err());
        assert!(may(&who(account(1), &[part(Role::Keeper)]), amendment).is_err());
    }
}

#[test]
fn to_let_another_coach_in_is_the_keepers_alone_with_a_fresh_sign_in() {
    let known = open();
    let name = |text: &str| Label::new(text).unwrap();
    let from = Author { account: COACH, name: name("Brook") };
    let to = Author { account: account(77), name: name("Ash") };
    for proposes in [
        Proposed::HandOver { to: to.clone() },
        Proposed::Cover { by: to, first: at(0).day(&Zone::utc()), last: at(0).day(&Zone::utc()) },
    ] {
        let written =
            event(9, home(1), 0, Proposal { from: from.clone(), proposes, text: None, takes_up: None, club: None });
        let first = |of: EventId| (of == written.id).then_some(&written);
        let reply = |reply: Reply| ProposalAnswer {
            to: written.id,
            reply,
            text: ShortNote::new("x").ok(),
            by: None,
            rehearsed: None,
        };
        let may = |role: Role, reply_: Reply, fresh: bool| {
            let person = Some(PersonId(id(50)));
            let event = Event { person, ..event(11, home(1), 0, reply(reply_)) };
            may_append(&who(account(1), &[part(role)]), &event, Some(&known), first, at(0), fresh)
        };
        assert!(may(Role::Keeper, Reply::Accepted, true).is_ok());
        assert_eq!(may(Role::Keeper, Reply::Accepted, false), Err(Denied::NotFresh(Capability::Consent)));
        assert_eq!(may(Role::Member, Reply::Accepted, true), Err(Denied::NotByRole(Capability::Consent)));
        for said in [Reply::Declined, Reply::Said] {
            assert!(may(Role::Member, said, false).is_ok(), "to say no takes nothing more");
        }
    }
}

#[test]
fn a_club_is_named_by_its_coaches_alone_and_an_answer_by_whoever_gives_it() {
    let known = open();
    let from = Author { account: COACH, name: Label::new("Brook").unwrap() };
    let note = |club: Option<ClubId>| Proposal {
        from: from.clone(),
        proposes: Proposed::Note { about: None },
        text: ShortNote::new("x").ok(),
        takes_up: None,
        club,
    };
    let may = |of: ClubId| {
        let event = event(9, home(1), 0, note(Some(of)));
        may_append(&who(COACH, &[part(Role::Coach)]), &event, Some(&known), |_| None, at(0), true)
    };
    assert!(may(club(1)).is_ok());
    assert_eq!(may(club(2)), Err(Denied::NotYourName));
    let answers = |by: AccountId| {
        let by = Some(Author { account: by, name: Label::new("Heron").unwrap() });
        let answer = ProposalAnswer { to: EventId(id(9)), reply: Reply::Declined, text: None, by, rehearsed: None };
        let event = Event { person: Some(PersonId(id(50))), ..event(11, home(1), 0, answer) };
        may_append(&who(account(1), &[part(Role::Keeper)]), &event, Some(&known), |_| None, at(0), true)
    };
    assert!(answers(account(1)).is_ok());
    assert_eq!(answers(account(2)), Err(Denied::NotYourName));
}

#[test]
fn keepers_and_members_answer() {
    let (known, asks) = (open(), proposal(9, COACH));
    let first = |of: EventId| (of == asks.id).then_some(&asks);
    let answer = ProposalAnswer { to: asks.id, reply: Reply::Accepted, text: None, by: None, rehearsed: None };
    for role in Role::ALL {
        let person =
            matches!(role, Role::Keeper | Role::Member | Role::Sitter | Role::Observer).then_some(PersonId(id(50)));
        let event = Event { person, ..event(11, home(1), 0, answer.clone()) };
        let told = may_append(&who(COACH, &[part(role)]), &event, Some(&known), first, at(0), true);
        assert_eq!(told.is_ok(), matches!(role, Role::Keeper | Role::Member), "{role:?}: {told:?}");
        // What is not there yet could turn out to open the home to somebody: that takes a keeper.
        let told = may_append(&who(COACH, &[part(role)]), &event, Some(&known), |_| None, at(0), true);
        assert_eq!(told.is_ok(), role == Role::Keeper, "{role:?}: {told:?}");
    }
}

/// A home that agreed, or not, to the coach's place being taken by another one from a moment on.
fn handed(agreed: bool, seen: bool) -> (HomeNow, Vec<Event>) {
    let from = Author { account: COACH, name: Label::new("Brook").unwrap() };
    let to = Author { account: OTHER, name: Label::new("Ash").unwrap() };
    let over = Proposal { from, proposes: Proposed::HandOver { to }, text: None, takes_up: None, club: None };
    let yes = ProposalAnswer { to: EventId(id(10)), reply: Reply::Accepted, text: None, by: None, rehearsed: None };
    let mut all = vec![event(1, home(1), -10, given(figures())), proposal(9, COACH), event(10, home(1), 1, over)];
    all.extend(agreed.then(|| event(11, home(1), 2, yes)));
    let story = Story::from_events(all.clone());
    let mut known = home_now(home(1), all.clone(), at(3));
    if !seen {
        known.witnessed.remove(&EventId(id(10)));
    }
    (known.with_talk(&story, at(3)), all)
}

#[test]
fn who_goes_on_with_a_home_closes_what_passed_on_and_agrees_to_nothing() {
    let other = who(OTHER, &[part(Role::Coach)]);
    let answer = |to: u128, reply: Reply, by: AccountId| {
        let by = Some(Author { account: by, name: Label::new("Ash").unwrap() });
        event(20, home(1), 3, ProposalAnswer { to: EventId(id(to)), reply, text: None, by, rehearsed: None })
    };
    let may = |(known, all): &(HomeNow, Vec<Event>), event: &Event| {
        let first = |id: EventId| all.iter().find(|e| e.id == id);
        may_append(&other, event, Some(known), first, at(3), true).is_ok()
    };
    let closes = answer(9, Reply::Declined, OTHER);
    assert!(may(&handed(true, true), &closes));
    assert!(!may(&handed(false, true), &closes), "before the home agreed");
    assert!(!may(&handed(true, false), &closes), "nobody saw it being proposed");
    assert!(!may(&handed(true, true), &answer(9, Reply::Declined, COACH)), "in another's name");
    assert!(!may(&handed(true, true), &answer(10, Reply::Declined, OTHER)), "what opens the home");
    assert!(!may(&handed(true, true), &answer(12, Reply::Declined, OTHER)), "what is not there");
    for reply in [Reply::Accepted, Reply::Said] {
        assert!(!may(&handed(true, true), &answer(9, reply, OTHER)), "{reply:?}");
    }
    // What the other one wrote afterwards did not pass on.
    let (known, mut all) = handed(true, true);
    all.push(Event { happened_at: at(3), ..proposal(13, COACH) });
    assert!(!may(&(known, all), &answer(13, Reply::Declined, OTHER)));
}
