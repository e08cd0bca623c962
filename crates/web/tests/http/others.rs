//! Others: how it went in other homes, beside an animal's own records.

use crate::web::{Web, noon};
use axum::body::Body;
use axum::http::{Request, StatusCode, header};
use sayso_advisor::others::{Beside, in_stage};
use sayso_advisor::summary::summaries;
use sayso_model::{AnimalId, Event, EventId, Language, Moment, Species, Story};
use sayso_norms::{Question, Release, TimedStage};
use sayso_notebook::CURRENT_NORMS;
use sayso_sim::{any_home, simulate};
use sayso_web::store::Store;
use serde_json::{Value, json};
use uuid::Uuid;

const INVENTED: &str = include_str!("../../../../tests/norms/invented.sayso-norms");

/// A notebook of a simulated dog, some of whose words are not pressed yet.
async fn home() -> (Web, AnimalId, Story) {
    let web = Web::this_machine().await;
    let mut home = any_home(3);
    home.days = 12;
    home.animals[0].species = Species::Dog;
    let events = simulate(&home, 3, noon()).unwrap().events;
    let store = Store::open(web.dir.path()).await.unwrap();
    store.append(events.clone()).await.unwrap();
    let story = Story::from_events(events);
    let animal = *story.animals().keys().next().unwrap();
    (web, animal, story)
}

fn keep(web: &Web, text: &str) {
    std::fs::write(web.dir.path().join(CURRENT_NORMS), text).unwrap();
}

async fn page(web: &Web, path: &str, language: Language) -> String {
    let request = Request::get(path)
        .header(header::HOST, "localhost:8080")
        .header(header::ACCEPT_LANGUAGE, language.tag())
        .body(Body::empty())
        .unwrap();
    let answer = web.send(request).await;
    assert_eq!(answer.status, StatusCode::OK, "{path}: {}", answer.text);
    answer.text
}

#[tokio::test]
async fn without_a_release_it_says_how_to_get_one() {
    let (web, animal, _) = home().await;
    let page = page(&web, &format!("/a/{animal}/others"), Language::En).await;
    assert!(page.contains("data-test=\"no-release\"") && page.contains("sayso norms import FILE --data"), "{page}");
    assert!(!page.contains("data-test=\"source\""));
}

#[tokio::test]
async fn it_lays_each_word_beside_those_of_others_with_interval_count_and_source() {
    let (web, animal, story) = home().await;
    keep(&web, INVENTED);
    let page = page(&web, &format!("/a/{animal}/others"), Language::En).await;
    let rows = summaries(&story, animal, noon());
    assert!(rows.len() > 1);
    assert_eq!(page.matches("data-test=\"others-word\"").count(), rows.len());
    let release = Release::read(INVENTED).unwrap();
    let (mut told, mut drawn) = (0, 0);
    for summary in &rows {
        let beside = sayso_advisor::others::beside(&release, Question::ShowingsToFirstPress, &summary.row);
        let Ok(beside) = beside else { continue };
        drawn += 1;
        let Some(value) = beside.curve.quantiles.p50.value.filter(|value| *value > 1.0) else { continue };
        let homes = beside.nearest.cell.households;
        assert!(page.contains(&format!("In {homes} homes with dogs")), "{page}");
        assert!(page.contains(&format!("within {value} showings (95% interval:")), "{page}");
        told += 1;
    }
    assert!(told > 0, "something is told");
    // A picture of each word, one of weeks, one of stages, and one of hours.
    assert_eq!(page.matches("<figure class=\"chart\"").count(), drawn + 3);
    let stages = page.split("data-test=\"stages\"").nth(1).unwrap().split("</section>").next().unwrap();
    for stage in TimedStage::ALL {
        let Beside { nearest, curve } = in_stage(&release, stage, &rows[0].row).unwrap();
        let told = match curve.quantiles.p50.value {
            Some(value) => format!("half of the words moved on from “{}” within {value} day", stage.name()),
            None => format!("fewer than half of the words moved on from “{}” in the time recorded", stage.name()),
        };
        let whose = format!("In {} homes with dogs", nearest.cell.households);
        assert!(stages.contains(&whose) && stages.contains(&told), "{whose}, {told}: {stages}");
    }
    assert!(stages.contains("(95% interval: ") && stages.contains("is the people’s choice"), "{stages}");
    let weeks = page.split("data-test=\"weeks\"").nth(1).unwrap().split("</section>").next().unwrap();
    let (nearest, shares) = sayso_advisor::others::by_week(&release, &rows[0].row).unwrap();
    assert!(weeks.contains(&format!("In {} homes with dogs", nearest.cell.households)), "{weeks}");
    let percent = |share: f64| format!("{:.0}%", 100.0 * share);
    for one in shares {
        let interval = format!("(95% interval: {} to {})", percent(one.some.low), percent(one.some.high));
        let told = format!("{} of words pressed at all {interval}", percent(one.some.share));
        let daily = format!("{} seven times or more", percent(one.daily.share));
        let homes = format!("from {} homes", one.households);
        assert!([told, daily, homes].iter().all(|told| weeks.contains(told)), "{one:?}: {weeks}");
    }
    assert!(weeks.contains("Pressing more is not meaning more"), "{weeks}");
    let (nearest, shares) = sayso_advisor::others::hours(&release, &rows[0].row).unwrap();
    let hours = page.split("data-test=\"hours\"").nth(1).unwrap();
    assert!(hours.contains(&format!("In {} homes with dogs", nearest.cell.households)), "{hours}");
    let most = shares.iter().max_by(|a, b| a.share.total_cmp(&b.share)).unwrap();
    let told = format!("lay {} (95% interval: {} to {})", percent(most.share), percent(most.low), percent(most.high));
    assert!(hours.contains(&told), "{told}: {hours}");
    assert!(hours.contains("no timetable for"), "{hours}");
    assert_eq!(page.matches("data-test=\"invented\"").count(), 1, "marked before anything is told");
    assert!(page.contains("Invented homes, made by a simulation") && page.contains("1 Mar 2026"), "{page}");
    assert!(page.contains("data-test=\"taking-part\""));
    let invited: u32 = rows.iter().map(|summary| summary.row.invited).sum();
    assert_eq!(page.contains("Not taking part is an answer."), invited > 0, "{invited} invitations");
    for word in ["slow", "rank", "percentile", "behind"] {
        assert!(!page.split("<main").nth(1).unwrap().contains(word), "{word}");
    }
}

