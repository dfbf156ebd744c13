/** Why there is no live picture. */
export type NoCamera = 'absent' | 'refused';

/** The longer side of a frame that is read, in px: small enough for a slow phone to keep pace. */
const LONGEST_SIDE = 640;
/** The camera's own picture may be finer: its middle is then looked at without being made smaller. */
const WANTED_SIDE = 1280;
const QUALITY = 0.9;

/** What of the camera's picture a frame shows: all of it, or its middle as sharp as the camera gives it. */
export type Look = 'whole' | 'middle';

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

/** What the camera sees now, as a JPEG; null before its first picture. */
export function still(video: HTMLVideoElement, look: Look): Promise<Blob | null> {
  const { videoWidth, videoHeight } = video;
  const [x, y, width, height] = seen(videoWidth, videoHeight, look);
  const scale = Math.min(1, LONGEST_SIDE / Math.max(width, height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(width * scale);
  canvas.height = Math.round(height * scale);
  const draw = canvas.getContext('2d');
  if (canvas.width === 0 || !draw) return Promise.resolve(null);
  draw.drawImage(video, x, y, width, height, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve) => canvas.toBlob(resolve, 'image/jpeg', QUALITY));
}

/** The part of a picture that a frame shows: where it begins, its width and its height. */
export function seen(width: number, height: number, look: Look): [x: number, y: number, width: number, height: number] {
  const part = look === 'whole' ? 1 : Math.min(1, LONGEST_SIDE / Math.max(width, height, 1));
  const [wide, high] = [Math.round(width * part), Math.round(height * part)];
  return [Math.round((width - wide) / 2), Math.round((height - high) / 2), wide, high];
}
