// The view that shows a stage's own work best.
#pragma once

#include <functional>
#include <vector>

#include <glm/vec3.hpp>

#include "model/model.h"
#include "viewer/frame.h"
#include "viewer/overlays/sheet_layout.h"
#include "viewer/picking.h"
#include "viewer/scene.h"

namespace viewer {

// Local coordinates.
struct StageView {
  Camera camera;              // turned as it is to be; of a kept view also where it stands
  bool kept = false;          // the job's own, exactly as it is
  glm::vec3 low{0}, high{0};  // else what it has to show
  Section section;
  SeeThrough seeThrough = SeeThrough::Nothing;
  float seen = 1;  // of the stage's own work as it looks from there, about; 1 when there is none
};

// One for each stage of the programme. Where the job keeps no view, the one of several directions,
// heights and cuts is taken from which most of the stage's own work is seen at its end, nearly as
// good ones being passed over for a plainer one and for one like that of the stage before.
std::vector<StageView> stageViews(const model::Model& model, const Scene& scene,
                                  const Picker& picker);
// The same one by one, stage after stage, for as long as `take` returns true.
void eachStageView(const model::Model& model, const Scene& scene, const Picker& picker,
                   const std::function<bool(const StageView&)>& take);

// The last stage's, before the others are known from which it follows: the job's own, or else the
// whole building from where it is seen clear of what stands round it.
StageView finishedView(const model::Model& model, const Scene& scene);

// Where the camera stands to show it in the drawing area.
Camera cameraOf(const StageView& view, const SheetLayout& layout);

// The same place, seen alike: it need not be gone to.
bool sameView(const StageView& a, const StageView& b);

}  // namespace viewer