#[tokio::test]
async fn hours_and_stages_are_not_told_of_too_few_nor_by_a_release_of_a_form_before() {
    let (web, animal, _) = home().await;
    let path = format!("/a/{animal}/others");
    let mut release = Release::read(INVENTED).unwrap();
    // Hours, and the one stage, of another species only.
    for cell in release.cells.iter_mut().filter(|cell| [Question::Hours, Question::DaysInShow].contains(&cell.question))
    {
        cell.species = Species::Cat;
    }
    keep(&web, &release.write().unwrap());
    let few = page(&web, &path, Language::En).await;
    let section =
        |name: &str| few.split(&format!("data-test=\"{name}\"")).nth(1).unwrap().split("</section>").next().unwrap();
    assert!(section("hours").contains("Not enough like yours") && !section("hours").contains("<svg"), "{few}");
    let stages = section("stages");
    assert!(stages.contains("“show”: not enough like yours") && stages.contains("from “invite”"), "{stages}");
    release.cells.retain(|cell| cell.question.since_form() < 4);
    release.form = 3;
    keep(&web, &release.write().unwrap());
    let before = page(&web, &path, Language::En).await;
    assert!(before.contains("data-test=\"stages\"") && !before.contains("data-test=\"weeks\""), "{before}");
    release.cells.retain(|cell| cell.question.since_form() < 3);
    release.form = 2;
    keep(&web, &release.write().unwrap());
    let before = page(&web, &path, Language::En).await;
    assert!(before.contains("data-test=\"hours\"") && !before.contains("data-test=\"stages\""), "{before}");
    release.cells.retain(|cell| cell.question.since_form() < 2);
    release.form = 1;
    keep(&web, &release.write().unwrap());
    assert!(!page(&web, &path, Language::En).await.contains("data-test=\"hours\""));
}

#[tokio::test]
async fn every_language_says_it() {
    let (web, animal, _) = home().await;
    keep(&web, INVENTED);
    for (language, said) in [
        (Language::De, "Haushalten mit Hunden"),
        (Language::Es, "hogares con perros"),
        (Language::Fr, "foyers avec des chiens"),
        (Language::Pt, "casas com cães"),
    ] {
        let page = page(&web, &format!("/a/{animal}/others"), language).await;
        assert!(page.contains(said), "{said}: {page}");
    }
}

#[tokio::test]
async fn a_words_evidence_has_one_line_and_today_one_only_where_it_helps() {
    let (web, animal, story) = home().await;
    let rows = summaries(&story, animal, noon());
    let evidence = |word: &sayso_model::WordId| format!("/a/{animal}/evidence/{word}");
    let line = "data-test=\"others\"";
    assert!(!page(&web, &evidence(&rows[0].word), Language::En).await.contains(line), "no release yet");
    keep(&web, INVENTED);
    assert_eq!(page(&web, &evidence(&rows[0].word), Language::En).await.matches(line).count(), 1);
    let release = Release::read(INVENTED).unwrap();
    let helps = sayso_advisor::others::usual(&release, &rows).is_some();
    let today = page(&web, &format!("/a/{animal}/today"), Language::En).await;
    assert_eq!(today.matches(line).count(), usize::from(helps), "{today}");
    let overview = page(&web, &format!("/a/{animal}/evidence"), Language::En).await;
    assert!(overview.contains(&format!("href=\"/a/{animal}/others\"")));
}

