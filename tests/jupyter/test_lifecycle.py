"""A kernel's life: start, restart, shutdown, a starter that dies; notebooks run by nbclient and nbconvert."""
import json
import os
import pathlib
import signal
import subprocess
import sys
import tempfile
import time
import unittest

import nbformat
from jupyter_client.manager import start_new_kernel
from nbclient import NotebookClient
from nbclient.exceptions import CellExecutionError

from kernel_client import KERNEL, Client

ROOT = pathlib.Path(__file__).resolve().parents[2]


def alive(pid):
    try:
        with open(f"/proc/{pid}/stat") as f:
            return f.read().rsplit(")", 1)[1].split()[0] != "Z"
    except FileNotFoundError:
        return False


def gone(pid, seconds=6):
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        if not alive(pid):
            return True
        time.sleep(0.05)
    return False


class Lifecycle(unittest.TestCase):
    def pid(self, client):
        return client.km.provisioner.pid

    def test_shutdown(self):
        client = Client()
        pid = self.pid(client)
        reply = client.control("shutdown_request", {"restart": False})
        self.assertEqual((reply["msg_type"], reply["content"]), ("shutdown_reply", {"status": "ok", "restart": False}))
        self.assertTrue(gone(pid))
        client.stop()

    def test_shutdown_of_a_looping_kernel(self):
        client = Client()
        pid = self.pid(client)
        client.kc.execute("while (true) {}")
        time.sleep(0.3)
        reply = client.control("shutdown_request", {"restart": False})
        self.assertEqual(reply["content"]["status"], "ok")
        self.assertTrue(gone(pid))
        client.stop()

    def test_restart_forgets(self):
        client = Client()
        client.run("let before = 1")
        first = self.pid(client)
        for _ in range(3):
            client.km.restart_kernel()
            client.kc.wait_for_ready(timeout=20)
            reply = client.run("typeof before")
            self.assertEqual(reply["status"], "error")
            self.assertEqual(reply["execution_count"], 1)
            self.assertEqual(client.run("6 * 7").result, "42")
        self.assertNotEqual(first, self.pid(client))
        client.stop()

    def test_the_kernel_ends_with_its_starter(self):
        code = (
            "from jupyter_client.manager import start_new_kernel\nimport os, time\n"
            f"km, kc = start_new_kernel(kernel_name={KERNEL!r})\nprint(km.provisioner.pid, flush=True)\ntime.sleep(60)"
        )
        starter = subprocess.Popen([sys.executable, "-c", code], stdout=subprocess.PIPE, text=True)
        pid = int(starter.stdout.readline())
        self.assertTrue(alive(pid))
        os.kill(starter.pid, signal.SIGKILL)
        starter.wait()
        starter.stdout.close()
        self.assertTrue(gone(pid, 12))

    def test_the_kernel_starts_in_the_notebooks_folder(self):
        with tempfile.TemporaryDirectory() as folder:
            pathlib.Path(folder, "boards.json").write_text('{"count": 12}')
            pathlib.Path(folder, "saw.ts").write_text("export const kerf: number = 3;\nexport const cuts = (n: number): number => n * kerf;\n")
            km, kc = start_new_kernel(kernel_name=KERNEL, cwd=folder)
            try:
                client = Client.__new__(Client)
                client.km, client.kc = km, kc
                self.assertEqual(client.run("import boards from './boards.json'; boards.count").result, "12")
                self.assertEqual(client.run("import { cuts } from './saw.ts'; cuts(4)").result, "12")
                self.assertEqual(client.run("import { cuts as wrong } from './saw'; wrong('4')")["ename"], "TypeScriptError")
                time.sleep(0.02)
                pathlib.Path(folder, "saw.ts").write_text("export const kerf: number = 2;\nexport const cuts = (n: number): string => `${n * kerf} mm`;\n")
                self.assertEqual(client.run("import { cuts as anew } from './saw.ts'; anew(4).toUpperCase()").result, "'8 MM'")
            finally:
                kc.stop_channels()
                km.shutdown_kernel(now=True)

    def test_the_package_is_at_hand_in_any_folder(self):
        with tempfile.TemporaryDirectory() as folder:
            km, kc = start_new_kernel(kernel_name=KERNEL, cwd=folder)
            try:
                client = Client.__new__(Client)
                client.km, client.kc = km, kc
                exported = subprocess.run(
                    ["node", "--input-type=module", "-e", "import('joiners-reckoner').then((m) => console.log(JSON.stringify(m.catalogue.map((r) => [r.name, r.title]))))"],
                    cwd=ROOT, capture_output=True, text=True, check=True,
                )
                recipes = json.loads(exported.stdout)
                self.assertGreater(len(recipes), 0)
                for name, title in recipes:
                    reply = client.run(f"{name}.title")
                    self.assertEqual(reply["status"], "ok", (name, reply.get("evalue")))
                    self.assertEqual(reply.result.strip("'\"").replace("\\'", "'"), title)
                name = recipes[0][0]
                self.assertEqual(client.run(f"import {{ {name} as again }} from 'joiners-reckoner'; again === {name}").result, "true")
                # Every recipe's own example gives a result with a table; inspection tells its title.
                for name, title in recipes:
                    reply = client.run(f"await {name}({name}.example)")
                    self.assertEqual(reply["status"], "ok", (name, reply.get("evalue")))
                    data = reply.of("execute_result")[0]["data"]
                    self.assertIn("text/plain", data)
                    self.assertTrue({"text/html", "text/markdown"} & set(data), name)
                    self.assertIn(title, client.ask("inspect", name, 1)["data"]["text/plain"])
                self.assertEqual(client.run(f"const {name} = 'mine'; {name}").result, "'mine'")
            finally:
                kc.stop_channels()
                km.shutdown_kernel(now=True)


