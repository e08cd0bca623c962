//! Figures as pages tell them: none that misleads, none of nothing.

use super::{demo, read};
use crate::at_home::Home;

/// An interval with a count below five beside it, or one that says certainty where there is none.
fn misleading(text: &str) -> Vec<String> {
    let words: Vec<&str> = text.split_whitespace().collect();
    let mut wrong = Vec::new();
    let counts = words.windows(3).enumerate().filter_map(|(i, w)| match w {
        [n, "=", count] if n.ends_with('n') => Some((i, *count)),
        ["from", count, records] if records.starts_with("record") => Some((i, *count)),
        _ => None,
    });
    for (i, n) in counts {
        let digits: String = n.chars().filter(char::is_ascii_digit).collect();
        let few = n == "one" || digits.parse::<u32>().is_ok_and(|n| n < 5);
        if few && words[i.saturating_sub(5)..=i].join(" ").contains('%') {
            wrong.push(words[i.saturating_sub(8)..(i + 3).min(words.len())].join(" "));
        }
    }
    for pair in ["0% (0% to 0%", "100% (100% to 100%"] {
        for (i, _) in text.match_indices(pair) {
            wrong.push(text[i..].chars().take(60).collect());
        }
    }
    wrong
}

/// "Too early to say", or that nothing was counted, within a sentence, where a figure would stand, and not after a colon or a
/// dash or by itself.
fn in_a_figures_place(page: &str) -> Vec<String> {
    let early = page.match_indices("too early to say (").chain(page.match_indices("nothing counted yet"));
    let early = early.filter(|(i, _)| {
        let before = page[..*i].trim_end();
        !before.ends_with([':', '\u{2013}', '>'])
    });
    early
        .map(|(i, said)| {
            format!("{}{said}", page[..i].chars().rev().take(60).collect::<Vec<_>>().iter().rev().collect::<String>())
        })
        .collect()
}

#[tokio::test]
async fn no_page_gives_a_share_of_fewer_than_five_or_an_interval_without_width() {
    assert_eq!(misleading("so far 50% (3% to 97%, n = 2) of them").len(), 1, "it is found where it stands");
    assert_eq!(misleading("so far 50% (3% to 97%, from 2 records)").len(), 1, "in words too");
    assert_eq!(misleading("so far 50% (3% to 97%, from one record)").len(), 1);
    assert_eq!(misleading("so far 50% (30% to 70%, n = 12) of them").len(), 0);
    assert_eq!(misleading("so far 50% (30% to 70%, from 12 records)").len(), 0);
    assert_eq!(in_a_figures_place("<p>given in too early to say (4 records) of them</p>").len(), 1);
    assert!(in_a_figures_place("<td>too early to say (4 records)</td>: nothing counted yet").is_empty());
    let (mut pages, mut wrong) = (0, Vec::new());
    // Full, and in its first days, when counts are small.
    for days_ago in [0.0, 66.0, 62.0] {
        let (home, animals) = demo(days_ago).await;
        for (animal, words) in animals {
            let mut all: Vec<String> = ["today", "evidence", "days", "patterns", "likes", "words", "checks", "swaps"]
                .map(|p| format!("/a/{animal}/{p}"))
                .into();
            all.push(format!("/sheets/{animal}/progress"));
            all.extend(words.iter().map(|w| format!("/a/{animal}/evidence/{w}")));
            for path in all {
                let page = home.page(&path).await.text;
                let found = misleading(&read(&page)).into_iter().chain(in_a_figures_place(&page));
                wrong.extend(found.map(|f| format!("{path}, {days_ago} days ago: {f}")));
                pages += 1;
            }
        }
    }
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
    assert!(pages > 40, "{pages}");
}

