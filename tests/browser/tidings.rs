//! What comes to somebody who does not look: the choice of letters on the account's page, a letter's own page to stop them, and the
//! calendar of a caseload. As the two people meet them, by the rules, on a phone and a narrow one, in longer words.

use crate::accessibility::{self, faults_now};
use crate::harness::{Browser, PHONE};
use crate::hosted::Hosted;
use crate::phone::{self, NARROW, STAND_IN};
use crate::post::{Letter, Post};
use crate::talking::{chooses, keeper_and_coach};

/// The path of the link in a letter that goes to that kind of page.
fn path_in(letter: &Letter, server: &Hosted, kind: &str) -> String {
    let link = letter.text.split_whitespace().find(|word| word.contains(kind));
    let link = link.unwrap_or_else(|| panic!("no {kind} in {}", letter.text));
    link.strip_prefix(server.url("").trim_end_matches('/')).unwrap().to_owned()
}

/// What is wrong with the page as it stands there, once on a phone and then on a narrow one with letters twice as large.
async fn faults_here(browser: &Browser, what: &str) -> Vec<String> {
    let found = faults_now(browser).await;
    let mut wrong: Vec<String> = found.into_iter().map(|fault| format!("{what}: {fault}")).collect();
    browser.picture(&format!("tidings-{}", what.replace(['/', ' '], "_"))).await;
    browser.resize(NARROW).await;
    browser.page.execute("document.documentElement.style.fontSize = '200%'", vec![]).await.unwrap();
    browser
        .page
        .execute_async("requestAnimationFrame(() => requestAnimationFrame(arguments[0]))", vec![])
        .await
        .unwrap();
    wrong.extend(phone::faults(browser, &format!("{what}, 200 %")).await);
    browser.page.execute("document.documentElement.style.fontSize = ''", vec![]).await.unwrap();
    browser.resize(PHONE).await;
    wrong
}

/// What is wrong with an address, light and dark, and in longer words.
async fn faults_at(browser: &Browser, server: &Hosted, path: &str, what: &str) -> Vec<String> {
    let mut wrong = accessibility::faults(browser, &server.url(path), what).await;
    for language in [STAND_IN, "de", "en"] {
        phone::reads_at(browser, &server.url("/"), language).await;
        browser.goto(&server.url(path)).await;
        browser.css("main").await;
        wrong.extend(faults_here(browser, &format!("{what} {language}")).await);
    }
    wrong
}

/// An address is asked for and proved by the letter that comes.
async fn proves(browser: &Browser, server: &Hosted, post: &mut Post, email: &str) {
    browser.goto(&server.url("/account")).await;
    browser.css("#email").await.send_keys(email).await.unwrap();
    browser.follow("form[action='/account/email'] button").await;
    let letter = post.next().await;
    assert_eq!(letter.to, email);
    browser.goto(&server.url(&path_in(&letter, server, "/account/email/"))).await;
    browser.follow("[data-test=prove-yes]").await;
    browser.find("email").await;
}

#[tokio::test(flavor = "multi_thread")]
async fn letters_are_chosen_come_and_are_stopped_and_each_of_their_pages_holds_by_the_rules() {
    let mut post = Post::open().await;
    let server = Hosted::start_posting(post.port).await;
    let (_, keeper_link, club, coach_link) = server.home_and_club().await;
    let (keeper, coach) = keeper_and_coach(&server, (&keeper_link, club, &coach_link), PHONE).await;
    // Before there is an address, the choice says what it lacks.
    keeper.goto(&server.url("/account")).await;
    keeper.find("news-urgent").await;
    let mut wrong = faults_at(&keeper, &server, "/account", "news without an address").await;
    proves(&keeper, &server, &mut post, "ilda@home.example").await;
    wrong.extend(faults_at(&keeper, &server, "/account", "news").await);
    // What cannot be a place is told beside its field, and the rest stays as it was typed.
    keeper.goto(&server.url("/account")).await;
    chooses(&keeper, "every", "day").await;
    keeper.css("#zone").await.clear().await.unwrap();
    keeper.css("#zone").await.send_keys("Nowhere/Town").await.unwrap();
    keeper.follow("[data-test=news-save]").await;
    keeper.css("#zone-wrong").await;
    assert_eq!(keeper.css("[name=every]").await.prop("value").await.unwrap().as_deref(), Some("day"));
    wrong.extend(faults_here(&keeper, "news with a place that is none").await);
    keeper.css("#zone").await.clear().await.unwrap();
    keeper.css("#zone").await.send_keys("Europe/Lisbon").await.unwrap();
    keeper.follow("[data-test=news-save]").await;
    keeper.until("kept", "return !document.querySelector('#zone-wrong')").await;

    // The coach asks something; the letter that tells so has a page of its own to stop them.
    coach.goto(&server.url("/talk/write?what=question")).await;
    coach.css("[name=text]").await.send_keys("Does it roll off?").await.unwrap();
    coach.follow("[data-test=send]").await;
    coach.css("[data-standing=open]").await;
    assert_eq!(server.letters_in(1.1).await, 1);
    let letter = post.next().await;
    assert_eq!(letter.to, "ilda@home.example");
    let stop = path_in(&letter, &server, "/letters/stop/");
    // In a browser that knows nobody, as a mail program opens it.
    let stranger = keeper.another(PHONE).await;
    wrong.extend(faults_at(&stranger, &server, &stop, "letters-stop").await);
    stranger.goto(&server.url(&stop)).await;
    stranger.follow("[data-test=stop]").await;
    stranger.find("stopped").await;
    wrong.extend(faults_here(&stranger, "letters-stopped").await);
    wrong.extend(faults_at(&stranger, &server, "/letters/stop/none", "letters-stop of no letter").await);
    keeper.goto(&server.url("/account")).await;
    assert_eq!(keeper.css("[name=every]").await.prop("value").await.unwrap().as_deref(), Some("never"));

    // The calendar of a caseload: none, being made, made once, there.
    wrong.extend(faults_at(&coach, &server, "/desk/calendar", "calendar, none").await);
    wrong.extend(faults_at(&coach, &server, "/desk/calendar/new", "calendar, to make").await);
    coach.goto(&server.url("/desk/calendar/new")).await;
    coach.follow("[data-test=make]").await;
    coach.find("address").await;
    wrong.extend(faults_here(&coach, "calendar, made").await);
    wrong.extend(faults_at(&coach, &server, "/desk/calendar", "calendar, there").await);
    coach.goto(&server.url("/desk/calendar")).await;
    coach.follow("[data-test=end]").await;
    coach.find("none").await;
    for browser in [stranger, coach, keeper] {
        browser.close().await;
    }
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
}
