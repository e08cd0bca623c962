//! The coach's desk in a browser: by keyboard alone, on a phone and on a desk's screen, in two languages, by the rules; and a home whose
//! consent is taken back while the coach looks is gone at the next key.

use crate::accessibility;
use crate::harness::{Browser, PHONE};
use crate::hosted::Hosted;
use crate::phone::{self, NARROW, STAND_IN};
use crate::talking::{keeper_and_coach, turns_figures};
use sayso_model::{AnimalId, Body, Event, EventId, Note, Sign, SignLevel, Source, When, Withdrawal};
use serde_json::json;
use uuid::Uuid;

/// A desk's screen.
const SCREEN: (u32, u32) = (1280, 900);
/// What has the focus, by what tests know it by.
const FOCUSED: &str = "return document.activeElement?.dataset?.test ?? ''";

async fn focused(browser: &Browser) -> String {
    browser.page.execute(FOCUSED, vec![]).await.unwrap().as_str().unwrap_or_default().to_owned()
}

/// A key pressed where the focus is.
pub async fn key(browser: &Browser, key: &str) {
    browser.page.active_element().await.unwrap().send_keys(key).await.unwrap();
}

/// Tab until what tests know by that name has the focus.
pub async fn tabs_to(browser: &Browser, test: &str) {
    for _ in 0..40 {
        if focused(browser).await == test {
            return;
        }
        key(browser, "\u{e004}").await;
    }
    panic!("Tab does not reach {test}");
}

async fn count(browser: &Browser, test: &str) -> usize {
    let script = format!("return document.querySelectorAll('[data-test={test}]').length");
    browser.page.execute(&script, vec![]).await.unwrap().as_u64().unwrap() as usize
}

#[tokio::test(flavor = "multi_thread")]
async fn the_desk_is_worked_by_keyboard_alone_and_holds_by_the_rules() {
    let server = Hosted::start().await;
    let (home, keeper_link, club, coach_link) = server.home_and_club().await;
    // One animal guards something; of another a growl was written down and taken back.
    let story = server.story(home).await;
    let animals: Vec<AnimalId> = story.animals().into_keys().collect();
    let at = sayso_web::state::machine_clock().plus_seconds(-3600.0);
    let pattern = story.ledger().all().find(|e| e.animal.is_some()).unwrap().clone();
    let event = |animal: AnimalId, body: Body| Event {
        id: EventId(Uuid::now_v7()),
        animal: Some(animal),
        happened_at: at,
        recorded_at: at,
        source: Source::Tap,
        body,
        ..pattern.clone()
    };
    let sign = |what: &str| Sign {
        sign: Note::new(what).unwrap(),
        level: SignLevel::Strong,
        when: When::After,
        session: None,
    };
    let growl = event(animals[1], sign("growl").into());
    let back = event(animals[1], Withdrawal { of: growl.id, because: None }.into());
    let guards = event(animals[0], sign("guards food, a thing or the button").into());
    server.writes(home, vec![growl, back, guards]).await;
    let (keeper, coach) = keeper_and_coach(&server, (&keeper_link, club, &coach_link), SCREEN).await;
    // From the club's page by its link.
    coach.goto(&server.url(&format!("/club/{club}"))).await;
    coach.follow("[data-test=to-desk]").await;
    let rows = count(&coach, "row").await;
    assert_eq!(rows, 2, "both animals stand on the desk");
    coach.picture("caseload-1280").await;
    // Into the list, to the last row and back, with letters and arrows.
    tabs_to(&coach, "open").await;
    let at = "return [...document.querySelectorAll('.desk-row')].indexOf(document.activeElement.closest('.desk-row'))";
    for (pressed, place) in [("j", 1), ("j", 1), ("k", 0), ("\u{e015}", 1), ("\u{e013}", 0), ("k", 0)] {
        key(&coach, pressed).await;
        let now = coach.page.execute(at, vec![]).await.unwrap().as_u64().unwrap() as usize;
        assert_eq!(now, place, "{pressed:?}");
    }
    // Put aside by a letter, but never what is about safety; the focus stays in the list.
    key(&coach, "a").await;
    assert_eq!((count(&coach, "row").await, count(&coach, "put").await), (rows, 0));
    key(&coach, "j").await;
    key(&coach, "a").await;
    coach.css("[data-test=put]").await;
    coach.picture("caseload-put").await;
    coach.until("a row has the focus", "return document.activeElement?.dataset?.test === 'open'").await;
    coach.page.execute("document.activeElement.blur()", vec![]).await.unwrap();
    tabs_to(&coach, "back").await;
    key(&coach, "\u{e007}").await;
    coach.until("is back", "return !document.querySelector('[data-test=put]')").await;
    coach.until("back in the list", "return document.activeElement?.dataset?.test === 'open'").await;
    assert_eq!(count(&coach, "row").await, rows);
    // Enter opens the animal's Today.
    tabs_to(&coach, "open").await;
    key(&coach, "\u{e007}").await;
    coach.until("Today is open", "return location.pathname.endsWith('/today')").await;
    // The week, and that they spoke.
    coach.goto(&server.url("/desk/week")).await;
    coach.picture("caseload-week-1280").await;
    let news = count(&coach, "news").await;
    assert!(news > 0);
    if count(&coach, "no-news").await == 0 {
        tabs_to(&coach, "spoken").await;
        key(&coach, "\u{e007}").await;
        coach.until("they spoke", "return document.body.textContent.includes('Since you spoke') || !!document.querySelector('[data-test=no-news]')").await;
        // Never lost: at a row, or at the heading where none is left.
        let kept = "return document.activeElement?.matches('h1, [data-test=open]') ?? false";
        coach.until("the focus is kept", kept).await;
    }
    let pages = ["/desk", "/desk/week", "/desk/changes", "/desk?kind=none"];
    let wrong = faults_of(&server, (&keeper, &coach), &pages, async |reader| {
        reader.css("[data-test=to-week]").await;
    })
    .await;
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
    // On a phone the first need stands on the first screen, whole.
    coach.resize(PHONE).await;
    coach.goto(&server.url("/desk")).await;
    let ends = "return document.querySelector('[data-test=need]').getBoundingClientRect().bottom";
    let ends = coach.page.execute(ends, vec![]).await.unwrap().as_f64().unwrap();
    assert!(ends <= f64::from(PHONE.1), "the first need ends {ends} below the top");
    coach.resize(SCREEN).await;
    // Taken back while the coach looks: gone at the next tap.
    coach.goto(&server.url("/desk")).await;
    turns_figures(&keeper, &server, club).await;
    coach.follow("[data-test=to-week]").await;
    assert_eq!((count(&coach, "news").await, count(&coach, "no-news").await), (0, 1));
    coach.goto(&server.url("/desk")).await;
    assert_eq!((count(&coach, "row").await, count(&coach, "none").await), (0, 1));
    coach.close().await;
    keeper.close().await;
}

