//! Today: one next thing, a button for each advice, figures that do not mislead, one form of clock.

mod figures;

use crate::at_home::Home;
use sayso_advisor::Case;
use sayso_advisor::steps::Step;
use sayso_advisor::today::{Next, today};
use sayso_model::facts::{Lesson, Occasion, lessons_for};
use sayso_model::{AnimalId, Body, Event, EventId, HomeId, Moment, Note, Sign, SignLevel, Stage, StageChoice, When};
use sayso_wording::{Locale, advice};
use serde_json::{Value, json};

fn noon() -> Moment {
    "2026-03-02T12:00:00Z".parse().unwrap()
}

/// The demo home up to so many days ago, its animals and words.
async fn demo(days_ago: f64) -> (Home, Vec<(AnimalId, Vec<String>)>) {
    let home = Home::empty().await;
    let until = noon().plus_seconds(-days_ago * 86_400.0);
    let events: Vec<Event> = sayso_sim::demo(1, noon()).events.into_iter().filter(|e| e.happened_at <= until).collect();
    for batch in events.chunks(1000) {
        home.state.store.append(batch.to_vec()).await.unwrap();
    }
    let id: HomeId = home.state.store.home().await.unwrap().unwrap();
    let story = home.state.store.story(id).await.unwrap();
    let words = |animal| story.words_of(animal).iter().map(|w| w.word.to_string()).collect();
    let animals = story.animals().into_keys().map(|animal| (animal, words(animal))).collect();
    (home, animals)
}

/// What stands between tags, as it is read.
fn read(html: &str) -> String {
    let mut out = String::new();
    for part in html.split('<') {
        out.push_str(part.split_once('>').map_or("", |(_, text)| text));
        out.push(' ');
    }
    out.replace(['\u{2068}', '\u{2069}'], "").replace("&amp;", "&")
}

#[tokio::test]
async fn recording_that_was_left_for_later_keeps_a_line_on_today() {
    let home = Home::new().await;
    let record = format!("/a/{}/words/record", home.animal);
    let line = |page: &str| page.split_once("data-test=\"open-step\"").map(|(_, rest)| rest.contains(&record));
    let today = format!("/a/{}/today", home.animal);
    assert_eq!(line(&home.page(&today).await.text), None, "the way there has its own list");
    let (sample, animals) = demo(0.0).await;
    let (animal, _) = &animals[0];
    let clips = sample.story().await.clips().values().filter(|c| c.active).count();
    let page = sample.page(&format!("/a/{animal}/today")).await;
    assert_eq!(page.text.contains(&format!("/a/{animal}/words/record\"")), clips == 0, "{clips} recordings");
}

#[tokio::test]
async fn a_new_notebook_has_seven_steps_and_one_next_thing() {
    let home = Home::new().await;
    let today = format!("/a/{}/today", home.animal);
    let page = home.page(&today).await;
    let (before, steps) = page.text.split_once("<ol class=\"steps\">").expect("the steps stand on Today");
    let (steps, _) = steps.split_once("</ol>").unwrap();
    let links: Vec<&str> = steps.split("href=\"").skip(1).filter_map(|s| s.split('"').next()).collect();
    assert_eq!(links.len(), 7, "{links:?}");
    for link in &links {
        home.page(link).await;
    }
    assert_eq!(page.text.matches("class=\"button primary").count(), 1, "one next thing: {}", page.text);
    let next = before.rsplit("href=\"").next().and_then(|s| s.split('"').next()).unwrap();
    assert_eq!(next, links[0], "the next thing is the first step that is not done");
    assert_eq!(page.text.matches("much food").count(), 1, "the food is told once: {}", page.text);
    page.says("How much food may").does_not_say("no weight of");
    // The step done, the next one stands there.
    home.post(next, &[("weight_kg", "12"), ("life_stage", "neutered_adult")]).await.kept();
    let page = home.page(&today).await;
    let (before, _) = page.text.split_once("<ol class=\"steps\">").unwrap();
    assert!(before.contains(&format!("href=\"{}\"", links[1])), "{before}");
}

