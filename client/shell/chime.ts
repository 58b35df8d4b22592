/** Two falling tones, low enough to carry through fans; coined here. */
const TONES_HZ = [660, 495] as const;
const TONE_S = 0.35;
const LOUD = 0.4;
/** What could not be heard by then is no call any more. */
const LATE_MS = 3_000;

let speaker: AudioContext | null = null;

/**
 * One call: two tones, once. A browser lets a page sound only after it was first touched; what was
 * not heard then is not made up for, and a device that cannot sound fails nobody.
 */
export async function chime(): Promise<void> {
  try {
    speaker ??= new AudioContext();
    const askedMs = performance.now();
    await speaker.resume();
    if (performance.now() - askedMs > LATE_MS) return;
    const from = speaker.currentTime;
    for (const [n, hz] of TONES_HZ.entries()) tone(speaker, hz, from + n * TONE_S);
  } catch {
    // The call stands on the screen in words.
  }
}

function tone(on: AudioContext, hz: number, at: number): void {
  const voice = on.createOscillator();
  const loudness = on.createGain();
  voice.frequency.value = hz;
  loudness.gain.setValueAtTime(LOUD, at);
  loudness.gain.exponentialRampToValueAtTime(0.001, at + TONE_S);
  voice.connect(loudness).connect(on.destination);
  voice.start(at);
  voice.stop(at + TONE_S);
}
