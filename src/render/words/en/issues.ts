import type { IssueProblem } from '../../../plan/issue.ts'

export const issues: Readonly<Record<IssueProblem, string>> = {
  'not-json': 'The file is not JSON: {received}. Mend that place; nothing was changed.',
  'not-an-object': 'A plan is an object in braces; this file holds {received}.',
  'too-deep': 'The plan is nested {received} levels deep; at most {first} are read.',
  'too-large': 'The plan holds {received} values or characters; at most {first} are read.',
  'too-long': '{at}: the text is longer than fits here. Shorten it; for a measure write it like {first}.',
  'too-many': '{at}: {received} entries; at most {first} are read.',
  'unknown-key': '{at}: there is no field “{received}” here. {hint}',
  'wrong-kind': '{at}: “{received}” is of the wrong kind. Write it like {first}.',
  'no-unit': '{at}: {received} has no unit. Write it like {first}.',
  'unknown-unit':
    '{at}: “{received}” cannot be read: what stands after the number is no unit of this measure. Write it like {first}; units that fit: {units}.',
  'ambiguous-unit': '{at}: “{received}” has more than one meaning. Write {expected}.',
  'which-scale':
    '{at}: “{received}”: on which scale? A pen of the 500 scale means {first}, of 640 {second}, of 700 {last}. Look which pen it is, and write that one; the text stays as typed until then.',
  'ambiguous-number': '{at}: “{received}” can be read in two ways. Write {expected}.',
  'not-a-number': '{at}: no number can be read in “{received}”. Write it like {first}.',
  'not-whole': '{at}: {received} must be a whole number.',
  'out-of-bounds': '{at}: {received} lies outside {first} to {second}. Check the number and its unit. {meant}',
  'not-a-choice': '{at}: “{received}” is none of the choices: {expected}.',
  'not-in-table': '{at}: no such row in the table: “{received}”. {hint}',
  incomplete: '{at}: a measure is missing: {expected}.',
  'none-chosen': '{at}: none is chosen yet. Choose at least one: {expected}.',
  'version-missing': 'rootfall: the version of the form is missing. Write "rootfall": {first} as the first line.',
  'version-newer':
    'The plan is of form {received}; this rootfall reads up to {first}. Use a newer rootfall; the file was left as it is.',
  'version-unknown': 'rootfall: “{received}” is no version of the form. Write {first}.',
}
