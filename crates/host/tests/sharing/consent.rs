//! Consent opens and closes at the next request, in every process; only a keeper's, given on the page, does.

use crate::house::{Has, House, asked, event};
use axum::http::StatusCode;
use sayso_model::{Coach, Consent, ConsentGiven, Moment};
use sayso_web::state::machine_clock;

#[tokio::test(flavor = "multi_thread")]
async fn a_coach_sees_from_the_giving_to_the_taking_back_in_every_process() {
    let house = House::new().await;
    let (club, club_keeper, coach) = house.club().await;
    let other = house.another().await;
    let evidence = house.about("evidence");
    let sees = async |path: &str| {
        let here = house.get(&coach, path).await.status;
        assert_eq!(here, asked(&other, Some(&coach), "GET", path, None).await.status, "{path}");
        here
    };
    // Nothing is open, and no name is told.
    assert_eq!(sees(&evidence).await, StatusCode::SEE_OTHER);
    assert!(!house.get(&coach, "/homes").await.holds("Birch House"));
    let page = house.get(&house.keeper, &format!("/sharing/with/{club}")).await;
    assert!(
        page.holds("Meadow Club")
            && page.holds("sees your home’s pages with figures")
            && page.marked("words-number")[0].contains(&format!("Version {}", Consent::WORDS)),
        "{}",
        page.body
    );
    assert_eq!(
        page.body.matches("action=\"/sharing/consent\"").count(),
        2,
        "each purpose by itself, all off; no sounds, which a server has not"
    );
    // What came into the log by another way opens nothing, and the page says so.
    let figures = Consent::CoachFigures { to: Coach::Club { club } };
    let slipped_in = event(house.home, ConsentGiven { consent: figures, words_version: 1, holds: None });
    house.host.server.home(house.home).append(vec![slipped_in]).await.unwrap();
    assert_eq!(sees(&evidence).await, StatusCode::SEE_OTHER);
    let told = house.get(&house.keeper, "/sharing").await;
    assert_eq!((told.marked("nothing-open").len(), told.marked("before").len()), (1, 1));
    assert!(told.marked("before")[0].contains("opens nothing"), "{:?}", told.marked("before"));
    // Given on the page: figures and nothing else.
    let given = house.post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", club)).await;
    assert_eq!(given.to(), format!("/sharing/with/{club}"));
    assert_eq!(sees(&evidence).await, StatusCode::OK);
    assert_eq!(sees(&house.about("log")).await, StatusCode::FORBIDDEN);
    assert!(house.get(&coach, "/homes").await.holds("Birch House"));
    let shares = house.get(&coach, &format!("/club/{club}")).await;
    assert!(shares.holds("Birch House") && shares.holds("name=\"home\""), "{}", shares.body);
    let chosen = house.post(&coach, "/homes", &format!("home={}", house.home)).await;
    assert_eq!(chosen.to(), house.about("today"));
    // The club's keeper sees that, and opens nothing.
    let kept = house.get(&club_keeper, &format!("/club/{club}")).await;
    assert!(kept.holds("Birch House") && !kept.holds("name=\"home\""));
    assert_eq!(house.get(&club_keeper, &evidence).await.status, StatusCode::SEE_OTHER);
    // Who can see, who looked.
    let told = house.get(&house.keeper, "/sharing").await;
    assert!(told.holds("Brook") && told.holds("coach, Meadow Club"), "{}", told.body);
    assert!(told.marked("look").iter().any(|l| l.contains("Brook, Evidence, ")), "{:?}", told.marked("look"));
    assert_eq!(told.marked("open").len(), 1);
    // Taken back: at once, everywhere, with its dates.
    let back = house.post(&house.keeper, "/sharing/consent/back", &house.consent("coach_figures", club)).await;
    assert_eq!(back.to(), format!("/sharing/with/{club}"));
    assert_eq!(sees(&evidence).await, StatusCode::SEE_OTHER);
    assert!(!house.get(&coach, "/homes").await.holds("Birch House"));
    assert!(!house.get(&coach, &format!("/club/{club}")).await.holds("Birch House"));
    let told = house.get(&house.keeper, "/sharing").await;
    assert!(told.marked("before").iter().any(|b| b.contains("taken back")), "{:?}", told.marked("before"));
    // Anew, it opens anew.
    house.post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", club)).await;
    assert_eq!(sees(&evidence).await, StatusCode::OK);
}

