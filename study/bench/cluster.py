"""A scheduler and two executors of `study` on this machine: the five questions, then one of them with an executor killed under it.

    python3 bench/cluster.py STUDY DIR [--parts 8] [--question first-press] [--spark]

STUDY is the binary built with `--features cluster`, DIR a folder it wrote. Executors are killed (SIGKILL) and the folder of what they
handed on is deleted with them, as if the machine were gone: once after half the time the question took before, and once as soon as
another part is under way at the executor after it handed one on. With --spark the anchor is Spark with two executors, one killed after
three quarters of the time, as half of it is spent on starting. Ends with an error where an answer differs from that of one process.
"""

import argparse
import os
import shutil
import signal
import subprocess
import sys
import tempfile
import time
from pathlib import Path

import watch
from compare import differing, machine, ours, theirs, took
from questions import QUESTIONS


class Cluster:
    """A scheduler and two executors of one thread each, as long as the block lasts."""

    def __init__(self, binary, lost_after):
        self.binary, self.lost_after, self.running = binary, lost_after, []

    def start(self, *words):
        process = subprocess.Popen([self.binary, *words], stdout=subprocess.PIPE, text=True)
        self.running.append(process)
        return process, process.stdout.readline().strip().split(": ", 1)[1]

    def __enter__(self):
        self.folder = tempfile.mkdtemp()
        _, self.address = self.start("scheduler", "--bind", "127.0.0.1:0", "--lost-after", str(self.lost_after))
        words = ["executor", "--scheduler", self.address, "--threads", "1", "--work", self.folder]
        self.executors = [self.start(*words) for _ in range(2)]
        return self

    def __exit__(self, *_):
        for process in self.running:
            if process.poll() is None:
                process.kill()
            process.wait()
        shutil.rmtree(self.folder)

    def lose(self, at):
        process, work = self.executors[at]
        process.kill()
        process.wait()
        shutil.rmtree(work)

    def ask(self, folder, question, parts, during=None):
        roots = [process.pid for process in self.running]
        return ours(self.binary, folder, question, parts, ["--scheduler", self.address], roots=roots, during=during)


def after(seconds, kill):
    """Kills when a question has run so long; the moment it did, or nothing where it was answered by then."""
    killed = []

    def during(process):
        time.sleep(seconds)
        if process.poll() is None:
            kill(process)
            killed.append(seconds)

    return during, killed


def once_written(work, kill):
    """Kills when an executor's folder holds outputs of two parts: the first is whole and handed on."""
    killed, begin = [], time.perf_counter()

    def during(process):
        while process.poll() is None:
            if len({path.parent for path in Path(work).rglob("data*.arrow")}) >= 2:
                kill(process)
                killed.append(time.perf_counter() - begin)
                return
            time.sleep(0.005)

    return during, killed


def kill_one_of_spark(process):
    """One of the processes that Spark started to work for it."""
    for pid in sorted(watch.descendants([process.pid], watch.processes())):
        if b"CoarseGrainedExecutorBackend" in Path(f"/proc/{pid}/cmdline").read_bytes():
            os.kill(pid, signal.SIGKILL)
            return
    raise SystemExit("Spark has no executor to kill")


def main():
    read = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    read.add_argument("study")
    read.add_argument("dir", type=Path)
    read.add_argument("--parts", type=int, default=8)
    read.add_argument("--question", choices=list(QUESTIONS), default="first-press")
    read.add_argument("--lost-after", type=int, default=30)
    read.add_argument("--spark", action="store_true")
    asked = read.parse_args()
    print(f"{machine(asked.dir)}; two executors of one thread, {asked.parts} parts\n")
    print("| question | as | s | of processor | MiB at most | killed after s | values compared | differ |")
    print("| --- | --- | --- | --- | --- | --- | --- | --- |")
    wrong = 0

    def told(question, called, mine, other, its, killed="–"):
        nonlocal wrong
        compared, differs = differing(question, mine, other, called)
        wrong += differs
        print(f"| {question} | {called} | {took(*its)} | {killed} | {compared} | {differs} |", flush=True)

    def none_as_python(rows):
        return [{name: None if value == "" else value for name, value in row.items()} for row in rows]

    alone, usual = {}, {}
    with Cluster(asked.study, asked.lost_after) as cluster:
        for question in QUESTIONS:
            alone[question], *its = ours(asked.study, asked.dir, question, 2)
            told(question, "one process, two threads", alone[question], none_as_python(alone[question]), its)
            rows, *its = cluster.ask(asked.dir, question, asked.parts)
            usual[question] = its[0]
            told(question, "scheduler and two executors", alone[question], none_as_python(rows), its)
    question = asked.question
    with Cluster(asked.study, asked.lost_after) as cluster:
        during, killed = after(usual[question] / 2, lambda _: cluster.lose(0))
        rows, *its = cluster.ask(asked.dir, question, asked.parts, during)
        told(question, "one killed in the middle", alone[question], none_as_python(rows), its, moment(killed))
    with Cluster(asked.study, asked.lost_after) as cluster:
        during, killed = once_written(cluster.executors[0][1], lambda _: cluster.lose(0))
        rows, *its = cluster.ask(asked.dir, question, asked.parts, during)
        told(question, "one killed after it handed a part on", alone[question], none_as_python(rows), its, moment(killed))
    if asked.spark:
        rows, *its = theirs("spark", asked.dir, question, 2, ["--executors"])
        told(question, "Spark, two executors", alone[question], rows, its)
        during, killed = after(its[0] * 0.75, kill_one_of_spark)
        rows, *its = theirs("spark", asked.dir, question, 2, ["--executors"], during=during)
        told(question, "Spark, one killed in the middle", alone[question], rows, its, moment(killed))
    sys.exit(1 if wrong else 0)


def moment(killed):
    if not killed:
        raise SystemExit("the question was answered before anybody could be killed: ask of more events")
    return f"{killed[0]:.1f}"


if __name__ == "__main__":
    main()
