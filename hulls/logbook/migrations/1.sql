-- The first format of the logbook.

CREATE TABLE hulls (
	id       INTEGER PRIMARY KEY,
	uid      TEXT NOT NULL UNIQUE CHECK (length(uid) = 32), -- the same boat in every logbook
	added_at TEXT NOT NULL
) STRICT;

-- The newest version of a hull is the one with the largest id.
CREATE TABLE hull_versions (
	id       INTEGER PRIMARY KEY,
	hull_id  INTEGER NOT NULL REFERENCES hulls (id),
	added_at TEXT NOT NULL,
	file     TEXT NOT NULL -- a hull file
) STRICT;
CREATE INDEX hull_versions_of_hull ON hull_versions (hull_id, id);

CREATE TABLE visits (
	id         INTEGER PRIMARY KEY,
	uid        TEXT NOT NULL UNIQUE CHECK (length(uid) = 32),
	hull_id    INTEGER NOT NULL REFERENCES hulls (id),
	version_id INTEGER NOT NULL REFERENCES hull_versions (id), -- the hull as it was then
	added_at   TEXT NOT NULL,
	base       TEXT NOT NULL -- a visit file: what the edits start from
) STRICT;
CREATE INDEX visits_of_hull ON visits (hull_id, id);

CREATE TABLE edits (
	id       INTEGER PRIMARY KEY,
	visit_id INTEGER NOT NULL REFERENCES visits (id),
	number   INTEGER NOT NULL CHECK (number > 0), -- within the visit, without gaps
	added_at TEXT NOT NULL,
	what     TEXT NOT NULL CHECK (what IN ('do', 'undo', 'redo')),
	edit     TEXT NOT NULL -- of 'do'; '' of the others
) STRICT;
CREATE UNIQUE INDEX edits_of_visit ON edits (visit_id, number);

CREATE TABLE photos (
	id        INTEGER PRIMARY KEY,
	visit_id  INTEGER NOT NULL REFERENCES visits (id),
	sha256    TEXT NOT NULL CHECK (length(sha256) = 64), -- of jpeg
	added_at  TEXT NOT NULL,
	caption   TEXT NOT NULL,
	width_px  INTEGER NOT NULL,
	height_px INTEGER NOT NULL,
	jpeg      BLOB NOT NULL
) STRICT;
CREATE UNIQUE INDEX photos_of_visit ON photos (visit_id, sha256);

CREATE TABLE mechanics (
	id   INTEGER PRIMARY KEY,
	name TEXT NOT NULL UNIQUE
) STRICT;

CREATE TABLE settings (
	mechanic_id INTEGER NOT NULL REFERENCES mechanics (id),
	key         TEXT NOT NULL,
	value       TEXT NOT NULL,
	PRIMARY KEY (mechanic_id, key)
) STRICT, WITHOUT ROWID;

-- What was put in stays.
CREATE TRIGGER hull_versions_stay BEFORE UPDATE ON hull_versions BEGIN SELECT raise(ABORT, 'a hull version is only ever added'); END;
CREATE TRIGGER hull_versions_last BEFORE DELETE ON hull_versions BEGIN SELECT raise(ABORT, 'a hull version is only ever added'); END;
CREATE TRIGGER edits_stay BEFORE UPDATE ON edits BEGIN SELECT raise(ABORT, 'an edit is only ever added'); END;
CREATE TRIGGER edits_last BEFORE DELETE ON edits BEGIN SELECT raise(ABORT, 'an edit is only ever added'); END;
CREATE TRIGGER visits_stay BEFORE UPDATE ON visits BEGIN SELECT raise(ABORT, 'a visit changes by its edits'); END;

-- All below follows from the above, and from what callers worked out of it.

CREATE TABLE derived_hulls (
	hull_id         INTEGER PRIMARY KEY REFERENCES hulls (id),
	name            TEXT NOT NULL,
	hin             TEXT NOT NULL,
	owner_reference TEXT NOT NULL,
	layout          TEXT NOT NULL,
	visits          INTEGER NOT NULL DEFAULT 0,
	last_visit      TEXT NOT NULL DEFAULT '',  -- its date; '': none yet
	last_spread_mm  REAL,                      -- NULL: none worked out
	due             TEXT NOT NULL DEFAULT '',  -- date of the next check; '': none set
	due_reason      TEXT NOT NULL DEFAULT ''
) STRICT;
-- All that the order of the list needs.
CREATE INDEX derived_hulls_order ON derived_hulls (last_visit DESC, hull_id DESC, due);

CREATE TABLE derived_visits (
	visit_id     INTEGER PRIMARY KEY REFERENCES visits (id),
	hull_id      INTEGER NOT NULL REFERENCES hulls (id),
	date         TEXT NOT NULL,
	events       INTEGER NOT NULL, -- gaugings, moves, things fastened
	last_edit    INTEGER NOT NULL, -- number of the last one; 0: none yet
	worked_at    INTEGER NOT NULL DEFAULT -1, -- last edit the following were worked out with; -1: never
	spread_mm    REAL,
	opens_at_deg REAL,
	verdict      TEXT NOT NULL DEFAULT '',
	due          TEXT NOT NULL DEFAULT '',
	due_reason   TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX derived_visits_of_hull ON derived_visits (hull_id, date, visit_id);
CREATE INDEX derived_visits_by_date ON derived_visits (date DESC, visit_id DESC);

-- What is searched, by three letters in a row; the row is the hull's id.
CREATE VIRTUAL TABLE derived_words USING fts5 (
	name, owner_reference, hin, layout,
	content = '', contentless_delete = 1, tokenize = "trigram remove_diacritics 1"
);

CREATE TABLE derived_snapshots (
	visit_id INTEGER PRIMARY KEY REFERENCES visits (id),
	number   INTEGER NOT NULL, -- of the edit after which it was taken
	document TEXT NOT NULL
) STRICT;
