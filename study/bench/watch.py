"""What processes take, by the same means for each engine: all of a process's descendants are counted, a JVM's executors too."""

import os
import subprocess
import threading
import time
from pathlib import Path

TICKS = os.sysconf("SC_CLK_TCK")
PAGE = os.sysconf("SC_PAGE_SIZE")
EVERY_S = 0.05


def processes():
    """Of every process: its parent, its seconds of processor, its bytes of memory."""
    found = {}
    for entry in Path("/proc").iterdir():
        if not entry.name.isdigit():
            continue
        try:
            # Its name stands in brackets and may hold blanks.
            fields = (entry / "stat").read_text().rpartition(")")[2].split()
        except OSError:
            continue  # it has ended meanwhile
        found[int(entry.name)] = (int(fields[1]), (int(fields[11]) + int(fields[12])) / TICKS, int(fields[21]) * PAGE)
    return found


def descendants(roots, found):
    """These processes and all that come from them."""
    of, grown = set(roots), True
    while grown:
        more = {pid for pid, (parent, _, _) in found.items() if parent in of} - of
        of |= more
        grown = bool(more)
    return of & set(found)


class Watch:
    """Looks every 50 ms. What a process did after the last look is lost; memory is that of all together at one look, pages that two
    share counted twice."""

    def __init__(self, roots):
        self.seen, self.peak, self.busy = set(roots), 0, {}
        found = processes()
        self.before = {pid: found[pid][1] for pid in descendants(self.seen, found)}
        self.stopped = threading.Event()
        self.thread = threading.Thread(target=self.look_often, daemon=True)

    def look(self):
        found = processes()
        # Who lost its parent is still of those seen.
        of = descendants(self.seen & set(found), found)
        self.seen |= of
        self.busy.update({pid: found[pid][1] for pid in of})
        self.peak = max(self.peak, sum(found[pid][2] for pid in of))

    def look_often(self):
        while not self.stopped.wait(EVERY_S):
            self.look()

    def __enter__(self):
        self.thread.start()
        return self

    def __exit__(self, *_):
        self.stopped.set()
        self.thread.join()
        self.look()

    @property
    def seconds(self):
        return sum(busy - self.before.get(pid, 0.0) for pid, busy in self.busy.items())


def run(command, roots=(), during=None):
    """Runs a command: what it said, seconds, seconds of processor, bytes at the most. Processes `roots` that work for it count as
    well. `during` is called with the process while it runs."""
    begin = time.perf_counter()
    process = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True)
    with Watch([process.pid, *roots]) as watch:
        if during:
            threading.Thread(target=during, args=(process,), daemon=True).start()
        said, errors = process.communicate()
    seconds = time.perf_counter() - begin
    if process.returncode:
        raise SystemExit(f"{' '.join(map(str, command))} ended with {process.returncode}:\n{errors[-3000:]}")
    return said, seconds, watch.seconds, watch.peak
