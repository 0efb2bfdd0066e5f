import type { FieldView } from '../contract.ts';
import { problemText } from '../state/apply.ts';
import { drafts } from '../state/here.ts';
import { fieldId } from '../state/jump.ts';
import { ChoiceBox } from './ChoiceBox.tsx';
import { OriginBox } from './OriginBox.tsx';
import { TextBox } from './TextBox.tsx';

/** One input with its label, its origin, what the server says about it and how to measure it. */
export function Field({ view }: { view: FieldView }) {
  const id = fieldId(view.path);
  const draft = drafts.of(view.path);
  const problem = draft?.problem ?? null;
  const isChoice = view.kind === 'choice' || view.kind === 'yes_no';

  /** Leaving the whole field saves it; moving from the text to its origin does not. */
  function leave(event: FocusEvent & { currentTarget: HTMLElement }) {
    if (!event.currentTarget.contains(event.relatedTarget as Node | null)) {
      void drafts.commit(view);
    }
  }

  return (
    <div class={`field${problem ? ' has-problem' : ''}`} onFocusOut={leave}>
      <label for={id}>
        {view.label}
        {view.required && <span class="needed"> (needed)</span>}
      </label>
      <div class="field-boxes">
        {isChoice ? <ChoiceBox view={view} id={id} /> : <TextBox view={view} id={id} />}
        {view.kind === 'quantity' && <OriginBox view={view} />}
      </div>
      {problem && (
        <p class="refusal" role="alert" id={`${id}-problem`}>
          Not saved. {problemText(problem)}
        </p>
      )}
      <Hint view={view} id={`${id}-hint`} saving={draft?.status === 'sending'} />
      {view.how && (
        <details class="how">
          <summary>
            How to find it<span class="unseen">: {view.label}</span>
          </summary>
          <p>{view.how}</p>
        </details>
      )}
    </div>
  );
}

function Hint({ view, id, saving }: { view: FieldView; id: string; saving: boolean }) {
  const hints = [
    view.written === '' && view.assumed !== '' && `assumed: ${view.assumed}`,
    view.also !== '' && `= ${view.also}`,
    view.allowed !== '' && view.allowed,
    view.units.length > 0 && `units: ${view.units.join(', ')}`,
    saving && 'saving',
  ].filter(Boolean);
  return (
    <p class="hint" id={id}>
      {hints.join(' · ')}
    </p>
  );
}
