//! Every link of every page leads somewhere.

use crate::crawl::crawl;

#[tokio::test]
async fn every_link_of_every_page_leads_somewhere() {
    let found = crawl().await;
    let mut wrong = found.wrong.clone();
    for (path, w) in &found.wanted {
        for (fragment, from) in &w.fragments {
            // A place, or what the page opens with where it is asked for so.
            let named = ["id", "data-asked"].map(|name| format!(" {name}=\"{fragment}\""));
            if found.pages.get(path).is_some_and(|page| !named.iter().any(|name| page.contains(name))) {
                wrong.push(format!("{path}#{fragment} from {from}: no such place on that page"));
            }
        }
    }
    assert!(wrong.is_empty(), "of {} addresses:\n{}", found.wanted.len(), wrong.join("\n"));
    println!("{} addresses", found.wanted.len());
    assert!(found.wanted.len() > 100, "the demo has more than {} addresses", found.wanted.len());
    assert!(found.wanted.keys().any(|p| p.contains("/log?event=")), "Today leads to records");
}
