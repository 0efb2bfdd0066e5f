import { MIDDLE } from './places.ts';

/** Half the clevis spacing in the drawing. */
export const CLEVIS = 75;
const BAR_X = 245;

/**
 * The bar seen from above: front rod at the top. It turns about its bearing by the true angle, clockwise when the
 * front rod is ahead.
 */
export function Bar({ offset, tilt }: { offset: number; tilt: number }) {
  const bearing = MIDDLE - offset * CLEVIS;
  const lean = Math.tan((tilt * Math.PI) / 180);
  const front = BAR_X + lean * (bearing - (MIDDLE - CLEVIS));
  const rear = BAR_X + lean * (bearing - (MIDDLE + CLEVIS));
  return (
    <g>
      <path class="rod front" d={`M${front} ${MIDDLE - CLEVIS}H340`} />
      <path class="rod rear" d={`M${rear} ${MIDDLE + CLEVIS}H340`} />
      <path class="thin" d={`M${BAR_X} ${MIDDLE - 100}V${MIDDLE + 100}`} stroke-dasharray="3 5" />
      <g transform={`rotate(${tilt} ${BAR_X} ${bearing})`}>
        <path class="bar" d={`M${BAR_X} ${MIDDLE - 98}V${MIDDLE + 98}`} />
      </g>
      <rect class="pin" x={BAR_X - 15} y={bearing - 17} width={30} height={34} rx={7} />
      <rect class="clevis" x={front - 11} y={MIDDLE - CLEVIS - 11} width={22} height={22} rx={4} />
      <rect class="clevis" x={rear - 11} y={MIDDLE + CLEVIS - 11} width={22} height={22} rx={4} />
    </g>
  );
}

/** One of two masters; row -1 is the front one, above. */
export function TwinBody({ row }: { row: -1 | 1 }) {
  const y = MIDDLE + row * CLEVIS;
  const circuit = row === -1 ? 'front' : 'rear';
  return (
    <g>
      <rect class="body" x={314} y={y - 32} width={14} height={64} rx={3} />
      <rect class="body" x={328} y={y - 22} width={128} height={44} rx={7} />
      <rect class={`fluid ${circuit}`} x={376} y={y - 14} width={74} height={28} rx={3} />
      <rect class="piston" x={340} y={y - 14} width={36} height={28} rx={3} />
      <path class="body" d={`M350 ${y - 22}v-8h16v8`} />
    </g>
  );
}

/** Shell of a vacuum booster on the firewall. */
export function Booster() {
  return (
    <g>
      <path class="body" d="M188 296 Q204 252 236 250 H282 Q300 252 318 304 V336 Q300 388 282 390 H236 Q204 388 188 344Z" />
      <path class="thin" d="M252 250V390" />
      <path class="rod" d="M205 320H330" />
    </g>
  );
}

/**
 * A tandem master with both chambers. Which of them feeds the front is a question for the car, so the picture leaves
 * it open: the lines leave the body, not a chamber.
 */
export function TandemBody() {
  return (
    <g>
      <rect class="body" x={318} y={298} width={152} height={44} rx={7} />
      <rect class="piston" x={326} y={306} width={18} height={28} rx={3} />
      <rect class="chamber" x={344} y={306} width={46} height={28} rx={3} />
      <rect class="piston" x={390} y={306} width={18} height={28} rx={3} />
      <rect class="chamber" x={408} y={306} width={54} height={28} rx={3} />
    </g>
  );
}
