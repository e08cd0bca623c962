//! A notebook at home and a home on a server: a union both ways, whatever happens in between; and what a notebook cannot do.

mod bent;
mod book;
mod consented;

pub use bent::key;

use crate::house::{Has, House, asked};
use axum::http::StatusCode;
use book::{Book, Served, all, code, remark};
use sayso_linked::letters::{Stop, Why};
use sayso_linked::{Ended, LinkError, Place, Turned};
use sayso_model::*;
use sayso_store::{ClipHash, Revision};
use sayso_web::state::machine_clock;
use std::time::Duration;
use uuid::Uuid;

#[tokio::test(flavor = "multi_thread")]
async fn what_is_written_on_either_side_is_on_both_and_nothing_goes_before_the_yes() {
    let house = House::new().await;
    let (served, here) = (Served::start(&house, 0).await, house.newcomer().await);
    let (home, log) = (here.0, house.host.server.home(here.0));
    let book = Book::lived(45, 3).await;
    let first = all(&book.store, book.home().await).await;
    assert!(first.len() > 500, "more than one batch: {}", first.len());

    book.link(&served, code(&house, &here.1, home).await).await.unwrap();
    assert_eq!(book.turn().await.unwrap(), Turned::Nothing);
    assert_eq!(log.revision().await.unwrap(), Revision(0), "nothing goes before somebody said yes");
    book.yes(false);
    assert_eq!(book.turn().await.unwrap(), Turned::Agreed);
    assert_eq!(all(&log, home).await, first);
    let state = book.state().await;
    assert_eq!((state.waits, state.progress.sent), (0, first.len() as u64));
    assert_eq!((state.progress.received, state.progress.held.total()), (0, 0), "nothing came back as its own echo");

    // On both sides at once.
    book.remarks("At home.").await;
    log.append(vec![remark(home, "By a member there.")]).await.unwrap();
    assert_eq!(book.state().await.waits, 1);
    assert_eq!(book.turn().await.unwrap(), Turned::Agreed);
    let both = all(&book.store, book.home().await).await;
    assert_eq!(all(&log, home).await, both);
    assert_eq!(both.len(), first.len() + 2);
    assert!(both.values().any(|event| event.contains("By a member there.")));
    // A turn in which nothing happened moves nothing.
    let before = book.state().await.progress;
    assert_eq!(book.turn().await.unwrap(), Turned::Agreed);
    let after = book.state().await.progress;
    assert_eq!(
        (after.sent, after.received, after.here, after.there),
        (before.sent, before.received, before.here, before.there)
    );
    // The server's page tells of it, and the home's own pages read as ever.
    let page = house.get(&here.1, "/sharing/notebooks").await;
    assert!(page.holds("Kitchen") && page.marked("notebook").len() == 1, "{}", page.body);
    assert_eq!(
        house.get(&here.1, "/sharing").await.marked("notebooks"),
        ["One notebook at home is linked: it holds all that is written here."]
    );
}

#[tokio::test(flavor = "multi_thread")]
async fn broken_off_wherever_it_is_it_goes_on_and_nothing_is_lost_or_doubled() {
    let house = House::new().await;
    let (mut served, here) = (Served::start(&house, 0).await, house.newcomer().await);
    let (home, log) = (here.0, house.host.server.home(here.0));
    let book = Book::lived(80, 5).await;
    book.linked(&house, &served, &here).await;
    let (mut tries, mut broken) = (0, 0);
    loop {
        tries += 1;
        // Broken off ever later, in the midst of whatever it does; and each fifth time the server is gone as well.
        match tokio::time::timeout(Duration::from_millis(8 * tries), book.turn()).await {
            Err(_) => broken += 1,
            Ok(Ok(Turned::Agreed)) => break,
            Ok(other) => assert!(matches!(other, Err(LinkError::Away(_))), "{other:?}"),
        }
        if tries % 5 == 0 {
            served.away().await;
            assert!(matches!(book.turn().await, Err(LinkError::Away(_))));
            served = Served::start(&house, served.port).await;
            log.append(vec![remark(home, &format!("Meanwhile {tries}"))]).await.unwrap();
        }
        book.remarks(&format!("At home {tries}")).await;
        assert!(tries < 2_000, "it never ends");
    }
    assert!(broken > 3, "it was broken off {broken} times");
    assert_eq!(book.turn().await.unwrap(), Turned::Agreed);
    let both = all(&book.store, book.home().await).await;
    assert_eq!(all(&log, home).await, both);
    assert_eq!(log.revision().await.unwrap().0, i64::try_from(both.len()).unwrap(), "places without gaps, none twice");
}

