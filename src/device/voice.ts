/** The device's own voice, where it has one for a language. Nothing is sent anywhere: voices of the network are left out. */
export interface Voice {
  /** Reads sentences one after the other; calls back as each begins, and with -1 at the end. */
  read(sentences: readonly string[], onSentence: (index: number) => void): void;
  stop(): void;
}

const speaks = (voice: SpeechSynthesisVoice, locale: string) =>
  voice.localService && voice.lang.toLowerCase().replace('_', '-').split('-')[0] === locale.split('-')[0];

/** Voices come late in some browsers: resolves after they are there, or after a second without. */
function voices(): Promise<SpeechSynthesisVoice[]> {
  const all = speechSynthesis.getVoices();
  if (all.length) return Promise.resolve(all);
  return new Promise((resolve) => {
    const done = () => resolve(speechSynthesis.getVoices());
    speechSynthesis.addEventListener('voiceschanged', done, { once: true });
    setTimeout(done, 1000);
  });
}

/** The voice for a language; nothing where this device has none of its own. */
export async function voiceFor(locale: string): Promise<Voice | undefined> {
  if (typeof speechSynthesis === 'undefined') return undefined;
  const voice = (await voices()).find((one) => speaks(one, locale));
  if (!voice) return undefined;
  let turn = 0;
  const stop = () => {
    turn += 1;
    speechSynthesis.cancel();
  };
  return {
    read(sentences, onSentence) {
      speechSynthesis.cancel();
      const mine = ++turn;
      sentences.forEach((sentence, index) => {
        const spoken = new SpeechSynthesisUtterance(sentence);
        spoken.voice = voice;
        spoken.lang = voice.lang;
        spoken.rate = 0.9;
        spoken.onstart = () => mine === turn && onSentence(index);
        spoken.onend = () => mine === turn && index === sentences.length - 1 && onSentence(-1);
        spoken.onerror = () => {
          if (mine !== turn) return;
          // a voice that fails once is not heard to go on somewhere else in the text
          stop();
          onSentence(-1);
        };
        speechSynthesis.speak(spoken);
      });
    },
    stop,
  };
}
