// The fill itself: the material going on inside where time cuts, its hatch where the section does.
in vec3 vPosition;
uniform vec3 uNormal;
uniform vec3 uPlaneRight, uPlaneUp;
uniform vec3 uFillWash;
uniform vec4 uFillJoint, uFillPattern, uFillFrame, uFillState;
uniform float uOpacity;
out vec4 oColour;

void main() {
  Face f = Face(vPosition, uNormal, uFillWash, uFillJoint, uFillPattern, uFillFrame, uFillState);
  vec2 q = vec2(dot(vPosition, uPlaneRight), dot(vPosition, uPlaneUp));
  float px = max(max(fwidth(q.x), fwidth(q.y)), 1e-5);
  if (!hereNow(vPosition)) discard;
  if (uCutKind != 2) {
    oColour = vec4(encoded(shaded(f)), uOpacity);
    return;
  }
  vec3 ground = mix(uFillWash, uPaper, 0.45);
  ground = mix(ground, uAccent.rgb, f.state.w * uAccent.a);
  float cover = hatchCover(q, uCourse.y, px);
  vec3 colour = mix(ground, mix(uInk, uFillWash * 0.35, 0.3), cover * (uHatch == 9 ? 0.85 : 0.8));
  float line = uLevel.w * clamp(1.6 - abs(vPosition.z - uLevelAt) / max(fwidth(vPosition.z), 1e-4), 0.0, 1.0);
  oColour = vec4(encoded(mix(colour, uLevel.rgb, line)), 1.0);
}
