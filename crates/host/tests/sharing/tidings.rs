//! That something is new, told by mail to whoever chose that: how much and where, to nobody else, once, and stopped by one tap.

use crate::house::{Answer, FORM, Has, House, Signed, asked, event, label};
use crate::post::{Letter, Post};
use axum::http::StatusCode;
use sayso_host::{Host, HostConfig, Mail, send_tidings};
use sayso_model::*;
use sayso_people::{Email, OsSecrets};
use sayso_store::Database;
use std::sync::Arc;

const HOUR_S: f64 = 3_600.0;
const DAY_S: f64 = 86_400.0;

/// A home that shares figures with a club, its keeper and its coach with addresses, and what is sent to them.
struct Told {
    house: House,
    club: ClubId,
    coach: Signed,
    post: Post,
}

fn smtp(port: u16) -> Mail {
    Mail::Smtp { url: format!("smtp://127.0.0.1:{port}"), from: "Sayso <sayso@sayso.example>".into() }
}

impl Told {
    async fn new() -> Self {
        let post = Post::open().await;
        let house = House::with(smtp(post.port)).await;
        let (club, _, coach) = house.club().await;
        let told = Self { house, club, coach, post };
        told.address(&told.house.keeper, "ilda@home.example").await;
        told.address(&told.coach, "brook@club.example").await;
        told.consent("/sharing/consent").await;
        told
    }

    fn now(&self) -> Moment {
        self.house.host.now()
    }

    async fn address(&self, who: &Signed, email: &str) {
        let (people, now) = (&self.house.host.people, self.now());
        let session = people.session(&who.token, now).await.unwrap().unwrap();
        let email = Email::new(email).unwrap();
        let asked = people.ask_proof(&session, &email, "192.0.2.1", now, &mut OsSecrets).await.unwrap();
        let sayso_people::letter::Letter::Prove { secret, .. } = asked.letter().unwrap().letter else { panic!() };
        people.prove_email(&session, &secret, now).await.unwrap();
    }

    async fn consent(&self, path: &str) {
        let done = self.house.post(&self.house.keeper, path, &self.house.consent("coach_figures", self.club)).await;
        assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    }

    async fn chooses(&self, who: &Signed, every: &str) -> Answer {
        self.house.post(who, "/account/news", &format!("every={every}&hour=8&zone=Europe/Lisbon")).await
    }

    async fn chosen(&self, who: &Signed, every: &str) {
        let done = self.chooses(who, every).await;
        assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    }

    /// The coach asks something.
    async fn asks(&self) -> EventId {
        let form = format!("home={}&what=question&animal=&about=&text=Does+it+roll+off%3F", self.house.home);
        let sent = self.house.post(&self.coach, "/talk/write", &form).await;
        assert_eq!(sent.status, StatusCode::SEE_OTHER, "{}", sent.body);
        self.story().await.as_recorded(Kind::Proposal).map(|e| e.id).max().unwrap()
    }

    async fn answers(&self, to: EventId) {
        let done = self.house.post(&self.house.keeper, "/talk/answer", &format!("to={to}&reply=said&text=No.")).await;
        assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    }

    async fn story(&self) -> Arc<Story> {
        self.house.host.server.home(self.house.home).story(self.house.home).await.unwrap()
    }

    async fn after_days(&self, days: f64) -> usize {
        send_tidings(&self.house.host, self.now().plus_seconds(days * DAY_S)).await.unwrap()
    }

    /// What came, of so many letters, and nothing else.
    async fn letters(&mut self, count: usize) -> Vec<Letter> {
        let mut all = Vec::new();
        for _ in 0..count {
            all.push(self.post.next().await);
        }
        assert!(self.post.is_empty());
        all
    }
}

/// The address by which a letter's reader stops them, as a path.
fn stop_of(letter: &Letter) -> String {
    let link = letter.text.split_whitespace().find(|word| word.contains("/letters/stop/")).expect("a way to stop them");
    link.strip_prefix("http://localhost").unwrap().to_owned()
}

