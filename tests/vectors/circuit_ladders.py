"""Writes circuit_ladders.tsv: resistor networks whose conductances span up to 24 decades, solved with 80 digits."""
import random

import mpmath as mp

from circuit_model import parse, volts_mp

random.seed(1924)


def ohms(low, high):
    return float(f"{10 ** random.uniform(low, high):.3g}")


def ladder(sections, low, high):
    parts, before = ["V1 n0 0 250 0"], "n0"
    for k in range(1, sections + 1):
        parts.append(f"R{k} {before} n{k} {ohms(low, high)}")
        parts.append(f"R{50 + k} n{k} 0 {ohms(low, high)}")
        before = f"n{k}"
    return parts, sections


def mesh(nodes, low, high):
    parts = ["V1 n0 0 250 0"]
    for k in range(1, nodes + 1):
        parts.append(f"R{k} n{k} n{random.randrange(k)} {ohms(low, high)}")
    for k in range(2 * nodes):
        a, b = random.sample(range(nodes + 1), 2)
        parts.append(f"R{50 + k} n{a} {'0' if random.random() < 0.3 else f'n{b}'} {ohms(low, high)}")
    return parts, nodes


print("netlist\tnode\tvolts\tsource")
for k in range(40):
    low, high = [(-3, 9), (-12, 12), (-9, 3), (0, 9)][k % 4]
    parts, count = (ladder if k % 2 else mesh)(random.randint(3, 10), low, high)
    text = "; ".join(parts)
    node = f"n{random.randint(1, count)}"
    found = volts_mp(parse(text))
    print(f"{text}\t{node}\t{mp.nstr(found[node], 17)}\tcomputed: mpmath, 80 digits, circuit_ladders.py")