#[tokio::test(flavor = "multi_thread")]
async fn one_coach_may_be_given_alone_what_the_club_is_not() {
    let house = House::new().await;
    let (club, club_keeper, coach) = house.club().await;
    let page = house.get(&coach, &format!("/club/{club}")).await;
    let own = page.marked("own-link")[0].trim().to_owned();
    assert!(own.ends_with(&format!("/sharing/with/{club}/{}", coach.account)), "{own}");
    let found = house.get(&house.keeper, &format!("/sharing/with?club={own}")).await;
    assert_eq!(found.to(), format!("/sharing/with/{club}/{}", coach.account));
    assert!(house.get(&house.keeper, found.to()).await.holds("Brook"));
    let form = format!("{}&coach={}", house.consent("coach_log", club), coach.account);
    assert_eq!(house.post(&house.keeper, "/sharing/consent", &form).await.to(), found.to());
    assert_eq!(house.get(&coach, &house.about("log")).await.status, StatusCode::OK);
    // It is between the home and this coach: the club's keeper does not learn of it.
    assert!(!house.get(&club_keeper, &format!("/club/{club}")).await.holds("Birch House"));
    assert!(house.get(&coach, &format!("/club/{club}")).await.holds("Birch House"));
    // No coach, no consent: the keeper of the club is none.
    let form = format!("{}&coach={}", house.consent("coach_log", club), club_keeper.account);
    assert_eq!(house.post(&house.keeper, "/sharing/consent", &form).await.status, StatusCode::NOT_FOUND);
    for bad in ["not-a-code", "0", "http://localhost/sharing/with/x/y"] {
        let told = house.get(&house.keeper, &format!("/sharing/with?club={bad}")).await;
        assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY, "{bad}");
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn all_sharing_ends_in_one_step_without_a_fresh_sign_in() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    assert_eq!(house.get(&house.keeper, "/sharing").await.marked("end-all").len(), 0, "nothing is shared");
    for purpose in ["coach_figures", "coach_log", "norms"] {
        house.post(&house.keeper, "/sharing/consent", &house.consent(purpose, club)).await;
    }
    // One that holds only from tomorrow on stands, too.
    let leave = |capability| sayso_people::Allowed {
        capability,
        account: house.keeper.account,
        scope: sayso_people::Scope::Home(house.home),
        role: Has::Keeper,
        person: None,
    };
    let now = machine_clock();
    let holds = Some(sayso_model::Stretch { from: now.plus_seconds(86_400.0), until: now.plus_seconds(172_800.0) });
    let consent = Consent::CoachFigures { to: Coach::Account { account: coach.account } };
    let ahead = event(house.home, ConsentGiven { consent, words_version: Consent::WORDS, holds });
    house.host.server.home(house.home).append(vec![ahead.clone()]).await.unwrap();
    house.host.people.witness(&leave(sayso_people::Capability::Consent), &ahead, now).await.unwrap();

    let later = house.later(twenty_minutes_later).await;
    let page = asked(&later, Some(&house.keeper), "GET", "/sharing", None).await;
    assert_eq!((page.marked("open").len(), page.marked("end-all").len()), (3, 1), "{}", page.body);
    let confirm = asked(&later, Some(&house.keeper), "GET", "/sharing/end", None).await;
    assert_eq!((confirm.marked("ends").len(), confirm.marked("end-all-now").len()), (4, 1), "{}", confirm.body);
    let form = format!("home={}", house.home);
    let member = house.joined(Has::Member, "Mora").await;
    assert_eq!(house.post(&member, "/sharing/end", &form).await.status, StatusCode::FORBIDDEN);
    let ended = asked(&later, Some(&house.keeper), "POST", "/sharing/end", Some((crate::house::FORM, &form))).await;
    assert_eq!(ended.to(), "/sharing#consent", "{}", ended.body);
    assert_eq!(house.get(&coach, &house.about("evidence")).await.status, StatusCode::SEE_OTHER);
    let page = house.get(&house.keeper, "/sharing").await;
    assert_eq!(
        (page.marked("nothing-open").len(), page.marked("before").len(), page.marked("end-all").len()),
        (1, 4, 0)
    );
    assert!(page.marked("before").iter().all(|b| b.contains("taken back")), "{:?}", page.marked("before"));
    assert_eq!(house.count("SELECT count(*) FROM people.witness WHERE home = $1 AND ended_at IS NULL").await, 0);
}

