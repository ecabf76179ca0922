in vec3 vPosition;
in vec2 vTimes;

void main() {
  if (!stands(vTimes) || cutAway(vPosition)) discard;
}