#[tokio::test]
async fn every_advice_on_today_has_one_button_or_is_for_elsewhere() {
    let (home, animals) = demo(0.0).await;
    let mut seen = 0;
    for (animal, words) in &animals {
        let page = home.page(&format!("/a/{animal}/today")).await;
        let main = page.text.split_once("<main").unwrap().1;
        assert_eq!(main.matches("data-test=\"next\"").count(), 1);
        // Each block ends where the next one begins.
        let marks = [
            "<section class=\"card advice\" data-test=\"next\"",
            "<details class=\"word\"",
            "<details data-test=\"later-advice\"",
            "<section data-test=",
        ];
        let mut at: Vec<usize> = marks.iter().flat_map(|m| main.match_indices(m).map(|(i, _)| i)).collect();
        at.sort_unstable();
        at.push(main.len());
        for pair in at.windows(2) {
            let block = &main[pair[0]..pair[1]];
            if block.starts_with("<section data-test=") {
                continue;
            }
            let buttons = block.matches("data-test=\"do\"").count();
            // What a veterinarian looks at is done away from the notebook.
            let elsewhere = block.contains("veterinarian");
            assert!(buttons == 1 || (buttons == 0 && elsewhere), "{buttons} buttons: {}", read(block));
            seen += 1;
        }
        assert_eq!(main.matches("data-test=\"step\"").count(), words.len(), "a step a word");
    }
    assert!(seen > 7, "{seen}");
}

#[tokio::test]
async fn what_also_holds_is_told_in_facts_and_never_as_a_second_thing_to_do() {
    let (home, animals) = demo(0.0).await;
    let story = home.state.store.story(home.state.store.home().await.unwrap().unwrap()).await.unwrap();
    let mut facts = 0;
    for (animal, _) in animals {
        let name = story.animals()[&animal].name.to_string();
        let page = home.page(&format!("/a/{animal}/today")).await.text;
        let lists: Vec<&str> =
            page.split("data-test=\"also\">").skip(1).filter_map(|s| s.split("</ul>").next()).collect();
        facts += lists.iter().map(|list| list.matches("<li>").count()).sum::<usize>();
        for step in today(&Case::new(&story, animal, noon())).unwrap().steps {
            for other in &step.also {
                let act = advice::act(&Locale::ENGLISH, &name, &other.act);
                let said = lists.iter().any(|list| read(list).contains(&act));
                assert!(!said, "{name}, {}: {act}", step.word.says);
            }
        }
    }
    assert!(facts > 3, "{facts} facts");
}

#[tokio::test]
async fn a_word_that_needs_something_is_never_folded_away() {
    let (mut needy, mut folded) = (0, 0);
    for days_ago in [0.0, 20.0, 40.0] {
        let (home, animals) = demo(days_ago).await;
        let first = home.state.store.home().await.unwrap().unwrap();
        for growl in [false, true] {
            for (animal, _) in &animals {
                if growl {
                    let story = home.state.store.story(first).await.unwrap();
                    let pattern = story.ledger().all().next().unwrap().clone();
                    let sign = Sign {
                        sign: Note::new("growl").unwrap(),
                        level: SignLevel::Strong,
                        when: When::During,
                        session: None,
                    };
                    let growled = Event {
                        id: EventId(uuid::Uuid::now_v7()),
                        animal: Some(*animal),
                        happened_at: noon().plus_seconds(-4.0 * 86_400.0),
                        body: sign.into(),
                        ..pattern
                    };
                    home.state.store.append(vec![growled]).await.unwrap();
                }
                let story = home.state.store.story(first).await.unwrap();
                let page = home.page(&format!("/a/{animal}/today")).await.text;
                let hidden = page.split_once("data-test=\"more-words\"").map_or("", |(_, rest)| rest);
                folded += usize::from(!hidden.is_empty());
                for step in today(&Case::new(&story, *animal, noon())).unwrap().steps {
                    let needs = matches!(step.step, Step::Avoided | Step::SetUp | Step::Mend | Step::StepBack);
                    let row = format!("<strong>{}</strong>", step.word.says);
                    assert!(!(needs && hidden.contains(&row)), "{} is folded away: {:?}", step.word.says, step.step);
                    needy += usize::from(needs);
                }
            }
        }
    }
    assert!(needy > 3 && folded > 0, "{needy} words need something, {folded} folds");
}

