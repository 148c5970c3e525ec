"""Writes the built-in clip, www/sounds/speech.ulaw: a sentence of the project's own, spoken by a synthesiser, 12 kHz, 8-bit mu-law.

    apt-get install espeak-ng        # Debian 12: 1.51
    python3 scripts/lib/make_clip.py # numpy and scipy of requirements.txt

A raw synthetic voice is 7 to 11 dB too bright at 2.5 kHz, so its long-term spectrum is brought to that of speech (Byrne et
al. 1994, tests/vectors/hearing_ltass.tsv), band by band. espeak-ng is GPL-3.0-or-later; what a program is made to say is
its user's own, so the clip has the licences of the project, MIT or Apache-2.0, like the sentence."""
import io
import pathlib
import subprocess

import numpy as np
from scipy.io import wavfile
from scipy.signal import resample_poly

ROOT = pathlib.Path(__file__).parents[2]
VOICE = ["-v", "en-us", "-s", "185", "-p", "38", "-g", "1"]
SENTENCE = "Marram Point is on the air. Sixty fresh fish, and the tide at half past seven."
RATE = 12000
SECONDS = 5.6


def spoken(voice, sentence):
    """A sentence as the synthesiser says it at `RATE`, a twentieth of a second of silence about it."""
    said = subprocess.run(["espeak-ng", *voice, "--stdout", sentence], check=True, capture_output=True).stdout
    rate, wave = wavfile.read(io.BytesIO(said))
    wave = resample_poly(wave.astype(float), RATE, rate)
    loud = np.flatnonzero(np.abs(wave) > 0.02 * np.abs(wave).max())
    edge = RATE // 20
    return wave[max(loud[0] - edge, 0):loud[-1] + edge]


def matched(wave):
    """The wave with the long-term spectrum of speech, and how far the last round still moved it, in dB."""
    rows = [line.split("\t") for line in (ROOT / "tests/vectors/hearing_ltass.tsv").read_text().splitlines()[1:]]
    wanted = {float(row[0]): float(row[1]) for row in rows if 100 <= float(row[0]) <= 5000}
    middle = np.array(sorted(wanted))
    goal = np.array([wanted[hertz] for hertz in middle])
    hertz = np.fft.rfftfreq(len(wave), 1 / RATE)
    for _ in range(6):
        spectrum = np.fft.rfft(wave)
        inside = [(hertz >= f * 2 ** (-1 / 6)) & (hertz < f * 2 ** (1 / 6)) for f in middle]
        level = np.array([10 * np.log10(np.sum(np.abs(spectrum[band]) ** 2) + 1e-9) for band in inside])
        gain = np.clip(goal - goal.mean() - (level - level.mean()), -25, 25)
        wave = np.fft.irfft(spectrum * 10 ** (np.interp(np.log(np.maximum(hertz, 1)), np.log(middle), gain) / 20), len(wave))
    return wave, np.abs(gain).max()


def mulaw(wave):
    size = np.minimum(np.abs(wave) * 8159, 8158) + 33
    segment = np.clip(np.floor(np.log2(size)).astype(int) - 5, 0, 7)
    step = np.clip(np.floor(size / 2.0 ** (segment + 1)).astype(int) - 16, 0, 15)
    code = (segment << 4) | step | np.where(wave < 0, 0x80, 0)
    taken = (~code & 0xFF).astype(np.uint8)
    # no line feed, so that no tool takes the file for lines of text: the next level down is a 256th away
    taken[taken == 0x0A] = 0x0B
    return taken.tobytes()


def main():
    wave, off = matched(spoken(VOICE, SENTENCE)[:int(SECONDS * RATE)])
    fade = np.minimum(1, np.minimum(np.arange(len(wave)), np.arange(len(wave))[::-1]) / (RATE * 0.02))
    wave = np.clip(0.9 * wave * fade / np.percentile(np.abs(wave), 99.97), -1, 1)
    (ROOT / "www/sounds").mkdir(exist_ok=True)
    (ROOT / "www/sounds/speech.ulaw").write_bytes(mulaw(wave))
    print(f"{len(wave) / RATE:.2f} s, off by {off:.2f} dB at most")


if __name__ == "__main__":
    main()
