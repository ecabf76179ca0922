// The same faces as the sun, or the sky, sees them.
layout(location = 0) in vec3 aPosition;
layout(location = 2) in vec2 aTimes;
invariant gl_Position;
out vec3 vPosition;
out vec2 vTimes;

void main() {
  gl_Position = uViewProjection * vec4(aPosition, 1.0);
  vPosition = aPosition;
  vTimes = aTimes;
}
