//! What a notebook that is linked may bring.

use crate::made::*;
use sayso_model::{
    Author, Body, Coach, Consent, ConsentTakenBack, Correction, Event, EventId, HomeCard, Label, Note, Proposal,
    ProposalAnswer, Proposed, Remark, Reply, ShortNote, Source, Withdrawal, Zone,
};
use sayso_people::needs::{NotBrought, notebook_may_append};
use sayso_people::table::notebook_brings;
use sayso_people::{Capability, Role, role::ScopeKind, table::Grant, table::grant};

const CONSENT: Consent = Consent::CoachFigures { to: Coach::Club { club: club(1) } };

fn remark() -> Body {
    Remark { text: Note::new("Rain.").unwrap() }.into()
}

fn named(n: u128) -> Author {
    Author { account: account(n), name: Label::new("Brook").unwrap() }
}

fn proposes(proposes: Proposed) -> Body {
    Proposal { from: named(7), proposes, text: ShortNote::new("Look.").ok(), takes_up: None, club: None }.into()
}

fn answers(of: u128, reply: Reply, by: Option<Author>) -> Body {
    ProposalAnswer { to: EventId(id(of)), reply, text: None, by, rehearsed: None }.into()
}

fn corrects(of: u128, body: Body) -> Body {
    Correction { of: EventId(id(of)), happened_at: None, animal: None, body: Box::new(body) }.into()
}

fn undoes(of: u128) -> Body {
    Withdrawal { of: EventId(id(of)), because: None }.into()
}

/// In the log: 1 a remark, 2 a giving, 3 a note of a coach, 4 a hand-over.
fn came(body: Body) -> Result<(), NotBrought> {
    let log = [
        event(1, home(1), -9, remark()),
        event(2, home(1), -9, given(CONSENT)),
        event(3, home(1), -9, proposes(Proposed::Note { about: None })),
        event(4, home(1), -9, proposes(Proposed::HandOver { to: named(8) })),
    ];
    let first = |id: EventId| log.iter().find(|event| event.id == id);
    notebook_may_append(home(1), &event(99, home(1), 0, body), first)
}

#[test]
fn what_people_at_home_write_comes_in() {
    let card = HomeCard { name: Label::new("Birch House").unwrap(), zone: Zone::utc() };
    for body in [
        remark(),
        card.into(),
        corrects(1, remark()),
        undoes(1),
        answers(3, Reply::Accepted, None),
        answers(4, Reply::Declined, None),
    ] {
        assert_eq!(came(body.clone()), Ok(()), "{body:?}");
    }
    // Under whosever name, and read from a file at home.
    let read_in =
        Event { source: Source::Import, person: Some(sayso_model::PersonId(id(5))), ..event(98, home(1), 0, remark()) };
    assert_eq!(notebook_may_append(home(1), &read_in, |_| None), Ok(()));
}

#[test]
fn what_takes_being_seen_to_be_somebody_does_not() {
    let back = ConsentTakenBack { consent: CONSENT, given: EventId(id(2)) };
    for (body, why) in [
        (given(CONSENT).into(), NotBrought::Consent),
        (back.into(), NotBrought::Consent),
        (corrects(1, given(CONSENT).into()), NotBrought::Consent),
        (corrects(2, remark()), NotBrought::Consent),
        (undoes(2), NotBrought::Consent),
        (proposes(Proposed::Note { about: None }), NotBrought::Coach),
        (corrects(1, proposes(Proposed::Note { about: None })), NotBrought::Coach),
        (undoes(3), NotBrought::Coach),
        (undoes(4), NotBrought::Coach),
        (answers(3, Reply::Said, Some(named(1))), NotBrought::Coach),
        (corrects(1, answers(3, Reply::Said, Some(named(1)))), NotBrought::Coach),
        (answers(4, Reply::Accepted, None), NotBrought::Consent),
        (answers(77, Reply::Accepted, None), NotBrought::Lacks),
        (undoes(77), NotBrought::Lacks),
        (corrects(77, remark()), NotBrought::Lacks),
    ] {
        assert_eq!(came(body.clone()), Err(why), "{body:?}");
    }
    let elsewhere = event(97, home(2), 0, remark());
    assert_eq!(notebook_may_append(home(1), &elsewhere, |_| None), Err(NotBrought::OtherHome));
}

#[test]
fn it_brings_no_more_than_a_keeper_may_and_opens_nothing() {
    for capability in Capability::ALL.iter().filter(|capability| notebook_brings(**capability)) {
        assert_eq!(capability.scope(), ScopeKind::Home);
        assert_eq!(grant(Role::Keeper, *capability), Grant::Yes, "{capability:?}");
        assert!(capability.opened_by().is_none(), "{capability:?}");
    }
    let never = [
        Capability::Consent,
        Capability::TakeBack,
        Capability::Advise,
        Capability::ManagePeople,
        Capability::LinkNotebook,
        Capability::Leave,
    ];
    assert!(never.iter().all(|capability| !notebook_brings(*capability)));
}
