//! Before a meeting and after it, at home: one page, from it in one tap a plan of one's own, which Today shows until it is over.

use crate::at_home::Home;
use sayso_model::{
    AnimalId, Event, EventId, Label, Note, OwnPlan, RewardCard, RewardId, RewardKind, Sign, SignLevel, Source, When,
    WordCard, WordId,
};
use uuid::Uuid;

const BALL: WordId = WordId(Uuid::from_u128(0x0189_0000_0000_7000_8000_0000_0000_0001));

async fn append(home: &Home, body: impl Into<sayso_model::Body>) {
    let pattern = home.story().await.ledger().all().next().unwrap().clone();
    let event = Event {
        id: EventId(Uuid::now_v7()),
        animal: Some(home.animal),
        source: Source::Tap,
        body: body.into(),
        ..pattern
    };
    home.state.store.append(vec![event]).await.unwrap();
}

async fn with_a_word() -> Home {
    let home = Home::new().await;
    append(&home, WordCard::new(BALL, Label::new("ball").unwrap())).await;
    home
}

async fn plans(home: &Home) -> Vec<(EventId, OwnPlan)> {
    home.story().await.everyones::<OwnPlan>().map(|fact| (fact.id(), fact.part.clone())).collect()
}

/// The form as it is sent.
fn fields<'a>(home: &'a str, animal: &'a str, more: &[(&'static str, &'a str)]) -> Vec<(&'static str, &'a str)> {
    let mut all = vec![("home", home), ("animal", animal)];
    all.extend(more);
    for name in ["word_2", "word_3", "way_1"] {
        all.push((name, ""));
    }
    all
}

#[tokio::test]
async fn from_the_page_before_a_meeting_to_a_plan_of_ones_own_and_its_end() {
    let home = with_a_word().await;
    let sheet = format!("/sheets/{}/meeting", home.animal);
    home.page("/sheets").await.says(&format!("href=\"{sheet}\""));
    let page = home.page(&sheet).await;
    let own = format!("/talk/own?animal={}", home.animal);
    page.says("Before a meeting: Pip").says(&format!("href=\"{own}\"")).says("Nothing was agreed");
    page.does_not_say("/talk/write").says("Open questions").says("class=\"write\"");
    let (kind, bytes) = home.file(&format!("{sheet}.pdf?paper=a4&since=2026-02-20")).await;
    assert!(kind == "application/pdf" && bytes.starts_with(b"%PDF"), "{kind}");
    home.page(&format!("{sheet}?since=2026-02-20")).await.says("value=\"2026-02-20\"").says("since=2026-02-20");
    // What was asked for and cannot be: the usual days.
    home.page(&format!("{sheet}?since=soon")).await.says("value=\"2026-02-17\"");
    home.page(&own).await.says("not a vet").says("Keep this plan").says("value=\"2026-03-08\"");
    let (of, animal, word) = (home.home.to_string(), home.animal.to_string(), BALL.to_string());
    let good = [("word_1", word.as_str()), ("minutes_1", "5"), ("times_1", "2"), ("last_day", "2026-03-09")];
    for (name, wrong) in [("times_1", "9"), ("minutes_1", "16"), ("word_1", ""), ("last_day", "2026-03-01")] {
        let more: Vec<_> = good.iter().map(|(n, v)| (*n, if *n == name { wrong } else { *v })).collect();
        home.post("/talk/own", &fields(&of, &animal, &more)).await.refused().says(&format!("href=\"#{name}\""));
    }
    let other = Uuid::nil().to_string();
    home.post("/talk/own", &fields(&other, &animal, &good)).await.refused();
    assert!(plans(&home).await.is_empty());
    home.post("/talk/own", &fields(&of, &animal, &good)).await.kept();
    let [(id, plan)] = plans(&home).await.try_into().unwrap();
    assert_eq!((plan.lines[0].minutes, plan.lines[0].times, plan.last_day.to_string().as_str()), (5, 2, "2026-03-09"));
    home.page(&format!("/a/{}/today", home.animal)).await.says("Agreed: 5 minutes, twice a day").says("href=\"/talk\"");
    home.page("/talk").await.says("Our own plan").says("Robin").says("“ball”: 5 minutes, twice a day");
    home.page(&sheet).await.says("own plan of").says("no day has passed yet");
    // The next one begins with it.
    home.page(&own).await.says("Filled in from the last plan").says(&format!("value=\"{word}\" selected"));
    home.post("/talk/own/stop", &[("of", &id.to_string())]).await.kept();
    home.page(&format!("/a/{}/today", home.animal)).await.does_not_say("Agreed: 5 minutes");
    home.page("/talk").await.does_not_say("own-card");
    assert_eq!(home.post("/talk/own/stop", &[("of", &id.to_string())]).await.status.as_u16(), 404);
}

