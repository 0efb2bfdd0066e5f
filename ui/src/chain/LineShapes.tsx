import { FRONT_ROW, MIDDLE, REAR_ROW } from './places.ts';
import { CLEVIS } from './ApplyShapes.tsx';

export function FrontLine({ twin }: { twin: boolean }) {
  const start = twin ? `M456 ${MIDDLE - CLEVIS}H470Q484 ${MIDDLE - CLEVIS} 484 232` : `M456 298V200`;
  const corner = twin ? `V${FRONT_ROW + 16}Q484 ${FRONT_ROW} 500 ${FRONT_ROW}` : `V${FRONT_ROW + 16}Q456 ${FRONT_ROW} 472 ${FRONT_ROW}`;
  return <path class="line front" d={`${start}${corner}H616`} />;
}

export function RearLine({ twin }: { twin: boolean }) {
  const start = twin ? `M456 ${MIDDLE + CLEVIS}H470Q484 ${MIDDLE + CLEVIS} 484 408` : `M456 342V420`;
  const corner = twin ? `V${REAR_ROW - 16}Q484 ${REAR_ROW} 500 ${REAR_ROW}` : `V${REAR_ROW - 16}Q456 ${REAR_ROW} 472 ${REAR_ROW}`;
  return <path class="line rear" d={`${start}${corner}H616`} />;
}

export function Valve() {
  return (
    <g>
      <path class="body" d={`M530 ${REAR_ROW - 16}l48 32v-32l-48 32z`} />
      <path class="thin" d={`M554 ${REAR_ROW}v-22M544 ${REAR_ROW - 22}h20`} />
    </g>
  );
}