#[tokio::test]
async fn a_release_that_is_damaged_on_the_disk_is_told_and_another_one_counts_at_once() {
    let (web, animal, _) = home().await;
    let path = format!("/a/{animal}/others");
    keep(&web, &INVENTED[..INVENTED.len() / 2]);
    let told = page(&web, &path, Language::En).await;
    assert!(told.contains("data-test=\"damaged\"") && told.contains("Bring it in once more"), "{told}");
    keep(&web, INVENTED);
    assert!(page(&web, &path, Language::En).await.contains("data-test=\"source\""));
    keep(&web, &INVENTED.replace("Invented homes", "Other invented homes"));
    assert!(page(&web, &path, Language::En).await.contains("Other invented homes"));
    std::fs::remove_file(web.dir.path().join(CURRENT_NORMS)).unwrap();
    assert!(page(&web, &path, Language::En).await.contains("data-test=\"no-release\""));
}

#[tokio::test]
async fn too_few_homes_are_told_as_such() {
    let (web, animal, _) = home().await;
    let mut release = Release::read(INVENTED).unwrap();
    release.cells.clear();
    keep(&web, &release.write().unwrap());
    let page = page(&web, &format!("/a/{animal}/others"), Language::En).await;
    assert!(page.contains("data-test=\"not-enough\"") && !page.contains("<figure class=\"chart\""), "{page}");
}

/// One more word of an animal: its card, and showings twice a day for so many days.
fn shown(story: &Story, animal: AnimalId, says: &str, closing: bool, days: u32) -> Vec<Event> {
    let pattern = story.ledger().all().find(|e| e.animal == Some(animal)).unwrap().clone();
    let event = |at: Moment, body: Value| Event {
        id: EventId(Uuid::now_v7()),
        happened_at: at,
        recorded_at: at,
        body: serde_json::from_value(body).unwrap(),
        ..pattern.clone()
    };
    let word = Uuid::now_v7();
    let card = json!({ "kind": "word_card", "word": word, "says": says, "answer": "So.", "not_now": "Later.", "closing": closing });
    let mut all = vec![Event { animal: None, ..event(noon().plus_seconds(-86_400.0 * f64::from(days + 1)), card) }];
    for nth in 0..2 * days {
        let at = noon().plus_seconds(-43_200.0 * f64::from(nth + 1));
        let press = event(at, json!({ "kind": "press", "word": word, "by": "person" }));
        let given = json!({ "kind": "delivery", "answers": press.id, "word": word, "answer": "given" });
        all.extend([event(at.plus_seconds(2.0), given), press]);
    }
    all
}

#[tokio::test]
async fn beside_a_long_wait_stands_what_it_does_not_mean_and_a_closing_word_is_laid_beside_no_other_kind() {
    let (web, animal, story) = home().await;
    keep(&web, INVENTED);
    let path = format!("/a/{animal}/others");
    let before = page(&web, &path, Language::En).await;
    assert!(!before.contains("data-test=\"closing-words\""), "{before}");
    let late = |page: &str| page.matches("data-test=\"late\"").count();
    let rows = summaries(&story, animal, noon());
    assert!(late(&before) < rows.len(), "not beside every word: {before}");
    let store = Store::open(web.dir.path()).await.unwrap();
    store.append(shown(&story, animal, "tug", false, 60)).await.unwrap();
    store.append(shown(&story, animal, "all done", true, 60)).await.unwrap();
    for language in Language::ALL {
        let page = page(&web, &path, language).await;
        let (words, closing) = page.split_once("data-test=\"closing-words\"").unwrap();
        let closing = closing.split("</section>").next().unwrap();
        assert!(words.contains("tug") && !words.contains("all done"), "{page}");
        assert_eq!(late(words), late(&before) + 1, "{page}");
        assert!(closing.contains("all done") && closing.contains("data-test=\"not-enough\""), "{closing}");
        assert!(late(closing) == 0 && !closing.contains("<svg"), "{closing}");
    }
    let page = page(&web, &path, Language::En).await;
    assert!(page.contains("It is learned otherwise than a word that brings something"), "{page}");
    assert!(page.contains("Where other signs are there too, ask a veterinarian"), "{page}");
}
