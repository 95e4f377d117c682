#!/usr/bin/python3
"""A second, independent working of the drive line, to compare the program with.

Needs numpy (Debian: python3-numpy). From the top of the tree:

    /usr/bin/python3 kinematics/testdata/second/second.py assets/hulls > kinematics/testdata/second/results.json

Nothing is shared with the program but the hull files. The shaft is a dense
Hermite finite-element matrix with all its movements kept; the engine a rigid
body with a rotation matrix; constraints (pilot, bolts, block) are Lagrange
multipliers; the whole is one damped Newton iteration, run until it stands
still. Bearings are laid out as 65 springs, ends at half weight.
"""
import json
import sys

import numpy as np

G = 9.80665
STATIONS = 65
# Young's modulus GPa, density g/cm3: typical handbook values of the alloys.
METAL = {"UNS S20910": (200, 7.88), "UNS S30400": (193, 8.0), "UNS S31603": (193, 8.0), "UNS S31803": (200, 7.82)}


def cross_matrix(v):
    return np.array([[0, -v[2], v[1]], [v[2], 0, -v[0]], [-v[1], v[0], 0]])


def rotation(v):
    a = np.linalg.norm(v)
    if a == 0:
        return np.eye(3)
    k = cross_matrix(v / a)
    return np.eye(3) + np.sin(a) * k + (1 - np.cos(a)) * k @ k


