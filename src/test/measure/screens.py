#!/usr/bin/env python3
"""Measures the screens in a pseudo-terminal: start, keys, memory, processor while idle.

Keys are measured in a list and, every 60 ms, in a card that is checked as it is typed; of a card only
the frame that shows the key counts, for what the check says comes by itself.

    src/test/measure/screens.py [--log FOLDER] [--runs 15] [--beside "nano|GNU nano"]

The log is copied and opened as the flier's own; without --log it is the demo's. Everything is a ratio or a difference within this one run:
the start stands beside `java -version` and beside another terminal program. A log of so many flights
is made by (the sizes the targets speak of are 10,000 and 100,000)

    mvn -q test-compile exec:java -Dexec.mainClass=padside.store.MadeLog \
        -Dexec.classpathScope=test -Dexec.args="FOLDER 10000"

The clock runs from just before the program is started until the last byte of the picture looked for
was read. Needs Linux and Python 3.9 or newer, nothing else.
"""

import argparse
import fcntl
import os
import pty
import re
import select
import shlex
import shutil
import signal
import statistics
import struct
import subprocess
import sys
import tempfile
import termios
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parents[3]
PADSIDE = str(ROOT / "bin" / "padside")
ESCAPES = re.compile(rb"\x1b\[[0-9;?]*[ -/]*[@-~]|\x1b[()][A-Z0-9]|\x1b[=>]|\x0f|\x0e")
SHOWN = re.compile(rb"F1 keys")  # at the foot of every screen
QUIET_S = 0.05  # a frame is one or two writes: nothing more for so long ends it
FRAME_S = 0.001  # between two writes of one frame
BETWEEN_KEYS_S = 0.06  # faster than anybody types
TOO_LONG_S = 60


class Terminal:
    """A program in a pseudo-terminal of 80 by 24."""

    def __init__(self, command, env):
        self.home = env["HOME"]
        self.began = time.perf_counter()
        self.pid, self.fd = pty.fork()
        if self.pid == 0:
            os.execvpe(command[0], command, env)
        fcntl.ioctl(self.fd, termios.TIOCSWINSZ, struct.pack("HHHH", 24, 80, 0, 0))
        self.text = b""

    def read(self, patience):
        """The bytes that came and when they were read; nothing after that patience."""
        ready, _, _ = select.select([self.fd], [], [], patience)
        if not ready:
            return b"", time.perf_counter()
        try:
            data = os.read(self.fd, 65536)
        except OSError:
            data = b""
        return data, time.perf_counter()

    def until(self, wanted):
        """Seconds from the start until the text stood in what was painted."""
        while time.perf_counter() - self.began < TOO_LONG_S:
            data, when = self.read(1)
            self.text += data
            if wanted.search(ESCAPES.sub(b"", self.text)):
                return when - self.began
        sys.exit("not seen: %r in\n%s" % (wanted.pattern, ESCAPES.sub(b"", self.text).decode(errors="replace")))

    def settle(self, quiet, patience=3):
        """Waits until nothing is painted, or a clock is that ticks."""
        until = time.perf_counter() + patience
        while self.read(quiet)[0] and time.perf_counter() < until:
            pass

    def key(self, text, quiet=QUIET_S):
        """Seconds from a key to the last byte before nothing comes for so long."""
        before = time.perf_counter()
        os.write(self.fd, text)
        data, last = self.read(1)
        while data:
            data, when = self.read(quiet)
            last = when if data else last
        return last - before

    def typed(self, text):
        """As key, until the first frame is whole; then the rest of the time between two keys."""
        before = time.perf_counter()
        took = self.key(text, FRAME_S)
        while time.perf_counter() - before < BETWEEN_KEYS_S:
            self.read(BETWEEN_KEYS_S / 10)
        return took

    def java(self):
        """The process of the program itself below its launcher."""
        for child in Path("/proc/%d/task/%d/children" % (self.pid, self.pid)).read_text().split():
            if "java" in Path("/proc/%s/comm" % child).read_text():
                return int(child)
        return self.pid

    def end(self):
        os.kill(self.java(), signal.SIGTERM)
        while True:
            done, _ = os.waitpid(self.pid, os.WNOHANG)
            if done:
                break
            self.read(0.05)
        os.close(self.fd)
        for place in Path(self.home).glob("**/place.json"):
            place.unlink()  # as if left by a key: the next start opens its first screen


def status(pid, name):
    line = next(l for l in Path("/proc/%d/status" % pid).read_text().splitlines() if l.startswith(name))
    return int(line.split()[1]) / 1024


