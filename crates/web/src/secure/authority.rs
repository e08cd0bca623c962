//! The home's own certificate authority: made once, kept in the data directory, good for home addresses only.

use crate::access::plain_label;
use rcgen::{
    BasicConstraints, CertificateParams, CidrSubnet, DnType, ExtendedKeyUsagePurpose, GeneralSubtree, IsCa, Issuer,
    KeyPair, KeyUsagePurpose, NameConstraints, SanType,
};
use sayso_model::Moment;
use sayso_wording::{Locale, Message, say};
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;
use std::io::Write;
use std::net::{IpAddr, Ipv6Addr};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, PoisonError};
use time::{Duration, OffsetDateTime};
use tokio_rustls::TlsAcceptor;
use tokio_rustls::rustls::ServerConfig;
use tokio_rustls::rustls::crypto::ring;
use tokio_rustls::rustls::pki_types::pem::PemObject;
use tokio_rustls::rustls::pki_types::{CertificateDer, PrivateKeyDer};

/// Years the authority is good for, so that phones need it once.
const AUTHORITY_DAYS: i64 = 10 * 365;
/// Days a server certificate is good for; phones refuse longer than 825 even from an authority they trust.
const SERVER_DAYS: i64 = 397;
/// Kinds of address a home uses: loopback, private (RFC 1918, RFC 4193), shared (RFC 6598) and link-local ones.
const HOME_V4: [([u8; 4], u8); 6] = [
    ([127, 0, 0, 0], 8),
    ([10, 0, 0, 0], 8),
    ([172, 16, 0, 0], 12),
    ([192, 168, 0, 0], 16),
    ([100, 64, 0, 0], 10),
    ([169, 254, 0, 0], 16),
];
const HOME_V6: [(Ipv6Addr, u8); 3] = [
    (Ipv6Addr::LOCALHOST, 128),
    (Ipv6Addr::new(0xfc00, 0, 0, 0, 0, 0, 0, 0), 7),
    (Ipv6Addr::new(0xfe80, 0, 0, 0, 0, 0, 0, 0), 10),
];

/// Why safe serving cannot begin.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum SecureError {
    /// The file cannot be read or written.
    #[error("{file}: {source}", file = .file.display())]
    File {
        /// Which.
        file: PathBuf,
        /// Why.
        source: std::io::Error,
    },
    /// The file holds something else.
    #[error(
        "{file} does not hold a certificate and its key: {why}. Bring it back from a copy, or delete it: a new one is \
         then made, and every phone has to install that",
        file = .file.display()
    )]
    Content {
        /// Which.
        file: PathBuf,
        /// What is wrong.
        why: String,
    },
    /// A certificate cannot be made.
    #[error("no certificate could be made: {0}")]
    Making(#[from] rcgen::Error),
    /// A certificate cannot be used.
    #[error("the certificate cannot be used: {0}")]
    Using(#[from] tokio_rustls::rustls::Error),
}

impl Message for SecureError {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::File { file, source } => {
                say!(l, sounds::of_file, file = file.display().to_string(), why = source.to_string())
            }
            Self::Content { file, why } => {
                say!(l, command_serve::certificate_content, file = file.display().to_string(), why = why)
            }
            Self::Making(why) => say!(l, command_serve::certificate_making, why = why.to_string()),
            Self::Using(why) => say!(l, command_serve::certificate_using, why = why.to_string()),
        }
    }
}

/// Signs this server's certificates. Phones that installed it trust the notebook, and by it nothing outside a home.
pub struct Authority {
    certificate: CertificateDer<'static>,
    issuer: Issuer<'static, KeyPair>,
    server_key: KeyPair,
    host: Option<String>,
    now: fn() -> Moment,
    made: Mutex<BTreeMap<Option<IpAddr>, (OffsetDateTime, TlsAcceptor)>>,
}

impl Authority {
    /// Reads the authority from `file`, or makes one and keeps it there, readable by its owner alone.
    /// `host` is this machine's name, where it has one.
    ///
    /// # Errors
    /// [`SecureError`] where the file cannot be read, written or understood.
    pub fn read_or_make(file: &Path, host: Option<&str>, now: fn() -> Moment) -> Result<Self, SecureError> {
        let io = |source| SecureError::File { file: file.to_owned(), source };
        let kept = match std::fs::read_to_string(file) {
            Ok(text) => text,
            Err(e) if e.kind() == std::io::ErrorKind::NotFound => {
                let text = make(time_of(now()))?;
                keep(file, &text).map_err(io)?;
                text
            }
            Err(e) => return Err(io(e)),
        };
        let odd = |why: String| SecureError::Content { file: file.to_owned(), why };
        let certificate = CertificateDer::from_pem_slice(kept.as_bytes()).map_err(|e| odd(e.to_string()))?;
        let key = PrivateKeyDer::from_pem_slice(kept.as_bytes()).map_err(|e| odd(e.to_string()))?;
        let key = KeyPair::try_from(&key).map_err(|e| odd(e.to_string()))?;
        Ok(Self {
            certificate: certificate.into_owned(),
            issuer: Issuer::new(authority_params(time_of(now())), key),
            server_key: KeyPair::generate()?,
            // Of a long name, the home network knows the first part.
            host: host.and_then(|h| h.split('.').next()).map(str::to_ascii_lowercase).filter(|h| plain_label(h)),
            now,
            made: Mutex::new(BTreeMap::new()),
        })
    }

    /// What a phone installs (DER).
    #[must_use]
    pub fn certificate(&self) -> &[u8] {
        &self.certificate
    }

