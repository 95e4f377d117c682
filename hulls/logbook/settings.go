package logbook

// This file keeps each mechanic's settings: units, leaves, rule, view of the
// clock, size of text. What they mean is the caller's.

import (
	"context"
	"database/sql"
	"strings"
	"unicode"
)

// Bounds of settings, so that a slip cannot fill the file.
const (
	longestName    = 60
	longestSetting = 64 << 10
)

// Mechanics are the names there are settings for, in order.
func (b *Book) Mechanics() ([]string, error) {
	names := []string{}
	err := b.eachRow("SELECT name FROM mechanics ORDER BY name", nil, func(rows *sql.Rows) error {
		var name string
		err := rows.Scan(&name)
		names = append(names, name)
		return err
	})
	return names, err
}

// Settings are all of one mechanic's; of one who is not known, none.
func (b *Book) Settings(mechanic string) (map[string]string, error) {
	all := map[string]string{}
	err := b.eachRow("SELECT key, value FROM settings JOIN mechanics ON mechanics.id = mechanic_id WHERE name = ?", []any{mechanic}, func(rows *sql.Rows) error {
		var key, value string
		err := rows.Scan(&key, &value)
		all[key] = value
		return err
	})
	return all, err
}

// Set keeps one setting of a mechanic's, who is entered with it.
func (b *Book) Set(mechanic, key, value string) error {
	for _, name := range []string{mechanic, key} {
		if strings.TrimSpace(name) == "" || len(name) > longestName || strings.IndexFunc(name, unicode.IsControl) >= 0 {
			return refused("settings", `"`+name+`"`, "a name of at most 60 bytes on one line", "shorten it")
		}
	}
	if len(value) > longestSetting {
		return refused("settings", "a value too long", "at most 64 kB", "keep less in it")
	}
	return b.write(func(tx *sql.Tx) error {
		if _, err := tx.Exec("INSERT OR IGNORE INTO mechanics (name) VALUES (?)", mechanic); err != nil {
			return err
		}
		_, err := tx.Exec(`INSERT INTO settings (mechanic_id, key, value) SELECT id, ?2, ?3 FROM mechanics WHERE name = ?1
			ON CONFLICT (mechanic_id, key) DO UPDATE SET value = ?3`, mechanic, key, value)
		return err
	})
}

// eachRow calls back with every row of a query.
func (b *Book) eachRow(query string, args []any, each func(rows *sql.Rows) error) error {
	return b.read(context.Background(), func(tx *sql.Tx) error {
		rows, err := tx.Query(query, args...)
		if err != nil {
			return err
		}
		defer rows.Close()
		for rows.Next() {
			if err := each(rows); err != nil {
				return err
			}
		}
		return rows.Err()
	})
}