class Notebooks(unittest.TestCase):
    def notebook(self, *cells):
        nb = nbformat.v4.new_notebook(metadata={"kernelspec": {"name": KERNEL, "display_name": "x", "language": "typescript"}})
        nb.cells = [nbformat.v4.new_code_cell(c) for c in cells]
        return nb

    def test_nbclient(self):
        nb = self.notebook("const a: number = 20", "a + 1", "console.log('printed')", "display({ 'text/html': '<b>h</b>' }, { raw: true })")
        NotebookClient(nb, timeout=60, kernel_name=KERNEL).execute()
        nbformat.validate(nb)
        self.assertEqual(nb.cells[1].outputs[0].data["text/plain"], "21")
        self.assertEqual(nb.cells[2].outputs[0].text, "printed\n")
        self.assertEqual(nb.cells[3].outputs[0].data["text/html"], "<b>h</b>")
        self.assertEqual([c.execution_count for c in nb.cells], [1, 2, 3, 4])

    def test_nbclient_stops_at_an_error(self):
        nb = self.notebook("1", "throw new Error('stop here')", "2")
        with self.assertRaises(CellExecutionError) as caught:
            NotebookClient(nb, timeout=60, kernel_name=KERNEL).execute()
        self.assertIn("stop here", str(caught.exception))
        self.assertEqual(nb.cells[2].outputs, [])

    def test_the_projects_notebooks_are_as_jupyter_saves_them(self):
        for path in sorted((ROOT / "notebooks").glob("*.ipynb")):
            with self.subTest(notebook=path.name):
                text = path.read_text("utf-8")
                self.assertEqual(nbformat.writes(nbformat.read(path, as_version=4)) + "\n", text)

    def test_a_first_save_by_the_project_changes_no_line_of_a_file_that_jupyter_saved(self):
        nb = self.notebook("const width: number = 600; width", "display({ 'text/html': '<b>1</b>', 'application/json': { b: 1, a: [2] } }, { raw: true })")
        nb.cells.insert(0, nbformat.v4.new_markdown_cell("# Title\n\nText"))
        nb.cells[1].metadata.update(tags=["parameters"], collapsed=False)
        NotebookClient(nb, timeout=60, kernel_name=KERNEL).execute()
        for cell in nb.cells:
            cell.metadata.pop("execution", None)
        with tempfile.TemporaryDirectory() as folder:
            path, saved = pathlib.Path(folder, "a.ipynb"), pathlib.Path(folder, "b.ipynb")
            nbformat.write(nb, path)
            subprocess.run(["node", ROOT / "src/launch/reckoner.mjs", "run", path, "-o", saved], check=True, capture_output=True)
            self.assertEqual(saved.read_text("utf-8"), path.read_text("utf-8"))

    def test_nbconvert_runs_every_notebook_of_the_project(self):
        found = sorted((ROOT / "notebooks").glob("*.ipynb"))
        with tempfile.TemporaryDirectory() as folder:
            if not found:
                path = pathlib.Path(folder, "own.ipynb")
                nbformat.write(self.notebook("const a = 3", "a * 2"), path)
                found = [path]
            for path in found:
                with self.subTest(notebook=path.name):
                    done = subprocess.run(
                        ["/usr/bin/jupyter", "nbconvert", "--to", "notebook", "--execute", "--output-dir", folder, "--output", "out.ipynb",
                         f"--ExecutePreprocessor.kernel_name={KERNEL}", "--ExecutePreprocessor.timeout=240", str(path)],
                        capture_output=True, text=True,
                    )
                    self.assertEqual(done.returncode, 0, done.stderr[-3000:])
                    nb = nbformat.read(pathlib.Path(folder, "out.ipynb"), as_version=4)
                    nbformat.validate(nb)
                    self.assertTrue(any(c.get("outputs") for c in nb.cells))


if __name__ == "__main__":
    unittest.main()
