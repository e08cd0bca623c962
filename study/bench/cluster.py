"""A scheduler and two executors of `study` on this machine: the five questions, then one of them with an executor killed under it.

    python3 bench/cluster.py STUDY DIR [--parts 8] [--question first-press] [--spark]

STUDY is the binary built with `--features cluster`, DIR a folder it wrote. Executors are killed (SIGKILL) and the folder of what they
handed on is deleted with them, as if the machine were gone: once while the other hands its first part on, once when it has handed a
part on itself. With --spark the anchor is Spark with two executors, one killed in the middle. Ends with an error where an answer
differs from that of one process.
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


def once(come, kill):
    """Kills as soon as something has come; the seconds by then, or nothing where the answer came first."""
    killed, begin = [], time.perf_counter()

    def during(process):
        while process.poll() is None:
            if come(process):
                kill(process)
                killed.append(time.perf_counter() - begin)
                return
            time.sleep(0.005)

    return during, killed


def parts(work):
    """Of how many parts an executor's folder holds outputs: all but the last are whole and handed on."""
    return len({path.parent for path in Path(work).rglob("data*.arrow")})


def executors_of_spark(process):
    """Processes that Spark started to work for it, and their seconds of processor."""
    found, busy = watch.processes(), {}
    for pid in watch.descendants([process.pid], found):
        try:
            if b"CoarseGrainedExecutorBackend" in Path(f"/proc/{pid}/cmdline").read_bytes():
                busy[pid] = found[pid][1]
        except OSError:
            pass  # it has ended meanwhile
    return busy


def spark(asked, told):
    """Spark by two executors: undisturbed, then with the busier one killed when it has done two thirds of what it did before."""
    most = [0.0]

    def look(process):
        most[0] = max([most[0], *executors_of_spark(process).values()])
        return False

    def kill(process):
        busy = executors_of_spark(process)
        os.kill(max(busy, key=busy.get), signal.SIGKILL)

    during, _ = once(look, None)
    rows, *its = theirs("spark", asked.dir, asked.question, 2, ["--executors"], during=during)
    told("Spark, two executors", rows, its)
    busy_enough = lambda process: max(executors_of_spark(process).values(), default=0.0) > most[0] * 2 / 3  # noqa: E731
    during, killed = once(busy_enough, kill)
    rows, *its = theirs("spark", asked.dir, asked.question, 2, ["--executors"], during=during)
    told("Spark, one killed in the middle", rows, its, moment(killed))


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

    def line(question, called, its, *rest):
        print(f"| {question} | {called} | {took(*its)} | {' | '.join(map(str, rest))} |", flush=True)

    def told(question, called, mine, other, its, killed="–"):
        nonlocal wrong
        compared, differs = differing(question, mine, other, called)
        wrong += differs
        line(question, called, its, killed, compared, differs)

    alone = {}
    with Cluster(asked.study, asked.lost_after) as cluster:
        for question in QUESTIONS:
            alone[question], *its = ours(asked.study, asked.dir, question, 2)
            line(question, "one process, two threads", its, "–", "–", "–")
            rows, *its = cluster.ask(asked.dir, question, asked.parts)
            told(question, "scheduler and two executors", alone[question], rows, its)
    question = asked.question
    kills = {
        "one killed as the other hands its first part on": lambda of: parts(of[1][1]) >= 1,
        "one killed as it begins its second part": lambda of: parts(of[0][1]) >= 2,
    }
    for called, come in kills.items():
        with Cluster(asked.study, asked.lost_after) as cluster:
            during, killed = once(lambda _: come(cluster.executors), lambda _: cluster.lose(0))
            rows, *its = cluster.ask(asked.dir, question, asked.parts, during)
            told(question, called, alone[question], rows, its, moment(killed))
    if asked.spark:
        spark(asked, lambda called, *answer: told(question, called, alone[question], *answer))
    sys.exit(1 if wrong else 0)


def moment(killed):
    if not killed:
        raise SystemExit("the question was answered before anybody could be killed: ask of more events")
    return f"{killed[0]:.1f}"


if __name__ == "__main__":
    main()
