#!/usr/bin/env python3
"""The page in WebKit, by Debian's webkit2gtk-driver and xvfb: served and as a single file it answers the same, its swing is
dragged, every view opens, and a chest is kept over a reload. Needs the page of `dotnet build -c Release tests/Leverage.Page.Tests`.
"""
import json, os, subprocess, sys, time, urllib.request

ROOT = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))
BROWSER = "/usr/lib/x86_64-linux-gnu/webkit2gtk-4.1/MiniBrowser"
DRIVER, FILES = "http://127.0.0.1:8978", "http://127.0.0.1:8977"
SET_UP = ("torque=460Nm&thread=M24x1.5&grade=10.9&condition=used&drive=3/4&bar=600mm&bar-diameter=22mm&tube=33.7x3.2x1200mm"
          "&overlap=400mm&past-square=10deg&stance=stand-push&body=82kg&held-by=brake,chock&mass=1400kg")
VIEWS = ["tighten?thread=M12&torque=80Nm", "chest", "job", "tables", "lesson/1", "lesson/teacher"]


def call(method, path, body=None):
    data = None if body is None else json.dumps(body).encode()
    request = urllib.request.Request(DRIVER + path, data, {"Content-Type": "application/json"}, method=method)
    with urllib.request.urlopen(request, timeout=90) as reply:
        return json.load(reply)["value"]


def smoke(session):
    def script(text):
        return call("POST", f"/session/{session}/execute/sync", {"script": text, "args": []})

    def wait(text):
        for _ in range(240):
            if script(f"return {text}"):
                return
            time.sleep(0.25)
        sys.exit(f"never came: {text}")

    def answer(address):
        call("POST", f"/session/{session}/url", {"url": f"{address}#loosen?{SET_UP}"})
        wait("document.querySelector('.tell')?.dataset.answer")
        return script("return document.querySelector('.tell').dataset.answer")

    single = answer("file://" + os.path.join(ROOT, "artifacts", "leverage.html"))
    assert answer(f"{FILES}/index.html") == single, "served and single file answer differently"
    print("served and single file answer the same:", script("return document.getElementById('verdict').innerText"))
    x, y = script("const b = document.querySelector(\"[data-handle='swing of the bar'] .grip\").getBoundingClientRect();"
                  "return [Math.round(b.x + b.width / 2), Math.round(b.y + b.height / 2)]")
    drag = [{"type": "pointerMove", "duration": 0, "x": x, "y": y}, {"type": "pointerDown", "button": 0},
            *({"type": "pointerMove", "duration": 30, "x": x - 10 * i, "y": y + 16 * i} for i in range(1, 16)), {"type": "pointerUp", "button": 0}]
    call("POST", f"/session/{session}/actions", {"actions": [{"type": "pointer", "id": "mouse", "actions": drag}]})
    wait("document.querySelector('.side svg').dataset.state === 'off' && /past-square=[3-8]/.test(location.hash)")
    print("the swing is dragged until the tube slides off:", script("return document.getElementById('word').textContent"))
    for view in VIEWS:
        script(f"location.hash = '#{view}'")
        wait("document.querySelector('main h1')?.textContent && !document.querySelector('main .refusal:not([hidden])')")
    script("location.hash = '#chest'")
    script("[...document.querySelectorAll('button')].find(each => each.textContent === 'start one').click()")
    wait("document.querySelector('main [role=status]').textContent.startsWith('Kept')")
    script("location.reload()")
    wait("document.getElementById('chest-text')?.value.length > 200")
    print("every view opens; the chest is kept over a reload")


def main():
    quiet = {"stdout": subprocess.DEVNULL, "stderr": subprocess.DEVNULL}
    started = [subprocess.Popen(command, **quiet, env={**os.environ, "DISPLAY": ":77"}) for command in (
        ["Xvfb", ":77", "-screen", "0", "1280x1000x24"],
        [sys.executable, "-m", "http.server", "8977", "--bind", "127.0.0.1", "-d", os.path.join(ROOT, "artifacts", "page")],
        ["WebKitWebDriver", "--port=8978", "--host=127.0.0.1"])]
    try:
        time.sleep(3)
        options = {"webkitgtk:browserOptions": {"binary": BROWSER, "args": ["--automation"]}}
        opened = call("POST", "/session", {"capabilities": {"alwaysMatch": options}})
        print("WebKitGTK", opened["capabilities"]["browserVersion"])
        smoke(opened["sessionId"])
        call("DELETE", f"/session/{opened['sessionId']}")
    finally:
        for process in reversed(started):
            process.terminate()


main()