#[tokio::test(flavor = "multi_thread")]
async fn without_a_network_the_notebook_works_as_ever_and_tells_what_waits() {
    let house = House::new().await;
    let (mut served, here) = (Served::start(&house, 0).await, house.newcomer().await);
    let book = Book::lived(1, 7).await;
    book.linked(&house, &served, &here).await;
    assert_eq!(book.turn().await.unwrap(), Turned::Agreed);
    let agreed = book.state().await.progress.agreed_at;
    served.away().await;
    for n in 1..=3 {
        book.remarks(&format!("Offline {n}")).await;
        assert!(matches!(book.turn().await, Err(LinkError::Away(_))));
        let state = book.state().await;
        assert_eq!((state.waits, state.progress.failures), (n, n as u32));
        assert_eq!(state.progress.agreed_at, agreed, "when the two last agreed");
        assert!(state.progress.hinders.is_some());
    }
    let _served = Served::start(&house, served.port).await;
    assert_eq!(book.turn().await.unwrap(), Turned::Agreed);
    let state = book.state().await;
    assert_eq!((state.waits, state.progress.failures, state.progress.hinders), (0, 0, None));
    assert_eq!(all(&house.host.server.home(here.0), here.0).await, all(&book.store, book.home().await).await);
}

#[tokio::test(flavor = "multi_thread")]
async fn unlinked_at_either_end_nothing_goes_any_more() {
    let house = House::new().await;
    let (served, here) = (Served::start(&house, 0).await, house.newcomer().await);
    let (home, keeper) = here.clone();
    let log = house.host.server.home(home);
    let book = Book::lived(1, 9).await;
    book.linked(&house, &served, &here).await;
    book.turn().await.unwrap();
    let before = log.revision().await.unwrap();
    // On the server.
    let page = house.get(&keeper, "/sharing/notebooks").await;
    let to = page
        .body
        .split("action=\"")
        .find_map(|rest| rest.split('"').next().filter(|to| to.ends_with("/end")))
        .unwrap()
        .to_owned();
    assert_eq!(house.post(&keeper, &to, &format!("home={home}")).await.status, StatusCode::SEE_OTHER);
    book.remarks("After the end.").await;
    for _ in 0..2 {
        assert_eq!(book.turn().await.unwrap(), Turned::Stopped(Stop::Ended));
    }
    assert_eq!((log.revision().await.unwrap(), book.state().await.waits), (before, 1));
    // At home; the same home is known again, and what waited goes.
    assert_eq!(sayso_linked::end(&book.store).await.unwrap(), Ended { told: true, waited: 1 });
    assert_eq!(book.turn().await.unwrap(), Turned::Nothing);
    book.linked(&house, &served, &here).await;
    let key = book.state().await.link.key;
    assert_eq!(book.turn().await.unwrap(), Turned::Agreed);
    assert_eq!(all(&log, home).await, all(&book.store, book.home().await).await);
    assert!(sayso_linked::end(&book.store).await.unwrap().told, "the server was told");
    assert!(
        book.dir.path().read_dir().unwrap().all(|file| !file
            .unwrap()
            .file_name()
            .to_str()
            .unwrap()
            .starts_with("link"))
    );
    assert_eq!(house.get(&keeper, "/sharing/notebooks").await.marked("notebook").len(), 0);
    assert_eq!(bent::about(&house.app, &key).await.status, StatusCode::UNAUTHORIZED, "its key is worth nothing");
    assert!(matches!(sayso_linked::end(&book.store).await, Err(LinkError::NotLinked)));
}

