"""Starts a hub in a folder, opens a server and a kernel for each of two users, and runs cells in both at once."""
import asyncio
import json
import pathlib
import secrets
import shutil
import socket
import subprocess
import sys
import time
import uuid

from tornado.httpclient import AsyncHTTPClient, HTTPClientError, HTTPRequest
from tornado.websocket import websocket_connect

FOLDER = pathlib.Path(sys.argv[1])
ROOT = pathlib.Path(__file__).resolve().parents[2]
USERS = ("anna", "bert")
TOKEN = secrets.token_hex(16)


def free_port():
    with socket.socket() as s:
        s.bind(("127.0.0.1", 0))
        return s.getsockname()[1]


PORT, HUB_PORT, PROXY_PORT = free_port(), free_port(), free_port()
SITE = f"http://127.0.0.1:{PORT}"

CONFIG = f"""
c.JupyterHub.bind_url = "{SITE}"
c.JupyterHub.hub_port = {HUB_PORT}
c.ConfigurableHTTPProxy.api_url = "http://127.0.0.1:{PROXY_PORT}"
c.ConfigurableHTTPProxy.command = ["{FOLDER}/proxy/node_modules/.bin/configurable-http-proxy"]
c.JupyterHub.authenticator_class = "dummy"
c.JupyterHub.spawner_class = "simple"
c.SimpleLocalProcessSpawner.home_dir_template = "{FOLDER}/homes/{{username}}"
c.Spawner.args = ["--allow-root"]
c.Spawner.http_timeout = 120
c.Spawner.start_timeout = 120
# The kernel, installed once for all.
c.Spawner.environment = {{"JUPYTER_PATH": "{FOLDER}/shared/share/jupyter"}}
c.JupyterHub.services = [{{"name": "suite", "api_token": "{TOKEN}"}}]
c.JupyterHub.load_roles = [{{"name": "suite", "services": ["suite"], "scopes": ["admin:users", "admin:servers", "access:servers"]}}]
"""


async def fetch(path, method="GET", body=None):
    request = HTTPRequest(SITE + path, method=method, headers={"Authorization": f"token {TOKEN}"}, body=body, allow_nonstandard_methods=True, request_timeout=120)
    response = await AsyncHTTPClient().fetch(request)
    return json.loads(response.body) if response.body else None


async def eventually(work, seconds, what):
    end = time.monotonic() + seconds
    while True:
        try:
            found = await work()
            if found:
                return found
        except (HTTPClientError, OSError):
            pass
        if time.monotonic() > end:
            raise AssertionError(f"{what}: not within {seconds} s")
        await asyncio.sleep(0.5)


class User:
    """A user's server and kernel, reached as a browser does."""

    def __init__(self, name):
        self.name = name

    async def open(self):
        # The home that a hub's administrator makes: the shared notebooks read-only, a copy of one to work in.
        home = FOLDER / "homes" / self.name
        home.mkdir(parents=True)
        (home / "shared").symlink_to(FOLDER / "notebooks")
        shutil.copy(FOLDER / "notebooks" / "01-first-calculations.ipynb", home)
        await fetch(f"/hub/api/users/{self.name}", "POST", "{}")
        await fetch(f"/hub/api/users/{self.name}/server", "POST", "{}")

        async def ready():
            return (await fetch(f"/hub/api/users/{self.name}")).get("server")

        base = await eventually(ready, 120, f"the server of {self.name}")
        specs = await eventually(lambda: fetch(f"{base}api/kernelspecs"), 60, "the kernelspecs")
        assert "reckoner" in specs["kernelspecs"], specs["kernelspecs"].keys()
        listed = await fetch(f"{base}api/contents/")
        assert "01-first-calculations.ipynb" in [entry["name"] for entry in listed["content"]], listed
        self.kernel = await fetch(f"{base}api/kernels", "POST", json.dumps({"name": "reckoner"}))
        url = f"ws://127.0.0.1:{PORT}{base}api/kernels/{self.kernel['id']}/channels"
        self.socket = await websocket_connect(HTTPRequest(url, headers={"Authorization": f"token {TOKEN}"}))

    async def run(self, code):
        """Text of the result, and seconds until the reply."""
        header = {"msg_id": uuid.uuid4().hex, "msg_type": "execute_request", "session": self.name, "username": self.name, "version": "5.3", "date": ""}
        content = {"code": code, "silent": False, "store_history": True, "user_expressions": {}, "allow_stdin": False, "stop_on_error": True}
        start = time.monotonic()
        await self.socket.write_message(json.dumps({"header": header, "parent_header": {}, "metadata": {}, "content": content, "channel": "shell", "buffers": []}))
        result = seconds = None
        idle = False
        while seconds is None or not idle:
            message = json.loads(await asyncio.wait_for(self.socket.read_message(), 60))
            if message["parent_header"].get("msg_id") != header["msg_id"]:
                continue
            if message["msg_type"] == "execute_result":
                result = message["content"]["data"]["text/plain"]
            if message["msg_type"] == "execute_reply":
                if message["content"]["status"] != "ok":
                    raise AssertionError(f"{self.name}: {code}: {message['content']}")
                seconds = time.monotonic() - start
            idle = idle or message["content"].get("execution_state") == "idle"
        return result, seconds


