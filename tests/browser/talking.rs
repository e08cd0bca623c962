//! A coach and a home in two browsers: a plan goes over, is accepted, done, answered; the consent is taken back while the coach looks.

use crate::accessibility;
use crate::harness::{Browser, PHONE};
use crate::hosted::Hosted;
use crate::phone::{self, NARROW, STAND_IN};
use sayso_model::talks::{Standing, talks};
use sayso_model::{ClubId, Moment};

/// A screen on a desk.
const SCREEN: (u32, u32) = (1280, 800);
const ALL_SENT: &str = "const o = document.querySelector('[data-test=outbox]'); return o.dataset.kept === '0' && Number(o.dataset.sent) > 0";

/// Takes an invitation by its link, without a passkey.
pub async fn joins(browser: &Browser, server: &Hosted, link: &str, name: &str) {
    browser.goto(&server.url(link)).await;
    browser.css("[name=name]").await.send_keys(name).await.unwrap();
    browser.follow("[data-test=join]").await;
}

/// The keeper of a home and a coach, each in a browser of their own, by the links of [`Hosted::home_and_club`]; the home shares its
/// figures with the coach's club.
pub async fn keeper_and_coach(
    server: &Hosted,
    (keeper_link, club, coach_link): (&str, ClubId, &str),
    coachs: (u32, u32),
) -> (Browser, Browser) {
    let keeper = Browser::open(PHONE).await;
    joins(&keeper, server, keeper_link, "Ilda").await;
    let coach = keeper.another(coachs).await;
    joins(&coach, server, coach_link, "Brook").await;
    turns_figures(&keeper, server, club).await;
    (keeper, coach)
}

/// The keeper opens the home's figures to a club, or takes that back. It is the first of the purposes.
pub async fn turns_figures(keeper: &Browser, server: &Hosted, club: ClubId) {
    keeper.goto(&server.url(&format!("/sharing/with/{club}"))).await;
    keeper.follow("[data-test=purpose-coach_figures] form button").await;
}

pub async fn chooses(browser: &Browser, name: &str, value: &str) {
    browser.css(&format!("select[name={name}]")).await.select_by_value(value).await.unwrap();
}

/// What breaks the rules on a phone, cannot be read or reached on a small one in longer words, and neither on a desk's screen.
pub async fn faults(browser: &Browser, server: &Hosted, path: &str) -> Vec<String> {
    let mut wrong = accessibility::faults(browser, &server.url(path), path).await;
    browser.resize(NARROW).await;
    for language in [STAND_IN, "de"] {
        phone::reads_at(browser, &server.url("/"), language).await;
        browser.goto(&server.url(path)).await;
        browser.css("main").await;
        browser.picture(&format!("talking-{language}-{}", path.split('?').next().unwrap().replace('/', "_"))).await;
        wrong.extend(phone::faults(browser, &format!("{path} ({language})")).await);
    }
    browser.resize(SCREEN).await;
    for language in ["en", "de"] {
        phone::reads_at(browser, &server.url("/"), language).await;
        browser.goto(&server.url(path)).await;
        browser.css("main").await;
        browser
            .picture(&format!("talking-1280-{language}-{}", path.split('?').next().unwrap().replace('/', "_")))
            .await;
        let what = format!("{path} ({language}, 1280)");
        wrong.extend(phone::faults(browser, &what).await);
        wrong.extend(accessibility::faults_now(browser).await.into_iter().map(|fault| format!("{what}: {fault}")));
    }
    browser.resize(PHONE).await;
    phone::reads_at(browser, &server.url("/"), "en").await;
    wrong
}

