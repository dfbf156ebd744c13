"""What zbar and OpenCV read in pictures: paths on the standard input, a line of JSON for each peer and picture.

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


PEERS = {
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
