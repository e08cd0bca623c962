//! Sheets: what is printed, in honest words.

use crate::at_home::Home;
use sayso_model::{
    Accident, Body, Event, EventId, Press, PressedBy, Probability, Sign, SignLevel, Source, When, WordId,
};

fn pressed(word: WordId, by: PressedBy) -> Body {
    Body::Press(Press {
        word,
        by,
        certainty: Probability::clamped(1.0),
        accident: Accident::No,
        place: None,
        speed: None,
        stream: None,
        session: None,
    })
}

#[tokio::test]
async fn the_fridge_sheet_holds_words_rules_and_cautions() {
    let home = Home::new().await;
    home.page("/sheets").await.says("House rules").says("Progress report");
    home.page("/sheets/rules").await.says("No word is on the board yet");
    let to = format!("/a/{}/words/new", home.animal);
    home.post(
        &to,
        &[
            ("says", "ball"),
            ("means", "asks for the ball"),
            ("answer", "Throw it once."),
            ("not_now", "Say \"not now\""),
        ],
    )
    .await
    .kept();
    home.post(&to, &[("says", "bed"), ("closing", "yes")]).await.kept();
    let story = home.story().await;
    let ball = story.words_of(home.animal).iter().find(|w| w.says.as_str() == "ball").unwrap().word.to_string();
    home.post("/people/rule/new", &[("text", "Everyone answers alike.")]).await.kept();
    home.post("/people/rule/new", &[("text", "Not near the road."), ("word", &ball)]).await.kept();
    home.page("/sheets/rules")
        .await
        .says("asks for the ball")
        .says("Throw it once.")
        .says("Say &quot;not now&quot;")
        .says("Everyone answers alike.")
        .says("Not near the road.")
        .says("ends a session")
        .says("battery is an emergency")
        .says("go to the emergency department at once");
    home.page("/sheets/labels").await.says("labels middle").says("<span>ball</span>");
    home.page("/sheets/labels?size=large").await.says("labels large");
}

#[tokio::test]
async fn how_to_record_real_buttons_is_said_with_its_cautions_on_sheet_and_page() {
    let home = Home::new().await;
    home.page("/sheets").await.says("/sheets/kit");
    home.page(&format!("/a/{}/listen", home.animal)).await.says("/record-kit");
    for page in ["/sheets/kit", "/record-kit"] {
        home.page(page)
            .await
            .says("no real button has been recorded yet")
            .says("No animal in the room")
            .says("keep it away from ears")
            .says("battery is an emergency")
            .says("Tell everyone who can be heard")
            .says("Nothing is sent anywhere");
    }
    home.page("/sheets/kit").await.says("1, 2 and 4 m").says("every six seconds");
    home.page("/record-kit").await.says("Everyone who can be heard agrees to be recorded").says("value=\"0.5\"");
}

#[tokio::test]
async fn a_report_of_nothing_says_that_nothing_is_known() {
    let home = Home::new().await;
    home.page(&format!("/sheets/{}/progress", home.animal))
        .await
        .says("Not a diagnosis")
        .says("nothing counted yet")
        .says("no planned check was held")
        .says("no session was noted in this period")
        .says("no likes test was held")
        .says("is known: weigh");
    home.page(&format!("/sheets/{}/likes", home.animal)).await.says("Nothing has been tested yet");
    assert_eq!(home.get("/sheets/0195a0a0-0000-7000-8000-000000000000/progress").await.status, 404);
}

