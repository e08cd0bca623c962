//! What stands in the open is said in words; counts written as "n = 12" stand where figures are asked for.

use crate::crawl::crawl;

/// Elements without an end.
const VOID: [&str; 7] = ["br", "hr", "img", "input", "link", "meta", "wbr"];

/// Whether a tag begins a part for figures: what is folded, a table, or what a page about a method marks as one.
fn figures(name: &str, tag: &str) -> bool {
    ["details", "table"].contains(&name) || tag.contains("data-part=\"figures\"")
}

/// The text of a page that stands in the open.
fn in_the_open(page: &str) -> String {
    let mut open: Vec<(&str, bool)> = Vec::new();
    let mut out = String::new();
    for piece in page.split('<').skip(1) {
        let Some((tag, text)) = piece.split_once('>') else { continue };
        let name = tag.trim_start_matches('/').split([' ', '/', '\n']).next().unwrap_or_default();
        if tag.starts_with('/') {
            while open.pop().is_some_and(|(last, _)| last != name) {}
        } else if !VOID.contains(&name) && !tag.ends_with('/') && !tag.starts_with('!') {
            open.push((name, figures(name, tag)));
        }
        let hidden = open.iter().any(|(name, figures)| *figures || ["script", "style", "title"].contains(name));
        if !hidden {
            out.push_str(text);
            out.push(' ');
        }
    }
    out.replace('\u{a0}', " ")
}

#[test]
fn what_is_folded_is_not_in_the_open() {
    let page = "<p>a<br>b</p><details class=x><summary>c</summary><p>n = 1</p></details><p>n = 2</p>";
    assert_eq!(in_the_open(page).split_whitespace().collect::<String>(), "abn=2");
    assert!(in_the_open("<table><tr><td>n = 3</table>").trim().is_empty());
}

#[tokio::test]
async fn no_page_of_the_demo_counts_with_n_in_the_open() {
    let found = crawl().await;
    assert!(found.pages.len() > 60, "{} pages", found.pages.len());
    assert!(found.pages.values().any(|page| page.contains("n = ")), "counts stand somewhere, or nothing is tried");
    let mut said = Vec::new();
    for (path, page) in &found.pages {
        let open = in_the_open(page);
        for (at, _) in open.match_indices("n = ") {
            if open[..at].ends_with(|c: char| c.is_alphanumeric()) {
                continue;
            }
            let from = open[..at].char_indices().rev().nth(60).map_or(0, |(i, _)| i);
            let to = open[at..].char_indices().nth(20).map_or(open.len(), |(i, _)| at + i);
            said.push(format!("{path}: …{}…", open[from..to].split_whitespace().collect::<Vec<_>>().join(" ")));
        }
    }
    said.dedup();
    assert!(said.is_empty(), "say it in words, or fold it:\n{}", said.join("\n"));
}
