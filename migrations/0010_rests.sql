-- Which rows of the tables a hose rests on stands in its own record as well: to take its rows away, that is read, and no
-- second index need be kept of the longest of all tables.
DROP INDEX rests_code;
