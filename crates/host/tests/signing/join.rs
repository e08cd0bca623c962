//! Joining by an invitation.

use crate::server::Server;
use sayso_people::Role;

pub const START: [(&str, &str); 6] = [
    ("you", "Ilda"),
    ("animal", "Bo"),
    ("species", "dog"),
    ("others", ""),
    ("home", "The mill"),
    ("zone", "Europe/Berlin"),
];

#[tokio::test(flavor = "multi_thread")]
async fn the_servers_first_keeper_joins_by_a_link_that_holds_once() {
    let server = Server::new().await;
    let link = server.first_link().await;
    let mut wren = server.browser();
    let page = wren.get(&link).await;
    assert!(page.status == 200 && page.text.contains("sayso.example") && page.text.contains("keeper of the server"));
    assert!(page.cookies.is_empty() && !page.text.contains("at home"), "this is no home: {}", page.text);
    let unnamed = wren.post(&link, &[("name", " ")]).await;
    assert!(unnamed.status == 422 && unnamed.text.contains("Join"), "{}", unnamed.text);
    let joined = wren.post(&link, &[("name", "Wren")]).await;
    assert_eq!((joined.status, joined.to.as_deref()), (303, Some("/welcome?to=/server")));
    let welcome = wren.get("/welcome?to=/server").await;
    for has in ["Welcome, Wren", r#"data-passkey="/account/passkey""#, r#"href="/server""#] {
        assert!(welcome.text.contains(has), "{has}: {}", welcome.text);
    }
    let mut other = server.browser();
    let used = other.get(&link).await;
    let unknown = other.get(&format!("/join/{}", "0".repeat(64))).await;
    assert_eq!((used.status, &used), (404, &unknown), "used and unknown are one");
    assert_eq!(other.post(&link, &[("name", "Robin")]).await, used);
    // Who took it is told so, and led on.
    let own = wren.get(&link).await;
    assert!(own.status == 200 && own.text.contains("You are in already") && own.text.contains(r#"href="/server""#));
    let stranger = server.joined(&server.home_link(&wren).await.1, "Robin").await.get(&link).await;
    assert_eq!(stranger.status, 404, "nobody else is");
    assert_eq!(other.get("/welcome").await.to.as_deref(), Some("/sign-in?to=/welcome"));
}

#[tokio::test(flavor = "multi_thread")]
async fn a_new_home_is_set_up_by_its_first_keeper_and_then_shown_to_whoever_is_invited() {
    let server = Server::new().await;
    let keeper = server.keeper().await;
    let (home, link) = server.home_link(&keeper).await;
    let mut ilda = server.browser();
    assert!(ilda.get(&link).await.text.contains("a new home on this server"));
    let joined = ilda.post(&link, &[("name", "Ilda")]).await;
    assert_eq!(joined.to.as_deref(), Some("/welcome?to=/start"));
    assert_eq!(ilda.cookies.get("sayso_home"), Some(&home.to_string()));
    assert_eq!(ilda.get("/").await.to.as_deref(), Some("/start"));
    let start = ilda.get("/start").await.text;
    assert!(start.contains(r#"id="you" name="you" value="Ilda""#) && start.contains("on this server"), "{start}");
    let begun = ilda.post("/start", &START).await;
    assert_eq!(begun.status, 303, "{}", begun.text);
    assert!(ilda.cookies.contains_key("sayso_person"));
    let today = ilda.get("/").await.to.unwrap();
    assert!(today.starts_with("/a/") && today.ends_with("/today"), "{today}");
    assert!(ilda.get(&today).await.text.contains(r#"href="/account""#), "signing out is near");
    // A member, an observer, and one who has an account already.
    let member = server.link_by(&ilda, home, Role::Member).await;
    let mut robin = server.browser();
    let page = robin.get(&member).await.text;
    assert!(page.contains("The mill") && page.contains("As a member"), "{page}");
    assert_eq!(robin.post(&member, &[("name", "Robin")]).await.to, Some(format!("/welcome?to={today}")));
    assert_eq!(robin.get(&today).await.status, 200);
    let mut una = server.browser();
    let observer = server.link_by(&ilda, home, Role::Observer).await;
    let page = una.get(&observer).await.text;
    assert!(page.contains(r#"name="name" value="Ilda""#), "whom the invitation names stands in the field: {page}");
    let board = today.replace("/today", "/board");
    assert_eq!(una.post(&observer, &[("name", "Una")]).await.to, Some(format!("/welcome?to={board}")));
    assert_eq!(una.get("/").await.to.as_ref(), Some(&board));
    // How programs come in, by the cookie's true name and with no microphone of the notebook's.
    let told = ilda.get("/api/openapi.json").await.json();
    let ways = &told["components"]["securitySchemes"];
    assert_eq!((ways.as_object().unwrap().len(), &ways["session"]["name"]), (1, &"__Host-sayso_session".into()));
    assert_eq!(told["security"], serde_json::json!([{ "session": [] }]));
    let paths = told["paths"].as_object().unwrap();
    assert!(paths.contains_key("/api/events") && !paths.contains_key("/api/listen/{animal}"));
    for (path, what) in
        paths.iter().flat_map(|(path, all)| all.as_object().unwrap().values().map(move |one| (path, one)))
    {
        let says = what["responses"]["401"]["description"].as_str().unwrap_or_default();
        assert!(says.contains("signed in"), "{path}: {says}");
    }
    let page = ilda.get("/api").await.text;
    assert!(page.contains("GET") && page.contains(r#"href="/sharing"#) && !page.contains("paired"), "{page}");
    let mut wren = keeper.clone();
    let member = server.link_by(&ilda, home, Role::Member).await;
    let page = wren.get(&member).await.text;
    assert!(page.contains("signed in as Wren") && !page.contains(r#"name="name""#), "{page}");
    // Somebody else holds the phone: signed out, they are back at the invitation, which asks for their name.
    assert!(page.contains("Not Wren? Sign out") && page.contains(&format!(r#"name="to" value="{member}""#)), "{page}");
    let mut other = server.joined(&server.home_link(&keeper).await.1, "Finch").await;
    let kept = other.post("/sign-out", &[("to", &member)]).await;
    assert!(kept.status == 409 && kept.text.contains(&format!(r#"name="to" value="{member}""#)), "{}", kept.text);
    let out = other.post("/sign-out", &[("to", &member), ("anyway", "yes")]).await;
    assert_eq!((out.to.as_deref(), other.token().is_none()), (Some(member.as_str()), true));
    assert!(other.get(&member).await.text.contains(r#"name="name""#));
    let away = server.browser().post("/sign-out", &[("to", "//example.org/")]).await;
    assert_eq!(away.to.as_deref(), Some("/"), "nowhere else");
    let joined = wren.post(&member, &[]).await;
    assert_eq!((joined.status, joined.to.as_deref()), (303, Some(today.as_str())));
    assert_eq!(joined.cookies.len(), 1, "the session stays: {:?}", joined.cookies);
    let before = wren.token().unwrap();
    assert_eq!(wren.get(&today).await.status, 200);
    assert_ne!(wren.token().unwrap().hash(), before.hash(), "roles changed, so its token is a new one");
    let member = server.link_by(&ilda, home, Role::Member).await;
    let twice = wren.post(&member, &[]).await;
    assert_eq!(twice.status, 409, "{}", twice.text);
    assert_eq!(server.browser().get(&member).await.status, 200, "it still holds");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_second_link_for_a_first_keeper_says_at_once_that_somebody_came_first() {
    let server = Server::new().await;
    let (first, second) = (server.first_link().await, server.first_link().await);
    assert_eq!(server.browser().get(&second).await.status, 200);
    server.joined(&first, "Wren").await;
    let told = server.browser().get(&second).await;
    assert!(told.status == 409 && told.text.contains(r#"data-test="kept""#), "{}", told.text);
    assert!(!told.text.contains(r#"name="name""#), "nobody types a name for nothing");
}

#[tokio::test(flavor = "multi_thread")]
async fn invitations_are_not_guessed() {
    let server = Server::new().await;
    let mut other = server.browser();
    let guess = format!("/join/{}", "1".repeat(64));
    for _ in 0..server.host.people.lifetimes().most_from_one {
        assert_eq!(other.post(&guess, &[("name", "Robin")]).await.status, 404);
    }
    assert_eq!(other.post(&guess, &[("name", "Robin")]).await.status, 429);
    let link = server.first_link().await;
    assert_eq!(other.post(&link, &[("name", "Robin")]).await.status, 429, "from there nothing is taken for a while");
    other.from = "192.0.2.8".into();
    assert_eq!(other.post(&link, &[("name", "Robin")]).await.status, 303);
}

#[tokio::test(flavor = "multi_thread")]
async fn whoever_joined_is_somebody_at_home_on_every_device() {
    let server = Server::new().await;
    let keeper = server.keeper().await;
    let (home, link) = server.home_link(&keeper).await;
    let mut ilda = server.joined(&link, "Ilda").await;
    assert_eq!(ilda.post("/start", &START).await.status, 303);
    let today = ilda.get("/").await.to.unwrap();
    // Another device knows nothing but the session.
    ilda.cookies.remove("sayso_person");
    let page = ilda.get(&today).await.text;
    assert!(page.contains("Ilda") && !page.contains("Who are you?"), "{page}");
    // A member of whom there is no card yet makes one by one tap, once.
    let mut robin = server.joined(&server.link_by(&ilda, home, Role::Member).await, "Robin").await;
    assert!(robin.get(&today).await.text.contains("Who are you?"));
    let people = |server: &Server| {
        let store = server.host.server.home(home);
        async move {
            store.story(home).await.unwrap().people().values().map(|card| card.name.to_string()).collect::<Vec<_>>()
        }
    };
    assert!(robin.get("/who").await.text.contains(r#"value="new""#));
    let made = robin.post("/who", &[("person", "new"), ("back", &today)]).await;
    assert_eq!((made.status, made.to.as_deref()), (303, Some(today.as_str())), "{}", made.text);
    robin.cookies.remove("sayso_person");
    assert!(!robin.get(&today).await.text.contains("Who are you?"));
    assert!(!robin.get("/who").await.text.contains(r#"value="new""#));
    assert_eq!(robin.post("/who", &[("person", "new")]).await.status, 422);
    let mut named = people(&server).await;
    named.sort();
    assert_eq!(named, ["Ilda", "Robin"]);
    // Whoever has the keeper's name may be anybody: two of one name are nobody.
    let mut other = server.joined(&server.link_by(&ilda, home, Role::Member).await, "Robin").await;
    other.post("/people/person/new", &[("name", "Robin"), ("role", "home")]).await;
    assert!(people(&server).await.len() == 3 && other.get(&today).await.text.contains("Who are you?"));
}
