import type { FindingWords } from '../../words.ts'

export const build: Readonly<Record<string, FindingWords>> = {
  'build/temperature': {
    short: 'Calor para pegar',
    pass: 'El pegamento fragua entre {from} y {to}; el lugar tiene {measured}. Con el mayor frío espere {set} antes de mover una unión y {water} antes de echar agua.',
    watch: 'El lugar tiene {measured}; el pegamento solo fragua entre {from} y {to}. Elija el día.',
    fail: 'El lugar tiene {measured}, y el pegamento solo fragua entre {from} y {to}. Pegue bajo techo, o use otra unión.',
    because: 'Los tiempos impresos de fraguado y curado acaban en estas temperaturas.',
  },
  'build/laser': {
    short: 'Nada de PVC en el láser',
    pass: 'No se piensa poner PVC en un láser.',
    watch: 'Tubos de PVC o de plástico no indicado: {measured}.',
    fail: 'Se prevé un láser, con tubos de PVC o de plástico no indicado: {measured}. El PVC en un láser desprende cloruro de hidrógeno. Use las hojas con un rotulador o una fresadora.',
    because: 'El cloruro de hidrógeno daña los pulmones y corroe la máquina; ningún filtro doméstico lo retiene.',
  },
  'build/strap': {
    short: 'Columna alta sujeta',
    pass: 'El extremo de la columna está a {measured} del suelo, y está sujeta o es lo bastante baja para quedar suelta.',
    watch: 'El extremo de la columna está a {measured} del suelo.',
    fail: 'El extremo de la columna está a {measured} del suelo y nada la sujeta; por encima de {above} hace falta una cincha a una pared o armazón. Pregunte a quien responde de la pared.',
    because: 'Algo alto y estrecho con asas recibe tirones y apoyos, primero de los niños.',
  },
  'build/children': {
    short: 'Pasos solo para adultos',
    pass: 'Ningún paso es solo para adultos.',
    watch:
      'Hay niños en este lugar: {measured} de {steps} pasos son solo para adultos. Planee quién los hace, y cuándo.',
    fail: 'Hay niños en este lugar: {measured} de {steps} pasos son solo para adultos.',
    because: 'Sierras, disolventes, plástico caliente, corriente y ácido no son trabajo de niños.',
  },
}