#[tokio::test]
async fn a_word_stepped_back_says_why_in_its_row_with_the_figure_behind_the_tap() {
    let (home, animals) = demo(0.0).await;
    let first = home.state.store.home().await.unwrap().unwrap();
    let story = home.state.store.story(first).await.unwrap();
    let pattern = story.ledger().all().next().unwrap().clone();
    let mut events = Vec::new();
    for (animal, _) in &animals {
        let found = today(&Case::new(&story, *animal, noon())).unwrap();
        // People moved on every word that is only shown yet.
        for step in found.steps.iter().filter(|s| s.figures_say == Stage::Show && !s.closing) {
            let choice = StageChoice { word: step.word.word, stage: Stage::Invite, because: None };
            let id = EventId(uuid::Uuid::now_v7());
            let (animal, at) = (Some(*animal), noon().plus_seconds(-60.0));
            events.push(Event { id, animal, happened_at: at, recorded_at: at, body: choice.into(), ..pattern.clone() });
        }
    }
    home.state.store.append(events).await.unwrap();
    let story = home.state.store.story(first).await.unwrap();
    let mut told = 0;
    for (animal, _) in animals {
        let page = home.page(&format!("/a/{animal}/today")).await.text;
        for step in today(&Case::new(&story, animal, noon())).unwrap().steps {
            let (_, row) = page.split_once(&format!("<strong>{}</strong>", step.word.says)).unwrap();
            let (open, behind) = row.split_once("</summary>").unwrap();
            let (behind, _) = behind.split_once("</details>").unwrap();
            let why = advice::back_because(&Locale::ENGLISH, &step.advice);
            assert_eq!(why.is_some(), step.step == Step::StepBack, "{step:?}");
            assert_eq!(open.matches("data-test=\"back-because\"").count(), usize::from(why.is_some()));
            let Some(why) = why else { continue };
            assert!(open.contains(&format!(">{why}<")) && !why.contains(|c: char| c.is_ascii_digit()), "{open}");
            let name = story.animals()[&animal].name.to_string();
            let figure = advice::because(&Locale::ENGLISH, &name, &step.advice.because[0].fact);
            assert!(read(behind).contains(&figure) && figure.contains(|c: char| c.is_ascii_digit()), "{behind}");
            told += 1;
        }
    }
    assert!(told > 0, "the demo has a word that people moved on too early");
}

#[tokio::test]
async fn after_a_session_it_is_told_and_nothing_urges_another() {
    let (home, animals) = demo(0.0).await;
    let first = home.state.store.home().await.unwrap().unwrap();
    let pattern = home.state.store.story(first).await.unwrap().ledger().all().next().unwrap().clone();
    // One that was over an hour ago.
    for (animal, _) in &animals {
        let session = uuid::Uuid::now_v7();
        let of = |body: serde_json::Value, minutes: f64| Event {
            id: EventId(uuid::Uuid::now_v7()),
            animal: Some(*animal),
            happened_at: noon().plus_seconds(-60.0 * minutes),
            body: serde_json::from_value(body).unwrap(),
            ..pattern.clone()
        };
        let begins =
            serde_json::json!({ "kind": "session_start", "session": session, "purpose": "showing", "words": [] });
        let ends = serde_json::json!({ "kind": "session_end", "session": session, "reason": "done" });
        home.state.store.append(vec![of(begins, 63.0), of(ends, 60.0)]).await.unwrap();
    }
    let story = home.state.store.story(first).await.unwrap();
    let (mut paused, mut answering) = (0, 0);
    for (animal, _) in animals {
        let found = today(&Case::new(&story, animal, noon())).unwrap();
        let page = home.page(&format!("/a/{animal}/today")).await.text;
        let (_, next) = page.split_once("data-test=\"next\"").unwrap();
        let (next, _) = next.split_once("</section>").unwrap();
        let Some(held) = found.held else {
            assert!(!next.contains("data-test=\"held\""));
            continue;
        };
        let shown = match held.showings {
            0 => "no showing".to_owned(),
            1 => "one showing".to_owned(),
            more => format!("{more} showings"),
        };
        assert!(read(next).contains(" over at ") && read(next).contains(&shown), "{}", read(next));
        if let Next::Pause { plan, .. } = &found.next {
            assert!(!next.contains("primary") && !read(next).contains("at most"), "{}", read(next));
            assert!(read(next).contains("Rest until ") || read(next).contains("Nothing more is needed today"));
            if plan.words.iter().any(|word| word.invitations > 0) {
                // What is left to do is to answer: the lesson is about that.
                let fits = |lesson: &Lesson| page.contains(&format!("href=\"/learn/{}?animal={animal}\"", lesson.id));
                assert!(lessons_for(Occasion::Answering).any(fits), "{}", read(&page));
                answering += 1;
            }
            paused += 1;
        }
    }
    assert!(paused > 0 && answering > 0, "an hour after a session another one waits: {paused}, {answering}");
}

