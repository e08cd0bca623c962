//! HTTPS on the home network: who gets in how, and what the home's certificate is good for.

use axum::body::Body;
use axum::extract::ConnectInfo;
use axum::http::{Request, StatusCode, header};
use rcgen::{BasicConstraints, CertificateParams, DnType, IsCa, Issuer, KeyPair};
use sayso_web::access::Access;
use sayso_web::secure::{Authority, Peer, SecureError};
use sayso_web::store::Store;
use sayso_web::{AppState, Config, app};
use std::net::SocketAddr;
use std::path::Path;
use std::sync::{Arc, Mutex};
use tokio::io::{AsyncReadExt, AsyncWriteExt};
use tokio::net::TcpStream;
use tokio_rustls::TlsConnector;
use tokio_rustls::rustls::client::WebPkiServerVerifier;
use tokio_rustls::rustls::crypto::ring;
use tokio_rustls::rustls::pki_types::pem::PemObject;
use tokio_rustls::rustls::pki_types::{CertificateDer, PrivateKeyDer, ServerName, UnixTime};
use tokio_rustls::rustls::{ClientConfig, RootCertStore};
use tower::ServiceExt;

fn machine_clock() -> sayso_model::Moment {
    sayso_web::state::machine_clock()
}

fn authority(dir: &Path) -> Result<Authority, SecureError> {
    Authority::read_or_make(&dir.join("home-authority.pem"), Some("Kitchen"), machine_clock)
}

fn roots(certificate: &[u8]) -> Arc<RootCertStore> {
    let mut roots = RootCertStore::empty();
    roots.add(CertificateDer::from(certificate.to_vec())).unwrap();
    Arc::new(roots)
}

fn client(certificate: &[u8]) -> TlsConnector {
    let config = ClientConfig::builder_with_provider(Arc::new(ring::default_provider()))
        .with_safe_default_protocol_versions()
        .unwrap()
        .with_root_certificates(roots(certificate))
        .with_no_client_auth();
    TlsConnector::from(Arc::new(config))
}

/// Asks over a new connection and returns the whole answer; as `name` over TLS, or in plain.
async fn ask(at: SocketAddr, safely: Option<(&TlsConnector, &str)>, request: &str) -> std::io::Result<String> {
    let mut stream = TcpStream::connect(at).await?;
    let mut answer = Vec::new();
    match safely {
        None => {
            stream.write_all(request.as_bytes()).await?;
            stream.read_to_end(&mut answer).await?;
        }
        Some((connector, name)) => {
            let name = ServerName::try_from(name.to_owned()).unwrap();
            let mut stream = connector.connect(name, stream).await?;
            stream.write_all(request.as_bytes()).await?;
            // A close without farewell is how servers end a connection they were asked to close.
            let _ = stream.read_to_end(&mut answer).await;
        }
    }
    Ok(String::from_utf8_lossy(&answer).into_owned())
}

fn get(path: &str, host: &str) -> String {
    format!("GET {path} HTTP/1.1\r\nHost: {host}\r\nConnection: close\r\n\r\n")
}

#[tokio::test]
async fn a_device_pairs_over_https_and_its_cookie_stays_there() {
    let dir = tempfile::tempdir().unwrap();
    let (tell, told) = tokio::sync::oneshot::channel();
    let (tell, codes) = (Mutex::new(Some(tell)), Arc::new(Mutex::new(Vec::new())));
    let kept = codes.clone();
    let config = Config {
        data: dir.path().to_owned(),
        port: 0,
        lan: Some(std::net::Ipv4Addr::UNSPECIFIED.into()),
        secure: true,
        takes_sound: true,
        host: Some("Kitchen".into()),
        patience: sayso_web::connections::Patience::default(),
        opened: Arc::new(move |o| drop(tell.lock().unwrap().take().unwrap().send(o.clone()))),
        show_code: Arc::new(move |code, _| kept.lock().unwrap().push(code.to_owned())),
    };
    tokio::spawn(async move { sayso_web::serve(config).await.unwrap() });
    let opened = told.await.unwrap();
    let at = SocketAddr::from(([127, 0, 0, 1], opened.at.port()));
    let authority = authority(dir.path()).unwrap();
    assert_eq!(opened.fingerprint, Some(authority.fingerprint()), "the one that was made is kept");
    let tls = client(authority.certificate());

    for name in ["127.0.0.1", "localhost", "kitchen.local"] {
        let page = ask(at, Some((&tls, name)), &get("/pair", name)).await.unwrap();
        assert!(page.starts_with("HTTP/1.1 200") && !page.contains("Over plain HTTP"), "{name}: {page}");
    }
    assert!(ask(at, Some((&tls, "192.168.7.7")), &get("/pair", "192.168.7.7")).await.is_err(), "not this machine");
    let body = format!("code={}", codes.lock().unwrap()[0]);
    let typed = format!(
        "POST /pair HTTP/1.1\r\nHost: kitchen.local\r\nConnection: close\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: {}\r\n\r\n{body}",
        body.len()
    );
    let paired = ask(at, Some((&tls, "kitchen.local")), &typed).await.unwrap();
    let cookie = paired.lines().find(|l| l.starts_with("set-cookie")).expect("a cookie");
    assert!(cookie.contains("; Secure") && cookie.contains("HttpOnly"), "{cookie}");
    // This machine itself may still come in plain, and pairs like any other.
    let plain = ask(at, None, &get("/pair", "127.0.0.1")).await.unwrap();
    assert!(plain.contains("Over plain HTTP") && !plain.contains("sayso-home.crt"), "{plain}");
    // Rubbish after a first byte that promises TLS ends that connection and no other.
    assert_eq!(ask(at, None, "\x16rubbish rubbish rubbish").await.unwrap_or_default().matches("200").count(), 0);
    assert!(ask(at, Some((&tls, "localhost")), &get("/pair", "localhost")).await.unwrap().contains("200 OK"));
}

