/** Taking a photo that stays with the records: what is done to it, and why a file gave none. */
export const photoEn = {
  'photo.take': '{side}: take a photo',
  'photo.take-again': '{side}: take another photo',
  'photo.choose': 'Choose a photo taken before',
  'photo.reading': 'The photo is read and made smaller …',
  'photo.reading-large': 'A photo of {megapixels} million dots: making it smaller takes a few seconds …',
  'photo.stop': 'Stop reading',
  'photo.keeping': 'The photo goes to the disk of this device …',
  'photo.kept': 'Kept on this device: {width} × {height} dots. Place, time and camera were taken out of it.',
  'photo.not-kept': 'The photo was read and is not kept yet. {reason}',
  'photo.keep-again': 'Try again to keep it',
  'photo.thumb.reading': '{label}: the photo is fetched …',
  'photo.thumb.not-here':
    '{label}: the photo is not on this device. Import the records of the device that took it; they bring it along.',
  'photo.thumb.damaged':
    '{label}: the photo is damaged and cannot be shown. Import the records once more from a device that has it.',
  'photo.fault.empty': 'The file is empty: 0 bytes. Take the photo once more.',
  'photo.fault.unreadable':
    'The file cannot be read any more: it was moved, or it is not on this device. Save it here, then choose it again.',
  'photo.fault.too-large':
    'The file has {size} MB; at most {most} MB are read. Set the camera to a smaller picture and take the photo again.',
  'photo.fault.not-a-photo':
    'This file is no picture, whatever its name says. Take a photo, or choose a JPEG, PNG or WebP.',
  'photo.fault.moving':
    'This is a GIF or a moving picture, not one photo. Take a photo, or choose a JPEG, PNG or WebP.',
  'photo.fault.cut': 'The file ends before the picture does. Copy it once more, or take the photo again.',
  'photo.fault.too-many-dots':
    'The picture has {dots} million dots; of its kind at most {most} million are unpacked. Set the camera to a smaller picture and take the photo again.',
  'photo.fault.heif':
    'This browser does not read photos of this form (HEIC or AVIF). Set the camera to JPEG and take the photo again.',
  'photo.fault.not-decoded':
    'The picture is damaged, or this device has no room to unpack it. Close other pages, then take the photo again.',
  'photo.fault.stopped': 'Stopped; this photo was not kept. Take it when you are ready.',
} as const;
