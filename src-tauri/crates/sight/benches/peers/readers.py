"""What zbar and OpenCV read in pictures: paths on the standard input, a line of JSON for each peer and picture.

With --cleaned, what zbar reads off copies that were smoothed, thresholded and enlarged: a second opinion on a picture's text.
A peer's time is the processor's, from the file's bytes to the texts, as ours is.
"""

import json
import sys
import time

import cv2
import numpy
from pyzbar import pyzbar

# One thread, so that the thread's time is all of it.
cv2.setNumThreads(1)
plain, by_marker = cv2.QRCodeDetector(), cv2.QRCodeDetectorAruco()


def zbar(file):
    grey = cv2.imdecode(file, cv2.IMREAD_GRAYSCALE)
    found = pyzbar.decode(grey, symbols=[pyzbar.ZBarSymbol.QRCODE])
    return [code.data.decode(errors="replace") for code in found]


def opencv(detector):
    def read(file):
        colours = cv2.imdecode(file, cv2.IMREAD_COLOR)
        texts = [text for text in detector.detectAndDecodeMulti(colours)[1] if text]
        # The one-code call reads pictures that the other misses.
        return texts or [text for text in [detector.detectAndDecode(colours)[0]] if text]

    return read


def zbar_cleaned(file):
    grey = cv2.imdecode(file, cv2.IMREAD_GRAYSCALE)
    found = set()
    for reach in (1, 3, 5):
        smooth = cv2.blur(grey, (reach, reach))
        for level in range(60, 240, 20):
            dark = cv2.threshold(smooth, level, 255, cv2.THRESH_BINARY)[1]
            large = cv2.resize(dark, None, fx=2, fy=2, interpolation=cv2.INTER_NEAREST)
            framed = cv2.copyMakeBorder(large, 40, 40, 40, 40, cv2.BORDER_CONSTANT, value=255)
            codes = pyzbar.decode(framed, symbols=[pyzbar.ZBarSymbol.QRCODE])
            found.update(code.data.decode(errors="replace") for code in codes)
    return sorted(found)


PEERS = {"zbar, cleaned": zbar_cleaned} if "--cleaned" in sys.argv else {
    "zbar": zbar,
    f"OpenCV {cv2.__version__}": opencv(plain),
    f"OpenCV {cv2.__version__}, markers": opencv(by_marker),
}

for line in sys.stdin:
    path = line.rstrip("\n")
    file = numpy.fromfile(path, numpy.uint8)
    for peer, read in PEERS.items():
        began = time.thread_time()
        try:
            texts = read(file)
        except (cv2.error, UnicodeDecodeError):
            texts = []
        print(json.dumps({"path": path, "peer": peer, "texts": texts, "seconds": time.thread_time() - began}))
    sys.stdout.flush()
