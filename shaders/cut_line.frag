in vec3 vPosition;
in float vAcross;
uniform float uWidth;
uniform vec3 uInkColour;
out vec4 oColour;

void main() {
  if (!hereNow(vPosition)) discard;
  float across = abs(vAcross * gl_FragCoord.w);
  oColour = vec4(uInkColour, clamp(uWidth * 0.5 + 0.5 - across, 0.0, 1.0));
}