#[tokio::test(flavor = "multi_thread")]
async fn whoever_chose_it_is_told_how_much_is_new_and_where_and_nobody_else() {
    let mut told = Told::new().await;
    let member = told.house.joined(Has::Member, "Mora").await;
    told.address(&member, "mora@home.example").await;
    for who in [&told.coach, &told.house.keeper] {
        let page = told.house.get(who, "/account").await;
        assert!(page.holds("value=\"never\" selected") && page.holds("data-test=\"news-urgent\""), "{}", page.body);
        told.chosen(who, "day").await;
        assert!(told.house.get(who, "/account").await.holds("value=\"day\" selected"));
    }
    // What was there before the choice is not new.
    assert_eq!(told.after_days(1.1).await, 0, "nothing new, no letter");
    let of = told.asks().await;
    told.asks().await;
    assert_eq!(told.after_days(2.2).await, 1);
    let [letter] = told.letters(1).await.try_into().unwrap();
    assert_eq!(letter.to, "ilda@home.example");
    assert!(
        letter.text.contains("Your coach sent you 2 things:") && letter.text.contains("http://localhost/talk?home=")
    );
    assert!(letter.text.contains("once a day at most"), "why it came: {}", letter.text);
    told.answers(of).await;
    assert_eq!(told.after_days(3.3).await, 1);
    let [letter] = told.letters(1).await.try_into().unwrap();
    assert_eq!(letter.to, "brook@club.example");
    assert!(letter.text.contains("One home has something new for you:"), "{}", letter.text);
    assert!(letter.text.contains("http://localhost/desk"), "{}", letter.text);
    // Nothing of the home is in it, nor in its head.
    for word in ["Tarn", "Birch", "Ilda", "Brook", "Mora", "Meadow", "roll", "No."] {
        assert!(!letter.text.contains(word) && !letter.head.contains(word), "{word}: {} {}", letter.head, letter.text);
    }
    // Told is told: no second letter for it, at any later time.
    for days in [4.4, 9.9, 20.0] {
        assert_eq!(told.after_days(days).await, 0);
    }
    told.letters(0).await;
}

#[tokio::test(flavor = "multi_thread")]
async fn a_new_home_is_news_for_its_coach_and_what_ended_tells_nothing() {
    let mut told = Told::new().await;
    told.consent("/sharing/consent/back").await;
    told.chosen(&told.coach, "week").await;
    told.consent("/sharing/consent").await;
    let of = told.asks().await;
    told.answers(of).await;
    assert_eq!(told.after_days(7.1).await, 1);
    let [letter] = told.letters(1).await.try_into().unwrap();
    assert!(letter.text.contains("One home has something new for you:"), "one home, whatever is new: {}", letter.text);
    assert!(letter.text.contains("once a week at most"), "{}", letter.text);
    // Something new, and the consent ends before it is told.
    let of = told.asks().await;
    told.answers(of).await;
    told.consent("/sharing/consent/back").await;
    assert_eq!(told.after_days(14.2).await, 0);
    told.letters(0).await;
    // The home leaves: no row tells of what was told of it.
    let kept = "SELECT count(*) FROM people.tiding WHERE home = $1";
    assert!(told.house.count(kept).await > 0);
    let left = told
        .house
        .post(&told.house.keeper, "/sharing/leave", &format!("home={}&name=Birch+House", told.house.home))
        .await;
    assert!(left.status.is_success() || left.status == StatusCode::SEE_OTHER, "{}", left.body);
    assert_eq!(told.house.count(kept).await, 0);
}

#[tokio::test(flavor = "multi_thread")]
async fn two_processes_send_one_letter() {
    let mut told = Told::new().await;
    told.chosen(&told.house.keeper, "day").await;
    told.asks().await;
    let config = HostConfig {
        mail: smtp(told.post.port),
        ..HostConfig::here(Database::at(&told.house.address), "http://localhost/".parse().unwrap())
    };
    let (one, two) = (Host::open(&config).await.unwrap(), Host::open(&config).await.unwrap());
    let then = told.now().plus_seconds(1.1 * DAY_S);
    let all = tokio::join!(
        send_tidings(&told.house.host, then),
        send_tidings(&one, then),
        send_tidings(&two, then),
        send_tidings(&one, then)
    );
    let sent = [all.0, all.1, all.2, all.3].into_iter().map(Result::unwrap).sum::<usize>();
    assert_eq!(sent, 1);
    told.letters(1).await;
    assert_eq!(send_tidings(&two, then).await.unwrap(), 0);
    told.letters(0).await;
}

