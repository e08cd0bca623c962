//! Several coaches in a club: a home is handed over, a coach is covered, notes are read by those they are for; and of another club
//! nobody sees anything.

use crate::house::{Answer, Has, House, Signed, asked, event, label, secret_of, take};
use axum::http::StatusCode;
use sayso_model::*;
use sayso_web::state::machine_clock;

/// One more coach of a club.
pub async fn another(house: &House, club: ClubId, club_keeper: &Signed, name: &str) -> Signed {
    let made = house.post(club_keeper, &format!("/club/{club}/invite"), "role=coach").await;
    let secret = secret_of(made.marked("link")[0]);
    let (session, token) = take(&house.host, &secret, name).await.unwrap().session.unwrap();
    Signed { token, account: session.account }
}

/// A club of two coaches, Brook and Ash.
pub async fn club() -> (House, ClubId, Signed, Signed) {
    let house = House::new().await;
    let (club, club_keeper, brook) = house.club().await;
    let ash = another(&house, club, &club_keeper, "Ash").await;
    (house, club, brook, ash)
}

/// The home shares something with one coach alone.
pub async fn shares_with(house: &House, purpose: &str, club: ClubId, coach: &Signed) {
    let form = format!("{}&coach={}", house.consent(purpose, club), coach.account);
    let done = house.post(&house.keeper, "/sharing/consent", &form).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
}

async fn shares_with_club(house: &House, club: ClubId) {
    let done = house.post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", club)).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
}

async fn notes(house: &House, who: &Signed, text: &str) {
    let form = format!("home={}&what=note&animal={}&about=&text={text}", house.home, house.animal);
    let sent = house.post(who, "/talk/write", &form).await;
    assert_eq!(sent.status, StatusCode::SEE_OTHER, "{}", sent.body);
}

pub async fn last_proposal(house: &House) -> EventId {
    let story = house.host.server.home(house.home).story(house.home).await.unwrap();
    story.as_recorded(Kind::Proposal).max_by_key(|e| (e.recorded_at, e.id)).unwrap().id
}

async fn rows_of(app: &axum::Router, who: &Signed) -> usize {
    let mut rows = std::collections::BTreeSet::new();
    // With a need and without one, each once: who needs nothing stands on both while an answer was not looked at.
    for path in ["/desk", "/desk?kind=none"] {
        let page = asked(app, Some(who), "GET", path, None).await;
        rows.extend(page.body.split(" id=\"r-").skip(1).filter_map(|row| row.get(..36)).map(str::to_owned));
    }
    rows.len()
}

async fn rows(house: &House, who: &Signed) -> usize {
    rows_of(&house.app, who).await
}

/// A keeper's yes, by the page that says what would end and begin.
pub async fn agrees(house: &House, of: EventId) -> Answer {
    let path = format!("/sharing/handed/{of}");
    house.post(&house.keeper, &path, &format!("home={}&words={}", house.home, Consent::WORDS)).await
}

