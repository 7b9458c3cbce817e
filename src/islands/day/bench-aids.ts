interface Sentinel {
  readonly release: () => Promise<void>;
}

let held: Sentinel | undefined;
let wanted = false;

async function hold(): Promise<void> {
  if (!wanted || document.visibilityState !== 'visible') return;
  try {
    held = await navigator.wakeLock?.request('screen');
  } catch {
    // The browser may refuse, on a low battery for one: the clocks run by the time of day all the same.
  }
}

/** Keeps the screen on where the browser allows it, also after the page was away for a moment. */
export function stayAwake(): void {
  if (!wanted) document.addEventListener('visibilitychange', () => void hold());
  wanted = true;
  void hold();
}

export function maySleep(): void {
  wanted = false;
  void held?.release();
}

let sound: AudioContext | undefined;

/** Sound needs a press first; called by the one that switches it on. */
export function allowSound(): void {
  sound ??= new AudioContext();
  void sound.resume();
}

/** A short tone and a shake. High when time is up. */
export function signal(up: boolean): void {
  navigator.vibrate?.(up ? [300, 100, 300] : 80);
  if (!sound) return;
  const [tone, loud] = [sound.createOscillator(), sound.createGain()];
  tone.frequency.value = up ? 1320 : 880;
  loud.gain.value = 0.25;
  tone.connect(loud).connect(sound.destination);
  tone.start();
  tone.stop(sound.currentTime + (up ? 0.6 : 0.12));
}
