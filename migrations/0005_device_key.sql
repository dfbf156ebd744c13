-- Public keys of devices, projected from the log: by them others know whose signature they see.
CREATE TABLE device_key (
    device     TEXT PRIMARY KEY CHECK (length(device) = 32),
    public_key TEXT NOT NULL CHECK (length(public_key) = 52),
    version    TEXT NOT NULL
) STRICT, WITHOUT ROWID;
