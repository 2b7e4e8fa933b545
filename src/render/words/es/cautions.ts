/**
 * Said at the step where the danger is. They name what to do; what is allowed is for local codes and for those who are
 * licensed to say.
 */
export const cautions: Readonly<Record<string, string>> = {
  acid: 'Gafas y guantes. Vierta el ácido en el agua, nunca el agua en el ácido. Guarde ácido y base separados, y ambos lejos de los niños. La etiqueta del ácido va antes que esta hoja.',
  'ask-building':
    'Pregunte al dueño o administrador del edificio antes de taladrar una pared, barandilla o losa; una barandilla puede no estar hecha para sostener la torre.',
  backflow:
    'Nunca deje la manguera de llenado dentro del depósito. Mantenga su extremo al menos {airGap} sobre el borde; sobre el llenado fijo deciden las reglas del agua de su lugar.',
  blade:
    'Sujete el tubo con mordazas. Manos detrás de la hoja y sin guantes cerca de brocas que giran. Protección de ojos.',
  bleach:
    'Nada de lejía cerca de ácido o fertilizante: los gases son venenosos. Su etiqueta y las normas de su lugar van primero.',
  children:
    'Este paso lo hacen adultos. Los niños quedan fuera de la sala o el patio hasta que herramientas y latas estén guardadas.',
  disposal:
    'El agua de enjuague va al desagüe de aguas residuales; la solución nutritiva va primero a plantas o compost, nunca a la alcantarilla pluvial ni a un arroyo.',
  'drip-loop':
    'Deje que el cable cuelgue por debajo del enchufe antes de subir a él, para que las gotas caigan. Sin empalmes de cables en el suelo.',
  drowning:
    'Un niño pequeño puede ahogarse en un depósito abierto. Cierre o lastre la tapa siempre que se dé la vuelta.',
  dust: 'Mascarilla P2 o N95 y gafas. Corte en húmedo o recoja el polvo; no lo barra en seco.',
  'dust-drain': 'Recoja las virutas con un paño o colador; el polvo de plástico no va al desagüe.',
  'epoxy-skin': 'Guantes: la resina epoxi sin endurecer vuelve alérgica la piel.',
  flame: 'Sin llama, cigarrillo, piloto ni estufa cerca: el vapor de pegamento e imprimación arde.',
  floor:
    'Pregunte a quien responde del edificio cuánto puede soportar el suelo o balcón; el agua pesa un kilogramo por litro, 8,3 lb por galón de EE. UU.',
  food: 'Lávese las manos 20 segundos antes de tocar plantas o vasos. Nadie enfermo cuida ni cosecha. Las hojas no tocan la solución.',
  'heat-gloves': 'Guantes de cuero: tubo y horma queman la piel mucho después de parecer fríos.',
  'hidden-cables': 'Localice tuberías y cables en la pared antes de taladrar.',
  'hot-pvc':
    'Al aire libre. Pare al primer tono marrón u olor: por encima de {fumes} el PVC desprende cloruro de hidrógeno. Nunca use llama.',
  laser:
    'El PVC nunca debe entrar en un láser: desprende cloruro de hidrógeno, que daña pulmones y máquina. Use estas hojas con un rotulador o una fresadora.',
  legionella:
    'Mantenga el agua por debajo de {cool}, a la sombra y bajo tapón cerrado; sin niebla. Bacterias que dañan los pulmones crecen en agua tibia y viajan en la niebla.',
  'legionella-care':
    'Donde viven personas de salud delicada, pida el plan de seguridad del agua de la casa antes de poner en marcha la torre.',
  lifting: 'Llene donde va a quedar; no cargue solo cubos llenos. Mueva el depósito vacío.',
  'low-voltage': 'Mantenga la fuente seca y por encima del agua. Junto al polo positivo de la batería va un fusible.',
  mains:
    'Solo un enchufe tras un interruptor diferencial (como máximo {trip} mA; {tripUS} mA donde rige la clase A). Desenchufe antes de meter la mano en el depósito. Enchufes nuevos y cableado exterior son trabajo de un electricista autorizado.',
  'not-drinking': 'Escriba “agua no potable” en el depósito.',
  'old-pipe':
    'No use tubo viejo o sin marcado: puede contener plomo. El tubo de desagüe no garantiza agua potable; el que lleva marca de potable, sí.',
  'sealant-air': 'Ventile la sala mientras el sellador cura y evite que toque la piel.',
  'separate-cups': 'Marque los vasos y cucharas para fertilizante y no los use en la cocina.',
  'solvent-gloves':
    'Gafas y guantes; cambie los guantes cuando se hinchen, pues los disolventes atraviesan el nitrilo.',
  tipping:
    'Dos personas, y una sujeta la columna hasta que esté atada o en su base. Por encima de {strapAbove} se ata a una pared o armazón.',
  'unknown-plastic':
    'El plan no dice de qué es un tubo. Lea el marcado antes de comprar pegamento: el polipropileno gris parece PVC y no se puede pegar.',
  vapours:
    'Al aire libre o con corriente de aire: pegamento e imprimación llevan disolventes que dañan con unos cientos de partes por millón. Lea la lata.',
}