/// Shares and counts of nothing: "0 of 0", "of 0 presses", "(n = 0)".
fn of_nothing(text: &str) -> Vec<String> {
    let words: Vec<&str> = text.split_whitespace().collect();
    let bare = |w: &str| w.trim_matches(|c: char| !c.is_alphanumeric()).to_lowercase();
    let found = words.windows(3).enumerate().filter(|(_, w)| {
        let [one, two, three] = [bare(w[0]), bare(w[1]), bare(w[2])];
        let of = |w: &str| matches!(w, "of" | "from" | "von" | "aus");
        (of(&one) && two == "0") || (of(&two) && three == "0") || (one == "n" && w[1] == "=" && three == "0")
    });
    found.map(|(i, _)| words[i.saturating_sub(6)..(i + 4).min(words.len())].join(" ")).collect()
}

#[tokio::test]
async fn where_nothing_was_counted_no_page_gives_a_figure() {
    for found in ["Of 0 presses, 0 were", "0 of 0 \u{2013} too early", "pressed (n = 0)", "(from 0 records)", "0 von 0"]
    {
        assert!(!of_nothing(found).is_empty(), "{found}");
    }
    assert!(of_nothing("0 of 12 times, 0% (n = 10), 10 of 40").is_empty());
    let bare = Home::new().await;
    let reward = bare.reward("play", "rope", &[]).await;
    let kept = bare.post(&format!("/a/{}/words/new", bare.animal), &[("says", "tug"), ("reward", &reward)]).await;
    let word = kept.kept().to.split(['/', '?']).nth(5).unwrap().to_owned();
    let animal = bare.animal;
    let mut homes = vec![(bare, vec![(animal, vec![word])])];
    for days_ago in [68.0, 66.0, 62.0, 30.0] {
        homes.push(demo(days_ago).await);
    }
    let (mut pages, mut wrong) = (0, Vec::new());
    for (home, animals) in &homes {
        for (animal, words) in animals {
            let mut all: Vec<String> =
                ["today", "evidence", "days", "patterns", "likes", "words", "checks", "swaps", "designs", "log"]
                    .map(|p| format!("/a/{animal}/{p}"))
                    .into();
            all.extend(["progress", "likes", "meeting"].map(|sheet| format!("/sheets/{animal}/{sheet}")));
            all.extend(words.iter().map(|w| format!("/a/{animal}/evidence/{w}")));
            all.extend(words.iter().map(|w| format!("/a/{animal}/words/card/{w}")));
            for path in all {
                let page = home.page(&path).await.text;
                wrong.extend(of_nothing(&read(&page)).into_iter().map(|f| format!("{path}: {f}")));
                pages += 1;
            }
        }
    }
    wrong.sort();
    wrong.dedup();
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
    assert!(pages > 60, "{pages}");
}

#[tokio::test]
async fn a_word_has_one_verdict_on_chance_and_one_level_of_intervals() {
    let (home, animals) = demo(0.0).await;
    let (mut curves, mut chosen) = (0, 0);
    for (animal, words) in &animals {
        for word in words {
            let page = home.page(&format!("/a/{animal}/evidence/{word}")).await;
            if page.text.contains("asking for the thing: what was drawn so far would also come by chance")
                && page.text.contains("knowing the spoken word: nothing can be said yet")
            {
                // Two looks at two sets of records, one verdict: the ladder's.
                page.does_not_say("that word: more than chance.")
                    .does_not_say("More than chance.")
                    .does_not_say("So far more than chance");
                page.says("told from");
                chosen += usize::from(page.text.contains("what may be said rests on what the notebook drew"));
            }
            page.does_not_say("stays above chance").does_not_say("90% band").does_not_say("90% interval");
            if page.text.contains("95% band") {
                curves += 1;
                page.says("is judged once, under “What may be said”");
                // Shares in the table under the chart are written as on its axis.
                let (_, table) = page.text.split_once("95% band</th>").unwrap();
                let (row, _) = table.split_once("</tr></tbody>").unwrap();
                assert!(row.contains("% to ") && !row.contains("<td>0."), "{row}");
            }
        }
    }
    assert!(curves > 2 && chosen > 0, "{curves} {chosen}");
}
