/** What the engine holds inside: 32.2 ft/s², and 1.1e-5 ft²/s for a relative viscosity of one. */
export const EPANET_GRAVITY_m_s2 = 32.2 * 0.3048
export const EPANET_VISCOSITY_m2_s = 1.1e-5 * 0.3048 ** 2