#[tokio::test]
async fn a_report_tells_signs_and_counts_with_their_n() {
    let home = Home::new().await;
    home.post(&format!("/a/{}/words/new", home.animal), &[("says", "ball")]).await.kept();
    let story = home.story().await;
    let first = story.ledger().all().next().unwrap().clone();
    let word = story.words_of(home.animal)[0].word;
    let event = |i: u128, at: &str, body: Body| Event {
        id: EventId(uuid::Uuid::from_u128(0x0195_a0a0_0000_7000_8000_0000_0000_0000 + i)),
        animal: Some(home.animal),
        happened_at: at.parse().unwrap(),
        source: Source::Tap,
        body,
        ..first.clone()
    };
    let sign = Sign {
        sign: sayso_model::Note::new("turned <away>").unwrap(),
        level: SignLevel::Strong,
        when: When::During,
        session: None,
    };
    let events = vec![
        event(1, "2026-02-20T10:00:00Z", pressed(word, PressedBy::Animal)),
        event(2, "2026-02-20T10:05:00Z", pressed(word, PressedBy::Animal)),
        event(3, "2026-02-27T10:00:00Z", sign.into()),
    ];
    home.state.store.append(events).await.unwrap();
    home.page(&format!("/sheets/{}/progress", home.animal))
        .await
        .says("Pip’s own presses: 2.")
        .says("Strong signs: 1.")
        .says("27 Feb 2026: turned &lt;away&gt;")
        .says("Missed, or no answer noted: too early to say (from 2)")
        .says("3 Feb 2026 to 2 Mar 2026");
    // The period can be shorter; an unknown one falls back to four weeks.
    home.page(&format!("/sheets/{}/progress?days=14", home.animal)).await.says("17 Feb 2026 to 2 Mar 2026");
    home.page(&format!("/sheets/{}/progress?days=9999", home.animal)).await.says("3 Feb 2026 to 2 Mar 2026");
}

#[tokio::test]
async fn the_presses_of_the_words_and_of_those_taught_no_more_sum_to_the_total() {
    let home = Home::new().await;
    for says in ["ball", "water"] {
        home.post(&format!("/a/{}/words/new", home.animal), &[("says", says)]).await.kept();
    }
    let story = home.story().await;
    let first = story.ledger().all().next().unwrap().clone();
    let words: Vec<_> = story.words_of(home.animal).iter().map(|w| w.word).collect();
    let press = |word, at: &str| Event {
        id: EventId(uuid::Uuid::now_v7()),
        animal: Some(home.animal),
        happened_at: at.parse().unwrap(),
        source: Source::Tap,
        body: pressed(word, PressedBy::Animal),
        ..first.clone()
    };
    let mut events: Vec<Event> = (10..17).map(|h| press(words[0], &format!("2026-02-20T{h}:00:00Z"))).collect();
    events.extend((10..13).map(|h| press(words[1], &format!("2026-02-20T{h}:30:00Z"))));
    // Within the longest period only.
    events.push(press(words[0], "2026-01-05T10:00:00Z"));
    home.state.store.append(events).await.unwrap();
    let sheet = format!("/sheets/{}/progress", home.animal);
    home.page(&sheet).await.says("Pip’s own presses: 10.").does_not_say("is not taught now");
    let card = format!("/a/{}/words/card/{}", home.animal, words[1]);
    home.post(&card, &[("says", "water")]).await.kept();
    home.page(&sheet).await.says("Pip’s own presses: 10.").says("words that Pip is not taught now: “water” 3.");
    // The table counts in the period that the sheet is about.
    let page = home.page(&format!("{sheet}?days=84")).await;
    page.says("Pip’s own presses: 11.").says("words that Pip is not taught now: “water” 3.");
    let (_, row) = page.text.split_once(">ball<").expect("a row of the word");
    assert!(row.split_once("</tr>").unwrap().0.ends_with(">8</td>"), "{row}");
}

/// Sentences of a sheet's page: what stands between its tags, without menus and the figures under charts.
fn sentences(page: &str) -> Vec<String> {
    let article = page.split_once("<article").unwrap().1.split_once("<footer").unwrap().0;
    let mut texts = Vec::new();
    let mut rest = article.split_once('>').unwrap().1;
    while let Some((text, after)) = rest.split_once('<') {
        let text = text.replace("&lt;", "<").replace("&gt;", ">").replace("&quot;", "\"").replace("&amp;", "&");
        texts.push(text);
        // Charts are drawn anew.
        rest = ["<svg", "<details"]
            .iter()
            .find(|tag| format!("<{after}").starts_with(**tag))
            .map_or(after, |tag| after.split_once(&tag.replace('<', "</")).unwrap().1)
            .split_once('>')
            .unwrap()
            .1;
    }
    texts.into_iter().filter(|t| !t.trim().is_empty()).collect()
}

