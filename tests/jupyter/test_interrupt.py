"""Interrupts: loops of many kinds, waits, a child process, background work. Values stay, the kernel goes on."""
import time
import unittest

from kernel_client import Client

LOOPS = {
    "while": "while (true) {}",
    "for": "for (;;) { Math.sqrt(2) }",
    "do while": "let n = 0; do { n++ } while (n >= 0)",
    "labelled": "outer: for (;;) { for (let i = 0; i < 10; i++) { if (i === 5) continue outer } }",
    "swallowing": "for (;;) { try { for (;;) {} } catch {} finally { Math.random() } }",
    "recursion": "const dig = (d: number): number => (d > 50 ? 0 : dig(d + 1) + dig(d + 1)); while (true) dig(40)",
    "generator": "function* endless() { let i = 0; while (true) yield i++ }\nlet s = 0; for (const v of endless()) s += v",
    "comparator": "[3, 1, 2].sort(() => { while (true) {} })",
    "regular expression": "/^(a+)+$/.test('a'.repeat(60) + '!')",
    "json": "JSON.stringify({ toJSON() { while (true) {} } })",
    "getter": "const trap = { get v(): number { while (true) {} } }; trap.v",
    "promise chain": "const again = (): Promise<void> => Promise.resolve().then(again); await again()",
    "async function": "const spin = async () => { while (true) await null }; await spin()",
    "loop after await": "await new Promise((r) => setTimeout(r, 20)); while (true) {}",
    "loop in a timer": "await new Promise(() => setTimeout(() => { while (true) {} }, 20))",
    "loop in a tick": "await new Promise(() => process.nextTick(() => { while (true) {} }))",
    "loop in an immediate": "await new Promise(() => setImmediate(() => { while (true) {} }))",
    "loop in a then": "await Promise.resolve().then(() => { while (true) {} })",
    "never settles": "await new Promise(() => {})",
    "sleeping loop": "while (true) { await new Promise((r) => setTimeout(r, 10)) }",
    "sleeping loop that swallows": "while (true) { try { await new Promise((r) => setTimeout(r, 10)) } catch {} }",
    "for await": "async function* ticks() { while (true) { await new Promise((r) => setTimeout(r, 5)); yield 1 } }\nfor await (const t of ticks()) { t }",
    "endless microtasks in for await": "for await (const t of { async *[Symbol.asyncIterator]() { while (true) yield 1 } }) { t }",
    "atomics": "Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0)",
    "child process": "import { execSync } from 'node:child_process'; execSync('sleep 60')",
    "child loop": "import { spawnSync as go } from 'node:child_process'; while (true) go('sleep', ['60'])",
    "printing": "while (true) console.log('x')",
    "web assembly": "const m = new WebAssembly.Module(new Uint8Array([0,97,115,109,1,0,0,0,1,4,1,96,0,0,3,2,1,0,7,5,1,1,102,0,0,10,9,1,7,0,3,64,12,0,11,11]));\n(new WebAssembly.Instance(m).exports['f'] as () => void)()",
    "last expression is a promise": "new Promise(() => {})",
    "prompt": None,
}


class Interrupt(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.client = Client()
        cls.client.run("let kept = 41; const slow = async (ms: number) => { await new Promise((r) => setTimeout(r, ms)); return ms }")
        cls.client.run("import { spawnSync } from 'node:child_process'")

    @classmethod
    def tearDownClass(cls):
        cls.client.stop()

    def stop_after(self, code, seconds=0.25):
        client = self.client
        client.drain()
        msg_id = client.kc.execute(code)
        while True:
            msg = client.kc.get_iopub_msg(timeout=20)
            if msg["parent_header"].get("msg_id") == msg_id and msg["msg_type"] == "execute_input":
                break
        time.sleep(seconds)
        took = client.interrupt()
        reply = client.collect(msg_id)
        return took, reply

    def test_every_kind_of_loop(self):
        for name, code in LOOPS.items():
            if code is None:
                continue
            with self.subTest(loop=name):
                took, reply = self.stop_after(code)
                self.assertEqual(reply["status"], "error")
                self.assertEqual(reply["ename"], "Interrupted")
                self.assertEqual([e["ename"] for e in reply.of("error")], ["Interrupted"])
                self.assertLess(took, 2)
                # Values stay, timers and waits work as before.
                after = self.client.run("kept++; await slow(15)")
                self.assertEqual(after.result, "15", after)

    def test_values_survive_in_number(self):
        before = int(self.client.run("kept").result)
        self.stop_after("kept = 1000; while (true) {}")
        self.assertEqual(self.client.run("kept").result, "1000")
        self.client.run(f"kept = {before}")

    def test_names_of_an_interrupted_cell_are_rolled_back(self):
        self.client.run("const rolled = 'before'")
        self.stop_after("const reached = 7; while (true) {}; const rolled = 'after'")
        self.assertEqual(self.client.run("[reached, rolled]").result, "[ 7, 'before' ]")

    def test_the_signal_fires_and_clean_up_runs(self):
        self.stop_after(
            "let seen = 'no'; signal.addEventListener('abort', () => { seen = 'signal' });\n"
            "let cleaned = false; try { await new Promise(() => {}) } finally { cleaned = true }"
        )
        self.assertEqual(self.client.run("[seen, cleaned, signal.aborted]").result, "[ 'signal', true, false ]")

    def test_an_interrupted_loop_does_not_go_on_in_the_dark(self):
        self.stop_after("let beats = 0; while (true) { try { await slow(5) } catch {} beats++ }")
        first = int(self.client.run("beats").result)
        time.sleep(0.2)
        self.assertLessEqual(int(self.client.run("beats").result) - first, 0)

    def test_queued_cells_are_dropped(self):
        client = self.client
        client.drain()
        first = client.kc.execute("while (true) {}")
        second = client.kc.execute("kept = -1")
        time.sleep(0.3)
        client.interrupt()
        self.assertEqual(client.reply_to(first)["content"]["status"], "error")
        self.assertEqual(client.reply_to(second)["content"]["status"], "aborted")
        self.assertNotEqual(client.run("kept").result, "-1")

    def test_an_idle_kernel_takes_an_interrupt_calmly(self):
        self.client.drain()
        for _ in range(5):
            self.assertLess(self.client.interrupt(), 1)
        self.assertEqual(self.client.run("1 + 1").result, "2")

    def test_a_background_loop_is_stopped_while_idle(self):
        self.client.drain()
        self.client.run("setTimeout(() => { while (true) {} }, 50); 'begun'")
        time.sleep(0.3)
        self.assertLess(self.client.interrupt(), 2)
        self.assertEqual(self.client.run("await slow(10)").result, "10")

    def test_interrupts_in_quick_succession(self):
        for pause in (0, 0.01, 0.04, 0.07, 0.08, 0.09, 0.1):
            took, reply = self.stop_after("for (;;) {}", pause)
            self.assertEqual(reply["ename"], "Interrupted")
        self.assertEqual(self.client.run("2 + 2").result, "4")

    def test_a_short_cell_is_not_hurt_by_a_late_interrupt(self):
        for i in range(20):
            msg_id = self.client.kc.execute(f"let late{i} = {i}; late{i}")
            self.client.interrupt()
            reply = self.client.collect(msg_id)
            self.assertIn(reply["status"], ("ok", "error"))
            self.assertEqual(self.client.run("3 * 3").result, "9")


if __name__ == "__main__":
    unittest.main()
