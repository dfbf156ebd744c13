// The screen stays lit while both hands are at the hose. A device that has no say in that does as it always does.

/** Keeps the screen from going dark until what it answers is called. */
export function keepAwake(): () => void {
  if (!('wakeLock' in navigator)) return () => undefined;
  let left = false;
  let lock: WakeLockSentinel | null = null;

  /** The device lets go by itself whenever the program is out of sight, and may refuse, as with an empty battery. */
  async function hold(): Promise<void> {
    if (document.visibilityState !== 'visible') return;
    const got = await navigator.wakeLock.request('screen').catch(() => null);
    if (left) await got?.release();
    else lock = got;
  }

  const seen = () => void hold();
  document.addEventListener('visibilitychange', seen);
  seen();
  return () => {
    left = true;
    document.removeEventListener('visibilitychange', seen);
    void lock?.release();
  };
}
