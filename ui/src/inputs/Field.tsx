import type { FieldView } from '../contract.ts';
import { problemSeenFrom } from '../state/apply.ts';
import { drafts } from '../state/here.ts';
import { fieldId } from '../state/jump.ts';
import { ChoiceBox } from './ChoiceBox.tsx';
import { ChoicesBox } from './ChoicesBox.tsx';
import { OriginBox } from './OriginBox.tsx';
import { TextBox } from './TextBox.tsx';

/** One input with its label, its origin, what the server says about it and how to measure it. */
export function Field({ view }: { view: FieldView }) {
  const id = fieldId(view.path);
  const draft = drafts.of(view.path);
  const problem = draft?.problem ?? null;

  /** Leaving the whole field saves it; moving from the text to its origin does not. */
  function leave(event: FocusEvent & { currentTarget: HTMLElement }) {
    if (!event.currentTarget.contains(event.relatedTarget as Node | null)) {
      void drafts.commit(view);
    }
  }

  return (
    <div class={`field${problem ? ' has-problem' : ''}`} onFocusOut={leave}>
      <FieldName view={view} id={id} />
      <div class="field-boxes">
        <Box view={view} id={id} />
        {view.kind === 'quantity' && <OriginBox view={view} />}
      </div>
      {problem && (
        <p class="refusal" role="alert" id={`${id}-problem`}>
          Not saved. {problemSeenFrom(view.path, problem)}
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

function FieldName({ view, id }: { view: FieldView; id: string }) {
  const words = (
    <>
      {view.label}
      {view.required && <span class="needed"> (needed)</span>}
    </>
  );
  return view.kind === 'choices' ? (
    <span class="field-name" id={`${id}-name`}>
      {words}
    </span>
  ) : (
    <label class="field-name" for={id}>
      {words}
    </label>
  );
}

function Box({ view, id }: { view: FieldView; id: string }) {
  switch (view.kind) {
    case 'choice':
    case 'yes_no':
      return <ChoiceBox view={view} id={id} />;
    case 'choices':
      return <ChoicesBox view={view} id={id} />;
    case 'quantity':
    case 'text':
      return <TextBox view={view} id={id} />;
  }
}

function Hint({ view, id, saving }: { view: FieldView; id: string; saving: boolean }) {
  const hints = [
    view.written === '' && view.assumed !== '' && `assumed: ${view.assumed}`,
    view.also !== '' && `= ${view.also}`,
    view.allowed !== '' && view.choices.length === 0 && view.allowed,
    view.units.length > 0 && `units: ${view.units.join(', ')}`,
    saving && 'saving',
  ].filter(Boolean);
  return (
    <p class="hint" id={id}>
      {hints.join(' · ')}
    </p>
  );
}
