//! Passkeys, with a device made of software. It keeps no discoverable keys, so the tests play that part: they tell it which key to use,
//! and whose it is afterwards, as a device does that found the key by itself.

use crate::database::Database;
use crate::together::*;
use sayso_people::db::KeyName;
use sayso_people::*;
use url::Url;
use webauthn_authenticator_rs::WebauthnAuthenticator;
use webauthn_authenticator_rs::softpasskey::SoftPasskey;
use webauthn_rs::prelude::{CreationChallengeResponse, PublicKeyCredential, RequestChallengeResponse};
use webauthn_rs_proto::AllowCredentials;

const FROM: &str = "192.0.2.7";

fn origin() -> Url {
    Url::parse("https://sayso.example").unwrap()
}

fn passkeys() -> Passkeys {
    Passkeys::new(&origin(), "Sayso").unwrap()
}

/// Registers a key of the device for someone signed in.
async fn registered(db: &Database, who: &Signed, device: &mut SoftPasskey) -> Vec<u8> {
    let begun = db.people.begin_passkey(&passkeys(), &who.session, at(1), &mut OsSecrets).await.unwrap();
    let (ceremony, mut asked): (_, CreationChallengeResponse) = begun;
    let choice = asked.public_key.authenticator_selection.as_mut().unwrap();
    assert!(choice.require_resident_key, "a key that the device finds by itself");
    choice.require_resident_key = false;
    let answer = device.do_registration(origin(), asked).unwrap();
    let (people, name) = (&db.people, KeyName::Own(label("my phone")));
    people.finish_passkey(&passkeys(), &who.session, ceremony, &answer, &name, at(2)).await.unwrap();
    let again = people.finish_passkey(&passkeys(), &who.session, ceremony, &answer, &name, at(2)).await;
    assert!(matches!(again, Err(Error::NotValid)), "a challenge is answered once");
    AsRef::<[u8]>::as_ref(&answer.raw_id).to_vec()
}

fn answered(
    device: &mut SoftPasskey,
    mut asked: RequestChallengeResponse,
    key: &[u8],
    whose: &Signed,
) -> PublicKeyCredential {
    assert!(asked.public_key.allow_credentials.is_empty(), "the question names nobody");
    let known = AllowCredentials { type_: "public-key".into(), id: key.to_vec(), transports: None };
    asked.public_key.allow_credentials.push(known);
    let mut answer = device.do_authentication(origin(), asked).unwrap();
    answer.response.user_handle = Some(whose.session.account.0.as_bytes().to_vec());
    answer
}

#[tokio::test(flavor = "multi_thread")]
async fn a_passkey_signs_in_in_any_process_and_a_challenge_is_answered_once() {
    let db = Database::new().await;
    let keeper = server_keeper(&db).await;
    let mut device = SoftPasskey::new(true);
    let key = registered(&db, &keeper, &mut device).await;
    let kept = db.people.passkeys(keeper.session.account).await.unwrap();
    assert_eq!((kept.len(), &kept[0].name, kept[0].used_at), (1, &KeyName::Own(label("my phone")), None));
    let other = db.another().await;
    let (ceremony, asked) = db.people.begin_sign_in(&passkeys(), FROM, at(10), &mut OsSecrets).await.unwrap();
    let answer = answered(&mut device, asked, &key, &keeper);
    let mut all = tokio::task::JoinSet::new();
    for n in 0..6 {
        let (people, answer) = (if n % 2 == 0 { db.people.clone() } else { other.clone() }, answer.clone());
        all.spawn(async move {
            people.finish_sign_in(&passkeys(), ceremony, &answer, "test", at(11), &mut OsSecrets).await
        });
    }
    let signed_in: Vec<_> = all.join_all().await.into_iter().filter_map(Result::ok).collect();
    assert_eq!(signed_in.len(), 1);
    assert_eq!(signed_in[0].0.account, keeper.session.account);
    assert_eq!(db.people.passkeys(keeper.session.account).await.unwrap()[0].used_at, Some(at(11)));
}

#[tokio::test(flavor = "multi_thread")]
async fn wrong_late_and_foreign_answers_are_refused_alike() {
    let db = Database::new().await;
    let keeper = server_keeper(&db).await;
    let ilda = keeper_of(&db, &keeper, home(1)).await;
    let mut device = SoftPasskey::new(true);
    let key = registered(&db, &keeper, &mut device).await;
    let finish = async |ceremony, answer: &PublicKeyCredential, second| {
        let told = db.people.finish_sign_in(&passkeys(), ceremony, answer, "t", at(second), &mut OsSecrets).await;
        told.map(|_| ()).map_err(|e| e.to_string())
    };
    let begin = async |second| db.people.begin_sign_in(&passkeys(), FROM, at(second), &mut OsSecrets).await.unwrap();
    let refused = Err(Error::NotValid.to_string());
    let (late, asked) = begin(10).await;
    let answer = answered(&mut device, asked, &key, &keeper);
    assert_eq!(finish(late, &answer, 10 + db.people.lifetimes().ceremony_s as i64).await, refused);
    let (other, _) = begin(20).await;
    assert_eq!(finish(other, &answer, 21).await, refused, "an answer to another challenge");
    let (theirs, asked) = begin(30).await;
    assert_eq!(finish(theirs, &answered(&mut device, asked, &key, &ilda), 31).await, refused, "someone else's name");
    let (unknown, asked) = begin(40).await;
    let mut answer = answered(&mut device, asked, &key, &keeper);
    answer.raw_id = vec![9; 32];
    assert_eq!(finish(unknown, &answer, 41).await, refused, "a key nobody has");
    assert!(db.people.forget_passkey(&keeper.session, &key, at(45)).await.unwrap());
    let (gone, asked) = begin(50).await;
    assert_eq!(finish(gone, &answered(&mut device, asked, &key, &keeper), 51).await, refused, "forgotten");
}
