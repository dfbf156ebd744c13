//! Where segments and photos are kept: a folder, WebDAV, or S3-compatible object storage, through the `object_store` crate.

use crate::{SegmentName, photo};
use base64::prelude::{BASE64_STANDARD, Engine};
use futures_util::future::try_join_all;
use hosewright_core::fleet::StorageAccess;
use hosewright_core::record::Hash;
use http::header::{AUTHORIZATION, HeaderName, HeaderValue};
use object_store::aws::AmazonS3Builder;
use object_store::http::HttpBuilder;
use object_store::local::LocalFileSystem;
use object_store::path::Path;
use object_store::prefix::PrefixStore;
use object_store::{ClientOptions, ObjectMeta, ObjectStore, ObjectStoreExt, PutPayload, RetryConfig};
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;
use std::time::Duration;
use thiserror::Error;
use url::Url;

/// Why a storage can not be used.
#[derive(Debug, Error)]
pub enum StorageError {
    /// An address that names no storage.
    #[error(
        "\"{url}\" names no storage: write file:///folder (a folder that is there), https://server/folder or s3://bucket/folder"
    )]
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
    #[error("the storage refuses this device; check account, password and folder")]
    Refused,
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
                    .map_err(|_| wrong())?,
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
        match self.runtime.block_on(self.files()) {
            Ok(files) => Ok(files.iter().filter_map(whole).collect()),
            // Before the first segment there is no folder.
            Err(object_store::Error::NotFound { .. }) => Ok(BTreeSet::new()),
            Err(error) => Err(failed(SegmentName::FOLDER, error)),
        }
    }

    /// The files in the folders of the devices. Folder by folder: few WebDAV servers list a whole tree at once.
    async fn files(&self) -> object_store::Result<Vec<ObjectMeta>> {
        let folder = Path::from(SegmentName::FOLDER);
        let devices = self.store.list_with_delimiter(Some(&folder)).await?.common_prefixes;
        let listed = devices.iter().map(|device| self.store.list_with_delimiter(Some(device)));
        Ok(try_join_all(listed).await?.into_iter().flat_map(|files| files.objects).collect())
    }

    /// Reads a segment's file.
    ///
    /// # Errors
    /// It is gone, or the storage does not answer or refuses.
    pub fn fetch(&self, name: &SegmentName) -> Result<Vec<u8>, StorageError> {
        self.get(&name.to_string())
    }

    /// Writes a segment's file; one that is there already is the same and is written over.
    ///
    /// # Errors
    /// The storage does not answer or refuses.
    pub fn publish(&self, name: &SegmentName, file: Vec<u8>) -> Result<(), StorageError> {
        self.put(&name.to_string(), file)
    }

    /// The photos that lie there, with the sizes of their objects.
    ///
    /// # Errors
    /// The storage does not answer or refuses.
    pub fn list_photos(&self) -> Result<BTreeMap<Hash, u64>, StorageError> {
        let folder = Path::from(photo::FOLDER);
        match self.runtime.block_on(self.store.list_with_delimiter(Some(&folder))) {
            Ok(listed) => {
                let photo = |file: &ObjectMeta| Some((photo::of_path(file.location.as_ref())?, file.size));
                Ok(listed.objects.iter().filter_map(photo).collect())
            }
            // Before the first photo there is no folder.
            Err(object_store::Error::NotFound { .. }) => Ok(BTreeMap::new()),
            Err(error) => Err(failed(photo::FOLDER, error)),
        }
    }

    /// Reads a photo's object.
    ///
    /// # Errors
    /// It is gone, or the storage does not answer or refuses.
    pub fn fetch_photo(&self, hash: Hash) -> Result<Vec<u8>, StorageError> {
        self.get(&photo::path(hash))
    }

    /// Writes a photo's object; one that is there was cut off and is written over.
    ///
    /// # Errors
    /// The storage does not answer or refuses.
    pub fn publish_photo(&self, hash: Hash, object: Vec<u8>) -> Result<(), StorageError> {
        self.put(&photo::path(hash), object)
    }

    fn get(&self, name: &str) -> Result<Vec<u8>, StorageError> {
        let path = Path::from(name);
        let read = async { self.store.get(&path).await?.bytes().await };
        Ok(self.runtime.block_on(read).map_err(|error| failed(name, error))?.to_vec())
    }

    fn put(&self, name: &str, file: Vec<u8>) -> Result<(), StorageError> {
        self.runtime
            .block_on(self.store.put(&Path::from(name), PutPayload::from(file)))
            .map_err(|error| failed(name, error))?;
        Ok(())
    }
}

/// The segment's name, where the file is one and has all its bytes.
fn whole(file: &ObjectMeta) -> Option<SegmentName> {
    let name: SegmentName = file.location.as_ref().parse().ok()?;
    (name.bytes == file.size).then_some(name)
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
    // An account in the address would come back in every error.
    let headers = access.user.iter().filter_map(|user| basic(user, access.secret.as_deref())).collect();
    let client = client().with_default_headers(headers);
    HttpBuilder::new().with_url(url.clone()).with_client_options(client).with_retry(patience()).build()
}

/// The account in a header (RFC 7617).
fn basic(user: &str, password: Option<&str>) -> Option<(HeaderName, HeaderValue)> {
    let account = BASE64_STANDARD.encode(format!("{user}:{}", password.unwrap_or_default()));
    let mut value = HeaderValue::from_str(&format!("Basic {account}")).ok()?;
    value.set_sensitive(true);
    Some((AUTHORIZATION, value))
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
            StorageError::Refused
        }
        other => StorageError::Away { cause: root(&other) },
    }
}

/// What lies at the bottom of an error, in one line: what lies above it repeats addresses and whole pages of a server.
fn root(error: &dyn std::error::Error) -> String {
    let last = std::iter::successors(Some(error), |error| error.source()).last();
    let text = last.map(ToString::to_string).unwrap_or_default();
    text.lines().next().unwrap_or_default().chars().take(120).collect()
}