/// What was noted is named in the open with whom to ask, on the day itself too, and on the Board where hands act.
#[tokio::test]
async fn a_growl_is_named_in_the_line_that_it_leads_to() {
    let home = Home::new().await;
    let first = home.story().await.ledger().all().next().unwrap().clone();
    let sign = Sign { sign: Note::new("growl").unwrap(), level: SignLevel::Strong, when: When::During, session: None };
    let growl = Event {
        id: EventId(uuid::Uuid::now_v7()),
        animal: Some(home.animal),
        happened_at: noon().plus_seconds(-3_600.0),
        body: sign.into(),
        ..first
    };
    home.state.store.append(vec![growl]).await.unwrap();
    let page = home.page(&format!("/a/{}/today", home.animal)).await.text;
    let (_, line) = page.split_once("<section class=\"stop advice\"").expect("a line on welfare");
    let (open, _) = line.split_once("<details").unwrap();
    let open = read(open);
    assert!(open.contains("One growl, snap or bite in 28 days: “growl”, Mon 2 Mar"), "{open}");
    assert!(open.contains("veterinarian") && open.contains("behaviour professional"), "{open}");
    // No line says that there was none of something.
    assert!(!read(&page).contains(" 0 today"), "{}", read(&page));
}

#[tokio::test]
async fn words_that_sound_alike_are_told_where_the_next_step_is_chosen() {
    let home = Home::new().await;
    for says in ["walk", "talk", "biscuit"] {
        home.post(&format!("/a/{}/words/new", home.animal), &[("says", says)]).await.kept();
    }
    let page = home.page(&format!("/a/{}/today", home.animal)).await.text;
    let rows: Vec<&str> = page.split("<details class=\"word\"").skip(1).collect();
    let told = |says: &str, other: &str| {
        let row = rows.iter().find(|r| r.contains(&format!("<strong>{says}</strong>"))).expect("a row a word");
        row.contains(&format!("“{says}” sounds much like “{other}”"))
    };
    assert!(rows.len() == 3 && told("walk", "talk") && told("talk", "walk"), "{}", read(&page));
    assert_eq!(page.matches("data-test=\"alike\"").count(), 2, "{}", read(&page));
}

#[tokio::test]
async fn a_word_that_is_to_be_another_first_is_not_planned_to_be_shown() {
    let home = Home::new().await;
    let reward = home.reward("play", "rope", &[]).await;
    for says in ["walk", "talk"] {
        let card = [("says", says), ("reward", &reward), ("answer", "Give it")];
        home.post(&format!("/a/{}/words/new", home.animal), &card).await.kept();
    }
    let page = home.page(&format!("/a/{}/today", home.animal)).await.text;
    let (_, plan) = page.split_once("data-test=\"next\"").expect("the one next thing");
    let plan = read(plan.split_once("</section>").unwrap().0);
    assert!(plan.contains("“walk”") && !plan.contains("“talk”"), "{plan}");
    assert!(page.contains("/board#show\""), "the Board opens for it");
    let row = |says: &str| {
        let mut rows = page.split("<details class=\"word\"").skip(1);
        read(rows.find(|r| r.contains(&format!("<strong>{says}</strong>"))).expect("a row a word"))
    };
    assert!(row("talk").contains("Record another word for “talk”"), "{}", row("talk"));
    assert!(row("talk").contains("choose another word first"), "{}", row("talk"));
    assert!(row("walk").contains("sounds much like “talk”") && !row("walk").contains("first"), "{}", row("walk"));
    let board = home.page(&format!("/api/board/{}", home.animal)).await.text;
    let board: serde_json::Value = serde_json::from_str(&board).unwrap();
    let story = home.story().await;
    let words = story.words();
    let walk = words.values().find(|w| w.says.as_str() == "walk").unwrap().word.to_string();
    let planned: Vec<&str> = board["plan"].as_array().unwrap().iter().filter_map(|p| p["word"].as_str()).collect();
    assert_eq!(planned, [walk], "the Board agrees");
}

