/** Reads square codes by the device's camera: the browser's own reader where it has one, else `qr`, fetched then. */
export type CameraFailure = 'refused' | 'none' | 'busy';
export type CameraStart = { ok: true } | { ok: false; reason: CameraFailure };

export interface CodeCamera {
  /** Shows what the camera sees in `video` and tells the content of every code it reads, again and again. */
  start(video: HTMLVideoElement, seen: (text: string) => void): Promise<CameraStart>;
  /** Gives the camera back. Safe at any time. */
  stop(): void;
}

interface OwnReader {
  detect(source: HTMLVideoElement): Promise<readonly { rawValue: string }[]>;
}
type OwnReaderMaker = (new (options: { formats: string[] }) => OwnReader) & {
  getSupportedFormats?(): Promise<string[]>;
};

/** Larger pictures take longer and are read no better. */
const WIDEST = 640;
const PAUSE_MS = 40;

function reasonOf(error: unknown): CameraFailure {
  const name = error instanceof Error ? error.name : '';
  if (name === 'NotAllowedError' || name === 'SecurityError') return 'refused';
  if (name === 'NotReadableError' || name === 'AbortError') return 'busy';
  return 'none';
}

async function ownReader(): Promise<OwnReader | undefined> {
  const Maker = (globalThis as { BarcodeDetector?: OwnReaderMaker }).BarcodeDetector;
  if (!Maker?.getSupportedFormats) return undefined;
  try {
    return (await Maker.getSupportedFormats()).includes('qr_code')
      ? new Maker({ formats: ['qr_code'] })
      : undefined;
  } catch {
    return undefined;
  }
}

/** A reader of one picture of the video: nothing where it holds no code that can be read. */
async function reader(): Promise<(video: HTMLVideoElement) => Promise<string | undefined>> {
  const own = await ownReader();
  if (own) return async (video) => (await own.detect(video))[0]?.rawValue;
  const { decodeQR } = await import('qr/decode.js');
  const canvas = document.createElement('canvas');
  const pen = canvas.getContext('2d', { willReadFrequently: true });
  return async (video) => {
    const scale = Math.min(1, WIDEST / video.videoWidth);
    canvas.width = Math.round(video.videoWidth * scale);
    canvas.height = Math.round(video.videoHeight * scale);
    if (!pen || canvas.width === 0 || canvas.height === 0) return undefined;
    pen.drawImage(video, 0, 0, canvas.width, canvas.height);
    const { width, height, data } = pen.getImageData(0, 0, canvas.width, canvas.height);
    return decodeQR({ width, height, data });
  };
}

export function browserCodeCamera(): CodeCamera {
  let stream: MediaStream | undefined;
  // each start has its own turn: a stop in between ends it wherever it is
  let turn = 0;

  function stop() {
    turn += 1;
    stream?.getTracks().forEach((track) => track.stop());
    stream = undefined;
  }

  return {
    stop,
    async start(video, seen) {
      stop();
      const mine = turn;
      try {
        if (!navigator.mediaDevices?.getUserMedia) return { ok: false, reason: 'none' };
        const opened = await navigator.mediaDevices.getUserMedia({
          video: { facingMode: { ideal: 'environment' }, width: { ideal: 1280 } },
        });
        if (mine !== turn) {
          opened.getTracks().forEach((track) => track.stop());
          return { ok: true };
        }
        stream = opened;
        video.srcObject = opened;
        await video.play();
      } catch (error) {
        stop();
        return { ok: false, reason: reasonOf(error) };
      }
      const read = await reader();
      void (async () => {
        while (mine === turn) {
          // a picture without a code is no fault: the next one may hold it
          const text = await read(video).catch(() => undefined);
          if (mine !== turn) return;
          if (text) seen(text);
          await new Promise((resolve) => setTimeout(resolve, PAUSE_MS));
        }
      })();
      return { ok: true };
    },
  };
}
