//! Consent across the log and the server: opened by a keeper alone, closed at once.

use crate::database::Database;
use crate::together::*;
use sayso_model::{Coach, Consent, ConsentGiven, ConsentTakenBack, Event, EventId};
use sayso_people::may::who_can_see;
use sayso_people::*;
use uuid::Uuid;

fn given(n: u128, second: i64, consent: Consent) -> Event {
    event(n, home(1), second, ConsentGiven { consent, words_version: Consent::WORDS, holds: None })
}

#[tokio::test(flavor = "multi_thread")]
async fn a_coach_sees_from_the_giving_to_the_taking_back_and_not_a_moment_longer() {
    let db = Database::new().await;
    let server = server_keeper(&db).await;
    let ilda = keeper_of(&db, &server, home(1)).await;
    let (club, _, coach) = club_with_coach(&db, &server).await;
    let (stories, other) = (Stories::with(&[home(1)]), db.another().await);
    let sees = async |capability, second| {
        other.may(&coach.session, capability, home(1), &stories, at(second)).await.map_err(|e| match e {
            Error::Denied(why) => why,
            other => panic!("{other:?}"),
        })
    };
    let consent = Consent::CoachFigures { to: Coach::Club { club } };
    // An event that slipped into the log by some other way opens nothing.
    stories.append(given(1, 1, consent));
    assert_eq!(sees(Capability::SeeFigures, 2).await, Err(Denied::NothingHere));
    let leave = db.people.may(&ilda.session, Capability::Consent, home(1), &stories, at(2)).await.unwrap();
    let giving = given(2, 3, consent);
    stories.append(giving.clone());
    assert_eq!(sees(Capability::SeeFigures, 3).await, Err(Denied::NothingHere), "not before it is witnessed");
    db.people.witness(&leave, &giving, at(3)).await.unwrap();
    assert!(sees(Capability::SeeFigures, 4).await.is_ok());
    assert_eq!(sees(Capability::SeeLog, 4).await, Err(Denied::NotByRole(Capability::SeeLog)));
    let who = db.people.who(coach.session.account).await.unwrap();
    assert_eq!(db.people.may_share_with(&who).await.unwrap(), [home(1)]);
    let known = db.people.home_now(home(1), &stories, at(4)).await.unwrap().unwrap();
    let around = db.people.all_around(home(1)).await.unwrap();
    let told = who_can_see(&known, &around, at(4));
    assert!(told.iter().any(|s| s.account == coach.session.account && s.capability == Capability::SeeFigures));
    let looks = db.people.looks(home(1), 10).await.unwrap();
    assert_eq!((looks.len(), looks[0].capability.as_str()), (1, "see_figures"));
    // Taken back: closed by the log, before the server witnesses anything, and by a clock far behind too.
    let back = known.consents.closing(consent).remove(0);
    assert_eq!(back, ConsentTakenBack { consent, given: EventId(Uuid::from_u128(2)) });
    let back = event(3, home(1), -90_000, back);
    stories.append(back.clone());
    assert_eq!(sees(Capability::SeeFigures, 5).await, Err(Denied::NothingHere));
    assert!(db.people.witness(&leave, &back, at(5)).await.is_err(), "leave to give is not that");
    let closes = Allowed { capability: Capability::TakeBack, ..leave };
    db.people.witness(&closes, &back, at(5)).await.unwrap();
    assert!(db.people.may_share_with(&who).await.unwrap().is_empty());
    // Given anew, it opens anew.
    let again = given(4, 6, consent);
    stories.append(again.clone());
    db.people.witness(&leave, &again, at(6)).await.unwrap();
    assert!(sees(Capability::SeeFigures, 7).await.is_ok());
}

#[tokio::test(flavor = "multi_thread")]
async fn consent_ends_with_the_coachs_role_and_is_no_ones_but_a_keepers_to_give() {
    let db = Database::new().await;
    let server = server_keeper(&db).await;
    let ilda = keeper_of(&db, &server, home(1)).await;
    let (club, club_keeper, coach) = club_with_coach(&db, &server).await;
    let stories = Stories::with(&[home(1)]);
    let member = Part::new(Scope::Home(home(1)), Role::Member, None, None).unwrap();
    let mora = joined(&db, &ilda, &stories, member, "Mora").await;
    let told = db.people.may(&mora.session, Capability::Consent, home(1), &stories, at(1)).await;
    assert_eq!(is_denied(told), Denied::NotByRole(Capability::Consent));
    let consent = Consent::CoachLog { to: Coach::Account { account: coach.session.account } };
    let giving = given(1, 1, consent);
    let wrong = db.people.may(&mora.session, Capability::Mend, home(1), &stories, at(1)).await.unwrap();
    assert!(matches!(db.people.witness(&wrong, &giving, at(1)).await, Err(Error::Denied(_))));
    let leave = db.people.may(&ilda.session, Capability::Consent, home(1), &stories, at(1)).await.unwrap();
    let elsewhere = Event { home: home(2), ..giving.clone() };
    assert!(matches!(db.people.witness(&leave, &elsewhere, at(1)).await, Err(Error::Denied(_))));
    stories.append(giving.clone());
    db.people.witness(&leave, &giving, at(1)).await.unwrap();
    let sees = async |who: &Signed| db.people.may(&who.session, Capability::SeeLog, home(1), &stories, at(2)).await;
    assert!(sees(&coach).await.is_ok());
    assert!(sees(&club_keeper).await.is_err(), "keeping the club shows no home");
    let manages = db.people.may_in_club(&club_keeper.session, Capability::ManageClub, club, at(2)).await.unwrap();
    let role = db.people.who(coach.session.account).await.unwrap().memberships[0].id;
    db.people.end_membership(&manages, role, at(2)).await.unwrap();
    assert_eq!(is_denied(sees(&coach).await), Denied::NothingHere);
}
