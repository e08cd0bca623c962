//! Every page of the demo, reached by its links.

use crate::web::Web;
use axum::http::StatusCode;
use sayso_web::store::Store;
use std::collections::{BTreeMap, VecDeque};
use tokio::sync::OnceCell;

/// What a page is reached by and which of its places are.
#[derive(Default)]
pub struct Wanted {
    pub from: String,
    pub fragments: BTreeMap<String, String>,
}

/// What was found.
#[derive(Default)]
pub struct Crawl {
    /// Every address that a page leads to.
    pub wanted: BTreeMap<String, Wanted>,
    /// The pages, by address.
    pub pages: BTreeMap<String, String>,
    /// Addresses that do not answer.
    pub wrong: Vec<String>,
}

/// Addresses in a page's `href` and `action`-less links, as the browser would read them.
fn links(page: &str) -> Vec<String> {
    page.split(" href=\"").skip(1).filter_map(|rest| rest.split('"').next()).map(|h| h.replace("&amp;", "&")).collect()
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

/// The demo's pages; fetched once, whichever test asks first.
pub async fn crawl() -> &'static Crawl {
    static FOUND: OnceCell<Crawl> = OnceCell::const_new();
    FOUND.get_or_init(fetched).await
}

async fn fetched() -> Crawl {
    let web = Web::this_machine().await;
    let store = Store::open(web.dir.path()).await.unwrap();
    for batch in sayso_sim::demo(1, crate::web::noon()).events.chunks(1000) {
        store.append(batch.to_vec()).await.unwrap();
    }
    let mut found = Crawl::default();
    let mut line = VecDeque::new();
    for start in ["/", "/who", "/pair", "/devices", "/linked", "/api"] {
        found.wanted.insert(start.to_owned(), Wanted { from: "the test".into(), ..Wanted::default() });
        line.push_back(start.to_owned());
    }
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
            found.wrong.push(format!("{path} from {}: {}", found.wanted[&path].from, answer.status));
            continue;
        }
        if !answer.header("content-type").starts_with("text/html") {
            continue;
        }
        for href in links(&answer.text) {
            let Some((to, fragment)) = resolved(&at, &href) else { continue };
            if !found.wanted.contains_key(&to) {
                line.push_back(to.clone());
            }
            let entry = found.wanted.entry(to).or_insert_with(|| Wanted { from: path.clone(), ..Wanted::default() });
            if let Some(fragment) = fragment {
                entry.fragments.entry(fragment).or_insert_with(|| path.clone());
            }
        }
        found.pages.insert(path, answer.text);
    }
    found
}
