"""Measures mesh files with trimesh, a general mesh library that shares nothing with this project.

    python3 independent.py FOLDER > independent.json

FOLDER holds the four fittings as the site serves them (parts/ of the built site). Values of the file beside
this one were made with trimesh 5.1.0 and numpy 2.4 on 25 November 2026.
"""

import json
import pathlib
import sys

import trimesh

found = {}
for path in sorted(pathlib.Path(sys.argv[1]).iterdir()):
    mesh = trimesh.load(path, force="mesh")
    mesh.merge_vertices()
    found[path.name] = {
        "faces": len(mesh.faces),
        "watertight": bool(mesh.is_watertight),
        "bodies": len(mesh.split(only_watertight=False)),
        "volume": float(mesh.volume),
        "area": float(mesh.area),
        "low": [float(x) for x in mesh.bounds[0]],
        "high": [float(x) for x in mesh.bounds[1]],
        "centre": [float(x) for x in mesh.center_mass],
    }
print(json.dumps(found, indent=1))
