/**
 * The exact answer to a body of one temperature put into a fluid of another (Fourier 1822; as in
 * Incropera and DeWitt, ch. 5): what the heat model is measured against. θ = (T - T∞)/(T0 - T∞).
 */
export const bodies = ['slab', 'cylinder', 'sphere'] as const;
export type BodyName = (typeof bodies)[number];

/** m of the heat model. */
export const exponentOf = (body: BodyName) => bodies.indexOf(body);

/** Bessel's integral, exact to the last digits by the trapezoid since the integrand is periodic. */
function bessel(order: 0 | 1, x: number): number {
  const points = 200;
  let sum = 0;
  for (let i = 0; i < points; i++) {
    const angle = (Math.PI * (i + 0.5)) / points;
    sum += Math.cos(order * angle - x * Math.sin(angle));
  }
  return sum / points;
}

type Family = {
  /** Zero where ζ is an eigenvalue. */
  readonly gap: (zeta: number, biot: number) => number;
  readonly weight: (zeta: number) => number;
  readonly profile: (zetaX: number) => number;
};

const families: Record<BodyName, Family> = {
  slab: {
    gap: (z, biot) => z * Math.sin(z) - biot * Math.cos(z),
    weight: (z) => (4 * Math.sin(z)) / (2 * z + Math.sin(2 * z)),
    profile: Math.cos,
  },
  cylinder: {
    gap: (z, biot) => z * bessel(1, z) - biot * bessel(0, z),
    weight: (z) => ((2 / z) * bessel(1, z)) / (bessel(0, z) ** 2 + bessel(1, z) ** 2),
    profile: (zx) => bessel(0, zx),
  },
  sphere: {
    gap: (z, biot) => (1 - biot) * Math.sin(z) - z * Math.cos(z),
    weight: (z) => (4 * (Math.sin(z) - z * Math.cos(z))) / (2 * z - Math.sin(2 * z)),
    profile: (zx) => (zx === 0 ? 1 : Math.sin(zx) / zx),
  },
};

/** The first eigenvalues ζ and their weights C. */
export function terms(body: BodyName, biot: number, count: number): { zeta: number; c: number }[] {
  const { gap, weight } = families[body];
  const found: { zeta: number; c: number }[] = [];
  const stride = 0.01;
  for (let low = 1e-6; found.length < count; low += stride) {
    if (gap(low, biot) * gap(low + stride, biot) > 0) continue;
    let [from, to] = [low, low + stride];
    for (let halving = 0; halving < 60; halving++) {
      const middle = (from + to) / 2;
      if (gap(from, biot) * gap(middle, biot) <= 0) to = middle;
      else from = middle;
    }
    const zeta = (from + to) / 2;
    found.push({ zeta, c: weight(zeta) });
  }
  return found;
}

/** θ at a depth (0 core, 1 surface) after a time in L²/α. */
export function theta(
  body: BodyName,
  biot: number,
  fourier: number,
  depth = 0,
  count = 10,
): number {
  const { profile } = families[body];
  return terms(body, biot, count)
    .map(({ zeta, c }) => c * Math.exp(-zeta * zeta * fourier) * profile(zeta * depth))
    .reduce((sum, term) => sum + term, 0);
}
