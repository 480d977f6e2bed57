import type { offlineEn } from './en.ts';

export const offlineEs: Readonly<Record<keyof typeof offlineEn, string>> = {
  'offline.app': 'Aplicación',
  'offline.version': 'Versión {build}, motor de cálculo {engine}',
  'offline.kept': 'Arranca sin red.',
  'offline.not-kept': 'Necesita la red para arrancar hasta que quede en este dispositivo. Dejarla abierta un minuto.',
  'offline.cannot':
    'Necesita la red para arrancar: este navegador no la conserva. Abrirla en una ventana normal, desde https o localhost.',
  'offline.newer': 'Hay una versión nueva.',
  'offline.newer.take': 'Cargarla',
  'offline.newer.busy':
    'En otra parte de este dispositivo hay un formulario sin guardar o un ciclo en marcha. Terminarlo y pulsar otra vez.',
  'offline.install': 'Instalar la aplicación',
  'offline.install.why':
    'Instalarla antes del primer registro: así se abre desde la pantalla de inicio y el navegador conserva más tiempo los registros.',
  'offline.install.menu':
    'Para instalarla, elegir «Instalar» o «Añadir a pantalla de inicio» en el menú del navegador, antes del primer registro.',
  'offline.install.ios':
    'Para instalarla en iPhone o iPad, tocar «Compartir» y luego «Añadir a pantalla de inicio». Abrirla desde allí antes del primer registro.',
  'offline.later': 'Más tarde',
  'offline.part': 'Esta parte de la aplicación no se pudo cargar. Comprobar la red y cargar la página otra vez.',
  'offline.part.again': 'Cargar la página otra vez',
};
