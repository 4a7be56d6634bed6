/** Voices for a browser that has none: what is said can be read, and nothing is over before the test says so. */
import type { Page } from '@playwright/test';

interface FakeVoice {
  /** BCP 47, as the device names it. */
  lang: string;
  /** False: a voice that sends the text to a server. */
  localService: boolean;
}
interface Heard {
  text: string;
  lang: string;
}
interface Spoken extends Heard {
  voice: { localService: boolean } | null;
  onstart?: () => void;
  onend?: () => void;
  onerror?: () => void;
}
interface Mouth {
  said: Heard[];
  waiting: Spoken[];
  speaking: Spoken | undefined;
  end(how: 'onend' | 'onerror'): void;
}
type WithMouth = Window & { mouth: Mouth };

/**
 * Gives the pages of this tab a `speechSynthesis` of their own, as the Web Speech API (W3C Community Group) describes
 * it: utterances are said in turn, `cancel` empties the turn and ends what is being said, voices may come late.
 */
export async function giveVoices(page: Page, voices: readonly FakeVoice[], lateMs = 0): Promise<void> {
  await page.addInitScript(
    ([given, late]) => {
      const events = new EventTarget();
      let known: readonly FakeVoice[] = late ? [] : given;
      if (late)
        setTimeout(() => {
          known = given;
          events.dispatchEvent(new Event('voiceschanged'));
        }, late);
      const mouth: Mouth = {
        said: [],
        waiting: [],
        speaking: undefined,
        end(how) {
          const ended = mouth.speaking;
          mouth.speaking = undefined;
          ended?.[how]?.();
          next();
        },
      };
      const next = () => {
        if (mouth.speaking) return;
        mouth.speaking = mouth.waiting.shift();
        if (!mouth.speaking) return;
        const { text, lang, voice } = mouth.speaking;
        if (!voice?.localService) throw new Error('a voice that sends the text away was taken');
        mouth.said.push({ text, lang });
        mouth.speaking.onstart?.();
      };
      class Utterance {
        lang = '';
        rate = 1;
        voice = null;
        constructor(readonly text: string) {}
      }
      const synthesis = {
        getVoices: () => [...known],
        addEventListener: events.addEventListener.bind(events),
        removeEventListener: events.removeEventListener.bind(events),
        speak(spoken: Spoken) {
          mouth.waiting.push(spoken);
          // never within the call, as in a browser
          queueMicrotask(next);
        },
        cancel() {
          mouth.waiting = [];
          if (mouth.speaking) mouth.end('onerror');
        },
      };
      Object.defineProperties(window, {
        mouth: { value: mouth },
        speechSynthesis: { value: synthesis },
        SpeechSynthesisUtterance: { value: Utterance },
      });
    },
    [voices, lateMs] as const,
  );
}

/** Everything this page has begun to say. */
export const heard = (page: Page): Promise<Heard[]> =>
  page.evaluate(() => (window as never as WithMouth).mouth.said);
/** Whether something is being said now or waits for its turn. */
export const speaks = (page: Page): Promise<boolean> =>
  page.evaluate(() => {
    const { speaking, waiting } = (window as never as WithMouth).mouth;
    return speaking !== undefined || waiting.length > 0;
  });
/** The sentence that is being said is over, or the voice failed in it. */
export const sentenceOver = (page: Page, how: 'onend' | 'onerror' = 'onend'): Promise<void> =>
  page.evaluate((way) => (window as never as WithMouth).mouth.end(way), how);
