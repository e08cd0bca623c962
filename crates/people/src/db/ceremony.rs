//! Passkeys (W3C Web Authentication, level 3). The library does the cryptography; here its challenges and keys are kept.
//!
//! Keys are asked to be discoverable and signing in names nobody, so no answer tells whether an account exists.

use super::{KeyName, People, later, session};
use crate::db::Session;
use crate::error::Error;
use crate::id::{CeremonyId, new_id};
use crate::secret::{Secret, Secrets};
use sayso_model::{AccountId, Moment};
use url::Url;
use webauthn_rs::prelude::{
    CreationChallengeResponse, CredentialID, DiscoverableAuthentication, DiscoverableKey, Passkey, PasskeyRegistration,
    PublicKeyCredential, RegisterPublicKeyCredential, RequestChallengeResponse,
};
use webauthn_rs::{Webauthn, WebauthnBuilder};
use webauthn_rs_proto::ResidentKeyRequirement;

/// Most passkeys of an account.
const MOST: usize = 20;

/// What passkeys of this server are for: its name and address.
#[derive(Clone, Debug)]
pub struct Passkeys(Webauthn);

impl Passkeys {
    /// For a server reached at `origin`, such as `https://sayso.example`; its host is what keys are bound to.
    ///
    /// # Errors
    /// Where the address has no host that keys can be bound to.
    pub fn new(origin: &Url, name: &str) -> Result<Self, Error> {
        let host = origin.domain().unwrap_or_default();
        Ok(Self(WebauthnBuilder::new(host, origin)?.rp_name(name).build()?))
    }
}

fn written(value: &impl serde::Serialize) -> Result<String, Error> {
    serde_json::to_string(value).map_err(|_| Error::Stored("ceremony"))
}

