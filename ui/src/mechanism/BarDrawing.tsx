import type { BarRod, BarStance, Spot, SpotLine } from '../mechanismContract.ts';
import { at, type Frame } from './frame.ts';

/** One stance. The sentence beside it says the same, so it is one image to a screen reader. */
export function BarDrawing({ stance, frame }: { stance: BarStance; frame: Frame }) {
  const { outline } = stance;
  const { left, top, width, height } = frame;
  return (
    <svg class="stance-drawing" viewBox={`${left} ${top} ${width} ${height}`} role="img" aria-label={`${stance.title}: ${stance.sentence}`}>
      <path class="home" d={`M0 ${top + 6}V${top + height - 6}`} />
      <path class="reach" d={lineOf(outline.front_ahead_most)} />
      <path class="reach" d={lineOf(outline.rear_ahead_most)} />
      <Master rod={outline.front} end={left + width} circuit="front" />
      <Master rod={outline.rear} end={left + width} circuit="rear" />
      <Rod rod={outline.front} circuit="front" />
      <Rod rod={outline.rear} circuit="rear" />
      <path class="bar" d={lineOf(outline.bar)} />
      <Bearing spot={outline.bearing} />
      <Clevis spot={outline.front.clevis} />
      <Clevis spot={outline.rear.clevis} />
    </svg>
  );
}

function lineOf({ front, rear }: SpotLine): string {
  const from = at(front);
  const to = at(rear);
  return `M${from.x} ${from.y}L${to.x} ${to.y}`;
}

function Rod({ rod, circuit }: { rod: BarRod; circuit: string }) {
  return <path class={`rod ${circuit}`} d={lineOf({ front: rod.clevis, rear: rod.socket })} />;
}

/** The piston moves with the rod's end; the body stands still. */
function Master({ rod, end, circuit }: { rod: BarRod; end: number; circuit: string }) {
  const { x, y } = at(rod.socket);
  return (
    <g>
      <rect class="piston" x={x} y={y - 7} width={14} height={14} rx={1.5} />
      <path class={`fluid ${circuit}`} d={`M${x + 14} ${y}H${end}`} />
      <text x={end - 2} y={y - 11} text-anchor="end">
        {circuit}
      </text>
    </g>
  );
}

function Bearing({ spot }: { spot: Spot }) {
  const { x, y } = at(spot);
  return (
    <g>
      <path class="push" d={`M${x - 20} ${y}H${x - 9}`} />
      <circle class="bearing" cx={x} cy={y} r={7} />
    </g>
  );
}

function Clevis({ spot }: { spot: Spot }) {
  const { x, y } = at(spot);
  return <circle class="clevis" cx={x} cy={y} r={4.5} />;
}
