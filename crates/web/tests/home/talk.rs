//! Agreed, at home: what came along from a server can be read and answered, and nobody writes as a coach.

use crate::at_home::Home;
use sayso_model::talks::{Standing, talks};
use sayso_model::{
    AccountId, Author, CaseExpected, CaseMeasure, CaseQuestion, DesignPlan, Event, EventId, Label, Moment, Proposal,
    ProposalAnswer, Proposed, ShortNote, Source, TalkAbout, WordCard, WordId,
};
use sayso_web::app;
use uuid::Uuid;

async fn home_with_a_question() -> (Home, EventId) {
    let home = Home::new().await;
    let story = home.story().await;
    let pattern = story.ledger().all().next().unwrap().clone();
    let word = WordId(Uuid::from_u128(7));
    let event = |body: sayso_model::Body| Event {
        id: EventId(Uuid::now_v7()),
        animal: Some(home.animal),
        person: None,
        source: Source::Tap,
        body,
        ..pattern.clone()
    };
    let asks = event(
        Proposal {
            from: Author { account: AccountId(Uuid::from_u128(9)), name: Label::new("Brook <b>").unwrap() },
            proposes: Proposed::Question { about: Some(TalkAbout::Word { word }) },
            text: ShortNote::new("Does it roll off?\n<script>").ok(),
            takes_up: None,
            club: None,
        }
        .into(),
    );
    let card = event(WordCard::new(word, Label::new("ball").unwrap()).into());
    home.state.store.append(vec![card, asks.clone()]).await.unwrap();
    (home, asks.id)
}

#[tokio::test]
async fn a_notebook_without_a_coach_has_the_page_and_no_way_to_it() {
    let home = Home::new().await;
    home.page("/talk").await.says("Nothing here yet").says("not a vet").does_not_say("/talk/write");
    home.page(&format!("/a/{}/today", home.animal)).await.does_not_say("href=\"/talk\"");
}

#[tokio::test]
async fn what_came_along_is_told_as_from_a_file_and_is_answered() {
    let (home, question) = home_with_a_question().await;
    let today = format!("/a/{}/today", home.animal);
    home.page(&today).await.says("href=\"/talk\"").does_not_say("from-coach");
    let page = home.page("/talk").await;
    page.says("From Brook &lt;b&gt;").says("A question on “ball”").says("Read from a file").says("&lt;script&gt;");
    let back = home.post("/talk/back", &[("of", &question.to_string())]).await;
    let write = home.post("/talk/write", &[("what", "note"), ("text", "x")]).await;
    for told in [back, write] {
        assert_eq!(told.status.as_u16(), 404, "nobody writes as a coach at home");
    }
    assert_eq!(home.get("/talk/write").await.status.as_u16(), 404);
    let answer = |reply: &'static str, text: &'static str| {
        let (home, to) = (&home, question.to_string());
        async move { home.post("/talk/answer", &[("to", &to), ("reply", reply), ("text", text)]).await }
    };
    answer("said", "").await.refused().says("is missing");
    answer("perhaps", "Not any more.").await.refused().says("Not any more.");
    answer("said", "Not any more.").await.kept();
    let story = home.story().await;
    let all = talks(&story, "2026-03-02T12:00:00Z".parse().unwrap());
    assert_eq!(all[0].standing, Standing::Answered);
    let said: Vec<&ProposalAnswer> = all[0].answers.iter().map(|a| a.part).collect();
    assert_eq!(said[0].text.as_ref().unwrap().as_str(), "Not any more.");
    home.page("/talk").await.says("Robin answered").says("Not any more.");
    let nowhere =
        home.post("/talk/answer", &[("to", &Uuid::nil().to_string()), ("reply", "said"), ("text", "x")]).await;
    assert_eq!(nowhere.status.as_u16(), 404);
}

/// Something that a coach wrote and that came along; its id.
async fn came_along(home: &Home, proposes: Proposed, happened: &str) -> String {
    let pattern = home.story().await.ledger().all().next().unwrap().clone();
    let from = Author { account: AccountId(Uuid::from_u128(9)), name: Label::new("Brook").unwrap() };
    let event = Event {
        id: EventId(Uuid::now_v7()),
        animal: Some(home.animal),
        person: None,
        source: Source::Tap,
        happened_at: happened.parse().unwrap(),
        body: Proposal { from, proposes, text: None, takes_up: None, club: None }.into(),
        ..pattern
    };
    let id = event.id.to_string();
    home.state.store.append(vec![event]).await.unwrap();
    id
}