#[tokio::test(flavor = "multi_thread")]
async fn a_plan_goes_over_is_accepted_done_and_answered_and_ends_with_the_consent() {
    let server = Hosted::start().await;
    let (home, keeper_link, club, coach_link) = server.home_and_club().await;
    let (keeper, coach) = keeper_and_coach(&server, (&keeper_link, club, &coach_link), PHONE).await;
    let story = server.story(home).await;
    let animal = story.animals().into_keys().max_by_key(|a| story.words_of(*a).len()).unwrap();
    let card = story.words_of(animal).into_iter().find(|w| !w.closing).unwrap();
    let (word, says) = (card.word, card.says.to_string());
    // From the word's figures, one tap; what, then the fields.
    coach.goto(&server.url(&format!("/a/{animal}/evidence/{word}"))).await;
    coach.follow("[data-test=write-about]").await;
    coach.picture("talking-1-what").await;
    coach.follow("[data-test=write-plan]").await;
    let chosen = coach.css("[name=word_1]").await.prop("value").await.unwrap();
    assert_eq!(chosen, Some(word.to_string()), "the word one came from");
    chooses(&coach, "way_1", "show").await;
    coach.css("[name=text]").await.send_keys("Keep it at the board.").await.unwrap();
    coach.picture("talking-2-plan").await;
    coach.follow("[data-test=send]").await;
    coach.css("[data-standing=open]").await;
    coach.picture("talking-3-sent").await;
    // On the home's Today, from the coach; within its height.
    keeper.goto(&server.url(&format!("/a/{animal}/today"))).await;
    keeper.picture("talking-4-today").await;
    assert!(keeper.text("from-coach").await.contains("Brook"));
    let high =
        keeper.page.execute("return document.querySelector('[data-test=from-coach]').offsetHeight", vec![]).await;
    assert!(high.unwrap().as_f64().unwrap() <= 72.0, "two lines at most");
    keeper.follow("[data-test=from-coach]").await;
    keeper.picture("talking-5-to-answer").await;
    keeper.follow("[data-test=accepted]").await;
    keeper.css("[data-standing=accepted]").await;
    // Beside the word's step.
    keeper.goto(&server.url(&format!("/a/{animal}/today"))).await;
    assert!(keeper.text("agreed").await.contains("3 minutes"));
    assert!(keeper.page.find_all(fantoccini::Locator::Css("[data-test=from-coach]")).await.unwrap().is_empty());
    keeper.picture("talking-6-agreed").await;
    // Done: shown once on the board; both read it.
    keeper.goto(&server.url(&format!("/a/{animal}/board"))).await;
    keeper.tap("start").await;
    let pad = format!("pad-{says}");
    keeper.shows(&format!("[data-test=\"{pad}\"]")).await;
    keeper.until("to be given", "return !!document.querySelector('.pad[data-state=give]')").await;
    tokio::time::sleep(std::time::Duration::from_millis(420)).await;
    keeper.tap(&pad).await;
    keeper.tap("then-took").await;
    keeper.until("all is sent", ALL_SENT).await;
    coach.goto(&server.url("/talk")).await;
    assert!(coach.text("kept").await.contains("1 of 1 day"), "{}", coach.text("kept").await);
    coach.picture("talking-8-kept").await;
    // Answered in words.
    keeper.goto(&server.url("/talk")).await;
    keeper.press("[data-test=talk] form details summary").await;
    keeper.css("[data-test=talk] textarea").await.send_keys("It brings the ball.").await.unwrap();
    keeper.follow("[data-test=said]").await;
    coach.goto(&server.url("/talk")).await;
    assert_eq!(coach.text("reply-text").await, "It brings the ball.");
    // Both pages hold by the rules, in other languages too.
    let mut wrong = faults(&keeper, &server, "/talk").await;
    for path in ["/talk", "/talk/write", &format!("/talk/write?what=plan&animal={animal}"), "/talk/write?what=note"] {
        wrong.extend(faults(&coach, &server, path).await);
    }
    // Whoever coaches has no board, and so one tab less than at home.
    wrong.retain(|fault| !fault.ends_with("): 4 tabs"));
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
    // Taken back while the coach looks at the form: gone at the next tap, and nothing was written.
    coach.goto(&server.url("/talk/write?what=note")).await;
    coach.css("[name=text]").await.send_keys("One more thing.").await.unwrap();
    turns_figures(&keeper, &server, club).await;
    coach.follow("[data-test=send]").await;
    coach.picture("talking-9-gone").await;
    assert_eq!(coach.page.current_url().await.unwrap().path(), "/homes");
    let story = server.story(home).await;
    let now: Moment = sayso_web::state::machine_clock();
    let all = talks(&story, now);
    assert_eq!(all.len(), 1);
    assert_eq!((all[0].standing, all[0].answers.len()), (Standing::Accepted, 2));
    coach.close().await;
    keeper.close().await;
}

