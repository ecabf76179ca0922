// The level plane: a sheet over the site at one height.
uniform vec4 uSheet;  // low x, low y, high x, high y
uniform float uLevelAt;
out vec3 vPosition;

void main() {
  vec2 corner = vec2(float(gl_VertexID >> 1), float(gl_VertexID & 1));
  vPosition = vec3(mix(uSheet.xy, uSheet.zw, corner), uLevelAt);
  gl_Position = uViewProjection * vec4(vPosition, 1.0);
}
