/** The drawing in space: what is shown, how it is turned, and what is under a finger. Draws only when something changed. */
import {
  AmbientLight,
  Box3,
  BufferGeometry,
  Color,
  DirectionalLight,
  DoubleSide,
  Line,
  LineBasicMaterial,
  type Material,
  Mesh,
  MeshLambertMaterial,
  MeshBasicMaterial,
  PerspectiveCamera,
  Raycaster,
  Scene as Stage,
  Sphere,
  SphereGeometry,
  Spherical,
  Vector2,
  Vector3,
  WebGLRenderer,
} from 'three';
import { OrbitControls } from 'three/examples/jsm/controls/OrbitControls.js';
import type { Scene, SceneBody, SceneGroup, ScenePush, SceneTone } from '../sceneContract.ts';
import { poseOf, shapeOf } from './bodyShape.ts';
import type { Place } from './measure.ts';

export interface Look {
  hidden: ReadonlySet<SceneGroup>;
  push: ScenePush | null;
  /** How many times as large a movement is drawn. */
  times: number;
  /** Ends of the length that is measured. */
  ends: readonly Place[];
  chosen: string | null;
}

export type Side = 'corner' | 'left' | 'above' | 'behind';

/** Toward the eye: x forward, y left, z up. */
const SIDES: Record<Side, Vector3> = {
  corner: new Vector3(-1, 0.9, 0.7),
  left: new Vector3(0, 1, 0),
  above: new Vector3(-0.001, 0, 1),
  behind: new Vector3(-1, 0, 0),
};

const TONES: Record<SceneTone, string> = {
  metal: '--space-metal',
  front: '--front',
  rear: '--rear',
  clutch: '--case-4',
  hot: '--stop',
  room: '--rule-strong',
};

const SEE_THROUGH: ReadonlySet<SceneTone> = new Set<SceneTone>(['room', 'hot']);

/** Movement of a finger between down and up, px, that is still a tap. */
const TAP = 6;

export class SpaceView {
  private readonly stage = new Stage();
  private readonly camera = new PerspectiveCamera(35, 1, 1, 1e5);
  private readonly renderer: WebGLRenderer;
  private readonly controls: OrbitControls;
  private readonly watch: ResizeObserver;
  private readonly drawn: Mesh[] = [];
  private readonly others: (Mesh | Line)[] = [];
  private readonly down = new Vector2();
  private waiting = false;

  /** @throws when the browser has no WebGL */
  constructor(
    private readonly canvas: HTMLCanvasElement,
    private readonly picked: (body: string | null, place: Place | null) => void,
  ) {
    this.renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
    this.camera.up.set(0, 0, 1);
    this.stage.add(new AmbientLight(0xffffff, 1.6), this.camera);
    const lamp = new DirectionalLight(0xffffff, 2);
    lamp.position.set(0.4, 0.8, 1);
    this.camera.add(lamp);
    this.controls = new OrbitControls(this.camera, canvas);
    this.controls.zoomToCursor = true;
    this.controls.addEventListener('change', () => this.draw());
    this.watch = new ResizeObserver(() => this.resize());
    this.watch.observe(canvas);
    canvas.addEventListener('pointerdown', (event) => this.down.set(event.clientX, event.clientY));
    canvas.addEventListener('pointerup', (event) => this.tap(event));
    // Without this the page would stand still under a wheel that passes by.
    canvas.addEventListener('wheel', (event) => this.passBy(event), { capture: true });
  }

  /** Shows a scene; everything that is drawn is built anew. */
  show(scene: Scene, look: Look): void {
    this.clear();
    for (const body of scene.bodies) {
      if (!look.hidden.has(body.group)) {
        this.add(body, look);
      }
    }
    this.measured(look.ends);
    if (look.push !== null && look.push.worst.length === 3 && !look.hidden.has('mount')) {
      this.others.push(this.ring(look.push.worst as unknown as Place, '--stop'));
    }
    this.stage.add(...this.drawn, ...this.others);
    this.draw();
  }

  /** Looks at all that is shown, or at some bodies, from a side. */
  fit(side: Side | null, bodies: readonly string[] | null = null): void {
    const box = new Box3();
    for (const one of this.drawn) {
      if (bodies === null || bodies.includes(one.name)) {
        box.expandByObject(one);
      }
    }
    if (box.isEmpty()) {
      return;
    }
    const sphere = box.getBoundingSphere(new Sphere());
    const toward = side === null ? this.camera.position.clone().sub(this.controls.target) : SIDES[side].clone();
    const narrow = Math.min(1, this.camera.aspect);
    const away = (1.05 * sphere.radius) / Math.sin(((this.camera.fov / 2) * Math.PI) / 180) / narrow;
    this.controls.target.copy(sphere.center);
    this.camera.position.copy(sphere.center).add(toward.setLength(away));
    this.camera.near = away / 200;
    this.camera.far = away * 20;
    this.camera.updateProjectionMatrix();
    this.controls.update();
    this.draw();
  }

