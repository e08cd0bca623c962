//! A coach prepares a meeting and proposes the next; the plan after it is one tap away; the calendar is read from its address, by a
//! program that is signed in nowhere, until the consent is taken back.

use crate::harness::{Browser, PHONE};
use crate::hosted::Hosted;
use crate::talking::{chooses, faults, keeper_and_coach, turns_figures};

/// Sets a field of a day or a time, which takes typed keys as the browser's language has them.
async fn sets(browser: &Browser, name: &str, value: &str) {
    let script = format!("document.querySelector('[name={name}]').value = '{value}'; return true");
    browser.page.execute(&script, vec![]).await.unwrap();
}

/// What a program reads there, within the browser but without its cookies.
async fn read(browser: &Browser, address: &str) -> (i64, String) {
    let script = format!(
        "const done = arguments[arguments.length - 1]; fetch('{address}', {{ credentials: 'omit' }}).then(async (r) => done([r.status, await r.text()]))"
    );
    let told = browser.page.execute_async(&script, vec![]).await.unwrap();
    (told[0].as_i64().unwrap(), told[1].as_str().unwrap().to_owned())
}

#[tokio::test(flavor = "multi_thread")]
async fn a_meeting_is_prepared_proposed_accepted_and_stands_in_the_calendar() {
    let server = Hosted::start().await;
    let (home, keeper_link, club, coach_link) = server.home_and_club().await;
    let (keeper, coach) = keeper_and_coach(&server, (&keeper_link, club, &coach_link), PHONE).await;
    let story = server.story(home).await;
    let animal = story.animals().into_keys().max_by_key(|a| story.words_of(*a).len()).unwrap();
    let word = story.words_of(animal).into_iter().find(|w| !w.closing).unwrap().word;
    // From what was agreed to the page, and from it in one tap to the form, which is filled.
    let sheet = format!("/sheets/{animal}/meeting");
    coach.goto(&server.url("/talk")).await;
    coach.follow(&format!("a[href='{sheet}']")).await;
    coach.picture("meeting-1-page").await;
    coach.follow("[data-test=next-plan]").await;
    coach.picture("meeting-2-next-plan").await;
    if coach.css("[name=word_1]").await.prop("value").await.unwrap().is_none_or(|v| v.is_empty()) {
        chooses(&coach, "word_1", &word.to_string()).await;
    }
    coach.follow("[data-test=send]").await;
    coach.goto(&server.url(&format!("/talk/write?what=meeting&animal={animal}"))).await;
    let day = sayso_web::state::machine_clock().day(&story.zone()).plus(3);
    sets(&coach, "day", &day.to_string()).await;
    sets(&coach, "time", "18:30").await;
    coach.picture("meeting-3-meeting").await;
    coach.follow("[data-test=send]").await;
    // The home accepts both.
    for _ in 0..2 {
        keeper.goto(&server.url("/talk")).await;
        keeper.follow("[data-standing=open] [data-test=accepted]").await;
    }
    keeper.picture("meeting-4-agreed").await;
    // The calendar.
    coach.goto(&server.url("/talk")).await;
    coach.follow("[data-test=calendar]").await;
    coach.follow("[data-test=new]").await;
    coach.picture("meeting-5-address-asked").await;
    coach.follow("[data-test=make]").await;
    coach.picture("meeting-6-address").await;
    let address = coach.text("address").await;
    let (status, told) = read(&coach, &address).await;
    assert_eq!(status, 200, "{told}");
    assert!(told.contains("STATUS:CONFIRMED") && told.contains("RRULE:FREQ=DAILY"), "{told}");
    // By the rules on every page of it, in two languages besides, on a small phone.
    let mut wrong = Vec::new();
    for path in
        [sheet.as_str(), "/talk", &format!("/talk/write?what=meeting&animal={animal}"), "/calendar", "/calendar/new"]
    {
        wrong.extend(faults(&coach, &server, path).await);
    }
    for path in [sheet.as_str(), "/talk", &format!("/talk/own?animal={animal}"), "/calendar"] {
        wrong.extend(faults(&keeper, &server, path).await);
    }
    // Whoever coaches has no board, and so one tab less than at home.
    wrong.retain(|fault| !fault.ends_with("): 4 tabs"));
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
    // Taken back: nothing at the next reading.
    turns_figures(&keeper, &server, club).await;
    assert_eq!(read(&keeper, &address).await.0, 404);
    coach.close().await;
    keeper.close().await;
}
