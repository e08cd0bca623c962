//! The arguments of `host`.

use super::values::{WrongValue, typed, whole};
use clap::{Args, ValueEnum};
use std::net::{IpAddr, Ipv4Addr};
use std::num::NonZeroU16;
use std::path::PathBuf;
use std::str::FromStr;
use url::{Host, Url};

/// Where a server's database is.
#[derive(Args, Debug, Clone)]
pub struct AtDatabase {
    #[arg(long, value_name = "URL")]
    pub database: Option<String>,
    #[arg(long, value_name = "URL")]
    pub database_owner: Option<String>,
}

/// A server of many homes.
#[derive(Args, Debug, Clone)]
pub struct Hosting {
    #[arg(long, conflicts_with_all = ["database", "database_owner", "public_url"])]
    pub demo: bool,
    #[arg(long, default_value_t = 1, requires = "demo", allow_negative_numbers = true, value_parser = whole::<u64>)]
    pub seed: u64,
    #[command(flatten)]
    pub at: AtDatabase,
    #[arg(long, value_name = "URL", value_parser = typed::<PublicUrl>)]
    pub public_url: Option<PublicUrl>,
    #[arg(long, default_value_t = 7297, value_parser = whole::<u16>)]
    pub port: u16,
    #[arg(long, value_name = "ADDRESS", default_value_t = IpAddr::V4(Ipv4Addr::LOCALHOST), value_parser = typed::<IpAddr>)]
    pub listen: IpAddr,
    #[arg(long, value_name = "URL")]
    pub smtp: Option<String>,
    #[arg(long, value_name = "ADDRESS")]
    pub mail_from: Option<String>,
    #[arg(long, value_name = "URL")]
    pub oidc_issuer: Option<String>,
    #[arg(long, value_name = "ID")]
    pub oidc_client_id: Option<String>,
    #[arg(long, value_name = "NAME")]
    pub oidc_name: Option<String>,
    #[arg(long)]
    pub behind_proxy: bool,
    #[arg(long, value_name = "N", default_value = "16", value_parser = whole::<NonZeroU16>)]
    pub connections: NonZeroU16,
    #[arg(long, value_name = "N", default_value = "1024", value_parser = whole::<NonZeroU16>)]
    pub story_mb: NonZeroU16,
    #[arg(long, value_name = "N", value_parser = whole::<NonZeroU16>)]
    pub backup_days: Option<NonZeroU16>,
    #[arg(long, value_name = "FILE")]
    pub norms: Option<PathBuf>,
    #[arg(long, value_enum, default_value_t = LogFormat::Text)]
    pub log_format: LogFormat,
}

/// Forms of the log.
#[derive(ValueEnum, Clone, Copy, PartialEq, Eq, Default, Debug)]
pub enum LogFormat {
    // Lines for a person.
    #[default]
    Text,
    // An object of JSON a line, for programs that gather logs.
    Json,
}

/// Where people's browsers find the server: `https` and a name, with nothing behind it. While trying `http://localhost` will do:
/// browsers allow passkeys there.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct PublicUrl(pub Url);

impl FromStr for PublicUrl {
    type Err = WrongValue;

    fn from_str(text: &str) -> Result<Self, WrongValue> {
        let url = Url::parse(text).map_err(|_| WrongValue::PublicUrl)?;
        let Some(Host::Domain(name)) = url.host() else { return Err(WrongValue::PublicUrl) };
        let safe = url.scheme() == "https" || (url.scheme() == "http" && name == "localhost");
        let bare = url.path() == "/" && url.query().is_none() && url.fragment().is_none();
        let nobody = url.username().is_empty() && url.password().is_none();
        if safe && bare && nobody { Ok(Self(url)) } else { Err(WrongValue::PublicUrl) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_address_for_browsers_is_a_name_over_https_or_this_machine() {
        for good in ["https://sayso.example.org", "https://sayso.example.org:8443/", "http://localhost:7297"] {
            assert!(good.parse::<PublicUrl>().is_ok(), "{good}");
        }
        let bad = [
            "sayso.example.org",
            "http://sayso.example.org/",
            "https://192.0.2.1/",
            "http://127.0.0.1:7297/",
            "https://example.org/sayso/",
            "https://example.org/?x",
            "https://me:pw@example.org/",
            "",
        ];
        for bad in bad {
            assert_eq!(bad.parse::<PublicUrl>(), Err(WrongValue::PublicUrl), "{bad}");
        }
    }
}
