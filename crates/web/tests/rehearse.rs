//! Rehearse: every answer follows from its address, and nothing of it is in the notebook.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod at_home;

use at_home::Home;
use axum::http::StatusCode;
use sayso_model::Language;
use sayso_sim::rehearsal::{Act, Character, Does, Exercise, Thing, written};
use sayso_wording::{Locale, say};
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};

/// A press of one word after the other every nine seconds, each thing so long after its press.
fn teaching(delay_ms: u32, most_ms: u32) -> Vec<Act> {
    (1..most_ms / 9_000)
        .flat_map(|i| {
            let (at_ms, thing) = (i * 9_000, Thing::ALL[i as usize % 3]);
            [Act { at_ms, does: Does::Show(thing) }, Act { at_ms: at_ms + delay_ms, does: Does::Give(thing) }]
        })
        .collect()
}

fn went(exercise: Exercise, character: Character, seed: u32, acts: &[Act]) -> String {
    format!("/rehearse/{}/went?character={}&seed={seed}&acts={}", exercise.name(), character.name(), written(acts))
}

#[tokio::test]
async fn every_exercise_is_offered_with_everyone_and_says_that_it_is_a_simulation() {
    let home = Home::new().await;
    home.page("/learn").await.says("href=\"/rehearse\"");
    home.page("/learn/showing").await.says("href=\"/rehearse/showing\"").says("Rehearse it: Press, say, give");
    home.page("/learn/stuck").await.says("href=\"/rehearse/stuck\"");
    home.page("/learn/recording").await.does_not_say("Rehearse it");
    // Before the buttons arrive Today leads there too.
    home.page(&format!("/a/{}/today", home.animal)).await.says("href=\"/rehearse/likes\"");
    let list = home.page("/rehearse").await;
    list.says("A simulation: real animals differ.").says("href=\"/methods/rehearsal\"");
    home.page("/methods/rehearsal").await.says("not evidence");
    for exercise in Exercise::ALL {
        let name = exercise.name();
        list.says(&format!("action=\"/rehearse/{name}\""));
        let led = home.get(&format!("/rehearse/{name}?character=wary")).await;
        assert!(led.kept().to.starts_with(&format!("/rehearse/{name}?character=wary&seed=")), "{}", led.to);
        for character in Character::ALL {
            list.says(&format!("<option value=\"{}\"", character.name()));
            let page = home.page(&format!("/rehearse/{name}?character={}&seed=5", character.name())).await;
            page.says("A simulation: real animals differ.").says("role=\"log\"").says("data-test=\"lessons-for\"");
            page.says(&say!(&Locale::ENGLISH, rehearse::character, who = character.name()));
            let (pads, acts) = if exercise == Exercise::Likes { (0, 6) } else { (4, 8) };
            assert_eq!(
                (page.text.matches("data-word=").count(), page.text.matches("data-does=").count()),
                (pads, acts)
            );
        }
    }
}

#[tokio::test]
async fn what_is_no_rehearsal_is_refused_by_name() {
    let home = Home::new().await;
    assert_eq!(home.get("/rehearse/juggling").await.status, StatusCode::NOT_FOUND);
    assert_eq!(home.get("/rehearse/juggling/moments?seed=1").await.status, StatusCode::NOT_FOUND);
    for (query, named) in [
        ("seed=x", "seed"),
        ("seed=-1", "seed"),
        ("", "seed"),
        ("seed=4294967296", "seed"),
        ("seed=1&character=dragon", "character"),
        ("seed=1&acts=s9.1", "acts"),
        ("seed=1&acts=w.200_w.100", "acts"),
        ("seed=1&acts=w.999999", "acts"),
        ("seed=1&named=bad-temper", "named"),
    ] {
        for page in ["moments", "went"].into_iter().filter(|page| named != "named" || *page == "went") {
            let answer = home.get(&format!("/rehearse/showing/{page}?{query}")).await;
            assert!(answer.refused().text.to_lowercase().contains(named), "{named} in {}", answer.text);
        }
    }
    let many = vec!["w.1"; 401].join("_");
    home.get(&format!("/rehearse/showing/moments?seed=1&acts={many}")).await.refused();
    for page in ["", "/moments", "/went"] {
        let sent = home.post(&format!("/rehearse/showing{page}?seed=1"), &[]).await;
        assert_eq!(sent.status, StatusCode::METHOD_NOT_ALLOWED, "nothing is written here");
    }
}

