noperspective in float vAcross;
noperspective in float vAlong;
flat in vec3 vLine;
uniform vec3 uInkColour;   // as screens take it
uniform vec3 uAccentColour;
uniform float uDash;  // pixels from dash to dash; 0: a full line
out vec4 oColour;

void main() {
  float cover = clamp(vLine.x + 0.5 - abs(vAcross), 0.0, 1.0);
  if (uDash > 0.0) cover *= clamp(0.3 * uDash + 0.5 - abs(fract(vAlong / uDash) - 0.5) * uDash, 0.0, 1.0);
  oColour = vec4(mix(uInkColour, uAccentColour, vLine.z), cover * vLine.y);
}