    /// SHA-256 of the certificate as phones show it, in pairs of hexadecimal digits.
    #[must_use]
    pub fn fingerprint(&self) -> String {
        let pairs: Vec<String> = Sha256::digest(&self.certificate).iter().map(|b| format!("{b:02X}")).collect();
        pairs.join(":")
    }

    /// What answers a connection made to `at`, with a certificate for that address and this machine's names.
    ///
    /// # Errors
    /// [`SecureError`] where no certificate can be made.
    pub fn acceptor(&self, at: IpAddr) -> Result<TlsAcceptor, SecureError> {
        // An address out in the world is in no certificate of ours: a phone would refuse it, and rightly.
        let at = Some(at.to_canonical()).filter(at_home);
        let now = time_of((self.now)());
        let mut made = self.made.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some((until, acceptor)) = made.get(&at)
            && now < *until
        {
            return Ok(acceptor.clone());
        }
        let mut names = vec![SanType::DnsName("localhost".try_into()?)];
        if let Some(host) = &self.host {
            names.push(SanType::DnsName(format!("{host}.local").try_into()?));
        }
        names.extend(at.map(SanType::IpAddress));
        let mut params = CertificateParams::default();
        params.distinguished_name.push(DnType::CommonName, "Sayso at home");
        params.subject_alt_names = names;
        params.not_before = now - Duration::days(1);
        params.not_after = now + Duration::days(SERVER_DAYS - 1);
        params.key_usages = vec![KeyUsagePurpose::DigitalSignature];
        params.extended_key_usages = vec![ExtendedKeyUsagePurpose::ServerAuth];
        params.use_authority_key_identifier_extension = true;
        let leaf = params.signed_by(&self.server_key, &self.issuer)?;
        let key = PrivateKeyDer::Pkcs8(self.server_key.serialize_der().into());
        let mut config = ServerConfig::builder_with_provider(Arc::new(ring::default_provider()))
            .with_safe_default_protocol_versions()?
            .with_no_client_auth()
            .with_single_cert(vec![leaf.der().clone(), self.certificate.clone()], key)?;
        config.alpn_protocols = vec![b"http/1.1".to_vec()];
        let acceptor = TlsAcceptor::from(Arc::new(config));
        made.insert(at, (now + Duration::days(SERVER_DAYS / 2), acceptor.clone()));
        Ok(acceptor)
    }
}

fn authority_params(now: OffsetDateTime) -> CertificateParams {
    let mut params = CertificateParams::default();
    params.distinguished_name.push(DnType::CommonName, "Sayso home notebook");
    params.not_before = now - Duration::days(1);
    params.not_after = now + Duration::days(AUTHORITY_DAYS);
    params.is_ca = IsCa::Ca(BasicConstraints::Constrained(0));
    params.key_usages = vec![KeyUsagePurpose::KeyCertSign, KeyUsagePurpose::CrlSign];
    // Whoever steals the key can pass for addresses in a home, never for a bank.
    let names = ["local", "localhost"].map(|n| GeneralSubtree::DnsName(n.into()));
    let v4 = HOME_V4.map(|(a, n)| GeneralSubtree::IpAddress(CidrSubnet::from_v4_prefix(a, n)));
    let v6 = HOME_V6.map(|(a, n)| GeneralSubtree::IpAddress(CidrSubnet::from_v6_prefix(a.octets(), n)));
    params.name_constraints = Some(NameConstraints {
        permitted_subtrees: names.into_iter().chain(v4).chain(v6).collect(),
        excluded_subtrees: Vec::new(),
    });
    params
}

fn make(now: OffsetDateTime) -> Result<String, SecureError> {
    let key = KeyPair::generate()?;
    let certificate = authority_params(now).self_signed(&key)?;
    Ok(certificate.pem() + &key.serialize_pem())
}

fn keep(file: &Path, text: &str) -> std::io::Result<()> {
    let mut options = std::fs::OpenOptions::new();
    options.write(true).create_new(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
    let mut out = options.open(file)?;
    out.write_all(text.as_bytes())?;
    out.sync_all()
}

fn time_of(now: Moment) -> OffsetDateTime {
    // Every moment lies within the years that type holds; the fall-back is never met.
    OffsetDateTime::from_unix_timestamp(now.millis().div_euclid(1000)).unwrap_or(OffsetDateTime::UNIX_EPOCH)
}

/// Whether an address is of the kinds a home uses, so that the certificate may vouch for it.
#[must_use]
pub fn at_home(address: &IpAddr) -> bool {
    fn same(a: u128, b: u128, bits: u32, prefix: u8) -> bool {
        let shift = bits - u32::from(prefix);
        a >> shift == b >> shift
    }
    match address {
        IpAddr::V4(a) => {
            HOME_V4.iter().any(|(net, n)| same(u32::from(*a).into(), u32::from_be_bytes(*net).into(), 32, *n))
        }
        IpAddr::V6(a) => HOME_V6.iter().any(|(net, n)| same((*a).into(), (*net).into(), 128, *n)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn home_is_where_addresses_are_private() {
        for home in
            ["127.0.0.1", "10.1.2.3", "172.31.0.1", "192.168.7.7", "100.64.1.1", "169.254.9.9", "::1", "fd12::1"]
        {
            assert!(home.parse().is_ok_and(|a| at_home(&a)), "{home}");
        }
        for out in ["8.8.4.4", "172.32.0.1", "192.169.0.1", "100.128.0.1", "2001:db8::1", "::2"] {
            assert!(out.parse().is_ok_and(|a| !at_home(&a)), "{out}");
        }
    }
}
