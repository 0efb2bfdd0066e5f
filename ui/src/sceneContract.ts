/** What stands where in the car, sent by the Java side for the view in space. */
import type { Chart } from './chartContract.ts';

/** GET /api/scene?units=metric|us: apart from the page. Places are x forward, y left, z up from the builder's zero, mm. */
export interface Scene {
  /** Of the build file that it belongs to. */
  revision: number;
  /** What is shown, and what to tell to see more. */
  advice: string;
  scale: SceneScale;
  bodies: SceneBody[];
  /** To measure from. */
  places: ScenePlace[];
  /** Empty when no mount is told. */
  pushes: ScenePush[];
  /** The panel's bulge with more and more on it, side by side; null when no mount is told. */
  bulges: Chart | null;
}

export interface SceneScale {
  symbol: string;
  /** Of the unit in a millimetre. */
  per_mm: number;
  /** That a tape reads. */
  decimals: number;
}

export type SceneGroup = 'pedals' | 'mount' | 'lines' | 'footwell' | 'surroundings';
export type SceneShape = 'mesh' | 'rod' | 'ball' | 'box';
export type SceneTone = 'metal' | 'front' | 'rear' | 'clutch' | 'hot' | 'room';

export interface SceneBody {
  key: string;
  name: string;
  group: SceneGroup;
  /** mesh: corners of triangles; rod: middle line of a round bar; ball: its middle; box: two opposite corners. */
  shape: SceneShape;
  /** x, y, z of each after the other. */
  points: number[];
  /** Of rod or ball; 0 for the others. */
  radius: number;
  /** Three points' numbers each; empty but for a mesh. */
  triangles: number[];
  tone: SceneTone;
  note: string;
}

export interface ScenePlace {
  name: string;
  /** x, y, z. */
  at: number[];
}

/** What a push on a pedal does. */
export interface ScenePush {
  key: string;
  name: string;
  /** How far the pad moves, and where stress is highest. */
  sentence: string;
  moved: SceneMoved[];
  /** Highest stress of all, MPa. */
  highest: number;
  /** Where it is: x, y, z. */
  worst: number[];
}

export interface SceneMoved {
  /** Key of a body. */
  body: string;
  /** x, y, z of each of its points, mm. */
  shifts: number[];
  /** Of each triangle, or of each piece between two points of a rod, MPa. */
  stresses: number[];
}