#[tokio::test]
async fn a_plain_request_from_elsewhere_gets_the_doorstep_and_nothing_else() {
    let dir = tempfile::tempdir().unwrap();
    let store = Arc::new(Store::open(dir.path()).await.unwrap());
    let access = Access::home_network(&dir.path().join("paired.json"), Arc::new(|_, _| ())).unwrap();
    let authority = Arc::new(authority(dir.path()).unwrap());
    let app = app(AppState::new(store, access).with_authority(Some(authority.clone())));
    let send = |method: &str, path: &str, from: &str, safe: bool| {
        let mut request = Request::builder()
            .method(method)
            .uri(path)
            .header(header::HOST, "192.168.7.7:7297")
            .body(Body::empty())
            .unwrap();
        request.extensions_mut().insert(ConnectInfo(Peer { address: from.parse().unwrap(), safe }));
        let app = app.clone();
        async move {
            let answer = app.oneshot(request).await.unwrap();
            let status = answer.status();
            let body = http_body_util::BodyExt::collect(answer.into_body()).await.unwrap().to_bytes();
            (status, body)
        }
    };
    let phone = "192.168.7.20:5000";
    for path in ["/", "/pair", "/a/x/board"] {
        let (status, page) = send("GET", path, phone, false).await;
        let page = String::from_utf8_lossy(&page);
        assert_eq!(status, StatusCode::OK);
        assert!(page.contains("https://192.168.7.7:7297/") && page.contains("fingerprint"), "{page}");
    }
    let (_, certificate) = send("GET", "/sayso-home.crt", phone, false).await;
    assert_eq!(certificate, authority.certificate());
    assert_eq!(send("POST", "/pair", phone, false).await.0, StatusCode::FORBIDDEN);
    assert_eq!(send("GET", "/api/events", phone, false).await.0, StatusCode::FORBIDDEN);
    // Over TLS it has to pair; this machine in plain too.
    assert_eq!(send("GET", "/api/events", phone, true).await.0, StatusCode::UNAUTHORIZED);
    assert_eq!(send("GET", "/api/events", "127.0.0.1:5000", false).await.0, StatusCode::UNAUTHORIZED);
}

#[tokio::test]
async fn the_homes_key_vouches_for_nothing_outside_a_home() {
    let dir = tempfile::tempdir().unwrap();
    let authority = authority(dir.path()).unwrap();
    let kept = std::fs::read(dir.path().join("home-authority.pem")).unwrap();
    let stolen = KeyPair::try_from(&PrivateKeyDer::from_pem_slice(&kept).unwrap()).unwrap();
    let mut issuer = CertificateParams::default();
    issuer.distinguished_name.push(DnType::CommonName, "Sayso home notebook");
    issuer.is_ca = IsCa::Ca(BasicConstraints::Constrained(0));
    let issuer = Issuer::new(issuer, stolen);
    let verifier =
        WebPkiServerVerifier::builder_with_provider(roots(authority.certificate()), Arc::new(ring::default_provider()))
            .build()
            .unwrap();
    let key = KeyPair::generate().unwrap();
    let holds = |name: &str| {
        let leaf = CertificateParams::new(vec![name.to_owned()]).unwrap().signed_by(&key, &issuer).unwrap();
        let name = ServerName::try_from(name.to_owned()).unwrap();
        use tokio_rustls::rustls::client::danger::ServerCertVerifier;
        verifier.verify_server_cert(leaf.der(), &[], &name, &[], UnixTime::now()).is_ok()
    };
    for home in ["kitchen.local", "localhost", "192.168.7.7", "10.0.0.1", "fd00::1"] {
        assert!(holds(home), "{home}");
    }
    for out in ["bank.example", "local.example", "8.8.4.4", "2001:db8::1"] {
        assert!(!holds(out), "{out}");
    }
}

#[test]
fn the_authority_is_kept_by_its_owner_alone_and_a_spoilt_file_is_told() {
    let dir = tempfile::tempdir().unwrap();
    let file = dir.path().join("home-authority.pem");
    let first = authority(dir.path()).unwrap().fingerprint();
    assert_eq!(authority(dir.path()).unwrap().fingerprint(), first);
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        assert_eq!(std::fs::metadata(&file).unwrap().permissions().mode() & 0o777, 0o600);
    }
    std::fs::write(&file, "rubbish").unwrap();
    let told = authority(dir.path()).err().unwrap().to_string();
    assert!(told.contains("home-authority.pem") && told.contains("delete it"), "{told}");
    assert_eq!(std::fs::read_to_string(&file).unwrap(), "rubbish", "nothing is overwritten");
}
