import { useEffect, useRef, useState } from 'preact/hooks';
import type { Scene } from '../sceneContract.ts';
import { chosen, ends, exaggeration, fittingTimes, hidden, pick, pushOf, view } from './look.ts';
import { placeWords } from './measure.ts';
import type { Side } from './SpaceView.ts';

type State = 'loading' | 'there' | 'impossible';

const SIDES: readonly [Side, string][] = [
  ['corner', 'from a corner'],
  ['left', 'from the left'],
  ['above', 'from above'],
  ['behind', 'from behind'],
];

/** A turn by one key press, rad. */
const STEP = Math.PI / 24;
const NEARER = 0.85;

/** The view itself: turned by mouse, finger or keys. */
export function SpaceCanvas({ scene }: { scene: Scene }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [state, setState] = useState<State>('loading');

  useEffect(() => {
    let gone = false;
    void opened(canvas.current!).then((made) => {
      if (gone) {
        made?.close();
      } else {
        view.value = made;
        setState(made === null ? 'impossible' : 'there');
      }
    });
    return () => {
      gone = true;
      view.peek()?.close();
      view.value = null;
    };
  }, []);

  const push = pushOf(scene);
  const measured = [ends.value.from, ends.value.to].flatMap((end) => (end === null ? [] : [end.at]));
  useEffect(() => {
    view.value?.show(scene, {
      hidden: hidden.value,
      push,
      times: push === null ? 0 : (exaggeration.value ?? fittingTimes(scene, push)),
      ends: measured,
      chosen: chosen.value,
    });
  }, [scene, view.value, hidden.value, push, exaggeration.value, ends.value, chosen.value]);
  useEffect(() => view.value?.fit('corner', push && push.moved.map((one) => one.body)), [view.value, push?.key]);

  const body = scene.bodies.find((one) => one.key === chosen.value);
  return (
    <>
      {state === 'loading' && <p class="later-wait">The view is being loaded.</p>}
      {state === 'impossible' && <p role="status">This browser cannot draw in space (it has no WebGL). All places stand in the list below.</p>}
      <canvas
        ref={canvas}
        class="space-canvas"
        hidden={state === 'impossible'}
        tabIndex={0}
        role="application"
        aria-label="The car in space. Arrow keys turn it, plus and minus go nearer and away, Home shows all."
        onKeyDown={turned}
      />
      {state === 'there' && (
        <div class="space-buttons">
          {SIDES.map(([side, name]) => (
            <button key={side} type="button" onClick={() => view.value?.fit(side)}>
              {name}
            </button>
          ))}
          <button type="button" aria-label="go nearer" onClick={() => view.value?.near(NEARER)}>
            +
          </button>
          <button type="button" aria-label="go away" onClick={() => view.value?.near(1 / NEARER)}>
            −
          </button>
        </div>
      )}
      <p class="space-note" role="status">
        {body === undefined ? (
          'Touch a body to see what it is. Touch two places to measure between them.'
        ) : (
          <>
            <strong>{body.name}</strong>: {body.note}{' '}
            <button type="button" onClick={() => view.value?.fit(null, [body.key])}>
              go to it
            </button>
          </>
        )}
      </p>
    </>
  );

  async function opened(on: HTMLCanvasElement) {
    try {
      const { SpaceView } = await import('./SpaceView.ts');
      return new SpaceView(on, (key, place) => {
        chosen.value = key;
        if (place !== null) {
          pick({ name: placeWords(scene.scale, place), at: place });
        }
      });
    } catch {
      return null;
    }
  }
}

function turned(event: KeyboardEvent) {
  const turns: Record<string, () => void> = {
    ArrowLeft: () => view.value?.turn(-STEP, 0),
    ArrowRight: () => view.value?.turn(STEP, 0),
    ArrowUp: () => view.value?.turn(0, STEP),
    ArrowDown: () => view.value?.turn(0, -STEP),
    '+': () => view.value?.near(NEARER),
    '=': () => view.value?.near(NEARER),
    '-': () => view.value?.near(1 / NEARER),
    Home: () => view.value?.fit('corner'),
  };
  const turn = turns[event.key];
  if (turn && !event.ctrlKey && !event.metaKey && !event.altKey) {
    event.preventDefault();
    turn();
  }
}
