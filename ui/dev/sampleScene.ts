/** Invented bodies for the development stand-in and the tests: a plate of two triangles, a tube, a ball, a box. */
import type { Scene } from '../src/sceneContract.ts';

export const sampleScene: Scene = {
  revision: 1,
  advice: 'Drawn from the places in the build file, at rest.',
  scale: { symbol: 'mm', per_mm: 1, decimals: 1 },
  bodies: [
    {
      key: 'mount:panel', name: 'panel', group: 'mount', shape: 'mesh', radius: 0, tone: 'metal',
      points: [0, 0, 0, 0, 300, 0, 0, 300, 200, 0, 0, 200], triangles: [0, 1, 2, 0, 2, 3],
      note: 'Sheet of 1.5 mm.',
    },
    {
      key: 'tube:front', name: 'front tube', group: 'lines', shape: 'rod', radius: 2.4, tone: 'front',
      points: [10, 20, 100, 200, 20, 100, 200, 20, 20], triangles: [], note: 'Tube of 4.8 mm, 270 mm long, 1 bend.',
    },
    {
      key: 'part:tee', name: 'tee', group: 'lines', shape: 'ball', radius: 12, tone: 'front',
      points: [200, 20, 20], triangles: [], note: 'Its size is not told.',
    },
    {
      key: 'obstacle:gearbox', name: 'gearbox', group: 'surroundings', shape: 'box', radius: 0, tone: 'room',
      points: [-300, 100, -50, -50, 250, 80], triangles: [], note: 'Part of body or frame.',
    },
  ],
  places: [
    { name: 'front tube, start', at: [10, 20, 100] },
    { name: 'front tube, end', at: [200, 20, 20] },
  ],
  bulges: {
    title: 'How far the panel is pushed out of its plane',
    description: 'Movement over height, for each panel.',
    x_label: 'up the panel, mm',
    y_label: 'forward, mm',
    series: [{ label: 'bare', style: 'case_1', x: [-300, 0, 300], y: [0, 4, 0] }],
  },
  pushes: [
    {
      key: 'function', name: 'function, 500 N', sentence: 'The pad moves by 1.2 mm.', highest: 120, worst: [0, 150, 100],
      moved: [{ body: 'mount:panel', shifts: [0, 0, 0, 0.4, 0, 0, 1.2, 0, 0, 0.3, 0, 0], stresses: [120, 40] }],
    },
  ],
};