#[tokio::test]
async fn the_same_address_gives_the_same_rehearsal_and_the_log_stays_as_it_was() {
    let home = Home::new().await;
    let before = home.state.store.revision().await.unwrap();
    for exercise in Exercise::ALL {
        let acts = teaching(1_200, exercise.most_ms());
        let path = |page: &str| {
            format!("/rehearse/{}/{page}?character=quick&seed=77&acts={}", exercise.name(), written(&acts))
        };
        let first = home.get(&path("moments")).await;
        assert_eq!(first.status, StatusCode::OK, "{}", first.text);
        assert_eq!(first.text, home.get(&path("moments")).await.text);
        let told: Value = serde_json::from_str(&first.text).unwrap();
        let mine = told["told"].as_array().unwrap().iter().filter(|m| m["mine"] == true).count();
        assert!(mine > 0 && told["motions"].as_array().unwrap().iter().all(|m| m.as_array().unwrap().len() == 6));
        assert!(told["told"].as_array().unwrap().iter().all(|m| m["says"].as_str().unwrap().len() > 3));
        // What holds a word up is told once something was named.
        let went = path("went") + if exercise == Exercise::Stuck { "&named=health" } else { "" };
        let page = home.page(&went).await;
        assert_eq!(page.text, home.page(&went).await.text);
        page.says("One thing for next time").says("How you taught").says("What was true").says("data-test=\"line\"");
        page.says("A simulation: real animals differ.").says(if exercise == Exercise::Likes {
            "likes, most first"
        } else {
            "had everything come as soon as can be, at most a second sooner"
        });
    }
    assert_eq!(home.state.store.revision().await.unwrap(), before, "no event was written");
}

#[tokio::test]
async fn what_to_change_follows_from_what_was_done() {
    let home = Home::new().await;
    let change = |text: &str| {
        let (_, after) = text.split_once("data-change=\"").unwrap();
        after.split_once('"').unwrap().0.to_owned()
    };
    let slow = home.page(&went(Exercise::Showing, Character::Eager, 3, &teaching(3_000, 110_000))).await;
    assert_eq!(change(&slow.text), "sooner");
    slow.says("From press to thing: 3.0 s").says("Aim for 2 s at most");
    let soon = home.page(&went(Exercise::Showing, Character::Eager, 3, &teaching(700, 110_000))).await;
    assert_ne!(change(&soon.text), "sooner");
    // Barred when it wants to go, and called after.
    let barring: Vec<Act> =
        (10..80).map(|i| Act { at_ms: i * 1_000, does: if i % 2 == 0 { Does::Block } else { Does::Call } }).collect();
    let barred = home.page(&went(Exercise::Leaving, Character::Wary, 4, &barring)).await;
    assert_eq!(change(&barred.text), "step-away");
    barred.says("data-test=\"care-strong\"").says("veterinarian");
    let early: Vec<Act> =
        [Act { at_ms: 10_000, does: Does::Offer(Thing::Treat) }, Act { at_ms: 11_000, does: Does::Again }].into();
    let seeds = 0..40;
    let mut waits = 0;
    for seed in seeds {
        let page = home.page(&went(Exercise::Inviting, Character::Old, seed, &early)).await;
        waits += usize::from(change(&page.text) == "wait");
    }
    assert!(waits > 20, "an old dog hardly presses within a second: {waits}");
    home.page(&went(Exercise::Showing, Character::Guards, 3, &[])).await.says("take nothing from the mouth");
}

