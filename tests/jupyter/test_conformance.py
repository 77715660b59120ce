"""Every test of Debian's python3-jupyter-kernel-test, with a sample for each part of the protocol it can check."""
import unittest

import jupyter_kernel_test


class Conformance(jupyter_kernel_test.KernelTests):
    kernel_name = "reckoner"
    language_name = "typescript"
    file_extension = ".ts"

    code_hello_world = 'console.log("hello, world")'
    code_stderr = 'console.error("to stderr")'
    completion_samples = [
        {"text": "[1, 2].forE", "matches": {"forEach"}},
        {"text": "Math.hyp", "matches": {"hypot"}},
    ]
    complete_code_samples = ["1 + 1", "function f(): number { return 1 }", "const a = `x`", "if (true) { 1 }"]
    incomplete_code_samples = ["function f() {", "const a = (1 +", "[1,", "`un", "/* un", "if (true) {\n  1"]
    invalid_code_samples = ["let 1x = 3", "const = 4;", "}"]
    code_generate_error = 'throw new Error("on purpose")'
    code_execute_result = [
        {"code": "6 * 7", "result": "42"},
        {"code": "'a' + 'b'", "result": "'ab'"},
        {"code": "[1, 2, 3].map((n) => n * n)", "result": "[ 1, 4, 9 ]"},
        {"code": "({ [Symbol.for('Jupyter.display')]: { 'text/html': '<b>x</b>' } })", "mime": "text/html", "result": "<b>x</b>"},
    ]
    code_display_data = [
        {"code": "display({ 'text/markdown': '*x*' }, { raw: true })", "mime": "text/markdown"},
        {"code": "display(12)", "mime": "text/plain"},
    ]
    code_history_pattern = "6 [*] ?"
    supported_history_operations = ("tail", "range", "search")
    code_inspect_sample = "parseFloat"
    code_clear_output = "clearOutput()"
    code_page_something = "Math.hypot?"


if __name__ == "__main__":
    unittest.main()
