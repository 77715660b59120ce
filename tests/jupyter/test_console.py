"""`jupyter console`, typed into over a pseudo-terminal: results, cells of several lines, history, errors, leaving."""
import os
import re
import tempfile
import time
import unittest

import pexpect

from kernel_client import KERNEL

# Sequences that colour the text and move the cursor.
ESCAPES = re.compile(r"\x1b\[[0-9;?]*[ -/]*[@-~]|\x1b[=>]|[\x00-\x08\x0e-\x1a]")
UP = "\x1b[A"


class Console(unittest.TestCase):
    def setUp(self):
        self.home = tempfile.TemporaryDirectory()
        env = {**os.environ, "HOME": self.home.name, "TERM": "xterm"}
        self.console = pexpect.spawn("/usr/bin/jupyter", ["console", "--kernel", KERNEL], env=env, encoding="utf-8", dimensions=(40, 160))
        self.written = ""
        self.read_until(r"In \[1\]: ")

    def tearDown(self):
        self.console.close(force=True)
        self.home.cleanup()

    def read_until(self, pattern, timeout=60):
        """Reads on until what was written since the last call matches."""
        end = time.monotonic() + timeout
        while time.monotonic() < end:
            try:
                self.written += self.console.read_nonblocking(65536, timeout=0.2)
            except pexpect.TIMEOUT:
                pass
            except pexpect.EOF:
                self.fail(f"the console ended before {pattern!r}: {ESCAPES.sub('', self.written)[-2000:]}")
            text = ESCAPES.sub("", self.written)
            if re.search(pattern, text, re.S):
                self.written = ""
                return text
        self.fail(f"no {pattern!r} in {ESCAPES.sub('', self.written)[-2000:]}")

    def enter(self, code, pattern):
        self.console.send(code + "\r")
        return self.read_until(pattern)

    def test_results_lines_and_history(self):
        self.enter("6 * 7", r"Out\[1\]: .*42.*In \[2\]: ")
        # An open bracket goes on on the next line, and the console proposes its indent.
        self.console.send("const cut = (mm: number) => {\r")
        self.read_until(r"\.\.\.: ")
        self.console.send("return mm - 3;\r")
        self.read_until(r"\.\.\.: ")
        self.console.send("\x7f\x7f}\r")
        self.read_until(r"In \[3\]: ")
        self.enter("cut(600)", r"Out\[3\]: .*597.*In \[4\]: ")
        # The last cell again.
        self.console.send(UP)
        self.read_until(r"cut\(600\)")
        self.enter("", r"Out\[4\]: .*597.*In \[5\]: ")
        self.enter("const wrong: number = 'text'", r"not assignable to type 'number'.*In \[6\]: ")
        recipe = "equilibriumMoisture({ temperature: '20 degC', humidity: '60 %' }).moisture"
        self.enter(recipe, r"Out\[6\]: .*1[01](?:\.\d+)? %.*In \[7\]: ")
        self.console.sendeof()
        self.read_until(r"Do you really want to exit")
        self.console.send("y\r")
        self.console.expect(pexpect.EOF, timeout=30)


if __name__ == "__main__":
    unittest.main()
