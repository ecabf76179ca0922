#ifndef STILL
in vec3 vPosition;
in vec2 vTimes;
#endif
noperspective in float vAcross;
flat in vec3 vLine;
uniform vec3 uInkColour;   // as screens take it
uniform vec3 uAccentColour;
uniform float uFaint;
out vec4 oColour;

void main() {
#ifndef STILL
  if (cutAway(vPosition) || (uFaint < 0.5 && !stands(vTimes))) discard;
#endif
  float cover = clamp(vLine.x + 0.5 - abs(vAcross), 0.0, 1.0);
  oColour = vec4(mix(uInkColour, uAccentColour, vLine.z), cover * vLine.y);
}
