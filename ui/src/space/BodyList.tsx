import type { Scene, SceneGroup } from '../sceneContract.ts';
import { GROUPS } from './look.ts';

/** Every body in words, for those who do not see the picture. */
export function BodyList({ scene }: { scene: Scene }) {
  const groups = (Object.keys(GROUPS) as SceneGroup[])
    .map((group) => ({ group, bodies: scene.bodies.filter((body) => body.group === group) }))
    .filter(({ bodies }) => bodies.length > 0);
  return (
    <details class="fold small">
      <summary>What is drawn</summary>
      {groups.map(({ group, bodies }) => (
        <section key={group}>
          <h3>{GROUPS[group]}</h3>
          <ul>
            {bodies.map((body) => (
              <li key={body.key}>
                <strong>{body.name}</strong>: {body.note}
              </li>
            ))}
          </ul>
        </section>
      ))}
    </details>
  );
}
