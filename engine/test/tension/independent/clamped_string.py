"""First frequency of a clamped stiff string by finite elements (cubic Hermite beam with tension).

Independent of the characteristic equation that the engine solves: mass, bending and tension matrices, and the
smallest generalised eigenvalue. Run: python3 clamped_string.py. The printed figures are those of
../tension-by-sound.test.ts.
"""
import sys

import numpy as np
import scipy
from scipy.linalg import eigh


def frequency(tension_N, span_m, mass_kg_m, bending_Nm2, elements=200):
    h = span_m / elements
    size = 2 * (elements + 1)
    stiffness, mass = np.zeros((size, size)), np.zeros((size, size))
    bend = bending_Nm2 / h**3 * np.array(
        [[12, 6 * h, -12, 6 * h], [6 * h, 4 * h * h, -6 * h, 2 * h * h], [-12, -6 * h, 12, -6 * h], [6 * h, 2 * h * h, -6 * h, 4 * h * h]]
    )
    pull = tension_N / (30 * h) * np.array(
        [[36, 3 * h, -36, 3 * h], [3 * h, 4 * h * h, -3 * h, -h * h], [-36, -3 * h, 36, -3 * h], [3 * h, -h * h, -3 * h, 4 * h * h]]
    )
    inertia = mass_kg_m * h / 420 * np.array(
        [[156, 22 * h, 54, -13 * h], [22 * h, 4 * h * h, 13 * h, -3 * h * h], [54, 13 * h, 156, -22 * h], [-13 * h, -3 * h * h, -22 * h, 4 * h * h]]
    )
    for e in range(elements):
        at = slice(2 * e, 2 * e + 4)
        stiffness[at, at] += bend + pull
        mass[at, at] += inertia
    free = slice(2, size - 2)
    lowest = eigh(stiffness[free, free], mass[free, free], eigvals_only=True, subset_by_index=[0, 0])[0]
    return np.sqrt(lowest) / (2 * np.pi)


print(f"python {sys.version.split()[0]}, numpy {np.__version__}, scipy {scipy.__version__}")
for span_m in (0.58, 0.25, 0.10):
    print(span_m, [f"{frequency(240, span_m, 0.08, 0.0030, n):.6f}" for n in (100, 200, 400)])
print("0.4 m, 500 N, 0.2 kg/m, EI 0.05:", [f"{frequency(500, 0.4, 0.2, 0.05, n):.6f}" for n in (100, 200, 400)])
