/** Ctrl+Z and Ctrl+Shift+Z (Cmd on a Mac) step through the build file's history, but never while typing. */
import { session } from './here.ts';

export function listenForUndo(target: Window): void {
  target.addEventListener('keydown', (event) => {
    const wanted = stepOf(event);
    if (wanted !== null) {
      event.preventDefault();
      void session[wanted]();
    }
  });
}

export function stepOf(event: KeyboardEvent): 'undo' | 'redo' | null {
  const asked = (event.ctrlKey || event.metaKey) && !event.altKey && event.key.toLowerCase() === 'z';
  if (!asked || isTyping(event.target)) {
    return null;
  }
  return event.shiftKey ? 'redo' : 'undo';
}

function isTyping(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLTextAreaElement || (target instanceof HTMLInputElement && target.type !== 'range')
  );
}
