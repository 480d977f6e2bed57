import type { placesEn } from './en.ts';

export const placesEs: Readonly<Record<keyof typeof placesEn, string>> = {
  'card.title': 'Ficha de empalme',
  'card.revolutions': 'La correa hizo',
  'card.cut.endless': 'Sin fin, sin tensión',
  'stores.title': 'Existencias',
  'stores.new.badges': 'Anotar un distintivo',
  'start.begin': 'Crear mi propia planta',
  'start.go-on': 'Seguir con mi planta',
  'start.plants': 'Plantas en este dispositivo',
};
