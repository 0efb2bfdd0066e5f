import type { Scene, SceneGroup } from '../sceneContract.ts';
import { GROUPS, hidden } from './look.ts';

/** Which kinds of bodies are shown. */
export function Groups({ scene }: { scene: Scene }) {
  const there = (Object.keys(GROUPS) as SceneGroup[]).filter((group) => scene.bodies.some((body) => body.group === group));
  return (
    <fieldset class="space-groups">
      <legend>Shown</legend>
      {there.map((group) => (
        <label key={group}>
          <input type="checkbox" checked={!hidden.value.has(group)} onChange={(event) => show(group, event.currentTarget.checked)} />
          {GROUPS[group]}
        </label>
      ))}
    </fieldset>
  );
}

function show(group: SceneGroup, shown: boolean) {
  const next = new Set(hidden.value);
  if (shown) {
    next.delete(group);
  } else {
    next.add(group);
  }
  hidden.value = next;
}
