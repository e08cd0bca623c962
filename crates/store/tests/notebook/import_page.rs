//! The page for people who import says what the importer does.

use crate::common::home;
use sayso_model::{Kind, Press};
use sayso_store::{Format, ImportOptions, Others, Store, columns_of};

const PAGE: &str = include_str!("../../../../docs/import-export.md");

/// The table of fields as the page should have it.
fn table() -> String {
    let mut table = String::from("| kind | columns |\n| --- | --- |\n");
    for kind in Kind::ALL {
        let columns: Vec<String> = columns_of(*kind)
            .into_iter()
            .map(|c| {
                let name = if c.needed { format!("**`{}`**", c.name) } else { format!("`{}`", c.name) };
                format!("{name} ({})", c.holds)
            })
            .collect();
        table.push_str(&format!("| `{}` | {} |\n", kind.name(), columns.join("; ")));
    }
    table
}

#[test]
fn the_table_of_fields_is_that_of_the_model() {
    let (_, rest) = PAGE.split_once("<!-- columns -->\n").unwrap();
    let (found, _) = rest.split_once("<!-- end of columns -->").unwrap();
    assert_eq!(found, table(), "put this between the marks on the page");
}

#[tokio::test]
async fn the_examples_on_the_page_can_be_imported() {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    let examples: Vec<&str> = PAGE.split("```csv\n").skip(1).map(|part| part.split_once("```").unwrap().0).collect();
    assert_eq!(examples.len(), 2);
    let options = ImportOptions { format: Format::Csv, home: Some(home()) };
    // The second begins a notebook; the first needs one more word.
    let begin = format!("{}word_card,2026-01-01T00:00:00Z,,,,,walk,,,\n", examples[1]);
    for (text, rows) in [(begin.as_str(), 6), (examples[0], 4)] {
        let preview = store.preview(text.as_bytes(), &options).await.unwrap();
        let problems: Vec<String> = preview.problems.iter().map(ToString::to_string).collect();
        assert_eq!((problems, preview.new), (Vec::new(), rows));
        store.commit(preview, Others::Refuse).await.unwrap();
    }
    let story = store.story(home()).await.unwrap();
    let momo = *story.animals().keys().next().unwrap();
    let times: Vec<String> = story.of::<Press>(momo).map(|f| f.at().to_string()).collect();
    assert_eq!(times[0], "2026-01-02T00:00:00.000Z");
    assert_eq!(times.len(), 3);
}
