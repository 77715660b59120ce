"""Times kernels over plain ZeroMQ sockets, without a client library. Started by kernel.mjs."""
import os
import statistics
import sys
import time

import zmq
from jupyter_client.manager import KernelManager
from jupyter_client.session import Session

ROUNDS = int(sys.argv[1]) if len(sys.argv) > 1 else 20
WARM = 20

RECIPE = "equilibriumMoisture({ temperature: '21 degC', humidity: '50 %' }).moisture"

CHART = "equilibriumMoisture({ temperature: '20 degC', humidity: '60 %' })"


def lines_ts(n):
    return "\n".join(f"const w{n}_{i} = [1, 2, 3].map((x) => x * {i + n}).reduce((sum, x) => sum + x, 0);" for i in range(30))


def lines_py(n):
    return "\n".join(f"w{n}_{i} = sum([x * {i + n} for x in [1, 2, 3]])" for i in range(30))


KERNELS = {
    "reckoner": {"first": RECIPE, "lines": lines_ts, "log": "for (let i = 0; i < 20000; i++) console.log(i)"},
    "python3": {"first": "1+1", "lines": lines_py, "log": "for i in range(20000): print(i)"},
    "plain-tslab": {"first": "1+1", "lines": lines_ts, "log": "for (let i = 0; i < 20000; i++) console.log(i)"},
}


class Raw:
    def __init__(self, name, **environment):
        self.name = name
        self.km = KernelManager(kernel_name=name)
        self.begin = time.perf_counter()
        self.km.start_kernel(stderr=open(os.devnull, "w"), env={**os.environ, **environment})
        info = self.km.get_connection_info()
        self.session = Session(key=info["key"], signature_scheme=info["signature_scheme"])
        self.ctx = zmq.Context()
        url = f"tcp://{info['ip']}:"
        self.shell = self.ctx.socket(zmq.DEALER)
        self.shell.linger = 0
        self.iopub = self.ctx.socket(zmq.SUB)
        self.iopub.linger = 0
        self.iopub.subscribe(b"")
        self.shell.connect(url + str(info["shell_port"]))
        self.iopub.connect(url + str(info["iopub_port"]))
        self.poller = zmq.Poller()
        self.poller.register(self.shell, zmq.POLLIN)
        self.poller.register(self.iopub, zmq.POLLIN)

    def kernel_info(self):
        """Asks until the kernel is heard on both sockets; seconds since the start."""
        heard = set()
        while len(heard) < 2:
            self.session.send(self.shell, "kernel_info_request", {})
            until = time.perf_counter() + (0.1 if heard else 30)
            while len(heard) < 2 and time.perf_counter() < until:
                for sock, _ in self.poller.poll(5):
                    self.session.recv(sock)
                    if not heard:
                        # A subscriber may miss what was published before it had joined: then it is asked again.
                        until = time.perf_counter() + 0.05
                    heard.add(sock)
        self.drain()
        return time.perf_counter() - self.begin

    def drain(self, quiet=20):
        while self.poller.poll(quiet):
            for sock, _ in self.poller.poll(0):
                self.session.recv(sock)

    def run(self, code, timeout=30.0):
        """Seconds until the reply and the idle status are both here, and the lines printed meanwhile."""
        start = time.perf_counter()
        sent = self.session.send(
            self.shell, "execute_request",
            {"code": code, "silent": False, "store_history": True, "user_expressions": {}, "allow_stdin": False, "stop_on_error": True},
        )
        msg_id, lines, reply, idle, last = sent["header"]["msg_id"], 0, None, False, None
        while not (reply and idle) and time.perf_counter() - start < timeout:
            # Plain tslab loses its idle after much output: it is not waited for long.
            ready = self.poller.poll(100 if reply and self.name == "plain-tslab" else 2000)
            if not ready and reply:
                break
            for sock, _ in ready:
                while True:
                    try:
                        _, msg = self.session.recv(sock)
                    except zmq.Again:
                        break
                    if msg is None:
                        break
                    if msg["parent_header"].get("msg_id") != msg_id:
                        continue
                    if msg["msg_type"] == "execute_reply":
                        reply = msg["content"]
                    elif msg["msg_type"] == "stream":
                        lines += msg["content"]["text"].count("\n")
                    elif msg["msg_type"] == "status" and msg["content"]["execution_state"] == "idle":
                        idle = True
                    last = time.perf_counter()
        if reply is None or reply["status"] != "ok":
            raise RuntimeError(f"{self.name}: {code[:60]}: {reply}")
        return last - start, lines

    def processor_ms(self):
        """Processor time of all its threads: what the wall clock would show on a machine with nothing else to do, or more."""
        with open(f"/proc/{self.km.provisioner.pid}/stat") as stat:
            user, system = stat.read().rsplit(")", 1)[1].split()[11:13]
        return (int(user) + int(system)) * 1000 / os.sysconf("SC_CLK_TCK")

    def memory(self):
        with open(f"/proc/{self.km.provisioner.pid}/status") as status:
            return next(int(line.split()[1]) for line in status if line.startswith("VmRSS")) / 1024

    def stop(self):
        self.km.shutdown_kernel(now=True)
        self.shell.close()
        self.iopub.close()
        self.ctx.term()