#[tokio::test(flavor = "multi_thread")]
async fn one_tap_stops_them_without_signing_in_and_does_nothing_else() {
    let mut told = Told::new().await;
    told.chosen(&told.house.keeper, "day").await;
    told.asks().await;
    assert_eq!(told.after_days(1.1).await, 1);
    let [letter] = told.letters(1).await.try_into().unwrap();
    let stop = stop_of(&letter);
    // For the button of mail programs (RFC 8058): in one piece, in angle brackets.
    assert!(letter.head.contains(&format!("\r\nList-Unsubscribe: <http://localhost{stop}>\r\n")), "{}", letter.head);
    assert!(letter.head.contains("\r\nList-Unsubscribe-Post: List-Unsubscribe=One-Click\r\n"), "{}", letter.head);
    assert!(letter.head.contains("\r\nAuto-Submitted: auto-generated\r\n"), "{}", letter.head);
    let app = &told.house.app;
    let secret = stop.rsplit('/').next().unwrap();
    for other in [format!("/sign-in/link/{secret}"), format!("/join/{secret}"), format!("/calendar/{secret}.ics")] {
        assert_eq!(asked(app, None, "GET", &other, None).await.status, StatusCode::NOT_FOUND, "{other}");
    }
    let nobody = asked(app, None, "POST", &format!("/letters/stop/{}", "0".repeat(64)), None).await;
    assert_eq!(nobody.status, StatusCode::NOT_FOUND);
    // To look does nothing: programs look at links.
    let page = asked(app, None, "GET", &stop, None).await;
    assert!(page.status == StatusCode::OK && page.holds("data-test=\"stop\""), "{}", page.body);
    let chosen = "SELECT count(*) FROM people.tidings WHERE $1::uuid IS NOT NULL";
    assert_eq!(told.house.count(chosen).await, 1);
    for _ in 0..2 {
        let done = asked(app, None, "POST", &stop, Some((FORM, "List-Unsubscribe=One-Click"))).await;
        assert!(done.status == StatusCode::OK && done.holds("data-test=\"stopped\""), "{}", done.body);
    }
    assert_eq!(told.house.count(chosen).await, 0);
    told.asks().await;
    assert_eq!(told.after_days(3.0).await, 0);
    assert!(told.house.get(&told.house.keeper, "/account").await.holds("value=\"never\" selected"));
    // Whoever wants them again gets them, of what is new since.
    told.chosen(&told.house.keeper, "day").await;
    told.asks().await;
    assert_eq!(told.after_days(5.0).await, 1);
    let [letter] = told.letters(1).await.try_into().unwrap();
    assert!(letter.text.contains("Your coach sent you one thing:"), "{}", letter.text);
    // An account without an address gets none, nor does one that chose not at all.
    told.asks().await;
    told.chosen(&told.house.keeper, "never").await;
    assert_eq!(told.after_days(8.0).await, 0);
    told.letters(0).await;
}

