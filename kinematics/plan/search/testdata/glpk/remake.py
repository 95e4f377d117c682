#!/usr/bin/env python3
"""Make problems.json anew: seeded problems and what GLPK's glpsol makes of them.

An item is stored as [least, most, fixed, each], a row as its numbers and its
limit, and the effort is null where glpsol found that there is no answer.

Needs python3 and glpsol (Debian's glpk-utils). Run it in its own folder.

Each problem is a plane: v + R m must come to lie in a disc, given as a polygon,
with R's columns for nuts mostly along the first axis and for slides along the
second; besides, the twist of the load over each four nuts stays within limits.
All numbers are short decimals, so that the LP file, the JSON file and the
reader hold the same ones, and a row is kept or missed by no less than 1e-4.
"""

import json
import math
import random
import re
import subprocess
import tempfile
from pathlib import Path

SEED = 20260301


def problem(rng, name, nuts, slides, stuck=0, push=20.0, disc=1.5, twist=(4.0, 9.0), immovable=False):
    items, columns = [], []
    for i in range(nuts):
        fore = 1 if i % 4 < 2 else -1
        items.append({"least": -36, "most": 36, "fixed": round(rng.uniform(2, 6), 2), "each": 0.5})
        columns.append((round(fore * rng.uniform(1.5, 3), 3), round(rng.uniform(-0.3, 0.3), 3)))
    for i in range(slides):
        fore = 1 if i % 2 == 0 else -1
        items.append({"least": -24, "most": 24, "fixed": 5.0, "each": 0.5})
        columns.append((round(rng.uniform(-0.15, 0.15), 3), round(fore * rng.uniform(0.8, 1.2), 3)))
    for i in rng.sample(range(len(items)), stuck):
        # Stuck outright, or with little left one way.
        items[i]["least"], items[i]["most"] = rng.choice([(0, 0), (0, 0), (-2, 0), (0, 3)])
    for i in range(nuts, len(items)):
        if immovable:
            items[i]["least"] = items[i]["most"] = 0

    size, angle = rng.uniform(0.3, 1) * push, rng.uniform(0, 2 * math.pi)
    v = (size * math.cos(angle), size * math.sin(angle))
    limit = disc * rng.uniform(0.8, 1.2)
    rows, directions = [], rng.choice([16, 24, 32])
    for k in range(directions):
        n = (math.cos(2 * math.pi * k / directions), math.sin(2 * math.pi * k / directions))
        of = [round(n[0] * c[0] + n[1] * c[1], 4) for c in columns]
        rows.append({"of": of, "most": round(limit - n[0] * v[0] - n[1] * v[1], 4)})
    for first in range(0, nuts - 3, 2):
        # Nut i of each four stands at a corner; lifting it twists the load so.
        signs = [1, -1, -1, 1]
        of = [0.0] * len(items)
        for i in range(4):
            of[first + i] = round(signs[i] * rng.uniform(0.2, 0.3), 3)
        for corner in range(4):
            lean = round(rng.uniform(-1, 1), 2)
            for sign in (1, -1):
                share = 1 if corner % 2 == 0 else 0.8
                rows.append({
                    "of": [round(sign * share * a, 4) for a in of],
                    "most": round(rng.uniform(*twist) / 4 - sign * lean * 0.3, 3),
                })
    return {"name": name, "items": items, "rows": rows}


