/**
 * Reads codes with the camera. No picture is kept, none leaves the phone; when it is stopped, the camera goes dark.
 * The decoder is fetched only when a camera is started, and only where the browser has none of its own.
 */

export type CameraFailure =
  /** The reader or the phone's settings said no, or reading was stopped meanwhile. */
  | 'refused'
  /** There is no camera, this browser gives none to a page, or what reads codes could not be fetched. */
  | 'none'
  /** Another program holds it. */
  | 'busy';
export type CameraResult = { ok: true } | { ok: false; reason: CameraFailure };

export interface CodeCamera {
  /** Shows the camera in `video` and begins to read. Started again, it first stops. */
  start(video: HTMLVideoElement): Promise<CameraResult>;
  /** Calls back with the text of each code seen; the same one again as often as it is seen. Returns a way to stop. */
  onText(listener: (text: string) => void): () => void;
  /** Ends reading and gives the camera back. Safe to call again. */
  stop(): void;
}

/** What reads one picture: a text, or nothing where no code is seen. */
type ReadPicture = (video: HTMLVideoElement) => Promise<string | undefined>;

interface NativeDetector {
  detect(source: HTMLVideoElement): Promise<{ rawValue: string }[]>;
}
interface NativeDetectorClass {
  new (options: { formats: string[] }): NativeDetector;
  getSupportedFormats(): Promise<string[]>;
}

/** Codes move four times a second; looking more than twice as often would only warm the phone. */
const LOOK_EVERY_MS = 90;
/** How long one picture may be tried again; the next one is often better. */
const TRY_MS = 50;
/** Wider pictures take longer and read no better. */
const WIDEST = 800;

/** What a browser's refusal of the camera means. */
export function cameraFailureOf(error: unknown): CameraFailure {
  const name = error instanceof Error ? error.name : '';
  if (name === 'NotAllowedError' || name === 'SecurityError') return 'refused';
  if (name === 'NotReadableError' || name === 'AbortError') return 'busy';
  return 'none';
}

/** This device's camera, dark until it is started. */
export function browserCodeCamera(): CodeCamera {
  const listeners = new Set<(text: string) => void>();
  let stream: MediaStream | undefined;
  let shownIn: HTMLVideoElement | undefined;
  /** Counts starts and stops: whatever belongs to an earlier one ends by itself. */
  let turn = 0;

  function stop(): void {
    turn++;
    stream?.getTracks().forEach((track) => track.stop());
    stream = undefined;
    if (shownIn) shownIn.srcObject = null;
    shownIn = undefined;
  }

  async function look(video: HTMLVideoElement, read: ReadPicture, mine: number): Promise<void> {
    while (mine === turn) {
      const text = await read(video).catch(() => undefined);
      if (mine !== turn) return;
      if (text !== undefined) for (const listener of [...listeners]) listener(text);
      await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY_MS));
    }
  }

  return {
    async start(video) {
      stop();
      const mine = turn;
      const devices = typeof navigator === 'undefined' ? undefined : navigator.mediaDevices;
      if (!devices?.getUserMedia) return { ok: false, reason: 'none' };
      try {
        // first what reads: a camera that is on and reads nothing would only be puzzling
        const read = await reader();
        if (mine !== turn) return { ok: false, reason: 'refused' };
        const given = await devices.getUserMedia({
          // the camera that looks away from the reader; one that only looks at the reader is better than none
          video: { facingMode: { ideal: 'environment' }, width: { ideal: 1280 }, height: { ideal: 720 } },
          audio: false,
        });
        if (mine !== turn) {
          // stopped while the browser asked: the camera must not stay on
          given.getTracks().forEach((track) => track.stop());
          return { ok: false, reason: 'refused' };
        }
        stream = given;
        shownIn = video;
        video.srcObject = given;
        video.muted = true;
        video.setAttribute('playsinline', '');
        await video.play();
        if (mine !== turn) return { ok: false, reason: 'refused' };
        void look(video, read, mine);
        return { ok: true };
      } catch (error) {
        if (mine === turn) stop();
        return { ok: false, reason: cameraFailureOf(error) };
      }
    },
    onText(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    stop,
  };
}

/** The browser's own reader of codes, where it has one that knows them; else ours. */
async function reader(): Promise<ReadPicture> {
  const native = (globalThis as { BarcodeDetector?: NativeDetectorClass }).BarcodeDetector;
  try {
    if (native && (await native.getSupportedFormats()).includes('qr_code')) {
      const detector = new native({ formats: ['qr_code'] });
      return async (video) => (await detector.detect(video))[0]?.rawValue;
    }
  } catch {
    // a reader that is there in name only
  }
  const { decodeQR } = await import('qr/decode.js');
  const canvas = document.createElement('canvas');
  const context = canvas.getContext('2d', { willReadFrequently: true });
  return async (video) => {
    const { videoWidth, videoHeight } = video;
    if (!context || !videoWidth || !videoHeight) return undefined;
    const scale = Math.min(1, WIDEST / videoWidth);
    const width = Math.round(videoWidth * scale);
    const height = Math.round(videoHeight * scale);
    if (canvas.width !== width) canvas.width = width;
    if (canvas.height !== height) canvas.height = height;
    context.drawImage(video, 0, 0, width, height);
    try {
      return decodeQR(context.getImageData(0, 0, width, height), { timeLimit: TRY_MS });
    } catch {
      // most pictures hold no code
      return undefined;
    }
  };
}
