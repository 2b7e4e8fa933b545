import type { EquationText } from './equations.ts'

/** The water's way and the reservoir. */
export const water: Readonly<Record<string, EquationText>> = {
  daysBetweenTopUps: {
    about: 'Días hasta la línea mínima, como banda de la sed de las plantas y de lo demás que deja el depósito.',
    symbols: 't tiempo [d], V_use volumen útil [m3], n plantas [1], q agua de una planta [m3/d], e otra pérdida [m3/d]',
    valid: 'sin reponer, sin lluvia',
  },
  distributorHead: {
    about: 'Altura de agua sobre los agujeros de un distribuidor con una parte obstruida.',
    symbols:
      'h altura de agua [m], Q caudal [m³/s], n agujeros taladrados [1], b parte obstruida [1], Cd coeficiente de descarga [1], d diámetro [m]',
    valid: 'placa nivelada; como `orificeFlow`',
  },
  drainDepthShare: {
    about:
      'Parte del diámetro hasta la que un desagüe inclinado se llena con un caudal; nula donde se llenaría más de lo debido.',
    symbols: 'y/D profundidad entre diámetro [1], Q caudal [m³/s]',
    valid: 'y/D ≤ 0,8',
  },
  fillLine: {
    about:
      'Nivel más alto que aguanta el retorno: cuando la bomba para, vuelven la subida, el vaso, la película y las raíces, y el nivel aún debe quedar bajo el borde por el resguardo. Nulo donde el recipiente no puede acoger lo que vuelve.',
    symbols: 'V solución a un nivel [m3], h nivel [m], V_back lo que vuelve [m3], H profundidad [m], f resguardo [m]',
    valid: 'recipiente nivelado',
  },
  fillingFlow: {
    about: 'Caudal con el que un distribuidor está lleno hasta su borde o hasta su rebosadero interior.',
    symbols:
      'Q caudal [m³/s], H profundidad del vaso sobre los agujeros [m], n agujeros taladrados [1], b parte obstruida [1], Cd coeficiente de descarga [1], d diámetro de un agujero [m]',
    valid: 'placa nivelada',
  },
  frustumLevel: {
    about: 'Nivel en un cubo o bidón redondo que contiene un volumen: el tronco de cono resuelto para h.',
    symbols:
      'h nivel [m], V volumen [m3], d1 y d2 diámetros interiores en el fondo y en el borde [m], H profundidad [m], k conicidad [1]',
    valid: '0 ≤ V ≤ volumen hasta el borde',
  },
  longestPause: {
    about: 'Pausa más larga de un temporizador que deja una parte del agua en reserva.',
    symbols: 't_off pausa [s], t_dry tiempo hasta secarse [s], r parte que queda en reserva [1]',
    valid: 'la hora de mayor sed',
  },
  lowLine: {
    about:
      'Nivel más bajo con el que la bomba sigue cubierta tras un arranque, cuando la subida, el vaso, la película y las raíces se han llenado del depósito. Nulo donde el recipiente no puede contener tanto.',
    symbols:
      'h_pump profundidad que necesita la bomba [m], V solución a un nivel [m3], V_up lo que se lleva un arranque [m3]',
    valid: 'recipiente nivelado',
  },
  orificeFlow: {
    about: 'Caudal por agujeros redondos iguales bajo una altura de agua.',
    symbols:
      'Q caudal [m³/s], n número de agujeros [1], Cd coeficiente de descarga [1], d diámetro de un agujero [m], h altura de agua [m]',
    valid: 'Re del agujero por encima de unos 1000; por debajo Cd baja',
  },
  orificeHead: {
    about: 'Altura de agua sobre agujeros redondos iguales que dejan pasar un caudal.',
    symbols:
      'h altura de agua [m], Q caudal [m³/s], n número de agujeros [1], Cd coeficiente de descarga [1], d diámetro de un agujero [m]',
    valid: 'como `orificeFlow`',
  },
  prismoidVolume: {
    about: 'Volumen de una caja cuyas paredes pueden inclinarse hacia fuera, llena desde el fondo hasta un nivel.',
    symbols:
      'V volumen [m3], l1 y w1 largo y ancho interiores en el fondo [m], l2 y w2 en el borde [m], l y w al nivel [m], H profundidad [m], h nivel sobre el fondo [m]',
    valid: '0 ≤ h ≤ H, paredes planas, esquinas rectas; las redondeadas contienen menos',
  },
  startHead: {
    about: 'Altura de agua que empuja el agua por un agujero con la cara de abajo seca.',
    symbols: 'h* altura de arranque [m], σ tensión superficial [N/m], ρ densidad [kg/m³], d diámetro del agujero [m]',
    valid:
      'agua limpia sobre plástico; límite de arranque, no de parada: una vez mojado, un agujero puede seguir goteando por debajo',
  },
  tiltFlowShare: {
    about:
      'Diferencia de caudal entre el agujero más bajo y el más alto de una placa desnivelada, como parte de la media.',
    symbols: 'ΔQ/Q parte [1], δ diferencia de altura de borde a borde [m], h altura de agua en el centro [m]',
    valid: 'δ < 2h; más allá el agujero más alto queda seco',
  },
  timeToDry: {
    about: 'Tiempo desde que el agua para hasta que las plantas de una torre han gastado la que alcanzan.',
    symbols:
      't tiempo [s], V agua retenida junto a la planta por vaso, taco y raíces [m³], u parte que las raíces pueden tomar [1], E sed de la planta [m³/s]',
    valid: 'la sed de la hora de que se trata; una planta se marchita antes de que se acabe la última',
  },
}
