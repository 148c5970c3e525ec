"""Writes circuit_nodal.tsv: random networks of resistors, capacitors, coils, potentiometers, switches and grounded or
floating sources, solved by modified nodal analysis in numpy."""
import random

import numpy as np

from circuit_model import parse, volts

random.seed(31)


def log(low, high):
    return float(f"{10 ** random.uniform(low, high):.4g}")


def network():
    count = random.randint(3, 9)
    nodes = [f"n{k}" for k in range(1, count + 1)]
    parts = [f"V1 n1 0 {random.randint(-300, 300)} 1"]
    # a tree of resistors and potentiometers first, so that every node has a path for dc
    for k in range(1, count):
        parts.append(f"R{k} {nodes[k]} {random.choice(['0'] + nodes[:k])} {log(1, 6.5)}")
    for k in range(random.randint(1, 2 * count)):
        a, b = random.sample(["0"] + nodes, 2)
        kind = random.choice("RRCCCL")
        figures = {"R": f"{log(0, 7)}", "C": f"{log(-11, -5)}", "L": f"{log(-5, 1)} {random.choice([0.5, 20, 300])}"}
        parts.append(f"{kind}{20 + k} {a} {b} {figures[kind]}")
    if count > 5 and random.random() < 0.5:
        top, wiper = random.sample(nodes[1:], 2)
        parts.append(f"P1 {top} {wiper} 0 {log(4, 6)} {random.choice([0.0, 0.3, 0.85, 1.0])}")
    if random.random() < 0.5:
        parts.append(f"V2 s {random.choice(nodes[1:])} {random.randint(1, 90)} {random.choice([0, 0.5])}")
        parts.append(f"R90 s {random.choice(['0'] + nodes[1:])} {log(2, 5)}")
    if random.random() < 0.4:
        parts.append(f"C91 {random.choice(nodes[1:])} t0 {log(-9, -7)}")
        parts.append(f"C92 {random.choice(nodes[1:])} t1 {log(-10, -8)}")
        parts.append(f"S1 w t0 t1 {random.choice(['0', '1', '-'])}")
        parts.append(f"R93 w 0 {log(4, 6)}")
        parts.append(f"R94 t0 0 1e6; R95 t1 0 1e6")
    return "; ".join(parts), nodes


print("netlist\thertz\tnode\tvolts_dc\tvolts_re\tvolts_im\tsource")
rows = 0
while rows < 60:
    text, nodes = network()
    parts = parse(text)
    hertz, node = log(0, 7), random.choice(nodes[1:])
    try:
        matrix_dc, at = volts(parts, 0), volts(parts, 2 * np.pi * hertz)
    except np.linalg.LinAlgError:
        continue  # a wire from a potentiometer's end closes a loop of wires
    print(
        f"{text}\t{hertz}\t{node}\t{matrix_dc[node].real:.15g}\t{at[node].real:.15g}\t{at[node].imag:.15g}"
        "\tcomputed: numpy modified nodal analysis, circuit_nodal.py"
    )
    rows += 1
