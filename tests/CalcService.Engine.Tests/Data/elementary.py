"""Writes elementary.csv: function, arguments, the double nearest to the true value, and what the true value is off from it in units of
its last place. By mpmath with 50 digits (https://mpmath.org, BSD): python3 elementary.py > elementary.csv"""
import math
import random
import struct

import mpmath

mpmath.mp.dps = 50
random.seed(20261201)


def near(x, steps):
    """Doubles around x."""
    bits = struct.unpack("<q", struct.pack("<d", x))[0]
    return [struct.unpack("<d", struct.pack("<q", bits + step))[0] for step in steps]


def row(name, function, *arguments):
    true = function(*map(mpmath.mpf, arguments))
    nearest = float(true)
    # What overflows or vanishes has a test of its own.
    if nearest and math.isfinite(nearest):
        rest = (true - mpmath.mpf(nearest)) / mpmath.mpf(math.ulp(nearest))
        print(",".join([name, *map(repr, arguments), *[""] * (2 - len(arguments)), repr(nearest), mpmath.nstr(rest, 6)]))


def log_uniform(low, high):
    return 10 ** random.uniform(math.log10(low), math.log10(high))


around = range(-3, 4)
tiny = [5e-324, 1.5e-323, 1e-310, 2.2250738585072014e-308]

exps = [random.uniform(-745.1, 709.7) for _ in range(400)]
exps += [random.uniform(-1, 1) for _ in range(400)]
exps += [sign * log_uniform(1e-300, 1) for sign in (-1, 1) for _ in range(100)]
exps += [random.uniform(-745.1, -708) for _ in range(100)]
exps += near(709.782712893384, around) + near(-708.3964185322641, around) + near(-745.1332191019411, around)
exps += [(k + .5) * math.log(2) / 128 for k in range(-40, 41)] + tiny + [float(k) for k in range(-20, 21)]
for x in exps:
    row("exp", mpmath.exp, x)

logs = [log_uniform(1e-307, 1e308) for _ in range(400)] + [random.uniform(.5, 2) for _ in range(500)]
logs += [1 + sign * log_uniform(1e-16, .1) for sign in (-1, 1) for _ in range(200)]
logs += near(1.0, around) + tiny + [random.randrange(1, 1 << 52) * 5e-324 for _ in range(50)]
logs += [x for k in range(88, 177) for x in near(k / 128, (-1, 0, 1))] + near(1.7976931348623157e308, (-1, 0))
for x in logs:
    row("log", mpmath.log, x)

pows = [(log_uniform(1e-300, 1e300), random.uniform(-3, 3)) for _ in range(400)]
pows += [(random.uniform(0, 1), random.uniform(0, 3)) for _ in range(300)]
pows += [(1 + sign * log_uniform(1e-15, .3), random.choice((-1, 1)) * log_uniform(1, 1e15)) for sign in (-1, 1) for _ in range(400)]
pows += [(log_uniform(1e-5, 1e5), random.uniform(-140, 140)) for _ in range(300)]
pows += [(random.uniform(.01, 1), -random.uniform(330, 700) / math.log10(math.e)) for _ in range(50)]
pows += [(random.randrange(1, 1 << 52) * 5e-324, random.uniform(-1, 1)) for _ in range(50)]
pows += [(random.uniform(.1, .9), random.uniform(300, 320)) for _ in range(50)] + [(2.0, k + .5) for k in range(-1075, -1020)]
pows += [(float(a), float(b)) for a in range(2, 12) for b in range(-8, 13)] + [(a * a / 16.0, .5) for a in range(1, 30)]
pows += [(1 + 2.0 ** -52, y) for y in (1e15, 1e18, 3e18)] + [(1 - 2.0 ** -53, y) for y in (1e15, 6e18, -6e18)]
for x, y in pows:
    row("pow", mpmath.power, x, y)

for x in [random.uniform(-math.pi / 2, math.pi / 2) for _ in range(300)] + [log_uniform(1e-300, 1) for _ in range(100)] \
        + near(math.pi / 4, around) + near(math.pi / 2, range(-5, 1)) + tiny:
    row("tan", mpmath.tan, x)

for x in [random.uniform(-2, 2) for _ in range(300)] + [log_uniform(1e-300, 1e300) for _ in range(200)] \
        + [x for k in range(1, 33) for x in near(k / 32, (-1, 0, 1))] + tiny:
    row("atan", mpmath.atan, x)