/// Faults of pages as the coach sees them, by the rules and by their width: at each size, and in two languages more. `opened` is done on each once it is
/// there.
async fn faults_of(
    server: &Hosted,
    (keeper, coach): (&Browser, &Browser),
    pages: &[&str],
    opened: impl AsyncFn(&Browser),
) -> Vec<String> {
    let mut wrong = Vec::new();
    let session = coach.page.get_named_cookie(sayso_host::SESSION_COOKIE).await.unwrap().value().to_owned();
    for (size, what) in [(SCREEN, "screen"), (PHONE, "phone"), (NARROW, "narrow")] {
        let reader = keeper.another(size).await;
        let cookie = json!({ "name": sayso_host::SESSION_COOKIE, "value": session, "url": server.url("/") });
        reader.devtools("Network.setCookie", cookie).await;
        for path in pages {
            wrong.extend(accessibility::faults(&reader, &server.url(path), &format!("{path} ({what})")).await);
            for language in [STAND_IN, "de", "en"] {
                phone::reads_at(&reader, &server.url("/"), language).await;
                reader.goto(&server.url(path)).await;
                opened(&reader).await;
                reader.picture(&format!("caseload-{what}-{language}-{}", path.replace(['/', '?', '='], "_"))).await;
                let wide = "return [document.documentElement.scrollWidth, document.documentElement.clientWidth]";
                let wide = reader.page.execute(wide, vec![]).await.unwrap();
                // A bar to scroll by may take some of it.
                assert!((size.0 - 20..=size.0).contains(&(wide[1].as_u64().unwrap() as u32)), "{wide}");
                if wide[0] != wide[1] {
                    wrong.push(format!("{path} ({what}, {language}): scrolls sideways, {wide}"));
                }
            }
        }
        reader.close().await;
    }
    wrong
}

/// A word shown twice a day for sixty days, and not pressed.
fn not_pressed(pattern: &Event, animal: AnimalId) -> Vec<Event> {
    let now = sayso_web::state::machine_clock();
    let event = |at: sayso_model::Moment, body: serde_json::Value| Event {
        id: EventId(Uuid::now_v7()),
        animal: Some(animal),
        happened_at: at,
        recorded_at: at,
        source: Source::Tap,
        body: serde_json::from_value(body).unwrap(),
        ..pattern.clone()
    };
    let word = Uuid::now_v7();
    let card = json!({ "kind": "word_card", "word": word, "says": "rope", "answer": "Tug.", "not_now": "Later." });
    let mut all = vec![Event { animal: None, ..event(now.plus_seconds(-61.0 * 86_400.0), card) }];
    for nth in 0..120 {
        let at = now.plus_seconds(-43_200.0 * f64::from(nth + 1));
        let press = event(at, json!({ "kind": "press", "word": word, "by": "person" }));
        let given = json!({ "kind": "delivery", "answers": press.id, "word": word, "answer": "given", "then": "took" });
        all.extend([event(at.plus_seconds(2.0), given), press]);
    }
    all
}

