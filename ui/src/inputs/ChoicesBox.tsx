import type { FieldView } from '../contract.ts';
import { readFlowList, writeFlowList } from '../logic/flowList.ts';
import { drafts } from '../state/here.ts';

/** Any number of choices; each tick is saved at once. */
export function ChoicesBox({ view, id }: { view: FieldView; id: string }) {
  const draft = drafts.of(view.path);
  const chosen = readFlowList(draft?.typed ?? view.written);

  function tick(choice: string, on: boolean) {
    const ticked = view.choices.filter((one) => (one === choice ? on : chosen.includes(one)));
    drafts.type(view, writeFlowList(ticked));
    void drafts.commit(view);
  }

  return (
    <div
      id={id}
      class="choices-box"
      role="group"
      tabIndex={-1}
      aria-labelledby={`${id}-name`}
      aria-describedby={draft?.problem ? `${id}-problem ${id}-hint` : `${id}-hint`}
    >
      {view.choices.map((choice) => (
        <label key={choice}>
          <input
            type="checkbox"
            checked={chosen.includes(choice)}
            onChange={(event) => tick(choice, event.currentTarget.checked)}
          />
          {choice.replaceAll('_', ' ')}
        </label>
      ))}
    </div>
  );
}