/// The cause is in nothing that is seen before something was named: not the address, not the page, not what is told of the future but
/// as the animal lives it.
#[tokio::test]
async fn what_holds_a_word_up_is_told_once_something_was_named_and_with_what_the_notebook_would_have_said() {
    let home = Home::new().await;
    let before = home.state.store.revision().await.unwrap();
    let acts: Vec<Act> = (0..12)
        .flat_map(|i| {
            let (at_ms, thing) = (2_000 + i * 14_000, Thing::ALL[i as usize % 4]);
            [Act { at_ms, does: Does::Show(thing) }, Act { at_ms: at_ms + 600, does: Does::Give(thing) }]
        })
        .collect();
    let (mut hit, mut first) = (0, 0);
    for seed in 0..12 {
        let stage = home.page(&format!("/rehearse/stuck?character=eager&seed={seed}")).await;
        stage.says("data-test=\"about\"").says("shown in the last three weeks");
        assert_eq!(stage.text.matches("pad planned").count(), 1, "the word is marked");
        let path = went(Exercise::Stuck, Character::Eager, seed, &acts);
        let asked = home.page(&path).await;
        asked.says("data-test=\"question\"").does_not_say("data-cause").does_not_say("What was true");
        assert_eq!(asked.text.matches("name=\"named\"").count(), 6);
        let told = home.page(&format!("{path}&named=too-late")).await;
        let after = |mark: &str| {
            let (_, after) = told.text.split_once(mark).unwrap();
            after.split_once('"').unwrap().0.to_owned()
        };
        let cause = after("data-test=\"held-up\" data-cause=\"");
        assert_eq!(after("data-hit=\"") == "yes", cause == "too-late");
        hit += u32::from(cause == "too-late");
        // What the records speak for stands first; with six weeks of them it is mostly the truth.
        let (_, notebook) = told.text.split_once("data-test=\"notebook\"").unwrap();
        first += u32::from(notebook.split_once("data-cause=\"").unwrap().1.starts_with(&cause));
        told.says("What the notebook would have said").says("How you taught").says("What was true");
        if cause == "health" {
            told.says("veterinarian");
        }
        assert_eq!(told.text, home.page(&format!("{path}&named=too-late")).await.text);
    }
    assert!(hit < 8 && first >= 6, "{hit} {first}");
    assert_eq!(home.state.store.revision().await.unwrap(), before, "no event was written");
}

#[tokio::test]
async fn of_nothing_done_the_page_says_so_and_the_advice_leads_to_its_own_lesson() {
    let home = Home::new().await;
    let end = [Act { at_ms: 15_000, does: Does::End }];
    // In an evening it asks by itself, and a press without an answer is something to say.
    home.page(&went(Exercise::Evening, Character::Old, 3, &end)).await.says("data-change=\"answer\"");
    for exercise in [Exercise::Showing, Exercise::Inviting, Exercise::Likes, Exercise::Free] {
        let page = home.page(&went(exercise, Character::Old, 3, &end)).await;
        page.says("data-change=\"too-soon\"")
            .says("Too little happened to say anything")
            .does_not_say("Carry on like this");
    }
    home.page(&went(Exercise::Showing, Character::Old, 3, &end)).await.says("Things given");
    let slow = home.page(&went(Exercise::Showing, Character::Eager, 3, &teaching(3_000, 110_000))).await;
    slow.says("data-test=\"lesson-next\"").says("href=\"/learn/showing\"").says("this alone would have brought");
    let barring: Vec<Act> = (1..60).map(|i| Act { at_ms: i * 1_000, does: Does::Block }).collect();
    let barred = home.page(&went(Exercise::Leaving, Character::Wary, 4, &barring)).await;
    barred.says("href=\"/learn/body\"").does_not_say("this alone would have brought");
}

#[tokio::test]
async fn who_has_gone_shows_that_it_was_called_and_barred() {
    let home = Home::new().await;
    let acts = [
        Act { at_ms: 2_000, does: Does::Call },
        Act { at_ms: 80_000, does: Does::Call },
        Act { at_ms: 84_000, does: Does::Block },
    ];
    let path = |page: &str| format!("/rehearse/leaving/{page}?character=eager&seed=4&acts={}", written(&acts));
    let told: Value = serde_json::from_str(&home.get(&path("moments")).await.text).unwrap();
    let says = |what: &str| -> Vec<String> {
        let all = told["told"].as_array().unwrap().iter().filter(|m| m["what"] == what);
        all.map(|m| m["says"].as_str().unwrap().replace(['\u{2068}', '\u{2069}'], "")).collect()
    };
    assert_eq!(says("gone").len(), 1, "it has gone before the second call");
    assert_eq!(says("call"), ["You call Zip over.", "You call: Zip hears it outside and stays away."]);
    assert_eq!(says("block"), ["You stand in the doorway: Zip stays away."]);
    // The same stands in the list afterwards, and the page can say it at once.
    home.page(&path("went")).await.says("hears it outside");
    let stage = home.page("/rehearse/leaving?character=eager&seed=4").await;
    stage.says("hears it outside").says("data-part=\"calls\"").says("data-part=\"bars\"");
}

