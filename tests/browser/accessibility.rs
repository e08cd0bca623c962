//! Every page, light and dark: the rules of axe-core, nothing that scrolls sideways, targets a thumb can hit.

use crate::every_page::{every_page, prepared};
use crate::harness::{Browser, PHONE, Server, demo_dir};
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

/// What of a page as it stands breaks the rules of axe-core.
pub async fn faults_now(browser: &Browser) -> Vec<String> {
    let axe =
        std::fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/../../tests/node_modules/axe-core/axe.min.js"))
            .expect("axe-core is under tests/node_modules; run .ci/install");
    browser.page.execute(&axe, vec![]).await.unwrap();
    let found = browser
        .page
        .execute_async(
            "const done = arguments[0]; axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }).then((r) => done(r.violations.map((v) => v.id + ': ' + v.nodes.slice(0, 3).map((n) => n.html.slice(0, 160) + ' (' + (n.any[0]?.message ?? '') + ')').join(' | '))));",
            vec![],
        )
        .await
        .unwrap();
    found.as_array().into_iter().flatten().filter_map(Value::as_str).map(str::to_owned).collect()
}

/// What of a page breaks the rules, in light and in dark.
pub async fn faults(browser: &Browser, url: &str, path: &str) -> Vec<String> {
    let mut faults = Vec::new();
    for scheme in ["light", "dark"] {
        browser.goto(url).await;
        browser.colours(scheme).await;
        browser.css("main").await;
        for fault in faults_now(browser).await {
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
    faults
}

#[tokio::test(flavor = "multi_thread")]
async fn every_page_passes_the_rules_in_light_and_dark() {
    let dir = demo_dir();
    let who = prepared(dir.path()).await;
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    let pages = every_page(&browser, &server, &who).await;
    let mut wrong = Vec::new();
    for path in &pages {
        wrong.extend(faults(&browser, &server.url(path), path).await);
    }
    browser.close().await;
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
}
