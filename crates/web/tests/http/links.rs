//! Every link of every page leads somewhere.

use crate::web::Web;
use axum::http::StatusCode;
use sayso_web::store::Store;
use std::collections::{BTreeMap, BTreeSet, VecDeque};

/// Addresses in a page's `href` and `action`-less links, as the browser would read them.
fn links(page: &str) -> Vec<String> {
    page.split(" href=\"").skip(1).filter_map(|rest| rest.split('"').next()).map(|h| h.replace("&amp;", "&")).collect()
}

fn ids(page: &str) -> BTreeSet<String> {
    page.split(" id=\"").skip(1).filter_map(|rest| rest.split('"').next()).map(str::to_owned).collect()
}

/// The address a link leads to from a page, without its fragment, and the fragment; none for other sites.
fn resolved(from: &str, href: &str) -> Option<(String, Option<String>)> {
    if href.contains("://") || href.starts_with("mailto:") || href.starts_with("data:") {
        return None;
    }
    let (path, fragment) = href.split_once('#').map_or((href, None), |(p, f)| (p, Some(f.to_owned())));
    let here = from.split('?').next().unwrap();
    let path = match path {
        "" => from.to_owned(),
        query if query.starts_with('?') => format!("{here}{query}"),
        whole if whole.starts_with('/') => whole.to_owned(),
        near => format!("{}/{near}", here.rsplit_once('/').unwrap().0),
    };
    Some((path, fragment.filter(|f| !f.is_empty())))
}

/// What a page is reached by and what it must have.
#[derive(Default)]
struct Wanted {
    from: String,
    fragments: BTreeMap<String, String>,
}

#[tokio::test]
async fn every_link_of_every_page_leads_somewhere() {
    let web = Web::this_machine().await;
    let store = Store::open(web.dir.path()).await.unwrap();
    for batch in sayso_sim::demo(1, crate::web::noon()).events.chunks(1000) {
        store.append(batch.to_vec()).await.unwrap();
    }
    let mut wanted: BTreeMap<String, Wanted> = BTreeMap::new();
    let mut line = VecDeque::new();
    for start in ["/", "/who", "/pair", "/devices", "/api"] {
        wanted.insert(start.to_owned(), Wanted { from: "the test".into(), ..Wanted::default() });
        line.push_back(start.to_owned());
    }
    let mut had: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    let mut wrong = Vec::new();
    while let Some(path) = line.pop_front() {
        let mut at = path.clone();
        let mut answer = web.get(&at).await;
        for _ in 0..5 {
            if !answer.status.is_redirection() {
                break;
            }
            at = resolved(&at, answer.header("location")).expect("a redirect within").0;
            answer = web.get(&at).await;
        }
        if answer.status != StatusCode::OK {
            wrong.push(format!("{path} from {}: {}", wanted[&path].from, answer.status));
            continue;
        }
        if !answer.header("content-type").starts_with("text/html") {
            continue;
        }
        had.insert(path.clone(), ids(&answer.text));
        for href in links(&answer.text) {
            let Some((to, fragment)) = resolved(&at, &href) else { continue };
            if !wanted.contains_key(&to) {
                line.push_back(to.clone());
            }
            let entry = wanted.entry(to).or_insert_with(|| Wanted { from: path.clone(), ..Wanted::default() });
            if let Some(fragment) = fragment {
                entry.fragments.entry(fragment).or_insert_with(|| path.clone());
            }
        }
    }
    for (path, w) in &wanted {
        for (fragment, from) in &w.fragments {
            if had.get(path).is_some_and(|h| !h.contains(fragment)) {
                wrong.push(format!("{path}#{fragment} from {from}: no such place on that page"));
            }
        }
    }
    assert!(wrong.is_empty(), "of {} addresses:\n{}", wanted.len(), wrong.join("\n"));
    println!("{} addresses", wanted.len());
    assert!(wanted.len() > 100, "the demo has more than {} addresses", wanted.len());
    assert!(wanted.keys().any(|p| p.contains("/log?event=")), "Today leads to records");
}