#[tokio::test(flavor = "multi_thread")]
async fn a_keeper_who_goes_takes_the_link_along_and_a_home_that_left_stays_refused() {
    let house = House::new().await;
    let served = Served::start(&house, 0).await;
    // The home of the house itself: the notebook begins with what is there.
    let here = (house.home, house.keeper.clone());
    let book = Book::empty().await;
    book.linked(&house, &served, &here).await;
    assert_eq!(book.turn().await.unwrap(), Turned::Agreed);
    assert_eq!(book.home().await, house.home, "an empty notebook becomes that home's");
    assert_eq!(all(&book.store, house.home).await, all(&house.host.server.home(house.home), house.home).await);
    // A second keeper links one, and is none any more.
    let second = house.joined(Has::Keeper, "Mora").await;
    let other = Book::empty().await;
    other.linked(&house, &served, &(house.home, second.clone())).await;
    assert_eq!(other.turn().await.unwrap(), Turned::Agreed);
    let role = house.role_of(&second).await;
    let form = format!("home={}&role=member&person=", house.home);
    assert_eq!(
        house.post(&house.keeper, &format!("/sharing/people/{role}"), &form).await.status,
        StatusCode::SEE_OTHER
    );
    assert_eq!(other.turn().await.unwrap(), Turned::Stopped(Stop::Ended));
    assert_eq!(house.get(&second, "/sharing/notebooks").await.status, StatusCode::FORBIDDEN);
    // The home leaves and is erased.
    let gone = house.post(&house.keeper, "/sharing/leave", &format!("home={}&name=birch+house", house.home)).await;
    assert_eq!(gone.status, StatusCode::OK, "{}", gone.body);
    book.remarks("Written after it left.").await;
    assert_eq!(book.turn().await.unwrap(), Turned::Stopped(Stop::Left));
    sayso_linked::again(&book.store).unwrap();
    assert_eq!(book.turn().await.unwrap(), Turned::Stopped(Stop::Left), "also when it is tried from the beginning");
    assert_eq!(house.count("SELECT count(*) FROM sayso.event WHERE home = $1").await, 0);
    let kept =
        "SELECT count(*) FROM people.notebook WHERE home = $1 AND name = '' AND account IS NULL AND code IS NULL";
    assert_eq!(house.count(kept).await, house.count("SELECT count(*) FROM people.notebook WHERE home = $1").await);
    assert!(book.store.story(house.home).await.unwrap().home().is_some(), "nothing is lost at home");
}

#[tokio::test(flavor = "multi_thread")]
async fn to_a_server_and_back_loses_nothing_and_sound_goes_only_where_somebody_said_so() {
    let house = House::new().await;
    let (served, here) = (Served::start(&house, 0).await, house.newcomer().await);
    let (home, log) = (here.0, house.host.server.home(here.0));
    let book = Book::lived(2, 11).await;
    let story = book.store.story(book.home().await).await.unwrap();
    let (animal, word) = (*story.animals().keys().next().unwrap(), *story.words().keys().next().unwrap());
    let (picture, clip, stray) = (vec![7; 900], vec![8; 90_000], vec![9; 10]);
    for bytes in [&picture, &clip, &stray] {
        book.store.put_clip(bytes.clone()).await.unwrap();
    }
    let shows = PictureOf::Animal { animal };
    let sha256 = ClipHash::of(&picture).to_string();
    let shown = Picture { sha256, media_type: MediaType::Png, width: 1, height: 1 };
    let card = ClipCard {
        clip: ClipId(Uuid::now_v7()),
        word,
        seconds: Seconds::new(1.0).unwrap(),
        sha256: ClipHash::of(&clip).to_string(),
        lufs: None,
        active: true,
    };
    let of = book.home().await;
    let outcomes = book.store.append(vec![
        crate::house::event(of, PictureCard { shows, picture: Some(shown) }),
        crate::house::event(of, card),
    ]);
    outcomes.await.unwrap();
    book.linked(&house, &served, &here).await;
    book.turn().await.unwrap();
    assert!(log.clips().await.unwrap().is_empty(), "neither goes by itself");
    sayso_linked::say_yes(&book.store, true, false).unwrap();
    book.turn().await.unwrap();
    assert_eq!(log.clips().await.unwrap(), [ClipHash::of(&picture)], "pictures, and no sound");
    book.yes(true);
    book.turn().await.unwrap();
    let mut named = [ClipHash::of(&picture), ClipHash::of(&clip)];
    named.sort();
    assert_eq!(log.clips().await.unwrap(), named, "what no card names never goes");

    // Back, into a notebook of its own.
    let back = Book::empty().await;
    back.link(&served, code(&house, &here.1, home).await).await.unwrap();
    back.yes(true);
    assert_eq!(back.turn().await.unwrap(), Turned::Agreed);
    assert_eq!(all(&back.store, home).await, all(&book.store, of).await);
    for hash in &named {
        assert_eq!(back.store.clip(hash).await.unwrap(), book.store.clip(hash).await.unwrap());
    }
    assert_eq!(back.store.clips().await.unwrap(), named);
    // Three logs, one set: what is written in any comes to all.
    let word = back.remarks("From the second notebook.").await;
    back.turn().await.unwrap();
    book.turn().await.unwrap();
    assert!(all(&book.store, of).await.contains_key(&word.id));
    // What is taken along in a file is the notebook alone, without the link.
    let copy = back.dir.path().join("copy.tar");
    back.store.export_archive(&copy).await.unwrap();
    let bytes = std::fs::read(&copy).unwrap();
    let key = back.state().await.link.key;
    assert!(!bytes.windows(key.len()).any(|part| part == key.as_bytes()));
}

