import { useRef, useState } from 'preact/hooks';
import type { Page } from '../contract.ts';
import { reportText } from '../logic/report.ts';

/** Copies the report; where the browser forbids that, shows it selected so that the builder can. */
export function CopyReport({ page }: { page: Page }) {
  const [said, say] = useState('');
  const dialog = useRef<HTMLDialogElement>(null);
  const box = useRef<HTMLTextAreaElement>(null);
  const text = reportText(page);

  async function copy() {
    try {
      await navigator.clipboard.writeText(text);
      say('Copied');
      setTimeout(() => say(''), 3000);
    } catch {
      dialog.current?.showModal();
      box.current?.select();
    }
  }

  return (
    <>
      <button type="button" onClick={() => void copy()}>
        Copy as text
      </button>
      <span class="said" role="status">
        {said}
      </span>
      <dialog ref={dialog} class="sheet" aria-labelledby="copy-title">
        <h2 id="copy-title">Copy as text</h2>
        <p>This browser does not let the page copy by itself. The text is selected: copy it with Ctrl+C.</p>
        <textarea ref={box} rows={12} readOnly aria-label="Report" value={text} />
        <button type="button" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </dialog>
    </>
  );
}
