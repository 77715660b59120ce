"""What the conformance suite leaves out: queues, stdin, comms, history, displays, completion, bad messages."""
import json
import time
import unittest
import uuid
from queue import Empty

import zmq

from kernel_client import Client


class Protocol(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.client = Client()

    @classmethod
    def tearDownClass(cls):
        cls.client.stop()

    def setUp(self):
        self.client.drain()

    # --- running cells

    def test_values_are_bound_not_copied(self):
        self.client.run("let width = 18; const twice = () => width * 2")
        self.assertEqual(self.client.run("width = 25; twice()").result, "50")
        self.assertEqual(self.client.run("let width = 30; twice()").result, "60")

    def test_a_type_error_stops_the_cell_before_it_runs(self):
        self.client.run("let started = false")
        reply = self.client.run("started = true\nconst board: number = 'oak'")
        self.assertEqual((reply["status"], reply["ename"]), ("error", "TypeScriptError"))
        self.assertIn("line 2, column 7", reply["evalue"])
        self.assertIn("not assignable to type 'number'", reply["evalue"])
        self.assertEqual(len(reply.of("error")), 1)
        self.assertEqual(self.client.run("started").result, "false")

    def test_a_runtime_error_names_the_cells_own_line_and_column(self):
        reply = self.client.run("interface T { a: number }\nconst t: T = { a: 1 }\nfunction cut(): never {\n  throw new RangeError('too short')\n}\ncut()")
        self.assertEqual((reply["ename"], reply["evalue"]), ("RangeError", "too short"))
        text = "\n".join(reply["traceback"])
        self.assertRegex(text, r"at cut In\[\d+\], line 4, column 9")
        self.assertRegex(text, r"at In\[\d+\], line 6, column 1")
        self.assertNotIn("node:internal", text)
        self.assertNotIn("chunks", text)

    def test_an_error_in_an_earlier_cells_function_points_there(self):
        self.client.run("const risky = (n: number) => {\n  if (n > 1) throw new Error('over')\n  return n\n}")
        count = int(self.client.run("1")["execution_count"]) - 1
        reply = self.client.run("await null\nrisky(2)")
        self.assertRegex("\n".join(reply["traceback"]), rf"In\[{count}\], line 2, column 20")

    def test_a_failing_cell_keeps_what_it_reached_and_gives_back_the_rest(self):
        self.client.run("const plan = 'old'")
        self.client.run("const reachedFirst = 1; throw new Error('half-way'); const plan = 'new'; const never = 2")
        self.assertEqual(self.client.run("[reachedFirst, plan]").result, "[ 1, 'old' ]")
        self.assertEqual(self.client.run("never")["ename"], "TypeScriptError")

    def test_top_level_await_and_modules(self):
        self.assertEqual(self.client.run("const later = await Promise.resolve(5); later").result, "5")
        self.assertEqual(self.client.run("import { join } from 'node:path'; join('a', 'b')").result, "'a/b'")
        self.assertEqual(self.client.run("join('c', 'd')").result, "'c/d'")
        self.assertEqual(self.client.run("const os = await import('node:os'); typeof os.cpus").result, "'function'")

    def test_a_missing_module_is_an_error_of_the_cell(self):
        reply = self.client.run("import x from 'no-such-package-here'")
        self.assertEqual(reply["status"], "error")
        self.assertIn("no-such-package-here", reply["evalue"])

    def test_twenty_thousand_lines_all_arrive(self):
        reply = self.client.run("for (let i = 0; i < 20000; i++) console.log(i)")
        self.assertEqual(reply.stdout.split("\n")[:-1], [str(i) for i in range(20000)])
        self.assertLess(len(reply.of("stream")), 200)

    def test_the_streams_keep_their_order(self):
        reply = self.client.run("console.log('a'); console.error('b'); process.stdout.write('c'); display(1); console.log('d')")
        kinds = [(m["msg_type"], m["content"].get("text")) for m in reply.outputs if m["msg_type"] in ("stream", "display_data")]
        self.assertEqual(kinds, [("stream", "a\n"), ("stream", "b\n"), ("stream", "c"), ("display_data", None), ("stream", "d\n")])

    def test_printing_shows_while_the_cell_runs(self):
        msg_id = self.client.kc.execute("console.log('early'); const until = Date.now() + 1500; while (Date.now() < until) console.log('tick')")
        start = time.monotonic()
        while True:
            msg = self.client.kc.get_iopub_msg(timeout=10)
            if msg["msg_type"] == "stream" and msg["parent_header"]["msg_id"] == msg_id:
                break
        self.assertLess(time.monotonic() - start, 1.2)
        self.client.collect(msg_id)

    def test_an_uncaught_error_in_a_timer_is_told_and_survived(self):
        reply = self.client.run("setTimeout(() => { throw new Error('stray') }, 10); await new Promise((r) => setTimeout(r, 60))")
        self.assertEqual(reply["status"], "ok")
        self.assertIn("stray", reply.stderr)
        reply = self.client.run("void Promise.reject(new Error('lost')); await new Promise((r) => setTimeout(r, 60))")
        self.assertIn("lost", reply.stderr)

    def test_process_exit_does_not_take_the_kernel_down(self):
        self.assertEqual(self.client.run("process.exit(1)")["status"], "error")
        self.assertEqual(self.client.run("1 + 1").result, "2")

    def test_a_cells_own_names_win_over_builtin_ones(self):
        self.client.run("const display = 3; const process = 'mine'; const Map = 1; const console = null")
        self.assertEqual(self.client.run("[display, process, Map, console]").result, "[ 3, 'mine', 1, null ]")
        self.assertEqual(self.client.run("new Set([1])").result, "Set(1) { 1 }")
        self.client.stop()
        type(self).client = Client()

    # --- flags of execute_request

    def test_silent(self):
        before = self.client.run("1")["execution_count"]
        reply = self.client.run("console.log('shh'); let quietly = 4; 5", silent=True)
        self.assertEqual(reply["status"], "ok")
        self.assertEqual(reply.outputs, [])
        self.assertEqual(self.client.run("quietly").result, "4")
        self.assertEqual(self.client.run("1")["execution_count"], before + 2)
        history = self.client.ask("history", hist_access_type="tail", n=10)["history"]
        self.assertFalse([h for h in history if "shh" in h[2]])

    def test_store_history_false(self):
        before = self.client.run("1")["execution_count"]
        reply = self.client.run("'unstored'", store_history=False)
        self.assertEqual(reply.result, "'unstored'")
        self.assertEqual(self.client.run("1")["execution_count"], before + 1)
        history = self.client.ask("history", hist_access_type="tail", n=5)["history"]
        self.assertFalse([h for h in history if "unstored" in h[2]])

    def test_stop_on_error(self):
        # The first waits, so that the others are in the queue when it fails.
        first = "await new Promise((go) => setTimeout(go, 1000)); throw new Error('first')"
        ids = [self.client.kc.execute(code) for code in (first, "let dropped = 1", "let droppedToo = 1")]
        statuses = [self.client.reply_to(i)["content"]["status"] for i in ids]
        self.assertEqual(statuses, ["error", "aborted", "aborted"])
        self.client.drain()
        self.assertEqual(self.client.run("typeof dropped")["status"], "error")

    def test_what_is_sent_after_the_failure_runs(self):
        self.client.run("throw new Error('seen')")
        self.assertEqual(self.client.run("'runs'").result, "'runs'")

    def test_stop_on_error_false(self):
        ids = [self.client.kc.execute("throw new Error('first')", stop_on_error=False), self.client.kc.execute("'went on'")]
        statuses = [self.client.reply_to(i)["content"]["status"] for i in ids]
        self.assertEqual(statuses, ["error", "ok"])

    def test_other_requests_are_not_aborted(self):
        first = self.client.kc.execute("throw new Error('x')")
        second = self.client.kc.complete("Mat")
        self.assertEqual(self.client.reply_to(first)["content"]["status"], "error")
        self.assertIn("Math", self.client.reply_to(second)["content"]["matches"])

    def test_user_expressions(self):
        reply = self.client.run("let depth = 12", user_expressions={"good": "depth + 1", "bad": "depth.foo.bar", "throws": "(() => { throw new Error('no') })()"})
        got = reply["user_expressions"]
        self.assertEqual(got["good"]["status"], "ok")
        self.assertEqual(got["good"]["data"]["text/plain"], "13")
        self.assertEqual(got["bad"]["status"], "error")
        self.assertEqual((got["throws"]["status"], got["throws"]["evalue"]), ("error", "no"))

    # --- stdin

    def test_prompt(self):
        msg_id = self.client.kc.execute("console.log('before'); const answer = prompt('How long? '); `got ${answer}`", allow_stdin=True)
        request = self.client.kc.get_stdin_msg(timeout=10)
        self.assertEqual(request["msg_type"], "input_request")
        self.assertEqual(request["content"], {"prompt": "How long? ", "password": False})
        self.assertEqual(request["parent_header"]["msg_id"], msg_id)
        self.client.kc.input("900 mm ½")
        self.assertEqual(self.client.collect(msg_id).result, "'got 900 mm ½'")

    def test_prompt_twice_and_password(self):
        msg_id = self.client.kc.execute("[prompt('a'), prompt('b', { password: true })]", allow_stdin=True)
        self.client.kc.get_stdin_msg(timeout=10)
        self.client.kc.input("1")
        self.assertTrue(self.client.kc.get_stdin_msg(timeout=10)["content"]["password"])
        self.client.kc.input("2")
        self.assertEqual(self.client.collect(msg_id).result, "[ '1', '2' ]")

    def test_prompt_refused(self):
        reply = self.client.run("prompt('x')", allow_stdin=False)
        self.assertEqual(reply["status"], "error")
        self.assertIn("takes no input", reply["evalue"])

    def test_prompt_interrupted(self):
        msg_id = self.client.kc.execute("prompt('x')", allow_stdin=True)
        self.client.kc.get_stdin_msg(timeout=10)
        self.assertLess(self.client.interrupt(), 2)
        self.assertEqual(self.client.collect(msg_id)["ename"], "Interrupted")
        # A late answer belongs to nobody; the next question gets its own.
        self.client.kc.input("late")
        msg_id = self.client.kc.execute("prompt('y')", allow_stdin=True)
        self.client.kc.get_stdin_msg(timeout=10)
        self.client.kc.input("fresh")
        self.assertEqual(self.client.collect(msg_id).result, "'fresh'")

    # --- displays

    def test_update_display_data(self):
        reply = self.client.run("const shown = display(1, { display_id: 'here' }); shown.update(2); updateDisplay('here', 3); 0")
        self.assertEqual([m["msg_type"] for m in reply.outputs[1:]], ["display_data", "update_display_data", "update_display_data", "execute_result"])
        self.assertEqual({m["content"]["transient"]["display_id"] for m in reply.outputs[1:4]}, {"here"})
        self.assertEqual([m["content"]["data"]["text/plain"] for m in reply.outputs[1:4]], ["1", "2", "3"])

    def test_progress_shows_while_work_goes_on(self):
        reply = self.client.run("const bar = display('0 %'); for (let i = 1; i <= 3; i++) { await new Promise((r) => setTimeout(r, 20)); bar.update(`${i * 33} %`) }")
        self.assertEqual([c["data"]["text/plain"] for c in reply.of("update_display_data")], ["'33 %'", "'66 %'", "'99 %'"])

    def test_long_work_of_the_library_tells_how_far_it_is(self):
        # Strips are computed one by one, so that these samples take a few seconds; progress is shown without an option.
        reply = self.client.run("(await uncertain(movementAcross, { strips: [{ timber: 'teak', width: '60 mm', count: 9 }], from: '8 % .. 9 %', to: '11 % .. 13 %' }, { samples: 250_000, sensitivity: false })).samples", timeout=120)
        self.assertEqual(reply.result, "250000")
        first, *later = [m["content"] for m in reply.outputs if m["msg_type"] in ("display_data", "update_display_data")]
        self.assertEqual(len(reply.of("display_data")), 1)
        self.assertGreaterEqual(len(later), 2)
        self.assertEqual({c["transient"]["display_id"] for c in later}, {first["transient"]["display_id"]})
        self.assertRegex(first["data"]["text/plain"], r"^Movement across the grain: sampling, \d+ %$")
        self.assertRegex(later[-1]["data"]["text/plain"], r"^Movement across the grain: done in \d+\.\d s$")

    def test_long_work_stops_on_an_interrupt(self):
        msg_id = self.client.kc.execute("await uncertain(movementAcross, { strips: [{ timber: 'teak', width: '60 mm', count: 9 }], from: '8 % .. 9 %', to: '11 % .. 13 %' }, { samples: 5_000_000 })")
        time.sleep(2.5)
        start = time.monotonic()
        self.client.interrupt()
        reply = self.client.collect(msg_id)
        self.assertLess(time.monotonic() - start, 0.5)
        self.assertEqual((reply["status"], reply["ename"]), ("error", "Interrupted"))
        self.assertRegex(reply.of("update_display_data")[-1]["data"]["text/plain"], r"stopped after \d+\.\d s$")
        self.assertEqual(self.client.run("1 + 1").result, "2")

    def test_clear_output(self):
        reply = self.client.run("console.log('a'); clearOutput(true); console.log('b'); clearOutput()")
        self.assertEqual([c["wait"] for c in reply.of("clear_output")], [True, False])
        self.assertEqual([m["msg_type"] for m in reply.outputs[1:]], ["stream", "clear_output", "stream", "clear_output"])

    def test_display_symbol_forms(self):
        for form in ("{ 'text/html': '<i>a</i>' }", "() => ({ 'text/html': '<i>a</i>' })", "async () => ({ 'text/html': '<i>a</i>' })"):
            reply = self.client.run(f"({{ [Symbol.for('Jupyter.display')]: {form} }})")
            data = reply.of("execute_result")[0]["data"]
            self.assertEqual(data["text/html"], "<i>a</i>")
            self.assertIn("text/plain", data)

    def test_a_result_shows_its_words_and_its_chart(self):
        # A client shows one form of each output: words and chart in one would lose the chart.
        charts = {"image/svg+xml", "application/vnd.vegalite.v5+json"}
        reply = self.client.run("equilibriumMoisture({ temperature: '20 degC', humidity: '60 %' })")
        words, chart = reply.outputs[1:]
        self.assertEqual((words["msg_type"], chart["msg_type"]), ("execute_result", "display_data"))
        self.assertTrue({"text/html", "text/markdown", "text/plain"} <= set(words["content"]["data"]))
        self.assertFalse(charts & set(words["content"]["data"]))
        self.assertTrue(charts <= set(chart["content"]["data"]))
        reply = self.client.run("display(equilibriumMoisture({ temperature: '20 degC', humidity: '60 %' }), { display_id: 'two' }); await 0; updateDisplay('two', equilibriumMoisture({ temperature: '20 degC', humidity: '70 %' })); await new Promise((r) => setTimeout(r, 1500))")
        shown = [(m["msg_type"], m["content"]["transient"]["display_id"]) for m in reply.outputs[1:]]
        self.assertEqual(shown, [("display_data", "two"), ("display_data", "two-chart"), ("update_display_data", "two"), ("update_display_data", "two-chart")])

    def test_a_display_that_throws_is_an_error_of_the_cell(self):
        reply = self.client.run("({ [Symbol.for('Jupyter.display')]() { throw new Error('cannot draw') } })")
        self.assertEqual((reply["status"], reply["evalue"]), ("error", "cannot draw"))

    def test_plain_values(self):
        for code, text in (
            ("new Map([['a', 1]])", "Map(1) { 'a' => 1 }"), ("new Set([1, 2])", "Set(2) { 1, 2 }"), ("new Float64Array([1.5, 2])", "Float64Array(2) [ 1.5, 2 ]"),
            ("10n ** 20n", "100000000000000000000n"), ("null", "null"), ("{ a: { b: [1] } }", "{ a: { b: [ 1 ] } }"), ("new Date(0)", "1970-01-01T00:00:00.000Z"),
            ("(x: number) => x", "[Function (anonymous)]"),
        ):
            self.assertEqual(self.client.run(code).result, text)
        self.assertIsNone(self.client.run("undefined").result)
        self.assertIsNone(self.client.run("const nothing = 1").result)
        self.assertIn("RangeError: held", self.client.run("new RangeError('held')").result)

    def test_mathjs_values(self):
        self.client.run("import { unit, matrix, complex, fraction, bignumber } from 'mathjs'")
        self.assertEqual(self.client.run("unit('3 cm')").result, "3 cm")
        reply = self.client.run("matrix([[1, 2], [3, 4]])")
        self.assertEqual(reply.result, "[[1, 2], [3, 4]]")
        self.assertIn("bmatrix", reply.of("execute_result")[0]["data"]["text/latex"])
        self.assertEqual(self.client.run("complex(1, 2)").result, "1 + 2i")
        self.assertIn("\\frac{1}{3}", self.client.run("fraction(1, 3)").of("execute_result")[0]["data"]["text/latex"])
        self.assertEqual(self.client.run("bignumber('0.1').add(bignumber('0.2'))").result, "0.3")

    def test_data_frames(self):
        reply = self.client.run(
            "class DataFrame { columns = ['board', 'width']; index = [0, 1]; values = [['a', 120.123456789], ['<b>', 90]]; shape = [2, 2] }\nnew DataFrame()"
        )
        data = reply.of("execute_result")[0]["data"]
        self.assertIn("<th>board</th>", data["text/html"])
        self.assertIn("&lt;b&gt;", data["text/html"])
        self.assertIn("120.123", data["text/plain"])
        self.assertIn("2 rows × 2 columns", data["text/plain"])

    # --- comms

    def test_comms(self):
        kc = self.client.kc
        self.client.run(
            "const heard: unknown[] = []; let closed = false\n"
            "comms.register('bench', (comm, data) => { heard.push(data); comm.onMessage = (d) => { heard.push(d); comm.send({ echo: d }) }; comm.onClose = () => { closed = true } })"
        )
        comm_id = uuid.uuid4().hex
        kc.shell_channel.send(kc.session.msg("comm_open", {"comm_id": comm_id, "target_name": "bench", "data": {"hello": 1}}))
        msg = kc.session.msg("comm_msg", {"comm_id": comm_id, "data": {"n": 2}})
        kc.shell_channel.send(msg)
        replies = [m for m in self.client.outputs_of(msg["header"]["msg_id"]) if m["msg_type"] == "comm_msg"]
        self.assertEqual(replies[0]["content"], {"comm_id": comm_id, "data": {"echo": {"n": 2}}})
        info = self.client.ask("comm_info", target_name="bench")
        self.assertEqual(info["comms"], {comm_id: {"target_name": "bench"}})
        kc.shell_channel.send(kc.session.msg("comm_close", {"comm_id": comm_id, "data": {}}))
        self.assertEqual(self.client.run("[heard, closed]").result, "[ [ { hello: 1 }, { n: 2 } ], true ]")
        self.assertEqual(self.client.ask("comm_info")["comms"], {})

    def test_a_comm_from_the_cell(self):
        reply = self.client.run("const line = comms.open('page', { a: 1 }); line.send({ b: 2 }, {}, [new Uint8Array([7, 8])]); line.close()")
        kinds = [m["msg_type"] for m in reply.outputs if m["msg_type"].startswith("comm")]
        self.assertEqual(kinds, ["comm_open", "comm_msg", "comm_close"])
        opened = reply.of("comm_open")[0]
        self.assertEqual((opened["target_name"], opened["data"]), ("page", {"a": 1}))
        with_buffers = [m for m in reply.outputs if m["msg_type"] == "comm_msg"][0]
        self.assertEqual([bytes(b) for b in with_buffers["buffers"]], [b"\x07\x08"])

    def test_an_unknown_target_is_closed(self):
        kc = self.client.kc
        msg = kc.session.msg("comm_open", {"comm_id": "x1", "target_name": "nobody", "data": {}})
        kc.shell_channel.send(msg)
        self.assertEqual([m["msg_type"] for m in self.client.outputs_of(msg["header"]["msg_id"])], ["comm_close"])

    # --- history

    def test_history(self):
        first = self.client.run("'hist one'")["execution_count"]
        self.client.run("'hist two'")
        self.client.run("'hist two'")
        tail = self.client.ask("history", hist_access_type="tail", n=2, output=True)["history"]
        self.assertEqual([h[2] for h in tail], [["'hist two'", "'hist two'"]] * 2)
        session = tail[0][0]
        ranged = self.client.ask("history", hist_access_type="range", session=session, start=first, stop=first + 1)["history"]
        self.assertEqual(ranged, [[session, first, "'hist one'"]])
        self.assertEqual(self.client.ask("history", hist_access_type="range", session=session + 7, start=1, stop=9)["history"], [])
        found = self.client.ask("history", hist_access_type="search", pattern="'hist*", n=10)["history"]
        self.assertEqual([h[2] for h in found], ["'hist one'", "'hist two'", "'hist two'"])
        unique = self.client.ask("history", hist_access_type="search", pattern="'hist tw[o]'", unique=True, n=10)["history"]
        self.assertEqual([h[2] for h in unique], ["'hist two'"])

    # --- help while typing

    def test_is_complete(self):
        ask = lambda code: self.client.ask("is_complete", code)  # noqa: E731
        self.assertEqual(ask("1 + 1"), {"status": "complete"})
        self.assertEqual(ask("if (true) {"), {"status": "incomplete", "indent": "  "})
        self.assertEqual(ask("  for (const a of [1]) {"), {"status": "incomplete", "indent": "    "})
        self.assertEqual(ask("const a = `x")["status"], "incomplete")
        self.assertEqual(ask("function f(")["status"], "incomplete")
        for code in ("let 3x", "a b c", ")", "const x = = 2"):
            self.assertEqual(ask(code)["status"], "invalid", code)

    def test_completion(self):
        self.client.run("const shelf = { width: 300, depth: 20 }; /** How far it bends. */ function bend(load: number): number { return load }")
        reply = self.client.ask("complete", "shelf.wi")
        self.assertEqual((reply["matches"], reply["cursor_start"], reply["cursor_end"]), (["width"], 6, 8))
        self.assertEqual(self.client.ask("complete", "bend + 1", 4)["matches"], ["bend"])
        self.assertIn("depth", self.client.ask("complete", "shelf.")["matches"])
        # The cursor counts code points: the emoji is one.
        reply = self.client.ask("complete", "'😀'; shelf.dep")
        self.assertEqual((reply["matches"], reply["cursor_start"]), (["depth"], 11))
        self.client.run("type Finish = 'oil' | 'wax'; function coat(options: { finish: Finish; coats: number }): void {}")
        self.assertEqual(self.client.ask("complete", "coat({ fi")["matches"], ["finish"])
        self.assertEqual(self.client.ask("complete", "coat({ finish: 'o")["matches"], ["oil"])

    def test_completion_of_a_recipes_values(self):
        self.client.run(
            "const fakeRecipe = Object.assign((given: { timber: string }) => given, { title: 'Fake', topic: 'test', sources: [],"
            " inputs: { timber: { kind: 'choice', choices: ['white oak', 'red oak', 'ash'] }, grade: { kind: 'choice', choices: ['C16', 'C24'] } } })"
        )
        reply = self.client.ask("complete", "fakeRecipe({ timber: 'wh")
        self.assertEqual((reply["matches"], reply["cursor_start"], reply["cursor_end"]), (["white oak"], 22, 24))
        self.assertEqual(set(self.client.ask("complete", "fakeRecipe({ timber: 'oak")["matches"]), {"white oak", "red oak"})

    def test_inspect(self):
        self.client.run("/** How far it bends, in mm. */ function sagging(load: number): number { return load }")
        reply = self.client.ask("inspect", "sagging(3)", 3)
        self.assertTrue(reply["found"])
        self.assertIn("function sagging(load: number): number", reply["data"]["text/plain"])
        self.assertIn("How far it bends, in mm.", reply["data"]["text/plain"])
        self.assertIn("sagging", self.client.ask("inspect", "sagging(", 8)["data"]["text/plain"])
        self.assertIn("return load", self.client.ask("inspect", "sagging", 3, 1)["data"]["text/plain"])
        self.client.run("let thickness = 27.5")
        self.assertIn("27.5", self.client.ask("inspect", "thickness", 2)["data"]["text/plain"])
        self.assertFalse(self.client.ask("inspect", "noSuchNameAnywhere", 3)["found"])
        self.assertFalse(self.client.ask("inspect", "", 0)["found"])

    def test_inspect_of_a_recipe(self):
        self.client.run(
            "const toldRecipe = Object.assign((given: object) => given, { title: 'Told', topic: 'test', about: 'Answers a question.', sources: [{ id: 'some-handbook', locator: 'Table 3' }],"
            " inputs: { span: { kind: 'length', unit: 'mm', label: 'clear width between supports' } } })"
        )
        data = self.client.ask("inspect", "toldRecipe", 4)["data"]
        for part in ("Told", "Answers a question.", "span", "mm", "clear width", "some-handbook", "Table 3"):
            self.assertIn(part, data["text/plain"])
        self.assertIn("text/markdown", data)

    # --- messages that are none

    def raw(self, frames):
        info = self.client.km.get_connection_info()
        socket = zmq.Context.instance().socket(zmq.DEALER)
        socket.linger = 0
        socket.connect(f"tcp://{info['ip']}:{info['shell_port']}")
        socket.send_multipart(frames)
        answered = socket.poll(400)
        socket.close()
        return answered

    def test_bad_messages_are_dropped(self):
        session = self.client.kc.session
        good = session.serialize(session.msg("kernel_info_request", {}))
        self.assertTrue(self.raw(good))
        forged = list(good)
        forged[1] = b"0" * 64
        self.assertFalse(self.raw(forged), "a false signature was answered")
        for frames in ([b"x"], [b"<IDS|MSG>"], [b"<IDS|MSG>", b"", b"{}"], [b"", b"", b"<IDS|MSG>", b"sig", b"{", b"}", b"1", b"[]"]):
            self.assertFalse(self.raw(frames), frames)
        for parts in ([b"{}", b"{}", b"{}", b"{}"], [b"not json", b"{}", b"{}", b"{}"], [b"[]", b"{}", b"{}", b"{}"]):
            self.assertFalse(self.raw([b"<IDS|MSG>", session.sign(parts), *parts]), parts)
        self.assertEqual(self.client.run("'alive'").result, "'alive'")

    def test_wrong_content_is_survived(self):
        kc = self.client.kc
        for content in ({}, {"code": 3}, {"code": None, "silent": "x"}):
            msg = kc.session.msg("execute_request", content)
            kc.shell_channel.send(msg)
            self.assertIn(self.client.reply_to(msg["header"]["msg_id"])["content"]["status"], ("ok", "error"))
        kc.shell_channel.send(kc.session.msg("no_such_request", {}))
        self.assertEqual(self.client.run("'alive'").result, "'alive'")

    def test_kernel_info_while_a_cell_runs(self):
        first = self.client.kc.execute("await new Promise((r) => setTimeout(r, 300))")
        second = self.client.kc.kernel_info()
        self.assertEqual(self.client.reply_to(first)["content"]["status"], "ok")
        self.assertEqual(self.client.reply_to(second)["content"]["implementation"], "reckoner")

    def test_control_answers_while_a_cell_loops(self):
        msg_id = self.client.kc.execute("while (true) {}")
        time.sleep(0.2)
        start = time.monotonic()
        self.assertEqual(self.client.control("kernel_info_request")["content"]["status"], "ok")
        self.assertLess(time.monotonic() - start, 1)
        self.assertTrue(self.client.kc.is_alive())
        self.client.interrupt()
        self.client.collect(msg_id)

    def test_results_are_json(self):
        reply = self.client.run("const ring: Record<string, unknown> = { big: 3n }; ring.self = ring; display({ 'application/json': ring }, { raw: true })")
        self.assertEqual(reply["status"], "ok")
        json.dumps(reply.of("display_data")[0])


if __name__ == "__main__":
    unittest.main()
