in vec3 vPosition;
uniform vec4 uSheetColour;  // as screens take it
out vec4 oColour;

void main() {
  // A metre grid, faint, so that the sheet has a size.
  vec2 px = fwidth(vPosition.xy);
  vec2 near = abs(vPosition.xy - floor(vPosition.xy + 0.5));
  vec2 cover = clamp(1.0 - near / max(px, vec2(1e-5)), 0.0, 1.0) * clamp(1.0 - px * 6.0, 0.0, 1.0);
  oColour = vec4(uSheetColour.rgb, uSheetColour.a + 0.18 * max(cover.x, cover.y));
}