#[tokio::test]
async fn a_word_that_ends_sessions_is_shown_and_never_invited_by_a_plan() {
    let home = with_a_word().await;
    append(&home, WordCard { closing: true, ..WordCard::new(BALL, Label::new("all done").unwrap()) }).await;
    let (of, animal, word) = (home.home.to_string(), home.animal.to_string(), BALL.to_string());
    let form = |way: &'static str| {
        let more = [
            ("word_1", word.as_str()),
            ("minutes_1", "5"),
            ("times_1", "2"),
            ("last_day", "2026-03-09"),
            ("way_1", way),
        ];
        [("home", of.as_str()), ("animal", animal.as_str())].into_iter().chain(more).collect::<Vec<_>>()
    };
    home.post("/talk/own", &form("ask_and_point")).await.refused().says("href=\"#way_1\"").says("nobody waits");
    assert!(plans(&home).await.is_empty());
    home.post("/talk/own", &form("show")).await.kept();
}

#[tokio::test]
async fn while_a_strong_sign_rests_sessions_no_plan_is_made() {
    let home = with_a_word().await;
    let sign = Note::new("growl").unwrap();
    append(&home, Sign { sign, level: SignLevel::Strong, when: When::During, session: None }).await;
    let own = format!("/talk/own?animal={}", home.animal);
    home.page(&own).await.says("data-test=\"rests\"").does_not_say("data-test=\"keep\"");
    let (of, animal, word) = (home.home.to_string(), home.animal.to_string(), BALL.to_string());
    let more = [("word_1", word.as_str()), ("minutes_1", "5"), ("times_1", "2"), ("last_day", "2026-03-09")];
    home.post("/talk/own", &fields(&of, &animal, &more)).await.refused();
    assert!(plans(&home).await.is_empty());
    // The page for the meeting says so first, with whom to ask.
    let page = home.page(&format!("/sheets/{}/meeting", home.animal)).await;
    page.says("Safety first").says("qualified behaviour professional");
    assert!(page.text.find("Safety first").unwrap() < page.text.find("New since").unwrap());
    let nobody = home.get(&format!("/sheets/{}/meeting", AnimalId(Uuid::nil()))).await;
    assert_eq!(nobody.status.as_u16(), 404);
}

#[tokio::test]
async fn today_says_what_was_agreed_and_how_and_where_the_notebook_would_do_something_else() {
    let home = Home::new().await;
    let reward = RewardId(Uuid::now_v7());
    let label = |of: &str| Label::new(of).unwrap();
    append(&home, RewardCard::new(reward, label("ball"), RewardKind::Play)).await;
    let card = WordCard {
        reward: Some(reward),
        answer: Some(Note::new("Throw it.").unwrap()),
        not_now: Some(Note::new("Later.").unwrap()),
        ..WordCard::new(BALL, label("ball"))
    };
    append(&home, card).await;
    let today = format!("/a/{}/today", home.animal);
    home.page(&today).await.says("Show it").does_not_say("Agreed: ");
    let (of, animal, word) = (home.home.to_string(), home.animal.to_string(), BALL.to_string());
    let mut form = vec![("home", of.as_str()), ("animal", animal.as_str()), ("word_1", word.as_str())];
    form.extend([("minutes_1", "3"), ("times_1", "3"), ("last_day", "2026-03-09"), ("word_2", ""), ("word_3", "")]);
    let way = |way: &'static str| form.iter().copied().chain([("way_1", way)]).collect::<Vec<_>>();
    home.post("/talk/own", &way("show")).await.kept();
    let page = home.page(&today).await;
    page.says("Agreed: show it, 3 minutes, 3 times a day").does_not_say("without-agreed");
    let [(id, _)] = plans(&home).await.try_into().unwrap();
    home.post("/talk/own/stop", &[("of", &id.to_string())]).await.kept();
    home.post("/talk/own", &way("ask_and_point")).await.kept();
    let page = home.page(&today).await;
    page.says("Invite, ask and point").says("Agreed: invite, ask and point, 3 minutes, 3 times a day");
    assert_eq!(page.text.matches("data-test=\"without-agreed\"").count(), 1, "{}", page.text);
    let why = page.text.split("Without what was agreed: Show it. ").nth(1).unwrap().split('<').next().unwrap();
    assert!(why.len() > 10, "the reason stands there: {why}");
}
