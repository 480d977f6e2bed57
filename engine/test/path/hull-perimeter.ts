interface Disc {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

/**
 * Perimeter of the convex hull of discs as the integral of the support function (Cauchy): no tangents, no wraps.
 * Where one disc supports a whole interval the integral is exact; intervals with a change are halved down to 1e-8.
 */
export function hullPerimeter(discs: readonly Disc[]): number {
  const support = (angle: number) => {
    let best = 0;
    let most = Number.NEGATIVE_INFINITY;
    discs.forEach(({ x, y, r }, i) => {
      const value = x * Math.cos(angle) + y * Math.sin(angle) + r;
      if (value > most) {
        most = value;
        best = i;
      }
    });
    return { best, most };
  };
  const exact = ({ x, y, r }: Disc, from: number, to: number) =>
    x * (Math.sin(to) - Math.sin(from)) - y * (Math.cos(to) - Math.cos(from)) + r * (to - from);
  const integral = (from: number, to: number): number => {
    const [a, b] = [support(from), support(to)];
    if (a.best === b.best && to - from < 0.1) return exact(discs[a.best] as Disc, from, to);
    if (to - from < 1e-8) return ((a.most + b.most) / 2) * (to - from);
    const middle = (from + to) / 2;
    return integral(from, middle) + integral(middle, to);
  };
  return integral(0, 2 * Math.PI);
}
