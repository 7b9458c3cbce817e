const key = 'warm-mould:keys';

/** Whether the reader has switched single keys off; they disturb who speaks to the device. */
export function keysOff(): boolean {
  try {
    return localStorage.getItem(key) === 'off';
  } catch {
    return false;
  }
}

export function setKeysOff(off: boolean): void {
  try {
    if (off) localStorage.setItem(key, 'off');
    else localStorage.removeItem(key);
  } catch {
    // Without storage the key stays on.
  }
}

/** Whether a key now belongs to a field and not to the page. */
export function typing(event: KeyboardEvent): boolean {
  const target = event.target;
  return (
    event.ctrlKey ||
    event.metaKey ||
    event.altKey ||
    event.isComposing ||
    (target instanceof HTMLElement &&
      (target.isContentEditable || /^(?:INPUT|TEXTAREA|SELECT)$/.test(target.tagName)))
  );
}
