"""Freezing by finite elements, for finite-element.test.ts to compare with.

General tools only: bilinear elements assembled by GetFEM, a general finite-element library; the heat of every node
is carried on by small explicit steps with scipy's sparse matrices. Nothing is shared with the solver under test:
nodes at corners instead of cells, a node on the face of the metal holds the heat of both stuffs, no super time
steps. Contact is perfect. Conductivity and specific heat of the metal are one number each; the latent heat leaves
evenly over the range. Temperatures in degrees Celsius, lengths in metres, times in seconds.

    apt-get install --no-install-recommends python3-getfem++ python3-scipy
    /usr/bin/python3 finite-element.py > finite-element.json
"""

import datetime
import json
import platform

import getfem as gf
import numpy as np
import scipy
from scipy.sparse import csc_matrix

METAL = dict(k=55.0, rho=8360.0, c=435.0, latent=190e3, solidus=860.0, liquidus=970.0, start=1100.0)
SAND = dict(k=0.6, rhoc=1.7e6, start=20.0)


def graded(half, reach, step, ratio):
    """Equal steps across the metal and growing ones beyond it."""
    places = list(np.linspace(0, half, round(half / step) + 1))
    while places[-1] < half + reach:
        places.append(places[-1] + step)
        step *= ratio
    return np.array(places)


def assembled(across, up, is_metal, turned):
    """Nodes, stiffness, and what each node has of metal and of sand: m3 for each radian, or for each metre."""
    mesh = gf.Mesh("cartesian", across, up)
    linear = gf.MeshFem(mesh, 1)
    linear.set_classical_fem(1)
    cells = gf.MeshFem(mesh, 1)
    cells.set_classical_discontinuous_fem(0)
    metal = is_metal(cells.basic_dof_nodes()).astype(float)
    model = gf.Model("real")
    model.add_fem_variable("u", linear)
    model.add_initialized_fem_data("k", cells, np.where(metal > 0, METAL["k"], SAND["k"]))
    model.add_initialized_fem_data("m", cells, metal)
    points = gf.MeshIm(mesh, 4)
    around = "X(1)*" if turned else ""
    stiffness = gf.asm_generic(points, 2, around + "k*Grad_u.Grad_Test_u", -1, model)
    stiffness = csc_matrix((stiffness.csc_val(), *stiffness.csc_ind()[::-1]), shape=(linear.nbdof(), linear.nbdof()))
    of_metal = gf.asm_generic(points, 1, around + "m*Test_u", -1, model)
    of_sand = gf.asm_generic(points, 1, around + "(1-m)*Test_u", -1, model)
    return linear.basic_dof_nodes(), stiffness.tocsr(), np.ravel(of_metal), np.ravel(of_sand)


def between(nodes, place):
    """The four nodes about a place, and the share of each: bilinear, as the elements are."""
    corners, shares = [], []
    near = []
    for axis, at in zip(nodes, place):
        marks = np.unique(axis.round(9))
        low = min(int(np.searchsorted(marks, at + 1e-9)) - 1, marks.size - 2)
        part = (at - marks[low]) / (marks[low + 1] - marks[low])
        near.append([(marks[low], 1 - part), (marks[low + 1], part)])
    for x, a in near[0]:
        for y, b in near[1]:
            corners.append(int(np.argmin(np.abs(nodes - np.array([[x], [y]])).sum(axis=0))))
            shares.append(a * b)
    return corners, np.array(shares)


