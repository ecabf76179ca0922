in vec3 vPosition;
in vec2 vTimes;
in float vAcross;
flat in vec3 vLine;
uniform vec3 uInkColour;   // as screens take it
uniform vec3 uAccentColour;
uniform float uFaint;
uniform float uStrength;
out vec4 oColour;

void main() {
  if (cutAway(vPosition) || (uFaint < 0.5 && !stands(vTimes))) discard;
  float across = abs(vAcross * gl_FragCoord.w);
  float cover = clamp(vLine.x + 0.5 - across, 0.0, 1.0) * min(1.0, vLine.x * 2.0);
  oColour = vec4(mix(uInkColour, uAccentColour, vLine.z), cover * vLine.y * uStrength);
}