#[tokio::test(flavor = "multi_thread")]
async fn a_home_is_handed_over_by_a_keeper_and_the_one_ends_as_the_other_begins() {
    let (house, club, brook, ash) = club().await;
    shares_with(&house, "coach_figures", club, &brook).await;
    shares_with(&house, "coach_log", club, &brook).await;
    notes(&house, &brook, "Keep+it+low.").await;
    assert_eq!((rows(&house, &brook).await, rows(&house, &ash).await), (1, 0));
    let form = house.get(&brook, &format!("/desk/hand-over?home={}", house.home)).await;
    assert!(form.holds("Ash") && form.holds("Hand over: Birch House"), "{}", form.body);
    let sent = house
        .post(&brook, "/desk/hand-over", &format!("home={}&colleague={}&text=I+move.", house.home, ash.account))
        .await;
    assert_eq!(sent.status, StatusCode::SEE_OTHER, "{}", sent.body);
    let of = last_proposal(&house).await;
    // Until the home says yes nothing has changed, and who is asked learns nothing.
    assert_eq!((rows(&house, &brook).await, rows(&house, &ash).await), (1, 0));
    assert_eq!(house.get(&ash, &format!("/talk?home={}", house.home)).await.to(), "/homes");
    let today = house.get(&house.keeper, &house.about("today")).await;
    assert!(today.holds("From Brook"), "{}", today.body);
    // It is a keeper's to decide, on the page that says what, and by no answer among others.
    let member = house.joined(Has::Member, "Mora").await;
    let card = house.get(&member, "/talk").await;
    assert!(card.holds("Another coach: Ash") && !card.holds("/sharing/handed/"), "{}", card.body);
    let path = format!("/sharing/handed/{of}");
    for who in [&member, &brook, &ash] {
        let told = house.get(who, &path).await;
        assert!(!told.status.is_success(), "{}", told.body);
        let yes = house.post(who, &path, &format!("home={}&words={}", house.home, Consent::WORDS)).await;
        assert!(!yes.status.is_success() && yes.status != StatusCode::SEE_OTHER, "{}", yes.body);
    }
    let by_answer = format!("to={of}&reply=accepted&text=");
    for who in [&member, &house.keeper] {
        let told = house.post(who, "/talk/answer", &by_answer).await;
        assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY, "{}", told.body);
    }
    // Nor by a tap, to a server that has nothing of the home in memory.
    let by_tap = ProposalAnswer { to: of, reply: Reply::Accepted, text: None, by: None, rehearsed: None };
    let by_tap = serde_json::to_string(&[event(house.home, by_tap)]).unwrap();
    let answer = Some(("application/json", by_tap.as_str()));
    let told = asked(&house.another().await, Some(&member), "POST", "/api/events", answer).await;
    assert!(told.holds("\"result\":\"refused\""), "{}", told.body);
    let page = house.get(&house.keeper, &path).await;
    assert!(page.holds("Brook sees figures") && page.holds("Brook reads the log"), "{}", page.body);
    assert!(page.holds("Ash sees your home’s pages") && page.holds("Ash also reads"), "{}", page.body);
    let old = house.post(&house.keeper, &path, &format!("home={}&words=1", house.home)).await;
    assert_eq!(old.status, StatusCode::UNPROCESSABLE_ENTITY, "words of before are not agreed to");
    assert_eq!((rows(&house, &brook).await, rows(&house, &ash).await), (1, 0));
    let done = agrees(&house, of).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    // The one is out at the next tap, in every process, the other in.
    let elsewhere = house.another().await;
    assert_eq!((rows(&house, &brook).await, rows(&house, &ash).await), (0, 1));
    assert_eq!(rows_of(&elsewhere, &brook).await, 0);
    assert_eq!(house.get(&brook, &house.about("today")).await.to(), "/homes");
    assert_eq!(house.get(&ash, &house.about("log")).await.status, StatusCode::OK, "the same purposes");
    let talk = house.get(&ash, "/talk").await;
    assert!(talk.holds("Keep it low.") && talk.holds("Another coach: Ash"), "{}", talk.body);
    assert!(talk.holds("Ilda accepted"), "who answered: {}", talk.body);
    // Once, and what is written after that is Ash's own.
    assert_eq!(agrees(&house, of).await.status, StatusCode::NOT_FOUND);
    let seen = house.get(&house.keeper, "/sharing").await;
    assert!(
        seen.holds("Ash sees figures") && seen.holds("Brook sees figures") && seen.holds("taken back"),
        "{}",
        seen.body
    );
}

