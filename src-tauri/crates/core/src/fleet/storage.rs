//! Where a fleet's devices leave their segments for each other.

use serde::{Deserialize, Serialize};
use std::fmt;

/// A storage, and what opens its door.
#[derive(Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct StorageAccess {
    /// `file:///folder`, `https://server/folder` for WebDAV, or `s3://bucket/folder`.
    pub url: String,
    /// Address of an S3-compatible service; none for a bucket that its name finds.
    #[serde(default)]
    pub endpoint: Option<String>,
    /// Region of the bucket.
    #[serde(default)]
    pub region: Option<String>,
    /// Name of the account, or id of the key.
    #[serde(default)]
    pub user: Option<String>,
    /// Password, or the key itself.
    #[serde(default)]
    pub secret: Option<String>,
}

/// Never the secret.
impl fmt::Debug for StorageAccess {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { url, endpoint, region, user, secret: _ } = self;
        to.debug_struct("StorageAccess")
            .field("url", url)
            .field("endpoint", endpoint)
            .field("region", region)
            .field("user", user)
            .finish_non_exhaustive()
    }
}