impl People {
    async fn begin_ceremony(
        &self,
        account: Option<AccountId>,
        content: String,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<CeremonyId, Error> {
        let id = CeremonyId(new_id(now, secrets));
        sqlx::query("INSERT INTO people.ceremony (id, account, content, expires_at) VALUES ($1, $2, $3, $4)")
            .bind(id.0)
            .bind(account.map(|a| a.0))
            .bind(content)
            .bind(later(now, self.lifetimes.ceremony_s))
            .execute(&self.pool)
            .await?;
        Ok(id)
    }

    /// What was kept of a ceremony, which is then used up.
    async fn end_ceremony(&self, id: CeremonyId, account: Option<AccountId>, now: Moment) -> Result<String, Error> {
        let content = sqlx::query_scalar(
            "UPDATE people.ceremony SET used_at = $3
             WHERE id = $1 AND account IS NOT DISTINCT FROM $2 AND used_at IS NULL AND expires_at > $3 RETURNING content",
        )
        .bind(id.0)
        .bind(account.map(|a| a.0))
        .bind(now.millis())
        .fetch_optional(&self.pool)
        .await?;
        content.ok_or(Error::NotValid)
    }

    /// Begins to register a passkey for a signed-in account.
    ///
    /// # Errors
    /// [`Error::NotFresh`]; [`Error::TooOften`] where it has as many as one may have.
    pub async fn begin_passkey(
        &self,
        passkeys: &Passkeys,
        session: &Session,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<(CeremonyId, CreationChallengeResponse), Error> {
        self.may_add_way(session, now).await?;
        let account = self.account(session.account).await?.ok_or(Error::NotValid)?;
        let kept = self.passkeys(account.id).await?;
        if kept.len() >= MOST {
            return Err(Error::TooOften);
        }
        let known = kept.into_iter().map(|k| CredentialID::from(k.credential)).collect();
        let name = account.name.as_str();
        let (mut asked, state) = passkeys.0.start_passkey_registration(account.id.0, name, name, Some(known))?;
        // The library leaves it to the device; signing in here asks for nobody by name.
        if let Some(choice) = asked.public_key.authenticator_selection.as_mut() {
            choice.resident_key = Some(ResidentKeyRequirement::Required);
            choice.require_resident_key = true;
        }
        let id = self.begin_ceremony(Some(account.id), written(&state)?, now, secrets).await?;
        Ok((id, asked))
    }

    /// Keeps a passkey that the device made.
    ///
    /// # Errors
    /// [`Error::NotFresh`]; [`Error::NotValid`] where it was not asked for, or too long ago; [`Error::Passkey`] where its answer is wrong;
    /// [`Error::Taken`] where the key is kept already.
    pub async fn finish_passkey(
        &self,
        passkeys: &Passkeys,
        session: &Session,
        ceremony: CeremonyId,
        answer: &RegisterPublicKeyCredential,
        name: &KeyName,
        now: Moment,
    ) -> Result<(), Error> {
        // Begun as the first, it is not finished beside another that came meanwhile.
        self.may_add_begun(session, self.lifetimes.ceremony_s, now).await?;
        let state = self.end_ceremony(ceremony, Some(session.account), now).await?;
        let state: PasskeyRegistration = serde_json::from_str(&state).map_err(|_| Error::Stored("ceremony"))?;
        let key = passkeys.0.finish_passkey_registration(answer, &state)?;
        let (label, device) = match name {
            KeyName::Own(label) => (Some(label.as_str()), None),
            KeyName::Device(kind) => (None, Some(kind.as_str())),
        };
        sqlx::query(
            "INSERT INTO people.passkey (credential, account, label, device, content, made_at) VALUES ($1, $2, $3, $4, $5, $6)",
        )
        .bind(AsRef::<[u8]>::as_ref(key.cred_id()))
        .bind(session.account.0)
        .bind(label)
        .bind(device)
        .bind(written(&key)?)
        .bind(now.millis())
        .execute(&self.pool)
        .await
        .map_err(super::taken)?;
        Ok(())
    }

    /// Asks whoever is there for a passkey of this server.
    ///
    /// # Errors
    /// [`Error::TooOften`] by the network address it was asked from.
    pub async fn begin_sign_in(
        &self,
        passkeys: &Passkeys,
        from: &str,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<(CeremonyId, RequestChallengeResponse), Error> {
        self.attempt("passkey", None, from, now).await?;
        let (asked, state) = passkeys.0.start_discoverable_authentication()?;
        Ok((self.begin_ceremony(None, written(&state)?, now, secrets).await?, asked))
    }

    /// Signs in with a passkey.
    ///
    /// # Errors
    /// [`Error::NotValid`] whatever is wrong: with the challenge, the key or its signature.
    pub async fn finish_sign_in(
        &self,
        passkeys: &Passkeys,
        ceremony: CeremonyId,
        answer: &PublicKeyCredential,
        device: &str,
        now: Moment,
        secrets: &mut (impl Secrets + Send),
    ) -> Result<(Session, Secret), Error> {
        let state = self.end_ceremony(ceremony, None, now).await?;
        let state: DiscoverableAuthentication = serde_json::from_str(&state).map_err(|_| Error::Stored("ceremony"))?;
        let named = passkeys.0.identify_discoverable_authentication(answer);
        let (account, credential) = named.map_err(|_| Error::NotValid)?;
        let mut tx = self.begin().await?;
        // Locked, so that of two answers with one count of the key the second sees the first.
        let content: Option<String> =
            sqlx::query_scalar("SELECT content FROM people.passkey WHERE credential = $1 AND account = $2 FOR UPDATE")
                .bind(credential)
                .bind(account)
                .fetch_optional(&mut *tx)
                .await?;
        let content = content.ok_or(Error::NotValid)?;
        let mut key: Passkey = serde_json::from_str(&content).map_err(|_| Error::Stored("passkey"))?;
        let proved = passkeys.0.finish_discoverable_authentication_v2(answer, state, DiscoverableKey::from(&key));
        let proved = proved.map_err(|_| Error::NotValid)?;
        key.update_credential(&proved).ok_or(Error::NotValid)?;
        sqlx::query("UPDATE people.passkey SET content = $2, used_at = $3 WHERE credential = $1")
            .bind(credential)
            .bind(written(&key)?)
            .bind(now.millis())
            .execute(&mut *tx)
            .await?;
        let begun = session::begin(&mut tx, self, AccountId(account), device, now, secrets).await?;
        tx.commit().await?;
        Ok(begun)
    }
}
