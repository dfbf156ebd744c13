/** Why there is no live picture. */
export type NoCamera = 'absent' | 'refused';

/** The longer side of a frame that is read: enough for a label that fills a third of it. */
const LONGEST_SIDE = 1280;
const QUALITY = 0.85;

/** The phone's camera while the screen is open. */
export class Camera {
  stream: MediaStream | null = $state.raw(null);
  none: NoCamera | null = $state(available() ? null : 'absent');
  #wanted = false;

  async open(): Promise<void> {
    this.#wanted = true;
    try {
      const stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' }, audio: false });
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
export function still(video: HTMLVideoElement): Promise<Blob | null> {
  const { videoWidth, videoHeight } = video;
  const scale = Math.min(1, LONGEST_SIDE / Math.max(videoWidth, videoHeight));
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(videoWidth * scale);
  canvas.height = Math.round(videoHeight * scale);
  if (canvas.width === 0) return Promise.resolve(null);
  canvas.getContext('2d')?.drawImage(video, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve) => canvas.toBlob(resolve, 'image/jpeg', QUALITY));
}
