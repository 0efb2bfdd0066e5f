import type { Scene, ScenePush } from '../sceneContract.ts';
import { exaggeration, fittingTimes, pushKey, pushOf } from './look.ts';
import { stressStyle } from './stressColour.ts';

const STEPS = 5;

/** At rest, or under one of the pushes: moved so many times as far as it is, coloured by stress. */
export function PushChoice({ scene }: { scene: Scene }) {
  if (scene.pushes.length === 0) {
    return null;
  }
  const push = pushOf(scene);
  return (
    <div class="space-push">
      <label>
        Pushed
        <select value={push?.key ?? ''} onChange={(event) => (pushKey.value = event.currentTarget.value || null)}>
          <option value="">not at all</option>
          {scene.pushes.map((one) => (
            <option key={one.key} value={one.key}>
              {one.name}
            </option>
          ))}
        </select>
      </label>
      {push !== null && <Pushed scene={scene} push={push} />}
    </div>
  );
}

function Pushed({ scene, push }: { scene: Scene; push: ScenePush }) {
  const times = exaggeration.value ?? fittingTimes(scene, push);
  return (
    <>
      <label>
        Movement drawn {times} times as large
        <input
          type="range"
          min={0}
          max={3}
          step={0.01}
          value={Math.log10(Math.max(1, times))}
          aria-valuetext={`${times} times`}
          onInput={(event) => (exaggeration.value = Math.round(10 ** Number(event.currentTarget.value)))}
        />
      </label>
      <p>{push.sentence}</p>
      <Scale highest={push.highest} />
    </>
  );
}

/** The colours with their stresses. */
function Scale({ highest }: { highest: number }) {
  return (
    <ol class="space-scale plain" aria-label="Colours of stress">
      {Array.from({ length: STEPS + 1 }, (_, i) => (
        <li key={i}>
          <svg viewBox="0 0 10 10" aria-hidden="true">
            <rect width="10" height="10" fill={stressStyle(i / STEPS)} />
          </svg>
          {Math.round((highest * i) / STEPS)} MPa
        </li>
      ))}
    </ol>
  );
}
