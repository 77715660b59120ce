"""A kernel under test and the few moves the suites make with it."""
import contextlib
import time
from queue import Empty

from jupyter_client.manager import start_new_kernel
from jupyter_kernel_test.msgspec_v5 import validate_message

KERNEL = "reckoner"
TIMEOUT = 30


def check(msg):
    """The message against the suite's schemas. They know no comms, and spell the status of a dropped cell otherwise."""
    if not msg["msg_type"].startswith("comm_") and msg["content"].get("status") != "aborted":
        validate_message(msg)


class Reply(dict):
    """The reply's content and everything that came on iopub for it."""

    def __init__(self, content, outputs):
        super().__init__(content)
        self.outputs = outputs

    def of(self, msg_type):
        return [m["content"] for m in self.outputs if m["msg_type"] == msg_type]

    @property
    def stdout(self):
        return "".join(c["text"] for c in self.of("stream") if c["name"] == "stdout")

    @property
    def stderr(self):
        return "".join(c["text"] for c in self.of("stream") if c["name"] == "stderr")

    @property
    def result(self):
        found = self.of("execute_result")
        return found[0]["data"]["text/plain"] if found else None


class Client:
    def __init__(self):
        self.km, self.kc = start_new_kernel(kernel_name=KERNEL)

    def stop(self):
        self.kc.stop_channels()
        self.km.shutdown_kernel(now=True)

    def drain(self):
        with contextlib.suppress(Empty):
            while True:
                self.kc.get_iopub_msg(timeout=0.05)
        with contextlib.suppress(Empty):
            while True:
                self.kc.get_shell_msg(timeout=0.02)

    def reply_to(self, msg_id, timeout=TIMEOUT):
        end = time.monotonic() + timeout
        while True:
            msg = self.kc.get_shell_msg(timeout=max(0.01, end - time.monotonic()))
            if msg["parent_header"].get("msg_id") == msg_id:
                check(msg)
                return msg

    def outputs_of(self, msg_id, timeout=TIMEOUT):
        """Everything on iopub for one request, up to its idle."""
        found = []
        end = time.monotonic() + timeout
        while True:
            msg = self.kc.get_iopub_msg(timeout=max(0.01, end - time.monotonic()))
            if msg["parent_header"].get("msg_id") != msg_id:
                continue
            check(msg)
            if msg["msg_type"] == "status":
                if msg["content"]["execution_state"] == "idle":
                    return found
                continue
            found.append(msg)

    def run(self, code, timeout=TIMEOUT, **options):
        msg_id = self.kc.execute(code, **options)
        return self.collect(msg_id, timeout)

    def collect(self, msg_id, timeout=TIMEOUT):
        reply = self.reply_to(msg_id, timeout)
        return Reply(reply["content"], self.outputs_of(msg_id, timeout))

    def ask(self, method, *args, **kwargs):
        msg_id = getattr(self.kc, method)(*args, **kwargs)
        return self.reply_to(msg_id)["content"]

    def control(self, msg_type, content=None, timeout=TIMEOUT):
        msg = self.kc.session.msg(msg_type, content or {})
        self.kc.control_channel.send(msg)
        end = time.monotonic() + timeout
        while True:
            reply = self.kc.get_control_msg(timeout=max(0.01, end - time.monotonic()))
            if reply["parent_header"].get("msg_id") == msg["header"]["msg_id"]:
                return reply

    def interrupt(self, timeout=TIMEOUT):
        """Interrupts by message and waits for the reply; returns the seconds it took."""
        start = time.monotonic()
        reply = self.control("interrupt_request", timeout=timeout)
        assert reply["msg_type"] == "interrupt_reply", reply["msg_type"]
        assert reply["content"]["status"] == "ok"
        return time.monotonic() - start