def problems():
    rng = random.Random(SEED)
    for i in range(30):
        yield problem(rng, f"four-{i:02}", 4, 2)
    for i in range(16):
        yield problem(rng, f"four-stuck-{i:02}", 4, 2, stuck=rng.choice([1, 2, 3]))
    for i in range(8):
        yield problem(rng, f"four-narrow-{i:02}", 4, 2, stuck=2, twist=(0.8, 2.0))
    for i in range(14):
        yield problem(rng, f"six-{i:02}", 6, 2)
    for i in range(10):
        yield problem(rng, f"six-stuck-{i:02}", 6, 2, stuck=rng.choice([2, 3, 4]))
    for i in range(8):
        yield problem(rng, f"four-no-slide-{i:02}", 4, 2, stuck=i % 3, immovable=True)
    for i in range(4):
        yield problem(rng, f"four-far-{i:02}", 4, 2, push=90, disc=0.7)
    for i in range(4):
        yield problem(rng, f"six-far-{i:02}", 6, 2, push=90, disc=0.7, twist=(1.0, 3.0))
    for i in range(8):
        # A far finer target than single flats reach: whole numbers matter.
        yield problem(rng, f"four-fine-{i:02}", 4, 2, disc=0.15, twist=(0.5, 1.5))
    for i in range(6):
        yield problem(rng, f"six-fine-{i:02}", 6, 2, stuck=1, disc=0.08, twist=(0.3, 1.0))


def terms(numbers):
    return " ".join(f"{a:+} x{i}" for i, a in enumerate(numbers) if a != 0)


def lp(p):
    """The problem in CPLEX LP format.

    x is whole and parted into up and down, which effort keeps from being both
    above zero; the binary t is 1 for an item that is touched.
    """
    items = p["items"]
    free = [i for i, it in enumerate(items) if it["least"] < 0 or it["most"] > 0]
    out = ["Minimize", " effort:"]
    out += [f"  {items[i]['fixed']:+} t{i} {items[i]['each']:+} u{i} {items[i]['each']:+} d{i}" for i in free]
    out.append("Subject To")
    for k, row in enumerate(p["rows"]):
        # A row with nothing on its left is written on a variable fixed at 0.
        left = terms([a if i in free else 0 for i, a in enumerate(row["of"])])
        out.append(f" r{k}: {left or '0 zero'} <= {row['most']}")
    for i in free:
        out.append(f" part{i}: x{i} - u{i} + d{i} = 0")
        out.append(f" up{i}: u{i} - {items[i]['most']} t{i} <= 0")
        out.append(f" down{i}: d{i} - {-items[i]['least']} t{i} <= 0")
    out += ["Bounds", " zero = 0"]
    out += [f" {items[i]['least']} <= x{i} <= {items[i]['most']}" for i in free]
    out += ["General"] + [f" x{i}" for i in free]
    out += ["Binary"] + [f" t{i}" for i in free] + ["End", ""]
    return "\n".join(out)


def solve(p, folder):
    """The optimum by glpsol, None if it proves that there is none."""
    model, answer = folder / "p.lp", folder / "p.txt"
    model.write_text(lp(p))
    command = ["glpsol", "--lp", str(model), "--cuts", "--mipgap", "0", "--tmlim", "60", "-o", str(answer)]
    done = subprocess.run(command, check=True, capture_output=True, text=True)
    text = answer.read_text()
    status = re.search(r"^Status:\s+(.*)$", text, re.M).group(1)
    if status == "INTEGER OPTIMAL":
        return float(re.search(r"^Objective:\s+effort = (\S+)", text, re.M).group(1))
    if "HAS NO INTEGER FEASIBLE SOLUTION" in done.stdout or "HAS NO PRIMAL FEASIBLE SOLUTION" in done.stdout:
        return None
    raise SystemExit(f"{p['name']}: {status}\n{done.stdout}")


def main():
    version = subprocess.run(["glpsol", "--version"], capture_output=True, text=True).stdout.split("\n")[0]
    lines = []
    with tempfile.TemporaryDirectory() as folder:
        for p in problems():
            p["effort"] = solve(p, Path(folder))
            print(p["name"], p["effort"], flush=True)
            p["items"] = [[it["least"], it["most"], it["fixed"], it["each"]] for it in p["items"]]
            p["rows"] = [row["of"] + [row["most"]] for row in p["rows"]]
            lines.append(json.dumps(p, separators=(",", ":")))
    head = json.dumps({"solver": version, "seed": SEED})
    Path("problems.json").write_text(head[:-1] + ',"problems":[\n' + ",\n".join(lines) + "\n]}\n")


main()
