import type { EquationText } from './equations.ts'

/** The pipe, its holes and stubs, and how it stands. */
export const tower: Readonly<Record<string, EquationText>> = {
  boreForRoots: {
    about: 'Diámetro interior en el que un área de raíces ocupa una parte deseada, junto a un tubo.',
    symbols:
      'D diámetro interior [m], A área de las raíces [m²], s parte que pueden ocupar [1], A_t área de un tubo en el interior [m²]',
    valid: 'cualquiera',
  },
  boreGap: {
    about:
      'Hueco en el interior entre los extremos de brazos vecinos repartidos por igual en un nivel; nulo para extremos que no llegan al interior.',
    symbols:
      'd distancia del plano del inglete al eje de la columna [m], k brazos en el nivel, r radio exterior del brazo [m], Ri radio interior de la columna [m]; negativo donde los extremos se tocan',
    valid: 'k ≥ 2, |e| + r ≤ Ri, d > 0',
  },
  cupFeetGap: {
    about: 'Hueco entre los pies de vasos vecinos repartidos por igual en un nivel; negativo donde se tocan.',
    symbols:
      'g hueco [m], L largo por el eje [m], h profundidad del vaso [m], θ entre los ejes [rad], k vasos en el nivel, q radio del pie [m]',
    valid:
      'k ≥ 2, 0 < θ ≤ π/2, brazos por el eje de la columna; el doble de la distancia de un pie al plano medio entre dos',
  },
  cupReach: {
    about:
      'Cuánto entra el pie de un vaso, más allá de la pared interior, en el agua que cae, por su eje y sus líneas exteriores; negativo donde se queda en el brazo.',
    symbols: 'h profundidad del vaso bajo su borde, por el eje del brazo [m]',
    valid: 'como en mouthToBore; el borde se apoya en la boca',
  },
  floorLoad: {
    about: 'Carga de la torre repartida en aquello sobre lo que está.',
    symbols:
      'p carga por área [kg/m2], también como presión [Pa = N/m2], m masa [kg], A área de la huella o de una tabla debajo [m2], g caída libre [m/s2]',
    valid: 'tabla bastante rígida para repartir la carga; personas y nieve no cuentan',
  },
  freeCore: {
    about: 'Diámetro del núcleo del interior que los brazos dejan libre.',
    symbols: 'd distancia del plano del inglete al eje de la columna [m], Ri radio interior de la columna [m]',
    valid: 'cualquier profundidad',
  },
  freeboard: {
    about:
      'Resguardo del labio: su altura sobre el punto más bajo del interior del brazo donde se abre al interior de la columna.',
    symbols:
      'f resguardo, cuánto debe subir el agua para derramarse [m], L largo por el eje [m], Ri, ri radios interiores de columna y brazo [m], θ entre los ejes [rad], δ como en lipHeight',
    valid: '|e| + r ≤ Ri, 0 < θ ≤ π/2',
  },
  heelRise: {
    about: 'Subida de la línea exterior de abajo de un brazo, desde el canto bajo del agujero hasta la boca.',
    symbols: 'z subida [m], l largo fuera de la columna por la línea exterior de abajo [m], θ entre los ejes [rad]',
    valid: '0 < θ ≤ π/2',
  },
  mitreReach: {
    about: 'Cuánto entra en el interior un extremo a inglete, por la línea central.',
    symbols:
      'b entrada en el interior [m], Ri radio interior de la columna [m], d distancia del plano al eje de la columna [m]',
    valid: '0 ≤ d ≤ Ri para un extremo que llega al interior',
  },
  nearestMouths: {
    about:
      'Distancia en el espacio entre las dos bocas más cercanas de un conjunto de puestos; nula para menos de dos.',
    symbols: 'C distancia de las bocas al eje de la columna [m], Δφ, Δz giro y subida entre dos puestos [rad, m]',
    valid: 'todos los brazos iguales',
  },
  outsideLigament: {
    about:
      'Pared que queda entre dos agujeros, como la distancia más corta de sus cantos en el exterior desarrollado; 0 donde se tocan.',
    symbols:
      'φ, z de los cantos como en crossingPoint (corte por el eje) o squareCutHeights (corte a escuadra), Δφ, Δz giro y subida de un puesto al otro [rad, m], R radio exterior de la columna [m]',
    valid: '|e| + q ≤ Ri, 0 < θ ≤ π/2, -π < Δφ ≤ π; los dos agujeros iguales',
  },
  rightingRatio: {
    about: 'Cuántas veces el peso resiste lo que vuelca.',
    symbols: 'n razón de enderezamiento [1], M_r momento que endereza y M_o momento que vuelca [N m]',
    valid: 'sin fin donde nada empuja',
  },
  ringLigament: {
    about:
      'Pared que queda entre agujeros vecinos de un nivel, por el exterior; no positiva donde el anillo es imposible.',
    symbols:
      'Δφ giro entre vecinos [rad], β medio ángulo del agujero [rad], R, Ri radio exterior e interior de la columna [m], q radio del agujero [m]',
    valid: '|e| + q ≤ Ri, 0 < θ ≤ π/2; exacto para e = 0, por debajo del valor verdadero si no',
  },
  sectionStress: {
    about: 'Tensión en la sección más débil bajo flexión y peso, con el pico en el canto de un agujero.',
    symbols:
      'σ tensión [Pa], M momento [N m], W módulo resistente de lo que queda [m3], N peso de encima [N], A área de lo que queda [m2], k pico en un agujero [1]',
    valid: 'secciones planas; dos agujeros anchos opuestos se portan peor que esto: guarde un factor de 3',
  },
  strapForce: {
    about: 'Fuerza en una cincha que da a la torre la razón que le falta.',
    symbols:
      'S tiro de la cincha [N], n razón deseada [1], M_o momento que vuelca y M_r que endereza [N m], z altura de la cincha en la columna [m], α inclinación de la cincha respecto al nivel [rad]',
    valid: 'cincha del lado del que viene el empuje; su tiro hacia abajo no se cuenta, y eso es seguro',
  },
  stubPocket: {
    about: 'Agua que queda en un brazo inclinado hasta su labio cuando las raíces represan su extremo interior.',
    symbols:
      'V volumen [m³], r radio interior del brazo [m], u altura a través de su eje [m], θ ángulo entre los ejes de brazo y columna [rad], l largo por su lado de abajo [m], z labio sobre el lugar donde los ejes tocan la pared [m]',
    valid: 'pared de la columna plana, boca a escuadra; nada donde el labio queda por debajo del extremo interior',
  },
  tapeMark: {
    about: 'Marca de una cinta más cercana a una medida, y el error que eso da.',
    symbols: 'x medida desde el origen [m], s paso de la cinta, como 1 mm o 1/16 in [m]',
    valid: 'cualquier x; |error| ≤ s / 2',
  },
  topMovement: {
    about:
      'Cuánto se mueve lo alto de una columna bajo un viento que aprieta por igual a lo largo, y bajo un empuje a una altura.',
    symbols:
      'y movimiento de lo alto [m], F fuerza repartida en total [N], h altura [m], P empuje [N], z su altura [m], E módulo [Pa], I momento de inercia, el menor a lo largo de la columna [m4]',
    valid: 'pie firme, movimiento pequeño; agujeros en toda la altura con su sección menor, y eso es seguro',
  },
  traceGap: {
    about: 'Mayor hueco entre un canto calcado y el verdadero, en el exterior desarrollado, y dónde está.',
    symbols:
      'φ, z de crossingPoint para el exterior r del brazo en el exterior R de la columna, ψ alrededor del brazo desde su corona [rad]',
    valid: 'r + |e| ≤ R, 0 < θ ≤ π/2; para e = 0 el otro lado es su imagen en un espejo',
  },
  warmStrength: {
    about: 'Tensión que el tubo de PVC puede llevar con la pared caliente.',
    symbols:
      'S tensión permitida a 22,8 °C [Pa], f parte por temperatura, rectas entre las filas de la tabla [1], t temperatura de la pared [°C]',
    valid: 'hasta 60 °C; por debajo de 22,8 °C no se toma ventaja',
  },
}
