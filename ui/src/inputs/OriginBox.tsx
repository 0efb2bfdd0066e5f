import type { FieldView } from '../contract.ts';
import { originOf } from '../logic/draft.ts';
import { NOT_SAID, ORIGINS } from '../logic/origin.ts';
import { drafts } from '../state/here.ts';

/** Where the value comes from; a choice here is saved at once when there is a value to go with it. */
export function OriginBox({ view }: { view: FieldView }) {
  const draft = drafts.of(view.path);

  function pick(origin: string) {
    drafts.pickOrigin(view, origin);
    if ((drafts.of(view.path)?.typed.trim() ?? '') !== '') {
      void drafts.commit(view);
    }
  }

  return (
    <select
      class="origin-box"
      aria-label={`Where it comes from: ${view.label}`}
      value={draft ? originOf(draft) : view.origin || NOT_SAID}
      onChange={(event) => pick(event.currentTarget.value)}
    >
      {ORIGINS.map((origin) => (
        <option key={origin} value={origin}>
          {origin}
        </option>
      ))}
    </select>
  );
}
