in vec3 vPosition;
flat in vec3 vNormal;
flat in vec3 vWash;
flat in vec4 vJoint;
flat in vec4 vPattern;
flat in vec4 vFrame;
flat in vec4 vState;
flat in uvec4 vRows;
flat in uvec4 vColumns;
uniform float uOpacity;
out vec4 oColour;

void main() {
  Face f = Face(vPosition, vNormal, vWash, vJoint, vPattern, vFrame, vState, vRows, vColumns);
  oColour = vec4(encoded(shaded(f)), uOpacity);
}
