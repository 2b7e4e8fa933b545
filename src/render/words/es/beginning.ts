/** What the program tells of a plan that it drew from answers, and what it asks before. */
export const beginning = {
  title: 'Lo que se ha elegido por usted',
  kept: 'Esta lista queda en Cambios.',
  close: 'Entendido',
  changed: 'Hecho por usted, para que se cumpla «{finding}»: {acts}.',
  fails: '«{finding}» no se cumple todavía: véalo abajo.',
  gust: 'La ráfaga más fuerte se toma como {gust}, como en un sitio resguardado de una ciudad: ponga la que sopla donde va a estar.',
  sizes: 'Columna, agujeros, subida, distribuidor y desagüe tienen las medidas de una torre corriente.',
  rings: '{rings} anillos de sitios, para que el distribuidor pueda sacarse bajo {height}.',
  tank: 'Una caja para {volume} hace las veces del depósito: mida el suyo.',
  towers: 'Cada una de las {count} torres tiene su propio depósito y su propia bomba.',
  stub: 'Los injertos son de {pipe}, del mismo estante que la columna.',
  'pump-any': 'La bomba queda abierta: sirve cualquiera que diga al menos {head} y {flow} en su caja.',
  'pump-open': 'La bomba queda abierta: no se conocen su altura ni su caudal.',
  tie: 'No se sostiene sola con seguridad. Queda por hacer al montarla: sujétela a {height} a un muro o un bastidor con una cincha que aguante {load}. En el plan nada está sujeto hasta que usted diga que lo estará.',
  'tie-do': 'La sujetaré así: póngalo en el plan',
  'tie-open':
    'No se sostiene sola con seguridad: sujétela, póngale lastre o ensanche su pie. Nada de eso se da por hecho.',
  'crops-apart': '{strongest} y {weakest} no comparten una misma concentración: deles dos depósitos o deje uno fuera.',
  blank:
    'No se dice nada por usted del agua, los abonos, el medidor, las herramientas ni los precios: lo que depende de ellos figura como no sabido.',
  'new-open': '¿Al aire libre?',
  'new-open-yes': 'al aire libre',
  'new-open-no': 'bajo techo',
  'new-towers': '¿Cuántas torres?',
  'new-apart':
    '{strongest} quiere al menos {least}, {weakest} como mucho {most}: un solo depósito no alimenta a los dos. Una misma concentración conviene a {together}; {rest} necesitaría un depósito propio.',
  'new-like': 'por ejemplo {example}',
  'new-pump-blank': 'Las cifras que no sepa pueden quedar vacías: el plan dice entonces qué bomba serviría.',
  'new-named': '{crops}: {place}',
}