class Boat:
    def __init__(self, hull, afloat):
        self.hull = hull
        a, d = np.radians(hull["shaft_angle_deg"]), np.radians(hull["engine"]["down_angle_deg"])
        self.axes = np.array([[np.cos(d), 0, -np.sin(d)], [0, 1, 0], [np.sin(d), 0, np.cos(d)]])  # rows x_E y_E z_E
        self.weight = -hull["engine"]["mass_kg"] * G * np.array([np.sin(a), 0, np.cos(a)])
        self.centre = self.axes.T @ hull["engine"]["centre_of_mass_mm"]
        self.feet = [self.axes.T @ m["at_mm"] for m in hull["mounts"]]
        self.springs = []
        for m in hull["mounts"]:
            k = m["stiffness_n_per_mm"]
            self.springs.append(self.axes.T @ np.diag([k["fore_aft"], k["athwart"], k["along"]]) @ self.axes)
        self.preload()
        self.shaft(a, afloat)

    def preload(self):
        k = np.zeros((6, 6))
        for p, s in zip(self.feet, self.springs):
            b = np.hstack([np.eye(3), -cross_matrix(p)])
            k += b.T @ s @ b
        q = np.linalg.solve(k, np.hstack([self.weight, np.cross(self.centre, self.weight)]))
        self.preloads = [-s @ (q[:3] + np.cross(q[3:], p)) for p, s in zip(self.feet, self.springs)]

    def shaft(self, a, afloat):
        h = self.hull
        dia, log, prop = h["shaft"]["diameter_mm"], h["log"], h["propeller"]
        young, density = METAL[h["shaft"]["material"]]
        ei = young * 1000 * np.pi * dia**4 / 64
        area = np.pi * dia**2 / 4 * 1e-6
        dry = density * area * G * np.cos(a)
        wet = dry - (1.025 * area * G * np.cos(a) if afloat else 0)
        aft_lip = log["at_mm"] - log["length_mm"] / 2
        prop_kg = prop["mass_kg"] * (1 - (1025 / prop.get("density_kg_m3", 7600) if afloat else 0))
        points = [(-h["coupling"]["shaft_half_length_mm"] / 2, h["coupling"]["shaft_half_mass_kg"]),
                  (prop["at_mm"], prop_kg)]
        contacts = []
        for b in h["bearings"]:
            for i in range(STATIONS):
                share = (0.5 if i in (0, STATIONS - 1) else 1) / (STATIONS - 1)
                contacts.append((b["at_mm"] + b["length_mm"] * (i / (STATIONS - 1) - 0.5),
                                 b["radial_stiffness_n_per_mm"] * share, b["diametral_clearance_mm"] / 2,
                                 b.get("offset_mm", [0, 0]), b["name"]))
        for end in (-0.5, 0.5):
            contacts.append((log["at_mm"] + end * log["length_mm"], 1e5, (log["bore_mm"] - dia) / 2,
                             log.get("offset_mm", [0, 0]), "log"))
        box = h.get("stuffing_box")
        if box:
            points.append((box["at_mm"], box["mass_kg"]))
            contacts.append((box["at_mm"], box["radial_stiffness_n_per_mm"], 0, box.get("offset_mm", [0, 0]), "box"))
        xs = sorted({0.0, -h["shaft"]["length_mm"], aft_lip, *(p[0] for p in points), *(c[0] for c in contacts)})
        self.n = n = len(xs)
        self.k, self.load = np.zeros((2 * n, 2 * n)), np.zeros(2 * n)
        for i in range(n - 1):
            l = xs[i + 1] - xs[i]
            self.k[2*i:2*i+4, 2*i:2*i+4] += ei / l**3 * np.array(
                [[12, 6*l, -12, 6*l], [6*l, 4*l*l, -6*l, 2*l*l], [-12, -6*l, 12, -6*l], [6*l, 2*l*l, -6*l, 4*l*l]])
            w = wet if xs[i + 1] <= aft_lip + 1e-9 else dry
            self.load[2*i:2*i+4] -= w * np.array([l / 2, l * l / 12, l / 2, -l * l / 12])
        where = {x: i for i, x in enumerate(xs)}
        for x, kg in points:
            self.load[2 * where[x]] -= kg * G * np.cos(a)
        self.contacts = [(where[c[0]],) + c[1:] for c in contacts]

    def solve(self, lift, slide, held, thrust, torque_nmm):
        n = self.n
        size = 4 * n + 6
        v, t, rot = np.zeros(4 * n), np.zeros(3), np.eye(3)
        seats = [u * self.axes[2] + s * self.axes[1] for u, s in zip(lift, slide)]
        iy, iz = 2 * n - 2, 4 * n - 2  # the front end's movements; slopes are the next ones
        damping, best, still = 1.0, np.inf, 0
        for _ in range(600):
            k, r, forces = np.zeros((size, size)), np.zeros(size), {}
            k[:2*n, :2*n] += self.k
            k[2*n:4*n, 2*n:4*n] += self.k
            r[:2*n] += self.k @ v[:2*n]
            r[2*n:4*n] += self.k @ v[2*n:] - self.load
            for i, stiff, room, axis, name in self.contacts:
                at = [2 * i, 2 * n + 2 * i]
                d = v[at] - axis
                dist = np.hypot(*d)
                f, tangent = np.zeros(2), np.zeros((2, 2))
                if room == 0:
                    f, tangent = stiff * d, stiff * np.eye(2)
                elif dist > room:
                    nn = np.outer(d, d) / dist**2
                    f = stiff * (dist - room) * d / dist
                    tangent = stiff * nn + stiff * (dist - room) / dist * (np.eye(2) - nn)
                r[at] += f
                k[np.ix_(at, at)] += tangent + damping * np.eye(2)
                forces[name] = forces.get(name, 0) - f
            self.engine(k, r, t, rot, seats, thrust, torque_nmm)
            c, gap = self.constraints(v, t, rot, held, iy, iz, size)
            m = len(gap)
            whole = np.block([[k, c.T], [c, np.zeros((m, m))]])
            scale = np.hstack([1 / np.sqrt(np.abs(np.diag(k)) + 1e-9), np.full(m, 1e3)])
            dx = scale * np.linalg.solve(whole * scale[:, None] * scale, -np.hstack([r, gap]) * scale)
            moved = np.max(np.abs(np.hstack([dx[0:2*n:2], dx[2*n:4*n:2], dx[4*n:4*n+3]])))
            part = min(1, 3 / moved)
            v = v + part * dx[:4*n]
            t = t + part * dx[4*n:4*n+3]
            rot = rotation(part * dx[4*n+3:size]) @ rot
            damping = damping * 0.3 if damping > 1e-9 else 0
            if moved < best / 2:
                best, still = moved, 0
            else:
                still += 1
            if moved < 1e-7 and still > 8:
                break
        assert moved < 1e-7, "the second working did not settle"
        radius = self.hull["coupling"]["outer_diameter_mm"] / 2
        return {
            "cos_mm": radius * (v[iz + 1] - rot[2, 0] / rot[0, 0]),
            "sin_mm": radius * (rot[1, 0] / rot[0, 0] - v[iy + 1]),
            "front_end_mm": [v[iy], v[iz]], "engine_translation_mm": list(t),
            "mount_load_n": [float(f) for f in self.loads],
            "bearing_force_n": {name: list(f) for name, f in forces.items() if name != "box"},
            "coupling_moment_nmm": float(np.hypot(*dx[size+2:size+4])) if held == "bolted" else 0,
        }

    def engine(self, k, r, t, rot, seats, thrust, torque_nmm):
        n = self.n
        arm = rot @ self.centre
        force = self.weight + [thrust, 0, 0]
        moment = np.cross(arm, self.weight) + [torque_nmm, 0, 0]
        ke = np.zeros((6, 6))
        ke[3:, 3:] -= np.outer(arm, self.weight) - arm @ self.weight * np.eye(3)
        self.loads = []
        for p, s, f0, seat in zip(self.feet, self.springs, self.preloads, seats):
            arm = rot @ p
            f = f0 - s @ (t + arm - p - seat)
            force, moment = force + f, moment + np.cross(arm, f)
            self.loads.append(f @ self.axes[2])
            b = np.hstack([np.eye(3), -cross_matrix(arm)])
            ke += b.T @ s @ b
            ke[3:, 3:] -= np.outer(arm, f) - arm @ f * np.eye(3)
        r[4*n:4*n+3] -= force
        r[4*n+3:] -= moment
        k[4*n:, 4*n:] += ke

    def constraints(self, v, t, rot, held, iy, iz, size):
        n, rows, gaps = self.n, [], []

        def say(front, engine, gap):
            row = np.zeros(size)
            row[front] = 1
            row[4*n:] -= engine
            rows.append(row)
            gaps.append(gap)

        if held in ("seated", "bolted"):
            say(iy, [0, 1, 0, 0, 0, 0], v[iy] - t[1])
            say(iz, [0, 0, 1, 0, 0, 0], v[iz] - t[2])
        if held == "bolted":
            y, z = rot[1, 0] / rot[0, 0], rot[2, 0] / rot[0, 0]
            say(iy + 1, [0, 0, 0, -z, -y * z, 1 + y * y], v[iy + 1] - y)
            say(iz + 1, [0, 0, 0, y, -1 - z * z, y * z], v[iz + 1] - z)
        if held == "centred":
            say(iy, np.zeros(6), v[iy])
            say(iz, np.zeros(6), v[iz])
        return np.array(rows).reshape(-1, size), np.array(gaps)


def main():
    rng = np.random.default_rng(5)
    cases = []
    for name in ("Eider", "Kittiwake", "Avocet", "Wren", "Bench"):
        with open(f"{sys.argv[1]}/{name.lower()}.hull.json") as f:
            hull = json.load(f)
        for held in ("seated", "bolted", "hanging", "centred"):
            for afloat in (False, True):
                flats = [int(x) for x in rng.integers(-6, 7, len(hull["mounts"]))]
                slides = [float(x) for x in np.round(rng.uniform(-2, 2, len(flats)), 2)]
                thrust, torque = (1000, 300e3) if rng.random() < 0.5 else (0, 0)
                lift = [x * m["thread_pitch_mm"] / 6 for x, m in zip(flats, hull["mounts"])]
                answer = Boat(hull, afloat).solve(lift, slides, held, thrust, torque)
                cases.append({"hull": hull, "held": held, "afloat": afloat, "flats": flats, "slide_mm": slides,
                              "thrust_n": thrust, "torque_nmm": torque, "answer": answer})
    json.dump(cases, sys.stdout, separators=(",", ":"))
    print()


main()
