//! Files in and out by the page: looked at first, taken in by choice, and everything taken out again.

use crate::at_home::{Answer, Home};
use axum::body::Body;
use axum::http::{Request, StatusCode, header};
use http_body_util::BodyExt;
use sayso_model::Remark;
use sayso_web::access::Access;
use sayso_web::computing::file_turn;
use sayso_web::store::Store;
use sayso_web::{AppState, app};
use std::sync::Arc;
use tower::ServiceExt;

pub const FORM: &str = "multipart/form-data; boundary=edge";

pub fn as_form(name: &str, bytes: &[u8]) -> Vec<u8> {
    let head = format!("--edge\r\nContent-Disposition: form-data; name=\"file\"; filename=\"{name}\"\r\n\r\n");
    [head.as_bytes(), bytes, b"\r\n--edge--\r\n"].concat()
}

/// Brings a file; gives the address of its preview.
pub async fn bring(home: &Home, name: &str, bytes: &[u8]) -> String {
    let answer = home.post_bytes("/exchange", FORM, as_form(name, bytes)).await;
    assert!(answer.kept().to.starts_with("/exchange/"), "{}", answer.to);
    answer.to
}

/// Files held aside in the notebook's folder.
pub fn held(home: &Home) -> usize {
    let all = std::fs::read_dir(home.state.store.dir()).unwrap();
    all.filter(|e| e.as_ref().unwrap().file_name().to_string_lossy().ends_with(".sayso-part")).count()
}

pub async fn events(home: &Home) -> usize {
    home.story().await.ledger().len()
}

async fn bytes_of(home: &Home, path: &str) -> Vec<u8> {
    let request = Request::get(path).header(header::HOST, "localhost").body(Body::empty()).unwrap();
    let answer = home.app.clone().oneshot(request).await.unwrap();
    assert_eq!(answer.status(), StatusCode::OK, "{path}");
    assert!(answer.headers()[header::CONTENT_DISPOSITION].to_str().unwrap().starts_with("attachment"));
    answer.into_body().collect().await.unwrap().to_bytes().to_vec()
}

pub const DIARY: &str = "kind,happened_at,animal,person,text\n\
                     remark,2026-03-01 10:00,Pip,Robin,rain all day\n\
                     remark,2026-03-01 11:00,Pip,Robin,slept\n";

#[tokio::test]
async fn a_table_is_looked_at_first_and_then_taken_in_once() {
    let home = Home::new().await;
    home.page("/people").await.says("href=\"/exchange\"");
    let page = home.page("/exchange").await;
    page.says("type=\"file\"")
        .says("/api/export.csv")
        .says("/exchange/backup.sayso")
        .says("href=\"/exchange/columns\"");
    home.page("/exchange/columns").await.says("Import and export").says("happened_at").does_not_say("href=\"decisions");
    let before = events(&home).await;
    let to = bring(&home, "C:\\notes\\diary.csv", DIARY.as_bytes()).await;
    home.page(&to)
        .await
        .says("diary.csv")
        .does_not_say("notes")
        .says("<dt>New</dt><dd class=\"num\">2</dd>")
        .says("The house by the park")
        .says("<dd class=\"num\">1 Mar 2026</dd>")
        .does_not_say("checkbox");
    assert_eq!((events(&home).await, held(&home)), (before, 1));
    assert_eq!(home.post(&to, &[]).await.kept().to, to);
    home.page(&to).await.says("2 events new, 0 known already");
    assert_eq!((events(&home).await, held(&home)), (before + 2, 0));
    // Sent twice, done once.
    home.post(&to, &[]).await.kept();
    assert_eq!(events(&home).await, before + 2);
    let again = bring(&home, "diary.csv", DIARY.as_bytes()).await;
    home.page(&again)
        .await
        .says("nothing-new")
        .says("<dt>Known already</dt><dd class=\"num\">2</dd>")
        .does_not_say("data-test=\"take-in\"");
    assert_eq!(home.post(&format!("{again}/away"), &[]).await.kept().to, "/exchange");
    assert_eq!((home.get(&again).await.status, held(&home)), (StatusCode::NOT_FOUND, 0));
}