#[tokio::test]
async fn a_likes_test_says_how_what_was_chosen_stands_to_the_truth_and_why_few_pairs_cannot_tell() {
    let home = Home::new().await;
    let acts: Vec<Act> = (0..6).map(|i| Act { at_ms: 2_000 + i * 35_000, does: Does::Two }).collect();
    let mut same = [0, 0];
    for seed in 0..20 {
        let page = home.page(&went(Exercise::Likes, Character::Eager, seed, &acts)).await;
        let Some((_, told)) = page.text.split_once("data-test=\"likes-told\">") else { continue };
        let told = told.split_once("</p>").unwrap().0;
        assert!(told.contains("a choice or two by chance turns the order"), "{told}");
        let hit = told.starts_with("Chosen most was also what is liked most");
        assert!(hit || told.starts_with("Chosen most: "), "{told}");
        same[usize::from(hit)] += 1;
    }
    assert!(same[0] > 0 && same[1] > 0, "six pairs hit and miss: {same:?}");
    home.page(&went(Exercise::Likes, Character::Eager, 1, &[])).await.does_not_say("likes-told");
    // It goes as the only pair is held out: no choice was left to it, and none is praised.
    let pair = [Act { at_ms: 7_000, does: Does::Two }, Act { at_ms: 11_850, does: Does::End }];
    let page = home.page(&went(Exercise::Likes, Character::Old, 206, &pair)).await;
    page.says("data-change=\"carry-on\"").says("No pair came to a choice").does_not_say("Each choice was left to");
    page.does_not_say("data-test=\"row-held\"");
}

#[tokio::test]
async fn keys_are_told_before_it_begins_and_five_invitations_are_counted() {
    let home = Home::new().await;
    let mut meant = BTreeMap::new();
    for exercise in Exercise::ALL {
        let page = home.page(&format!("/rehearse/{}?character=old&seed=5", exercise.name())).await;
        let (_, before) = page.text.split_once("data-test=\"keys-before\">").unwrap();
        assert!(page.text.find("keys-before") < page.text.find("data-test=\"start\""));
        let keys: Vec<&str> = before.split_once("</p>").unwrap().0.split("; ").collect();
        assert_eq!(keys.len(), page.text.matches("data-letter=").count() + usize::from(exercise != Exercise::Likes));
        // No letter means two things.
        for (letter, act) in page.text.split("data-does=\"").skip(1).filter_map(|b| {
            let (does, rest) = b.split_once("\" data-letter=\"")?;
            Some((rest.split_once('"')?.0.to_owned(), does.to_owned()))
        }) {
            assert_eq!(meant.entry(letter.clone()).or_insert_with(|| act.clone()), &act, "{letter}");
        }
        assert_eq!(page.text.contains("data-invitations=\"5\""), exercise == Exercise::Inviting);
    }
}

/// "104 %" tells nobody anything; a second sooner is never the worse.
#[tokio::test]
async fn an_evening_tells_what_is_asked_for_more_often_in_words_and_a_second_sooner_is_never_less() {
    let home = Home::new().await;
    for seed in 0..8 {
        let acts = teaching(3_000, 230_000);
        let page = home.page(&went(Exercise::Evening, Character::Quick, seed, &acts)).await;
        let (_, demand) = page.text.split_once("data-test=\"demand\"").unwrap();
        assert!(!demand.split_once("</div>").unwrap().0.contains('%'));
        let (_, table) = page.text.split_once("data-test=\"truth\"").unwrap();
        let cells: Vec<u32> = table
            .split_once("</table>")
            .unwrap()
            .0
            .split("<td class=\"num\">")
            .skip(1)
            .map(|cell| cell.chars().take_while(char::is_ascii_digit).collect::<String>().parse().unwrap())
            .collect();
        assert_eq!(cells.len(), 12);
        assert!(cells.chunks(3).all(|row| row[2] >= row[1]), "seed {seed}: {cells:?}");
    }
}

