import type { FieldView } from '../contract.ts';
import { drafts } from '../state/here.ts';

/** A text longer than this gets a box of several lines. */
const LONG = 60;

export function TextBox({ view, id }: { view: FieldView; id: string }) {
  const draft = drafts.of(view.path);

  function key(event: KeyboardEvent) {
    if (event.key === 'Enter') {
      event.preventDefault();
      void drafts.commit(view);
    } else if (event.key === 'Escape') {
      event.preventDefault();
      drafts.restore(view);
    }
  }

  const Box = view.kind === 'text' && view.written.length > LONG ? 'textarea' : 'input';
  return (
    <Box
      id={id}
      class="value-box"
      rows={Box === 'textarea' ? 4 : undefined}
      autocomplete="off"
      spellcheck={view.kind === 'text'}
      value={draft?.typed ?? view.written}
      placeholder={view.assumed && `${view.assumed}, assumed`}
      aria-required={view.required}
      aria-invalid={draft?.problem ? true : undefined}
      aria-describedby={draft?.problem ? `${id}-problem ${id}-hint` : `${id}-hint`}
      onInput={(event: Event) => drafts.type(view, (event.currentTarget as HTMLInputElement).value)}
      onKeyDown={key}
    />
  );
}