#[tokio::test(flavor = "multi_thread")]
async fn while_the_mail_server_is_away_nothing_is_lost_and_it_is_not_asked_for_ever() {
    let mut told = Told::new().await;
    told.chosen(&told.house.keeper, "day").await;
    told.asks().await;
    let away = HostConfig {
        mail: smtp(1),
        ..HostConfig::here(Database::at(&told.house.address), "http://localhost/".parse().unwrap())
    };
    let away = Host::open(&away).await.unwrap();
    // The hour of the choice is past then, and the next one far.
    let due = told.house.host.people.tidings(told.house.keeper.account).await.unwrap().unwrap().next(told.now());
    assert_eq!(send_tidings(&away, due).await.unwrap(), 0);
    let tries = "SELECT COALESCE(max(tries), -1)::int8 FROM people.tidings WHERE $1::uuid IS NOT NULL";
    assert_eq!(told.house.count(tries).await, 1);
    assert_eq!(told.house.count("SELECT count(*) FROM people.tiding WHERE home = $1").await, 0, "nothing was told");
    assert_eq!(send_tidings(&away, due.plus_seconds(60.0)).await.unwrap(), 0, "not at once again");
    assert_eq!(told.house.count(tries).await, 1);
    for hour in 1..=5 {
        send_tidings(&away, due.plus_seconds(f64::from(hour) * HOUR_S)).await.unwrap();
    }
    // Given up for this period; the next one begins anew.
    assert_eq!(told.house.count(tries).await, 0);
    assert_eq!(send_tidings(&told.house.host, due.plus_seconds(10.0 * HOUR_S)).await.unwrap(), 0);
    assert_eq!(send_tidings(&told.house.host, due.plus_seconds(DAY_S + HOUR_S)).await.unwrap(), 1);
    let [letter] = told.letters(1).await.try_into().unwrap();
    assert!(letter.text.contains("Your coach sent you one thing:"), "{}", letter.text);
    // And once it is back within a period, the same day.
    told.asks().await;
    assert_eq!(send_tidings(&away, due.plus_seconds(2.0 * DAY_S + HOUR_S)).await.unwrap(), 0);
    assert_eq!(send_tidings(&told.house.host, due.plus_seconds(2.0 * DAY_S + 2.0 * HOUR_S)).await.unwrap(), 1);
    told.letters(1).await;
}

#[tokio::test(flavor = "multi_thread")]
async fn letters_are_in_the_readers_language() {
    let mut told = Told::new().await;
    told.chosen(&told.house.keeper, "day").await;
    for (n, (language, says)) in [
        (Language::De, "Dein Coach hat dir etwas geschickt:"),
        (Language::Es, "Tu coach te envió una cosa:"),
        (Language::Fr, "Ton coach t’a envoyé 1 chose"),
        (Language::Pt, "Seu coach enviou a você 1 coisa:"),
        (Language::En, "Your coach sent you one thing:"),
    ]
    .into_iter()
    .enumerate()
    {
        told.house.host.people.set_account(told.house.keeper.account, &label("Ilda"), language).await.unwrap();
        told.asks().await;
        assert_eq!(told.after_days(2.0 * f64::from(u8::try_from(n).unwrap() + 1)).await, 1, "{language:?}");
        let [letter] = told.letters(1).await.try_into().unwrap();
        assert!(letter.text.contains(says), "{}", letter.text);
        assert!(stop_of(&letter).len() > 64);
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn the_choice_is_there_only_where_it_can_be_kept() {
    // Without a mail server there is none; nor for whom nothing would ever be told.
    let house = House::new().await;
    assert!(!house.get(&house.keeper, "/account").await.holds("id=\"news\""));
    let told = Told::new().await;
    for (role, name) in [(Has::Sitter, "Wren"), (Has::Observer, "Finch")] {
        let who = told.house.joined(role, name).await;
        assert!(!told.house.get(&who, "/account").await.holds("id=\"news\""), "{name}");
    }
    assert!(!told.house.get(&told.house.server, "/account").await.holds("id=\"news\""));
    let member = told.house.joined(Has::Member, "Mora").await;
    let page = told.house.get(&member, "/account").await;
    assert!(page.holds("id=\"news\"") && !page.holds("data-test=\"news\""), "an address comes first: {}", page.body);
    for wrong in ["every=hour&hour=8&zone=UTC", "every=day&hour=24&zone=UTC", "every=day&hour=8&zone=Nowhere", "every="]
    {
        let answer = told.house.post(&told.coach, "/account/news", wrong).await;
        assert_eq!(answer.status, StatusCode::UNPROCESSABLE_ENTITY, "{wrong}");
        assert!(answer.holds("value=\"Brook\""), "the rest of the page stays as it is: {wrong}");
    }
    // What nobody saw being written is not told of.
    told.chosen(&told.house.keeper, "day").await;
    let from = Author { account: told.coach.account, name: label("Brook") };
    let forged = Proposal {
        from,
        proposes: Proposed::Question { about: None },
        text: Some(ShortNote::new("x").unwrap()),
        takes_up: None,
        club: None,
    };
    let home = told.house.home;
    let now = told.now();
    let forged = Event { happened_at: now, recorded_at: now, ..event(home, forged) };
    told.house.host.server.home(home).append(vec![forged]).await.unwrap();
    assert_eq!(told.after_days(1.1).await, 0);
}
