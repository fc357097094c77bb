/** Numbers of a robot, as labels in the kit's editor. */

export const fields = {
  robot: {
    name: 'Tipo de robot',
    sizes: 'Medidas',
    width: 'Ancho, de rueda a rueda',
    length: 'Largo, de delante a atrás',
    axleToRear: 'Del eje a la parte de atrás',
    wheelTrack: 'Entre los centros de las ruedas',
    sensors: 'Sensores',
    barAhead: 'Barra de sensores por delante del eje',
    sensorPitch: 'De un sensor al siguiente',
    bandUnit: 'Lo que su lector toma por una banda',
    actsAfter: 'De leer una marca a obedecerla',
    choices: 'Lo que hace por sí solo',
    unmarkedJunction: 'En un cruce sin marca',
    junctions: {
      any: 'cualquier camino menos volver, todos igual de probables',
      straight: 'recto donde se puede',
    },
    looseEnd: 'Donde acaba una línea',
    ends: { stop: 'se para', 'turn-back': 'da la vuelta' },
  },
  paces: {
    creep: 'De puntillas',
    steady: 'Normal',
    brisk: 'Ligero',
    fast: 'Rápido',
    topWheelSpeed: 'Lo más rápido que gira una rueda',
    startPace: 'Paso al empezar',
    how: 'Hacer que un robot siga tres veces una línea recta impresa de 500 mm, y dividir 500 entre la media de los tiempos en segundos.',
  },
};

export const tolerances = {
  title: 'Cuánto se diferencian los robots',
  how: 'Una desviación típica de cada cosa, con tiempo en calma; dos de cada tres robots quedan dentro. Los valores de costumbre están elegidos, no medidos: las pruebas con los robots de la clase dicen más.',
  aside: 'Colocado a un lado del centro',
  heading: 'Colocado girado',
  commonSpeed: 'Velocidad de un robot',
  wheelMismatch: 'Una rueda frente a la otra',
  sensorGain: 'Con cuánta fuerza ve un sensor',
  sensorOffset: 'Lo que ve un sensor a oscuras',
  calibration: 'Nivel de blanco al calibrar',
};
