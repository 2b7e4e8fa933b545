import type { EquationText } from './equations.ts'

/** Water chemistry, nutrients, warmth and oxygen. */
export const growing: Readonly<Record<string, EquationText>> = {
  acidDose: {
    about: 'Ácido que lleva una solución a un pH, con el balance de protones del anión del propio ácido.',
    symbols: 'n dosis [mol de ácido por m³], z_i número de carga, c_i concentración [mol/m³]',
    valid: 'como solutionPh; cero donde la solución ya está por debajo del objetivo',
  },
  alkalinity: {
    about:
      'Alcalinidad de una solución: lo que el ácido carbónico, y otros más débiles, retienen frente a los iones fuertes.',
    symbols: 'Alk alcalinidad [mol de carga por m³], z_ref carga de la forma de referencia, n cantidades [mol/m³]',
    valid: 'formas de referencia NH4, H2PO4, H3BO3, ácido cítrico neutro; no cambia con el CO2 ni con la temperatura',
  },
  bufferCapacity: {
    about: 'Capacidad tampón: ácido que baja el pH una unidad, a un pH dado.',
    symbols: 'β capacidad tampón [mol de carga por m³ y pH], Z carga neta de todas las especies [mol/m³]',
    valid: 'como solutionPh',
  },
  chargeBalance: {
    about: 'Si los iones positivos y negativos de un análisis concuerdan.',
    symbols: 'e error [1], C y A carga de cationes y aniones en sus formas de referencia [mol/m³]',
    valid: 'pH de 5 a 9; un análisis de laboratorio concuerda dentro de 0,05, un informe de promedios dentro de 0,1',
  },
  conductivity: {
    about: 'Conductividad eléctrica de una solución a partir de sus iones y pares con carga.',
    symbols:
      "κ conductividad [S/m], c concentración [mol/m³], z número de carga, z' carga media del otro signo, z± y l± medias de cationes y aniones, λ conductividad límite por carga [S m²/mol], I fuerza iónica [mol/L], B1, B2, B relajación, electroforesis y apantallamiento, a tamaño de un ion [Å]",
    valid:
      'I hasta 0,05 mol/L, de 0 a 40 °C; 3 % para soluciones de abono, 1 % para sales simples por debajo de 0,02 eq/L; Ca + Mg que hallan otro tanto de SO4 hasta 6 mmol/L: MgSO4 solo da 1 % de menos a 2 y 6 % de menos a 10 mmol/L',
  },
  dumpedMass: {
    about: 'Masa de un nutriente en un volumen que se tira.',
    symbols: 'm masa [kg], ρ concentración [kg/m³], V volumen [m³]',
    valid: 'cualquier solución',
  },
  loopOxygen: {
    about: 'Oxígeno en el circuito de depósito y columna, día tras día.',
    symbols:
      'C_tank y C_end oxígeno disuelto en el depósito y al pie de la columna [g/m3], C* saturación [g/m3], k velocidad de transferencia de la película [m/s], A área mojada [m2], Q caudal [m3/s], r_c consumo de las raíces en la columna [g/s], r_t consumo en el depósito [g/s], K conductancia de la superficie y del difusor de aire [m3/s]',
    valid:
      'la película cae sin mezclarse hacia atrás; depósito agitado; un valor negativo dice que el consumo no se puede cubrir',
  },
  nutrientMass: {
    about: 'Concentración en masa de un nutriente en una solución, o su masa por kilogramo de producto.',
    symbols:
      'ρ concentración en masa [g/m³], A peso atómico [g/mol], n_c cantidades de los componentes que lo contienen [mol/m³]',
    valid: 'cualquier solución',
  },
  reportedAmount: {
    about: 'Cantidad de un componente a partir del número de un análisis de agua.',
    symbols:
      'n cantidad [mol/m³], x número del informe, m masa de una unidad [g/m³], M masa molar de lo que se pesa [g/mol], ν componentes (o cargas) que representa una fórmula, z número de carga del componente',
    valid: 'cualquier base de la tabla; la masa del propio componente donde la base no nombra fórmula',
  },
  sanitiserVolume: {
    about: 'Volumen de desinfectante que se añade al agua.',
    symbols:
      'v volumen de producto [m³], V volumen de agua antes [m³], c fuerza deseada [g/m³], C fuerza del producto [g/m³], 1 % en volumen es 10 000',
    valid: 'producto fresco; la etiqueta va antes que la cuenta',
  },
  saturationIndex: {
    about: 'Índice de saturación de un sólido: por encima de cero puede precipitar.',
    symbols: 'SI índice de saturación [1], a_i actividades de los iones del sólido, K producto de solubilidad',
    valid: 'fuerza iónica hasta 0,1 mol/kg; menos infinito donde falta un ion',
  },
  solutionCourse: {
    about: 'Temperatura de la solución a lo largo de un día que se repite, con el calor por cada camino.',
    symbols:
      'C capacidad térmica [J/K], T temperatura [°C], G_i conductancias de paredes, columna y suelo [W/K], T_i temperaturas del aire y del suelo [°C], q_j calor del sol y de la bomba menos lo que se irradia al cielo [W], L calor de evaporación [J/kg], w evaporación [kg/s]',
    valid: 'depósito agitado; el mismo tiempo día tras día; el hielo se funde al instante',
  },
  timeToLimit: {
    about: 'Días hasta que un ion alcanza un límite en un depósito que se repone.',
    symbols:
      't tiempo [d], c* límite [g/m³], c0 concentración al principio [g/m³], c_w del agua de reposición [g/m³], E consumo de agua [m³/d], V volumen [m³], p razón de absorción [1]',
    valid: '0 donde el límite ya está pasado, infinito donde nunca se alcanza',
  },
}