#[tokio::test(flavor = "multi_thread")]
async fn a_word_outside_the_middle_of_comparable_homes_is_told_with_whose_figures_these_are() {
    let norms = sayso_norms::Release::read(include_str!("../norms/invented.sayso-norms")).unwrap();
    let server = Hosted::start_beside(norms).await;
    let (home, keeper_link, club, coach_link) = server.home_and_club().await;
    let story = server.story(home).await;
    let dog = story.animals().into_values().find(|card| card.species == sayso_model::Species::Dog).unwrap().animal;
    let pattern = story.ledger().all().find(|e| e.animal.is_some()).unwrap();
    server.writes(home, not_pressed(pattern, dog)).await;
    let (keeper, coach) = keeper_and_coach(&server, (&keeper_link, club, &coach_link), PHONE).await;
    let path = "/desk?kind=outside";
    let wrong = faults_of(&server, (&keeper, &coach), &[path], async |reader| {
        reader.press("[data-test=whose-figures] summary").await;
    })
    .await;
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
    coach.goto(&server.url(path)).await;
    let need = coach.text("need").await;
    assert!(need.contains("Outside the middle nine tenths of 66 comparable homes: no press of “rope” yet"), "{need}");
    coach.press("[data-test=whose-figures] summary").await;
    assert!(coach.text("whose-figures").await.contains("From the release “Invented homes”"));
    turns_figures(&keeper, &server, club).await;
    coach.goto(&server.url(path)).await;
    assert_eq!(count(&coach, "row").await, 0);
    coach.close().await;
    keeper.close().await;
}

/// Rows of the week that stand whole within the window, and texts of a row that lie on one another.
const ROWS: &str = r#"
const rows = [...document.querySelectorAll("ul.desk.close")[0].querySelectorAll(":scope > li")];
const seen = rows.filter((row) => row.getBoundingClientRect().bottom <= innerHeight).length;
const over = [];
for (const row of rows) {
  const cells = [...row.querySelectorAll(".who-is h2 > *, .who-is p, .what, .value, .scale, svg, .news li, .news summary, .does button")]
    .filter((cell) => cell.checkVisibility());
  const boxes = cells.map((cell) => {
    const range = document.createRange();
    range.selectNodeContents(cell);
    const box = (cell.tagName === "svg" ? cell : range).getBoundingClientRect();
    const own = cell.getBoundingClientRect();
    // What is cut off with an ellipsis ends with its cell.
    return { left: Math.max(box.left, own.left), right: Math.min(box.right, own.right), top: box.top, bottom: box.bottom, text: cell.textContent };
  });
  const whole = row.getBoundingClientRect();
  for (const [i, a] of boxes.entries()) {
    if (a.right > whole.right + 1 || a.left < whole.left - 1) over.push(`${a.text} leaves its row`);
    for (const b of boxes.slice(i + 1)) {
      const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      const high = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
      if (wide > 1 && high > 2) over.push(`${a.text} / ${b.text}: ${wide} by ${high}`);
    }
  }
}
return [rows.length, seen, over, rows.map((row) => Math.round(row.getBoundingClientRect().height))];"#;

