"""Six synthetic voices with the long-term spectrum of speech, and how well they are understood after a circuit.

    stoi_bank.py speak FOLDER   # writes VOICE.f32 for each, at 12 kHz
    stoi_bank.py judge FOLDER   # reads VOICE.f32 with VOICE.1.f32 and VOICE.2.f32 at RATE of `rates`, prints a line a voice

STOI: Taal, Hendriks, Heusdens and Jensen 2011, as the package pystoi computes it. Noise is pink, the same for both
positions, as strong as the speech: at equal rms of the two, and at equal peak; the mean over ten noises."""
import json
import pathlib
import sys

import numpy as np
from pystoi import stoi
from scipy.signal import resample_poly

sys.path.insert(0, str(pathlib.Path(__file__).parents[1]))
from make_clip import RATE, matched, spoken  # noqa: E402

VOICES = {
    "low man": ["-v", "en-us+m3", "-s", "165", "-p", "25"],
    "man": ["-v", "en-us", "-s", "175", "-p", "40"],
    "quick man": ["-v", "en-us+m7", "-s", "200", "-p", "45"],
    "woman": ["-v", "en-us+f2", "-s", "170", "-p", "55"],
    "high woman": ["-v", "en-us+f4", "-s", "180", "-p", "70"],
    "old man": ["-v", "en-gb+m4", "-s", "150", "-p", "35"],
}
TEXT = (
    "Good evening from the coast. The wind is in the north west and the water is rough, but the aerial stands. "
    "I have forty watts here and a kettle on the stove. Please say again the name of your village, over."
)
JUDGED = 10000
# One noise moves the change of STOI by 0.01; the mean of so many by 0.003.
NOISES = 10


def speak(folder):
    for name, voice in VOICES.items():
        wave, _ = matched(spoken(voice, TEXT))
        (wave / np.abs(wave).max()).astype("<f4").tofile(folder / f"{name}.f32")


def pink(count, seed):
    """Equal in every third of an octave that a receiver of 4 kHz keeps: 160 Hz to 4 kHz, edges included."""
    hertz = np.fft.rfftfreq(count, 1 / JUDGED)
    kept = (hertz >= 160 * 2 ** (-1 / 6)) & (hertz <= 4000 * 2 ** (1 / 6))
    spectrum = np.fft.rfft(np.random.default_rng(seed).standard_normal(count))
    return np.fft.irfft(np.where(kept, spectrum / np.sqrt(np.maximum(hertz, 1)), 0), count)


def rms(wave):
    return np.sqrt(np.mean(wave**2))


def judged(folder, name, rate):
    clean = resample_poly(np.fromfile(folder / f"{name}.f32", "<f4").astype(float), JUDGED, RATE)
    waves = []
    for position in (1, 2):
        wave = np.fromfile(folder / f"{name}.{position}.f32", "<f4").astype(float)
        waves.append(resample_poly(wave, JUDGED, rate)[: len(clean)])
    told = {"voice": name}
    for way, size in (("rms", rms), ("peak", lambda wave: np.abs(wave).max())):
        first, second = (wave / size(wave) for wave in waves)
        changes = []
        for seed in range(NOISES):
            noise = pink(len(clean), seed)
            hiss = noise / rms(noise) * rms(first)
            changes.append(stoi(clean, second + hiss, JUDGED) - stoi(clean, first + hiss, JUDGED))
        told[way] = np.mean(changes)
    told["quiet"] = [stoi(clean, wave, JUDGED) for wave in waves]
    return told


if __name__ == "__main__":
    what, folder = sys.argv[1], pathlib.Path(sys.argv[2])
    if what == "speak":
        speak(folder)
    else:
        print(json.dumps([judged(folder, name, int(sys.argv[3])) for name in VOICES]))