  /** Turns round what is looked at, rad. */
  turn(around: number, over: number): void {
    const from = this.camera.position.clone().sub(this.controls.target);
    // Spherical counts from y; here z is up.
    const place = new Spherical().setFromVector3(new Vector3(from.y, from.z, from.x));
    place.theta += around;
    place.phi = Math.min(Math.PI - 0.01, Math.max(0.01, place.phi - over));
    const to = new Vector3().setFromSpherical(place);
    this.camera.position.copy(this.controls.target).add(new Vector3(to.z, to.x, to.y));
    this.controls.update();
    this.draw();
  }

  /** Goes nearer by a factor below 1, away by one above. */
  near(factor: number): void {
    const from = this.camera.position.clone().sub(this.controls.target);
    this.camera.position.copy(this.controls.target).add(from.multiplyScalar(factor));
    this.controls.update();
    this.draw();
  }

  close(): void {
    this.watch.disconnect();
    this.clear();
    this.controls.dispose();
    this.renderer.dispose();
  }

  private add(body: SceneBody, look: Look): void {
    const moved = look.push?.moved.find((one) => one.body === body.key) ?? null;
    const pose = poseOf(body, moved, look.times, look.push?.highest ?? 0);
    const mesh = new Mesh(shapeOf(body, pose), this.material(body, pose.shares.length > 0, body.key === look.chosen));
    mesh.name = body.key;
    this.drawn.push(mesh);
    if (moved !== null && look.times > 0) {
      this.others.push(new Mesh(shapeOf(body, poseOf(body, null, 0, 0)), this.ghost()));
    }
  }

  private material(body: SceneBody, stressed: boolean, chosen: boolean): Material {
    const clear = SEE_THROUGH.has(body.tone);
    return new MeshLambertMaterial({
      color: stressed ? new Color(1, 1, 1) : this.colour(TONES[body.tone]),
      vertexColors: stressed,
      emissive: chosen ? this.colour('--focus') : new Color(0, 0, 0),
      emissiveIntensity: chosen ? 0.45 : 0,
      side: DoubleSide,
      transparent: clear,
      opacity: clear ? 0.3 : 1,
      depthWrite: !clear,
    });
  }

  private ghost(): Material {
    return new MeshBasicMaterial({ color: this.colour('--ink-soft'), wireframe: true, transparent: true, opacity: 0.15 });
  }

  private measured(ends: readonly Place[]): void {
    for (const end of ends) {
      this.others.push(this.ring(end, '--focus'));
    }
    if (ends.length === 2) {
      const points = ends.map((end) => new Vector3(...end));
      const line = new Line(new BufferGeometry().setFromPoints(points), new LineBasicMaterial({ color: this.colour('--focus'), depthTest: false }));
      line.renderOrder = 2;
      this.others.push(line);
    }
  }

  /** A mark that shows through everything, of a size that can be seen from where the eye is. */
  private ring(at: Place, colour: string): Mesh {
    const mark = new Mesh(new SphereGeometry(1, 16, 12), new MeshBasicMaterial({ color: this.colour(colour), depthTest: false, transparent: true, opacity: 0.8 }));
    mark.position.set(...at);
    mark.renderOrder = 3;
    mark.onBeforeRender = () => {
      const size = this.camera.position.distanceTo(mark.position) / 120;
      mark.scale.setScalar(size);
      mark.updateMatrixWorld();
    };
    return mark;
  }

  private colour(variable: string): Color {
    const text = getComputedStyle(this.canvas).getPropertyValue(variable).trim();
    return new Color(text === '' ? '#777777' : text);
  }

  private tap(event: PointerEvent): void {
    if (Math.hypot(event.clientX - this.down.x, event.clientY - this.down.y) > TAP) {
      return;
    }
    const box = this.canvas.getBoundingClientRect();
    const at = new Vector2(((event.clientX - box.left) / box.width) * 2 - 1, 1 - ((event.clientY - box.top) / box.height) * 2);
    const ray = new Raycaster();
    ray.setFromCamera(at, this.camera);
    const hits = ray.intersectObjects(this.drawn, false);
    const solid = hits.find((hit) => !((hit.object as Mesh).material as Material).transparent) ?? hits[0];
    this.picked(solid?.object.name ?? null, solid === undefined ? null : (solid.point.toArray() as Place));
  }

  private passBy(event: WheelEvent): void {
    if (document.activeElement !== this.canvas) {
      event.stopImmediatePropagation();
    }
  }

  private clear(): void {
    for (const one of [...this.drawn, ...this.others]) {
      this.stage.remove(one);
      one.geometry.dispose();
      (one.material as Material).dispose();
    }
    this.drawn.length = 0;
    this.others.length = 0;
  }

  private resize(): void {
    const { clientWidth, clientHeight } = this.canvas;
    if (clientWidth === 0 || clientHeight === 0) {
      return;
    }
    this.renderer.setPixelRatio(Math.min(window.devicePixelRatio, 2));
    this.renderer.setSize(clientWidth, clientHeight, false);
    this.camera.aspect = clientWidth / clientHeight;
    this.camera.updateProjectionMatrix();
    this.draw();
  }

  private draw(): void {
    if (this.waiting) {
      return;
    }
    this.waiting = true;
    requestAnimationFrame(() => {
      this.waiting = false;
      this.renderer.render(this.stage, this.camera);
    });
  }
}
