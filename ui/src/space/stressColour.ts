/**
 * Colours of a stress, dark blue to yellow, even in lightness and the same order for every kind of colour vision.
 * Anchors of the map published by Nuñez, Anderton and Renslow (PLoS ONE 13(7), 2018), from memory, to 2/255.
 */
const ANCHORS: readonly (readonly [number, number, number])[] = [
  [0, 34, 78],
  [53, 69, 108],
  [102, 105, 112],
  [148, 142, 119],
  [200, 184, 102],
  [254, 232, 56],
];

/** Red, green and blue, 0 to 1, of a share of the highest stress. */
export function stressColour(share: number): [number, number, number] {
  const place = Math.min(1, Math.max(0, share)) * (ANCHORS.length - 1);
  const below = Math.min(Math.floor(place), ANCHORS.length - 2);
  const from = ANCHORS[below]!;
  const to = ANCHORS[below + 1]!;
  const part = place - below;
  const mixed = (i: 0 | 1 | 2) => (from[i] + (to[i] - from[i]) * part) / 255;
  return [mixed(0), mixed(1), mixed(2)];
}

/** The same for a style sheet. */
export function stressStyle(share: number): string {
  const [red, green, blue] = stressColour(share).map((one) => Math.round(one * 255));
  return `rgb(${red} ${green} ${blue})`;
}