#[tokio::test(flavor = "multi_thread")]
async fn what_was_the_whole_clubs_is_the_new_coachs_alone_and_the_page_says_so() {
    let (house, club, brook, ash) = club().await;
    shares_with_club(&house, club).await;
    assert_eq!((rows(&house, &brook).await, rows(&house, &ash).await), (1, 1));
    let form = format!("home={}&colleague={}&text=", house.home, ash.account);
    house.post(&brook, "/desk/hand-over", &form).await;
    let of = last_proposal(&house).await;
    let page = house.get(&house.keeper, &format!("/sharing/handed/{of}")).await;
    assert!(page.holds("Until now every coach of the club has this."), "{}", page.body);
    agrees(&house, of).await;
    assert_eq!((rows(&house, &brook).await, rows(&house, &ash).await), (0, 1));
    // Taken back as any other.
    let back = format!("{}&coach={}", house.consent("coach_figures", club), ash.account);
    house.post(&house.keeper, "/sharing/consent/back", &back).await;
    assert_eq!(rows(&house, &ash).await, 0);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_coach_is_covered_on_the_days_said_where_the_home_agreed_and_nowhere_else() {
    let (house, club, brook, ash) = club().await;
    shares_with(&house, "coach_figures", club, &brook).await;
    notes(&house, &brook, "Keep+it+low.").await;
    let today = house.host.now().day(&Zone::utc());
    let days = format!("colleague={}&first={}&last={}", ash.account, today.plus(-1), today.plus(2));
    let told = house.post(&brook, "/desk/cover", &days).await;
    assert_eq!(told.to(), "/desk/colleagues?asked=1&open=0", "{}", told.body);
    for (who, says) in [(&brook, "Ash covers for you"), (&ash, "You cover for Brook")] {
        let page = house.get(who, "/desk/colleagues").await;
        assert!(page.holds(says), "{says}: {}", page.body);
    }
    // Denied until the home agrees: a cover opens nothing by itself.
    assert_eq!((rows(&house, &brook).await, rows(&house, &ash).await), (1, 0));
    let of = last_proposal(&house).await;
    let page = house.get(&house.keeper, &format!("/sharing/handed/{of}")).await;
    assert!(page.marked("ends").is_empty() && page.holds("for those days alone"), "{}", page.body);
    assert_eq!(agrees(&house, of).await.status, StatusCode::SEE_OTHER);
    assert_eq!((rows(&house, &brook).await, rows(&house, &ash).await), (1, 1), "both, while it lasts");
    assert!(house.get(&ash, "/talk").await.holds("Keep it low."));
    let seen = house.get(&house.keeper, "/sharing").await;
    assert!(seen.holds("Ash sees figures") && seen.holds(", until "), "{}", seen.body);
    // After the last day it has ended, though nobody did anything.
    let after = house.later(|| machine_clock().plus_seconds(3.5 * 86_400.0)).await;
    assert_eq!((rows_of(&after, &brook).await, rows_of(&after, &ash).await), (1, 0));
    let late = asked(&after, Some(&ash), "GET", &house.about("today"), None).await;
    assert_eq!(late.status, StatusCode::NOT_FOUND, "{}", late.body);
    // Where the home shares with the club there is nothing to ask.
    shares_with_club(&house, club).await;
    let told = house.post(&brook, "/desk/cover", &days).await;
    assert_eq!(told.to(), "/desk/colleagues?asked=0&open=1", "{}", told.body);
    for wrong in [
        days.replace("first=", "first=2020-01-01&x="),
        format!("colleague={}&first={today}&last={}", ash.account, today.plus(-1)),
        format!("colleague={}&first={today}&last={today}", house.keeper.account),
        format!("colleague={}&first={today}&last={today}", brook.account),
    ] {
        let told = house.post(&brook, "/desk/cover", &wrong).await;
        assert!(told.status.is_client_error(), "{wrong}: {}", told.body);
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn notes_are_read_in_the_club_where_the_home_shares_with_it_in_words_that_say_so() {
    let (house, club, brook, ash) = club().await;
    // Alone: nobody else's.
    shares_with(&house, "coach_figures", club, &brook).await;
    notes(&house, &brook, "For+you+alone.").await;
    shares_with(&house, "coach_figures", club, &ash).await;
    assert!(!house.get(&ash, "/talk").await.holds("For you alone."));
    assert!(house.get(&ash, "/talk/write").await.marked("club-reads").is_empty());
    // With the club: what is written from then on is the club's, and the home is told so; what was written before is not.
    shares_with_club(&house, club).await;
    assert_eq!(house.get(&brook, "/talk/write").await.marked("club-reads").len(), 1);
    notes(&house, &brook, "For+the+club.").await;
    let of = last_proposal(&house).await;
    house.post(&house.keeper, "/talk/answer", &format!("to={of}&reply=said&text=It+went+well.")).await;
    let read = house.get(&ash, "/talk").await;
    assert!(
        read.holds("For the club.") && read.holds("It went well.") && !read.holds("For you alone."),
        "{}",
        read.body
    );
    assert!(read.holds("From Brook") && read.holds("Ilda answered"), "who wrote, who answered: {}", read.body);
    assert_eq!(house.get(&house.keeper, "/talk").await.marked("for-club").len(), 1);
    // Nobody takes back, or writes in the name of, another; and not for a club one does not coach in.
    let back = house.post(&ash, "/talk/back", &format!("of={of}")).await;
    assert_eq!(back.status, StatusCode::NOT_FOUND);
    // A coach of another club with whom the home shares as well reads none of it.
    let (other, _, stranger) = house.club_of_name("Hill+Club").await;
    shares_with_club(&house, other).await;
    let read = house.get(&stranger, "/talk").await;
    assert!(read.status == StatusCode::OK && !read.holds("For the club."), "{}", read.body);
    let from = Author { account: stranger.account, name: label("Brook") };
    let text = ShortNote::new("Hello.").ok();
    let body = Proposal { from, proposes: Proposed::Note { about: None }, text, takes_up: None, club: Some(club) };
    let forged = serde_json::to_string(&[event(house.home, body)]).unwrap();
    let told = asked(&house.app, Some(&stranger), "POST", "/api/events", Some((crate::house::JSON, &forged))).await;
    assert!(told.holds("refused"), "{}", told.body);
    // Taken back from the club: what was the club's is read by its author alone, while one may see the home.
    house.post(&house.keeper, "/sharing/consent/back", &house.consent("coach_figures", club)).await;
    assert!(!house.get(&ash, "/talk").await.holds("For the club."));
    assert!(house.get(&brook, "/talk").await.holds("For the club."));
}

#[tokio::test(flavor = "multi_thread")]
async fn nothing_of_one_club_is_seen_in_another() {
    let (house, club, brook, ash) = club().await;
    shares_with(&house, "coach_figures", club, &brook).await;
    let (other, other_keeper, stranger) = house.club_of_name("Hill+Club").await;
    let dale = another(&house, other, &other_keeper, "Dale").await;
    let today = house.host.now().day(&Zone::utc());
    house.post(&brook, "/desk/cover", &format!("colleague={}&first={today}&last={today}", ash.account)).await;
    // Each sees colleagues of the own club, and no cover, home or coach of the other.
    let page = house.get(&dale, "/desk/colleagues").await;
    assert!(page.holds("Hill Club") && page.marked("cover").is_empty(), "{}", page.body);
    for hidden in ["Ash", "Meadow Club", &ash.account.to_string(), &brook.account.to_string(), "Birch House"] {
        for path in ["/desk", "/desk/week", "/desk/changes", "/desk/colleagues", &format!("/club/{other}"), "/homes"] {
            let told = house.get(&dale, path).await;
            assert!(!told.holds(hidden), "{hidden} on {path}: {}", told.body);
        }
    }
    assert_eq!(house.get(&dale, &format!("/club/{club}")).await.status, StatusCode::NOT_FOUND);
    // By forms: neither another club's home nor its coaches can be named, in either direction.
    let proposals = async || {
        let story = house.host.server.home(house.home).story(house.home).await.unwrap();
        story.as_recorded(Kind::Proposal).count()
    };
    let before = proposals().await;
    let over = |to: &Signed| format!("home={}&colleague={}&text=", house.home, to.account);
    for (who, path, form) in [
        (&dale, "/desk/hand-over", over(&stranger)),
        (&dale, "/desk/hand-over", over(&ash)),
        (&brook, "/desk/hand-over", over(&dale)),
        (&brook, "/desk/cover", format!("colleague={}&first={today}&last={today}", dale.account)),
        (&dale, "/desk/cover", format!("colleague={}&first={today}&last={today}", ash.account)),
    ] {
        let told = house.post(who, path, &form).await;
        assert!(told.status.is_client_error(), "{path} {form}: {} {}", told.status, told.body);
    }
    assert_eq!(house.get(&dale, &format!("/desk/hand-over?home={}", house.home)).await.status, StatusCode::NOT_FOUND);
    assert_eq!(proposals().await, before);
    // A proposal to hand over to somebody of no common club, sent past the form, is nothing that a keeper can agree to.
    let from = Author { account: brook.account, name: label("Brook") };
    let to = Author { account: dale.account, name: label("Dale") };
    let body = Proposal { from, proposes: Proposed::HandOver { to }, text: None, takes_up: None, club: None };
    let sent = event(house.home, body);
    let sent_as = serde_json::to_string(&[&sent]).unwrap();
    let told = asked(&house.app, Some(&brook), "POST", "/api/events", Some((crate::house::JSON, &sent_as))).await;
    assert!(told.holds("new"), "{}", told.body);
    assert_eq!(house.get(&house.keeper, &format!("/sharing/handed/{}", sent.id)).await.status, StatusCode::NOT_FOUND);
    assert_eq!(agrees(&house, sent.id).await.status, StatusCode::NOT_FOUND);
    assert_eq!((rows(&house, &brook).await, rows(&house, &dale).await), (1, 0));
    // Nor does one club's keeper end what is another's.
    let id: uuid::Uuid = house.host.people.covers(brook.account).await.unwrap()[0].id.0;
    for who in [&dale, &ash] {
        house.post(who, "/desk/cover/end", &format!("cover={id}")).await;
    }
    assert_eq!(house.host.people.covers(brook.account).await.unwrap().len(), 1);
    house.post(&brook, "/desk/cover/end", &format!("cover={id}")).await;
    assert!(house.host.people.covers(brook.account).await.unwrap().is_empty());
}
