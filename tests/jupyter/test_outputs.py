"""A cell owns its outputs: with nbclient, `nbconvert --execute`, its HTML, and `reckoner run`, each output is under its own cell."""
import json
import pathlib
import re
import subprocess
import tempfile
import unittest

import nbformat
from nbclient import NotebookClient

from kernel_client import KERNEL, Client

ROOT = pathlib.Path(__file__).resolve().parents[2]
JUPYTER = "/usr/bin/jupyter"

SETUP = """const at = (humidity: number) => equilibriumMoisture({ temperature: '20 degC', humidity: `${humidity} %` });
at(60).chart === undefined"""
CELLS = [
    SETUP,
    "for (const humidity of [40, 50, 60]) display(at(humidity))",
    "console.log('between'); display(at(55)); console.log('after'); 'last'",
    "for (let i = 0; i < 200; i++) { display(i % 50 === 0 ? at(40 + i / 10) : i); if (i % 7 === 0) await null; }",
    "display(5)",
]


def notebook():
    book = nbformat.v4.new_notebook(cells=[nbformat.v4.new_code_cell(source) for source in CELLS])
    book.metadata["kernelspec"] = {"name": KERNEL, "display_name": "x", "language": "typescript"}
    return book


def is_chart(output):
    return "image/svg+xml" in output.get("data", {}) and "text/markdown" not in output.get("data", {})


class Outputs(unittest.TestCase):
    def check(self, cells, apart):
        """`apart` says whether a result's chart is an output of its own, as for Jupyter's clients."""
        outputs = [[o for o in cell["outputs"] if not (apart and is_chart(o))] for cell in cells]
        kinds = [[o["output_type"] for o in found] for found in outputs]
        self.assertEqual(kinds[0], ["execute_result"])
        self.assertEqual(kinds[1], ["display_data"] * 3)
        self.assertEqual(kinds[2], ["stream", "display_data", "stream", "execute_result"])
        self.assertEqual(kinds[3], ["display_data"] * 200)
        self.assertEqual(["".join(o["data"]["text/plain"]) for o in outputs[3] if "text/markdown" not in o["data"]], [str(i) for i in range(200) if i % 50])
        self.assertEqual([i for i, o in enumerate(outputs[3]) if "text/markdown" in o["data"]], [0, 50, 100, 150])
        self.assertEqual(kinds[4], ["display_data"])
        if apart:
            charts = [sum(map(is_chart, cell["outputs"])) for cell in cells]
            self.assertEqual(charts, [0, 3, 1, 4, 0])

    def test_nbclient(self):
        book = notebook()
        NotebookClient(book, timeout=120, kernel_name=KERNEL).execute()
        self.check(book.cells, True)

    def test_nbconvert_execute_and_html(self):
        with tempfile.TemporaryDirectory() as folder:
            path = pathlib.Path(folder, "try.ipynb")
            nbformat.write(notebook(), path)
            subprocess.run([JUPYTER, "nbconvert", "--to", "notebook", "--execute", "--inplace", path], check=True, capture_output=True)
            self.check(json.loads(path.read_text())["cells"], True)
            subprocess.run([JUPYTER, "nbconvert", "--to", "html", path], check=True, capture_output=True)
            html = path.with_suffix(".html").read_text()
            images = re.findall(r'<img alt="[^"]+" [^>]*src="data:image/svg\+xml;base64,[^"]{200,}"', html)
            self.assertEqual(len(images), 8)
            # The page's own style sheet may take the triangle off; the style in place puts it back.
            self.assertIn('<summary style="display:list-item;cursor:pointer">Sources</summary>', html)

    def test_reckoner_run(self):
        with tempfile.TemporaryDirectory() as folder:
            path = pathlib.Path(folder, "try.ipynb")
            nbformat.write(notebook(), path)
            out = path.with_name("out.ipynb")
            subprocess.run(["node", ROOT / "src/launch/reckoner.mjs", "run", path, "-o", out], check=True, capture_output=True, cwd=folder)
            self.check(json.loads(out.read_text())["cells"], False)


class StaleCells(unittest.TestCase):
    def setUp(self):
        self.client = Client()

    def tearDown(self):
        self.client.stop()

    def run_cell(self, cell_id, code, **metadata):
        """Runs a cell as JupyterLab and VS Code do, with its id in the request's metadata."""
        msg = self.client.kc.session.msg("execute_request", {"code": code}, metadata={"cellId": cell_id, **metadata})
        self.client.kc.shell_channel.send(msg)
        reply = self.client.reply_to(msg["header"]["msg_id"])
        outputs = self.client.outputs_of(msg["header"]["msg_id"])
        printed = "".join(m["content"]["text"] for m in outputs if m["msg_type"] == "stream" and m["content"]["name"] == "stderr")
        return reply["metadata"]["reckoner"], printed

    def next_comm_data(self):
        for _ in range(20):
            msg = self.client.kc.get_iopub_msg(timeout=10)
            if msg["msg_type"] == "comm_msg":
                return msg["content"]["data"]
        raise AssertionError("no message on the comm")

    def open_comm(self):
        content = {"comm_id": "p1", "target_name": "reckoner.cells", "data": {}}
        self.client.kc.shell_channel.send(self.client.kc.session.msg("comm_open", content))
        return self.next_comm_data()

    def test_metadata_and_comm(self):
        first, _ = self.run_cell("a", "let width = 600")
        self.assertEqual(first, {"sets": ["width"], "uses": [], "stale": [], "usesDeleted": []})
        self.assertEqual(self.run_cell("b", "width * 2")[0]["uses"], ["width"])
        self.assertEqual(self.run_cell("a", "let width = 700")[0]["stale"], ["b"])
        cells = self.open_comm()["cells"]
        self.assertEqual(cells["a"], {"sets": ["width"], "uses": [], "usedBy": ["b"], "stale": False, "usesDeleted": []})
        self.assertTrue(cells["b"]["stale"])

    def test_a_deleted_cell_that_others_use_is_told(self):
        self.run_cell("a", "let width = 600, spare = 1")
        self.run_cell("b", "width * 2")
        sentence = "The cell that set width was deleted, and another cell uses it: width keeps its value only until the kernel restarts."
        told, printed = self.run_cell("c", "1 + 1", deletedCells=["a"])
        self.assertEqual(printed, sentence + "\n")
        self.assertEqual(self.run_cell("b", "width * 2")[0]["usesDeleted"], ["width"])
        self.assertEqual(self.run_cell("c", "1 + 1", deletedCells=["c", 5, "none"])[1], "")
        self.run_cell("d", "let depth = 1")
        self.run_cell("e", "depth")
        self.open_comm()
        message = self.client.kc.session.msg("comm_msg", {"comm_id": "p1", "data": {"remove": "d"}})
        self.client.kc.shell_channel.send(message)
        deleted = self.next_comm_data()["deleted"]
        self.assertEqual((deleted["id"], deleted["names"], deleted["usedBy"]), ("d", ["depth"], ["e"]))
        self.assertIn("depth keeps its value", deleted["text"])
        self.assertEqual(self.next_comm_data()["cells"]["e"]["usesDeleted"], ["depth"])


if __name__ == "__main__":
    unittest.main()
