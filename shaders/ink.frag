noperspective in float vAcross;
flat in vec3 vLine;
uniform vec3 uInkColour;   // as screens take it
uniform vec3 uAccentColour;
out vec4 oColour;

void main() {
  float cover = clamp(vLine.x + 0.5 - abs(vAcross), 0.0, 1.0);
  oColour = vec4(mix(uInkColour, uAccentColour, vLine.z), cover * vLine.y);
}
