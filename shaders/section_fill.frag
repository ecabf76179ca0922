// Where the section cuts, the hatch of the material.
in vec3 vPosition;
uniform vec3 uPlaneRight, uPlaneUp;
uniform vec3 uFillWash;
uniform float uFillSelected;
out vec4 oColour;

void main() {
  vec2 q = vec2(dot(vPosition, uPlaneRight), dot(vPosition, uPlaneUp));
  float px = max(max(fwidth(q.x), fwidth(q.y)), 1e-5);
  if (!hereNow(vPosition)) discard;
  vec3 ground = mix(uFillWash, uPaper, 0.45);
  ground = mix(ground, uAccent.rgb, uFillSelected * uAccent.a);
  float cover = hatchCover(q, uCourse.y, px);
  vec3 colour = mix(ground, mix(uInk, uFillWash * 0.35, 0.3), cover * (uHatch == 9 ? 0.85 : 0.8));
  float line = uLevel.w * clamp(1.6 - abs(vPosition.z - uLevelAt) / max(fwidth(vPosition.z), 1e-4), 0.0, 1.0);
  oColour = vec4(encoded(mix(colour, uLevel.rgb, line)), 1.0);
}
