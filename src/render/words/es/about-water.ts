/** What the fields of place, water, tank, pump and riser hold, by the sentence in the definition of the plan. */
export const aboutWater: Readonly<Record<string, string>> = {
  'Version of this form.': 'Versión de este formato.',
  'Name of the tower.': 'Nombre de la torre.',
  'What the reader should know first.': 'Lo que el lector debe saber primero.',
  'Number of the last change.': 'Número del último cambio.',
  'What people call the place.': 'Cómo llama la gente al lugar.',
  'Kind of place; some cautions depend on it.': 'Clase de lugar; algunas precauciones dependen de ella.',
  'Latitude, north positive.': 'Latitud, norte positivo.',
  'Longitude, east positive.': 'Longitud, este positivo.',
  'Height above the sea.': 'Altura sobre el mar.',
  'Compass bearing of the open side, from north through east.': 'Orientación del lado abierto, del norte por el este.',
  'Height of ceiling or slab above the floor.': 'Altura del techo o la losa sobre el suelo.',
  'Floor that may be used, long side.': 'Suelo que se puede usar, lado largo.',
  'Floor that may be used, short side.': 'Suelo que se puede usar, lado corto.',
  'Load per area that the building manager has stated in writing.':
    'Carga por superficie que el administrador del edificio ha indicado por escrito.',
  'Spreading board under the tower, long side.': 'Tabla de reparto bajo la torre, lado largo.',
  'Spreading board under the tower, short side.': 'Tabla de reparto bajo la torre, lado corto.',
  'Strongest gust to be withstood.': 'Racha más fuerte que debe resistir.',
  'What the gust stands for: measured where the tower stands, or of the weather service, brought down to a town, open land or a shore; here where absent.':
    'A qué corresponde la racha: medida donde está la torre, o del servicio meteorológico, llevada a una ciudad, campo abierto o costa; sin indicar, aquí.',
  'Coldest air while plants stand.': 'Aire más frío mientras hay plantas.',
  'Hottest air while plants stand.': 'Aire más cálido mientras hay plantas.',
  'Air in the night of the hottest day; a usual swing below it where absent.':
    'Aire en la noche del día más cálido; sin indicar, una oscilación usual por debajo.',
  'Relative humidity of the air on a hot afternoon.': 'Humedad relativa del aire en una tarde de calor.',
  'Share of the day’s open sky and sun that reaches the tower.':
    'Parte del cielo abierto y del sol del día que llega a la torre.',
  'Standing room kept free around the tower.': 'Espacio libre para estar de pie alrededor de la torre.',
  'Height up to which the people who tend it can reach.': 'Altura hasta la que llegan quienes la cuidan.',
  'Whether children use the place.': 'Si hay niños que usan el lugar.',
  'Waters that are blended.': 'Aguas que se mezclan.',
  'Tap, rain butt, borehole …': 'Grifo, aljibe, pozo …',
  'Where it comes from.': 'De dónde viene.',
  'Share in the blend; all shares sum to 100 %. A single water without one takes the rest.':
    'Parte en la mezcla; todas suman 100 %. Una sola agua sin parte toma el resto.',
  'Electrical conductivity at 25 °C.': 'Conductividad eléctrica a 25 °C.',
  'pH as reported.': 'pH según el análisis.',
  'Alkalinity as charge; an acid capacity in mmol/L is the same number.':
    'Alcalinidad como carga; una capacidad de ácido en mmol/L es el mismo número.',
  'Alkalinity reported as CaCO3.': 'Alcalinidad indicada como CaCO3.',
  'Carbonate hardness in German degrees (°dH).': 'Dureza de carbonatos en grados alemanes (°dH).',
  'Mass of the ion, or of what `as` says.': 'Masa del ion, o de lo que dice `as`.',
  'Charge of the ion.': 'Carga del ion.',
  'The tank: its row by name, or its inside measures.': 'El depósito: su fila por nombre, o sus medidas interiores.',
  'Name to print.': 'Nombre para imprimir.',
  'Seen from above.': 'Visto desde arriba.',
  'Inside length or diameter at the rim.': 'Largo o diámetro interior en el borde.',
  'Inside width at the rim; leave out for a round tank.':
    'Ancho interior en el borde; omítalo para un depósito redondo.',
  'Inside length or diameter at the foot; as at the rim where absent.':
    'Largo o diámetro interior en el fondo; sin indicar, como en el borde.',
  'Inside width at the foot; as at the rim where absent.': 'Ancho interior en el fondo; sin indicar, como en el borde.',
  'Inside depth to the rim.': 'Fondo interior hasta el borde.',
  'Top of the lid above the floor on which the column stands.':
    'Cara superior de la tapa sobre el suelo en que se apoya la columna.',
  'Thickness of the lid where the column passes.': 'Grueso de la tapa por donde pasa la columna.',
  'Outside of the tank, long side or diameter, at its foot.':
    'Exterior del depósito, lado largo o diámetro, en su fondo.',
  'Outside of the tank, narrow side or diameter, at its foot.':
    'Exterior del depósito, lado estrecho o diámetro, en su fondo.',
  'Empty tank with lid.': 'Depósito vacío con tapa.',
  'Highest level while the pump runs, above the tank’s inside floor.':
    'Nivel más alto con la bomba en marcha, sobre el fondo interior del depósito.',
  'Level at which it is topped up, above the tank’s inside floor.':
    'Nivel en que se repone, sobre el fondo interior del depósito.',
  'The fill line as a volume.': 'La línea de llenado como volumen.',
  'The low line as a volume.': 'La línea mínima como volumen.',
  'Rim kept above the highest water after the pump stops.':
    'Borde que queda sobre el agua más alta cuando para la bomba.',
  'Measured levels and volumes, lowest first; they outrank the shape.':
    'Niveles y volúmenes medidos, el más bajo primero; valen más que la forma.',
  'Level above the inside floor.': 'Nivel sobre el fondo interior.',
  'Litres poured in up to that level.': 'Litros vertidos hasta ese nivel.',
  'Outside of the tank as the sun sees it.': 'Exterior del depósito como lo ve el sol.',
  'Whether the tank stands in the shade all day.': 'Si el depósito está todo el día a la sombra.',
  'Foam around the tank.': 'Espuma alrededor del depósito.',
  'Share of the tank’s height below ground.': 'Parte de la altura del depósito bajo tierra.',
  'Air pumped through a stone.': 'Aire bombeado por una piedra difusora.',
  'Ice of a whole day, all bottles together.': 'Hielo de todo un día, todas las botellas juntas.',
  'Hour of the day by the sun, from midnight.': 'Hora del día según el sol, desde medianoche.',
  'Hours at which equal shares go in; late in the morning where absent.':
    'Horas a las que entran partes iguales; sin indicar, al final de la mañana.',
  'Widest gap through which something could get into the tank: notch of the cord, lid, overflow, joints.':
    'Hueco más ancho por el que algo podría entrar en el depósito: muesca del cable, tapa, rebosadero, juntas.',
  'Opening of the mesh that covers those gaps.': 'Abertura de la malla que cubre esos huecos.',
  'Sound level on its label, at one metre.': 'Nivel sonoro de su etiqueta, a un metro.',
  'Anything to remember.': 'Cualquier cosa que recordar.',
  'Name on the box.': 'Nombre en la caja.',
  'Largest lift printed on the box.': 'Elevación máxima impresa en la caja.',
  'Largest flow printed on the box.': 'Caudal máximo impreso en la caja.',
  'Points of the maker’s curve; they outrank the two box figures.':
    'Puntos de la curva del fabricante; valen más que las dos cifras de la caja.',
  'Lift.': 'Elevación.',
  'Flow at that lift.': 'Caudal con esa elevación.',
  'Head and flow lost to wear.': 'Elevación y caudal perdidos por desgaste.',
  'Power drawn.': 'Potencia consumida.',
  'What feeds it.': 'Lo que la alimenta.',
  'Least water over the tank’s floor in which it still draws.':
    'Agua mínima sobre el fondo del depósito con que aún aspira.',
  'Bucket tests, oldest first.': 'Pruebas del cubo, la más vieja primero.',
  'Date, as written in the log.': 'Fecha, como está en el registro.',
  'Bucket, filled to a mark.': 'Cubo, lleno hasta una marca.',
  'Time to fill it.': 'Tiempo para llenarlo.',
  'Height of the riser’s end above the water in the tank while the bucket filled.':
    'Altura del extremo de la subida sobre el agua del depósito mientras se llenaba el cubo.',
  'Timer: how long it runs.': 'Temporizador: cuánto funciona.',
  'Timer: how long it rests.': 'Temporizador: cuánto descansa.',
  'Voltage.': 'Tensión.',
  'Charge on its label.': 'Carga en su etiqueta.',
  'Current of the stand-by pump.': 'Corriente de la bomba de reserva.',
  'Share lost in an inverter; 0 without one.': 'Parte perdida en un inversor; 0 sin él.',
  'Room that the pump takes in the tank.': 'Sitio que ocupa la bomba en el depósito.',
  'Height of the pump above the tank’s floor.': 'Altura de la bomba sobre el fondo del depósito.',
  'Longest power cut that the plants must come through.': 'Corte de luz más largo que deben pasar las plantas.',
  'Inside diameter.': 'Diámetro interior.',
  'Length along the hose.': 'Largo a lo largo de la manguera.',
  'Sum of loss coefficients on this bore (fittings, valve, exit).':
    'Suma de coeficientes de pérdida en este interior (accesorios, válvula, salida).',
  'Fittings in the riser; they outrank `losses`.': 'Accesorios de la subida; valen más que `losses`.',
  'What it is.': 'Qué es.',
  'How many.': 'Cuántos.',
  'Smallest bore in it, for barbs.': 'Interior más pequeño que tiene, para espigas.',
  'Loss coefficient of a valve in the riser as set, on its bore.':
    'Coeficiente de pérdida de una válvula en la subida como está puesta, en su interior.',
  'Whether a check valve keeps the riser full when the pump stops.':
    'Si una válvula antirretorno mantiene llena la subida cuando para la bomba.',
  'Height of the outlet above the floor on which the column or its tank stands.':
    'Altura de la salida sobre el suelo en que está la columna o su depósito.',
  'Where the hose runs up.': 'Por dónde sube la manguera.',
  'Distance from column to column along the header.': 'Distancia de columna a columna a lo largo del colector.',
  'Columns that differ from `drops`.': 'Columnas que difieren de `drops`.',
  'Which column, 1 is the first that the header meets.': 'Qué columna; 1 es la primera que encuentra el colector.',
  'Height of its outlet above the floor of the tank.': 'Altura de su salida sobre el fondo del depósito.',
  'Loss coefficient of its valve as set, on the drop’s bore.':
    'Coeficiente de pérdida de su válvula como está puesta, en el interior de la bajada.',
  'Tubes of any tree behind the riser; they outrank header, drops and columns.':
    'Tubos de cualquier árbol tras la subida; valen más que colector, bajadas y columnas.',
  'Its name, for the branches that leave it.': 'Su nombre, para los ramales que salen de él.',
  'Name of the branch that it leaves; the riser where absent.':
    'Nombre del ramal del que sale; sin indicar, la subida.',
  'Fittings in it; they outrank `losses`.': 'Accesorios que tiene; valen más que `losses`.',
  'Loss coefficient of its valve as set, on its bore.':
    'Coeficiente de pérdida de su válvula como está puesta, en su interior.',
  'Height of its open end over a column; absent where it branches again.':
    'Altura de su extremo abierto sobre una columna; sin indicar donde se ramifica otra vez.',
  'Whether air can enter above the highest water, so that nothing siphons back.':
    'Si puede entrar aire por encima del agua más alta, para que nada sifone.',
  'Flow wanted at the top of each column.': 'Caudal deseado arriba de cada columna.',
  'Ions by name: Ca, Mg, Na, K, NH4, HCO3, Cl, SO4, NO3, F, H2PO4, Fe, B …, as mg/L of the ion.':
    'Iones por nombre: Ca, Mg, Na, K, NH4, HCO3, Cl, SO4, NO3, F, H2PO4, Fe, B …, en mg/L del ion.',
  'The same reported as element, oxide or CaCO3: NO3-N, NH4-N, P, S, P2O5, K2O, CaO, Ca as CaCO3, Mg as CaCO3 …':
    'Lo mismo indicado como elemento, óxido o CaCO3: NO3-N, NH4-N, P, S, P2O5, K2O, CaO, Ca as CaCO3, Mg as CaCO3 …',
  'Ions by name, reported in meq/L.': 'Iones por nombre, indicados en meq/L.',
}
