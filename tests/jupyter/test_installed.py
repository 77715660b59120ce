"""`reckoner kernel install` and `uninstall`: from this checkout, and from the packed package installed somewhere else."""
import json
import os
import pathlib
import subprocess
import tempfile
import unittest

ROOT = pathlib.Path(__file__).resolve().parents[2]
JUPYTER = "/usr/bin/jupyter"


def run(*words, **options):
    done = subprocess.run([str(w) for w in words], capture_output=True, text=True, **options)
    if done.returncode != 0:
        raise AssertionError(f"{words}: {done.stdout}\n{done.stderr}")
    return done.stdout


def environment(**more):
    env = {k: v for k, v in os.environ.items() if not k.startswith("JUPYTER")}
    return {**env, **{k: str(v) for k, v in more.items()}}


def kernels(env):
    return json.loads(run(JUPYTER, "kernelspec", "list", "--json", env=env))["kernelspecs"]


class Installed(unittest.TestCase):
    def check(self, reckoner, folder):
        """Install, list, run a notebook, uninstall."""
        prefix = folder / "prefix"
        env = environment(JUPYTER_PATH=prefix / "share/jupyter", HOME=folder)
        run(*reckoner, "kernel", "install", "--prefix", prefix, env=env)
        spec = kernels(env)["reckoner"]["spec"]
        self.assertEqual((spec["display_name"], spec["language"], spec["interrupt_mode"]), ("Joiner's Reckoner (TypeScript)", "typescript", "message"))
        notebook = folder / "try.ipynb"
        cells = [
            {"cell_type": "code", "metadata": {}, "outputs": [], "execution_count": None, "source": source}
            for source in ("const name = catalogue[0]!.name; name.length > 0", "import { length } from 'joiners-reckoner'; length('1 in').toString()")
        ]
        notebook.write_text(json.dumps({"nbformat": 4, "nbformat_minor": 4, "metadata": {"kernelspec": {"name": "reckoner", "display_name": "x"}}, "cells": cells}))
        run(JUPYTER, "nbconvert", "--to", "notebook", "--execute", "--inplace", notebook, env=env, cwd=folder)
        outputs = [c["outputs"][0]["data"]["text/plain"] for c in json.loads(notebook.read_text())["cells"]]
        self.assertEqual("".join(outputs[0]), "true")
        self.assertIn("25.4 mm", "".join(outputs[1]))
        run(*reckoner, "kernel", "uninstall", "--prefix", prefix, env=env)
        self.assertNotIn("reckoner", kernels(env))

    def test_from_the_checkout(self):
        with tempfile.TemporaryDirectory() as folder:
            self.check(["node", ROOT / "src/launch/reckoner.mjs"], pathlib.Path(folder))

    def test_for_the_user(self):
        with tempfile.TemporaryDirectory() as folder:
            env = environment(HOME=folder, XDG_DATA_HOME=pathlib.Path(folder, "data"))
            run("node", ROOT / "src/launch/reckoner.mjs", "kernel", "install", env=env)
            self.assertIn("reckoner", kernels(env))
            run("node", ROOT / "src/launch/reckoner.mjs", "kernel", "install", env=env)
            run("node", ROOT / "src/launch/reckoner.mjs", "kernel", "uninstall", env=env)
            self.assertNotIn("reckoner", kernels(env))
            run("node", ROOT / "src/launch/reckoner.mjs", "kernel", "uninstall", env=env)

    def test_from_the_packed_package(self):
        with tempfile.TemporaryDirectory() as name:
            folder = pathlib.Path(name)
            run("npm", "pack", "--ignore-scripts", "--pack-destination", folder, cwd=ROOT)
            (tarball,) = folder.glob("joiners-reckoner-*.tgz")
            home = folder / "elsewhere"
            home.mkdir()
            (home / "package.json").write_text('{"name": "elsewhere", "private": true}')
            # The kernel's own packages are optional; the command names them with the line that installs them.
            peers = json.loads((ROOT / "package.json").read_text())["peerDependencies"]
            kernel = [f"{name}@{peers[name]}" for name in ("@types/node", "zeromq")]
            run("npm", "install", "--omit=dev", "--no-audit", "--no-fund", "--prefer-offline", tarball, *kernel, cwd=home)
            self.check([home / "node_modules/.bin/reckoner"], folder)


if __name__ == "__main__":
    unittest.main()
