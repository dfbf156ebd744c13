/** Why there is no live picture. */
export type NoCamera = 'absent' | 'refused';

/** The longer side of a frame that is read, in px: small enough for a slow phone to keep pace. */
const LONGEST_SIDE = 640;
/** The camera's own picture may be finer: its middle is then looked at without being made smaller. */
const WANTED_SIDE = 1280;

/** What of the camera's picture a frame shows: all of it, or its middle as sharp as the camera gives it. */
export type Look = 'whole' | 'middle';

/** What the camera saw: the light of each pixel, row by row, as the reader takes it. */
export interface CameraFrame {
  width: number;
  height: number;
  light: Uint8Array<ArrayBuffer>;
  /** The same to be looked at; null where the browser makes none. */
  picture: () => Promise<Blob | null>;
}

/** The phone's camera while the screen is open. */
export class Camera {
  stream: MediaStream | null = $state.raw(null);
  none: NoCamera | null = $state(available() ? null : 'absent');
  #wanted = false;

  async open(): Promise<void> {
    this.#wanted = true;
    try {
      const stream = await navigator.mediaDevices.getUserMedia({
        video: { facingMode: 'environment', width: { ideal: WANTED_SIDE } },
        audio: false,
      });
      // It was closed again while the person was being asked.
      if (this.#wanted) this.stream = stream;
      else stop(stream);
      this.none = null;
    } catch (cause) {
      this.none = cause instanceof DOMException && cause.name === 'NotAllowedError' ? 'refused' : 'absent';
    }
  }

  close(): void {
    this.#wanted = false;
    if (this.stream) stop(this.stream);
    this.stream = null;
  }
}

/** A page that is not trusted by the browser has no camera at all. */
function available(): boolean {
  return typeof navigator.mediaDevices?.getUserMedia === 'function';
}

function stop(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop();
}

/** Takes what a camera sees, frame by frame, in one canvas. */
export class FrameTaker {
  #canvas = document.createElement('canvas');
  // The pixels are wanted here at once, not on the screen.
  #draw = this.#canvas.getContext('2d', { willReadFrequently: true });

  /** What the camera sees now; null before its first picture. */
  take(video: HTMLVideoElement, look: Look): CameraFrame | null {
    const [x, y, wide, high] = seen(video.videoWidth, video.videoHeight, look);
    const scale = Math.min(1, LONGEST_SIDE / Math.max(wide, high));
    const [width, height] = [Math.round(wide * scale), Math.round(high * scale)];
    if (!this.#draw || width === 0 || height === 0) return null;
    Object.assign(this.#canvas, { width, height });
    this.#draw.drawImage(video, x, y, wide, high, 0, 0, width, height);
    const light = lightOf(this.#draw.getImageData(0, 0, width, height).data);
    return { width, height, light, picture: () => new Promise((resolve) => this.#canvas.toBlob(resolve)) };
  }
}

/** The light of pixels of red, green, blue and cover, as ITU-R BT.601 weighs it. */
export function lightOf(pixels: Uint8ClampedArray): Uint8Array<ArrayBuffer> {
  const light = new Uint8Array(pixels.length / 4);
  for (let at = 0, from = 0; at < light.length; at += 1, from += 4) {
    light[at] = ((pixels[from] ?? 0) * 77 + (pixels[from + 1] ?? 0) * 150 + (pixels[from + 2] ?? 0) * 29) >> 8;
  }
  return light;
}

/** The part of a picture that a frame shows: where it begins, its width and its height. */
export function seen(width: number, height: number, look: Look): [x: number, y: number, width: number, height: number] {
  const part = look === 'whole' ? 1 : Math.min(1, LONGEST_SIDE / Math.max(width, height, 1));
  const [wide, high] = [Math.round(width * part), Math.round(height * part)];
  return [Math.round((width - wide) / 2), Math.round((height - high) / 2), wide, high];
}
