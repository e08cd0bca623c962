//! No secret stands in the log, whatever goes wrong.

use crate::server::Server;
use std::io::Write;
use std::sync::{Mutex, OnceLock};
use tracing_subscriber::fmt::MakeWriter;

static LOG: Mutex<Vec<u8>> = Mutex::new(Vec::new());

struct Log;

impl Write for Log {
    fn write(&mut self, bytes: &[u8]) -> std::io::Result<usize> {
        LOG.lock().unwrap().extend_from_slice(bytes);
        Ok(bytes.len())
    }

    fn flush(&mut self) -> std::io::Result<()> {
        Ok(())
    }
}

impl MakeWriter<'_> for Log {
    type Writer = Self;

    fn make_writer(&self) -> Self {
        Self
    }
}

/// Takes down all that this process logs.
pub fn listen() {
    static ONCE: OnceLock<()> = OnceLock::new();
    ONCE.get_or_init(|| {
        let log = tracing_subscriber::fmt().with_max_level(tracing::Level::TRACE).with_ansi(false).with_writer(Log);
        tracing::subscriber::set_global_default(log.finish()).unwrap();
    });
}

fn logged() -> String {
    String::from_utf8_lossy(&LOG.lock().unwrap()).into_owned()
}

#[tokio::test(flavor = "multi_thread")]
async fn no_secret_is_logged_even_where_the_database_or_the_mail_fails() {
    let mut server = Server::new().await;
    let keeper = server.keeper().await;
    let (_, link) = server.home_link(&keeper).await;
    let mut ilda = server.joined(&link, "Ilda").await;
    ilda.post("/account/email", &[("email", "ilda@home.example")]).await;
    let proof = server.post.next().await.path();
    assert_eq!(ilda.post(&proof, &[]).await.status, 303);
    let page = ilda.post("/account/codes", &[]).await.text;
    let code = page.split("class=\"code\">").nth(1).unwrap().split('<').next().unwrap().to_owned();
    assert_eq!(code.len(), 39);
    server.browser().post("/sign-in/link", &[("email", "ilda@home.example"), ("to", "/")]).await;
    let mailed = server.post.next().await.path();
    let session = ilda.token().unwrap();
    // Nobody answers any more.
    server.host.close().await;
    let mut other = server.browser();
    for path in [&link, &mailed, &proof] {
        for answer in [other.post(path, &[("name", "Robin")]).await, ilda.get(path).await] {
            assert!(answer.status == 503 || answer.status < 500, "{path}: {}", answer.status);
        }
    }
    assert_eq!(other.post(&link, &[("name", "Robin")]).await.status, 503);
    assert_eq!(other.post("/sign-in/code", &[("code", &code), ("to", "/")]).await.status, 503);
    assert_eq!(ilda.get("/account").await.status, 503);
    let log = logged();
    assert!(log.contains("POST /join/\u{2026}"), "what failed is named: {log}");
    let secrets = [&link, &mailed, &proof].map(|path| path.rsplit('/').next().unwrap().to_owned());
    for secret in secrets.iter().chain([&code]).map(String::as_str).chain([session.reveal()]) {
        assert!(secret.len() >= 39 && !log.contains(secret), "a secret is in the log");
    }
}