fn words(text: &str) -> String {
    text.split_whitespace().collect()
}

#[tokio::test]
async fn the_pdf_says_what_the_page_says() {
    let home = Home::new().await;
    let to = format!("/a/{}/words/new", home.animal);
    home.post(&to, &[("says", "ball"), ("means", "asks for the ball"), ("answer", "Throw it once.")]).await.kept();
    home.post(&to, &[("says", "bed"), ("closing", "yes")]).await.kept();
    let animal = home.animal;
    let taught: Vec<String> = {
        let [one, two] = ["frisbee", "squeaker"].map(|says| (says, format!("the {says} thing")));
        let mut taught = Vec::new();
        for (says, thing) in [one, two] {
            let reward = home.reward("play", &thing, &[]).await;
            let kept = home.post(&to, &[("says", says), ("reward", &reward)]).await;
            taught.push(kept.kept().to.split(['/', '?']).nth(5).unwrap().to_owned());
        }
        taught
    };
    let fields: Vec<(&str, &str)> = taught.iter().map(|w| ("words", w.as_str())).collect();
    let fields = [
        &fields[..],
        &[("design", "pick_for_word"), ("choices", "2"), ("rate", "90"), ("who", "two"), ("step", "plan")],
    ]
    .concat();
    let check =
        home.post(&format!("/a/{animal}/checks/new"), &fields).await.kept().to.split('?').next().unwrap().to_owned();
    for (page, file) in [
        (format!("{check}/sheet"), format!("{check}/sheet.pdf?paper=a4")),
        (format!("{check}/scorer"), format!("{check}/scorer.pdf?paper=letter")),
        ("/sheets/rules".to_owned(), "/sheets/rules.pdf?paper=letter".to_owned()),
        ("/sheets/labels?size=small".to_owned(), "/sheets/labels.pdf?paper=a4&size=small".to_owned()),
        ("/sheets/kit".to_owned(), "/sheets/kit.pdf?paper=a4".to_owned()),
        (format!("/sheets/{animal}/progress?days=14"), format!("/sheets/{animal}/progress.pdf?paper=a4&days=14")),
        (format!("/sheets/{animal}/likes"), format!("/sheets/{animal}/likes.pdf?paper=letter")),
    ] {
        let shown = home.page(&page).await;
        shown.says(&format!("href=\"{}\"", file.replace('&', "&amp;")));
        let (kind, bytes) = home.file(&file).await;
        assert_eq!(kind, "application/pdf");
        let document = lopdf::Document::load_mem(&bytes).unwrap();
        let pages: Vec<u32> = document.get_pages().keys().copied().collect();
        let found = words(&document.extract_text(&pages).unwrap());
        let said = sentences(&shown.text);
        assert!(said.len() > 1, "{said:?}");
        for text in said {
            assert!(found.contains(&words(&text)), "{page}: {text:?} is not in {found}");
        }
    }
}

#[tokio::test]
async fn a_caution_stands_short_and_once_where_the_thing_is_given() {
    let home = Home::new().await;
    let rope = home.reward("play", "ball of wool", &[]).await;
    for says in ["wool", "string"] {
        let new = format!("/a/{}/words/new", home.animal);
        home.post(&new, &[("says", says), ("reward", &rope)]).await.kept();
    }
    let brief = "ball of wool: only while you hold it, then put it away";
    for path in [format!("/a/{}/board", home.animal), "/sheets/rules".to_owned()] {
        let page = home.page(&path).await;
        let body = page.text.split("class=\"below\"").last().unwrap();
        assert_eq!(body.matches(brief).count(), 1, "once on {path}");
        assert!(body.contains("call a veterinarian") && !body.contains("the gut bunches up"), "short on {path}");
    }
    // Beside its card it stands whole.
    home.page(&format!("/a/{}/words", home.animal)).await.says("the gut bunches up");
    home.page(&format!("/a/{}/ideas", home.animal))
        .await
        .says("cheese")
        .says("only a little \u{2013} many cannot digest lactose");
}
