//! Every page there is, for what must hold on each of them.

use crate::harness::{Browser, Server, animal, story};
use crate::listen::record;
use crate::sounds::{say, wav};
use sayso_model::facts::lessons;
use sayso_model::{
    AccountId, AnimalId, AssessmentId, Author, Body, CaseExpected, CaseMeasure, CaseQuestion, Event, EventId, Label,
    LikesFormat, LikesTest, Note, PersonId, PlanLine, PlanWay, PressedBy, ProbeId, ProbePlan, Proposal, ProposalAnswer,
    Proposed, Reply, RewardId, ShortNote, Sign, SignLevel, Source, TalkAbout, When, Withdrawal, WordId,
};
use sayso_sim::rehearsal::Exercise;
use sayso_store::Store;
use std::path::Path;
use uuid::Uuid;

/// The animal, the word and the check that the pages are about.
pub struct About {
    who: AnimalId,
    word: WordId,
    calm: AnimalId,
    probe: ProbeId,
    likes: AssessmentId,
    reward: RewardId,
    person: PersonId,
    sign: EventId,
}

/// Animals growled so many days ago: that stays at the top of Today, beside what there is to do.
pub async fn growled(dir: &Path, animals: impl Iterator<Item = AnimalId>, days_ago: f64) {
    signed(dir, animals, days_ago, ("growl", SignLevel::Strong)).await;
}

/// Notes a sign of each animal, so many days before the last record.
pub async fn signed(
    dir: &Path,
    animals: impl Iterator<Item = AnimalId>,
    days_ago: f64,
    (sign, level): (&str, SignLevel),
) {
    let (_, story) = story(dir).await;
    let at = story.ledger().all().map(|e| e.happened_at).max().unwrap().plus_seconds(-days_ago * 86_400.0);
    let pattern = story.ledger().all().find(|e| e.animal.is_some()).unwrap();
    let seen = Sign { sign: Note::new(sign).unwrap(), level, when: When::During, session: None };
    let events = animals.map(|animal| Event {
        id: EventId(Uuid::now_v7()),
        animal: Some(animal),
        happened_at: at,
        recorded_at: at,
        body: seen.clone().into(),
        ..pattern.clone()
    });
    let store = Store::open(dir).await.unwrap();
    store.append(events.collect()).await.unwrap();
    store.close().await.unwrap();
}

/// Takes back the sessions of the last day, so that one is still to come.
pub async fn unheld(dir: &Path) {
    let (_, story) = story(dir).await;
    let (zone, now) = (story.zone(), story.ledger().all().map(|e| e.happened_at).max().unwrap());
    let of_today = story.ledger().all().filter(|e| matches!(e.body, Body::SessionStart(_)));
    let of_today = of_today.filter(|e| e.happened_at.day(&zone) == now.day(&zone));
    let taken_back = |e: &Event| Event {
        id: EventId(Uuid::now_v7()),
        happened_at: now,
        recorded_at: now,
        body: Withdrawal { of: e.id, because: None }.into(),
        ..e.clone()
    };
    let store = Store::open(dir).await.unwrap();
    store.append(of_today.map(taken_back).collect()).await.unwrap();
    store.close().await.unwrap();
}

