//! A device made of software that keeps a passkey. It does not find keys by itself, so the tests tell it which one, and whose it is,
//! as a device does that found it.

use crate::browser::{Answer, Browser};
use serde_json::{Value, json};
use url::Url;
use webauthn_authenticator_rs::WebauthnAuthenticator;
use webauthn_authenticator_rs::softpasskey::SoftPasskey;
use webauthn_rs_proto::{AllowCredentials, CreationChallengeResponse, RequestChallengeResponse};

fn origin() -> Url {
    Url::parse("https://sayso.example").unwrap()
}

/// A device with one key.
pub struct Key {
    device: SoftPasskey,
    id: Vec<u8>,
    whose: Vec<u8>,
}

impl Key {
    /// Makes one for whoever is signed in, as the page's script does.
    pub async fn made(browser: &mut Browser, label: &str) -> Self {
        let asked = browser.json("/account/passkey", &json!({})).await;
        assert_eq!(asked.status, 200, "{}", asked.text);
        let asked = asked.json();
        let mut wanted: CreationChallengeResponse =
            serde_json::from_value(json!({ "publicKey": asked["publicKey"] })).unwrap();
        let choice = wanted.public_key.authenticator_selection.as_mut().unwrap();
        assert!(choice.require_resident_key, "a key that the device finds by itself");
        choice.require_resident_key = false;
        let whose = wanted.public_key.user.id.clone();
        let mut device = SoftPasskey::new(true);
        let answer = device.do_registration(origin(), wanted).unwrap();
        let id = answer.raw_id.clone();
        let done = json!({ "ceremony": asked["ceremony"], "answer": answer, "label": label, "to": "/start" });
        let kept = browser.json("/account/passkey/done", &done).await;
        assert_eq!((kept.status, kept.json()), (200, json!({ "to": "/start" })));
        let again = browser.json("/account/passkey/done", &done).await;
        assert_eq!((again.status, again.json()["kind"].clone()), (403, json!("host-not-valid")));
        Self { device, id, whose }
    }

    /// What it answers to the question of a sign-in.
    pub async fn answer(&mut self, browser: &mut Browser, to: &str) -> Value {
        let asked = browser.json("/sign-in/passkey", &json!({})).await;
        assert_eq!(asked.status, 200, "{}", asked.text);
        let asked = asked.json();
        let mut wanted: RequestChallengeResponse =
            serde_json::from_value(json!({ "publicKey": asked["publicKey"] })).unwrap();
        assert!(wanted.public_key.allow_credentials.is_empty(), "the question names nobody");
        let known = AllowCredentials { type_: "public-key".into(), id: self.id.clone(), transports: None };
        wanted.public_key.allow_credentials.push(known);
        let mut answer = self.device.do_authentication(origin(), wanted).unwrap();
        answer.response.user_handle = Some(self.whose.clone());
        json!({ "ceremony": asked["ceremony"], "answer": answer, "to": to })
    }

    /// Signs in.
    pub async fn signs_in(&mut self, browser: &mut Browser, to: &str) -> Answer {
        let answer = self.answer(browser, to).await;
        browser.json("/sign-in/passkey/done", &answer).await
    }
}
