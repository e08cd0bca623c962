//! Every page, light and dark: the rules of axe-core, nothing that scrolls sideways, targets a thumb can hit.

use crate::harness::{Browser, PHONE, Server, animal, demo_dir, story};
use crate::listen::record;
use crate::sounds::{say, wav};
use sayso_model::PressedBy;
use sayso_store::Store;
use serde_json::Value;

/// Targets smaller than 44 px both ways are found, except links inside running text (WCAG 2.2, 2.5.8 leaves those out).
const SMALL_TARGETS: &str = "
return [...document.querySelectorAll('a, button, select, summary, input:not([type=hidden])')].filter((e) => {
  const r = e.getBoundingClientRect();
  if (r.width === 0 || r.height === 0 || getComputedStyle(e).visibility === 'hidden') return false;
  if (e.closest('.skip') || e.matches('.skip')) return false;
  if (e.matches('input[type=checkbox], input[type=radio]')) return (e.closest('label')?.getBoundingClientRect().height ?? 0) < 44;
  if (e.matches('a') && getComputedStyle(e).display === 'inline') return false;
  return r.height < 43.5;
}).map((e) => e.outerHTML.slice(0, 160));";

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

#[tokio::test(flavor = "multi_thread")]
async fn every_page_passes_the_rules_in_light_and_dark() {
    let axe =
        std::fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/../../tests/node_modules/axe-core/axe.min.js"))
            .expect("axe-core is under tests/node_modules; run .ci/install");
    let dir = demo_dir();
    let (_, story) = story(dir.path()).await;
    let who = animal(&story);
    let card = story.words_of(who)[0].clone();
    let word = card.word;
    // With a recording, so that there is something to listen for; and the sound of a press that waits to be judged.
    let store = Store::open(dir.path()).await.unwrap();
    let heard = story.heard_presses().find(|f| f.part.by == PressedBy::Unknown).expect("a heard press");
    record(&store, &card, 0, heard.event.clone()).await;
    store.put_snippet(heard.id(), wav(&say(0, 0)), heard.event.recorded_at).await.unwrap();
    store.close().await.unwrap();
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    let preview =
        brought(&browser, &server, "kind,happened_at,text\nremark,2026-03-01 10:00,rain\nremarc,2026-03-01,\n").await;
    let pages = [
        format!("/a/{who}/today"),
        format!("/a/{who}/board"),
        format!("/a/{who}/likes"),
        format!("/a/{who}/likes/new"),
        format!("/a/{who}/words"),
        format!("/a/{who}/evidence"),
        format!("/a/{who}/evidence/{word}"),
        format!("/a/{who}/days"),
        format!("/a/{who}/patterns"),
        format!("/a/{who}/log"),
        format!("/a/{who}/words/new"),
        format!("/a/{who}/words/card/{word}"),
        format!("/a/{who}/words/board"),
        format!("/a/{who}/ideas"),
        format!("/people/animal/{who}/food"),
        format!("/a/{who}/checks"),
        format!("/a/{who}/checks/new"),
        format!("/a/{who}/swaps"),
        format!("/a/{who}/designs"),
        format!("/a/{who}/designs/new"),
        format!("/a/{who}/heard"),
        format!("/a/{who}/listen"),
        format!("/sheets/{who}/progress"),
        format!("/sheets/{who}/likes"),
        "/sheets/rules".into(),
        "/sheets/labels".into(),
        "/homes".into(),
        "/people/home".into(),
        "/people/animal/new".into(),
        "/people/person/new".into(),
        "/people/rule/new".into(),
        format!("/people/animal/{who}"),
        "/people".into(),
        "/people/reward/new".into(),
        "/exchange".into(),
        preview,
        "/sheets".into(),
        "/agreement".into(),
        "/methods".into(),
        "/glossary".into(),
        "/methods/likes".into(),
        "/who".into(),
        "/api".into(),
    ];
    let mut faults = Vec::new();
    for path in &pages {
        for scheme in ["light", "dark"] {
            browser.goto(&server.url(path)).await;
            browser.colours(scheme).await;
            browser.css("main").await;
            browser.page.execute(&axe, vec![]).await.unwrap();
            let found = browser
                .page
                .execute_async(
                    "const done = arguments[0]; axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }).then((r) => done(r.violations.map((v) => v.id + ': ' + v.nodes.slice(0, 3).map((n) => n.html.slice(0, 160) + ' (' + (n.any[0]?.message ?? '') + ')').join(' | '))));",
                    vec![],
                )
                .await
                .unwrap();
            for fault in found.as_array().into_iter().flatten().filter_map(Value::as_str) {
                faults.push(format!("{path} ({scheme}): {fault}"));
            }
        }
        for script in [
            "return document.documentElement.scrollWidth > document.documentElement.clientWidth ? ['scrolls sideways'] : []",
            SMALL_TARGETS,
        ] {
            let found = browser.page.execute(script, vec![]).await.unwrap();
            for fault in found.as_array().into_iter().flatten().filter_map(Value::as_str) {
                faults.push(format!("{path}: {fault}"));
            }
        }
    }
    browser.close().await;
    assert!(faults.is_empty(), "{} faults:\n{}", faults.len(), faults.join("\n"));
}