def memory_mb(pid):
    with open(f"/proc/{pid}/status") as status:
        return next(int(line.split()[1]) for line in status if line.startswith("VmRSS")) / 1024


async def check():
    users = [User(name) for name in USERS]
    await asyncio.gather(*(user.open() for user in users))
    print("a server and a kernel for each of two users")
    await asyncio.gather(*(user.run(f"let who = '{user.name}'; const mine: number[] = []") for user in users))
    recipe = "movementAcross({ width: '640 mm', timber: 'white oak', cut: 'flat-sawn', from: '8 %', to: '12 %' }).change.toString()"
    answers = await asyncio.gather(*(user.run(recipe) for user in users))
    # Wood handbook FPL-GTR-190, Eq. 13-2: 640 mm x 0.00365 x 4 = 9.34 mm.
    assert all(text.startswith("'9.34 mm") for text, _ in answers), answers
    for round_no in range(20):
        await asyncio.gather(*(user.run(f"mine.push({round_no}); who") for user in users))
    kept = await asyncio.gather(*(user.run("`${who} ${mine.length}`") for user in users))
    assert [text for text, _ in kept] == [f"'{name} 20'" for name in USERS], kept
    pids = [(await user.run("process.pid"))[0] for user in users]
    assert len(set(pids)) == 2, pids
    print(f"both ran 23 cells at once, each with its own values; first recipe after {', '.join(f'{s:.2f}' for _, s in answers)} s; MB per kernel: {', '.join(f'{memory_mb(pid):.0f}' for pid in pids)}")
    for user in users:
        user.socket.close()
        await fetch(f"/hub/api/users/{user.name}/server", "DELETE")


def main():
    shutil.copytree(ROOT / "notebooks", FOLDER / "notebooks", ignore=shutil.ignore_patterns(".*"))
    for path in (FOLDER / "notebooks").glob("*.ipynb"):
        path.chmod(0o444)
    config = FOLDER / "jupyterhub_config.py"
    config.write_text(CONFIG)
    with open(FOLDER / "hub.log", "w") as log:
        hub = subprocess.Popen(["/usr/bin/jupyterhub", "-f", config], cwd=FOLDER, stdout=log, stderr=log)
        try:
            loop = asyncio.new_event_loop()
            loop.run_until_complete(eventually(lambda: fetch("/hub/api/"), 120, "the hub"))
            loop.run_until_complete(check())
            print("1 passed, 0 failed")
        except BaseException:
            print((FOLDER / "hub.log").read_text()[-4000:])
            print("0 passed, 1 failed")
            raise
        finally:
            hub.terminate()
            hub.wait(30)


main()
