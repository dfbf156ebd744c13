-- Many things are written at once: lists of hoses, what other vans did.

-- Which rows of the tables a hose rests on stands in its own record as well: to take its rows away that is read, and no
-- second index is kept of the longest of all tables.
DROP INDEX rests_code;

-- The log is guarded as it was. Only, one event is refused before anything of it is written, so there is nothing to take
-- back and SQLite need not note what it would take back (`FAIL` for `ABORT`).
DROP TRIGGER event_is_never_replaced;
DROP TRIGGER event_continues_its_series;

CREATE TRIGGER event_continues_its_series BEFORE INSERT ON event
BEGIN
    -- REPLACE would remove a row without asking the trigger that guards it.
    SELECT RAISE(FAIL, 'the log is append-only: an event is never replaced')
    WHERE EXISTS (SELECT 1 FROM event WHERE device = NEW.device AND number = NEW.number);
    SELECT RAISE(FAIL, 'the log is append-only: an event continues its device''s series')
    WHERE NEW.previous IS NOT CASE NEW.number
        WHEN 1 THEN '0000000000000000000000000000000000000000000000000000000000000000'
        ELSE (SELECT hash FROM event WHERE device = NEW.device AND number = NEW.number - 1)
    END;
END;
