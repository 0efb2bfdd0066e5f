import type { FieldView } from '../contract.ts';
import { drafts } from '../state/here.ts';

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

  return (
    <input
      id={id}
      type="text"
      class="value-box"
      autocomplete="off"
      spellcheck={view.kind === 'text'}
      value={draft?.typed ?? view.written}
      placeholder={view.assumed && `${view.assumed}, assumed`}
      aria-required={view.required}
      aria-invalid={draft?.problem ? true : undefined}
      aria-describedby={draft?.problem ? `${id}-problem ${id}-hint` : `${id}-hint`}
      onInput={(event) => drafts.type(view, event.currentTarget.value)}
      onKeyDown={key}
    />
  );
}
