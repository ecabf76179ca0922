// How much of a stage's own work a picture really shows, counted in pixels.
#pragma once

#include "viewer/gl/offscreen.h"
#include "viewer/gl/renderer.h"
#include "viewer/picking.h"
#include "viewer/scene.h"
#include "viewer/stage_view.h"

namespace viewer {

struct DrawnWork {
  int alone = 0;  // pixels of the work in the frame when there is nothing else and no cut
  int seen = 0;   // of these, those that show the work among everything, with the view's cut
  double share() const { return alone == 0 ? 1 : double(seen) / alone; }
};

// Draws the end of the stage four times: the work alone and among everything, each in a dark and in
// a light colour. A pixel shows the work when the two differ. What the stage has dug away or struck
// counts by the surfaces that it has laid bare.
DrawnWork drawnWork(const Scene& scene, const Picker& picker, const StageView& view, int stage,
                    Renderer& renderer, Offscreen& offscreen);

}  // namespace viewer
