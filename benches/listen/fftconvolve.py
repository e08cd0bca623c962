"""The plain way: SciPy's fftconvolve of the sound with every clip at every speed, and how long it takes.

    fftconvolve.py CORPUS [--seconds 120]

CORPUS is one of `lab hearing scenes`, or of the `speed` example. Each clip is replayed at 94 to 104 % in steps of
0.05 % (201 speeds), as a coherent match needs, correlated with the sound at 8 kHz by overlap (`oaconvolve` if it is
quicker would be a fair rival too; the name of the yardstick is fftconvolve), normalised by local energy, and peaks over
0.25 are called presses. To spare the reader hours, a sample of the speeds can be timed and the rest extrapolated.
"""
import argparse
import json
import platform
import time
from pathlib import Path

import numpy as np
import scipy
import soundfile as sf
from scipy.signal import fftconvolve, resample_poly

RATE = 8000


def load(path):
    x, rate = sf.read(path)
    return resample_poly(x, RATE, rate).astype(np.float32)


def main():
    a = argparse.ArgumentParser()
    a.add_argument("corpus", type=Path)
    a.add_argument("--seconds", type=float, default=120)
    a.add_argument("--every", type=int, default=20, help="time one speed in so many, and multiply")
    a = a.parse_args()
    truth = json.loads((a.corpus / "truth.json").read_text())
    clips = [load(a.corpus / c["file"]) for c in truth["clips"]]
    sound = load(a.corpus / truth["sounds"][0]["file"])[: int(a.seconds * RATE)]
    speeds = np.arange(0.94, 1.0401, 0.0005)
    timed = speeds[:: a.every]
    print(f"python {platform.python_version()}, numpy {np.__version__}, scipy {scipy.__version__}, {platform.machine()}")
    start, peaks = time.process_time(), 0
    for clip in clips:
        for speed in timed:
            n = int(len(clip) / speed)
            x = np.interp(np.arange(n) * speed, np.arange(len(clip)), clip).astype(np.float32)
            c = fftconvolve(sound, x[::-1], mode="valid")
            energy = np.cumsum(np.concatenate([[0], sound.astype(np.float64) ** 2]))
            local = np.sqrt(np.maximum(energy[n:] - energy[:-n], 1e-9) * float(x @ x))
            peaks += int((np.abs(c) / local > 0.25).sum())
    took = (time.process_time() - start) * len(speeds) / len(timed)
    seconds = len(sound) / RATE
    print(f"{len(clips)} clips, {seconds:.0f} s of sound, {len(speeds)} speeds ({len(timed)} timed): "
          f"{took:.1f} s of processor time, {seconds / took:.2f} times real time, {seconds / took * 60 / 3600:.3f} hours a minute")


if __name__ == "__main__":
    main()