#[tokio::test(flavor = "multi_thread")]
async fn two_homes_are_not_mixed_and_a_code_holds_once() {
    let house = House::new().await;
    let (served, here) = (Served::start(&house, 0).await, house.newcomer().await);
    let book = Book::lived(1, 13).await;
    let before = all(&house.host.server.home(house.home), house.home).await;
    let of_the_house = code(&house, &house.keeper, house.home).await;
    assert!(matches!(book.link(&served, of_the_house.clone()).await, Err(LinkError::OtherHome)));
    assert!(sayso_linked::link(book.dir.path()).unwrap().is_none());
    assert_eq!(all(&house.host.server.home(house.home), house.home).await, before);
    // The code still holds for the right notebook, once.
    let empty = Book::empty().await;
    empty.link(&served, of_the_house.clone()).await.unwrap();
    assert!(matches!(empty.link(&served, of_the_house.clone()).await, Err(LinkError::Linked(_))));
    assert!(matches!(Book::empty().await.link(&served, of_the_house).await, Err(LinkError::Code)));
    assert!(matches!(book.link(&served, "0".repeat(64)).await, Err(LinkError::Code)));
    // By whom: a keeper alone, signed in just now, and not an hour later.
    let member = house.joined(Has::Member, "Mora").await;
    let form = format!("home={}", house.home);
    assert_eq!(house.post(&member, "/sharing/notebooks/new", &form).await.status, StatusCode::FORBIDDEN);
    let late = house.later(|| machine_clock().plus_seconds(1_000.0)).await;
    let told =
        asked(&late, Some(&house.keeper), "POST", "/sharing/notebooks/new", Some((crate::house::FORM, &form))).await;
    assert!(told.to().starts_with("/sign-in"), "{told:?}");
    let stale = code(&house, &here.1, here.0).await;
    let later = house.later(|| machine_clock().plus_seconds(3_700.0)).await;
    let letter = format!(r#"{{"code":"{stale}","name":"","home":null,"known":[]}}"#);
    let told = asked(&later, None, "POST", "/linked/key", Some((crate::house::JSON, &letter))).await;
    assert_eq!(told.status, StatusCode::NOT_FOUND);
    // What a browser shows where somebody opens the link there.
    assert_eq!(asked(&house.app, None, "GET", "/linked", None).await.status, StatusCode::OK);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_log_brought_back_from_a_copy_is_gone_through_from_the_beginning() {
    let house = House::new().await;
    let (served, here) = (Served::start(&house, 0).await, house.newcomer().await);
    let (home, log) = (here.0, house.host.server.home(here.0));
    let book = Book::lived(1, 17).await;
    book.linked(&house, &served, &here).await;
    book.turn().await.unwrap();
    let file = book.dir.path().join(sayso_linked::PROGRESS_FILE);
    let kept = book.state().await.progress;
    let other = |place: Place| Place { is: Some(EventId(Uuid::now_v7())), ..place };
    for (here, there) in [(other(kept.here), kept.there), (kept.here, other(kept.there))] {
        // At the place that was reached stands another event: some of it was never sent, or never read.
        book.remarks("After the copy was made.").await;
        log.append(vec![remark(home, "There, after the copy was made.")]).await.unwrap();
        let elsewhere = sayso_linked::Progress { here, there, ..kept.clone() };
        std::fs::write(&file, serde_json::to_vec(&elsewhere).unwrap()).unwrap();
        assert_eq!(book.turn().await.unwrap(), Turned::Agreed);
        assert_eq!(all(&log, home).await, all(&book.store, book.home().await).await);
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn what_differs_is_told_and_each_side_keeps_its_own() {
    let house = House::new().await;
    let (served, here) = (Served::start(&house, 0).await, house.newcomer().await);
    let (home, log) = (here.0, house.host.server.home(here.0));
    let book = Book::lived(1, 19).await;
    book.linked(&house, &served, &here).await;
    book.turn().await.unwrap();
    let mine = book.remarks("Mine.").await;
    let theirs = Event { id: mine.id, ..remark(home, "Theirs.") };
    log.append(vec![theirs]).await.unwrap();
    assert_eq!(book.turn().await.unwrap(), Turned::Agreed);
    let progress = book.state().await.progress;
    assert_eq!(progress.held.counts.get(&Why::Differs), Some(&1));
    assert_eq!(progress.lacks.counts.get(&Why::Differs), Some(&1));
    assert_eq!(progress.held.told[0].id, Some(mine.id));
    assert!(progress.again_at.is_some(), "it is gone through again after a day");
    assert!(all(&book.store, book.home().await).await[&mine.id].contains("Mine."));
    assert!(all(&log, home).await[&mine.id].contains("Theirs."));
    // Gone through again it is told once, not twice.
    sayso_linked::again(&book.store).unwrap();
    book.turn().await.unwrap();
    assert_eq!(book.state().await.progress.held.total(), 1);
}
