-- Who belongs to the fleet. The founder's public key came with the fleet's, by hand: whom this register believes first. There
-- is none where the fleet is open.
ALTER TABLE register ADD COLUMN founder TEXT CHECK (length(founder) = 52);

-- What the fleet's planners said of each device, projected from the log.
CREATE TABLE member (
    device  TEXT PRIMARY KEY CHECK (length(device) = 32),
    content TEXT NOT NULL -- JSON
) STRICT, WITHOUT ROWID;
