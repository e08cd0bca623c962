//! Rows out and a release in, as a person runs the commands.
#![cfg(unix)]
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use sayso_advisor::summary::summary_rows;
use sayso_model::Story;
use sayso_norms::{StudyName, read_rows};
use sayso_sim::{any_home, simulate};
use sayso_store::Store;
use std::path::Path;
use std::process::{Command, Output};

const INVENTED: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../tests/norms/invented.sayso-norms");

fn sayso(args: &[&str]) -> Output {
    let mut command = Command::new(env!("CARGO_BIN_EXE_sayso"));
    command.env_remove("SAYSO_DATABASE").args(args).args(["--language", "en"]).output().unwrap()
}

fn said(bytes: &[u8]) -> String {
    String::from_utf8_lossy(bytes).into_owned()
}

/// A notebook of a simulated home.
async fn notebook(dir: &Path) -> Story {
    let mut home = any_home(3);
    home.days = 12;
    let events = simulate(&home, 3, "2026-03-01T19:00:00Z".parse().unwrap()).unwrap().events;
    let store = Store::open(dir).await.unwrap();
    store.append(events.clone()).await.unwrap();
    store.close().await.unwrap();
    Story::from_events(events)
}

#[tokio::test(flavor = "multi_thread")]
async fn a_notebooks_rows_are_printed_and_say_what_is_in_them() {
    let dir = tempfile::tempdir().unwrap();
    let story = notebook(dir.path()).await;
    let data = dir.path().to_str().unwrap();
    let done = sayso(&["norms", "rows", "--data", data, "--name", "h-7"]);
    assert!(done.status.success(), "{}", said(&done.stderr));
    let rows = read_rows(&said(&done.stdout)).unwrap();
    assert_eq!(rows, summary_rows(&story, &StudyName::new("h-7").unwrap()));
    assert!(rows.len() > 1);
    let told = said(&done.stderr);
    assert!(told.contains(&format!("{} rows, one for each animal and word", rows.len())), "{told}");
    // Nothing of what people wrote.
    let text = said(&done.stdout);
    let names = story.animals().into_values().map(|card| card.name.to_string());
    let words = story.words().into_values().map(|card| card.says.to_string());
    for own in names.chain(words).chain([story.home().unwrap().name.to_string()]) {
        assert!(!text.contains(&format!("\"{own}\"")), "{own} is in the rows");
    }
    let wrong = sayso(&["norms", "rows", "--data", data, "--name", "Ann Lee"]);
    assert!(!wrong.status.success() && said(&wrong.stderr).contains("1 to 64 letters"), "{}", said(&wrong.stderr));
}

#[tokio::test(flavor = "multi_thread")]
async fn a_release_is_kept_and_a_bad_file_changes_nothing() {
    let (dir, outside) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    notebook(dir.path()).await;
    let data = dir.path().to_str().unwrap();
    let kept = dir.path().join("current.sayso-norms");
    let done = sayso(&["norms", "import", "--data", data, INVENTED]);
    let told = said(&done.stdout);
    assert!(done.status.success(), "{}", said(&done.stderr));
    assert!(told.contains("“Invented homes” of 1 Mar 2026") && told.contains("no evidence about animals"), "{told}");
    let good = std::fs::read(INVENTED).unwrap();
    assert_eq!(std::fs::read(&kept).unwrap(), good);
    assert_eq!(std::os::unix::fs::PermissionsExt::mode(&kept.metadata().unwrap().permissions()) & 0o777, 0o600);

    let bad = outside.path().join("bad.sayso-norms");
    let text = String::from_utf8(good.clone()).unwrap();
    for (wrong, why) in [
        (text[..text.len() / 2].to_owned(), "EOF while parsing"),
        (text.replacen("\"level\": 0.95", "\"level\": 2", 1), "level is 2: it must be from 0.5 to below 1"),
        (text.replacen("\"people\": \"invented\"", "\"people\": \"self_chosen\"", 1), "noise is null"),
        (String::new(), "EOF"),
    ] {
        std::fs::write(&bad, wrong).unwrap();
        let refused = sayso(&["norms", "import", "--data", data, bad.to_str().unwrap()]);
        let told = said(&refused.stderr);
        assert!(!refused.status.success() && told.contains(why) && told.contains("nothing was changed"), "{told}");
        assert_eq!(std::fs::read(&kept).unwrap(), good);
    }
    std::fs::write(&bad, [0xff, 0xfe]).unwrap();
    assert!(said(&sayso(&["norms", "import", "--data", data, bad.to_str().unwrap()]).stderr).contains("UTF-8"));
    let nowhere = outside.path().join("none");
    let refused = sayso(&["norms", "import", "--data", nowhere.to_str().unwrap(), INVENTED]);
    assert!(!refused.status.success() && !nowhere.exists());
    // A server does not begin with another release than it was told.
    let served = ["host", "--public-url", "http://localhost:1", "--database", "postgres://localhost:1/x", "--norms"];
    let refused = sayso(&[&served[..], &[bad.to_str().unwrap()]].concat());
    assert!(!refused.status.success() && said(&refused.stderr).contains("UTF-8"), "{}", said(&refused.stderr));
}

#[test]
fn a_key_beside_the_rows_or_too_short_is_refused_before_anything_is_read() {
    let (dir, apart) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let to = dir.path().join("rows.jsonl");
    let (beside, short) = (dir.path().join("key"), apart.path().join("short"));
    std::fs::write(&beside, [7; 32]).unwrap();
    std::fs::write(&short, [7; 31]).unwrap();
    let rows = |key: &Path| {
        let (key, to) = (key.to_str().unwrap(), to.to_str().unwrap());
        sayso(&["norms", "rows", "--database", "postgres://localhost:1/x", "--key-file", key, "--to", to])
    };
    assert!(said(&rows(&beside).stderr).contains("lies in the folder of the rows"));
    assert!(said(&rows(&short).stderr).contains("31 bytes"));
    assert!(!to.exists());
    let both = sayso(&["norms", "rows", "--data", "x", "--key-file", "y", "--to", "z"]);
    assert!(!both.status.success());
}
