//! The connection to the database.

use crate::{Address, OfficeError};
use postgres::config::SslMode;
use postgres::{Client, NoTls};
use rustls::ClientConfig;
use rustls_platform_verifier::BuilderVerifierExt;
use std::sync::Arc;
use tokio_postgres_rustls::MakeRustlsConnect;

/// Connects. Certificates are checked against those that the system trusts.
pub(crate) fn connect(Address(config): &Address) -> Result<Client, OfficeError> {
    if config.get_ssl_mode() == SslMode::Disable {
        return Ok(config.connect(NoTls)?);
    }
    let no_tls = |error: rustls::Error| OfficeError::Away { cause: error.to_string() };
    let provider = Arc::new(rustls::crypto::ring::default_provider());
    let tls = ClientConfig::builder_with_provider(provider)
        .with_safe_default_protocol_versions()
        .map_err(no_tls)?
        .with_platform_verifier()
        .map_err(no_tls)?
        .with_no_client_auth();
    Ok(config.connect(MakeRustlsConnect::new(tls))?)
}
