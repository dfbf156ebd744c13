//! Where segments are kept: a folder, WebDAV, or S3-compatible object storage, through the `object_store` crate.

use crate::SegmentName;
use futures_util::TryStreamExt;
use hosewright_core::fleet::StorageAccess;
use object_store::aws::AmazonS3Builder;
use object_store::http::HttpBuilder;
use object_store::local::LocalFileSystem;
use object_store::path::Path;
use object_store::prefix::PrefixStore;
use object_store::{ClientOptions, ObjectStore, ObjectStoreExt, PutPayload, RetryConfig};
use std::collections::BTreeSet;
use std::sync::Arc;
use std::time::Duration;
use thiserror::Error;
use url::Url;

/// Why a storage can not be used.
#[derive(Debug, Error)]
pub enum StorageError {
    /// An address that names no storage.
    #[error("\"{url}\" names no storage: write file:///folder, https://server/folder or s3://bucket/folder")]
    Address {
        /// What was given.
        url: String,
    },
    /// Nobody answers: mostly no signal.
    #[error("the storage does not answer; what is written stays on this device until it does ({cause})")]
    Away {
        /// What was seen.
        cause: String,
    },
    /// It does not let this device in.
    #[error("the storage refuses this device; check account, password and folder ({cause})")]
    Refused {
        /// What was seen.
        cause: String,
    },
    /// A file that was listed is no longer there.
    #[error("{name} is no longer in the storage")]
    Gone {
        /// Which.
        name: String,
    },
}

/// An open storage.
#[derive(Debug)]
pub struct Storage {
    store: Arc<dyn ObjectStore>,
    runtime: tokio::runtime::Runtime,
}

impl Storage {
    /// Opens it. Nothing is asked of it yet.
    ///
    /// # Errors
    /// The address names no storage, or a folder that is not there.
    pub fn open(access: &StorageAccess) -> Result<Self, StorageError> {
        let wrong = || StorageError::Address { url: access.url.clone() };
        // It is an error only where one was chosen before, by an earlier call of this.
        let _ = rustls::crypto::ring::default_provider().install_default();
        let url = Url::parse(&access.url).map_err(|_| wrong())?;
        let store: Arc<dyn ObjectStore> = match url.scheme() {
            "file" => Arc::new(
                LocalFileSystem::new_with_prefix(url.to_file_path().map_err(|()| wrong())?)
                    .map_err(|error| failed("", error))?,
            ),
            "http" | "https" => Arc::new(webdav(&url, access).map_err(|error| failed("", error))?),
            "s3" => Arc::new(bucket(&url, access).map_err(|error| failed("", error))?),
            _ => return Err(wrong()),
        };
        let runtime = tokio::runtime::Builder::new_current_thread()
            .enable_all()
            .build()
            .map_err(|error| StorageError::Away { cause: error.to_string() })?;
        Ok(Self { store, runtime })
    }

    /// The segments that lie there whole. One that was cut off on its way up has fewer bytes than its name says and is
    /// left out: whoever wrote it writes it again.
    ///
    /// # Errors
    /// The storage does not answer or refuses.
    pub fn list(&self) -> Result<BTreeSet<SegmentName>, StorageError> {
        let folder = Path::from(SegmentName::FOLDER);
        let listed: Result<Vec<_>, _> =
            self.runtime.block_on(self.store.list(Some(&folder)).try_collect::<Vec<_>>());
        match listed {
            Ok(files) => Ok(files
                .iter()
                .filter_map(|file| {
                    let name: SegmentName = file.location.as_ref().parse().ok()?;
                    (name.bytes == file.size).then_some(name)
                })
                .collect()),
            // Before the first segment there is no folder.
            Err(object_store::Error::NotFound { .. }) => Ok(BTreeSet::new()),
            Err(error) => Err(failed(SegmentName::FOLDER, error)),
        }
    }

    /// Reads a segment's file.
    ///
    /// # Errors
    /// It is gone, or the storage does not answer or refuses.
    pub fn fetch(&self, name: &SegmentName) -> Result<Vec<u8>, StorageError> {
        let path = Path::from(name.to_string());
        let read = async { self.store.get(&path).await?.bytes().await };
        Ok(self.runtime.block_on(read).map_err(|error| failed(path.as_ref(), error))?.to_vec())
    }

    /// Writes a segment's file; one that is there already is the same and is written over.
    ///
    /// # Errors
    /// The storage does not answer or refuses.
    pub fn publish(&self, name: &SegmentName, file: Vec<u8>) -> Result<(), StorageError> {
        let path = Path::from(name.to_string());
        self.runtime
            .block_on(self.store.put(&path, PutPayload::from(file)))
            .map_err(|error| failed(path.as_ref(), error))?;
        Ok(())
    }
}

/// A van must not wait for long where there is no signal; the next exchange tries again.
fn client() -> ClientOptions {
    ClientOptions::new()
        .with_connect_timeout(Duration::from_secs(10))
        .with_timeout(Duration::from_secs(60))
        // A workshop's own server is often without a certificate.
        .with_allow_http(true)
}

fn patience() -> RetryConfig {
    RetryConfig { max_retries: 2, retry_timeout: Duration::from_secs(30), ..RetryConfig::default() }
}

fn webdav(url: &Url, access: &StorageAccess) -> Result<impl ObjectStore + use<>, object_store::Error> {
    let mut url = url.clone();
    if let Some(user) = &access.user {
        // Refused for addresses without a server alone, which is none of http.
        let _ = url.set_username(user);
        let _ = url.set_password(access.secret.as_deref());
    }
    HttpBuilder::new().with_url(url).with_client_options(client()).with_retry(patience()).build()
}

fn bucket(url: &Url, access: &StorageAccess) -> Result<impl ObjectStore + use<>, object_store::Error> {
    let mut builder = AmazonS3Builder::new()
        .with_bucket_name(url.host_str().unwrap_or_default())
        .with_region(access.region.as_deref().unwrap_or("us-east-1"))
        .with_client_options(client())
        .with_retry(patience());
    if let Some(endpoint) = &access.endpoint {
        builder = builder.with_endpoint(endpoint).with_virtual_hosted_style_request(false);
    }
    if let (Some(user), Some(secret)) = (&access.user, &access.secret) {
        builder = builder.with_access_key_id(user).with_secret_access_key(secret);
    }
    Ok(PrefixStore::new(builder.build()?, url.path().trim_matches('/')))
}

/// What an error means for whoever waits.
fn failed(name: &str, error: object_store::Error) -> StorageError {
    match error {
        object_store::Error::NotFound { .. } => StorageError::Gone { name: name.to_owned() },
        object_store::Error::PermissionDenied { .. } | object_store::Error::Unauthenticated { .. } => {
            StorageError::Refused { cause: error.to_string() }
        }
        other => StorageError::Away { cause: other.to_string() },
    }
}