#[tokio::test(flavor = "multi_thread")]
async fn a_change_is_proposed_agreed_and_drawn_by_lot_and_told_over_all_homes() {
    let server = Hosted::start().await;
    let (home, keeper_link, club, coach_link) = server.home_and_club().await;
    let (keeper, coach) = keeper_and_coach(&server, (&keeper_link, club, &coach_link), PHONE).await;
    let story = server.story(home).await;
    let animal = story.animals().into_keys().max_by_key(|a| story.words_of(*a).len()).unwrap();
    coach.goto(&server.url(&format!("/talk/write?animal={animal}"))).await;
    coach.follow("[data-test=write-change]").await;
    // Nothing is chosen beforehand.
    let chosen = "return document.querySelectorAll('[name=question]:checked').length";
    assert_eq!(coach.page.execute(chosen, vec![]).await.unwrap(), 0);
    coach.page.execute("document.querySelector('[name=question]').click()", vec![]).await.unwrap();
    coach.picture("change-1-form").await;
    coach.follow("[data-test=send]").await;
    assert!(coach.text("as-trial").await.contains("28 days"));
    // The home's two taps.
    keeper.goto(&server.url("/talk")).await;
    keeper.picture("change-2-to-answer").await;
    keeper.follow("[data-test=accepted]").await;
    keeper.picture("change-3-agreed").await;
    let mut wrong = faults(&keeper, &server, "/talk").await;
    keeper.goto(&server.url("/talk")).await;
    keeper.follow("[data-test=draw]").await;
    keeper.picture("change-4-drawn").await;
    let to = keeper.page.current_url().await.unwrap().path().to_owned();
    assert!(to.starts_with(&format!("/a/{animal}/designs/")), "{to}");
    keeper.goto(&server.url("/talk")).await;
    assert!(keeper.text("trial").await.contains("Tried by lot"));
    keeper.picture("change-5-tried").await;
    // The coach reads the same, and the trial over all homes.
    coach.goto(&server.url("/desk")).await;
    coach.follow("[data-test=to-changes]").await;
    coach.css("[data-test=nobody-drew]").await;
    assert!(coach.text("drawn").await.contains("going on: 1"), "{}", coach.text("drawn").await);
    coach.picture("change-6-over-all").await;
    wrong.extend(faults(&keeper, &server, "/talk").await);
    for path in ["/talk", &format!("/talk/write?what=change&animal={animal}"), "/desk/changes"] {
        wrong.extend(faults(&coach, &server, path).await);
    }
    wrong.retain(|fault| !fault.ends_with("): 4 tabs"));
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
    coach.close().await;
    keeper.close().await;
}