#[tokio::test(flavor = "multi_thread")]
async fn a_caseload_of_twelve_stands_on_one_screen_of_the_week_and_nothing_lies_on_anything() {
    let server = Hosted::start().await;
    let (_, keeper_link, club, coach_link) = server.home_and_club().await;
    server.caseload(club, 12).await;
    let (keeper, coach) = keeper_and_coach(&server, (&keeper_link, club, &coach_link), (1280, 800)).await;
    // Homes are read one after the other; an opening waits for a few.
    for _ in 0..60 {
        coach.goto(&server.url("/desk/week")).await;
        if count(&coach, "behind").await == 0 {
            break;
        }
    }
    for language in ["de", "en"] {
        phone::reads_at(&coach, &server.url("/"), language).await;
        coach.goto(&server.url("/desk/week")).await;
        coach.css("[data-test=news]").await;
        coach.picture(&format!("week-1280-{language}")).await;
        let told = coach.page.execute(ROWS, vec![]).await.unwrap();
        println!("{language}: rows, in view, overlaps, heights: {told}");
        assert_eq!(told[2].as_array().unwrap().len(), 0, "{told}");
        assert_eq!((told[0].as_u64(), told[1].as_u64()), (Some(12), Some(12)), "every one of them, whole: {told}");
        // Their columns say what the figures are of, whole and above them; a sign is never cut or folded.
        let columns = "const heads = [...document.querySelectorAll('ul.desk.close')[0].previousElementSibling.querySelectorAll('.tiny')]; \
            const figures = document.querySelector('ul.desk.close').querySelectorAll('figure.tiny'); \
            return heads.filter((head, i) => head.scrollWidth > head.clientWidth || head.textContent !== figures[i].querySelector('.what').textContent \
            || Math.abs(head.getBoundingClientRect().left - figures[i].getBoundingClientRect().left) > 1).length + (heads.length === 3 ? 0 : 100)";
        assert_eq!(coach.page.execute(columns, vec![]).await.unwrap(), json!(0));
        let signs = "const all = [...document.querySelectorAll('.news .sign')]; return [all.length > 0, \
            all.filter((s) => !s.checkVisibility() || s.closest('details') && !s.closest('ul.desk').closest('details') \
            || s.scrollWidth > s.clientWidth || s.scrollHeight > s.clientHeight + 1).length]";
        assert_eq!(coach.page.execute(signs, vec![]).await.unwrap(), json!([true, 0]));
    }
    // In letters twice as large it is read as on a phone: nothing leaves the screen.
    coach.page.execute("document.documentElement.style.fontSize = '200%'", vec![]).await.unwrap();
    let leaves = "return [...document.querySelectorAll('main :is(a, button, summary, .what)')].filter((e) => e.checkVisibility() \
                  && (e.getBoundingClientRect().right > innerWidth || e.scrollWidth > e.clientWidth + 1 && getComputedStyle(e).overflowX === 'hidden')).length";
    assert_eq!(coach.page.execute(leaves, vec![]).await.unwrap(), json!(0));
    coach.picture("week-1280-large").await;
    coach.page.execute("document.documentElement.style.fontSize = ''", vec![]).await.unwrap();
    // The keys go through it as it is seen: down, and along a row.
    let order = "const all = [...document.querySelectorAll('ul.desk.close')[0].querySelectorAll('a, button, summary')]
        .filter((e) => e.checkVisibility()).map((e) => e.getBoundingClientRect());
        return all.filter((r, i) => i > 0 && r.bottom < all[i - 1].top).length";
    for size in [(1280, 800), PHONE] {
        coach.resize(size).await;
        assert_eq!(coach.page.execute(order, vec![]).await.unwrap(), json!(0), "{size:?}");
    }
    coach.resize((1280, 800)).await;
    // How the small charts are read stands on the page.
    assert_eq!(count(&coach, "key").await, 1);
    // Every figure has its number and its scale.
    let figures = count(&coach, "figures").await;
    let bare = "return [...document.querySelectorAll('figure.tiny')].filter((f) => !f.querySelector('.value').textContent || f.querySelectorAll('.scale span').length !== 2).length";
    assert_eq!((figures > 0, coach.page.execute(bare, vec![]).await.unwrap()), (true, json!(0)));
    // j and k lead into the list from wherever one is, unless that is turned off.
    let at = "return [...document.querySelectorAll('.desk-row')].indexOf(document.activeElement.closest('.desk-row'))";
    key(&coach, "j").await;
    assert_eq!(coach.page.execute(at, vec![]).await.unwrap(), json!(0));
    key(&coach, "j").await;
    assert_eq!(coach.page.execute(at, vec![]).await.unwrap(), json!(1));
    coach.page.execute("document.activeElement.blur()", vec![]).await.unwrap();
    key(&coach, "k").await;
    assert_eq!(coach.page.execute(at, vec![]).await.unwrap(), json!(0), "from where one was");
    coach.press("[data-keys]").await;
    coach.page.execute("document.activeElement.blur()", vec![]).await.unwrap();
    key(&coach, "j").await;
    assert_eq!(coach.page.execute(at, vec![]).await.unwrap(), json!(-1), "turned off");
    let phone = keeper.another(PHONE).await;
    let session = coach.page.get_named_cookie(sayso_host::SESSION_COOKIE).await.unwrap().value().to_owned();
    let cookie = json!({ "name": sayso_host::SESSION_COOKIE, "value": session, "url": server.url("/") });
    phone.devtools("Network.setCookie", cookie).await;
    phone.goto(&server.url("/desk/week")).await;
    phone.picture("week-390").await;
    let told = phone.page.execute(ROWS, vec![]).await.unwrap();
    println!("390: {told}");
    assert_eq!(told[2].as_array().unwrap().len(), 0, "{told}");
    let short = told[3].as_array().unwrap().iter().all(|height| height.as_u64().unwrap() <= 320);
    assert!(short, "a card is short: {told}");
    phone.close().await;
    coach.close().await;
    keeper.close().await;
}
