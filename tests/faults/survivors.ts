/**
 * Planted faults that no check catches, each with the reason it cannot be caught or does not matter. Formula
 * id, then the fault as `tests/faults.test.ts` names it. A fault that is caught must not be listed.
 */
export const survivors: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'feeding/feeder-by-volume': {
    'n and beta swapped: D = (4 * beta * n * V / pi)^(1 / 3)':
      'The same equation: the two stand in one product or sum.',
  },
  'feeding/feeder-size': {
    's and k swapped: D = k * s * M': 'The same equation: the two stand in one product or sum.',
  },
  'filling/entry-pressure': {
    'a and c swapped: p_cap = -2 * gamma * cos(theta) * (1 / c + 1 / a)':
      'The same equation: the two stand in one product or sum.',
  },
  'filling/flow-length-sand': {
    'T_f and T_m swapped: l = v * pi / 4 * (rho * M * (f * L + c * dT) / (b * (T_m - T_f)))^2':
      'The same value: the difference is squared, and the mould is never hotter than the freezing metal.',
  },
  'freezing/mould-constant': {
    'T_f and T_m swapped: B = pi / 4 * (rho * (L + c * dT) / (b * (T_m - T_f)))^2':
      'The same value: the difference is squared, and the mould is never hotter than the freezing metal.',
  },
  'freezing/time-sand': {
    'T_f and T_m swapped: t = pi / 4 * (rho * M * (L + c * dT) / (b * (T_m - T_f)))^2':
      'The same value: the difference is squared, and the mould is never hotter than the freezing metal.',
  },
  'sand/cake-shear': {
    'P and d swapped: tau = dp * A / (d * P)': 'The same equation: the two stand in one product or sum.',
  },
  'sand/permeability': {
    'K and A swapped: A = mu * V * l / (p * K * t)':
      'The same equation: the two stand in one product or sum.',
  },
  'sand/weight': {
    'F and F_c swapped: m_w = k * (F_c + F) / g - m_c':
      'The same equation: the two stand in one product or sum.',
    'm_w and m_c swapped: m_c = k * (F + F_c) / g - m_w':
      'The same equation: the two stand in one product or sum.',
  },
};
