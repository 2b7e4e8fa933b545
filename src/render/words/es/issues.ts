import type { IssueProblem } from '../../../plan/issue.ts'

export const issues: Readonly<Record<IssueProblem, string>> = {
  'not-json': 'El archivo no es JSON: {received}. Corrija ese lugar; no se cambió nada.',
  'not-an-object': 'Un plan es un objeto entre llaves; este archivo contiene {received}.',
  'too-deep': 'El plan tiene {received} niveles de anidamiento; se leen como máximo {first}.',
  'too-large': 'El plan tiene {received} valores o caracteres; se leen como máximo {first}.',
  'too-long': '{at}: el texto es más largo de lo que cabe aquí. Acórtelo; para una medida escriba como {first}.',
  'too-many': '{at}: {received} entradas; se leen como máximo {first}.',
  'unknown-key': '{at}: aquí no hay ningún campo “{received}”. {hint}',
  'wrong-kind': '{at}: “{received}” es de otra clase. Escríbalo como {first}.',
  'no-unit': '{at}: {received} no tiene unidad. Escríbalo como {first}.',
  'unknown-unit':
    '{at}: “{received}” no se puede leer: lo que sigue al número no es una unidad de esta medida. Escríbalo como {first}; unidades que valen: {units}.',
  'ambiguous-unit': '{at}: “{received}” tiene más de un significado. Escriba {expected}.',
  'which-scale':
    '{at}: “{received}”: ¿en qué escala? Un medidor de la escala 500 quiere decir {first}, de 640 {second}, de 700 {last}. Mire cuál es el medidor y escriba ese valor; hasta entonces el texto queda como se escribió.',
  'ambiguous-number': '{at}: “{received}” puede leerse de dos maneras. Escriba {expected}.',
  'not-a-number': '{at}: no se puede leer ningún número en “{received}”. Escríbalo como {first}.',
  'not-whole': '{at}: {received} debe ser un número entero.',
  'out-of-bounds': '{at}: {received} está fuera de {first} a {second}. Revise el número y su unidad. {meant}',
  'not-a-choice': '{at}: “{received}” no es ninguna de las opciones: {expected}.',
  'not-in-table': '{at}: no hay tal fila en la tabla: “{received}”. {hint}',
  incomplete: '{at}: falta una medida: {expected}.',
  'none-chosen': '{at}: aún no hay ninguno elegido. Elija al menos uno: {expected}.',
  'version-missing': 'rootfall: falta la versión del formato. Escriba "rootfall": {first} como primera línea.',
  'version-newer':
    'El plan es del formato {received}; este rootfall lee hasta {first}. Use un rootfall más nuevo; el archivo quedó como está.',
  'version-unknown': 'rootfall: “{received}” no es una versión del formato. Escriba {first}.',
}
