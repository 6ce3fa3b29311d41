/** An even scatter without chance: multiples of an irrational number, their whole part dropped. */
export function scatter(place: number, step: number): number {
  return ((place + 1) * step) % 1;
}