#[tokio::test]
async fn a_word_to_add_is_a_word_and_one_that_is_there_leads_to_its_card() {
    let (home, _) = home_with_a_question().await;
    let at = "2026-03-02T09:00:00Z";
    let new = came_along(&home, Proposed::Word { says: Label::new("tug").unwrap() }, at).await;
    let there = came_along(&home, Proposed::Word { says: Label::new("Ball").unwrap() }, at).await;
    for of in [&new, &there] {
        home.page("/talk").await.does_not_say("by lot");
        home.post("/talk/answer", &[("to", of), ("reply", "accepted"), ("text", "")]).await.kept();
        let drawn = home.post("/talk/try", &[("of", of)]).await;
        assert_eq!(drawn.status.as_u16(), 404, "nobody asked for a trial");
    }
    let page = home.page("/talk").await;
    page.says("Add the word").says("“Ball” is on a button here already").does_not_say("data-test=\"draw\"");
    page.says(&format!("/words/card/{}", WordId(Uuid::from_u128(7))));
    assert_eq!(home.story().await.of::<DesignPlan>(home.animal).count(), 0);
}

#[tokio::test]
async fn a_change_proposed_while_a_trial_measures_the_same_says_so_before_it_is_drawn() {
    let home = Home::new().await;
    let change = |question| Proposed::Change {
        question,
        label: None,
        words: Vec::new(),
        measure: CaseMeasure::OwnPresses,
        expected: CaseExpected::More,
    };
    let at = "2026-03-02T09:00:00Z";
    let one = came_along(&home, change(CaseQuestion::QuieterButton), at).await;
    home.post("/talk/answer", &[("to", &one), ("reply", "accepted"), ("text", "")]).await.kept();
    home.page("/talk").await.does_not_say("data-test=\"beside\"");
    let drawn = home.post("/talk/try", &[("of", &one)]).await.kept().to.clone();
    let two = came_along(&home, change(CaseQuestion::NewPlace), at).await;
    home.page("/talk").await.says("data-test=\"beside\"").says(&drawn).says("31 ");
    home.post("/talk/answer", &[("to", &two), ("reply", "accepted"), ("text", "")]).await.kept();
    // Warned, and drawn all the same: then both say so.
    let second = home.post("/talk/try", &[("of", &two)]).await.kept().to.clone();
    let page = home.page("/talk").await;
    assert_eq!(page.text.matches("Neither can be told apart").count(), 2, "{}", page.text);
    for (own, other) in [(&drawn, &second), (&second, &drawn)] {
        home.page(own).await.says("data-test=\"beside\"").says(other);
    }
    home.page(&format!("/a/{}/today", home.animal)).await.says("Trial from Tue 3 Mar");
}

/// The first day of the trial, which every design begins as usual.
fn tomorrow() -> Moment {
    "2026-03-03T12:00:00Z".parse().unwrap()
}

#[tokio::test]
async fn a_change_that_came_along_is_agreed_and_drawn_at_home_and_today_says_what_holds() {
    let mut home = Home::new().await;
    let (question, measure, expected) = (CaseQuestion::AnotherWord, CaseMeasure::OwnPresses, CaseExpected::More);
    let label = Label::new("tug").ok();
    let proposes = Proposed::Change { question, label, words: Vec::new(), measure, expected };
    let of = came_along(&home, proposes, "2026-03-02T09:00:00Z").await;
    home.page("/talk").await.says("To try: Another word (tug)").does_not_say("data-test=\"draw\"");
    home.post("/talk/try", &[("of", &of)]).await.refused();
    home.post("/talk/answer", &[("to", &of), ("reply", "accepted"), ("text", "")]).await.kept();
    let drawn = home.post("/talk/try", &[("of", &of)]).await;
    let to = drawn.kept().to.clone();
    home.page(&to).await.says("From a drawn day on").says("Does another word help: “tug”?");
    let today = format!("/a/{}/today", home.animal);
    home.page(&today).await.does_not_say("trial-today");
    home.app = app(home.state.clone().with_clock(tomorrow));
    home.page(&today).await.says("trial-today").says("Trial up to Mon 30 Mar").says("Today as usual");
    home.page("/talk").await.says("Tried by lot:").says(&to);
    // Only the day's condition is told: the order follows from a seed that no page shows.
    let story = home.story().await;
    let seed = story.of::<DesignPlan>(home.animal).next().unwrap().part.seed.to_string();
    home.page(&to).await.does_not_say(&seed);
    let nowhere = home.post("/talk/try", &[("of", &Uuid::nil().to_string())]).await;
    assert_eq!(nowhere.status.as_u16(), 404);
}
