import { MIDDLE } from './places.ts';
import { CLEVIS } from './ApplyShapes.tsx';

const PIVOT = { x: 150, y: 170 };
const PAD = { x: 108, y: 488 };

/** A shoe with the ball of the foot on the pad. */
export function Foot() {
  return (
    <g>
      <path
        class="body"
        d="M22 392 L60 392 Q62 440 74 458 Q90 462 100 476 Q106 492 98 500 L34 552 Q22 558 14 548 Q6 538 10 522 Q20 480 22 392Z"
      />
      <path class="thin" d="M14 548 Q22 552 32 545 L97 493" />
      <path class="force" d="M60 432h-34" />
    </g>
  );
}

/** Arm on its pivot, pad below, and the rod from its pin forward. */
export function PedalArm({ rodTo, offset }: { rodTo: number; offset: number }) {
  const pin = { x: PIVOT.x + ((PAD.x - PIVOT.x) * (MIDDLE - PIVOT.y)) / (PAD.y - PIVOT.y), y: MIDDLE };
  return (
    <g>
      <path class="rod" d={`M${pin.x} ${pin.y}L${rodTo} ${MIDDLE - offset * CLEVIS}`} />
      <path class="arm" d={`M${PIVOT.x} ${PIVOT.y}L${PAD.x} ${PAD.y}`} />
      <path class="pad" d={`M${PAD.x - 14} ${PAD.y - 24}l22 44`} />
      <path class="body" d={`M${PIVOT.x - 26} ${PIVOT.y - 26}h52l-14 32h-24z`} />
      <circle class="pin" cx={PIVOT.x} cy={PIVOT.y} r={8} />
      <circle class="pin" cx={pin.x} cy={pin.y} r={6} />
    </g>
  );
}
