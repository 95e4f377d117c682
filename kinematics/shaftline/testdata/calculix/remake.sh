#!/bin/sh
# Makes the decks of the built-in hulls and CalculiX's answers to them anew.
# Needs Go and ccx (Debian: calculix-ccx). Run from anywhere.
#
# An answer (NAME.txt) is: the program's version, the SHA-256 of the deck it
# answers, the force in the front node and the travel of every node, y and z.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
rm -f "$here"/*.inp "$here"/*.txt
(cd "$here/../.." && go test -count=1 -run 'Calculix|Sections' . -update)
version=$(ccx -v | grep -o 'Version.*')
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
cd "$scratch"
for deck in "$here"/*.inp; do
	name=$(basename "$deck" .inp)
	cp "$deck" .
	ccx "$name" >"$name.log" || { cat "$name.log"; exit 1; }
	{
		echo "# CalculiX $version"
		echo "deck $(sha256sum <"$deck" | cut -d' ' -f1)"
		awk '/^ *displacements/ { travel = 1; next }
			/^ *forces/ { travel = 0; next }
			NF == 4 && travel { print $1, $3, $4 }
			NF == 4 && !travel { print "front", $3, $4 }' "$name.dat"
	} >"$here/$name.txt"
done
