import type { FieldView } from '../contract.ts';
import { drafts } from '../state/here.ts';

/** A choice or a yes-or-no question; a choice is saved at once. */
export function ChoiceBox({ view, id }: { view: FieldView; id: string }) {
  const draft = drafts.of(view.path);
  const offered = view.kind === 'yes_no' && view.choices.length === 0 ? ['yes', 'no'] : view.choices;
  const known = view.written === '' || offered.includes(view.written) ? offered : [view.written, ...offered];

  function pick(text: string) {
    drafts.type(view, text);
    void drafts.commit(view);
  }

  return (
    <select
      id={id}
      class="value-box"
      value={draft?.typed ?? view.written}
      aria-required={view.required}
      aria-invalid={draft?.problem ? true : undefined}
      aria-describedby={draft?.problem ? `${id}-problem ${id}-hint` : `${id}-hint`}
      onChange={(event) => pick(event.currentTarget.value)}
    >
      {(!view.required || view.written === '') && <option value="">not said</option>}
      {known.map((choice) => (
        <option key={choice} value={choice}>
          {choice.replaceAll('_', ' ')}
        </option>
      ))}
    </select>
  );
}