#[tokio::test]
async fn another_home_comes_in_only_where_its_box_is_ticked() {
    let (home, other) = (Home::new().await, Home::new().await);
    let theirs = bytes_of(&other, "/api/export.jsonl").await;
    let backup = bytes_of(&other, "/exchange/backup.sayso").await;
    for (name, bytes) in [("theirs.jsonl", &theirs), ("copy.sayso", &backup)] {
        let to = bring(&home, name, bytes).await;
        home.page(&to)
            .await
            .says("not in this notebook")
            .says("name=\"take_in_other_home\" value=\"yes\"")
            .does_not_say("checked");
        home.post(&to, &[]).await.refused().says("Take in another home too");
        assert_eq!(home.state.store.homes().await.unwrap().len(), 1);
        home.post(&to, &[("take_in_other_home", "perhaps")]).await.refused();
    }
    let to = bring(&home, "copy.sayso", &backup).await;
    home.post(&to, &[("take_in_other_home", "yes")]).await.kept();
    home.page(&to).await.says("3 events new");
    assert_eq!(home.state.store.homes().await.unwrap().len(), 2);
}

#[tokio::test]
async fn one_mistake_in_many_rows_is_told_once_and_sound_rows_come_in_by_choice() {
    let home = Home::new().await;
    let mut table = DIARY.to_owned();
    for minute in 10..50 {
        table.push_str(&format!("remark,2026-03-01 12:{minute},Pop,Robin,typed too fast\n"));
    }
    table.push_str("remarc,2026-03-01 13:00,Pip,Robin,a\n");
    let to = bring(&home, "diary.csv", table.as_bytes()).await;
    let page = home.page(&to).await;
    page.says("40 times (lines 4, 5, 6, 7, 8 and more)")
        .says("found \u{201c}Pop\u{201d}, for example; wanted an id or one of the known names: Pip")
        .says("once (line 44)")
        .says("<dt>With other faults</dt><dd class=\"num\">41</dd>");
    assert_eq!(page.text.matches("data-test=\"fault\"").count(), 2);
    let before = events(&home).await;
    home.post(&to, &[]).await.refused().says("Leave out the rows with faults");
    assert_eq!(events(&home).await, before);
    home.post(&to, &[("leave_out_faulty_rows", "yes")]).await.kept();
    assert_eq!(events(&home).await, before + 2);
}

#[tokio::test]
async fn an_id_that_another_event_has_is_counted_apart() {
    let home = Home::new().await;
    home.post(&bring(&home, "diary.csv", DIARY.as_bytes()).await, &[]).await.kept();
    let lines = String::from_utf8(bytes_of(&home, "/api/export.jsonl").await).unwrap();
    let changed = lines.replace("slept", "did not sleep");
    let to = bring(&home, "log.jsonl", changed.as_bytes()).await;
    home.page(&to)
        .await
        .says("<dt>Another event has their id</dt><dd class=\"num\">1</dd>")
        .says("<dt>With other faults</dt><dd class=\"num\">0</dd>")
        .says("an id of its own");
}

#[tokio::test]
async fn what_is_none_of_our_files_is_refused_in_words_and_not_kept() {
    let home = Home::new().await;
    let send = |name: &'static str, bytes: &'static [u8]| home.post_bytes("/exchange", FORM, as_form(name, bytes));
    send("cat.png", b"\x89PNG\r\n\x1a\n....").await.refused().says("cat.png").says("(.csv)");
    send("empty.csv", b"").await.refused().says("missing or empty");
    home.post_bytes("/exchange", FORM, b"--edge--\r\n".to_vec()).await.refused().says("choose one");
    let plain = home.post_bytes("/exchange", "text/csv", DIARY.as_bytes().to_vec()).await;
    assert_eq!(plain.status, StatusCode::BAD_REQUEST, "{}", plain.text);
    for (name, bytes, words) in [
        ("copy.sayso", &b"SQLite format 3\0 and nothing more"[..], "copy.sayso"),
        ("all.tar", b"no tar at all", "cannot be read as an archive"),
    ] {
        let to = bring(&home, name, bytes).await;
        home.get(&to).await.refused().says(words);
        assert_eq!(home.get(&to).await.status, StatusCode::NOT_FOUND);
    }
    assert_eq!(held(&home), 0);
}

#[tokio::test]
async fn a_file_that_is_too_large_is_refused_with_what_would_do() {
    let home = Home::new().await;
    let most = 128 << 20;
    let said = |answer: &Answer| {
        assert_eq!(answer.status, StatusCode::PAYLOAD_TOO_LARGE, "{}", answer.text);
        answer.says("134,217,728 bytes");
    };
    // One byte more than may be, and one that says beforehand how large it is.
    said(&home.post_bytes("/exchange", FORM, as_form("all.csv", &vec![b'x'; most + 1])).await);
    let request = Request::post("/exchange")
        .header(header::HOST, "localhost")
        .header(header::CONTENT_TYPE, FORM)
        .header(header::CONTENT_LENGTH, u64::MAX)
        .body(Body::empty())
        .unwrap();
    assert_eq!(home.app.clone().oneshot(request).await.unwrap().status(), StatusCode::PAYLOAD_TOO_LARGE);
    assert_eq!(held(&home), 0);
}

