// Edges as ink lines. What the clock or the section hides is cut off here: both change evenly along
// a line, so that no fragment needs to ask.
layout(lines) in;
in vec4 vClip[];
in vec3 vAt[];
in vec2 vMoments[];
in vec4 vPen[];

uniform float uWidth;  // pixels
uniform float uFaint;  // 1: what is coming, whatever the clock says; 2: what has gone
uniform float uSince;  // since this moment
uniform float uStrength;

void main() {
  if (max(vPen[0].w, vPen[1].w) < 0.5) return;
  if (uFaint < 0.5) {
    keep(uTime - vMoments[0].x, uTime - vMoments[1].x);
    keep(vMoments[0].y - uTime - kMoment, vMoments[1].y - uTime - kMoment);
  } else if (uFaint > 1.5) {
    keep(uTime - vMoments[0].y, uTime - vMoments[1].y);
    keep(vMoments[0].y - uSince, vMoments[1].y - uSince);
  }
  keep(-dot(uSection, vec4(vAt[0], 1.0)), -dot(uSection, vec4(vAt[1], 1.0)));
  float width = vPen[0].x * uWidth;
  drawLine(vClip[0], vClip[1], width, min(1.0, width) * vPen[0].y * uStrength, vPen[0].z);
}
