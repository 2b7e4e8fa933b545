import type { SolidViewWords } from '../en/solid-view.ts'

/** What the view of the solid says. Slots in braces. */
export const solidViewWords: SolidViewWords = {
  title: 'Sólido',
  alt: 'La torre en el espacio, vista desde {bearing}° alrededor y {tilt}° arriba: {parts}.',
  'alt-cut': 'La torre abierta por su eje, vista desde {bearing}° alrededor y {tilt}° arriba: {parts}.',
  column: 'columna',
  stub: '{n} brazos',
  distributor: 'distribuidor',
  group: 'Girar el sólido: teclas de flecha, C lo abre',
  left: 'Girar a la izquierda',
  right: 'Girar a la derecha',
  up: 'Desde arriba',
  down: 'Desde abajo',
  cut: 'Abrir',
  nearer: 'Más cerca',
  further: 'Más lejos',
  working: 'Calculando el sólido …',
  empty: 'Aún sin sólido: mida {needs}.',
  because: 'Sin sólido: {why}',
  'no-gl': 'Este navegador no dibuja sólidos aquí. La misma torre está entre los archivos del taller.',
}