#[tokio::test]
async fn another_sites_page_can_bring_nothing() {
    let home = Home::new().await;
    let to = bring(&home, "diary.csv", DIARY.as_bytes()).await;
    let form = "application/x-www-form-urlencoded";
    for (path, kind, body) in [("/exchange", FORM, as_form("a.csv", DIARY.as_bytes())), (to.as_str(), form, Vec::new())]
    {
        let request = Request::post(path)
            .header(header::HOST, "localhost")
            .header(header::ORIGIN, "https://elsewhere.example")
            .header(header::CONTENT_TYPE, kind);
        let answer = home.app.clone().oneshot(request.body(Body::from(body)).unwrap()).await.unwrap();
        assert_eq!(answer.status(), StatusCode::FORBIDDEN, "{path}");
    }
    assert_eq!(held(&home), 1);
}

#[tokio::test]
async fn few_files_wait_at_once_and_the_oldest_goes() {
    let home = Home::new().await;
    let first = bring(&home, "diary.csv", DIARY.as_bytes()).await;
    for _ in 0..4 {
        bring(&home, "diary.csv", DIARY.as_bytes()).await;
    }
    assert_eq!((held(&home), home.get(&first).await.status), (4, StatusCode::NOT_FOUND));
}

#[tokio::test]
async fn an_archive_and_a_backup_begin_an_empty_notebook() {
    let home = Home::new().await;
    home.post(&bring(&home, "diary.csv", DIARY.as_bytes()).await, &[]).await.kept();
    for (path, name) in [("/exchange/archive.tar", "sayso.tar"), ("/exchange/backup.sayso", "copy.sayso")] {
        let file = bytes_of(&home, path).await;
        assert_eq!(held(&home), 0);
        let dir = tempfile::tempdir().unwrap();
        let store = Arc::new(Store::open(dir.path()).await.unwrap());
        let empty = app(AppState::new(store.clone(), Access::this_machine()));
        let ask = |request: axum::http::request::Builder, body: Vec<u8>| {
            let request = request.header(header::HOST, "localhost").body(Body::from(body)).unwrap();
            empty.clone().oneshot(request)
        };
        let start = ask(Request::get("/start"), Vec::new()).await.unwrap().into_body().collect().await.unwrap();
        assert!(String::from_utf8_lossy(&start.to_bytes()).contains("href=\"/exchange\""));
        assert_eq!(ask(Request::get("/exchange"), Vec::new()).await.unwrap().status(), StatusCode::OK);
        let brought = Request::post("/exchange").header(header::CONTENT_TYPE, FORM);
        let answer = ask(brought, as_form(name, &file)).await.unwrap();
        let to = answer.headers()[header::LOCATION].to_str().unwrap().to_owned();
        assert_eq!(ask(Request::get(&to), Vec::new()).await.unwrap().status(), StatusCode::OK);
        let taken = Request::post(&to).header(header::CONTENT_TYPE, "application/x-www-form-urlencoded");
        assert_eq!(ask(taken, Vec::new()).await.unwrap().status(), StatusCode::SEE_OTHER);
        let held = store.home().await.unwrap().unwrap();
        let story = store.story(held).await.unwrap();
        assert_eq!(story.ledger().len(), events(&home).await, "{name}");
        assert_eq!(story.of::<Remark>(home.animal).count(), 2);
    }
}

#[tokio::test]
async fn a_preview_is_worked_out_once_until_the_notebook_grows() {
    let home = Home::new().await;
    let to = bring(&home, "diary.csv", DIARY.as_bytes()).await;
    let first = home.page(&to).await.text;
    let in_folder = std::fs::read_dir(home.state.store.dir()).unwrap().map(|e| e.unwrap().path());
    let file = in_folder.into_iter().find(|p| p.to_string_lossy().ends_with(".sayso-part")).unwrap();
    // Would it be read again, it would be another.
    std::fs::write(&file, DIARY.lines().take(2).collect::<Vec<_>>().join("\n")).unwrap();
    assert_eq!(home.page(&to).await.text, first);
    let other = "kind,happened_at,animal,person,text\nremark,2026-03-01 12:00,Pip,Robin,ate\n";
    home.post(&bring(&home, "other.csv", other.as_bytes()).await, &[]).await.kept();
    home.page(&to).await.says("<dt>New</dt><dd class=\"num\">1</dd>");
}

