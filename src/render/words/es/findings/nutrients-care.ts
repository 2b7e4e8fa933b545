import type { FindingWords } from '../../words.ts'

/** Running, pens, sanitising and disposal. */
export const nutrientsCare: Readonly<Record<string, FindingWords>> = {
  'nutrients/dump-day': {
    short: 'Días hasta el cambio',
    pass: 'Un depósito de {volume} que se repone con {use} dura {measured}; lo acaba {by}.',
    watch:
      'Un depósito de {volume} que se repone con {use} dura solo {measured}; lo acaba {by}. Mezcle agua más blanda, o planee los cambios.',
    fail: 'Un depósito de {volume} dura solo {measured}; lo acaba {by}.',
    because: 'Lo que las plantas dejan en el depósito se suma con cada reposición.',
  },
  'nutrients/pen-gate': {
    short: 'Medidor frente a cálculo',
    pass: 'Previsto {predicted}, medidor {measured}: bien.',
    watch: 'Previsto {predicted}, medidor {measured}. {causes}',
    fail: 'Previsto {predicted}, medidor {measured}. No plante todavía. {causes}',
    because: 'Una preparación que no da lo calculado se mezcló, pesó o leyó mal.',
  },
  'nutrients/crops-together': {
    short: 'Cultivos en un depósito',
    pass: 'Todos los cultivos comparten una banda de concentración de {measured} de ancho.',
    watch: 'Los cultivos apenas comparten una concentración.',
    fail: '{strongest} quiere más de lo que {weakest} soporta: ninguna concentración sirve a ambos. Dé a cada uno su depósito, o cultive otra cosa.',
    because: 'Un depósito tiene una sola concentración.',
  },
  'nutrients/crop-strength': {
    short: 'Concentración del cultivo',
    pass: 'La preparación tiene {measured}, que va bien a todos los cultivos.',
    watch: 'La preparación tiene {measured}; todos los cultivos juntos quieren hasta {want}. Pierde: {losers}.',
    fail: 'La preparación tiene {measured}.',
    because: 'Una solución demasiado fuerte quema los bordes de las hojas, una demasiado débil las deja con hambre.',
  },
  'nutrients/pen': {
    short: 'Confianza en medidor de pH',
    pass: 'El medidor de pH lee con ± {measured}.',
    watch: 'El medidor de pH lee solo con ± {measured}. Calíbrelo.',
    fail: 'El medidor de pH lee solo con ± {measured} ({days} desde la calibración). No dosifique ácido con él antes de calibrarlo en dos soluciones patrón frescas.',
    because: 'Un medidor que se desvía medio pH lleva a echar ácido donde no hacía falta.',
  },
  'nutrients/pen-scale': {
    short: 'Escala del medidor de EC',
    pass: 'La escala del medidor se conoce.',
    watch:
      'El medidor indica ppm de una escala no marcada. {expected} se lee {on500} en la escala 500, {on640} en la 640 y {on700} en la 700. Mire su folleto, o lea con él una solución de conductividad conocida.',
    fail: 'El medidor indica ppm de una escala no marcada.',
    because: '“ppm” en un medidor es conductividad por un número, y se usan tres números.',
  },
  'nutrients/sanitiser': {
    short: 'Fuerza del desinfectante',
    pass: '{product} al {percent} %: {add} en {water} de agua. Limpie antes; gafas, guantes, aire fresco; ningún ácido cerca. La etiqueta manda sobre esto.',
    watch: '{product} al {percent} %.',
    fail: '{product} se vende del {weakest} al {strongest} %. Al {percent} % es otra cosa: lea otra vez la etiqueta, y no añada nada hasta saberlo.',
    because: 'Una concentración errada o no limpia nada o daña a las personas; en muchos países la etiqueta es ley.',
  },
  'nutrients/sanitiser-plants': {
    short: 'Antes, fuera las plantas',
    pass: 'La torre está vacía cuando se desinfecta.',
    watch: 'Hay plantas en la torre.',
    fail: 'Saque antes las plantas. El desinfectante mata las raíces, y lo que queda de él se comería.',
    because: 'Un desinfectante actúa en superficies limpias y vacías.',
  },
  'nutrients/disposal': {
    short: 'Destino de solución usada',
    pass: 'La solución usada va a {to}. Un depósito lleno tiene {nitrogen} de nitrógeno y {phosphorus} de fósforo. Las reglas de la autoridad del agua mandan sobre esto.',
    watch: 'La solución usada va a {to}.',
    fail: 'Nunca a {to}: un depósito tiene {nitrogen} de nitrógeno y {phosphorus} de fósforo. Dela a bancales, arbustos o compost, o pregunte a la autoridad del agua.',
    because: 'Nitrógeno y fósforo alimentan algas, y las algas matan los arroyos.',
  },
}