def solve(parts, centre, probes, at_times):
    """When the centre begins to freeze and is solid, the last place, and the temperatures at the probes."""
    nodes, stiffness, of_metal, of_sand = parts
    cold = of_metal * METAL["rho"] * METAL["c"] + of_sand * SAND["rhoc"]
    reach = METAL["liquidus"] - METAL["solidus"]
    soft = cold + of_metal * METAL["rho"] * METAL["latent"] / reach

    def temperature(heat):
        """Heat of a node is counted from the solidus."""
        full = soft * reach
        return METAL["solidus"] + np.where(
            heat < 0, heat / cold, np.where(heat < full, heat / soft, reach + (heat - full) / cold)
        )

    inside = of_sand <= 1e-9 * (of_metal + of_sand)
    # A node on the face holds what both stuffs bring: the heats are added, not the temperatures.
    hot = of_metal * METAL["rho"] * (METAL["latent"] + METAL["c"] * (METAL["start"] - METAL["solidus"]))
    heat = hot + of_sand * SAND["rhoc"] * (SAND["start"] - METAL["solidus"])
    begin = heat.sum()
    step = 0.4 * (cold / stiffness.diagonal()).min()
    node = int(np.argmin(np.abs(nodes - np.array(centre)[:, None]).sum(axis=0)))
    places = [between(nodes, p) for p in probes]
    time, solid, found, passed = 0.0, np.full(heat.shape, np.nan), [], []
    due = list(at_times)
    while np.isnan(solid[inside]).any() or due:
        before = heat.copy()
        warm = temperature(heat)
        heat = heat - step * (stiffness @ warm)
        now = inside & (before > 0) & (heat <= 0)
        solid[now] = time + step * before[now] / (before[now] - heat[now])
        if inside[node] and before[node] > soft[node] * reach >= heat[node]:
            passed.append(time + step * (before[node] - soft[node] * reach) / (before[node] - heat[node]))
        time += step
        while due and time >= due[0]:
            part = (due.pop(0) - (time - step)) / step
            after = temperature(heat)
            now = warm + part * (after - warm)
            found.append([float(share @ now[corners]) for corners, share in places])
    last = int(np.nanargmax(np.where(inside, solid, np.nan)))
    return dict(
        nodes=int(heat.size),
        step=float(step),
        centre_liquidus=float(passed[0]),
        centre_solidus=float(solid[node]),
        last=float(solid[last]),
        last_at=[round(1e3 * float(x), 3) for x in nodes[:, last]],
        temperatures=[[round(x, 3) for x in row] for row in found],
        drift=float(abs(heat.sum() / begin - 1)),
    )


def bar(step):
    """8 by 16 mm, round; a quarter of its section, r across and z up."""
    across, up = graded(0.004, 0.03, step, 1.15), graded(0.008, 0.03, step, 1.15)
    metal = lambda p: (p[0] < 0.004) & (p[1] < 0.008)
    return solve(assembled(across, up, metal, True), (0, 0), BAR["probes"], BAR["times"])


def tee(step):
    """A web of 4 mm standing on a web of 4 mm, arms of 14 mm; half of it, and sand below, beside and above."""
    up = graded(0.004, 0.014 - step / 2, step, 1.0)
    up = np.concatenate([up, up[-1] + graded(step, 0.03, step, 1.15)[1:]])
    down = -graded(step, 0.03, step, 1.15)[:0:-1]
    along = graded(0.002, 0.014 - step / 2, step, 1.0)
    along = np.concatenate([along, along[-1] + graded(step, 0.03, step, 1.15)[1:]])
    up = np.concatenate([down, up])
    metal = lambda p: ((p[0] < 0.016) & (p[1] > 0) & (p[1] < 0.004)) | ((p[0] < 0.002) & (p[1] > 0) & (p[1] < 0.018))
    return solve(assembled(along, up, metal, False), (0, 0.003), TEE["probes"], TEE["times"])


BAR = dict(probes=[(0, 0), (0.002, 0), (0.006, 0)], times=[2, 5])
TEE = dict(probes=[(0, 0.002), (0.01, 0.002), (0, -0.002)], times=[2, 5])

if __name__ == "__main__":
    out = dict(
        made=datetime.date.today().isoformat(),
        by=f"GetFEM 5.4.2 of Debian, numpy {np.__version__}, scipy {scipy.__version__}, Python {platform.python_version()}",
        metal=METAL,
        sand=SAND,
        bar=dict(**BAR, results={str(s): bar(s * 1e-3) for s in (1.0, 0.5, 0.25)}),
        tee=dict(**TEE, results={str(s): tee(s * 1e-3) for s in (1.0, 0.5, 0.25)}),
    )
    print(json.dumps(out, indent=2))
