import type { State } from '../contract.ts';

/** One shape a state, so that none is told by its colour alone. */
const SHAPES: Record<State, string> = {
  stop: 'M7 2h6l5 5v6l-5 5H7l-5-5V7zM5.5 10h9',
  caution: 'M10 2.5 18.5 17h-17zM10 8v4M10 14v.8',
  fine: 'M10 2a8 8 0 1 0 .01 0zM6 10.2l3 3 5-6',
  cannot_tell: 'M10 1.5 18.5 10 10 18.5 1.5 10zM8 8.2c0-2.8 4.2-2.6 4 0-.1 1.4-2 1.4-2 2.8M10 13.4v.6',
};

export function StateMark({ state, size = 20 }: { state: State; size?: number }) {
  return (
    <svg class={`mark mark-${state}`} width={size} height={size} viewBox="0 0 20 20" aria-hidden="true">
      <path d={SHAPES[state]} />
    </svg>
  );
}
