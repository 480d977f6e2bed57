/** Version of the engine; every answer and every printed card carries it. */
export const engineVersion = '0.1.0';
