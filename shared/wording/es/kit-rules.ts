/** The drawing rules of a kit, each with the reason for its number. "Common practice" has no single source. */

export const rules = {
  how: 'Cada número lleva al lado su porqué. Ninguno está comprobado con robots de verdad: «en el modelo» es lo que hacen los robots de este programa.',
  rule: 'Regla',
  number: 'Número',
  reason: 'Por qué',
  groups: { line: 'Línea', marks: 'Marcas', bands: 'Bandas', junctions: 'Cruces' },
  parts: {
    least: 'mínimo',
    nominal: 'lo normal',
    most: 'máximo',
    untidyBelow: 'poco limpia bajo',
    mayStopBelow: 'puede parar bajo',
    shortest: 'la más corta',
    tidyShortest: 'limpia desde',
    tidyLongest: 'limpia hasta',
    longest: 'la más larga',
    unknownFrom: 'desconocida desde',
    colouredFrom: 'solo color desde',
    creep: 'de puntillas',
    steady: 'normal',
    brisk: 'ligero',
    fast: 'rápido',
  },
  of: {
    lineWidth: {
      name: 'Ancho de una línea',
      why: 'Costumbre. En el modelo se siguen las líneas de 5 a 7 mm y se leen sus bandas; con 8 mm la mayoría de los robots las pierde.',
    },
    corner: {
      name: 'Esquina, ángulo entre sus lados',
      why: 'Costumbre: 90° es lo más fácil. En el modelo todos los robots doblan con 50°, y con 45° entre un tercio y la mayoría.',
    },
    curveRadius: {
      name: 'Radio de una curva',
      why: 'Costumbre: las curvas en S piden 15 mm. En el modelo aún valen medias vueltas de 10 mm; el resto es para la mano.',
    },
    clearance: {
      name: 'Entre dos líneas, de centro a centro',
      why: 'Sitio para líneas dibujadas a mano. En el modelo se distinguen líneas a 11 mm.',
    },
    sheetMargin: {
      name: 'De una línea al borde del papel',
      why: 'Elegido: un robot que se desvía un poco sigue en el papel.',
    },
    endFromEdge: {
      name: 'De un cabo suelto al borde, a paso rápido',
      why: 'Elegido: un robot rápido rueda más allá del cabo, y debe parar en el papel.',
    },
    beforeMark: {
      name: 'Línea lisa antes de una marca',
      why: 'Costumbre. En el modelo 25 mm tras una esquina bastan a todos los robots, y 20 mm a ninguno.',
    },
    afterMark: {
      name: 'Línea lisa después de una marca',
      why: 'Costumbre a paso de paseo: la marca tiene que acabar antes de que empiece otra cosa.',
    },
    straightFrom: {
      name: 'Una curva así de ancha cuenta como recta',
      why: 'Elegido: los cinco sensores ven entonces la línea como si fuera recta.',
    },
    actionReady: {
      name: 'De una marca al sitio para el que está',
      why: 'Costumbre: unos 60 mm a toda velocidad. El robot tiene que entender la marca y obedecer antes de llegar.',
    },
    bandCount: {
      name: 'Bandas de una marca',
      why: 'Lo que usa la tabla. Una marca no puede tener más de 8.',
    },
    bandLength: {
      name: 'Largo de una banda',
      why: 'Costumbre: de 5 a 6 mm. En el modelo esas se leen siempre; las de 4 mm las leen tres de cada cuatro robots, y las de 7 mm cerca de la mitad.',
    },
    equalWithin: {
      name: 'Bandas de una marca iguales dentro de',
      why: 'Costumbre: un quinto. En el modelo siempre se lee una banda de 0,8 a 1,2 veces las demás.',
    },
    gap: {
      name: 'Blanco entre dos bandas, como mucho',
      why: 'En el modelo 0,6 mm no molestan, y con 1 mm se leen mal dos de cada tres marcas.',
    },
    overlap: {
      name: 'Una banda sobre la otra, como mucho',
      why: 'En el modelo 1 mm no molesta, y con 2 mm casi ninguna marca se lee.',
    },
    stretch: {
      name: 'Una sola tinta en la línea',
      why: 'Elegido. Un tramo corto se toma por una marca que nadie conoce; uno largo es solo una línea de color.',
    },
    inkLighter: {
      name: 'Una tinta es más clara que la línea',
      why: 'Elegido: una tinta con el doble de luz nunca se toma por la línea.',
    },
    armsApart: {
      name: 'Ángulo entre dos brazos',
      why: 'Costumbre: 90° es lo mejor. En el modelo un cruce de 75° siempre se cuenta una vez.',
    },
    armLength: {
      name: 'Largo de un brazo',
      why: 'Ajustado: en el modelo bastan 25 mm para distinguir dos cruces.',
    },
    snap: {
      name: 'Los cabos así de cerca son un cruce',
      why: 'Elegido: cerca de medio ancho de línea, que tapa la diferencia.',
    },
  },
};