#[tokio::test]
async fn taken_in_by_two_at_once_it_is_told_as_it_was_the_first_time() {
    let home = Arc::new(Home::new().await);
    let to = bring(&home, "diary.csv", DIARY.as_bytes()).await;
    let turn = file_turn().await;
    let both: Vec<_> = (0..4)
        .map(|_| {
            let (home, to) = (Arc::clone(&home), to.clone());
            tokio::spawn(async move { home.post(&to, &[]).await.status })
        })
        .collect();
    // Time for all to come as far as they can before the first goes on.
    tokio::time::sleep(std::time::Duration::from_millis(200)).await;
    drop(turn);
    for one in both {
        assert_eq!(one.await.unwrap(), StatusCode::SEE_OTHER);
    }
    home.page(&to).await.says("2 events new, 0 known already");
}

#[tokio::test]
async fn an_empty_notebook_begins_with_several_homes_only_by_choice() {
    let (home, other) = (Home::new().await, Home::new().await);
    let both = [bytes_of(&home, "/api/export.jsonl").await, bytes_of(&other, "/api/export.jsonl").await].concat();
    let to = bring(&home, "both.jsonl", &both).await;
    home.post(&to, &[("take_in_other_home", "yes")]).await.kept();
    for path in ["/api/export.jsonl", "/exchange/backup.sayso"] {
        let file = bytes_of(&home, path).await;
        let empty = Home::empty().await;
        let to = bring(&empty, "all", &file).await;
        let page = empty.page(&to).await;
        page.says("the file holds several homes")
            .says("name=\"take_in_other_home\" value=\"yes\"")
            .does_not_say("checked");
        // Both are called the same, so the end of the id stands beside each.
        assert_eq!(page.text.matches("</strong> (\u{2026}").count(), 2, "{}", page.text);
        empty.post(&to, &[]).await.refused().says("Begin with all of them in one notebook");
        assert!(empty.state.store.homes().await.unwrap().is_empty());
        empty.post(&to, &[("take_in_other_home", "yes")]).await.kept();
        assert_eq!(empty.state.store.homes().await.unwrap().len(), 2);
    }
}

#[tokio::test]
async fn a_diary_with_columns_of_its_own_is_taken_in_as_the_preview_said() {
    let home = Home::new().await;
    let words = b"kind,happened_at,says\nword_card,2026-01-01 08:00,walk\n";
    home.post(&bring(&home, "words.csv", words).await, &[]).await.kept();
    let table = "Date,Time,Word,Who,Note\n2026-02-01,8:30,walk,Pip,sunny\n2026-02-02,,walk,,\n2026-02-03,09:00,,Robin,slept\n\
                 2026-02-04,09:00,walk,Robin,\n2026-02-05,,zebra,Pip,\nlast week,,walk,Pip,sunny\n";
    let before = events(&home).await;
    let to = bring(&home, "diary.csv", table.as_bytes()).await;
    home.page(&to)
        .await
        .says("data-test=\"diary\"")
        .says("“Word”: the word the animal pressed")
        .says("put at noon")
        .says("<dt>Rows</dt><dd class=\"num\">6</dd>")
        .says("<dt>New</dt><dd class=\"num\">4</dd>")
        // In the diary's own columns, row by row.
        .says("<strong>Who</strong>, once (line 5): found “Robin”")
        .says("<strong>Word</strong>, once (line 6): found “zebra”")
        .says("<strong>Date</strong>, once (line 7): found “last week”")
        .does_not_say("columns-help");
    assert_eq!(events(&home).await, before);
    home.post(&to, &[("leave_out_faulty_rows", "yes")]).await.kept();
    let story = home.story().await;
    assert_eq!(story.ledger().len(), before + 4);
    // The second names nobody: only one animal lives here.
    let pressed: Vec<String> = story.of::<sayso_model::Press>(home.animal).map(|f| f.at().to_string()).collect();
    assert_eq!(pressed, ["2026-02-01T07:30:00.000Z", "2026-02-02T11:00:00.000Z"]);
}

#[tokio::test]
async fn a_table_that_is_not_understood_gets_an_example_that_is() {
    let home = Home::new().await;
    let to = bring(&home, "diary.csv", b"date,word,mood\n2026-03-01,walk,good\n").await;
    home.page(&to)
        .await
        .says("data-test=\"columns-help\"")
        .says("Found these columns: date, word and mood.")
        .says("href=\"/exchange/diary.csv\"")
        .does_not_say("data-test=\"take-in\"");
    for of in sayso_model::Language::ALL {
        let example = sayso_wording::say!(&sayso_wording::Locale::of(of), exchange::example);
        let to = bring(&home, "diary.csv", example.as_bytes()).await;
        home.page(&to).await.says("data-test=\"diary\"").does_not_say("columns-help");
    }
    assert!(String::from_utf8(bytes_of(&home, "/exchange/diary.csv").await).unwrap().starts_with("date,time,word,who"));
}