/// A coach's question that waits, and a plan that was agreed a week ago.
async fn talked(dir: &Path, who: AnimalId, word: WordId) {
    let (_, story) = story(dir).await;
    let at = story.ledger().all().map(|e| e.happened_at).max().unwrap().plus_seconds(-7.0 * 86_400.0);
    let pattern = story.ledger().all().find(|e| e.animal == Some(who)).unwrap();
    let event = |body: Body| Event {
        id: EventId(Uuid::now_v7()),
        happened_at: at,
        recorded_at: at,
        source: Source::Tap,
        body,
        ..pattern.clone()
    };
    let coach = |proposes: Proposed| Proposal {
        from: Author { account: AccountId(Uuid::from_u128(7)), name: Label::new("Brook").unwrap() },
        proposes,
        text: ShortNote::new("Keep it at the board.\nDoes it roll off?").ok(),
        takes_up: None,
        club: None,
    };
    let line = PlanLine { word, way: Some(PlanWay::Show), minutes: 3, times: 3 };
    let last_day = at.day(&story.zone()).plus(20);
    let plan = event(coach(Proposed::Plan { lines: vec![line], last_day }).into());
    let yes = event(
        ProposalAnswer {
            to: plan.id,
            reply: Reply::Accepted,
            text: ShortNote::new("From today on.").ok(),
            by: None,
            rehearsed: None,
        }
        .into(),
    );
    let (question, measure, expected) = (CaseQuestion::QuieterButton, CaseMeasure::OwnPresses, CaseExpected::More);
    let tries = Proposed::Change { question, label: None, words: vec![word], measure, expected };
    let tries = event(coach(tries).into());
    let to_try =
        event(ProposalAnswer { to: tries.id, reply: Reply::Accepted, text: None, by: None, rehearsed: None }.into());
    let asks = event(coach(Proposed::Question { about: Some(TalkAbout::Word { word }) }).into());
    let store = Store::open(dir).await.unwrap();
    store.append(vec![plan, yes, tries, to_try, asks]).await.unwrap();
    store.close().await.unwrap();
}

/// The demo home with a recording, so that there is something to listen for; the sound of a press that waits to be
/// judged; and a growl that is not long ago.
pub async fn prepared(dir: &Path) -> About {
    let (_, story) = story(dir).await;
    let who = animal(&story);
    let card = story.words_of(who)[0].clone();
    let store = Store::open(dir).await.unwrap();
    let heard = story.heard_presses().find(|f| f.part.by == PressedBy::Unknown).expect("a heard press");
    record(&store, &card, 0, heard.event.clone()).await;
    store.put_snippet(heard.id(), wav(&say(0, 0)), heard.event.recorded_at).await.unwrap();
    let probe = ProbeId(Uuid::now_v7());
    let planned = story.of::<ProbePlan>(who).next().expect("a check");
    let open = Event {
        id: EventId(Uuid::now_v7()),
        body: ProbePlan { probe, ..planned.part.clone() }.into(),
        ..planned.event.clone()
    };
    // A likes test of which nothing is answered yet.
    let (likes, rewards) = (AssessmentId(Uuid::now_v7()), story.rewards_of(who));
    let test = LikesTest {
        assessment: likes,
        format: LikesFormat::Paired,
        rewards: rewards.iter().take(4).map(|r| r.reward).collect(),
        rounds: 1,
        seed: 7,
    };
    let test = Event { id: EventId(Uuid::now_v7()), body: test.into(), ..open.clone() };
    store.append(vec![open, test]).await.unwrap();
    store.close().await.unwrap();
    growled(dir, std::iter::once(who), 3.0).await;
    talked(dir, who, card.word).await;
    let calm = story.animals().into_keys().find(|a| *a != who).expect("another animal");
    let sign = story.of::<Sign>(who).next().expect("a sign").id();
    let person = *story.people().keys().next().expect("a person");
    About { who, word: card.word, calm, probe, likes, reward: rewards[0].reward, person, sign }
}

/// Brings a table as a person does; gives the address of its preview.
async fn brought(browser: &Browser, server: &Server, table: &str) -> String {
    let dir = tempfile::tempdir().unwrap();
    let file = dir.path().join("diary.csv");
    std::fs::write(&file, table).unwrap();
    browser.goto(&server.url("/exchange")).await;
    browser.css("input[type=file]").await.send_keys(file.to_str().unwrap()).await.unwrap();
    browser.follow("main form button").await;
    browser.page.current_url().await.unwrap().path().to_owned()
}