/// A kind that a language has no words of its own for would be said as the last one.
#[test]
fn every_kind_has_words_of_its_own_in_every_language() {
    let changes = [
        "step-away",
        "let-go",
        "let-eat",
        "pause",
        "wait",
        "do-not-push",
        "answer",
        "sooner",
        "when-there",
        "when-there-invited",
        "after-wait",
        "vet",
        "give-oftener",
        "used-up",
        "shorter",
        "shorter-left",
        "slower",
        "instead",
        "even",
        "oftener",
        "let-choose",
        "soften",
        "longer",
        "stay",
        "more-pairs",
        "give",
        "try",
        "too-soon",
        "carry-on",
    ];
    let seen = [
        "looks-up",
        "comes",
        "joined",
        "looks",
        "brushed",
        "pressed",
        "took",
        "finished",
        "ignored",
        "wanders",
        "leaves",
        "gone",
        "barred",
        "eases",
        "wait-over",
        "chose",
        "chose-none",
        "noise",
        "startled",
        "fetches",
        "fetched",
        "unanswered",
    ];
    let does = [
        "show", "give", "offer", "two", "again", "not-now", "instead", "ready", "softer", "quiet", "call", "block",
        "back", "end",
    ];
    let rows = [
        "delay",
        "answer-delay",
        "pace",
        "balance",
        "taken",
        "waits",
        "answered",
        "alternatives",
        "leaving",
        "mild",
        "strong",
        "eaten",
        "held",
        "given",
        "paid",
        "invited-there",
        "after-wait",
        "pushes",
    ];
    let causes = ["not-wanted", "too-late", "avoided", "time-or-place", "health", "too-little"];
    for language in Language::ALL {
        let l = &Locale::of(language);
        let all_differ = |said: Vec<String>| {
            let n = said.len();
            let different: BTreeSet<String> = said.into_iter().collect();
            assert_eq!(different.len(), n, "{language:?}: {different:?}");
        };
        all_differ(
            changes.map(|c| say!(l, rehearse::change, change = c, name = "Zip", word = "a", least = "b")).into(),
        );
        let because = |c| say!(l, rehearse::because, change = c, name = "Zip", word = "a", figure = "3 of 4");
        // Three others tell the same figure.
        let shown = |c| say!(l, rehearse::change, change = c, name = "Zip", word = "a", least = "b");
        all_differ(["when-there", "when-there-invited", "wanted", "wanted-shown", "carry-on"].map(shown).into());
        all_differ(
            ["when-there", "wanted", "wanted-shown", "carry-on-likes", "carry-on-no-choice", "carry-on"]
                .map(because)
                .into(),
        );
        all_differ(changes.into_iter().filter(|c| !["slower", "even"].contains(c)).map(because).collect());
        all_differ(seen.map(|w| say!(l, rehearse::seen, what = w, name = "Zip", word = "a")).into());
        all_differ(does.map(|d| say!(l, rehearse::you, does = d, name = "Zip", word = "a")).into());
        all_differ(rows.map(|r| say!(l, rehearse::row, which = r, name = "Zip")).into());
        all_differ(Exercise::ALL.map(|e| say!(l, rehearse::exercise, which = e.name())).into());
        all_differ(Exercise::ALL.map(|e| say!(l, rehearse::how, which = e.name(), name = "Zip")).into());
        all_differ(Character::ALL.map(|c| say!(l, rehearse::character, who = c.name())).into());
        all_differ(Character::ALL.map(|c| say!(l, rehearse::who, who = c.name())).into());
        all_differ(causes.map(|c| say!(l, rehearse::showed, cause = c, figure = "3 of 4")).into());
        all_differ(causes.map(|c| say!(l, rehearse::unseen, cause = c, name = "Zip")).into());
        all_differ(["call", "block"].map(|d| say!(l, rehearse::you_gone, does = d, name = "Zip")).into());
        all_differ(causes[1..4].iter().map(|c| say!(l, rehearse::put_right, cause = *c)).collect());
        all_differ(["showing", "inviting", "evening"].map(|w| say!(l, rehearse::fits, which = w)).into());
        all_differ(Thing::ALL.map(|t| say!(l, rehearse::word, thing = t.name())).into());
    }
}