def measure(name):
    k = Raw(name)
    spec = KERNELS[name]
    try:
        got = {"kernel_info ms": k.kernel_info() * 1000}
        k.run(spec["first"])
        got["first result ms"] = (time.perf_counter() - k.begin) * 1000
        got["work until then ms"] = k.processor_ms()
        got["memory after first result MB"] = k.memory()
        for _ in range(5):
            k.run("1+1")
        got["1+1 warm ms"] = statistics.median(k.run("1+1")[0] for _ in range(WARM)) * 1000
        for n in range(3):
            k.run(spec["lines"](900 + n))
        got["30 lines ms"] = statistics.median(k.run(spec["lines"](n))[0] for n in range(WARM)) * 1000
        k.run(spec["first"])
        got["memory after 50 cells MB"] = k.memory()
        if name == "reckoner":
            got["recipe with table and chart ms"] = k.run(CHART)[0] * 1000
        seconds, lines = k.run(spec["log"])
        got["20000 log lines ms"] = seconds * 1000
        got["lines delivered"] = lines
        if name == "reckoner":
            for n in range(148):
                k.run(spec["lines"](n) if n % 3 == 0 else f"{n}+1")
            got["memory after 200 cells MB"] = k.memory()
        return got
    finally:
        k.stop()


def measure_small():
    """The kernel started for little memory."""
    k = Raw("reckoner", RECKONER_SMALL_MEMORY="1")
    try:
        k.kernel_info()
        k.run(KERNELS["reckoner"]["first"])
        return {
            "small-memory start: first result ms": (time.perf_counter() - k.begin) * 1000,
            "small-memory start: MB after it": k.memory(),
        }
    finally:
        k.stop()


# Ratios to Python's kernel in the same run, and megabytes.
RATIOS = {"first result ms": 0.85, "1+1 warm ms": 0.5, "30 lines ms": 2.5, "20000 log lines ms": 0.5}
MEGABYTES = {"memory after first result MB": 150, "memory after 50 cells MB": 165, "small-memory start: MB after it": 120}


def main():
    found = {name: [] for name in KERNELS}
    names = list(KERNELS)
    for name in names[:2]:
        measure(name)  # caches of disk and compiler
    time.sleep(9)
    for round_no in range(ROUNDS):
        for name in names[round_no % 3:] + names[: round_no % 3]:
            try:
                found[name].append(measure(name))
            except RuntimeError:
                # On a busy machine plain tslab drops a cell now and then; its round is left out.
                if name != "plain-tslab":
                    raise
        found["reckoner"][-1].update(measure_small())
        print(f"round {round_no + 1} of {ROUNDS}", file=sys.stderr, end="\r", flush=True)
    keys = list(found["reckoner"][0])
    medians = {name: {key: statistics.median([r.get(key, float("nan")) for r in rows] or [float("nan")]) for key in keys} for name, rows in found.items()}
    ours = medians["reckoner"]
    print(f"\nmedians of {ROUNDS} interleaved rounds{'':>9}" + "".join(f"{name:>14}" for name in names) + f"{'/ python3':>12}{'at most':>9}")
    missed = []
    for key in keys:
        ratio = ours[key] / medians["python3"][key]
        limit = RATIOS.get(key, MEGABYTES.get(key))
        is_over = limit is not None and (ratio if key in RATIOS else ours[key]) > limit
        if is_over:
            missed.append(key)
        verdict = "" if limit is None else f"{limit:>9}{' MB' if key in MEGABYTES else ''}{'  MISSED' if is_over else ''}"
        print(f"{key:<36}" + "".join(f"{medians[name][key]:>14.1f}" for name in names) + f"{ratio:>12.2f}" + verdict)
    growth = statistics.median(r["memory after 200 cells MB"] / r["memory after first result MB"] for r in found["reckoner"])
    print(f"memory after 200 cells is {growth:.2f} times that after the first result, at most 1.5{'  MISSED' if growth > 1.5 else ''}")
    lost = [r["lines delivered"] for r in found["reckoner"] if r["lines delivered"] != 20000]
    if lost:
        print(f"lines lost: {lost}")
    sys.exit(1 if missed or lost or growth > 1.5 else 0)


main()
