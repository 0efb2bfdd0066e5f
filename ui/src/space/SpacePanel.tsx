import { CurveChart } from '../charts/CurveChart.tsx';
import { signal } from '@preact/signals';
import type { Scene } from '../sceneContract.ts';
import { scene } from '../state/here.ts';
import { BodyList } from './BodyList.tsx';
import { Measuring } from './Measuring.tsx';
import { PushChoice } from './PushChoice.tsx';
import { SpaceCanvas } from './SpaceCanvas.tsx';
import { Groups } from './Groups.tsx';

const open = signal(false);

/** The car in space; what draws it is loaded only when the builder asks for it. */
export function SpacePanel() {
  const state = scene.value;
  const shown = state.kind === 'there' ? state.there : state.before;
  return (
    <section id="space" aria-labelledby="space-title" aria-busy={state.kind === 'waiting'}>
      <h2 id="space-title">In space</h2>
      {state.kind === 'failed' && <p role="status">The view in space could not be made. It comes again with the next change.</p>}
      {shown === null ? state.kind === 'waiting' && <p class="later-wait">Bodies are being placed.</p> : <Space scene={shown} />}
    </section>
  );
}

function Space({ scene: shown }: { scene: Scene }) {
  if (shown.bodies.length === 0) {
    return <p>{shown.advice}</p>;
  }
  return (
    <>
      <p>{shown.advice}</p>
      {open.value ? (
        <div class="space">
          <SpaceCanvas scene={shown} />
          <Groups scene={shown} />
          <PushChoice scene={shown} />
          <Measuring scene={shown} />
        </div>
      ) : (
        <button type="button" onClick={() => (open.value = true)}>
          Show it in 3-D
        </button>
      )}
      <BodyList scene={shown} />
      {shown.bulges && <CurveChart chart={shown.bulges} marked={null} />}
    </>
  );
}