#[tokio::test]
async fn every_page_writes_times_by_the_clock_of_who_reads() {
    let home = Home::new().await;
    let reward = home.reward("play", "rope", &[]).await;
    home.post(&format!("/a/{}/words/new", home.animal), &[("says", "tug"), ("reward", &reward)]).await.kept();
    let story = home.story().await;
    let person = *story.people().keys().next().unwrap();
    let now = noon().plus_seconds(2.0 * 3600.0);
    let pattern = story.ledger().all().next().unwrap();
    // At 15:00 where they live, and later today, which Today tells.
    let note = sayso_model::Remark { text: sayso_model::Note::new("It rained").unwrap() };
    let event = Event {
        id: sayso_model::EventId(uuid::Uuid::now_v7()),
        animal: Some(home.animal),
        happened_at: now,
        recorded_at: noon(),
        body: note.into(),
        ..pattern.clone()
    };
    home.state.store.append(vec![event]).await.unwrap();
    for (clock, says, not) in [("12", "3:00", "15:00"), ("24", "15:00", "3:00:00\u{202f}pm")] {
        home.post(
            &format!("/people/person/{person}"),
            &[("name", "Robin"), ("role", "home"), ("active", "yes"), ("clock", clock)],
        )
        .await
        .kept();
        for page in ["today", "log"] {
            home.page(&format!("/a/{}/{page}", home.animal)).await.says(says).does_not_say(not);
        }
    }
}

#[tokio::test]
async fn while_a_session_runs_today_leads_to_it_and_tells_what_brought_nothing_after_it() {
    let (home, animals) = demo(0.0).await;
    let (animal, words) = &animals[0];
    let id = home.state.store.home().await.unwrap().unwrap();
    let pattern =
        home.state.store.story(id).await.unwrap().ledger().all().find(|e| e.animal.is_some()).unwrap().clone();
    let session = uuid::Uuid::now_v7().to_string();
    let event = |minutes: f64, body: Value| {
        let body: Body = serde_json::from_value(body).unwrap();
        let at = noon().plus_seconds(-60.0 * minutes);
        let (id, animal) = (EventId(uuid::Uuid::now_v7()), Some(*animal));
        Event { id, animal, happened_at: at, recorded_at: at, body, ..pattern.clone() }
    };
    let start = json!({ "kind": "session_start", "session": session, "purpose": "showing" });
    let press = json!({ "kind": "press", "word": words[0], "by": "person", "accident": "no", "session": session });
    home.state.store.append(vec![event(9.0, start), event(8.0, press)]).await.unwrap();
    let to = format!("/a/{animal}/today");
    home.page(&to).await.says("A session is running, since 11:51").says("To the board").does_not_say("min at most");
    let end = json!({ "kind": "session_end", "session": session, "reason": "done" });
    home.state.store.append(vec![event(1.0, end)]).await.unwrap();
    home.page(&to).await.does_not_say("A session is running").says("showings, one press without its thing");
}

#[tokio::test]
async fn what_concerns_its_wellbeing_is_one_card_that_says_what_to_do_now() {
    let home = Home::new().await;
    let first = home.story().await.ledger().all().next().unwrap().clone();
    let seen = |n: u128, hours_ago: f64, sign: &str, level| Event {
        id: EventId(uuid::Uuid::from_u128(0x0195_a0a0_0000_7000_8000_0000_0000_0000 + n)),
        animal: Some(home.animal),
        happened_at: noon().plus_seconds(-hours_ago * 3600.0),
        body: Sign { sign: Note::new(sign).unwrap(), level, when: When::During, session: None }.into(),
        ..first.clone()
    };
    let events = vec![
        seen(1, 1.0, "growl", SignLevel::Strong),
        seen(2, 30.0, "guards food, a thing or the button", SignLevel::Mild),
        seen(3, 54.0, "swallowed something that is no food", SignLevel::Mild),
    ];
    home.state.store.append(events).await.unwrap();
    let page = home.page(&format!("/a/{}/today", home.animal)).await;
    let count = |what: &str| page.text.matches(what).count();
    assert_eq!((count("data-topic=\"Welfare\""), count("class=\"stop")), (1, 1), "{}", page.text);
    // What to do now comes first; that there is no session stands once, beside why behind the tap.
    let at = |what: &str| page.text.find(what).unwrap_or_else(|| panic!("{what}: {}", page.text));
    assert!(
        at("No session for now.") < at("Take nothing from Pip.")
            && at("No session for now.") < at("if none has seen Pip since")
    );
    let (open, _) = page.text.split_once("Why?").unwrap();
    assert_eq!(open.matches("No session for now").count(), 1);
    page.says("Call a veterinarian at once if Pip is unwell")
        .does_not_say("Call a veterinarian at once, whatever")
        .does_not_say("Call a veterinarian now");
}