fn twenty_minutes_later() -> Moment {
    machine_clock().plus_seconds(1_200.0)
}

#[tokio::test(flavor = "multi_thread")]
async fn consent_is_a_keepers_with_a_fresh_sign_in_in_the_home_and_the_words_that_were_shown() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    let member = house.joined(Has::Member, "Mora").await;
    let form = house.consent("coach_figures", club);
    assert_eq!(house.post(&member, "/sharing/consent", &form).await.status, StatusCode::FORBIDDEN);
    let later = house.later(twenty_minutes_later).await;
    let kind = Some((crate::house::FORM, form.as_str()));
    let told = asked(&later, Some(&house.keeper), "POST", "/sharing/consent", kind).await;
    assert!(told.to().starts_with("/sign-in?again=yes"), "{told:?}");
    let told = asked(&later, Some(&house.keeper), "GET", &format!("/sharing/with/{club}"), None).await;
    assert_eq!(told.to(), format!("/sign-in?again=yes&to=/sharing/with/{club}"));
    let elsewhere = form.replace(&house.home.to_string(), &club.to_string());
    let old_words = form.replace(&format!("words={}", Consent::WORDS), "words=1");
    let nothing = form.replace("coach_figures", "everything");
    for wrong in [elsewhere, old_words, nothing] {
        let told = house.post(&house.keeper, "/sharing/consent", &wrong).await;
        assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY, "{wrong}");
    }
    assert_eq!(house.get(&coach, &house.about("evidence")).await.status, StatusCode::SEE_OTHER, "none of them opened");
    let given = "SELECT count(*) FROM sayso.event WHERE home = $1 AND kind LIKE 'consent%'";
    assert_eq!(house.count(given).await, 0, "nor were they written");
}

#[tokio::test(flavor = "multi_thread")]
async fn who_has_no_way_in_yet_makes_one_when_the_sign_in_is_old_and_then_goes_on() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    house.post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", club)).await;
    let later = house.later(twenty_minutes_later).await;
    let post = async |who, path: &str, form: &str| {
        asked(&later, Some(who), "POST", path, Some((crate::house::FORM, form))).await
    };
    // Nothing to show it by: the page says so instead of asking for what is not there.
    let led = asked(&later, Some(&house.keeper), "GET", "/sharing/leave", None).await;
    let told = asked(&later, Some(&house.keeper), "GET", led.to(), None).await;
    assert_eq!((told.status, told.marked("none-yet").len()), (StatusCode::OK, 1), "{}", told.body);
    assert!(told.holds("href=\"/account\"") && !told.holds("action=\"/sign-in/code\""));
    // Taking back waits for nothing.
    assert_eq!(asked(&later, Some(&house.keeper), "GET", "/sharing/consent", None).await.status, StatusCode::OK);
    let back = post(&house.keeper, "/sharing/consent/back", &house.consent("coach_figures", club)).await;
    assert_eq!(back.to(), "/sharing/consent");
    let closed = asked(&later, Some(&coach), "GET", &house.about("evidence"), None).await;
    assert_eq!(closed.to(), "/homes");
    let give = post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", club)).await;
    assert!(give.to().starts_with("/sign-in?again=yes"), "{give:?}");
    // The first way in is made, a second one only after signing in by it.
    let codes = post(&house.keeper, "/account/codes", "").await;
    assert_eq!(codes.status, StatusCode::OK, "{}", codes.body);
    assert_eq!(post(&house.keeper, "/account/codes", "").await.to(), "/sign-in?again=yes&to=/account");
    let code = codes.body.split("class=\"code\">").nth(1).unwrap().split('<').next().unwrap();
    let signed = post(&house.keeper, "/sign-in/code", &format!("code={code}&to=/sharing/leave")).await;
    assert_eq!(signed.to(), "/sharing/leave", "{}", signed.body);
    let cookie = signed.headers.get(axum::http::header::SET_COOKIE).unwrap().to_str().unwrap();
    let token = cookie.split_once('=').unwrap().1.split(';').next().unwrap();
    let keeper = crate::house::Signed { token: sayso_people::Secret::typed(token), ..house.keeper.clone() };
    assert_eq!(asked(&later, Some(&keeper), "GET", "/sharing/leave", None).await.status, StatusCode::OK);
}