#[tokio::test(flavor = "multi_thread")]
async fn a_home_is_handed_over_in_three_browsers_and_the_old_coach_is_out_at_the_next_tap() {
    let server = Hosted::start().await;
    let (home, keeper_link, club, coach_link) = server.home_and_club().await;
    let ash_link = server.coach_of(club).await;
    let (keeper, brook) = keeper_and_coach(&server, (&keeper_link, club, &coach_link), PHONE).await;
    let ash = keeper.another(PHONE).await;
    joins(&ash, &server, &ash_link, "Ash").await;
    // A question that is open when the home is handed over.
    brook.goto(&server.url("/talk/write?what=question")).await;
    brook.css("[name=text]").await.send_keys("Does the ball roll off?").await.unwrap();
    brook.follow("[data-test=send]").await;
    brook.goto(&server.url("/desk")).await;
    brook.press("[data-test=more-pages]").await;
    brook.follow("[data-test=to-colleagues]").await;
    brook.picture("colleagues-1").await;
    let mut wrong = faults(&brook, &server, "/desk/colleagues").await;
    wrong.extend(faults(&brook, &server, &format!("/desk/hand-over?home={home}")).await);
    brook.goto(&server.url(&format!("/desk/hand-over?home={home}"))).await;
    brook.press("[name=colleague]").await;
    brook.picture("colleagues-2-hand-over").await;
    brook.follow("[data-test=propose]").await;
    keeper.goto(&server.url("/talk")).await;
    keeper.picture("colleagues-3-asked").await;
    wrong.extend(faults(&keeper, &server, "/talk").await);
    keeper.goto(&server.url("/talk")).await;
    keeper.follow("[data-test=to-opening]").await;
    let path = keeper.page.current_url().await.unwrap().path().to_owned();
    keeper.css("[data-test=ends]").await;
    wrong.extend(faults(&keeper, &server, &path).await);
    keeper.goto(&server.url(&path)).await;
    keeper.picture("colleagues-4-what").await;
    brook.goto(&server.url("/talk")).await;
    keeper.follow("[data-test=agree]").await;
    keeper.picture("colleagues-5-agreed").await;
    // Brook looks at the home's page while that happens: the next tap leads out.
    brook.goto(&server.url("/talk")).await;
    assert_eq!(brook.page.current_url().await.unwrap().path(), "/homes");
    ash.goto(&server.url("/desk?kind=none")).await;
    ash.css("[data-test=row]").await;
    ash.picture("colleagues-6-new").await;
    // At home Today says who it is from now on; Ash goes on with what was open, and ends it.
    let animal = server.story(home).await.animals().into_keys().next().unwrap();
    keeper.goto(&server.url(&format!("/a/{animal}/today"))).await;
    assert!(keeper.text("whose-now").await.contains("Ash is your coach now, in place of Brook"));
    keeper.picture("colleagues-7-today").await;
    wrong.extend(faults(&keeper, &server, &format!("/a/{animal}/today")).await);
    ash.goto(&server.url("/talk")).await;
    assert!(ash.text("goes-on").await.contains("Ash goes on with this"));
    ash.picture("colleagues-8-goes-on").await;
    wrong.extend(faults(&ash, &server, "/talk").await);
    ash.goto(&server.url("/talk")).await;
    ash.follow("[data-test=end]").await;
    keeper.goto(&server.url("/talk")).await;
    keeper.picture("colleagues-9-ended").await;
    let ended = "return [...document.querySelectorAll('[data-test=reply]')].some((r) => r.textContent.includes('Ash ended this'))";
    assert_eq!(keeper.page.execute(ended, vec![]).await.unwrap(), true);
    wrong.retain(|fault| !fault.ends_with("): 4 tabs"));
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
    for browser in [brook, ash, keeper] {
        browser.close().await;
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn a_programme_is_laid_out_joined_and_ticked() {
    let server = Hosted::start().await;
    let (home, keeper_link, club, coach_link) = server.home_and_club().await;
    let (keeper, coach) = keeper_and_coach(&server, (&keeper_link, club, &coach_link), PHONE).await;
    let story = server.story(home).await;
    let animal = story.animals().into_keys().max_by_key(|a| story.words_of(*a).len()).unwrap();
    coach.goto(&server.url("/desk")).await;
    coach.press("[data-test=more-pages]").await;
    coach.follow("[data-test=to-programmes]").await;
    let mut wrong = faults(&coach, &server, "/desk/programmes").await;
    wrong.extend(faults(&coach, &server, "/desk/programmes/new?weeks=2").await);
    coach.goto(&server.url("/desk/programmes/new?weeks=2")).await;
    coach.css("[name=name]").await.send_keys("First words").await.unwrap();
    coach.css("[name=showings_1]").await.send_keys("20").await.unwrap();
    coach.css("[name=own_1_1]").await.send_keys("Put the board by the door").await.unwrap();
    coach.picture("programme-1-laid-out").await;
    coach.follow("[data-test=lay-out]").await;
    let page = coach.page.current_url().await.unwrap().path().to_owned();
    coach.press(&format!("[name=animal][value='{animal}']")).await;
    let today = story.zone();
    let today = sayso_web::state::machine_clock().day(&today).to_string();
    coach.page.execute(&format!("document.querySelector('[name=first]').value = '{today}'"), vec![]).await.unwrap();
    coach.follow("[data-test=propose]").await;
    keeper.goto(&server.url("/talk")).await;
    keeper.picture("programme-2-proposed").await;
    keeper.follow("[data-test=accepted]").await;
    keeper.follow("[data-test=tick]").await;
    keeper.css("[data-test=aim][data-done=true]").await;
    keeper.picture("programme-3-joined").await;
    wrong.extend(faults(&keeper, &server, "/talk").await);
    coach.goto(&server.url(&page)).await;
    assert!(coach.text("stands").await.contains("Put the board by the door: done"), "{}", coach.text("stands").await);
    coach.picture("programme-4-stands").await;
    wrong.extend(faults(&coach, &server, &page).await);
    wrong.retain(|fault| !fault.ends_with("): 4 tabs"));
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
    coach.close().await;
    keeper.close().await;
}