/// Addresses of all pages.
pub async fn every_page(browser: &Browser, server: &Server, about: &About) -> Vec<String> {
    let About { who, word, calm, probe, likes, reward, person, sign } = about;
    let preview =
        brought(browser, server, "kind,happened_at,text\nremark,2026-03-01 10:00,rain\nremarc,2026-03-01,\n").await;
    let pages = [
        format!("/a/{who}/today"),
        format!("/a/{calm}/today"),
        format!("/a/{who}/board"),
        format!("/a/{who}/likes"),
        format!("/a/{who}/likes/new"),
        format!("/a/{who}/likes/test/{likes}"),
        format!("/a/{who}/words"),
        format!("/a/{who}/evidence"),
        format!("/a/{who}/evidence/{word}"),
        format!("/a/{who}/days"),
        format!("/a/{who}/others"),
        format!("/a/{who}/patterns"),
        format!("/a/{who}/log"),
        format!("/a/{who}/log/{sign}"),
        format!("/a/{who}/words/new"),
        format!("/a/{who}/words/card/{word}"),
        format!("/a/{who}/words/board"),
        format!("/a/{who}/words/record"),
        format!("/a/{who}/ideas"),
        format!("/people/animal/{who}/food"),
        format!("/a/{who}/checks"),
        format!("/a/{who}/scored"),
        format!("/a/{who}/checks/new"),
        format!("/a/{who}/checks/{probe}"),
        format!("/a/{who}/checks/{probe}/alone"),
        format!("/a/{who}/checks/{probe}/sheet"),
        format!("/a/{who}/swaps"),
        format!("/a/{who}/designs"),
        format!("/a/{who}/designs/new"),
        format!("/a/{who}/heard"),
        format!("/a/{who}/listen"),
        format!("/sheets/{who}/progress"),
        format!("/sheets/{who}/likes"),
        format!("/sheets/{who}/meeting"),
        "/sheets/rules".into(),
        "/sheets/labels".into(),
        "/sheets/kit".into(),
        "/record-kit".into(),
        "/learn".into(),
        "/learn/booklet".into(),
        "/rehearse".into(),
        "/rehearse/showing?character=wary&seed=5".into(),
        "/rehearse/stuck?character=old&seed=5".into(),
        "/rehearse/stuck/went?character=old&seed=5&acts=s0.9000_g0.12500".into(),
        "/rehearse/stuck/went?character=old&seed=5&acts=s0.9000_g0.12500&named=health".into(),
        "/rehearse/inviting/went?character=guards&seed=5&acts=s0.9000_g0.12500_o1.20000_a.22000_s1.24000_g1.25000_c.40000_b.40900".into(),
        "/homes".into(),
        "/people/home".into(),
        "/people/animal/new".into(),
        "/people/person/new".into(),
        format!("/people/person/{person}"),
        format!("/people/reward/{reward}"),
        "/people/rule/new".into(),
        format!("/people/animal/{who}"),
        "/people".into(),
        "/talk".into(),
        "/talk/own".into(),
        "/people/reward/new".into(),
        "/exchange".into(),
        "/exchange/columns".into(),
        "/linked".into(),
        preview,
        "/sheets".into(),
        "/agreement".into(),
        "/methods".into(),
        "/glossary".into(),
        "/methods/likes".into(),
        "/who".into(),
        "/offline".into(),
        "/api".into(),
    ];
    let lessons = lessons().iter().map(|lesson| format!("/learn/{}", lesson.id));
    let exercises = Exercise::ALL.into_iter().flat_map(|exercise| {
        let at = format!("/rehearse/{}", exercise.name());
        // With the word named that is stuck, where one is: what was true is told then.
        let acts = "o1.5000_s1.10500_g1.11300_s2.20000_i0.24000_n.30000_t.40000";
        [format!("{at}?character=guards&seed=5"), format!("{at}/went?character=quick&seed=5&named=health&acts={acts}")]
    });
    pages.into_iter().chain(lessons).chain(exercises).collect()
}