def ticks(pid):
    fields = Path("/proc/%d/stat" % pid).read_text().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def spread(seconds):
    ordered = sorted(s * 1000 for s in seconds)
    at = lambda share: ordered[min(len(ordered) - 1, int(share * len(ordered)))]
    return "median %.1f ms, 90th %.1f, 99th of a hundred %.1f, most %.1f" % (
        statistics.median(ordered), at(0.90), at(0.99), ordered[-1])


def bare_java(runs):
    java = os.environ.get("PADSIDE_JAVA") or shutil.which("java")
    times = []
    for _ in range(runs):
        before = time.perf_counter()
        subprocess.run([java, "-version"], capture_output=True, check=True)
        times.append(time.perf_counter() - before)
    return times


def starts(command, env, wanted, runs):
    """Seconds until the picture, and the processor's, one pair a start."""
    times, worked = [], []
    for _ in range(runs):
        terminal = Terminal(command, env)
        times.append(terminal.until(wanted))
        worked.append(ticks(terminal.java()))
        terminal.settle(0.3)
        terminal.end()
    return times, worked


def own_log(home, env, log):
    """The log as the flier's own, whose clock was said to be right, and what starts it."""
    folder = Path(env["XDG_DATA_HOME"], "padside")
    if log:
        folder.mkdir(parents=True)
        shutil.copytree(log, folder / "log")
    else:
        demo = Terminal([PADSIDE, "demo"], env)
        demo.until(SHOWN)
        demo.end()
        (folder / "demo").rename(folder / "log")
    first = Terminal([PADSIDE], env)  # builds and prepares what is made once
    first.until(SHOWN)
    first.settle(1)
    first.key(b"\r")
    first.settle(1)
    first.key(b"\x1b")
    first.settle(1)
    first.end()


def in_card(terminal):
    """A new card of the rocket flown last, at the tilt of its rod, each change of which is checked."""
    for key in (b"n", b"\t", b"\x1b[A", b"\x1b[A"):
        terminal.key(key)
        terminal.settle(1)
    for i in range(40):
        terminal.typed(b"5" if i % 2 == 0 else b"\x7f")


def main():
    options = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    options.add_argument("--log", help="a log's folder; without it the demo's season")
    options.add_argument("--runs", type=int, default=15)
    options.add_argument("--keys", type=int, default=300)
    options.add_argument("--idle", type=int, default=20, help="seconds")
    options.add_argument("--beside", default="", help="another terminal program, and what it shows, by |")
    chosen = options.parse_args()
    home = tempfile.mkdtemp(prefix="padside-measure")
    env = dict(os.environ, HOME=home, TERM="xterm-256color", LC_ALL="C.UTF-8",
               XDG_DATA_HOME=home + "/data", XDG_CONFIG_HOME=home + "/config",
               XDG_STATE_HOME=home + "/state", XDG_CACHE_HOME=home + "/cache")
    command = [PADSIDE]
    try:
        own_log(home, env, chosen.log)
        java = bare_java(chosen.runs)
        print("java -version         ", spread(java))
        ours, worked = starts(command, env, SHOWN, chosen.runs)
        print("first screen          ", spread(ours))
        print("the difference         %.0f ms; ratio %.2f" % (
            1000 * (statistics.median(ours) - statistics.median(java)),
            statistics.median(ours) / statistics.median(java)))
        print("processor until then  ", spread(worked))
        if chosen.beside:
            other, shows = chosen.beside.rsplit("|", 1)
            theirs, _ = starts(shlex.split(other), env, re.compile(shows.encode()), chosen.runs)
            print("%-22s" % other[:22], spread(theirs))
        terminal = Terminal(command, env)
        terminal.until(SHOWN)
        terminal.settle(2)
        pid = terminal.java()
        print("resident memory        %.0f MB, at most %.0f MB" % (status(pid, "VmRSS"), status(pid, "VmHWM")))
        before, began = ticks(pid), time.perf_counter()
        terminal.settle(0.05)
        time.sleep(chosen.idle)
        print("idle processor         %.2f %%" % (100 * (ticks(pid) - before) / (time.perf_counter() - began)))
        down, up = b"\x1b[B", b"\x1b[A"
        for i in range(40):
            terminal.key(down if i % 2 == 0 else up)
        print("a key in the list     ", spread([terminal.key(down if i % 2 == 0 else up) for i in range(chosen.keys)]))
        in_card(terminal)
        before, began = ticks(pid), time.perf_counter()
        print("a key in a card        ", spread([terminal.typed(b"5" if i % 2 == 0 else b"\x7f") for i in range(chosen.keys)]))
        print("processor meanwhile    %.0f %%" % (100 * (ticks(pid) - before) / (time.perf_counter() - began)))
        print("resident memory        %.0f MB, at most %.0f MB" % (status(pid, "VmRSS"), status(pid, "VmHWM")))
        terminal.end()
    finally:
        shutil.rmtree(home, ignore_errors=True)


if __name__ == "__main__":
    main()
